import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcSeconds, formatAngle, parseAngle } from "../../src/number/angle.ts";
import { revolutions } from "../../src/number/exact.ts";
import { fromExact, type Revolutions, rational, toRevolutions } from "../../src/number/ratio.ts";
import { refusalLines } from "../support/refusal.ts";

describe("parseAngle", () => {
  it.each([
    ["2.9", "29/3600"],
    ["2.9°", "29/3600"],
    [" 2.9 deg ", "29/3600"],
    ["2°54'", "29/3600"],
    ["2° 54′ 00″", "29/3600"],
    ["2d54m", "29/3600"],
    ["2D 54M", "29/3600"],
    ["2 degrees 54 minutes", "29/3600"],
    ["2:54", "29/3600"],
    ["2:54:00", "29/3600"],
    ["29/3600 rev", "29/3600"],
    ["29 / 3600 turns", "29/3600"],
    ["1/124 rev", "1/124"],
    ["0.25 turn", "1/4"],
    ["1 revolution", "1"],
    ["10 gon", "1/40"],
    ["0.5 grad", "1/800"],
    ["54'", "1/400"],
    ["254'", "127/10800"],
    ['10"', "1/129600"],
    ["10''", "1/129600"],
    ["10 sec", "1/129600"],
    ["1.5'", "1/14400"],
    ["75'", "1/288"],
    [".5", "1/720"],
    [".5'", "1/43200"],
    ["360", "1"],
  ])("reads %s as %s rev", (text, angle) => {
    expect(parseAngle(text)).toBe(angle);
  });

  it.each([
    ["2°54’", "29/3600"],
    ["2º54´", "29/3600"],
    ["2˚ 54‘ 00”", "29/3600"],
    ["10’’", "1/129600"],
    ["2.9º", "29/3600"],
    ["2,9°", "29/3600"],
    ["2,9", "29/3600"],
    ["12,5 gon", "1/32"],
    ["46½°", "31/240"],
    ["½°", "1/720"],
    ["2° 7½′", "17/2880"],
    ["0¼ turn", "1/4"],
  ])("reads the marks that a telephone writes, a decimal comma and a half: %s is %s rev", (text, angle) => {
    expect(parseAngle(text)).toBe(angle);
  });

  it.each([
    ["0:0:1", "1/1296000"],
    ["2°54'01\"", "10441/1296000"],
    ["1:59:59.99", "719999/129600000"],
  ])("reads single seconds and hundredths of them: %s is %s rev", (text, angle) => {
    expect(parseAngle(text)).toBe(angle);
  });

  it.each([
    "",
    " ",
    "2°54",
    "2 54'",
    "-2°",
    "2°-3'",
    "abc",
    "1/124",
    "°",
    "2:54:00:00",
    "1.5/4 rev",
    "1e2",
    "2,900°",
    "2,9,1°",
    "2.5½°",
    `1${"0".repeat(60)}`,
  ])("refuses %j", (text) => {
    const shown = text.length > 55 ? `"${text.slice(0, 56)}…` : JSON.stringify(text);
    expect(refusalLines(() => parseAngle(text))).toEqual([
      `angle: ${shown} is not an angle; write it as 2.9°, 2°54', 2:54:00, 1/124 rev or 10 gon`,
    ]);
  });

  it.each([
    ["2°70'", "angle: has 60 or more minutes or seconds beside a larger unit; carry them over, 2°70' being 3°10'"],
    ["0:0:60", "angle: has 60 or more minutes or seconds beside a larger unit; carry them over, 2°70' being 3°10'"],
    ["10'60\"", "angle: has 60 or more minutes or seconds beside a larger unit; carry them over, 2°70' being 3°10'"],
    ["0°", 'angle: "0°" is no angle to move by; give one above 0'],
    ["0:00:00", 'angle: "0:00:00" is no angle to move by; give one above 0'],
    ["1001 rev", 'angle: "1001 rev" is over 1,000 revolutions; give a smaller angle'],
    ["1/0 rev", 'angle: "1/0" divides by zero; give a fraction such as 81/2'],
    [
      "0:0:0.001",
      'angle: "0:0:0.001" is too fine; give it to the hundredth of a second within one turn, or as a fraction of a turn with terms up to 129,600,000',
    ],
  ])("refuses %s", (text, line) => {
    expect(refusalLines(() => parseAngle(text))).toEqual([line]);
  });

  it("refuses what is no text", () => {
    expect(refusalLines(() => parseAngle(2.9 as unknown as string))).toEqual([
      "angle: 2.9 is not an angle; write it as 2.9°, 2°54', 2:54:00, 1/124 rev or 10 gon",
    ]);
  });
});

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
