import { describe, expect, it } from "vitest";
import { defineHead, type Head, type Method, type UnprovedSetting } from "../../src/index.ts";
import { type MethodWords, methodWords, stopPinIn } from "../../src/words/index.ts";
import { type HandWorked, handWorked, oneOfAll } from "../support/hand-worked.ts";

const wordsOf = ({ method }: UnprovedSetting) => methodWords[method] as unknown as MethodWords<Method>;
const setUp = ({ setting, head }: Pick<HandWorked, "setting" | "head">) =>
  wordsOf(setting)
    .setUp(setting as never, head)
    .map(({ term, text }) => (term === "" ? text : `${term}: ${text}`));
const figures = ({ setting, head }: Pick<HandWorked, "setting" | "head">) =>
  wordsOf(setting)
    .figures(setting as never, head)
    .map(({ head: above, figure, under }) => `${above} ${figure} ${under}`);
const short = ({ setting }: HandWorked, plate = " (plate 1)") => wordsOf(setting).short(setting as never, plate);
const proof = ({ setting, ...turned }: HandWorked) =>
  wordsOf(setting).proof(setting as never, { ...turned, closes: true, shownBy: "identity" } as never);
const ungeared = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [21] }] });
const bare: Head = defineHead({ wormRatio: 40, dial: { marksPerTurn: 100 } });

