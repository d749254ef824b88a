import { describe, expect, it } from "vitest";
import { defineHead, type HeadSpec, indexDivisions } from "../../src/index.ts";
import { addCommonMultiples } from "../../src/methods/circle-pairs.ts";
import { secondOf } from "../support/parts.ts";

const movesOf = (divisions: number, spec: Omit<HeadSpec, "wormRatio">) => {
  const head = defineHead({ wormRatio: 40, rearPin: true, ...spec });
  const { settings } = indexDivisions(head, divisions, { methods: ["compound"], all: true });
  return settings.map((setting) => {
    const second = secondOf(setting);
    return `${setting.turns} + ${setting.spaces}/${setting.circle} ${second?.direction} ${second?.spaces}/${second?.circle}`;
  });
};

describe("compound indexing", () => {
  it("makes 51, 40/51 of a turn, on 15 and 17, either way round, on and back", () => {
    // 10/15 + 2/17 = 34/51 + 6/51; back from one turn more of the first, 1 + 10/15 − 15/17.
    expect(movesOf(51, { plates: [{ name: "1", circles: [15, 17] }] })).toEqual([
      "0 + 2/17 with 10/15",
      "0 + 10/15 with 2/17",
      "1 + 2/17 against 5/15",
      "1 + 10/15 against 15/17",
    ]);
  });

  it("wants both circles on one face", () => {
    const faces = [
      { name: "front", circles: [15] },
      { name: "back", circles: [17] },
    ];
    expect(movesOf(51, { plates: [{ name: "1", faces }] })).toEqual([]);
    const plates = [
      { name: "1", circles: [15] },
      { name: "2", circles: [17] },
    ];
    expect(movesOf(51, { plates })).toEqual([]);
  });

  it("wants a rear pin", () => {
    expect(movesOf(51, { plates: [{ name: "1", circles: [15, 17] }], rearPin: false })).toEqual([]);
  });

  it("gives no pair of which one circle would do alone", () => {
    expect(movesOf(17, { plates: [{ name: "1", circles: [15, 17] }] })).toEqual([]);
    expect(movesOf(51, { plates: [{ name: "1", circles: [15, 51] }] })).toEqual([]);
  });

  it("finds every solution where the circles share a factor: 8/85 of a turn on 15 and 51, which share 3", () => {
    expect(movesOf(425, { plates: [{ name: "1", circles: [15, 51] }] })).toEqual([
      "0 + 2/15 against 2/51",
      "0 + 15/51 against 3/15",
      "0 + 7/15 against 19/51",
      "0 + 32/51 against 8/15",
      "0 + 12/15 against 36/51",
      "0 + 49/51 against 13/15",
    ]);
  });
});

it.each([
  [
    [4, 6, 9],
    [12, 18, 36],
  ],
  // 4 and 9, as well as 4 and 18; 6 and 9, as well as 18 with either.
  [
    [4, 6, 9, 18],
    [12, 18, 36],
  ],
])("two circles of a face add up to parts of their least common multiple, each named once: %j", (circles, parts) => {
  const multiples = new Set<number>();
  addCommonMultiples({ name: null, circles }, multiples);
  expect([...multiples].sort((a, b) => a - b)).toEqual(parts);
});
