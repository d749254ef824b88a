import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ratio, revolutions, toDegrees, toNumber } from "../../src/number/exact.ts";
import { type Ratio, type Revolutions, toRevolutions } from "../../src/number/ratio.ts";
import { refusal, refusalLines } from "../support/refusal.ts";

const terms = [fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }), fc.bigInt({ min: 1n, max: 10n ** 30n })] as const;

describe("makers of exact text", () => {
  it.each([
    [() => ratio(40), "40"],
    [() => ratio("81/2"), "81/2"],
    [() => ratio("40.5"), "81/2"],
    [() => ratio(14, -6), "-7/3"],
    [() => ratio(0, -6), "0"],
    [() => revolutions(3), "3"],
    [() => revolutions(1, 7), "1/7"],
    [() => revolutions("58/7200"), "29/3600"],
    [() => revolutions("-1/4"), "-1/4"],
    [() => revolutions(10n ** 30n, 10n ** 31n), "1/10"],
  ])("%s", (make, text) => {
    expect(make()).toBe(text);
  });

  it("of two terms the text is in lowest terms, with the sign before it, and is worth the same", () => {
    fc.assert(
      fc.property(...terms, fc.boolean(), (n, d, turned) => {
        for (const make of [ratio, revolutions]) {
          const text = turned ? make(-n, -d) : make(n, d);
          const [top, bottom = "1"] = text.split("/");
          expect(BigInt(top ?? "") * d).toBe(BigInt(bottom) * n);
          for (const prime of [2n, 3n, 5n, 7n]) {
            expect(BigInt(top ?? "") % prime === 0n && BigInt(bottom) % prime === 0n).toBe(false);
          }
          expect(make(text)).toBe(text);
        }
      }),
    );
  });

  const inTurns = (shown: string, degrees: string) =>
    `revolutions: ${shown} is not an angle in revolutions; give text such as "29/3600", or parseAngle("${degrees}°") for degrees`;

  it.each([
    ["degrees as text", () => revolutions("2.9"), inTurns('"2.9"', "2.9")],
    ["degrees as a number", () => revolutions(2.9), inTurns("2.9", "2.9")],
    ["an angle in words", () => revolutions("2°54'"), inTurns(`"2°54'"`, "2.9")],
    ["nothing", () => revolutions(undefined as never), inTurns("undefined", "2.9")],
    [
      "a part that is no whole number",
      () => revolutions(1, 2.5),
      "revolutions: 2.5 is not a whole number; give two terms such as 1, 7",
    ],
    ["text beside a term", () => ratio("1", 7), 'ratio: "1" is not a whole number; give two terms such as 1, 7'],
    ["a denominator of 0", () => ratio(1, 0), "ratio: divides by 0; give a denominator that is not 0"],
    [
      "no number",
      () => ratio("x"),
      'ratio: "x" is not an exact number; give a whole number or a fraction in quotes, such as "81/2"',
    ],
  ])("refuse %s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});

describe("exact values as plain numbers", () => {
  it.each([
    [revolutions("29/3600"), 2.9],
    [revolutions(1), 360],
    [revolutions(-1, 8), -45],
    [revolutions(0), 0],
  ])("%s of a turn in degrees is %d", (angle, degrees) => {
    expect(toDegrees(angle)).toBe(degrees);
  });

  it("any value is the nearest number there is to it", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.integer({ min: 1, max: 1_000_000 }), (n, d) => {
        expect(toNumber(ratio(n, d))).toBe(n / d);
        expect(toNumber(revolutions(n, d))).toBe(n / d);
      }),
    );
  });

  it.each(["2.9", "1/0", "", "x", "1/2/3", 2.9, null])("%j is no exact text", (given) => {
    for (const act of [() => toNumber(given as Ratio), () => toDegrees(given as Revolutions)]) {
      expect(refusal(act)).toMatchObject([{ code: "unreadable", place: "exact" }]);
    }
  });
});

it("the compiler tells revolutions from ratios and from plain text", () => {
  const angle: Revolutions = revolutions(1, 7);
  // @ts-expect-error A ratio is no angle.
  const mixed: Revolutions = ratio(1, 7);
  // @ts-expect-error Plain text is neither.
  const plain: Ratio = "1/7";
  expect([angle, mixed, plain]).toEqual(["1/7", "1/7", "1/7"]);
  expect(toRevolutions).toBeTypeOf("function");
});

it("a whole number may be of any size that is safe, and any as a bigint", () => {
  expect([ratio(200_000_000), ratio(2n ** 70n), revolutions(200_000_000)]).toEqual(["200000000", String(2n ** 70n), "200000000"]);
});
