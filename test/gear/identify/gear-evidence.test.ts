import { describe, expect, it } from "vitest";
import {
  type Evidence,
  otherEvidence,
  type Supposition,
  thinningShown,
  tipEvidence,
} from "../../../src/gear/identify/gear-evidence.ts";
import { findingsOf } from "../../../src/gear/identify/gear-findings.ts";
import { checkMeasures, type Measures } from "../../../src/gear/identify/gear-measures.ts";
import { rankedTrials } from "../../../src/gear/identify/gear-trial.ts";
import { identifyGear } from "../../../src/gear/identify/identify-gear.ts";
import { spanOver } from "../../../src/gear/span.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { refusal, refusalLines } from "../../support/refusal.ts";
import { wrong } from "../../support/wrong.ts";

const full: Supposition = { module: 2, addendum: 1, pressureAngle: null, profileShift: 0 };
const at20 = { ...full, pressureAngle: 20 };
const gear = spurGear({ teeth: 40, module: 2 });
const [span4 = 0, span5 = 0, span6 = 0] = [4, 5, 6].map((teeth) => spanOver(gear, teeth).length);
const usual: Measures = { teeth: 40, tipDiameter: 84 };

/** Misfits of the measures but the tip, by what was measured. */
const misfits = (measures: Partial<Measures>, supposed = full) =>
  Object.fromEntries(otherEvidence({ ...usual, ...measures }, supposed).map(({ measure, misfit }) => [measure.code, misfit]));

describe("what a measure may be off, in modules, with 0.02 mm for the caliper (our own choice)", () => {
  const near = { mateTeeth: 60, centreDistance: 100, mateTipDiameter: 124 };

  it.each([
    [
      "tip-diameter",
      0.1,
      0.08,
      (off: number) => ({ "tip-diameter": tipEvidence({ ...usual, tipDiameter: 84 + off }, full)?.misfit ?? Number.NaN }),
    ],
    ["whole-depth", 0.15, 0.1, (off: number) => misfits({ wholeDepth: (off < 0 ? 4.314 : 4.8) + off })],
    ["centre-distance", 0.1, 0.1, (off: number) => misfits({ ...near, centreDistance: 100 + off })],
    ["mate-tip-diameter", 0.25, 0.1, (off: number) => misfits({ ...near, mateTipDiameter: 124 + off })],
    ["span", 0.15, 0.05, (off: number) => misfits({ spans: [{ teeth: 5, length: span5 + off }] }, at20)],
    [
      "base-pitch",
      0.02,
      0.02,
      (off: number) =>
        misfits(
          {
            spans: [
              { teeth: 5, length: span5 },
              { teeth: 6, length: span6 + off },
            ],
          },
          at20,
        ),
    ],
  ] as [string, number, number, (off: number) => Record<string, number>][])(
    "%s: %d below, %d above",
    (code, below, above, of) => {
      expect(of(-2 * below - 0.02)[code]).toBeCloseTo(1, 9);
      expect(of(2 * above + 0.02)[code]).toBeCloseTo(1, 9);
      expect(of(2 * (2 * above + 0.02))[code]).toBeCloseTo(2, 9);
    },
  );

  it("a shifted gear's centres may be spread by its shift, and its mate shifted the other way", () => {
    const edge = (profileShift: number, centre: number, mate: number) => {
      const measures = { ...near, centreDistance: 100 + centre, mateTipDiameter: 124 + mate };
      const of = misfits(measures, { ...full, profileShift });
      return [of["centre-distance"], of["mate-tip-diameter"]];
    };
    const one = expect.closeTo(1, 9);
    // (0.1 + 0.3) modules and the caliper; 0.25 + 0.6 below, 0.1 + 0.6 above.
    expect(edge(0.3, 0.82, -1.72)).toEqual([one, one]);
    expect(edge(0.3, -0.22, 0.22)).toEqual([one, one]);
    expect(edge(-0.3, -0.82, 1.42)).toEqual([one, one]);
    expect(edge(-0.3, 0.22, -0.52)).toEqual([one, one]);
  });

  it("a measure that is right is off by nothing", () => {
    for (const misfit of Object.values(misfits({ wholeDepth: 4.5, ...near, spans: [{ teeth: 5, length: span5 }] }, at20)))
      expect(misfit).toBeCloseTo(0, 9);
  });
});

