import { expect, it } from "vitest";
import { revolutions } from "../../src/index.ts";
import { angleOnScales } from "../../src/machine/scale-reader.ts";
import { rational } from "../../src/number/ratio.ts";

it("a place on the ring is exact where its terms are beyond what a number tells apart", () => {
  // 2⁻⁵⁰ and 3⁻³⁰ of a turn, by hand: over 2⁵⁰ · 3³⁰ parts.
  const [two, three] = [2n ** 50n, 3n ** 30n];
  const zero = { start: rational(1, three), side: "plus" } as const;
  expect(angleOnScales({ n: 1n, d: two }, zero)).toBe(`${two + three}/${two * three}`);
  expect(angleOnScales({ n: 1n, d: 2n ** 20n }, zero)).toBe(`${2n ** 20n + three}/${2n ** 20n * three}`);
  expect(angleOnScales({ n: 1n, d: 2n }, { ...zero, start: rational(1, 2) })).toBe(revolutions(1));
});
