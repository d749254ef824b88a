import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  fromExact,
  type Head,
  type NearRecut,
  type NearRecutMove,
  type NearRecutPlace,
  nearRecuts,
  nearSettings,
  recutPlan,
  repairOnHead,
  spindleTurnsPerMove,
  spurGear,
} from "../../../src/index.ts";
import { heads } from "../../support/arbitraries.ts";
import { atStart, moved, spindle } from "../../support/bench.ts";
import { ready } from "../../support/ready.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");
const dialOnly = ready("ratio-90-dial");
const arcSecondsPerTurn = 1_296_000;

/** The turns of a place from the start space, as a plain number. */
const wanted = (teeth: number, startSpace: number, { toothSpace }: { toothSpace: number }) =>
  ((((toothSpace - startSpace) % teeth) + teeth) % teeth) / teeth;

/** What the parts of the head make of a place, in arc-seconds past its true angle, worked out afresh. */
function measured(head: Head, teeth: number, startSpace: number, way: NearRecut): number[] {
  if (way.by === "moves") {
    let stand = atStart;
    return way.places.map((place: NearRecutMove) => {
      stand = moved(stand, place.position.from, way.setting as never);
      const { n, d } = spindle(stand, way.setting as never);
      const turned = fromExact(`${n}/${d}`);
      const off = turned.sub(fromExact(`${Math.round(wanted(teeth, startSpace, place) * teeth)}/${teeth}`));
      return off.sub(off.round()).mul(arcSecondsPerTurn).valueOf();
    });
  }
  return way.places.map((place: NearRecutPlace) => {
    const { wormRatio } = way.by === "ring" ? { wormRatio: "1" } : head;
    const scale = way.by === "nearest-hole" ? null : head[way.by];
    const reading = way.by === "ring" ? place.ring : place.dial;
    const places = scale ? scale.marksPerTurn * scale.vernierLines : (way.circle?.holes ?? 1);
    const at = scale && reading ? reading.mark * scale.vernierLines + reading.line : (place.hole?.hole ?? 0);
    const turns = (scale ? reading?.turns : place.hole?.turns) ?? 0;
    const set = { wormRatio, turns, spaces: at, circle: places };
    const turned = turns + at === 0 ? 0 : fromExact(spindleTurnsPerMove(set)).valueOf();
    const off = turned - wanted(teeth, startSpace, place);
    return (off - Math.round(off)) * arcSecondsPerTurn;
  });
}

describe("ways to the spaces to be recut where nothing closes", () => {
  it("97 teeth on an ungeared head: a compound move that closes 18 seconds out is under a second out within four teeth", () => {
    const plan = recutPlan(97, { damaged: [31, 32, 33] });
    const [best] = nearRecuts(ungeared, plan, nearSettings(ungeared, { divisions: 97 }), 97);
    expect(best).toMatchObject({ by: "moves", setting: { method: "compound", teethPerMove: 1 } });
    expect(best?.worstArcSeconds).toBeCloseTo((4 * 18.37776517300057) / 97, 6);
  });

  it("on a bare table the dial goes before the ring, and both are told", () => {
    const plan = recutPlan(97, { damaged: [5] });
    const ways = nearRecuts(dialOnly, plan, nearSettings(dialOnly, { divisions: 97 }), 97);
    expect(ways.map(({ by }) => by)).toEqual(["dial", "ring"]);
    expect(ways[0]?.worstArcSeconds).toBeLessThanOrEqual(5);
  });

  it("takes the least work among those that no file could tell apart", () => {
    const plan = recutPlan(97, { damaged: [31] });
    const near = nearSettings(ungeared, { divisions: 97 });
    const errors = nearRecuts(ungeared, plan, near, 97).map(({ worstArcSeconds }) => worstArcSeconds);
    expect(errors).toEqual([...errors].sort((a, b) => a - b));
    // On a gear of 1 mm radius every way is good enough: the simplest comes first.
    expect(nearRecuts(ungeared, plan, near, 0.1)[0]).toMatchObject({ by: "moves", setting: { kind: "simple" } });
  });

  it("states for every place the error that the parts of the head make", () => {
    fc.assert(
      fc.property(
        heads(),
        fc.integer({ min: 5, max: 120 }),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 0, max: 1 }),
        (head, teeth, tooth, more) => {
          const first = 1 + (tooth % teeth);
          const damaged = more === 0 ? [first] : [first, 1 + ((first + 1) % teeth)];
          const plan = recutPlan(teeth, { damaged });
          for (const way of nearRecuts(head, plan, nearSettings(head, { divisions: teeth }), 50)) {
            const errors = measured(head, teeth, plan.startSpace, way);
            for (const [index, error] of errors.entries()) expect(way.places[index]?.errorArcSeconds).toBeCloseTo(error, 4);
            const cuts = way.places.flatMap(({ purpose }, index) => (purpose === "recut" ? [Math.abs(errors[index] ?? 0)] : []));
            expect(way.worstArcSeconds).toBeCloseTo(Math.max(...cuts), 4);
            expect(way.worstArcSeconds).toBeLessThan(arcSecondsPerTurn / teeth / 2);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("a repair on a head", () => {
  const gear = spurGear({ teeth: 97, module: 2 });
  const damaged = [31, 32, 33];

  it("takes the error of the near way into what may be off", () => {
    const plain = repairOnHead(ungeared, gear, { damaged, settingError: { arcSeconds: 30, offCentre: 0.02 } });
    expect(plain.exact).toBe(false);
    expect(plain.settingError.arcSeconds).toBeCloseTo(30 + (plain.near[0]?.worstArcSeconds ?? 0), 9);
    expect(plain.repair.displacement.byAngle).toBeCloseTo((plain.settingError.arcSeconds * Math.PI * 97) / 648_000, 9);
    expect(plain.settingError.offCentre).toBe(0.02);
  });

  it("lists exact moves where there are, and no near ones", () => {
    const exact = repairOnHead(ready("ratio-40-plates-15-49"), gear, { damaged });
    expect(exact).toMatchObject({ exact: true, near: [], settingError: { arcSeconds: 0 } });
    expect(exact.moves.map(({ toothSpace }) => toothSpace)).toEqual([29, 30, 31, 32, 33, 34]);
  });

  it("warns, and does not refuse, where the errors are wider than any saw leaves", () => {
    const coarse = repairOnHead(dialOnly, gear, { damaged, settingError: { arcSeconds: 7200 } });
    expect(coarse.repair.warnings.join(" ")).toContain("more than the saw leaves");
    const thick = repairOnHead(dialOnly, gear, { damaged, saw: { width: 1.5 }, settingError: { arcSeconds: 2400 } });
    expect(thick.repair.warnings.join(" ")).toContain("more than the saw leaves");
  });
});

it("a head with a direct plate alone has no way but that plate", () => {
  const bare = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
  const plan = recutPlan(97, { damaged: [31] });
  expect(nearRecuts(bare, plan, nearSettings(bare, { divisions: 97 }), 97)).toEqual([]);
  expect(repairOnHead(bare, spurGear({ teeth: 97, module: 2 }), { damaged: [31] })).toMatchObject({ exact: false, near: [] });
});