describe("what a measure is held against", () => {
  const expected = (measures: Partial<Measures>, supposed = full) =>
    otherEvidence({ ...usual, ...measures }, supposed).map(({ measure, expected: wanted }: Evidence) => [measure.code, wanted]);

  it("the nearest of 2.157, 2.25 and 2.4 modules for a full tooth, 1.8 for a stub", () => {
    const depths = [3, 4.4, 4.42, 4.64, 4.66, 9].map((wholeDepth) => expected({ wholeDepth })[0]?.[1]);
    expect(depths).toEqual([4.314, 4.314, 4.5, 4.5, 4.8, 4.8]);
    expect(expected({ wholeDepth: 4.5 }, { ...full, addendum: 0.8 })).toEqual([["whole-depth", 3.6]]);
  });

  it("the mate's tips without its centres, and those of a stub", () => {
    expect(expected({ mateTeeth: 60, mateTipDiameter: 123 })).toEqual([["mate-tip-diameter", 124]]);
    expect(expected({ mateTeeth: 60, mateTipDiameter: 123 }, { ...full, addendum: 0.8 })).toEqual([["mate-tip-diameter", 123.2]]);
    expect(expected({ mateTeeth: 60, centreDistance: 99 })).toEqual([["centre-distance", 100]]);
    expect(expected({ mateTeeth: 60 })).toEqual([]);
  });

  it("each span and the base pitch from each to the next, over as many teeth as lie between", () => {
    const spans = [
      { teeth: 4, length: span4 },
      { teeth: 6, length: span6 + 0.2 },
    ];
    const found = otherEvidence({ ...usual, spans }, at20);
    expect(found.map(({ measure }) => measure)).toEqual([
      { code: "span", teeth: 4 },
      { code: "span", teeth: 6 },
      { code: "base-pitch", from: 4, to: 6 },
    ]);
    // π · 2 · cos 20°, and half of what the longer span has over.
    const pitch = 2 * Math.PI * Math.cos(Math.PI / 9);
    expect([found[2]?.expected, found[2]?.measured]).toEqual([expect.closeTo(pitch, 9), expect.closeTo(pitch + 0.1, 9)]);
  });

  it("what the spans fall short by, in the mean, along the reference circle", () => {
    const cos = Math.cos(Math.PI / 9);
    const spans = [
      { teeth: 5, length: span5 - 0.1 },
      { teeth: 6, length: span6 - 0.3 },
    ];
    expect(thinningShown({ ...usual, spans }, at20)).toBeCloseTo(0.2 / cos, 9);
    expect(thinningShown({ ...usual, spans: spans.slice(0, 1) }, at20)).toBeCloseTo(0.1 / cos, 9);
    expect([thinningShown(usual, at20), thinningShown({ ...usual, spans }, full)]).toEqual([null, null]);
  });
});

describe("the measures as they are given", () => {
  it("come in any order of spans, and what is left out is not there", () => {
    const spans = [
      { teeth: 6, length: 33 },
      { teeth: 5, length: 27 },
    ];
    expect(checkMeasures({ ...usual, spans, wholeDepth: undefined })).toStrictEqual({
      ...usual,
      spans: [
        { teeth: 5, length: 27 },
        { teeth: 6, length: 33 },
      ],
    });
  });

  it("have eight spans at most, over 1 to 5000 teeth", () => {
    const spans = (count: number) => Array.from({ length: count }, (_, index) => ({ teeth: index + 1, length: 10 }));
    expect(refusal(() => checkMeasures({ ...usual, spans: spans(8) }))).toEqual([]);
    expect(refusalLines(() => checkMeasures({ ...usual, spans: spans(9) }))).toEqual([
      "spans: 9 entries are too many; give at most 8",
    ]);
    const over = (teeth: number) => refusalLines(() => checkMeasures({ ...usual, spans: [{ teeth, length: 10 }] }));
    expect([over(1), over(5000)]).toEqual([[], []]);
    expect([over(0), over(5001)].flat()).toEqual([
      "spans[0].teeth: 0 is not a whole number from 1 to 5,000",
      "spans[0].teeth: 5001 is not a whole number from 1 to 5,000",
    ]);
  });

  it("are answered with eight candidates where no more are asked for, one to a hundred", () => {
    const nothing = { teeth: 86, tipDiameter: 9000 };
    expect(identifyGear(nothing).candidates).toHaveLength(8);
    for (const limit of [1, 100]) expect(identifyGear(nothing, { limit }).candidates).toHaveLength(limit);
    for (const limit of [0, 101, 2.5]) {
      expect(refusalLines(() => identifyGear(nothing, { limit }))).toEqual([
        `limit: ${limit} is not a number of candidates; give a whole number from 1 to 100`,
      ]);
    }
    expect(refusal(() => identifyGear(usual, wrong({ most: 3 })))).toMatchObject([{ code: "unknown-key" }]);
  });

  it("show a candidate's circular pitch, and how far a look-alike's tips are", () => {
    // 32 DP and 0.8 module: 0.8/0.79375 is 0.787 per cent coarser, of 30 teeth with 1 or 0.8 addenda.
    const stub = spurGear({ teeth: 30, diametralPitch: 32, depthRule: "1.8-stub" });
    const found = identifyGear({ teeth: 30, tipDiameter: stub.tipDiameter, wholeDepth: stub.wholeDepth }).candidates;
    const of32 = found.find(({ name }) => name === "32 DP");
    expect(of32).toMatchObject({ form: "stub" });
    expect(of32?.circularPitch).toBeCloseTo((Math.PI * 25.4) / 32, 12);
    const alike = of32?.lookAlikes.find(({ name }) => name === "0.8 module");
    expect(alike?.tipDifference).toBeCloseTo((0.8 - 25.4 / 32) * 31.6, 9);
  });
});

