import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  type Head,
  type PlannedJob,
  type RepairPlaceOptions,
  recutPlan,
  repairPlaces,
  repairPlan,
  wormRatioOf,
} from "../../../src/index.ts";
import { heads } from "../../support/arbitraries.ts";
import { atStart, moved, spindle } from "../../support/bench.ts";
import { ready } from "../../support/ready.ts";

const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const dialOnly = ready("ratio-90-dial");
const arcSecondsPerTurn = 1_296_000;

function planned(head: Head, teeth: number, damaged: readonly number[], radius = 97, options: RepairPlaceOptions = {}) {
  const plan = recutPlan(teeth, { damaged });
  const job = repairPlan(head, plan, radius, options);
  if (!job.planned) throw new Error(`${teeth} cannot be done at all`);
  return { plan, job, places: repairPlaces(job) };
}

/** How far past its true place, from the start space, the parts of the head bring each space; in arc-seconds. */
function measured({ way, places, head }: PlannedJob, owned: Head, teeth: number, startSpace: number): readonly number[] {
  const turnedAt = turnsOfWork({ way, places, head } as PlannedJob, owned);
  return places.map(({ tooth }, index) => {
    const off = (turnedAt[index] ?? 0) - ((tooth - startSpace + teeth) % teeth) / teeth;
    return (off - Math.round(off)) * arcSecondsPerTurn;
  });
}

function turnsOfWork({ way, places }: PlannedJob, owned: Head): readonly number[] {
  const worm = fraction(wormRatioOf(owned));
  if (way.by === "moves") {
    let stand = atStart;
    return places.map((place) => {
      if (place.by !== "moves") throw new Error("a place of another way");
      stand = moved(stand, place.from, way.setting);
      const { n, d } = spindle(stand, way.setting);
      // The whole turns of the work are nothing to its place.
      return Number(((n % d) + d) % d) / Number(d);
    });
  }
  return places.map((place) => {
    if (place.by === "nearest-hole") return (place.turns + place.hole / (way.setting.circle ?? 1)) / worm;
    const [scale, reading] = way.by === "ring" ? [owned.ring, place.ring] : [owned.dial, place.dial];
    if (!scale || !reading) throw new Error("a scale that is not there");
    const part = (reading.mark + reading.line / scale.vernierLines) / scale.marksPerTurn;
    return way.by === "ring" ? part : (reading.turns + part) / worm;
  });
}

function fraction(text: string): number {
  const [n = 0, d = 1] = text.split("/").map(Number);
  return n / d;
}

const damages = fc
  .record({ teeth: fc.integer({ min: 6, max: 120 }), first: fc.integer({ min: 1, max: 120 }), more: fc.boolean() })
  .map(({ teeth, first, more }) => {
    const tooth = 1 + (first % teeth);
    return { teeth, damaged: more ? [tooth, 1 + ((tooth + 1) % teeth)] : [tooth] };
  });

