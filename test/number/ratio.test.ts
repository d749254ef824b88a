import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  divisors,
  floorMod,
  fromExact,
  gcd,
  greatestTerm,
  groupDigits,
  inverseModulo,
  lcm,
  parseRational,
  rational,
  toExact,
} from "../../src/number/ratio.ts";
import { refusalLines } from "../support/refusal.ts";

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
    expect(toExact(rational(n, d))).toBe(text);
  });

  it("is read back without loss", () => {
    fc.assert(fc.property(whole, positive, (n, d) => fromExact(toExact(rational(n, d))).equals(rational(n, d))));
  });

  it("keeps what fraction.js would lose as a number: 1/100,000,000", () => {
    expect(toExact(rational(1, 100_000_000))).toBe("1/100000000");
  });
});

describe("parseRational", () => {
  it.each([
    [40, "40"],
    ["40", "40"],
    [" 81/2 ", "81/2"],
    ["162 / 4", "81/2"],
    ["2.9", "29/10"],
    ["+3", "3"],
    ["-0.5", "-1/2"],
    ["0.10", "1/10"],
    [0, "0"],
    ["129600000/7", "129600000/7"],
  ])("reads %j as %s", (given, text) => {
    expect(toExact(parseRational(given, "x"))).toBe(text);
  });

  it("reads what it is given over a common factor in lowest terms", () => {
    fc.assert(
      fc.property(positive, positive, positive, (n, d, factor) => {
        expect(toExact(parseRational(`${n * factor}/${d * factor}`, "x"))).toBe(toExact(rational(n, d)));
      }),
    );
  });

  const noNumber = 'is not an exact number; give a whole number or a fraction in quotes, such as "81/2"';
  it.each([
    [2.5, "2.5"],
    [Number.NaN, "NaN"],
    [Number.POSITIVE_INFINITY, "Infinity"],
    [2 ** 53, "9007199254740992"],
    ["", '""'],
    ["1e3", '"1e3"'],
    ["1/2/3", '"1/2/3"'],
    ["1/-2", '"1/-2"'],
    [".5", '".5"'],
    ["forty", '"forty"'],
    ["1".repeat(80), `"${"1".repeat(56)}…`],
    [null, "null"],
    [undefined, "undefined"],
    [40n, "40"],
    [{}, "an object"],
    [[40], "a list"],
    [true, "true"],
  ])("refuses %s", (given, shown) => {
    expect(refusalLines(() => parseRational(given, "x"))).toEqual([`x: ${shown} ${noNumber}`]);
  });

  it("refuses a division by zero", () => {
    expect(refusalLines(() => parseRational("1/0", "x"))).toEqual(['x: "1/0" divides by zero; give a fraction such as 81/2']);
  });

  it.each([greatestTerm + 1, `1/${greatestTerm + 1}`, "-999999999999999", "0.000000000001"])(
    "refuses terms as large as in %s",
    (given) => {
      expect(refusalLines(() => parseRational(given, "x"))).toEqual([
        `x: ${JSON.stringify(given)} is out of range; give a fraction with terms up to 129,600,000`,
      ]);
    },
  );
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