describe("the accounts of a tip", () => {
  /** Of 2 module full depth, how a tip so many modules off is accounted for. */
  const accountOf = (off: number) => {
    const trials = rankedTrials({ teeth: 400, tipDiameter: 2 * (402 + off) });
    const own = trials.find(({ pitch, form }) => pitch.name === "2 module" && form === "full depth");
    return own === undefined ? null : `${own.tip} ${own.level} ${own.supposed.profileShift.toFixed(3)}`;
  };

  it.each([
    [0, "as drawn 0 0.000"],
    [-0.1, "as drawn 0 0.000"],
    [-0.2, "worn tip 1 0.000"],
    [-0.49, "worn tip 1 0.000"],
    [-0.51, "reduced 1 -0.255"],
    [0.08, "as drawn 0 0.000"],
    [0.2, "enlarged 1 0.100"],
    [1.39, "enlarged 1 0.695"],
    [-1.39, "reduced 1 -0.695"],
    [1.41, "as drawn 2 0.000"],
  ])("%d modules off is %s", (off, account) => {
    expect(accountOf(off)).toBe(account);
  });

  it("are ranked by what they cost, where the series is the same", () => {
    const trials = rankedTrials({ teeth: 40, tipDiameter: 83.1 });
    const own = (name: string) => trials.find(({ pitch }) => pitch.name === name);
    // 2 module: 0.45 modules short; the root mean square of one measure is its own: 1 + 4 · 0.45.
    expect(own("2 module")?.misfit).toBeCloseTo(2.8, 9);
    expect(own("2 module")).toMatchObject({ tip: "worn tip", level: 1, preference: 1 });
    const enlarged = rankedTrials({ teeth: 40, tipDiameter: 85.2 }).find(({ pitch }) => pitch.name === "2 module");
    // 0.6 modules over: 2 + 1.25 · 0.6.
    expect(enlarged?.misfit).toBeCloseTo(2.75, 9);
    expect(enlarged).toMatchObject({ tip: "enlarged", level: 1, preference: 1 });
    const alone = rankedTrials({ ...usual, wholeDepth: 4.5, mateTeeth: 60, centreDistance: 100.11 })[0];
    // Nothing off, nothing off and half of what is allowed: 0.5/√3.
    expect([alone?.pitch.name, alone?.misfit]).toEqual(["2 module", expect.closeTo(0.5 / Math.sqrt(3), 9)]);
  });

  it("a stub costs two steps of preference, and is close only once its depth is known", () => {
    const stub = spurGear({ teeth: 40, module: 4, depthRule: "1.8-stub" });
    const own = (measures: Measures) =>
      rankedTrials(measures).find(({ pitch, form }) => pitch.name === "4 module" && form === "stub");
    expect(own({ teeth: 40, tipDiameter: stub.tipDiameter })).toMatchObject({ level: 1, preference: 3, tip: "as drawn" });
    expect(own({ teeth: 40, tipDiameter: stub.tipDiameter, wholeDepth: 7.2 })).toMatchObject({ level: 0, preference: 3 });
  });

  it.each([14.5, 17.5, 20, 22.5, 25])("two spans tell %d°, and only the common ones cost nothing", (pressureAngle) => {
    const cut = spurGear({ teeth: 40, module: 4, pressureAngle });
    const count = cut.span?.teeth ?? 0;
    const spans = [count, count + 1].map((teeth) => ({ teeth, length: spanOver(cut, teeth).length }));
    const [first] = rankedTrials({ teeth: 40, tipDiameter: 168, spans });
    const preference = [14.5, 20].includes(pressureAngle) ? 1 : 2;
    expect(first).toMatchObject({ pitch: { name: "4 module" }, supposed: { pressureAngle }, preference, level: 0 });
  });

  it("one span is held against the common angles alone", () => {
    // Over 8 teeth cos 25° · 4 · (7.5 π + 40 inv 25°) is a millimetre short of that of 20°, and more of that of 14½°.
    const angle = (25 * Math.PI) / 180;
    const length = Math.cos(angle) * 4 * (7.5 * Math.PI + 40 * (Math.tan(angle) - angle));
    const trials = rankedTrials({ teeth: 40, tipDiameter: 168, spans: [{ teeth: 8, length }] });
    expect(trials.filter(({ supposed }) => supposed.pressureAngle !== 20 && supposed.pressureAngle !== 14.5)).toEqual([]);
  });

  it("one that fits is enough to leave out what does not", () => {
    const alone = rankedTrials({ ...usual, wholeDepth: 4.5, mateTeeth: 60, centreDistance: 100 });
    expect(alone.map(({ pitch }) => pitch.name)).toEqual(["2 module"]);
  });

  it("where nothing fits each pitch is there once, the least off first", () => {
    for (const tipDiameter of [5, 9000]) {
      const poor = rankedTrials({ teeth: 86, tipDiameter });
      expect(new Set(poor.map(({ pitch }) => pitch.name)).size).toBe(poor.length);
      const off = poor.map(({ misfit }) => misfit);
      expect(off).toEqual([...off].sort((a, b) => a - b));
    }
  });

  it("an enlarged gear and a reduced one are as likely: of them the less is off first", () => {
    let both = 0;
    for (let tipDiameter = 20; tipDiameter < 60; tipDiameter += 1.7) {
      for (const series of [1, 2, 3]) {
        const shifted = rankedTrials({ teeth: 12, tipDiameter }).filter(
          ({ level, preference, tip }) => level === 1 && preference === series && (tip === "enlarged" || tip === "reduced"),
        );
        const off = shifted.map(({ misfit }) => misfit);
        expect(off).toEqual([...off].sort((a, b) => a - b));
        if (new Set(shifted.map(({ tip }) => tip)).size === 2) both += 1;
      }
    }
    expect(both).toBeGreaterThan(5);
  });
});

