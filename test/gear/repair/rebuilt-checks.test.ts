import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overPins } from "../../../src/gear/over-pins.ts";
import { spanBetween } from "../../../src/gear/repair/mixed-teeth.ts";
import type { RebuiltCheck } from "../../../src/gear/repair/rebuilt-checks.ts";
import { thicknessCheck } from "../../../src/gear/repair/thickness-check.ts";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spanOver } from "../../../src/gear/span.ts";
import { type SpurGear, spurGear } from "../../../src/gear/spur-gear.ts";
import { InputError } from "../../../src/number/errors.ts";
import { type DrawnGear, type Lost, measuredAcross, measuredOverPins, measuredSpan, shared } from "../../support/drawn-gear.ts";
import { drawnOverPins, drawnSpan } from "../../support/drawn-tooth.ts";
import { runs } from "../../support/sweep.ts";

/** One measure of a check, with the rebuilt teeth that it judges. */
interface Reading {
  readonly check: RebuiltCheck;
  readonly of: readonly number[];
  readonly length: number;
}

/** Every measure that the repair asks for, taken on the gear as drawn. */
function readingsOf(checks: readonly RebuiltCheck[], drawn: DrawnGear): readonly Reading[] {
  return checks.flatMap((check) => readingsOfOne(check, drawn));
}

function readingsOfOne(check: RebuiltCheck, drawn: DrawnGear): readonly Reading[] {
  switch (check.code) {
    case "across":
      return check.teeth.map((tooth) => ({ check, of: [tooth], length: measuredAcross(drawn, tooth, check.blade) }));
    case "span":
      return check.spans.map(({ fromTooth, toTooth, rebuiltTooth }) => ({
        check,
        of: [rebuiltTooth],
        length: measuredSpan(drawn, fromTooth, toTooth),
      }));
    case "over-pins":
      return check.places.map(({ toothSpace, opposite, rebuilt }) => ({
        check,
        of: rebuilt,
        length: measuredOverPins(drawn, check.pinDiameter, toothSpace, opposite),
      }));
  }
}

const passes = ({ check: { most, least }, length }: Reading, slack: number) =>
  length <= most + slack && (least === null || length >= least - slack);

const jobs = fc
  .record({
    teeth: fc.integer({ min: 8, max: 90 }),
    hundredths: fc.integer({ min: 50, max: 800 }),
    pressureAngle: fc.constantFrom(14.5, 20, 25),
    shift: fc.integer({ min: -10, max: 40 }),
    /** All in thousandths of a module. */
    soundLoss: fc.constantFrom(0, 0, 30, 83, 120),
    backlash: fc.integer({ min: 0, max: 200 }),
    losses: fc.array(fc.integer({ min: -80, max: 180 }), { minLength: 8, maxLength: 8 }),
    share: fc.integer({ min: 0, max: 10 }),
    first: fc.integer({ min: 1, max: 90 }),
    pattern: fc.constantFrom([0], [0, 1], [0, 1, 2], [0, 2], [0, 1, 4]),
  })
  .map(({ teeth, hundredths, pressureAngle, shift, soundLoss, first, pattern, ...rest }) => {
    const module = hundredths / 100;
    const thinning = (soundLoss * module) / 1000;
    const gear = cuttable({ teeth, module, pressureAngle, profileShift: shift / 100, thinning });
    const damaged = pattern.map((step) => ((first + step - 1) % teeth) + 1);
    return gear === null ? null : { gear, module, thinning, damaged, ...rest };
  })
  .filter((job) => job !== null);

