import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  divisors,
  floorMod,
  fromExact,
  gcd,
  groupDigits,
  inverseModulo,
  lcm,
  rational,
  toRatio,
  toRevolutions,
} from "../../src/number/ratio.ts";

const positive = fc.integer({ min: 1, max: 100_000 });
const whole = fc.integer({ min: -100_000, max: 100_000 });

describe("exact text", () => {
  it.each([
    [40, 1, "40"],
    [-7, 3, "-7/3"],
    [58, 7200, "29/3600"],
    [0, 5, "0"],
    [3, -6, "-1/2"],
  ])("%i over %i is %s", (n, d, text) => {
    expect([toRatio(rational(n, d)), toRevolutions(rational(n, d))]).toEqual([text, text]);
  });

  it("is read back without loss", () => {
    fc.assert(fc.property(whole, positive, (n, d) => fromExact(toRatio(rational(n, d))).equals(rational(n, d))));
  });

  it("keeps what fraction.js would lose as a number: 1/100,000,000", () => {
    expect(toRatio(rational(1, 100_000_000))).toBe("1/100000000");
  });
});

describe("whole numbers", () => {
  it("gcd and lcm: both divide or are divided, and their product is that of the numbers", () => {
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        expect([a % gcd(a, b), b % gcd(a, b), lcm(a, b) % a, lcm(a, b) % b]).toEqual([0, 0, 0, 0]);
        expect(gcd(a, b) * lcm(a, b)).toBe(a * b);
        expect(gcd(-a, b)).toBe(gcd(a, b));
      }),
    );
    expect([gcd(0, 7), gcd(12, 18), lcm(21, 33)]).toEqual([7, 6, 231]);
  });

  it("floorMod is never negative and differs by whole moduli", () => {
    fc.assert(
      fc.property(whole, positive, (value, modulus) => {
        const rest = floorMod(value, modulus);
        expect(rest >= 0 && rest < modulus && Math.abs(value - rest) % modulus === 0).toBe(true);
      }),
    );
    expect(floorMod(-1, 5)).toBe(4);
  });

  it("inverseModulo times the value is 1 more than whole moduli", () => {
    fc.assert(
      fc.property(positive, fc.integer({ min: 2, max: 90_000 }), (value, modulus) => {
        fc.pre(gcd(value, modulus) === 1);
        expect((value * inverseModulo(value, modulus)) % modulus).toBe(1);
      }),
    );
  });

  it("divisors are all that divide, ascending", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), (value) => {
        const all = Array.from({ length: value }, (_, index) => index + 1).filter((each) => value % each === 0);
        expect(divisors(value)).toEqual(all);
      }),
    );
  });

  it.each([
    [0, "0"],
    [999, "999"],
    [1000, "1,000"],
    [-1234567, "-1,234,567"],
    [10_000_000, "10,000,000"],
  ])("groups the digits of %i as %s", (value, text) => {
    expect(groupDigits(value)).toBe(text);
  });
});
