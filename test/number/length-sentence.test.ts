import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthSentence, type SaidLength, said, saidIn } from "../../src/number/length-sentence.ts";
import type { LengthUnit } from "../../src/number/length-unit.ts";

const sentence = lengthSentence`a pin of ${said.given(12.7)} cannot be used over ${3} teeth of ${"this"} gear; give ${said.least(2.0001)} to ${said.most(5.9999)}`;

describe("a sentence with lengths", () => {
  it("is said in either unit, bounds on the side that is allowed", () => {
    expect(sentence.problem).toBe("a pin of 12.7 mm cannot be used over 3 teeth of this gear; give 2.001 mm to 5.999 mm");
    expect(saidIn("in", sentence.lengths)).toBe(
      "a pin of 0.5 in cannot be used over 3 teeth of this gear; give 0.0788 in to 0.2362 in",
    );
  });

  it("is plain data", () => {
    expect(structuredClone(sentence)).toStrictEqual(sentence);
    expect(JSON.parse(JSON.stringify(sentence))).toStrictEqual(sentence);
  });

  it.each([
    [said.given(0.123_456_78), "0.123457 mm"],
    [said.measure(-1.25), "-1.25 mm"],
    [said.measure(0), "0 mm"],
    // A bound keeps three figures, but none beyond the twentieth decimal.
    [said.least(0.000_012_345), "0.0000124 mm"],
    [said.least(1e-30), "1e-20 mm"],
  ])("says %j as %s", (length, text) => {
    expect(saidIn("mm", lengthSentence`${length}`.lengths)).toBe(text);
  });

  it("without lengths is its words", () => {
    expect(lengthSentence`${3} teeth`.lengths).toEqual({ words: ["3 teeth"], lengths: [] });
  });
});

const sizes = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
const units = fc.constantFrom<LengthUnit>("mm", "in");

/** What is printed, back in mm. */
function printed(unit: LengthUnit, length: SaidLength): number {
  const [figure = "", written = ""] = saidIn(unit, lengthSentence`${length}`.lengths).split(" ");
  expect(written).toBe(unit);
  return Number(figure) * (unit === "mm" ? 1 : 25.4);
}

describe("what is shown", () => {
  it("of a bound is allowed, and within half a per cent of it", () => {
    fc.assert(
      fc.property(sizes, units, (mm, unit) => {
        const hair = 1e-9 * mm + 1e-11;
        const [least, most] = [printed(unit, said.least(mm)), printed(unit, said.most(mm))];
        expect(least).toBeGreaterThanOrEqual(mm - hair);
        expect(most).toBeLessThanOrEqual(mm + hair);
        expect(least - most).toBeLessThanOrEqual(0.01 * mm);
      }),
    );
  });

  it("of a measure is the nearest, and what was given stands as it was given", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), units, (millionths, unit) => {
        const text = String(millionths / 1_000_000);
        const mm = Number(text) * (unit === "mm" ? 1 : 25.4);
        expect(saidIn(unit, lengthSentence`${said.given(mm)}`.lengths)).toBe(`${Number(text)} ${unit}`);
        expect(Math.abs(printed(unit, said.measure(mm)) - mm)).toBeLessThanOrEqual(unit === "mm" ? 0.0005001 : 0.0000501 * 25.4);
      }),
    );
  });
});
