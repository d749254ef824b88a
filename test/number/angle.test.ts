import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcSeconds, formatAngle } from "../../src/number/angle.ts";
import { revolutions } from "../../src/number/exact.ts";
import { parseAngle } from "../../src/number/parse-angle.ts";
import { fromExact, type Revolutions, rational, toRevolutions } from "../../src/number/ratio.ts";
import { refusalLines } from "../support/refusal.ts";

describe("formatAngle", () => {
  it.each([
    ["29/3600", 0, "2° 54′ 00″"],
    ["1", 0, "360° 00′ 00″"],
    ["0", 0, "0° 00′ 00″"],
    ["1/127", 0, "≈ 2° 50′ 05″"],
    ["1/127", 3, "≈ 2° 50′ 04.724″"],
    ["1/2592000", 1, "0° 00′ 00.5″"],
    ["1/2592000", 0, "≈ 0° 00′ 01″"],
    ["-29/3600", 0, "−2° 54′ 00″"],
    ["-1/12960000", 0, "≈ 0° 00′ 00″"],
    ["3599999/1296000000", 0, "≈ 1° 00′ 00″"],
  ])("writes %s rev to %i places as %s", (angle, places, text) => {
    expect(formatAngle(revolutions(angle), places)).toBe(text);
  });

  it.each([-1, 0.5, 7, Number.NaN, "2"])("refuses %j decimals", (places) => {
    expect(refusalLines(() => formatAngle(revolutions(1, 7), places as number))).toEqual([
      `places: ${JSON.stringify(places) === "null" ? "NaN" : JSON.stringify(places)} is not a number of decimals; give 0 to 6`,
    ]);
  });

  it("refuses what is no exact text", () => {
    expect(refusalLines(() => formatAngle("2.9" as Revolutions))).toEqual([
      'exact: "2.9" is not exact text; give "p/q" or "p" as the library writes it',
    ]);
  });

  it("parseAngle reads back what formatAngle writes of whole hundredths of a second", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 129_600_000 }), (hundredths) => {
        const angle = toRevolutions(rational(hundredths, 129_600_000));
        expect(parseAngle(formatAngle(angle, 2))).toBe(angle);
      }),
    );
  });

  it("is never off by more than half of its last place", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 2 }),
        (n, d, places) => {
          const angle = rational(Math.min(n, d), d);
          const text = formatAngle(toRevolutions(angle), places).replace("≈ ", "");
          fc.pre(/[1-9]/.test(text));
          const error = fromExact(parseAngle(text))
            .sub(angle)
            .abs()
            .mul(1_296_000)
            .mul(10 ** places);
          expect(error.compare(rational(1, 2))).toBeLessThanOrEqual(0);
        },
      ),
    );
  });
});

it("arcSeconds gives seconds of a part of a turn", () => {
  expect([
    arcSeconds(revolutions("1/1296000")),
    arcSeconds(revolutions("-1/360")),
    arcSeconds(revolutions("0")),
    arcSeconds(revolutions("1/7")),
  ]).toEqual([1, -3600, 0, 1_296_000 / 7]);
});
