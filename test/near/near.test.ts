import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  type Head,
  indexAngle,
  indexDivisions,
  nearSettings,
  planJob,
  prepare,
  revolutions,
} from "../../src/index.ts";
import { nearOn } from "../../src/near/near.ts";
import { effortOf } from "../../src/number/effort.ts";
import { searchOn } from "../../src/search/exact-settings.ts";
import { nearRow } from "../published/wrong-rows.ts";
import { counts } from "../support/arbitraries.ts";
import { arcSecondsPerTurn, isMove, offByEye, withScales } from "../support/near-errors.ts";
import { threePlates as geared, ready, twoFaces } from "../support/ready.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");

/** The least worst error with which a head does a count, in arc-seconds; infinite where it cannot at all. */
function leastError(head: Head, divisions: number, teethPerMove: number): number {
  const { exact, near } = indexDivisions(head, divisions, { teethPerMove, limit: 1 });
  return exact ? 0 : (near[0]?.worstArcSeconds ?? Number.POSITIVE_INFINITY);
}

describe("the list of near settings", () => {
  it("is in order of worst error, the ring's counted as no less than half of what it shows", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const errors = nearSettings(defineHead(spec), { divisions }).map(offByEye);
        expect(errors).toEqual(errors.toSorted((a, b) => a - b));
      }),
    );
  });

  it("has the ring with a mark for every place, before holes that are degrees out and after those that are near", () => {
    const plates = [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }];
    const spin = defineHead({ wormRatio: 5, plates, ring: { marksPerTurn: 360 } });
    // 24 are 15° apart, a mark each; in spaces of the 16 circle, which are 4.5°, three and a third.
    const [ring, holes] = nearSettings(spin, { divisions: 24 });
    expect([ring?.kind, ring?.worstArcSeconds, ring?.exact]).toEqual(["ring", 0, false]);
    expect([holes?.kind, holes?.worstArcSeconds]).toEqual(["nearest-hole", 5400]);
    const plan = planJob(spin, { divisions: 24 });
    expect([plan.planned && plan.way.by, plan.planned && plan.places[5]?.ring?.mark]).toEqual(["ring", 75]);
    // 8 are 45° apart, a mark each; of the 36,900 holes in a turn the nearest is half of 35.1″ off: no ring is read so near.
    const fine = defineHead({ wormRatio: 900, plates: [{ name: "1", circles: [41] }], ring: { marksPerTurn: 360 } });
    const kinds = nearSettings(fine, { divisions: 8 }).map(({ kind }) => kind);
    expect([kinds[0], kinds.at(-1)]).toEqual(["nearest-hole", "ring"]);
  });

  it("leaves out what would put a tooth as near to its neighbour's place", () => {
    fc.assert(
      fc.property(withScales(), fc.integer({ min: 1, max: 5000 }), (spec, divisions) => {
        for (const near of nearSettings(defineHead(spec), { divisions })) {
          expect(near.worstArcSeconds).toBeLessThan(arcSecondsPerTurn / (2 * divisions));
        }
      }),
    );
  });

  it("never gets worse with a wider kit or more teeth per move", () => {
    const gear = fc.integer({ min: 8, max: 48 });
    fc.assert(
      fc.property(withScales(), counts, fc.integer({ min: 1, max: 4 }), gear, (spec, divisions, teethPerMove, added) => {
        const head = defineHead(spec);
        const before = leastError(head, divisions, teethPerMove) + 1e-9;
        expect(leastError(head, divisions, teethPerMove + 3)).toBeLessThanOrEqual(before);
        const gears = [...(spec.gears ?? []), added];
        expect(
          leastError(defineHead({ ...spec, gearing: spec.gearing ?? {}, gears }), divisions, teethPerMove),
        ).toBeLessThanOrEqual(before);
        const plates = [...(spec.plates ?? []), { name: "another", circles: [added] }];
        expect(leastError(defineHead({ ...spec, plates }), divisions, teethPerMove)).toBeLessThanOrEqual(before);
      }),
    );
  });

  it("is empty where an exact setting was found, unless asked for", () => {
    expect(indexDivisions(geared, 127).near).toEqual([]);
    const near = indexDivisions(geared, 127, { near: true }).near;
    expect(near.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["compound", "nearest-hole"]));
    expect(near.map(({ kind }) => kind)).not.toContain("one-pair");
  });

  it("offers nothing that an easier exact setting makes needless, but the ring, which is looked at and not set", () => {
    const kinds = (head: Head, divisions: number) => nearSettings(head, { divisions }).map(({ kind }) => kind);
    expect(kinds(geared, 60)).toEqual(["ring"]);
    // 64 are 1 turn and 585 of the dial's 1440 places each.
    expect(kinds(ready("ratio-90-dial"), 64)).toEqual(["ring"]);
  });

  it("holds only what the methods asked for allow, and the scales", () => {
    const { near } = indexDivisions(geared, 787, { methods: ["differential"] });
    expect(near.filter(({ method }) => method !== "differential" && method !== "ring")).toEqual([]);
    expect(near.length).toBeGreaterThan(0);
  });
});

