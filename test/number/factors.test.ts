import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effortOf, isCut } from "../../src/number/effort.ts";
import { divisorsWithin, type Factors, factorsOf, lcmFactors, timesFactors } from "../../src/number/factors.ts";

const productOf = (factors: Factors) => factors.reduce((all, [prime, power]) => all * prime ** power, 1);
const isPrime = (value: number) =>
  value > 1 && !Array.from({ length: value - 2 }, (_, index) => index + 2).some((each) => value % each === 0);
const divides = (value: number) => (each: number) => value % each === 0;
const upTo = (most: number) => Array.from({ length: most }, (_, index) => index + 1);
const number = fc.integer({ min: 1, max: 400 });
const plenty = () => effortOf(1e9);

describe("factors", () => {
  it("are primes, ascending, that multiply to the number", () => {
    fc.assert(
      fc.property(number, (value) => {
        const factors = factorsOf(value);
        expect(productOf(factors)).toBe(value);
        const primes = factors.map(([prime]) => prime);
        expect(primes.every(isPrime)).toBe(true);
        expect(primes).toEqual([...new Set(primes)].sort((a, b) => a - b));
      }),
    );
    expect(factorsOf(1)).toEqual([]);
    expect(factorsOf(99_460_729)).toEqual([[9973, 2]]);
  });

  it("of two numbers make those of their product and of their least common multiple", () => {
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(timesFactors(factorsOf(a), factorsOf(b))).toEqual(factorsOf(a * b));
        const least = upTo(a * b).find((each) => each % a === 0 && each % b === 0);
        expect(productOf(lcmFactors(factorsOf(a), factorsOf(b)))).toBe(least);
      }),
    );
  });
});

describe("divisors within a range", () => {
  it("are all numbers of it that divide, each once", () => {
    fc.assert(
      fc.property(number, number, fc.nat(500), (value, least, more) => {
        const found = divisorsWithin(factorsOf(value), least, least + more, plenty());
        expect(found.sort((a, b) => a - b)).toEqual(
          upTo(value).filter((each) => each >= least && each <= least + more && value % each === 0),
        );
      }),
    );
  });

  it("are found of a number far beyond the safe integers, in few steps where the range is narrow", () => {
    const huge = timesFactors(factorsOf(99_460_729), timesFactors(factorsOf(100_000), factorsOf(9_999_360)));
    const whole = 99_460_729n * 100_000n * 9_999_360n;
    const effort = effortOf(20_000);
    const found = divisorsWithin(huge, 9_900_000, 10_000_000, effort).sort((a, b) => a - b);
    expect(isCut(effort)).toBe(false);
    const counted = upTo(100_001)
      .map((each) => each + 9_899_999)
      .filter((each) => whole % BigInt(each) === 0n);
    expect(found).toEqual(counted);
  });

  it("are some of them once the effort is cut", () => {
    const effort = effortOf(30);
    const found = divisorsWithin(factorsOf(5040), 1, 5040, effort);
    expect(isCut(effort)).toBe(true);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(divides(5040))).toBe(true);
  });
});