function cuttable(spec: Parameters<typeof spurGear>[0]): SpurGear | null {
  try {
    return spurGear(spec);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** The gear with its sound teeth worn and the rebuilt ones as they came out. */
function drawnOf(gear: SpurGear, lost: (tooth: number) => Lost): DrawnGear {
  const { teeth, module, pressureAngle, profileShift, tipDiameter } = gear;
  return { teeth, module, pressureAngle, profileShift, tipDiameter, lost };
}

/** How far a drawn measure may be from a reckoned one, in mm. */
const hair = (gear: SpurGear) => 1e-7 * gear.referenceDiameter;

describe("the checks of one gear", () => {
  const shape = (checks: readonly RebuiltCheck[]) =>
    checks.map((check) => {
      const places =
        check.code === "across"
          ? check.teeth
          : check.code === "span"
            ? check.spans.map(({ fromTooth, toTooth, rebuiltTooth }) => `${fromTooth}–${toTooth} of ${rebuiltTooth}`)
            : check.places.map(({ toothSpace, opposite, rebuilt }) => `${toothSpace}|${opposite} of ${rebuilt}`);
      return [check.code === "over-pins" ? check.between : check.code, places.join(", "), check.holdsIf.join(" ")];
    });
  const shapeOf = (spec: Partial<Parameters<typeof spurGear>[0]>, damaged: readonly number[], backlash?: number) =>
    shape(toothRepair(spurGear({ teeth: 40, module: 3, ...spec }), { damaged, backlash }).checks);

  it("the blade is set to the chord of a tooth of full thickness, however thin the sound ones are", () => {
    for (const thinning of [0, 0.25]) {
      const [across] = toothRepair(spurGear({ teeth: 40, module: 3, thinning }), { damaged: [7] }).checks;
      if (across?.code !== "across") throw new Error("there is no measure across the tooth");
      expect(across.blade).toBeCloseTo(spurGear({ teeth: 40, module: 3 }).chordalAddendum, 12);
    }
  });

  it("two teeth side by side, of an even count", () => {
    expect(shapeOf({}, [8, 7])).toEqual([
      ["across", "7, 8", ""],
      ["span", "3–7 of 7, 7–11 of 7, 4–8 of 8, 8–12 of 8", "loss-shared"],
      ["rebuilt-and-sound", "6|26 of 7, 8|28 of 8", "loss-shared"],
      ["rebuilt-teeth", "7|27 of 7,8", "loss-shared teeth-alike"],
    ]);
  });

  it("two teeth apart, of an odd count: the space nearly opposite may be recut, then it is the other", () => {
    // 20 and 21 spaces on from 6 are 26, which is recut, and 27.
    expect(shapeOf({ teeth: 41 }, [7, 26])).toEqual([
      ["across", "7, 26", ""],
      ["span", "3–7 of 7, 7–11 of 7, 22–26 of 26, 26–30 of 26", "loss-shared"],
      ["rebuilt-and-sound", "7|28 of 7, 25|4 of 26", "loss-shared"],
      ["rebuilt-and-sound", "6|27 of 7, 26|5 of 26", "loss-shared"],
    ]);
  });

  it("a span from a rebuilt tooth to another tells of neither; pins with no sound space opposite are not there", () => {
    expect(shapeOf({}, [7, 11])[1]).toEqual(["span", "3–7 of 7, 11–15 of 11", "loss-shared"]);
    expect(shapeOf({ teeth: 12 }, [3, 9]).map(([what]) => what)).toEqual(["across", "span"]);
  });

  it("no caliper below the pitch circle, no jaws or pins that do not rest on the flanks", () => {
    const codes = (spec: Partial<Parameters<typeof spurGear>[0]>, backlash?: number) =>
      shapeOf(spec, [1], backlash).map(([what]) => what);
    expect(codes({ module: 0.4 })).toEqual(["across", "span", "rebuilt-and-sound"]);
    expect(codes({ tipDiameter: 119 })).not.toContain("across");
    expect(codes({ tipDiameter: 129.75 })).toEqual(["across", "span"]);
    const spanless = { teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" } as const;
    expect(codes(spanless)).not.toContain("span");
  });

  it("no pins where one would drop below the tips beside a tooth that has lost all it may", () => {
    const codes = (backlash: number) => shapeOf({}, [1], backlash).map(([what]) => what);
    expect(codes(0.3)).toEqual(["across", "span", "rebuilt-and-sound"]);
    expect(codes(8)).toEqual(["across", "span"]);
  });

  it.each([
    [40, [7, 8]],
    [41, [7, 26]],
    [41, [7, 8, 27]],
  ])(
    "of %i teeth, measured as drawn: the most is of full teeth, the least of those that have lost all they may",
    (teeth, damaged) => {
      const thinning = 0.24945;
      const gear = spurGear({ teeth, module: 3, thinning });
      const { checks, check } = toothRepair(gear, { damaged, backlash: 0.3 });
      for (const [loss, end] of [
        [0, "most"],
        [check?.mayLose ?? 0, "least"],
      ] as const) {
        const drawn = drawnOf(gear, (tooth) => shared(damaged.includes(tooth) ? loss : thinning));
        for (const { check: each, length } of readingsOf(checks, drawn)) expect(each[end]).toBeCloseTo(length, 6);
      }
      for (const { least } of toothRepair(gear, { damaged }).checks) expect(least).toBeNull();
    },
  );
});

describe("the checks of a rebuilt tooth against a gear drawn point by point", () => {
  it("every check passes the teeth that are right, and no other, where all are alike and wear by both flanks", () => {
    fc.assert(
      fc.property(jobs, ({ gear, module, thinning, damaged, backlash, losses: [loss = 0] }) => {
        const { checks, check } = toothRepair(gear, { damaged, backlash: (backlash * module) / 1000 });
        const mayLose = check?.mayLose ?? 0;
        const rebuilt = (loss * module) / 1000;
        const drawn = drawnOf(gear, (tooth) => shared(damaged.includes(tooth) ? rebuilt : thinning));
        for (const reading of readingsOf(checks, drawn)) {
          const slack = hair(gear);
          if (rebuilt >= 0 && rebuilt <= mayLose) expect(passes(reading, slack)).toBe(true);
          // A measure feels a loss by a fifth at the least.
          else if (rebuilt < -10 * slack || rebuilt > mayLose + 10 * slack) expect(passes(reading, -slack)).toBe(false);
        }
      }),
      runs(100),
    );
  });

  it("no check passes a tooth that another must refuse, but under the condition that it names", () => {
    fc.assert(
      fc.property(jobs, ({ gear, module, thinning, damaged, backlash, losses, share }) => {
        const { checks, check } = toothRepair(gear, { damaged, backlash: (backlash * module) / 1000 });
        const mayLose = check?.mayLose ?? 0;
        const lossOf = (tooth: number) => ((losses[damaged.indexOf(tooth)] ?? 0) * module) / 1000;
        const isRight = (tooth: number) => lossOf(tooth) >= -hair(gear) * 10 && lossOf(tooth) <= mayLose + 10 * hair(gear);
        const after = share / 10;
        const unshared = (tooth: number): Lost => ({ before: lossOf(tooth) * (1 - after), after: lossOf(tooth) * after });
        const alikeShared = drawnOf(gear, (tooth) => shared(damaged.includes(tooth) ? lossOf(tooth) : thinning));
        const each = drawnOf(gear, (tooth) => (damaged.includes(tooth) ? unshared(tooth) : shared(thinning)));
        for (const { conditions, drawn } of [
          { conditions: ["loss-shared"], drawn: alikeShared },
          { conditions: [], drawn: each },
        ]) {
          for (const reading of readingsOf(checks, drawn)) {
            if (!reading.check.holdsIf.every((condition) => conditions.includes(condition))) continue;
            if (passes(reading, 0)) expect(reading.of.every(isRight)).toBe(true);
          }
        }
      }),
      runs(100),
    );
  });

  it("the mean of a tooth's spans to both sides holds however worn and rebuilt teeth have shared their loss", () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 0, max: 10 }), ({ gear, module, thinning, damaged, backlash, losses, share }, worn) => {
        const { checks, check } = toothRepair(gear, { damaged, backlash: (backlash * module) / 1000 });
        const loss = ((losses[0] ?? 0) * module) / 1000;
        const split = (of: number, tenths: number): Lost => ({ before: (of * (10 - tenths)) / 10, after: (of * tenths) / 10 });
        const drawn = drawnOf(gear, (tooth) => (damaged.includes(tooth) ? split(loss, share) : split(thinning, worn)));
        const spans = readingsOf(checks, drawn).filter(({ check: { code } }) => code === "span");
        for (const tooth of damaged) {
          const both = spans.filter(({ of }) => of[0] === tooth);
          const [one, other] = both;
          if (one === undefined || other === undefined) continue;
          const mean = { ...one, length: (one.length + other.length) / 2 };
          const slack = hair(gear);
          if (loss >= 0 && loss <= (check?.mayLose ?? 0)) expect(passes(mean, slack)).toBe(true);
          else if (loss < -10 * slack || loss > (check?.mayLose ?? 0) + 10 * slack) expect(passes(mean, -slack)).toBe(false);
        }
      }),
      runs(100),
    );
  });

  it("both ends of a thickness are what one rebuilt tooth between sound ones measures", () => {
    fc.assert(
      fc.property(jobs, ({ gear, module, thinning, backlash }) => {
        const { full, least, mayLose } = thicknessCheck(gear, { backlash: (backlash * module) / 1000 });
        for (const [loss, end] of [
          [0, full],
          [mayLose, least],
        ] as const) {
          const drawn = drawnOf(gear, (tooth) => shared(tooth === 1 ? loss : thinning));
          const near = (reckoned: number, measured: number) => expect(Math.abs(reckoned - measured)).toBeLessThan(hair(gear));
          if (end.chordalAddendum >= 0) near(end.chordalThickness, measuredAcross(drawn, 1, end.chordalAddendum));
          if (end.span) near(end.span.length, measuredSpan(drawn, 1, end.span.teeth));
          // Space 1 follows tooth 1: back over it is the shorter way to the space opposite.
          const opposite = gear.teeth + 1 - Math.floor(gear.teeth / 2);
          if (end.overPins) near(end.overPins.length, measuredOverPins(drawn, end.overPins.pinDiameter, 1, opposite));
        }
      }),
      runs(100),
    );
  });

  it("draws what one tooth drawn alone measures, where nothing is lost", () => {
    const gear = spurGear({ teeth: 41, module: 3, profileShift: 0.1 });
    const drawn = drawnOf(gear, () => shared(0));
    expect(measuredSpan(drawn, 3, 7)).toBeCloseTo(drawnSpan(gear, 5).length, 9);
    expect(measuredOverPins(drawn, 5.25, 3, 23)).toBeCloseTo(drawnOverPins(gear, 5.25, gear.tipDiameter), 8);
    expect(measuredOverPins(drawn, 5.25, 3, 24)).toBeCloseTo(overPins(gear, 5.25), 8);
    expect(measuredAcross(drawn, 3, gear.chordalAddendum)).toBeCloseTo(gear.chordalThickness, 9);
  });
});

