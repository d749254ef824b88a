import { describe, expect, it } from "vitest";
import { countsFromAngle, parseAngle } from "../../src/index.ts";
import { countsByEyeItems } from "../../src/words/backwards-words.ts";

const told = (angle: string, either: string) =>
  countsByEyeItems(countsFromAngle(parseAngle(angle), parseAngle(either)), either).map(({ term, text }) => `${term}: ${text}`);

describe("what counts an angle read by eye could mean", () => {
  it("one alone: 90° to a few minutes is 4", () => {
    expect(told("90°", "0°05'")).toEqual(["It could be: 4 divisions"]);
  });

  it("none: no whole count is between 360/100.5 and 360/100.6", () => {
    // 360°/100.55 is 3.58031°, a hundredth of the way to 100.54.
    expect(told("3.58031°", "0.0001°")).toEqual(["It could be: no whole count; read it again over more teeth"]);
  });

  it("several, and over how many teeth to read again to tell them apart", () => {
    const [could, apart] = told("2.9°", "0.05°");
    // 360/2.95 = 122.03 and 360/2.85 = 126.3.
    expect(could).toBe("It could be: 123 or 124 or 125 or 126 divisions");
    expect(apart).toMatch(/^To tell apart: read the angle over \d+ teeth or more, as finely, and ask again/);
  });

  it("so many that not even the whole wheel tells all of them apart", () => {
    // 360/140 = 2.57 and 360/60 = 6: of 3 to 6 the last two are 12° apart, read to 40° however many are spanned.
    const [, apart] = told("100°", "40°");
    expect(apart).toBe(
      "To tell apart: not all of them even over the whole wheel, read like this: count the teeth, or read more finely",
    );
  });
});
