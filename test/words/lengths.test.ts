import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/words/lengths.ts";

const mm = lengthsIn("mm");
const inches = lengthsIn("in");
const sizeOf = (text: string) => Number(text.split(" ")[0]?.replace("−", "-")) * (text.endsWith("in") ? 25.4 : 1);

describe("a length in words", () => {
  it("stands in one unit alone, an inch with one decimal more", () => {
    expect([mm(88.9), inches(88.9)]).toEqual(["88.900 mm", "3.5000 in"]);
    expect([mm(0.1, 1), inches(0.1, 1)]).toEqual(["0.1 mm", "0.0039 in"]);
    expect([mm(0.00132, 4), inches(0.00132, 4)]).toEqual(["0.0013 mm", "0.00005 in"]);
    expect(mm(-0.25)).toBe("−0.250 mm");
  });

  it("as a bound is on its safe side: 0.00132 mm is not over 0.0014", () => {
    expect([mm.upTo(0.00132, 4), mm.downTo(0.00132, 4)]).toEqual(["0.0014 mm", "0.0013 mm"]);
    expect([inches.upTo(0.00132, 4), inches.downTo(0.00132, 4)]).toEqual(["0.00006 in", "0.00005 in"]);
    expect([mm.upTo(4.9, 1), mm.downTo(4.9, 1)]).toEqual(["4.9 mm", "4.9 mm"]);
  });

  it("between two bounds both are rounded inwards, with as many decimals as leave room, six at most", () => {
    expect(mm.between(41.3461, 41.4179)).toBe("41.347 mm to 41.417 mm");
    expect(mm.between(1.0001, 1.0004)).toBe("1.0001 mm to 1.0004 mm");
    expect(mm.between(1.0000001, 1.0000011)).toBe("1.000001 mm to 1.000001 mm");
    expect(mm.between(1.0000001, 1.0000005)).toBe("1.000 mm as near as can be");
    expect(inches.between(25.4, 50.8)).toBe("1.0000 in to 2.0000 in");
  });

  it("as it is shown is the length that stands there", () => {
    expect([mm.asShown(3.04649), mm.asShown(3.0465, 1), inches.asShown(3.175)]).toEqual([3.046, 3, 3.175]);
    expect([mm.bare(3.0465, 1), inches.bare(25.4)]).toEqual(["3.0", "1.0000"]);
    expect([mm.unit, inches.unit]).toEqual(["mm", "in"]);
  });

  it("no bound is on the wrong side", () => {
    const hair = 1e-9;
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), fc.integer({ min: 1, max: 5 }), (size, places) => {
        for (const length of [mm, inches]) {
          expect(sizeOf(length.upTo(size, places))).toBeGreaterThanOrEqual(size - hair);
          expect(sizeOf(length.downTo(size, places))).toBeLessThanOrEqual(size + hair);
        }
      }),
    );
  });
});
