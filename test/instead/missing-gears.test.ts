import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AddGears,
  type Answer,
  defineHead,
  type Head,
  indexDivisions,
  kindOf,
  type Route,
  revolutions,
  type SearchOptions,
  type Setting,
  type Target,
} from "../../src/index.ts";
import { gearsThatWouldDo } from "../../src/instead/missing-gears.ts";
import { once, searchOn } from "../../src/search/exact-settings.ts";
import { heads, small } from "../support/arbitraries.ts";
import { canBeSetUp, closesOnBench } from "../support/mechanism.ts";
import { gearsOf } from "../support/parts.ts";
import { ready, threePlates } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";
import { take } from "../support/take.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");
const isAddGears = (route: Route): route is AddGears => route.kind === "gears";
function gearRoutes(answer: Answer): readonly AddGears[] {
  const routes: readonly Route[] = answer.routes;
  return routes.filter(isAddGears);
}

/** Sizes found in most sets of change gears; common practice, no source. */
const usual = [
  ...[24, 28, 32, 36, 40, 44, 48, 56, 64, 72, 86, 100],
  ...[20, 25, 30, 35, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 105, 110, 115, 120, 127],
];
const all = Array.from({ length: 127 - 16 + 1 }, (_, index) => 16 + index);
const others = all.filter((teeth) => !usual.includes(teeth));

const withGears = (head: Head, gears: readonly number[]): Head => ({
  ...head,
  gears: [...head.gears, ...gears].sort((a, b) => a - b),
});

/** The first geared setting once gears are added, unless its train may foul. */
function geared(head: Head, gears: readonly number[], divisions: number, teethPerMove: number): Setting | undefined {
  const [first] = take(1, withGears(head, gears), { divisions }, { methods: ["differential"], teethPerMove });
  return first && kindOf(first) !== "may-foul" ? first : undefined;
}

/** Single gears that do a count, found by adding each size in turn and asking again; in the order they should be named. */
function singlesByTrial(head: Head, sizes: readonly number[], divisions: number, most: number): readonly number[] {
  const named: number[] = [];
  const inOrder = [...sizes].sort((a, b) => a - b);
  for (let teeth = 1; teeth <= most; teeth += 1) {
    for (const pairs of [1, 2]) {
      for (const gear of inOrder) {
        const first = named.includes(gear) ? undefined : geared(head, [gear], divisions, teeth);
        if (first && gearsOf(first)?.drivers.length === pairs) named.push(gear);
      }
    }
  }
  return named;
}

/** The least sum of two gears of usual sizes that make a pair for a count by themselves; infinite where none do. */
function leastPairByTrial(head: Head, divisions: number, most: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let teeth = 1; teeth <= most && least === Number.POSITIVE_INFINITY; teeth += 1) {
    for (const [index, x] of usual.entries()) {
      for (const y of usual.slice(index)) {
        const alone = { ...head, gears: [], idlers: null };
        if (x + y < least && geared(alone, [x, y], divisions, teeth) && geared(head, [x, y], divisions, teeth)) least = x + y;
      }
    }
  }
  return least;
}

