import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcSeconds, checkAngle, checkAngleFromZero, formatAngle } from "../../src/number/angle.ts";
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

describe("an angle in revolutions", () => {
  const finest = "1/129600000";

  it.each(["1", "1000", finest, "129600000/129599999"])("to move by may be %s", (angle) => {
    expect(checkAngle(angle)).toBe(angle);
  });

  it.each([
    ["0", '"0" is no angle to move by; give one above 0'],
    ["-1/2", '"-1/2" is no angle to move by; give one above 0'],
    ["1000001/1000", '"1000001/1000" is over 1,000 revolutions; give a smaller angle'],
  ])("to move by is not %s", (angle, problem) => {
    expect(refusalLines(() => checkAngle(angle))).toEqual([`angle: ${problem}`]);
  });

  it.each(["0", "1000", "1/2"])("from a zero may be %s", (angle) => {
    expect(toRevolutions(checkAngleFromZero(angle, "startAngle"))).toBe(angle);
  });

  it.each(["-1/2", "1000001/1000"])("from a zero is not %s", (angle) => {
    expect(refusalLines(() => checkAngleFromZero(angle, "startAngle"))).toEqual([
      `startAngle: "${angle}" is not an angle from 0 to 1,000 revolutions`,
    ]);
  });

  it.each([
    ["58.1", '"58.1"', "58.1"],
    [58.1, "58.1", "58.1"],
    ["2d54m", '"2d54m"', "2.9"],
    [["1/2"], "a list", "2.9"],
    [null, "null", "2.9"],
  ])("is not %s, which is refused with how degrees are read", (angle, shown, degrees) => {
    expect(refusalLines(() => checkAngle(angle))).toEqual([
      `angle: ${shown} is not an angle in revolutions; give text such as "29/3600", or parseAngle("${degrees}°") for degrees`,
    ]);
  });
});

it("formatAngle writes whole seconds where nothing else is asked, and six decimals at most", () => {
  expect(formatAngle(revolutions("1/127"))).toBe("≈ 2° 50′ 05″");
  expect(formatAngle(revolutions("1/127"), 6)).toBe("≈ 2° 50′ 04.724409″");
});

it("arcSeconds gives seconds of a part of a turn", () => {
  expect([
    arcSeconds(revolutions("1/1296000")),
    arcSeconds(revolutions("-1/360")),
    arcSeconds(revolutions("0")),
    arcSeconds(revolutions("1/7")),
  ]).toEqual([1, -3600, 0, 1_296_000 / 7]);
});