describe("of settings that come as near", () => {
  it("that on the plate that is mounted is taken, by every method", () => {
    const plates = ["1", "2"].map((name) => ({ name, circles: [17, 19, 20] }));
    const head = defineHead({ wormRatio: 40, plates, gears: [24, 36, 48, 72], rearPin: true });
    for (const mounted of ["1", "2"]) {
      const near = nearSettings(head, { divisions: 73 }, { teethPerMove: 1, mounted });
      expect(near.map(({ kind, plate }) => [kind, plate])).toEqual(
        ["compound", "two-pair", "one-pair", "nearest-hole", "simple"].map((kind) => [kind, mounted]),
      );
    }
    // A quarter of three turns by thirtieths of one plate and fifteenths of the other, as far past it as short of it.
    const unlike = [
      { name: "1", circles: [5, 6] },
      { name: "2", circles: [3, 5] },
    ];
    const other = defineHead({ wormRatio: 3, plates: unlike, rearPin: true });
    for (const mounted of ["1", "2"])
      expect(nearSettings(other, { divisions: 4 }, { methods: ["compound"], mounted })[0]).toMatchObject({ plate: mounted });
    // 2 : 3 is 48 to 72, and not 24 to 36.
    const [pair] = nearSettings(head, { divisions: 787 }, { teethPerMove: 1 });
    expect(pair).toMatchObject({ kind: "one-pair", gears: { drivers: [48], driven: [72] } });
  });

  it("the larger circle is taken: a third of a space of 10 is half of one of 15", () => {
    const head = defineHead({ wormRatio: 7, plates: [{ name: "1", circles: [10, 15] }] });
    expect(nearSettings(head, { divisions: 6 })[0]).toMatchObject({ kind: "nearest-hole", circle: 15 });
  });

  it("a ring with a mark for every place goes before holes that are off by half of what it shows, and after nearer ones", () => {
    const kindsOn = (holes: number, divisions: number) => {
      const head = defineHead({ wormRatio: 5, plates: [{ name: "1", circles: [holes] }], ring: { marksPerTurn: 360 } });
      return nearSettings(head, { divisions }).map(({ kind }) => kind);
    };
    // A third of a space of 48 is 1800″ of the work, half of a degree as well; half of a space of 90 is 1440″.
    expect(kindsOn(48, 9).slice(0, 2)).toEqual(["ring", "nearest-hole"]);
    expect(kindsOn(90, 24).slice(0, 2)).toEqual(["nearest-hole", "ring"]);
  });
});

describe("what a train is called", () => {
  it("goes by its pairs, and by whether it may foul", () => {
    const few = defineHead({ wormRatio: 4, plates: [{ name: "1", circles: [7] }], gears: [11, 27, 30, 32] });
    const trains = [...nearSettings(geared, { divisions: 787 }), ...nearSettings(few, { divisions: 22 }, { teethPerMove: 1 })];
    const named = trains.flatMap((near) => ("gears" in near ? [[near.kind, near.gears.drivers, near.gears.driven]] : []));
    // Of 30 on 11 the shafts stand 41 half modules apart; 27 on the stud and 15 for the spindle take 42.
    expect(named).toEqual([
      ["two-pair", [72, 24], [56, 86]],
      ["one-pair", [56], [86]],
      ["may-foul", [30, 27], [11, 32]],
      ["one-pair", [27], [32]],
    ]);
  });
});