describe("the set-up, in the order of work", () => {
  it.each([
    ["direct", handWorked.direct, ["Direct plate", "Move"]],
    ["simple", handWorked.simple, ["Plate", "Crank", "Sector arms"]],
    ["whole turns", handWorked.wholeTurns, ["Crank"]],
    ["compound", handWorked.compoundAgainst, ["Plate", "Sector arms"]],
    ["one pair", handWorked.onePairWith, ["Plate", "Crank", "Sector arms"]],
    ["dial", handWorked.dial, ["Dial"]],
  ] as const)("%s: a page of large figures need say no more of these", (_, { setting, head }, terms) => {
    const items = wordsOf(setting).setUp(setting as never, head);
    expect(items.filter(({ inFigures }) => inFigures).map(({ term }) => term)).toEqual(terms);
  });

  it("direct", () => {
    expect(setUp(handWorked.direct)).toEqual([
      "Worm: out of mesh; the spindle is moved by hand",
      "Direct plate: nose, 24 holes",
      "Move: 4 spaces",
    ]);
  });

  it("simple, with gears at hand and without", () => {
    expect(setUp(handWorked.simple)).toEqual([
      "Plate: 1, circle of 21 holes",
      "Crank: 5 turns + 15 spaces",
      "Sector arms: enclose 16 holes, the pin's own among them",
      "Plate stop pin: IN, and no gears on",
    ]);
    expect(setUp({ ...handWorked.simple, head: ungeared }).at(-1)).toBe("Plate stop pin: IN");
    expect([stopPinIn(oneOfAll).text, stopPinIn(ungeared).text]).toEqual(["IN, and no gears on", "IN"]);
  });

  it("whole turns, on a head with plates and by a handwheel", () => {
    expect(setUp(handWorked.wholeTurns)).toEqual([
      "Plate: any, any circle: the pin comes back to the same hole",
      "Crank: 5 turns + 0 spaces",
      "Plate stop pin: IN, and no gears on",
    ]);
    expect(setUp({ ...handWorked.wholeTurns, head: bare })).toEqual([
      "Dial: 5 turns + 0 marks: back at the same mark after every move",
    ]);
  });

  it("compound, both on: the crank first", () => {
    expect(setUp(handWorked.compoundWith)).toEqual([
      "Plate: 1, circle of 15 holes",
      "Sector arms: enclose 11 holes, the pin's own among them",
      "First, the crank: 0 turns + 10 spaces of 15, forward",
      "Then both: draw the rear pin from the circle of 17; crank and plate together ON the same way 2 spaces of 17; rear pin in again",
      "Plate stop pin: OUT: the rear pin holds the plate, in the circle of 17 on the same face",
    ]);
  });

  it("compound, back: both first, then the crank, which takes up the slack", () => {
    expect(setUp(handWorked.compoundAgainst)).toEqual([
      "Plate: 1, circle of 23 holes",
      "Sector arms: enclose 22 holes, the pin's own among them",
      "First, both: draw the rear pin from the circle of 33; crank and plate together BACK the other way 11 spaces of 33; rear pin in again",
      "Then the crank: 0 turns + 21 spaces of 23, forward",
      "The crank forward after it takes up the slack of the worm: always in this order.",
      "Plate stop pin: OUT: the rear pin holds the plate, in the circle of 33 on the same face",
    ]);
  });

  it("one pair of gears, with one idler and with two", () => {
    expect(setUp(handWorked.onePairWith).slice(2)).toEqual([
      "Sector arms: enclose 11 holes, the pin's own among them",
      "Plate stop pin: OUT: the gears turn the plate",
      "Gear on spindle: 40 teeth",
      "Gear on worm: 72 teeth, 1 idler between: one gear more, of any size that fits",
      "Plate turns: WITH the crank, 5/9 for one turn of the spindle",
    ]);
    expect(setUp(handWorked.onePairAgainst).slice(4)).toEqual([
      "Gear on spindle: 56 teeth",
      "Gear on worm: 24 teeth, 2 idlers between: 2 gears more, of any size that fits",
      "Plate turns: AGAINST the crank, 2 1/3 for one turn of the spindle",
    ]);
  });

  it("two pairs, without an idler and with one of those that are kept", () => {
    expect(setUp(handWorked.twoPairsWith).slice(4)).toEqual([
      "Gear on spindle: 72 teeth, drives",
      "Gears on stud: 24 teeth, fast with 40 teeth, which drives",
      "Gear on worm: 56 teeth; no idler",
      "Plate turns: WITH the crank, 2 1/7 for one turn of the spindle",
    ]);
    const on = (idlers: readonly number[]) =>
      setUp({ ...handWorked.twoPairsAgainst, head: { ...oneOfAll, idlers } }).find((line) => line.startsWith("Gear on worm"));
    expect(on([])).toBe("Gear on worm: 48 teeth; 1 idler between: one gear more, of any size that fits");
    expect(on([30, 36])).toBe(
      "Gear on worm: 48 teeth; 1 idler between: one gear more, your 30 or 36, or any left over that fits",
    );
  });

  it("a train that may foul says so", () => {
    const { setting, head } = handWorked.twoPairsWith;
    const mayFoul = { code: "stud-driven-at-worm-shaft", gear: 24, meshing: [40, 56], room: 15 } as const;
    const lines = setUp({ setting: { ...setting, gears: { ...setting.gears, mayFoul } }, head });
    expect(lines.at(-1)).toBe(
      "MAY FOUL: the stud's 24 may reach the worm shaft: 40 + 56 is less than 24 + 15 (a shop rule for the room of a shaft, 15 teeth; common practice, no source). Try it on the quadrant first.",
    );
  });

  it("by the dial: 585 of 1,440 places are 97 marks and 3 of 6 vernier lines", () => {
    const zero = "One zero: Set every position from one zero, not each from the last.";
    const { setting, head } = handWorked.dial;
    const withVernier = { ...head, dial: head.dial && { ...head.dial, marksPerTurn: 240, vernierLines: 6 } };
    expect(setUp({ setting, head: withVernier })).toEqual([
      "Dial: 1 turn + 97 marks + 3 lines of the vernier from each to the next",
      zero,
    ]);
    const withTwo = { ...head, dial: head.dial && { ...head.dial, marksPerTurn: 720, vernierLines: 2 } };
    expect(setUp({ setting, head: withTwo })[0]).toBe("Dial: 1 turn + 292 marks + 1 line of the vernier from each to the next");
    const withNone = { ...head, dial: head.dial && { ...head.dial, marksPerTurn: 1440, vernierLines: 1 } };
    expect(setUp({ setting, head: withNone })).toEqual(["Dial: 1 turn + 585 marks from each to the next", zero]);
    expect(figures({ setting, head: withVernier })).toEqual(["TURNS 1 whole turns", "MARKS 97 of 240", "VERNIER 3 lines of 6"]);
    expect(figures({ setting, head: withNone })).toEqual(["TURNS 1 whole turns", "MARKS 585 of 1440"]);
  });
});

