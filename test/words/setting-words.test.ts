import { describe, expect, it } from "vitest";
import { indexDivisions, ratio, revolutions, type Setting, whatMoveGives } from "../../src/index.ts";
import {
  countWithoutGears,
  eachMove,
  givesWords,
  marksAmong,
  proofShort,
  proofShownWords,
  proofWords,
  settingFigures,
  settingItems,
  settingItemsAmong,
  shortSetting,
} from "../../src/words/index.ts";
import { handWorked, oneOfAll } from "../support/hand-worked.ts";
import { threePlates } from "../support/ready.ts";

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

describe("what one move does", () => {
  it("a part of the work, and several teeth at a time", () => {
    expect(eachMove(handWorked.simple.setting)).toBe("≈ 51° 25′ 42.9″ of the work");
    expect(eachMove(handWorked.block.setting)).toBe("≈ 154° 17′ 08.6″ of the work; 3 teeth on, so go round the work 3 times");
    const headed = settingFigures(handWorked.block.setting, oneOfAll).at(-1);
    expect(headed).toEqual({ head: "TEETH A MOVE", figure: "3", under: "3 times round" });
    expect(settingFigures(handWorked.simple.setting, oneOfAll).at(-1)?.head).toBe("ARMS ENCLOSE");
    expect([shortSetting(handWorked.simple.setting), shortSetting(handWorked.block.setting)]).toEqual([
      "5 + 15 of 21 (plate 1)",
      "17 + 3 of 21 (plate 1), 3 teeth per move",
    ]);
    expect(shortSetting(handWorked.wholeTurns.setting)).toBe("5 turns + 0");
  });
});

describe("gears that are forgotten", () => {
  const lastOf = (setting: Parameters<typeof settingItems>[0]) => settingItems(setting, oneOfAll).slice(-2);

  // 13/39 of a turn is 120 on 40:1, 35/49 is 56.
  it("say what comes then, and where they cannot be used", () => {
    expect(lastOf(handWorked.onePairAgainst.setting)).toEqual([
      { term: "Gears forgotten", text: "13 spaces of 39 without them: that gives 120. The part is scrap." },
      { term: "Never", text: "with the spindle tilted out of line with the gears, nor while they cut a helix" },
    ]);
    expect(lastOf({ ...handWorked.onePairAgainst.setting, turns: 1 })[0]?.text).toMatch(/^1 turn \+ 13 spaces of 39 without/);
    const whole = { circle: null, plate: null, face: null, spaces: 0, armsEnclose: null } as const;
    expect(lastOf({ ...handWorked.onePairAgainst.setting, ...whole, turns: 4 })[0]?.text).toBe(
      "4 turns + 0 spaces without them: that gives 10. The part is scrap.",
    );
    expect(settingItems(handWorked.simple.setting, oneOfAll).map(({ term }) => term)).not.toContain("Gears forgotten");
  });

  it("give a count, or one that is none: 40 · 18/10 is 72, 40 · 29/4 is 290, 40 · 49/36 is 54.44", () => {
    const { onePairWith, twoPairsAgainst, twoPairsWith, simple } = handWorked;
    expect([onePairWith, twoPairsAgainst, simple].map(({ setting }) => countWithoutGears(setting))).toEqual(["72", "290", null]);
    expect(countWithoutGears({ ...twoPairsWith.setting, spaces: 36 })).toBe("≈ 54.44");
  });

  it("several teeth at a time meet every third of 216 = 3 · 40 · 18/10, and all of 140 = 3 · 40 · 21/18", () => {
    const { setting } = handWorked.onePairWith;
    expect(countWithoutGears({ ...setting, teethPerMove: 3 })).toBe("72");
    expect(countWithoutGears({ ...setting, spaces: 18, circle: 21, teethPerMove: 3 })).toBe("140");
  });

  it("are never told as a whole count where there is none: 40 · 9999/10000 is 39.996", () => {
    const of = (spaces: number, circle: number) => countWithoutGears({ ...handWorked.onePairWith.setting, spaces, circle });
    expect(of(10_000, 9999)).toBe("≈ 39.996");
    // 40 · 99,999,999,999/100,000,000,000 is a whole count to nine decimals, and no more are written.
    expect(of(100_000_000_000, 99_999_999_999)).toBe("≈ 40.000000000");
  });
});

