import { describe, expect, it } from "vitest";
import type { PitchedGear } from "../../src/gear/graded.ts";
import { finestGrade, finestTotalGrade, singlePitchDeviation, totalPitchDeviation } from "../../src/gear/pitch-deviation.ts";
import { cited } from "../published/source.ts";
import { pitchDeviation, totalDeviation } from "../published/standards.ts";
import { refusal, refusalLines } from "../support/refusal.ts";

const gear = { module: 2, diameterMm: 100 };

describe("single pitch deviation", () => {
  it(`is 0.3(m + 0.4√d) + 4 µm at grade 5 (${cited(pitchDeviation.source)})`, () => {
    const { grade, micrometres, ...of } = pitchDeviation;
    expect(singlePitchDeviation(of, grade)).toBeCloseTo(micrometres, 12);
  });

  it("doubles every two grades", () => {
    for (let grade = 0; grade <= 10; grade += 1) {
      expect(singlePitchDeviation(gear, grade + 2) / singlePitchDeviation(gear, grade)).toBeCloseTo(2, 12);
    }
  });

  it("holds to both ends of the standard: m 0.5 and 70, d 5 and 10,000, grades 0 and 12", () => {
    // 0.3(0.5 + 0.4√5) + 4 = 4.41833; 0.3(70 + 0.4 · 100) + 4 = 37, and √2^7 = 8√2 times that.
    expect(singlePitchDeviation({ module: 0.5, diameterMm: 5 }, 5)).toBeCloseTo(4.41833, 5);
    expect(singlePitchDeviation({ module: 70, diameterMm: 10_000 }, 12)).toBeCloseTo(37 * 8 * Math.SQRT2, 9);
    expect(singlePitchDeviation({ module: 70, diameterMm: 10_000 }, 0)).toBeCloseTo(37 / (4 * Math.SQRT2), 9);
  });

  it.each([
    [{ ...gear, module: 0.4 }, 7, "module: 0.4 is out of the range of the standard; give 0.5 to 70"],
    [{ ...gear, module: 70.1 }, 7, "module: 70.1 is out of the range of the standard; give 0.5 to 70"],
    [{ ...gear, diameterMm: 4.9 }, 7, "diameterMm: 4.9 is out of the range of the standard; give 5 to 10000"],
    [{ ...gear, diameterMm: 10_001 }, 7, "diameterMm: 10001 is out of the range of the standard; give 5 to 10000"],
    [gear, 13, "grade: 13 is out of the range of the standard; give 0 to 12"],
    [gear, -1, "grade: -1 is out of the range of the standard; give 0 to 12"],
    [gear, 5.5, "grade: 5.5 is not an accuracy grade; give a whole number from 0 to 12"],
  ] as [PitchedGear, number, string][])("%j at grade %d is refused", (of, grade, line) => {
    expect(refusalLines(() => singlePitchDeviation(of, grade))).toEqual([line]);
  });

  it("tells what is no number from one out of the range", () => {
    const codes = ["2", Number.NaN, 71].map((module) =>
      refusal(() => singlePitchDeviation({ ...gear, module: module as number }, 7)).map(({ code }) => code),
    );
    expect(codes).toEqual([["unreadable"], ["unreadable"], ["out-of-range"]]);
  });
});

describe("the finest grade that takes in an error", () => {
  // At 100 mm one second is 0.242407 µm; a grade allows 5.8 µm · √2^(grade − 5): 1.03 at 0, 65.6195 at 12.
  it.each([
    [0, 0],
    [4.2, 0],
    [4.3, 1],
    [30, 6],
    [-30, 6],
    [270.6, 12],
    [270.8, null],
    [3600, null],
  ])("of %d″ at 100 mm is %s", (arcSeconds, grade) => {
    expect(finestGrade(gear, arcSeconds)).toBe(grade);
  });
});

describe("total cumulative pitch deviation", () => {
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