describe("what is not tried", () => {
  it("is any move once there are no steps left for it: only the places from one zero are there", () => {
    for (const head of [ungeared, geared]) {
      const found = (divisions: number) => nearOn(searchOn(head))({ divisions }, effortOf(0));
      for (const divisions of [83, 787]) expect(found(divisions).filter(isMove)).toEqual([]);
      expect(found(787).map(({ kind }) => kind)).toEqual(["nearest-hole"]);
    }
  });

  it("is a place from zero that is half a step off, and one that is less is: 350 and 450 by a ring of degrees", () => {
    const head = defineHead({ wormRatio: 5, directPlates: [{ name: "nose", holes: 24 }], ring: { marksPerTurn: 360 } });
    expect(nearSettings(head, { divisions: 350 })[0]?.worstArcSeconds).toBeCloseTo((17 / 35) * 3600, 6);
    expect(nearSettings(head, { divisions: 450 })).toEqual([]);
  });

  it("is a dial where the methods asked for are others", () => {
    const kinds = nearSettings(ready("ratio-90-dial"), { divisions: 97 }, { methods: ["simple"] }).map(({ kind }) => kind);
    expect(kinds).toEqual(["ring"]);
  });

  it("is gearing for an angle of over one turn of the work", () => {
    const kinds = indexAngle(geared, revolutions("100003/997")).near.map(({ kind }) => kind);
    expect(kinds).toContain("compound");
    expect(kinds).not.toContain("two-pair");
    expect(indexAngle(geared, revolutions("303/9973"), { near: true }).near.map(({ kind }) => kind)).toContain("two-pair");
  });

  it("is a move where the direct plate serves", () => {
    const head = defineHead({
      wormRatio: 5,
      plates: [{ name: "1", circles: [19] }],
      directPlates: [{ name: "nose", holes: 24 }],
    });
    expect(indexDivisions(head, 24, { near: true }).near.map(({ kind }) => kind)).toEqual(["nearest-hole"]);
    expect(nearSettings(head, { divisions: 24 }, { methods: ["simple"] }).filter(isMove).length).toBeGreaterThan(0);
  });
});

describe("how near a head comes", () => {
  // The figures to reach were found by an independent trial of every circle, pair and train.
  const closingErrors = (head: Head, teethPerMove: number) => {
    const errors: number[] = [];
    const prepared = prepare(head);
    for (let divisions = 2; divisions <= 1000; divisions += 1) {
      const { exact, near } = indexDivisions(prepared, divisions, { teethPerMove, limit: 1 });
      errors.push(exact ? 0 : Math.min(...near.filter(isMove).map(({ closingArcSeconds }) => closingArcSeconds)));
    }
    return errors.sort((a, b) => a - b);
  };

  it("three plates, no gears, up to 12 teeth per move: half of all counts within 21″, all within 682″", () => {
    const errors = closingErrors(ungeared, 12);
    expect(errors.filter((error) => error === 0)).toHaveLength(337);
    expect(errors[499]).toBeCloseTo(21.36, 2);
    expect(errors.at(-1)).toBeCloseTo(682.11, 2);
  });

  it("three plates and twelve gears, one tooth per move: all within 53″", () => {
    expect(closingErrors(geared, 1).at(-1)).toBeCloseTo(53.0, 1);
  });

  it("two faces and nineteen gears, one tooth per move: all within 7.04″", () => {
    expect(closingErrors(twoFaces, 1).at(-1)).toBeCloseTo(7.04, 2);
  });

  it("comes as near to 106 as the row that goes about, which is 40.5″ out", () => {
    const closing = (nearRow.closing.turns / nearRow.closing.of) * arcSecondsPerTurn;
    const best = nearSettings(ungeared, { divisions: nearRow.meant }, { teethPerMove: nearRow.teeth }).filter(isMove)[0];
    expect(best?.closingArcSeconds).toBeLessThanOrEqual(closing + 1e-9);
  });
});
