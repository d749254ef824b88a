import { describe, expect, it } from "vitest";
import { depthRules } from "../../src/gear/depth-rules.ts";
import type { GearNote } from "../../src/gear/gear-notes.ts";
import { overPins, pinFits, pinRange } from "../../src/gear/over-pins.ts";
import { spanOver, thinningFromSpan } from "../../src/gear/span.ts";
import { type SpurGear, spurGear } from "../../src/gear/spur-gear.ts";
import type { SpurGearSpec } from "../../src/gear/spur-gear-spec.ts";
import { chordAt, spaceWidthAt, toothThicknessAt } from "../../src/gear/tooth-thickness.ts";
import { InputError } from "../../src/number/errors.ts";
import { basePitches, chords, navyTooth, overPins1728, spans20, usualPins } from "../published/gear-geometry.ts";
import { cited } from "../published/source.ts";
import { refusalKinds } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

const inch = 25.4;
/** Agreement with a printed figure: half a unit of its last place, or a whole one where the print may be cut off. */
const agrees = (value: number, printed: string, units = 0.5001) =>
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(units * 10 ** -(printed.split(".")[1]?.length ?? 0));
const refusal = (spec: unknown) => {
  try {
    spurGear(spec as SpurGearSpec);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return "not refused";
};

describe("published values", () => {
  it.each(basePitches.rows)(`module $m: pitch, thickness and base pitch (${cited(basePitches.source)})`, (row) => {
    const at20 = spurGear({ teeth: 40, module: row.m, pressureAngle: 20, wholeDepth: 2.16 * row.m });
    const at1430 = spurGear({ teeth: 40, module: row.m, pressureAngle: 14.5 });
    // Cut off after five places, not rounded.
    agrees(at20.circularPitch, row.p, 1);
    agrees(at20.toothThickness, row.S);
    agrees(at20.wholeDepth, row.h);
    agrees(at20.basePitch, row.pb20);
    agrees(at1430.basePitch, row.pb1430);
  });

  it(`the tooth of 1 DP (${cited(navyTooth.source)})`, () => {
    const gear = spurGear({ teeth: 40, diametralPitch: 1, pressureAngle: 14.5 });
    agrees(gear.addendum / inch, navyTooth.addendum);
    agrees(gear.dedendum / inch, navyTooth.dedendum);
    agrees(gear.wholeDepth / inch, navyTooth.wholeDepth);
    agrees(gear.toothThickness / inch, navyTooth.circularThickness);
    agrees(gear.wholeDepth / gear.circularPitch, navyTooth.wholeDepthOfPitch);
    expect(gear.wholeDepthRule).toEqual({ code: "depth-by-rule", rule: "2.157", system: "diametral pitch" });
  });

  it(`OD = (NT + 2)/DP and PD = NT·OD/(NT + 2) (${cited(navyTooth.source)})`, () => {
    const gear = spurGear({ teeth: 37, diametralPitch: 14, pressureAngle: 14.5 });
    expect(gear.tipDiameter / inch).toBeCloseTo(39 / 14, 12);
    expect(gear.referenceDiameter).toBeCloseTo((37 * gear.tipDiameter) / 39, 10);
  });

  it.each(usualPins.rows)(`pins of $modules m at $pressureAngle° (${cited(usualPins.source)})`, ({ pressureAngle, modules }) => {
    const gear = spurGear({ teeth: 40, module: 3, pressureAngle });
    expect(gear.usualPinDiameter).toBeCloseTo(3 * modules, 12);
    expect(overPins(gear, gear.usualPinDiameter)).toBeGreaterThan(gear.tipDiameter);
  });

  it.each(overPins1728.rows)(`$teeth teeth over 1.728 pins (${cited(overPins1728.source)})`, ({ teeth, at1430, at20 }) => {
    agrees(overPins(spurGear({ teeth, diametralPitch: 1, pressureAngle: 14.5 }), 1.728 * inch) / inch, at1430);
    agrees(overPins(spurGear({ teeth, diametralPitch: 1 }), 1.728 * inch) / inch, at20);
  });

  it.each(spans20.rows)(`$teeth teeth, span over $over (${cited(spans20.source)})`, ({ teeth, over, length }) => {
    const { span } = spurGear({ teeth, module: 1 });
    expect(span?.teeth).toBe(over);
    agrees(span?.length ?? 0, length);
  });

  it.each(chords.rows)(`$teeth teeth, chordal thickness (${cited(chords.source)})`, ({ teeth, thickness, addendum }) => {
    const gear = spurGear({ teeth, module: 1 });
    agrees(gear.chordalThickness, thickness);
    agrees(gear.chordalAddendum, addendum);
  });
});

describe("laws", () => {
  it("diametral pitch is the same gear in another unit", () => {
    const metric = spurGear({ teeth: 57, module: 1.5875 });
    const imperial = spurGear({ teeth: 57, diametralPitch: 16 });
    expect(imperial.tipDiameter).toBeCloseTo(metric.tipDiameter, 10);
    expect(overPins(imperial, 3)).toBeCloseTo(overPins(metric, 3), 10);
    expect(metric.diametralPitch).toBeCloseTo(16, 12);
    expect(metric.wholeDepthRule).toEqual({ code: "depth-by-rule", rule: "2.25", system: "module" });
    expect(imperial.wholeDepthRule).toEqual({ code: "depth-by-rule", rule: "2.25", system: "diametral pitch" });
  });

  it.each(depthRules)("whole depth by the rule $name", ({ name, addendum, dedendum, added }) => {
    const gear = spurGear({ teeth: 40, module: 2, depthRule: name });
    expect(gear.wholeDepth).toBeCloseTo(2 * (addendum + dedendum) + added, 12);
    expect(gear.tipDiameter).toBeCloseTo(80 + 4 * addendum, 12);
    expect(gear.wholeDepthRule).toEqual({ code: "depth-by-rule", rule: name, system: "module" });
  });

  it("a measured tip and depth stand in for the rule's", () => {
    const gear = spurGear({ teeth: 40, module: 2, tipDiameter: 83.9, wholeDepth: 4.4 });
    expect(gear).toMatchObject({ tipDiameter: 83.9, wholeDepthRule: { code: "depth-as-given" }, warnings: [] });
    expect(gear.wholeDepth).toBeCloseTo(4.4, 12);
    expect(gear.addendum).toBeCloseTo(1.95, 12);
  });

  it("thinning comes off thickness and span, and the span gives it back", () => {
    const full = spurGear({ teeth: 40, module: 2 });
    const thin = spurGear({ teeth: 40, module: 2, thinning: 0.1 });
    expect(full.toothThickness - thin.toothThickness).toBeCloseTo(0.1, 12);
    expect(toothThicknessAt(full, 82) - toothThicknessAt(thin, 82)).toBeCloseTo((0.1 * 82) / 80, 12);
    expect(thinningFromSpan(full, thin.span ?? { teeth: 0, length: 0 })).toBeCloseTo(0.1, 10);
  });

  it("subtracts half of the backlash, taken square to the flank, from the span (MOT spur gear: measurement over multiple teeth)", () => {
    const normalBacklash = 0.12;
    const circumferential = normalBacklash / Math.cos((20 * Math.PI) / 180);
    const full = spurGear({ teeth: 40, module: 2 });
    const thin = spurGear({ teeth: 40, module: 2, thinning: circumferential / 2 });
    expect((full.span?.length ?? 0) - (thin.span?.length ?? 0)).toBeCloseTo(normalBacklash / 2, 10);
  });

  it("a shift moves root and tip alike, and space and tooth make up the pitch", () => {
    for (const profileShift of [-0.2, 0.3]) {
      const gear = spurGear({ teeth: 40, module: 2, profileShift });
      expect(gear.rootDiameter).toBeCloseTo(80 - 4 * (1.25 - profileShift), 12);
      expect(gear.tipDiameter).toBeCloseTo(80 + 4 * (1 + profileShift), 12);
      expect(gear.toothThickness + gear.spaceWidth).toBeCloseTo(2 * Math.PI, 12);
    }
  });

  it("pins between the two published angles are those of the nearer, 17° those of 20° (our own choice)", () => {
    const modules = [14.5, 16.9, 17, 17.5, 20].map(
      (pressureAngle) => spurGear({ teeth: 40, module: 1, pressureAngle }).usualPinDiameter,
    );
    expect(modules).toEqual([1.7, 1.7, 1.75, 1.75, 1.75]);
  });

  it("goes through JSON, and what comes back still measures", () => {
    const gear = spurGear({ teeth: 86, module: 2, profileShift: 0.1 });
    const back = JSON.parse(JSON.stringify(gear)) as SpurGear;
    expect(back).toEqual(gear);
    expect(spanOver(back, 10)).toEqual(spanOver(gear, 10));
  });

  it("takes undefined as left out", () => {
    const padded = { teeth: 40, module: 2, diametralPitch: undefined, tipDiameter: undefined, thinning: undefined };
    expect(spurGear({ ...padded, pressureAngle: undefined, depthRule: undefined })).toEqual(spurGear({ teeth: 40, module: 2 }));
  });

  it("is frozen", () => {
    const gear = spurGear({ teeth: 86, module: 2 });
    const warned = spurGear({ teeth: 8, module: 2 });
    expect(warned.warnings).toHaveLength(1);
    expect(
      [gear, gear.span, gear.wholeDepthRule, warned.warnings, ...warned.warnings].every((part) => Object.isFrozen(part)),
    ).toBe(true);
  });
});

describe("warnings", () => {
  it.each([
    [
      { teeth: 17, module: 1 },
      { code: "undercut", teeth: 17, pressureAngle: 20, profileShift: 0, fewestTeeth: 18 },
    ],
    [
      { teeth: 31, module: 1, pressureAngle: 14.5 },
      { code: "undercut", fewestTeeth: 32 },
    ],
    [
      // 2 · 1.5/sin² 20° is 25.6.
      { teeth: 17, module: 1, profileShift: -0.5 },
      { code: "undercut", fewestTeeth: 26 },
    ],
    [
      { teeth: 12, module: 1, profileShift: 0.7 },
      { code: "thin-tip", usualLeast: 0.2 },
    ],
    [
      { teeth: 40, module: 1, tipDiameter: 43 },
      { code: "tip-far-from-rule", tipDiameter: 43, byRule: 42 },
    ],
    [
      { teeth: 40, module: 2, tipDiameter: 79 },
      { code: "no-chord", referenceDiameter: 80 },
    ],
    [
      { teeth: 40, module: 1, tipDiameter: 41.4 },
      { code: "tip-far-from-rule", tipDiameter: 41.4, byRule: 42 },
    ],
  ] as [SpurGearSpec, Partial<GearNote>][])("%j", (spec, note) => {
    expect(spurGear(spec).warnings).toContainEqual(expect.objectContaining(note));
  });

  it("names the least shift that is not undercut, and a gear with it is not", () => {
    const [note] = spurGear({ teeth: 12, module: 1 }).warnings;
    if (note?.code !== "undercut") throw new Error("12 teeth are undercut");
    expect(spurGear({ teeth: 12, module: 1, profileShift: note.leastShift + 1e-9 }).warnings).toEqual([]);
    expect(spurGear({ teeth: 12, module: 1, profileShift: note.leastShift - 1e-9 }).warnings).not.toEqual([]);
    expect(spurGear({ teeth: 12, module: 1, profileShift: note.leastShift }).warnings).toEqual([]);
    expect(spurGear({ teeth: note.fewestTeeth, module: 1 }).warnings).toEqual([]);
  });

  it("measures in modules: a tip thinner than a fifth of one, and one over half a module from the rule's", () => {
    const codes = (spec: SpurGearSpec) => spurGear(spec).warnings.map(({ code }) => code);
    for (const module of [0.5, 1, 4]) {
      const tipOf = (modules: number) => ({ teeth: 40, module, tipDiameter: 42 * module + modules * module });
      expect([0.5, -0.5, 0.51, -0.51].map((modules) => codes(tipOf(modules)))).toEqual([
        [],
        [],
        ["tip-far-from-rule"],
        ["tip-far-from-rule"],
      ]);
      // 12 teeth with this shift are 0.08 of the module thick at the tip, those with the other 0.27, by the law of thickness.
      const tips = [0.7, 0.5].map((profileShift) => spurGear({ teeth: 12, module, profileShift }));
      expect(tips.map((gear) => toothThicknessAt(gear, gear.tipDiameter) / module < 0.2)).toEqual([true, false]);
      expect(tips.map(({ warnings }) => warnings.map(({ code }) => code))).toEqual([["thin-tip"], []]);
      for (const gear of tips) expect(gear.tipThickness).toBeCloseTo(toothThicknessAt(gear, gear.tipDiameter), 12);
    }
  });

  it("says nothing where there is nothing to say", () => {
    expect(spurGear({ teeth: 40, module: 0.5 }).warnings).toEqual([]);
    expect(spurGear({ teeth: 18, module: 1 }).warnings).toEqual([]);
    expect(spurGear({ teeth: 32, module: 1, pressureAngle: 14.5 }).warnings).toEqual([]);
    expect(spurGear({ teeth: 12, module: 1, profileShift: 0.3 }).warnings).toEqual([]);
  });
});

describe("refusals", () => {
  it.each([
    [{}, /module: no pitch is given; give one of.*teeth: undefined is not a whole number/],
    [{ teeth: 40, module: 2, diametralPitch: 12 }, /both given/],
    [{ teeth: 3, module: 2 }, /teeth: 3 is not a whole number from 4 to 10,000/],
    [{ teeth: 40.5, module: 2 }, /teeth/],
    [{ teeth: 40, module: 0 }, /module: 0 is not a module; give a number from 0.02 to 200 mm/],
    [{ teeth: 40, module: Number.NaN }, /NaN is not a module/],
    [{ teeth: 40, module: "2" }, /"2" is not a module/],
    [{ teeth: 40, diametralPitch: Number.POSITIVE_INFINITY }, /Infinity is not a diametral pitch/],
    [{ teeth: 40, module: 2, pressureAngle: 5 }, /pressureAngle: 5 is not a pressure angle/],
    [{ teeth: 40, module: 2, profileShift: 9 }, /profileShift: 9 is not a profile shift/],
    [{ teeth: 40, module: 2, depthRule: "2.3" }, /depthRule: "2.3" is not a depth rule; give one of 2.25, 2.157/],
    [{ teeth: 40, module: 2, wholedepth: 4 }, /there is no key "wholedepth"/],
    [null, /null is not an object/],
    [{ teeth: 8, module: 1, profileShift: 1.2 }, /come to a point at [\d.]+ mm, below the tip diameter/],
    [{ teeth: 4, module: 1, wholeDepth: 3.2 }, /deeper than the gear's radius/],
    [{ teeth: 4, module: 1, tipDiameter: 3.5, pressureAngle: 14.5 }, /within the base circle/],
    [{ teeth: 4, module: 1, wholeDepth: 3 }, /deeper than the gear's radius/],
    [{ teeth: 200, module: 1, tipDiameter: 180 }, /not above the root circle/],
    [{ teeth: 200, module: 1, tipDiameter: 197.5 }, /not above the root circle/],
    [{ teeth: 20, module: 1, tipDiameter: 20 * Math.cos(Math.PI / 9) }, /within the base circle/],
    [{ teeth: 40, module: 1, thinning: 2 }, /teeth would be -0.429 mm thick/],
    [{ teeth: 40, module: 1, thinning: Math.PI / 2 }, /teeth would be 0 mm thick/],
    // π/2 + 6 tan 20°.
    [{ teeth: 40, module: 1, profileShift: 3 }, /teeth would be 3.755 mm thick of a pitch of 3.142 mm; give a profile shift/],
    // inv α = (π/2 + 2.4 tan 20°)/8 + inv 20° = 0.320445, α = 50.06°, and 8 cos 20°/cos α.
    [{ teeth: 8, module: 1, profileShift: 1.2 }, /come to a point at 11.709 mm, below the tip diameter of 12.4 mm/],
    [{ teeth: 100, module: 1, pressureAngle: 35, wholeDepth: 3.5 }, /meet above its root/],
  ])("%j", (spec, sentence) => {
    expect(refusal(spec)).toMatch(sentence);
  });

  it.each([
    ["module", [0.02, 200], [0.0199, 200.1]],
    // 25.4/200 and 25.4/0.02.
    ["diametralPitch", [0.127, 1270], [0.1269, 1270.1]],
    ["pressureAngle", [10, 35], [9.9, 35.1]],
    ["profileShift", [-5, 5], [-5.1, 5.1]],
    ["thinning", [0, 1000], [-0.1, 1000.1]],
    ["teeth", [4, 10_000], [3, 10_001]],
    ["tipDiameter", [0.001, 100_000], [0.0009, 100_001]],
    ["wholeDepth", [0.001, 100_000], [0.0009, 100_001]],
  ] as const)("%s is taken from its least to its most, and no further", (key, ends, beyond) => {
    // Gears of such measures need not be ones that can be cut: that is told by another sentence, of no place.
    const usual = key === "diametralPitch" ? { teeth: 40 } : { teeth: 40, module: 2 };
    const placesOf = (value: number) => refusal({ ...usual, [key]: value }).match(/^\w+(?=: [-\d])/)?.[0];
    expect([...ends, ...beyond].map(placesOf)).toEqual([undefined, undefined, key, key]);
  });

  it("tells a pitch that is missing from two that contradict", () => {
    const codeOf = (spec: object) => refusalKinds(() => spurGear(wrong(spec)));
    expect(codeOf({ teeth: 40 })).toEqual(["missing module"]);
    expect(codeOf({ teeth: 40, module: 2, diametralPitch: 12 })).toEqual(["conflict module"]);
    expect(refusal({ teeth: 40 })).toBe(
      "module: no pitch is given; give one of module (mm) and diametralPitch (teeth to the inch)",
    );
    expect(refusal({ teeth: 40, module: 2, diametralPitch: 12 })).toMatch(
      /^module: a module and a diametral pitch are both given;/,
    );
  });

  it("a diameter that is not on the flank", () => {
    const flank = spurGear({ teeth: 20, module: 1 });
    for (const at of [toothThicknessAt, spaceWidthAt, chordAt]) {
      for (const diameter of [flank.baseDiameter, flank.tipDiameter]) expect(() => at(flank, diameter)).not.toThrow();
      for (const diameter of [18.79, 22.001]) expect(() => at(flank, diameter)).toThrow(/is not on the flanks of this gear/);
    }
    const gear = spurGear({ teeth: 20, module: 1 });
    expect(() => toothThicknessAt(gear, 18)).toThrow(
      /18 mm is not on the flanks of this gear; give a diameter from 18\.794 mm to 22 mm/,
    );
    expect(() => toothThicknessAt(gear, Number.NaN)).toThrow(/NaN/);
  });

  it("a span that cannot be measured, or is another gear's", () => {
    const gear = spurGear({ teeth: 20, module: 1 });
    expect(() => spanOver(gear, 9)).toThrow(/jaws over 9 teeth do not rest on the flanks of this gear; give 1 to 4/);
    expect(() => thinningFromSpan(gear, { teeth: 3, length: 9.5 })).toThrow(/count the teeth between the jaws again/);
    expect(() => thinningFromSpan(gear, { teeth: 3, length: Number.NaN })).toThrow(/NaN is not a span/);
    expect(() => thinningFromSpan(gear, { teeth: 3, length: 0 })).toThrow(/0 mm is not a span; give its length, above 0/);
    for (const span of [undefined, null, 7.66]) {
      expect(() => thinningFromSpan(gear, wrong(span))).toThrow(/is not a span; give its length and the teeth between the jaws/);
    }
  });

  it("a span off by up to half a base pitch is that of worn teeth: half of π cos 20° is 1.476 mm", () => {
    const gear = spurGear({ teeth: 20, module: 1 });
    const { teeth, length } = spanOver(gear, 3);
    const cos = Math.cos(Math.PI / 9);
    expect(thinningFromSpan(gear, { teeth, length: length - 1.47 })).toBeCloseTo(1.47 / cos, 9);
    expect(() => thinningFromSpan(gear, { teeth, length: length - 1.48 })).toThrow(/count the teeth between the jaws again/);
    // Of a fine gear a span may be under a millimetre.
    const fine = spurGear({ teeth: 20, module: 0.1 });
    expect(thinningFromSpan(fine, { teeth: 3, length: spanOver(fine, 3).length - 0.01 })).toBeCloseTo(0.01 / cos, 9);
  });

  it("a gear on which no span or no pin can be used says so", () => {
    const spanless = spurGear({ teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" });
    expect(spanless.span).toBeNull();
    expect(spanless.warnings).toContainEqual({ code: "no-span", teeth: 4 });
    expect(() => spanOver(spanless, 2)).toThrow(/no count does on this gear/);
    const pinless = spurGear({ teeth: 4, module: 1, pressureAngle: 10, profileShift: 0.1 });
    expect(() => overPins(pinless, 2)).toThrow(/no pin both rests on the flanks of this gear and stands above its tips/);
  });

  it("the least pin rests on the base circle where it stands above low tips there: 20 cos 20° tan(π/20 − π/40 − inv 20°)", () => {
    const low = spurGear({ teeth: 20, module: 1, tipDiameter: 19.5, wholeDepth: 2.5 });
    const least = pinRange(low)?.least ?? 0;
    expect(least).toBeCloseTo(1.19757, 5);
    expect([pinFits(low, least), pinFits(low, least - 1e-6)]).toEqual([true, false]);
  });

  it("a pin that cannot be used", () => {
    const gear = spurGear({ teeth: 20, module: 1 });
    expect(() => overPins(gear, 1)).toThrow(/a pin of 1 mm cannot be used on this gear; give one from [\d.]+ mm to [\d.]+ mm/);
    expect(() => overPins(gear, Number.NaN)).toThrow(/NaN/);
  });
});

it.each(depthRules)("the depth rule $name has the whole depth that it is named by", ({ name, addendum, dedendum, added }) => {
  expect(addendum + dedendum).toBeCloseTo(Number.parseFloat(name), 3);
  expect(addendum).toBe(name === "1.8-stub" ? 0.8 : 1);
  // 0.002 in.
  expect(added).toBeCloseTo(name.endsWith("+0.002in") ? 0.0508 : 0, 12);
});

describe("the span to measure", () => {
  /** W = m cos α [(k − ½)π + z inv α] + 2xm sin α, worked apart (ISO 21771, from memory). */
  const spansOf = ({ teeth, module, profileShift, pressureAngle, baseDiameter, rootDiameter, tipDiameter }: SpurGear) => {
    const angle = (pressureAngle * Math.PI) / 180;
    const length = (count: number) =>
      module * Math.cos(angle) * ((count - 0.5) * Math.PI + teeth * (Math.tan(angle) - angle)) +
      2 * profileShift * module * Math.sin(angle);
    return Array.from({ length: teeth }, (_, index) => index + 1)
      .map((count) => ({ count, length: length(count), contact: Math.hypot(baseDiameter, length(count)) }))
      .filter(({ contact }) => contact >= Math.max(baseDiameter, rootDiameter) && contact < tipDiameter)
      .filter(({ count }) => count === 1 || 2 * count <= teeth);
  };
  const gears = [4, 5, 6, 7, 8, 9, 12, 17, 18, 25, 40, 41, 86, 200].flatMap((teeth) =>
    [-0.3, 0, 0.3, 0.8].flatMap((profileShift) => {
      const wanted = { teeth, module: 2, profileShift, depthRule: "1.8-stub" } as const;
      return refusal(wanted) === "not refused" ? [spurGear(wanted)] : [];
    }),
  );

  it("is over any count whose jaws rest on the flanks, of no more than half the teeth, and over no other", () => {
    expect(gears.length).toBeGreaterThan(40);
    for (const gear of gears) {
      const fitting = new Map(spansOf(gear).map((span) => [span.count, span]));
      const last = Math.max(0, ...fitting.keys());
      for (let count = 1; count <= last + 2; count += 1) {
        const wanted = fitting.get(count);
        if (wanted === undefined) expect(() => spanOver(gear, count)).toThrow(InputError);
        else expect(spanOver(gear, count).length).toBeCloseTo(wanted.length, 9);
      }
    }
  });

  it("of one tooth and two is over two, also where one would touch nearer to the middle; over one where no other rests", () => {
    const of = (profileShift: number, tipDiameter: number) =>
      spurGear({ teeth: 4, module: 1, pressureAngle: 10, profileShift, tipDiameter, depthRule: "1.8-stub" });
    const both = of(0.1, 6.2);
    const touching = spansOf(both).map(({ count, contact }) => ({ count, off: Math.abs(contact - 4.2) }));
    expect(touching.map(({ count }) => count)).toEqual([1, 2]);
    expect(touching[0]?.off).toBeLessThan(touching[1]?.off ?? 0);
    expect(both.span?.teeth).toBe(2);
    const one = of(-0.95, 5.1);
    expect(spansOf(one).map(({ count }) => count)).toEqual([1]);
    expect(one.span?.teeth).toBe(1);
  });

  it("touches nearest to d + 2xm, and is over one tooth alone only where two are past the tips", () => {
    for (const gear of gears) {
      const middle = gear.referenceDiameter + 2 * gear.profileShift * gear.module;
      const fitting = spansOf(gear);
      const several = fitting.filter(({ count }) => count > 1);
      const [best] = (several.length > 0 ? several : fitting).sort(
        (a, b) => Math.abs(a.contact - middle) - Math.abs(b.contact - middle),
      );
      expect([gear.teeth, gear.profileShift, gear.span?.teeth]).toEqual([gear.teeth, gear.profileShift, best?.count]);
    }
  });
});