describe("what is found", () => {
  const findings = (measures: Measures, name: string) =>
    rankedTrials(measures)
      .filter(({ pitch }) => pitch.name === name)
      .flatMap((trial) => findingsOf(trial));

  it("names each measure that is over its edge, beside an account of the tip too", () => {
    // One and a half times the 0.22 mm that it may be above 4.8.
    expect(findings({ ...usual, wholeDepth: 5.13 }, "2 module")).toEqual([
      { code: "misfit", measure: { code: "whole-depth" }, difference: expect.closeTo(0.33, 9) },
    ]);
    expect(findings({ teeth: 40, tipDiameter: 83.2, wholeDepth: 9 }, "2 module")).toContainEqual({
      code: "misfit",
      measure: { code: "whole-depth" },
      difference: expect.closeTo(4.2, 9),
    });
  });

  it("thin teeth only where the rest fits", () => {
    const spans = [{ teeth: 5, length: span5 - 0.1 }];
    const thin = { code: "thin-teeth", thinning: expect.closeTo(0.1 / Math.cos(Math.PI / 9), 9) };
    expect(findings({ ...usual, spans }, "2 module")).toEqual([thin]);
    expect(findings({ ...usual, spans, wholeDepth: 9 }, "2 module")).toEqual([expect.objectContaining({ code: "misfit" })]);
  });

  it("the depth that stub teeth would have, until it is measured: 1.8 of 1.27 mm", () => {
    expect(findings({ teeth: 40, tipDiameter: 52.6 }, "20 DP")).toContainEqual({ code: "stub-if-deep", wholeDepth: 1.8 * 1.27 });
    const stub = { teeth: 40, tipDiameter: 52.832, wholeDepth: 2.286 };
    expect(findings(stub, "20 DP").map(({ code }) => code)).not.toContain("stub-if-deep");
  });
});
