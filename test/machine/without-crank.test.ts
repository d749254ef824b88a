import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  coverage,
  dialReadings,
  drillPlate,
  fromExact,
  indexAngle,
  indexDivisions,
  nearSettings,
  type Place,
  planJob,
  proposeSpacing,
  prove,
  ratio,
  revolutions,
  unequalSpacing,
} from "../../src/index.ts";
import { rational } from "../../src/number/ratio.ts";
import { planned } from "../support/jobs.ts";
import { refusalLines } from "../support/refusal.ts";
import { byDegrees, byGears, byRing, withoutCrank } from "../support/without-crank.ts";

/*
 * The spindle turned by hand. Hole r of the row stands r spaces and r parts of one from the first, as the holes of a
 * row have room to: the plate is turned until its hole is under the first, then on until any of its holes is under that one.
 */
function turnedTo(holes: number, row: number, { hole, vernierHole }: { hole: number; vernierHole: number }) {
  const stands = rational(hole, holes);
  const ofRow = rational(vernierHole, holes).add(rational(vernierHole, holes * row));
  const short = ofRow.sub(stands).mul(holes);
  return stands.add(short.sub(short.floor()).div(holes));
}

const counts = fc.integer({ min: 2, max: 400 });

describe("which counts are done", () => {
  it("of a plate with a row of holes: just the divisors of all its places", () => {
    const done = Array.from({ length: 360 }, (_, index) => index + 1).filter((count) => indexDivisions(byDegrees, count).exact);
    expect(done).toEqual(Array.from({ length: 360 }, (_, index) => index + 1).filter((count) => 360 % count === 0));
  });

  it("of gears, a collar and detents: the divisors of any of them", () => {
    fc.assert(
      fc.property(withoutCrank, counts, (head, count) => {
        const places = head.directPlates.map(({ holes, vernierHoles = 1 }) => holes * vernierHoles);
        expect(indexDivisions(head, count).exact).toBe(places.some((each) => each % count === 0));
      }),
    );
  });

  it("prefers to do without the row, then the fewest spaces", () => {
    const head = { ...byDegrees, directPlates: [{ name: "a", holes: 8, vernierHoles: 3 }, ...byGears.directPlates] };
    const of = (count: number) =>
      indexDivisions(head, count).settings.map((setting) => [setting.plate, setting.spaces, "vernierHoles" in setting]);
    expect(of(24)).toEqual([
      ["collar", 1, false],
      ["five", 3, false],
      ["a", 1, true],
    ]);
    expect(of(8)).toEqual([
      ["a", 1, false],
      ["collar", 3, false],
      ["small", 7, false],
      ["five", 9, false],
    ]);
  });

  it("every setting is proved by walking it on the head, and refused on another", () => {
    for (const count of [5, 7, 12, 40, 45, 60, 72]) {
      for (const head of [byDegrees, byGears]) {
        for (const setting of indexDivisions(head, count).settings) expect(prove(setting, { walkOn: head }).closes).toBe(true);
      }
    }
    const [setting] = indexDivisions(byDegrees, 40).settings;
    if (setting === undefined) throw new Error("40 is not found");
    expect(prove(setting, { walkOn: byGears }).closes).toBe(false);
    expect(refusalLines(() => planJob(byGears, { divisions: 40 }, { setting }))).toEqual([
      'setting: needs a direct plate "body" of 360 places',
    ]);
  });

  it("no method of the crank is tried, and none says why but that there is no crank", () => {
    const answer = indexDivisions(byDegrees, 7);
    expect(answer.impossible?.teethPerMoveTried).toBe(1);
    expect(answer.impossible?.reasons.map(({ method, code }) => `${method} ${code}`)).toEqual([
      "direct no-multiple",
      "simple without",
      "differential without",
      "compound without",
      "dial without",
    ]);
    expect(answer.circlesThatWouldDo).toEqual([]);
    expect(answer.routes.map(({ kind }) => kind)).toEqual(["direct-plate", "count", "count", "near"]);
    expect(answer.nearestCounts).toEqual([6, 8]);
  });

  it("an angle is done where it is whole places", () => {
    expect(indexAngle(byDegrees, revolutions(33, 360)).settings[0]).toMatchObject({ spaces: 33, circle: 360, vernierHoles: 10 });
    expect(indexAngle(byGears, revolutions(7, 60)).settings[0]).toMatchObject({ spaces: 7, circle: 60, form: "gear" });
    expect(indexAngle(byDegrees, revolutions(1, 720)).exact).toBe(false);
  });
});