describe("gears to add", () => {
  it("are those that adding every size in turn finds: one of a usual size, else a usual pair, else any", () => {
    const seen = { usual: 0, pair: 0, other: 0, none: 0 };
    fc.assert(
      fc.property(
        heads({ ...small, mostGears: 4 }).filter(({ gearing }) => gearing !== null),
        fc.integer({ min: 2, max: 90 }),
        fc.integer({ min: 1, max: 2 }),
        (head, divisions, most) => {
          const answer = indexDivisions(head, divisions, { teethPerMove: most });
          fc.pre(!answer.exact);
          const named = gearRoutes(answer).map(({ add }) => add);
          const ofUsual = singlesByTrial(head, usual, divisions, most);
          if (ofUsual.length > 0) {
            expect(named).toEqual(ofUsual.slice(0, 3).map((teeth) => [teeth]));
            seen.usual += 1;
            return;
          }
          const sum = leastPairByTrial(head, divisions, most);
          if (sum < Number.POSITIVE_INFINITY) {
            for (const pair of named) expect([pair.length, pair.every((teeth) => usual.includes(teeth))]).toEqual([2, true]);
            expect(named[0]?.reduce((total, teeth) => total + teeth)).toBe(sum);
            seen.pair += 1;
            return;
          }
          const ofOthers = singlesByTrial(head, others, divisions, most);
          if (ofOthers.length > 0) expect(named).toEqual(ofOthers.slice(0, 3).map((teeth) => [teeth]));
          else expect(named.filter((gears) => gears.length === 1)).toEqual([]);
          if (named.length > 0) seen.other += 1;
          else seen.none += 1;
        },
      ),
      runs(100),
    );
    expect(Math.min(seen.usual, seen.pair, seen.none)).toBeGreaterThan(3);
  });

  it.each(usual)("are named without others where one of %i does it, as most sets have it", (size) => {
    // On 97 holes a space is off by so many 97ths of a plate turn: a train of that size and 97. On `beside` holes
    // it is off by `other` parts of it, and `other` is in few sets.
    const [beside = 0, other = 0] = [96, 98, 99, 94]
      .map((holes) => [holes, Math.abs(37 * (97 - holes) + size)])
      .find(([, gear = 0]) => others.includes(gear)) as number[];
    const head = defineHead({ wormRatio: 37, plates: [{ name: "1", circles: [97, beside] }], gears: [97, beside] });
    const divisions = 37 * 97 + size;
    expect(geared(head, [other], divisions, 1)).toBeDefined();
    const search = once(searchOn(head, { teethPerMove: 1 }));
    expect(gearsThatWouldDo(search, { divisions }).map(({ teeth }) => teeth)).toEqual([[size]]);
  });

  it("are of 16 to 127 teeth", () => {
    const head = defineHead({ wormRatio: 37, plates: [{ name: "1", circles: [97] }], gears: [97] });
    const named = (size: number) =>
      gearsThatWouldDo(once(searchOn(head)), { divisions: 37 * 97 + size }).map(({ teeth }) => teeth);
    expect([15, 16, 127, 128].map((size) => named(size).some(([teeth, ...more]) => teeth === size && more.length === 0))).toEqual(
      [false, true, true, false],
    );
  });

  it("are none where differential indexing is not asked for, nor for an angle of over one turn; but for one turn", () => {
    const named = (head: Head, target: Target, options: SearchOptions = {}) =>
      gearsThatWouldDo(once(searchOn(head, options)), target).length;
    expect(named(ungeared, { divisions: 127 })).toBeGreaterThan(0);
    expect(named(ungeared, { divisions: 127 }, { methods: ["simple", "compound"] })).toBe(0);
    expect(named(ungeared, { angle: revolutions("126/127") })).toBeGreaterThan(0);
    expect(named(ungeared, { angle: revolutions("128/127") })).toBe(0);
    // 81/2 turns are 40 and half a turn of the plate.
    const half = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [15] }], gears: [24] });
    expect(named(half, { divisions: 1 })).toBeGreaterThan(0);
  });

  it("come with a setting that closes on the head with them, and takes them", () => {
    for (const divisions of [127, 787, 877]) {
      for (const head of [ungeared, threePlates]) {
        for (const { add, setting } of gearRoutes(indexDivisions(head, divisions))) {
          const widened = withGears(head, add);
          expect([canBeSetUp(setting, widened), closesOnBench(setting, widened)]).toEqual([true, true]);
          expect(canBeSetUp(setting, head)).toBe(false);
        }
      }
    }
  });

  it("for 787 with twelve gears are single gears of usual sizes, one tooth per move before more", () => {
    const gears = gearRoutes(indexDivisions(threePlates, 787));
    expect(gears.map(({ add }) => add)).toEqual([[65], [20], [25]]);
    const trains = gears.map(({ setting }) => [setting.teethPerMove, gearsOf(setting)?.drivers.length]);
    expect(trains).toEqual([...trains].sort((a, b) => Number(a[0]) - Number(b[0])));
  });

  it("are of an unusual size only where no usual one does, nor two of them: 104 for 88 on a small head of 2:1", () => {
    const head = defineHead({ wormRatio: 2, plates: [{ name: "1", circles: [2, 5, 8, 9, 18] }], gears: [36, 44] });
    const [first] = gearRoutes(indexDivisions(head, 88, { teethPerMove: 1 }));
    expect(first?.add).toEqual([104]);
    expect(singlesByTrial(head, usual, 88, 1)).toEqual([]);
    expect(leastPairByTrial(head, 88, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(singlesByTrial(head, others, 88, 1)[0]).toBe(104);
  });

  it("are two of a pair where none is owned, and none where the plate cannot be geared", () => {
    const [first] = gearRoutes(indexDivisions(ungeared, 127));
    expect(first).toMatchObject({ setting: { method: "differential", teethPerMove: 1 } });
    expect(first?.add).toHaveLength(2);
    expect(gearRoutes(indexDivisions(ready("ratio-90-table-15-49"), 127))).toEqual([]);
  });
});
