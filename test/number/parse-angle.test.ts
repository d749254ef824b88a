import { describe, expect, it } from "vitest";
import { parseAngle } from "../../src/number/parse-angle.ts";
import { refusalLines } from "../support/refusal.ts";

describe("parseAngle", () => {
  it.each([
    ["2.9", "29/3600"],
    ["2.9°", "29/3600"],
    [`2.9${" ".repeat(56)}°`, "29/3600"],
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
    ["1,000°", "1000", "1.000"],
    ["12,500 gon", "12500", "12.500"],
  ])("asks what the comma of %s parts", (text, thousands, decimals) => {
    expect(refusalLines(() => parseAngle(text))).toEqual([
      `angle: the comma of "${text}" may part thousands or decimals; write ${thousands} or ${decimals} with the unit`,
    ]);
  });

  it.each([
    ["7 1/2°", "1/48"],
    ["1/2°", "1/720"],
    ["2 3/4 deg", "11/1440"],
    ["7 1/2'", "1/2880"],
    ["1/4 turn", "1/4"],
    ["2 1/3 gon", "7/1200"],
  ])("reads a common fraction of a unit: %s is %s rev", (text, angle) => {
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
