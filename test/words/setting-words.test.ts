import { describe, expect, it } from "vitest";
import { ratio, whatMoveGives } from "../../src/index.ts";
import { givesWords } from "../../src/words/index.ts";

// The law of the dividing head, N = k × ratio / turns, worked by hand.
describe("what a move gives, in words", () => {
  const said = (turns: number, teethPerMove: number) =>
    givesWords(whatMoveGives({ wormRatio: ratio(40), turns, spaces: 0, circle: null }, teethPerMove));

  it("a count that it does", () => expect(said(5, 1)).toBe("gives 8"));

  it("a count that it comes back on, with every other tooth left out", () =>
    expect(said(5, 2)).toBe("goes round on 16 with teeth left out"));

  it("the nearest count, and how far out it closes: 3 × 13/40 of a turn is 1/40 short", () =>
    expect(said(13, 1)).toBe("comes nearest to 3, 9.00° out at the close"));
});
