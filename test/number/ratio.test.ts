import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  countOf,
  divisors,
  floorMod,
  fromExact,
  gcd,
  gcdOf,
  groupDigits,
  inverseModulo,
  lcm,
  lcmOf,
  rational,
  ratioOf,
  revolutionsOf,
  toRatio,
  toRevolutions,
  withoutFactorsOf,
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

describe("terms that are in lowest terms", () => {
  it("are written as any exact text", () => {
    fc.assert(
      fc.property(whole, positive, (numerator, denominator) => {
        const common = gcd(numerator, denominator);
        const [n, d] = [numerator / common, denominator / common];
        expect([ratioOf(n, d), revolutionsOf(n, d)]).toEqual([toRatio(rational(n, d)), toRevolutions(rational(n, d))]);
      }),
    );
    expect([ratioOf(3, 1), ratioOf(3, 2), revolutionsOf(-3, 1), revolutionsOf(1, 2)]).toEqual(["3", "3/2", "-3", "1/2"]);
  });
});

describe("whole numbers", () => {
  it("gcdOf and lcmOf are gcd and lcm of numbers of any size", () => {
    fc.assert(
      fc.property(whole, positive, fc.bigInt({ min: 1n, max: 2n ** 80n }), (a, b, times) => {
        expect(gcdOf(BigInt(a) * times, BigInt(b) * times)).toBe(BigInt(gcd(a, b)) * times);
        if (a > 0) expect(lcmOf(BigInt(a) * times, BigInt(b) * times)).toBe(BigInt(lcm(a, b)) * times);
      }),
    );
    expect([gcdOf(0n, 7n), gcdOf(-12n, 18n), gcdOf(12n, -18n)]).toEqual([7n, 6n, 6n]);
  });

  it("what is left without the factors of another has none of them, and what was taken out nothing else", () => {
    fc.assert(
      fc.property(positive, fc.integer({ min: 1, max: 1000 }), (value, other) => {
        const rest = withoutFactorsOf(value, other);
        expect([value % rest, gcd(rest, other)]).toEqual([0, 1]);
        expect(BigInt(other) ** 17n % BigInt(value / rest)).toBe(0n);
      }),
    );
    expect([withoutFactorsOf(40, 6), withoutFactorsOf(72, 2), withoutFactorsOf(7, 1)]).toEqual([5, 9, 7]);
  });

  it("are counted in a list", () => {
    expect([24, 40, 56].map((value) => countOf(value, [24, 40, 24]))).toEqual([2, 1, 0]);
  });

  it("gcd and lcm: both divide or are divided, and their product is that of the numbers", () => {
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        expect([a % gcd(a, b), b % gcd(a, b), lcm(a, b) % a, lcm(a, b) % b]).toEqual([0, 0, 0, 0]);
        expect(gcd(a, b) * lcm(a, b)).toBe(a * b);
        expect([gcd(-a, b), gcd(a, -b)]).toEqual([gcd(a, b), gcd(a, b)]);
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
    expect([floorMod(-1, 5), floorMod(-5, 5)]).toEqual([4, 0]);
    expect(Object.is(floorMod(-5, 5), 0)).toBe(true);
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