describe("the places of a repair", () => {
  it("the start space first, every space to be recut once, the proof space last", () => {
    fc.assert(
      fc.property(damages, fc.constantFrom(geared, ungeared, dialOnly), ({ teeth, damaged }, head) => {
        const { plan, places } = planned(head, teeth, damaged);
        expect(places.map(({ purpose }) => purpose)).toEqual([
          "set the cutter",
          ...plan.spaces.map(() => "recut"),
          "prove the count",
        ]);
        expect(places[0]?.toothSpace).toBe(plan.startSpace);
        expect(places.at(-1)?.toothSpace).toBe(plan.proofSpace.toothSpace);
        const cuts = places.slice(1, -1).map(({ toothSpace }) => toothSpace);
        expect([...cuts].sort((a, b) => a - b)).toEqual(plan.spaces.map(({ toothSpace }) => toothSpace).sort((a, b) => a - b));
      }),
    );
  });

  it("are off by what the parts of the head make of them, on any head", () => {
    fc.assert(
      fc.property(heads(), damages, (head, { teeth, damaged }) => {
        const plan = recutPlan(teeth, { damaged });
        const job = repairPlan(head, plan, 50);
        if (!job.planned) return;
        const errors = measured(job, head, teeth, plan.startSpace);
        for (const [index, { errorArcSeconds }] of job.places.entries()) {
          expect(errorArcSeconds).toBeCloseTo(errors[index] ?? Number.NaN, 4);
        }
        const cuts = errors.slice(1, -1).map(Math.abs);
        expect(job.worstArcSeconds).toBeCloseTo(Math.max(...cuts), 4);
      }),
      { numRuns: 60 },
    );
  });

  it("97 teeth on an ungeared head: a compound move that closes 18 seconds out is under a second out within four teeth", () => {
    const { job } = planned(ungeared, 97, [31, 32, 33]);
    expect(job.way).toMatchObject({ by: "moves", setting: { method: "compound", teethPerMove: 1 } });
    expect(job.worstArcSeconds).toBeCloseTo((4 * 18.37776517300057) / 97, 6);
  });

  it("where several teeth are passed at a move, the spaces come in the order of the moves, in one round", () => {
    const { job, places } = planned(geared, 383, [3, 4, 9], 383);
    if (job.way.by !== "moves") throw new Error("383 closes on this head");
    expect(job.way.setting.teethPerMove).toBeGreaterThan(1);
    const moves = places.slice(0, -1).map(({ position }) => (position.by === "moves" ? position.move : Number.NaN));
    expect(moves).toEqual([...moves].sort((a, b) => a - b));
    expect(moves.at(-1)).toBeLessThan(383);
  });

  it("takes the least work among ways that no file could tell apart, and the least error among the rest", () => {
    // On a gear of a tenth of a millimetre radius every way is good enough: the simplest comes first.
    expect(planned(ungeared, 97, [31], 0.1).job.way.setting).toMatchObject({ kind: "simple" });
    const { job } = planned(ungeared, 97, [31], 97);
    for (const other of job.others) expect(other.worstArcSeconds).toBeGreaterThanOrEqual(job.worstArcSeconds);
  });

  it("on a bare table the dial goes before the ring, and both are told", () => {
    const { job } = planned(dialOnly, 97, [5]);
    expect([job.way.by, ...job.others.map(({ by }) => by)]).toEqual(["dial", "ring"]);
    expect(job.worstArcSeconds).toBeLessThanOrEqual(5);
  });

  it("where there is one sound space only, the start proves the count", () => {
    const damaged = Array.from({ length: 18 }, (_, index) => index + 2);
    const { plan, places } = planned(ungeared, 20, damaged);
    expect(plan).toMatchObject({ startSpace: 20, proofSpace: { toothSpace: 20, teethFromStart: 20 } });
    expect(places.at(-1)).toMatchObject({ toothSpace: 20, purpose: "prove the count" });
  });

  it("57 teeth with 12 and 13 gone: every place from the start space, by the setting's own moves", () => {
    const { places } = planned(geared, 57, [12, 13]);
    expect(places.map(({ toothSpace, purpose }) => `${toothSpace} ${purpose}`)).toEqual([
      "10 set the cutter",
      "11 recut",
      "12 recut",
      "13 recut",
      "14 prove the count",
    ]);
    expect(places.map(({ position }) => position.by === "moves" && position.from.moves)).toEqual([0, 1, 1, 1, 1]);
  });

  it("each space is at its own angle from the start space, with one tooth a move or several, exact or near", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(20, 57, 86, 96, 97, 127, 383),
        fc.uniqueArray(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(geared, ungeared, dialOnly),
        (teeth, damaged, head) => {
          const { plan, places } = planned(head, teeth, damaged, teeth);
          const angles = new Map(plan.spaces.map(({ toothSpace, angleFromStart }) => [toothSpace, angleFromStart]));
          for (const { toothSpace, position } of places.slice(1, -1)) expect(position.angle).toBe(angles.get(toothSpace));
          expect(places[0]?.position.angle).toBe("0");
        },
      ),
    );
  });

  it("a head with a direct plate alone has no way but that plate", () => {
    const bare = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    expect(repairPlan(bare, recutPlan(97, { damaged: [31] }), 97)).toMatchObject({ planned: false });
    expect(repairPlan(bare, recutPlan(12, { damaged: [3] }), 97)).toMatchObject({ planned: true, exact: true });
  });
});
