import { describe, expect, it } from "vitest";
import { chordItem, coordinatesWords, lengthsIn } from "../../src/words/index.ts";

describe("coordinates", () => {
  it("are named with their unit and origin, a chord with how far apart", () => {
    expect(coordinatesWords({ mm: 50, unit: "mm" }, "centre")).toBe(
      "Coordinates in millimetres on a radius of 50.000, from the centre; x to the right, y up:",
    );
    expect(coordinatesWords({ mm: 50.8, unit: "in" }, "tangents")).toBe(
      "Coordinates in inches on a radius of 2.0000, from the left and bottom tangents; x to the right, y up:",
    );
    expect(chordItem({ apart: 1, length: 10 }, lengthsIn("mm"))).toEqual({
      term: "Chord to next",
      text: "10.000 mm, 1 division apart",
    });
    expect(chordItem({ apart: 3, length: 10 }, lengthsIn("mm"))).toEqual({
      term: "Chord across",
      text: "10.000 mm, 3 divisions apart",
    });
  });
});