describe("where the places are", () => {
  it("through a row of holes: each hole and that of the row turn the spindle to the place", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 2, max: 12 }), fc.nat(), (holes, row, pick) => {
        const head = { ...byDegrees, directPlates: [{ name: "p", holes, vernierHoles: row }] };
        const divisors = Array.from({ length: holes * row }, (_, index) => index + 1).filter(
          (count) => (holes * row) % count === 0,
        );
        const divisions = divisors[pick % divisors.length] ?? 1;
        const { places } = planned(head, { divisions });
        for (const place of places) {
          if (place.by !== "moves" || place.hole === null) throw new Error("not by holes");
          const stands = { hole: place.hole, vernierHole: place.vernierHole ?? 0 };
          expect(turnedTo(holes, row, stands).equals(fromExact(place.angle))).toBe(true);
        }
      }),
    );
  });

  it("by the nearest place of all plates, never over half a place off, and as far as it says", () => {
    fc.assert(
      fc.property(withoutCrank, counts, (head, divisions) => {
        const setting = nearSettings(head, { divisions }).find(({ kind }) => kind === "nearest-direct");
        if (setting?.kind !== "nearest-direct") return;
        const { circle, vernierHoles = 1 } = setting;
        const all = head.directPlates.map((plate) => plate.holes * (plate.vernierHoles ?? 1));
        const worstOn = (places: number) =>
          Math.max(
            ...Array.from({ length: divisions }, (_, tooth) => {
              const past = (tooth * places) % divisions;
              return Math.min(past, divisions - past) / (divisions * places);
            }),
          );
        expect(setting.worstArcSeconds).toBeCloseTo(Math.min(...all.map(worstOn)) * 1_296_000, 6);
        const { places, worstArcSeconds } = planned(head, { divisions }, { by: "nearest-direct" });
        const miss = (place: Place) => {
          if (place.by !== "nearest-direct") throw new Error("not by a direct plate");
          const stands = { hole: place.hole, vernierHole: place.vernierHole ?? 0 };
          const off = turnedTo(circle / vernierHoles, vernierHoles, stands).sub(fromExact(place.angle));
          return off
            .sub(off.add(rational(1, 2)).floor())
            .mul(1_296_000)
            .valueOf();
        };
        for (const place of places) {
          expect(place.errorArcSeconds).toBeCloseTo(miss(place), 6);
          expect(Math.abs(place.errorArcSeconds)).toBeLessThanOrEqual(648_000 / circle);
        }
        expect(worstArcSeconds).toBeCloseTo(setting.worstArcSeconds, 6);
      }),
    );
  });

  it("by the plate that is least off, and by none where one has a hole for every place", () => {
    const near = (holes: readonly number[], divisions: number) => {
      const head = { ...byGears, directPlates: holes.map((each) => ({ name: `p${each}`, holes: each })) };
      const found = nearSettings(head, { divisions }).find(({ kind }) => kind === "nearest-direct");
      return found?.plate ?? null;
    };
    // Tooth 2 of 16 lies half-way between two holes of either.
    expect(near([72, 24], 16)).toBe("p72");
    expect(near([10, 30], 4)).toBe("p30");
    expect(near([30, 10], 30)).toBeNull();
    expect(near([9, 27], 2)).toBe("p27");
    expect(near([27, 9], 9)).toBeNull();
  });

  it("from the hole that was named as the start, on the plate and not in the row", () => {
    const { places } = planned(byDegrees, { divisions: 40 }, { startHole: 35 });
    expect(places.slice(0, 3)).toMatchObject([
      { hole: 35, vernierHole: 0 },
      { hole: 35, vernierHole: 9 },
      { hole: 0, vernierHole: 8 },
    ]);
    expect(refusalLines(() => planJob(byDegrees, { divisions: 40 }, { startHole: 36 }))[0]).toMatch(
      /^startHole: 36 is not a hole/,
    );
  });

  it("by the ring alone, from one zero", () => {
    const { places, way, exact } = planned(byRing, { divisions: 7 });
    expect([way.by, exact]).toEqual(["ring", false]);
    expect(places[1]?.ring).toMatchObject({ mark: 51, line: 5 });
    expect(dialReadings(byRing, 7).worstRing?.arcSeconds).not.toBe(0);
  });

  it("a setting that was tampered with is refused", () => {
    const setting = nearSettings(byDegrees, { divisions: 7 }).find(({ kind }) => kind === "nearest-direct");
    if (setting === undefined) throw new Error("7 is not near");
    const asked = (changed: object) =>
      refusalLines(() => planJob(byDegrees, { divisions: 7 }, { setting: { ...setting, ...changed } as never }));
    expect(asked({})).toEqual([]);
    expect(asked({ placesPerTurn: 36 })).toEqual(["setting: has 36 places in a turn on a plate of 360"]);
    expect(asked({ plate: "other" })).toEqual(['setting: needs a direct plate "other" of 360 places']);
    expect(asked({ wormRatio: ratio(40) })).toEqual(['setting: is for a worm ratio of "40"; the head has no crank']);
  });
});

describe("what is around a job", () => {
  it("unequal spaces go by the ring; where places on holes are wanted there are none", () => {
    const spacing = unequalSpacing(byRing, [revolutions(1, 8), revolutions(3, 8), revolutions(1, 2)]);
    expect(spacing.circle).toBeNull();
    expect(spacing.places.map(({ ring }) => ring?.mark)).toEqual([0, 45, 180]);
    expect(refusalLines(() => proposeSpacing(byGears, 6))[0]).toMatch(/^head: it has no index plate/);
  });

  it("a kit counts what is done and proposes no circle and no gear", () => {
    const { byMethod, bestCircles, bestPlates, bestGears, missing } = coverage(byGears, { from: 2, to: 30 });
    expect(byMethod.direct).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 18, 20, 24, 28, 30]);
    expect(missing).toContain(11);
    expect([bestCircles, bestPlates, bestGears]).toEqual([[], [], []]);
  });

  it("a plate drilled by one says what ratio it is to serve on", () => {
    expect(refusalLines(() => drillPlate(byDegrees, 12, { diameter: 80 }))[0]).toMatch(/^servesRatio: is missing/);
    const plate = drillPlate(byDegrees, 12, { diameter: 80, servesRatio: 40 });
    expect(plate.planned && plate.worstHoleMm).toBe(0);
  });
});