describe("what the hand sets, in figures", () => {
  const alone = ["CIRCLE 21 plate 1", "TURNS 5 whole turns", "SPACES 15 then on", "ARMS ENCLOSE 16 holes"];

  it.each([
    ["direct", handWorked.direct, ["CIRCLE 24 plate nose", "SPACES 4 worm out of mesh"]],
    ["simple", handWorked.simple, alone],
    ["whole turns", handWorked.wholeTurns, ["CIRCLE any plate any", "TURNS 5 whole turns"]],
    ["whole turns of a handwheel", { ...handWorked.wholeTurns, head: bare }, ["TURNS 5 whole turns"]],
    [
      "one pair",
      handWorked.onePairWith,
      ["CIRCLE 18 plate 1", "TURNS 0 whole turns", "SPACES 10 then on", "ARMS ENCLOSE 11 holes"],
    ],
    [
      "compound on",
      handWorked.compoundWith,
      ["CIRCLE 15 plate 1", "TURNS 0 whole turns", "SPACES 10 then on", "ARMS ENCLOSE 11 holes", "THEN BOTH ON 2 spaces of 17"],
    ],
    [
      "compound back",
      handWorked.compoundAgainst,
      [
        "CIRCLE 23 plate 1",
        "FIRST BOTH BACK 11 spaces of 33",
        "THEN TURNS 0 whole turns",
        "SPACES 21 then on",
        "ARMS ENCLOSE 22 holes",
      ],
    ],
  ] as const)("%s", (_, worked, lines) => {
    expect(figures(worked)).toEqual(lines);
  });
});

describe("the move in few words", () => {
  it.each([
    ["direct", handWorked.direct, "4 spaces of 24 on the direct plate nose"],
    ["simple", handWorked.simple, "5 + 15 of 21 (plate 1)"],
    ["compound on", handWorked.compoundWith, "0 + 10 of 15 + 2 of 17 (plate 1)"],
    ["compound back", handWorked.compoundAgainst, "0 + 21 of 23 − 11 of 33 (plate 1)"],
    ["one pair", handWorked.onePairWith, "0 + 10 of 18 (plate 1), gears 40 to 72, 1 idler, plate with"],
    ["two pairs", handWorked.twoPairsWith, "0 + 35 of 49 (plate 1), gears 72 × 40 to 24 × 56, 0 idlers, plate with"],
    ["dial", handWorked.dial, "by the dial, 1 + 585 of its 1440 parts"],
  ] as const)("%s", (_, worked, words) => {
    expect(short(worked)).toBe(words);
  });

  it("whole turns name no circle", () => {
    expect(short(handWorked.wholeTurns, "")).toBe("5 turns + 0");
    const { setting } = handWorked.wholeTurns;
    expect(short({ ...handWorked.wholeTurns, setting: { ...setting, turns: 1 } }, "")).toBe("1 turn + 0");
  });
});

describe("what all the moves come to", () => {
  it.each([
    ["direct", handWorked.direct, ", and the pin is in its first hole again"],
    ["simple", handWorked.simple, ": 40 turns of the crank bring you back to the start hole"],
    ["whole turns", handWorked.wholeTurns, ": 40 turns of the crank bring you back to the start"],
    ["compound on", handWorked.compoundWith, ": 40 turns of the crank in all bring you back to the start holes"],
    [
      "one pair",
      handWorked.onePairWith,
      ": the pin goes 39 4/9 turns over the plate, the plate 5/9 turns with the crank; 40 turns of the crank in all, and the work is back at its start",
    ],
    [
      "two pairs back",
      handWorked.twoPairsAgainst,
      ": the pin goes 44 turns over the plate, the plate 4 turns against the crank; 40 turns of the crank in all, and the work is back at its start",
    ],
    ["dial", handWorked.dial, ": 90 turns of the handwheel bring you back to the start mark"],
  ] as const)("%s", (_, worked, words) => {
    expect(proof(worked)).toBe(words);
  });

  it("no hole is promised where the turns are no whole ones", () => {
    expect(proof({ ...handWorked.simple, crankTurns: "81/2" })).toBe(": 40 1/2 turns of the crank bring you back to the start");
    expect(proof({ ...handWorked.compoundWith, pinTurns: "69/2" })).toBe(
      ": 40 turns of the crank in all bring the work back to its start, the pins to other holes",
    );
  });

  it("one turn is one turn, and none is 0 turns", () => {
    expect(proof({ ...handWorked.dial, crankTurns: "1" })).toMatch(/^: 1 turn of the handwheel/);
    expect(proof({ ...handWorked.dial, crankTurns: null })).toMatch(/^: 0 turns of the handwheel/);
  });
});

it("a dial is missed on a head that has one, a direct plate likewise, and the others everywhere", () => {
  const expected = (head: Head) =>
    Object.entries(methodWords).flatMap(([method, words]) => (words.isExpected(head) ? [method] : []));
  expect(expected(oneOfAll)).toEqual(["direct", "simple", "compound", "differential"]);
  expect(expected(bare)).toEqual(["simple", "compound", "differential", "dial"]);
});
