import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type GearMeasures, identifyGear, standardPitches } from "../../../src/index.ts";
import { basePitches, navyFormulas, reciprocalRule } from "../../published/base-pitch.ts";
import { cited } from "../../published/source.ts";
import { modulesBesides } from "../../published/standards.ts";
import { refusalLines } from "../../support/refusal.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A span by the formula, worked apart from the library: m cos α ((k − ½)π + z inv α) + 2 x m sin α. */
function spanOf(module: number, teeth: number, over: number, degrees: number, shift = 0): number {
  const angle = radians(degrees);
  const involute = Math.tan(angle) - angle;
  return module * Math.cos(angle) * ((over - 0.5) * Math.PI + teeth * involute) + 2 * shift * module * Math.sin(angle);
}

function twoSpans(module: number, teeth: number, degrees: number, shift = 0): NonNullable<GearMeasures["spans"]> {
  const over = Math.max(2, Math.round((teeth * degrees) / 180));
  return [over, over + 1].map((count) => ({ teeth: count, length: spanOf(module, teeth, count, degrees, shift) }));
}

const first = (measures: GearMeasures) => identifyGear(measures).candidates[0];
const pitches = standardPitches.filter(({ module }) => module >= 1);

/** It is there and fits, and what stands before it fits as well and is preferred, or as near. */
function expectFound(measures: GearMeasures, name: string): void {
  const { candidates } = identifyGear(measures, { limit: 100 });
  const own = candidates.findIndex((each) => each.name === name && each.form === "full depth");
  expect(candidates[own], name).toMatchObject({ fit: "close", tip: "not measured", profileShift: 0 });
  const before = candidates.slice(0, own);
  expect(before.every(({ fit, preference }) => fit === "close" && preference <= (candidates[own]?.preference ?? 0))).toBe(true);
}

describe("the pitch of a gear that has lost its tips", () => {
  it("by the centre distance and the mate's teeth, whatever the pitch", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pitches),
        fc.integer({ min: 8, max: 150 }),
        fc.integer({ min: 8, max: 150 }),
        (pitch, teeth, mateTeeth) => {
          expectFound({ teeth, mateTeeth, centreDistance: (pitch.module * (teeth + mateTeeth)) / 2 }, pitch.name);
        },
      ),
    );
  });

  it("by two spans, with the pressure angle", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pitches),
        fc.integer({ min: 20, max: 150 }),
        fc.constantFrom(20, 14.5),
        (pitch, teeth, degrees) => {
          const measures = { teeth, spans: twoSpans(pitch.module, teeth, degrees) };
          expectFound(measures, pitch.name);
          const { candidates } = identifyGear(measures, { limit: 100 });
          expect(candidates.find(({ name }) => name === pitch.name)?.pressureAngle).toBe(degrees);
        },
      ),
    );
  });

  it("by two spans of a gear that was cut with a shift, which they show", () => {
    for (const shift of [0.35, -0.35]) {
      expect(first({ teeth: 34, spans: twoSpans(3, 34, 20, shift) })).toMatchObject({
        name: "3 module",
        fit: "explained",
        profileShift: expect.closeTo(shift, 9),
        findings: [{ code: "shifted-by-spans", profileShift: expect.closeTo(shift, 9) }],
      });
    }
    // A shift that no gear is cut with is not thought of: the count between the jaws was wrong.
    expect(first({ teeth: 34, spans: twoSpans(3, 34, 20, 2) })?.fit).toBe("poor");
  });

  it("by both together, and with the depth of a stub tooth", () => {
    const measures = { teeth: 34, mateTeeth: 21, centreDistance: 82.5, spans: twoSpans(3, 34, 20) };
    expect(first(measures)).toMatchObject({ name: "3 module", pressureAngle: 20, fit: "close" });
    expect(first({ ...measures, wholeDepth: 5.4 })).toMatchObject({ name: "3 module", form: "stub", fit: "close" });
    expect(first({ ...measures, wholeDepth: 6.75 })).toMatchObject({ name: "3 module", form: "full depth", fit: "close" });
  });

  it("by the mate's own tips", () => {
    expect(first({ teeth: 34, mateTeeth: 21, mateTipDiameter: 69 })).toMatchObject({ name: "3 module", tip: "not measured" });
  });

  it("says that stub teeth would read the same, and nothing of an odd count, whose tips were not measured", () => {
    const codes = (measures: GearMeasures) => identifyGear(measures).warnings.map(({ code }) => code);
    expect(codes({ teeth: 35, mateTeeth: 21, centreDistance: 84 })).toEqual(["tips-not-measured"]);
    expect(codes({ teeth: 35, tipDiameter: 111, mateTeeth: 21, centreDistance: 84 })).toEqual(["odd-count"]);
  });

  it.each(modulesBesides.modules)(`finds a module of %s (${cited(modulesBesides.source)})`, (module) => {
    expect(first({ teeth: 40, mateTeeth: 31, centreDistance: (71 * module) / 2 })).toMatchObject({ name: `${module} module` });
    expect(first({ teeth: 40, tipDiameter: 42 * module })).toMatchObject({ name: `${module} module`, fit: "close" });
  });
});