describe("the proof", () => {
  const [found] = indexDivisions(threePlates, 8).settings as readonly [Setting];
  const of = (proof: Partial<Setting["proof"]>, more: Partial<Setting> = {}) =>
    ({ ...found, ...more, proof: { ...found.proof, ...proof } }) as Setting;

  it("in one line and in few words", () => {
    expect(proofWords(of({}))).toBe("8 moves, 1 turn of the work: 40 turns of the crank bring you back to the start");
    expect(proofShort(of({}))).toBe("8 moves, 1 turn of the work, and it is back at its start");
    expect(proofShort(of({ moves: 1, rounds: 3 }))).toBe("1 move, 3 turns of the work, and it is back at its start");
  });

  it("says how it was shown", () => {
    const spindlePerMove = revolutions("3/7");
    expect(proofShownWords(of({ shownBy: "identity", moves: 7, rounds: 3 }, { spindlePerMove }))).toBe(
      "one move turns the work by exactly 3/7 of a turn, and 3 and 7 have no common factor: so many moves reach every division once and end at the start",
    );
    expect(proofShownWords(of({ shownBy: "identity", rounds: 1 }))).toBe(
      "one move turns the work by exactly 1/8 of a turn: so many moves reach every division once and end at the start",
    );
    expect(proofShownWords(of({ shownBy: "walk" }))).toMatch(/^every move was made on a model of this head/);
  });
});

describe("what is worth knowing of a setting among others", () => {
  const { simple, block, wholeTurns, direct, compoundWith } = handWorked;
  const larger = { ...simple.setting, spaces: 35, circle: 49, armsEnclose: 36 } as const;

  it("the plate that is on the head, and the largest of several circles", () => {
    expect(marksAmong(simple.setting, [simple.setting], "1")).toBe(": mounted");
    expect(marksAmong(simple.setting, [simple.setting], "2")).toBe("");
    expect(marksAmong(simple.setting, [simple.setting], null)).toBe("");
    expect(marksAmong(larger, [simple.setting, larger], null)).toBe(": largest circle");
    expect(marksAmong(simple.setting, [simple.setting, larger], null)).toBe("");
    expect(marksAmong(larger, [simple.setting, larger], "1")).toBe(": mounted, largest circle");
  });

  it("of no circle, a direct plate or a pair there is none to choose by", () => {
    expect(marksAmong(wholeTurns.setting, [wholeTurns.setting, simple.setting], "1")).toBe("");
    expect(marksAmong(direct.setting, [direct.setting, simple.setting], "nose")).toBe("");
    expect(marksAmong(compoundWith.setting, [simple.setting, compoundWith.setting], null)).toBe("");
    expect(marksAmong(simple.setting, [simple.setting, direct.setting, wholeTurns.setting], null)).toBe("");
    expect(marksAmong(larger, [larger, direct.setting, wholeTurns.setting], null)).toBe("");
    const pair = { ...compoundWith.setting, circle: 49 } as const;
    expect(marksAmong(pair, [pair, simple.setting], null)).toBe("");
    expect(marksAmong(simple.setting, [simple.setting, block.setting], null)).toBe(": largest circle");
  });

  it("stands beside its plate, and there alone", () => {
    const marked = settingItemsAmong(larger, [simple.setting, larger], "1", oneOfAll);
    expect(marked.slice(0, 2).map(({ text }) => text)).toEqual([
      "1, circle of 49 holes: mounted, largest circle",
      "5 turns + 35 spaces",
    ]);
    expect(marked.slice(1)).toEqual(settingItems(larger, oneOfAll).slice(1));
  });
});