describe("40 teeth of module 3, the sound ones a quarter of a millimetre thin", () => {
  const full = spurGear({ teeth: 40, module: 3 });
  const thinning = ((full.span?.length ?? 0) - 41.3) / Math.cos(Math.PI / 9);
  const { checks } = toothRepair(spurGear({ teeth: 40, module: 3, thinning }), { damaged: [7, 8], backlash: 0.3 });

  it("the span from a rebuilt tooth to a sound one is W less half of what both have lost: 41.347 to 41.417", () => {
    const span = checks.find(({ code }) => code === "span");
    expect(span?.most).toBeCloseTo(41.4172, 4);
    expect(span?.least).toBeCloseTo(41.3467, 4);
  });

  it("names the condition of each, and the teeth and spaces that it is for", () => {
    expect(checks).toMatchObject([
      { code: "across", teeth: [7, 8], holdsIf: [] },
      {
        code: "span",
        teeth: 5,
        holdsIf: ["loss-shared"],
        spans: [
          { fromTooth: 3, toTooth: 7 },
          { fromTooth: 7, toTooth: 11 },
          { fromTooth: 4, toTooth: 8 },
          { fromTooth: 8, toTooth: 12 },
        ],
      },
      {
        code: "over-pins",
        between: "rebuilt-and-sound",
        holdsIf: ["loss-shared"],
        places: [
          { toothSpace: 6, opposite: 26, rebuilt: [7] },
          { toothSpace: 8, opposite: 28, rebuilt: [8] },
        ],
      },
      {
        code: "over-pins",
        between: "rebuilt-teeth",
        holdsIf: ["loss-shared", "teeth-alike"],
        places: [{ toothSpace: 7, opposite: 27, rebuilt: [7, 8] }],
      },
    ]);
  });
});

it("a span between teeth of unlike losses is there where the jaws rest on both flanks, and else none", () => {
  const gear = spurGear({ teeth: 20, module: 2 });
  const { length } = spanOver(gear, 3);
  expect(spanBetween(gear, 3, [0, 0])).toBeCloseTo(length, 12);
  // Each flank stands back by half of its tooth's loss, square to itself.
  expect(spanBetween(gear, 3, [0.1, 0])).toBeCloseTo(length - 0.05 * Math.cos(Math.PI / 9), 12);
  expect(spanBetween(gear, 3, [0, 0.1])).toBe(spanBetween(gear, 3, [0.1, 0]));
  // Over nine of 20 teeth they stand past the tips, over two of 60 below the flanks.
  expect(spanBetween(gear, 9, [0, 0])).toBeNull();
  expect(spanBetween(spurGear({ teeth: 60, module: 2 }), 2, [0, 0])).toBeNull();
});