describe("what each measure alone would mean", () => {
  it("is told of all that tell a pitch, the tips first, and the first of them as before", () => {
    const { byMeasure, measured } = identifyGear({
      teeth: 40,
      tipDiameter: 84,
      mateTeeth: 20,
      centreDistance: 60.6,
      mateTipDiameter: 44.44,
      fragment: { chord: 84.42 * Math.sin(Math.PI / 8), pitches: 5 },
      spans: twoSpans(2, 40, 20),
    });
    expect(
      byMeasure.map(({ measure, pressureAngle, module }) => [measure.code, pressureAngle, Number(module.toFixed(4))]),
    ).toEqual([
      ["tip-diameter", null, 2],
      ["chord", null, 2.01],
      ["centre-distance", null, 2.02],
      ["base-pitch", 20, 2],
      ["base-pitch", 14.5, Number(((2 * Math.cos(radians(20))) / Math.cos(radians(14.5))).toFixed(4))],
      ["mate-tip-diameter", null, 2.02],
    ]);
    expect(measured).toEqual({ module: 2, diametralPitch: 12.7, circularPitch: 2 * Math.PI });
  });

  it.each(basePitches.rows)(
    `a base pitch of $at20 at 20° and $at14 at 14½° is module $module (${cited(basePitches.source)})`,
    (row) => {
      for (const [degrees, basePitch] of [
        [20, row.at20],
        [14.5, row.at14],
      ] as const) {
        const spans = [4, 5].map((teeth) => ({ teeth, length: 2 + teeth * basePitch }));
        const found = identifyGear({ teeth: 40, spans }).byMeasure.find(({ pressureAngle }) => pressureAngle === degrees);
        expect(Math.abs((found?.module ?? 0) - row.module)).toBeLessThan(0.00006);
        expect(Math.abs((found?.circularPitch ?? 0) - row.circularPitch)).toBeLessThan(0.0002);
        if ("diametralPitch" in row) expect(found?.diametralPitch).toBeCloseTo(row.diametralPitch, 1);
      }
    },
  );

  it(`is the diametral pitch, and not its reciprocal, as one rule in print has it (${cited(reciprocalRule.source)})`, () => {
    // 8 DP at 20°, in inches: the rule gives 0.125, which is the module in inches.
    const module = 25.4 / 8;
    const { byMeasure } = identifyGear({ teeth: 40, spans: twoSpans(module, 40, 20) });
    const cosine = Math.cos(radians(20));
    const printed = reciprocalRule.printed((Math.PI / 8) * cosine, cosine);
    expect(printed).toBeCloseTo(1 / 8, 5);
    expect(byMeasure[0]?.diametralPitch).toBeCloseTo(8, 9);
    expect(byMeasure[0]?.diametralPitch).toBeCloseTo(1 / printed, 3);
  });

  it(`is as a training manual reckons it (${cited(navyFormulas.source)})`, () => {
    const { pitchFromOutside, pitchDiameter, centres } = navyFormulas;
    const inches = centres(pitchDiameter(60, 12), pitchDiameter(24, 12));
    const { byMeasure } = identifyGear({ teeth: 60, mateTeeth: 24, centreDistance: 25.4 * inches, tipDiameter: 25.4 * 5.2 });
    expect(byMeasure.map(({ diametralPitch }) => diametralPitch)).toEqual([
      expect.closeTo(pitchFromOutside(60, 5.2), 9),
      expect.closeTo(12, 9),
    ]);
  });
});

const lost = "nothing given tells the pitch";

it.each<[object, string]>([
  [{ teeth: 40 }, `tipDiameter: ${lost}`],
  [{ teeth: 40, spans: [{ teeth: 5, length: 27.7 }] }, `tipDiameter: ${lost}`],
  [{ teeth: 40, mateTeeth: 20 }, `tipDiameter: ${lost}`],
  [{ teeth: 40, centreDistance: 60 }, "centreDistance: tells nothing without the mate's teeth"],
  [{ tipDiameter: 84 }, "teeth: how many is not known"],
  [{ fragment: { chord: 60, pitches: 8 } }, "teeth: how many is not known"],
  [
    { fragment: { chord: 60, pitches: 8, height: 31 } },
    "fragment.height: 31 mm is not a height over that chord; give 0.001 mm to 30 mm",
  ],
  [{ teeth: 12, fragment: { chord: 60, pitches: 7 } }, "fragment.pitches: 7 are over half of 12 teeth; measure over fewer"],
  [{ teeth: 12, fragment: { chord: 60, pitches: 0 } }, "fragment.pitches: 0 is not a whole number from 1"],
  [{ teeth: 12, fragment: { chord: -1, pitches: 3 } }, "fragment.chord: -1 mm is not a chord"],
  [{ teeth: 12, fragment: 60 }, "fragment: 60 is not an object"],
])("refuses %j", (measures, why) => {
  expect(refusalLines(() => identifyGear(measures)).join("\n")).toContain(why);
});
