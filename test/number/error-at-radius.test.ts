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
