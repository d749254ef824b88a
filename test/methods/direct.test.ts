import { describe, expect, it } from "vitest";
import { defineHead, indexAngle, indexDivisions, revolutions } from "../../src/index.ts";

const directPlates = [
  { name: "outer", holes: 36 },
  { name: "inner", holes: 24 },
  { name: "of 25", holes: 25 },
];
const head = defineHead({ wormRatio: 40, directPlates });
const movesOf = (divisions: number) =>
  indexDivisions(head, divisions).settings.map(({ plate, spaces }) => `${spaces} of ${plate}`);

describe("direct indexing", () => {
  it("serves the counts that divide a plate, on each plate that serves, the fewest spaces first", () => {
    expect(movesOf(6)).toEqual(["4 of inner", "6 of outer"]);
    expect(movesOf(5)).toEqual(["5 of of 25"]);
    expect(movesOf(1)).toEqual(["24 of inner", "25 of of 25", "36 of outer"]);
    expect(movesOf(10)).toEqual([]);
  });

  it("turns an angle of several holes in one move", () => {
    expect(indexAngle(head, revolutions("5/12")).settings).toEqual([
      expect.objectContaining({ plate: "inner", spaces: 10, turns: 0 }),
      expect.objectContaining({ plate: "outer", spaces: 15, turns: 0 }),
    ]);
  });

  it("needs neither worm nor pin: no stop pin and no sector arms are told", () => {
    expect(indexDivisions(head, 6).settings[0]).toMatchObject({ face: null, armsEnclose: null, plateStopPin: null });
  });

  it("is no way of setting the crank: a plate on the spindle counts no whole turns of it", () => {
    expect(indexDivisions(head, 40, { methods: ["simple"] }).exact).toBe(false);
  });
});
