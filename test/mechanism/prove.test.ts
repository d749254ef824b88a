import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions, prove, revolutions, spindleTurnsPerMove, type UnprovedSetting } from "../../src/index.ts";
import { type HandWorked, handWorked } from "../support/hand-worked.ts";
import { wrong } from "../support/wrong.ts";
import { wrongMoves } from "../support/wrong-moves.ts";

const cases: readonly HandWorked[] = Object.values(handWorked);
const named = cases.map((each) => [each.name, each] as const);
const { simple, direct } = handWorked;

describe("settings worked by hand, by the identity of one move", () => {
  it.each(named)("%s", (_, { setting, moves, rounds, crankTurns, pinTurns, plateTurns }) => {
    const proof = { closes: true, shownBy: "identity", moves, rounds, crankTurns, pinTurns, plateTurns };
    expect(prove(setting)).toEqual(proof);
    expect(spindleTurnsPerMove(setting)).toBe(setting.spindlePerMove);
  });

  it.each(named)("%s: the same through JSON", (_, { setting }) => {
    const back: UnprovedSetting = JSON.parse(JSON.stringify(setting));
    expect(prove(back)).toEqual(prove(setting));
  });
});

describe("a wrong setting does not close by the identity", () => {
  it.each(cases.flatMap(wrongMoves).map((each) => [each.name, each] as const))("%s", (_, { setting }) => {
    expect(prove(setting).closes).toBe(false);
  });

  it("of a move that reaches every division but goes round more often than it says", () => {
    // 11 turns + 9 of 21 is 2 of 7 where 1 of 7 is meant.
    expect(prove({ ...simple.setting, turns: 11, spaces: 9 }).closes).toBe(false);
    expect(prove({ ...simple.setting, turns: 11, spaces: 9, spindlePerMove: revolutions("2/7") })).toMatchObject({
      closes: true,
      rounds: 2,
    });
  });
});

describe("moves made one by one", () => {
  const head = defineHead({ wormRatio: 100, plates: [{ name: "1", circles: [1000, 1001] }] });
  const settingOf = (divisions: number) => indexDivisions(head, divisions).settings[0] as UnprovedSetting;

  it("are up to 100,000", () => {
    expect(prove(settingOf(100_000), { walkOn: head })).toMatchObject({ closes: true, shownBy: "walk", moves: 100_000 });
  });

  it("are refused above, where the identity proves them all", () => {
    const more = settingOf(100_100);
    expect(prove(more)).toMatchObject({ closes: true, shownBy: "identity", moves: 100_100 });
    expect(() => prove(more, { walkOn: head })).toThrow(
      "walkOn: 100,100 moves are too many to make one by one; leave it out, and the identity of one move proves them all",
    );
  });
});

describe("what a proof does not ask for", () => {
  it("is the worm ratio of direct indexing, as the worm is out of mesh", () => {
    expect(prove({ ...direct.setting, wormRatio: wrong("0") }).closes).toBe(true);
  });
});

describe("the exact numbers of a setting that are none are refused by name", () => {
  const told = 'is not an exact number above 0, such as "40" or "81/2"';
  const refusedBy = (setting: UnprovedSetting) => () => prove(setting);

  it.each([
    ["no spindle move", "0/7"],
    ["a spindle move that goes back", "-1/7"],
    ["one that is no number", "NaN"],
  ])("%s", (_, spindlePerMove) => {
    expect(refusedBy({ ...simple.setting, spindlePerMove: wrong(spindlePerMove) })).toThrow(
      `setting.spindlePerMove: "${spindlePerMove}" ${told}`,
    );
  });

  it("a spindle move that is a number in itself", () => {
    expect(refusedBy(wrong({ ...simple.setting, spindlePerMove: 0.25 }))).toThrow(`setting.spindlePerMove: 0.25 ${told}`);
  });
});
