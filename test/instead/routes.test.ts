import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AddGears,
  type Answer,
  checkOwned,
  defineHead,
  exactSettings,
  type Head,
  indexAngle,
  indexDivisions,
  kindOf,
  prove,
  type Route,
  readyHeads,
} from "../../src/index.ts";
import { counts, heads, small, teethPerMove } from "../support/arbitraries.ts";

const ready = (id: string): Head => readyHeads.find((head) => head.id === id) ?? defineHead({ wormRatio: 1 });
const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const table = ready("ratio-90-table-15-49");

const kinds = ({ routes }: Answer) => routes.map(({ kind }) => kind);
const isAddGears = (route: Route): route is AddGears => route.kind === "gears";

/** Gears that would do a count, found by adding each size in turn and asking again; in the order they should be named. */
function gearsByTrial(head: Head, divisions: number, most: number): number[] {
  const named: number[] = [];
  for (let teeth = 1; teeth <= most; teeth += 1) {
    for (const pairs of [1, 2]) {
      for (let gear = 16; gear <= 127; gear += 1) {
        if (named.includes(gear)) continue;
        const widened = { ...head, gears: [...head.gears, gear].sort((a, b) => a - b) };
        const [first] = exactSettings(widened, { divisions }, { methods: ["differential"], teethPerMove: teeth });
        if (first && kindOf(first) !== "may-foul" && first.gears?.drivers.length === pairs) named.push(gear);
      }
    }
  }
  return named;
}

describe("routes", () => {
  it("are there just where nothing closes", () => {
    fc.assert(
      fc.property(heads(), counts, (head, divisions) => {
        const answer = indexDivisions(head, divisions);
        if (answer.exact) expect(answer.routes).toEqual([]);
        else if (divisions < 200) expect(answer.routes.length).toBeGreaterThan(0);
      }),
    );
  });

  it("each close where they say they are exact, walked through on the head so changed", () => {
    fc.assert(
      fc.property(heads(), counts, teethPerMove, (head, divisions, most) => {
        for (const route of indexDivisions(head, divisions, { teethPerMove: most }).routes) {
          if (route.kind === "near") {
            expect(route.setting.exact).toBe(false);
            continue;
          }
          const { setting } = route;
          expect(setting.exact).toBe(true);
          expect(prove(setting, { walk: true })).toMatchObject({
            closes: true,
            moves: route.kind === "count" ? route.divisions : divisions,
          });
          const changed = {
            ...head,
            gears: [...head.gears, ...(route.kind === "gears" ? route.add : [])],
            plates: [
              ...(route.kind === "circle" ? [{ name: "new", faces: [{ name: null, circles: route.circles }] }] : head.plates),
            ],
          };
          checkOwned(setting, changed);
        }
      }),
    );
  });

  it("come in order of effort, a circle too large for a common plate last", () => {
    expect(kinds(indexDivisions(geared, 787))).toEqual(["gears", "gears", "gears", "count", "count", "near", "circle"]);
    expect(kinds(indexDivisions(ungeared, 127))).toEqual(["gears", "gears", "gears", "circle", "count", "count", "near"]);
    expect(kinds(indexDivisions(table, 127))).toEqual(["circle", "count", "count", "near"]);
  });

  it("begin with what is owned but was not asked for", () => {
    const [first] = indexDivisions(geared, 96, { methods: ["simple"] }).routes;
    expect(first).toMatchObject({ kind: "method", setting: { method: "differential", exact: true } });
    const [more] = indexDivisions(geared, 383, { teethPerMove: 1 }).routes;
    expect(more).toMatchObject({ kind: "method", setting: { method: "differential", exact: true } });
    expect(kinds(indexDivisions(geared, 787, { methods: ["simple", "compound"] }))).not.toContain("method");
  });

  it("name for 96 by simple indexing the circles that are multiples of 12", () => {
    const by12 = indexDivisions(ungeared, 96, { methods: ["simple"] }).routes.find(({ kind }) => kind === "circle");
    expect(by12).toMatchObject({ circles: [12, 24, 36, 48, 60, 72], setting: { circle: 12, turns: 0, spaces: 5 } });
  });

  it("of an angle name no counts", () => {
    const answer = indexAngle(ungeared, "29/3601");
    expect(answer.exact).toBe(false);
    expect(kinds(answer)).toContain("near");
    expect(kinds(answer)).not.toContain("count");
  });

  it("go through JSON unchanged", () => {
    const { routes } = indexDivisions(geared, 787);
    expect(JSON.parse(JSON.stringify(routes))).toEqual(routes);
  });
});

describe("gears to add", () => {
  it("are those that adding every size in turn finds, the first few", () => {
    fc.assert(
      fc.property(
        heads({ ...small, mostGears: 4 }).filter(({ gears }) => gears.length > 0),
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 1, max: 2 }),
        (head, divisions, most) => {
          const { exact, routes } = indexDivisions(head, divisions, { teethPerMove: most });
          fc.pre(!exact);
          const single = routes.filter(isAddGears).filter(({ add }) => add.length === 1);
          expect(single.map(({ add }) => add[0])).toEqual(gearsByTrial(head, divisions, most).slice(0, 3));
        },
      ),
      { numRuns: 100 },
    );
  });

  it("for 787 with twelve gears are single gears, one tooth per move, in one pair", () => {
    const gears = indexDivisions(geared, 787).routes.filter(isAddGears);
    expect(gears.map(({ add }) => add)).toEqual([[26], [65], [78]]);
    expect(gears.map(({ setting }) => [setting.teethPerMove, setting.gears?.drivers.length])).toEqual([
      [1, 1],
      [1, 1],
      [1, 1],
    ]);
  });

  it("are two of a pair where none is owned, and none where the plate cannot be geared", () => {
    const gears = indexDivisions(ungeared, 127).routes.filter(isAddGears);
    expect(gears[0]).toMatchObject({ add: [17, 29], setting: { method: "differential", teethPerMove: 1 } });
    expect(indexDivisions(table, 127).routes.filter(isAddGears)).toEqual([]);
  });
});
