import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatestTerm, parseRational } from "../../src/number/parse-rational.ts";
import { rational, toRatio } from "../../src/number/ratio.ts";
import { refusalLines } from "../support/refusal.ts";

const positive = fc.integer({ min: 1, max: 100_000 });

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
    ["7/129600000", "7/129600000"],
  ])("reads %j as %s", (given, text) => {
    expect(toRatio(parseRational(given, "x"))).toBe(text);
  });

  it("reads what it is given over a common factor in lowest terms", () => {
    fc.assert(
      fc.property(positive, positive, positive, (n, d, factor) => {
        expect(toRatio(parseRational(`${n * factor}/${d * factor}`, "x"))).toBe(toRatio(rational(n, d)));
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
