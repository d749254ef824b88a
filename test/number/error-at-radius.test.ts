import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { errorAtRadius } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

describe("an error at a radius", () => {
  it("of one minute at 50 mm is 0.0145 mm (our arithmetic: 50 · 2π / 21,600)", () => {
    const { mm, inch } = errorAtRadius(60, 50);
    expect(mm).toBeCloseTo(0.014544, 6);
    expect(inch).toBeCloseTo(0.000573, 6);
  });

  it("of a whole turn is the circumference, and its sign is kept", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 100_000, noNaN: true }), (radius) => {
        const { mm, inch } = errorAtRadius(-1_296_000, radius);
        expect(mm / (-2 * Math.PI * radius)).toBeCloseTo(1, 12);
        expect((inch * 25.4) / mm).toBeCloseTo(1, 12);
      }),
    );
  });

  it("refuses what is no radius or no angle", () => {
    expect(refusalLines(() => errorAtRadius(60, 0))).toEqual([
      "radiusMm: 0 is not a radius; give millimetres above 0, up to 100,000",
    ]);
    expect(refusalLines(() => errorAtRadius(60, 100_000.5))).toHaveLength(1);
    expect(refusalLines(() => errorAtRadius(60, Number.NaN))).toHaveLength(1);
    expect(refusalLines(() => errorAtRadius(60, Number.POSITIVE_INFINITY))).toHaveLength(1);
    expect(refusalLines(() => errorAtRadius(Number.NaN, 50))).toEqual([
      "arcSeconds: NaN is not an angle in arc-seconds; give a number",
    ]);
  });
});

describe("single pitch deviation", () => {
  const gear = { module: 2, diameterMm: 100 };

  it(`is 0.3(m + 0.4√d) + 4 µm at grade 5 (${cited(pitchDeviation.source)})`, () => {
    const { grade, micrometres, ...of } = pitchDeviation;
    expect(singlePitchDeviation(of, grade)).toBeCloseTo(micrometres, 12);
  });

  it("doubles every two grades", () => {
    for (let grade = 0; grade <= 10; grade += 1) {
      expect(singlePitchDeviation(gear, grade + 2) / singlePitchDeviation(gear, grade)).toBeCloseTo(2, 12);
    }
  });

  it("gives the finest grade that takes in an error: 30″ at 100 mm is 7.3 µm, between grades 5 and 6", () => {
    expect(finestGrade(gear, 30)).toBe(6);
    expect(finestGrade(gear, -30)).toBe(6);
    expect(finestGrade(gear, 0)).toBe(0);
    expect(finestGrade(gear, 3600)).toBeNull();
  });

  it("refuses gears and grades outside the standard", () => {
    expect(refusalLines(() => singlePitchDeviation({ module: 0.4, diameterMm: 100 }, 7))).toEqual([
      "module: 0.4 is out of the range of the standard; give 0.5 to 70",
    ]);
    expect(refusalLines(() => singlePitchDeviation({ module: 2, diameterMm: 4 }, 7))).toHaveLength(1);
    expect(refusalLines(() => singlePitchDeviation(gear, 13))).toHaveLength(1);
    expect(refusalLines(() => singlePitchDeviation(gear, 5.5))).toEqual([
      "grade: 5.5 is not an accuracy grade; give a whole number from 0 to 12",
    ]);
  });
});

describe("total cumulative pitch deviation", () => {
  const gear = { module: 2, diameterMm: 100 };

  it(`is 0.3m + 1.25√d + 7 µm at grade 5 (${cited(totalDeviation.source)})`, () => {
    const { grade, micrometres, ...of } = totalDeviation;
    expect(totalPitchDeviation(of, grade)).toBeCloseTo(micrometres, 12);
    expect(totalPitchDeviation(of, grade + 2)).toBeCloseTo(2 * micrometres, 12);
  });

  it("gives the finest grade that takes in an error: 82.5″ either way at 50 mm is 40 µm in all, which is grade 7", () => {
    expect(finestTotalGrade(gear, 165)).toBe(7);
    expect(finestTotalGrade(gear, 166)).toBe(8);
    expect(finestTotalGrade(gear, 3600)).toBeNull();
  });

  it("refuses gears and grades outside the standard", () => {
    expect(refusalLines(() => totalPitchDeviation({ module: 71, diameterMm: 100 }, 7))).toEqual([
      "module: 71 is out of the range of the standard; give 0.5 to 70",
    ]);
    expect(refusalLines(() => totalPitchDeviation(gear, -1))).toHaveLength(1);
    expect(refusalLines(() => totalPitchDeviation(null as never, 5))).toEqual([
      "gear: null is not a gear; give its module and diameterMm",
    ]);
  });
});
