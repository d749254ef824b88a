import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions } from "../../src/index.ts";

const movesOf = (divisions: number, marksPerTurn: number, vernierLines: number, wormRatio: number | string = 90) => {
  const head = defineHead({ wormRatio, dial: { marksPerTurn, vernierLines } });
  const { settings } = indexDivisions(head, divisions, { methods: ["dial"], teethPerMove: 4 });
  return settings.map(({ teethPerMove, turns, spaces, circle }) => [teethPerMove, turns, spaces, circle]);
};

describe("indexing by the dial", () => {
  it("counts the marks, each in as many parts as the vernier has lines: 64 on 90:1 is 1 turn + 13/32", () => {
    expect(movesOf(64, 240, 1)).toEqual([]);
    expect(movesOf(64, 240, 2)).toEqual([[1, 1, 195, 480]]);
    expect(movesOf(64, 240, 6)).toEqual([[1, 1, 585, 1440]]);
  });

  it("makes whole turns too: 45 on 90:1 is 2 turns", () => {
    expect(movesOf(45, 240, 1)).toEqual([[1, 2, 0, 240]]);
  });

  it("takes more teeth per move where they cancel a fractional worm ratio: 81/2 · 2/15 = 5 + 2/5", () => {
    expect(movesOf(15, 20, 1, "81/2")).toEqual([[1, 2, 14, 20]]);
    expect(movesOf(15, 5, 1, "81/2")).toEqual([[2, 5, 2, 5]]);
  });
});
