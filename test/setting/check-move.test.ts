import { describe, expect, it } from "vitest";
import { exactSettings, indexDivisions, nearSettings, ratio } from "../../src/index.ts";
import { checkMove } from "../../src/setting/check-move.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";

const move = { wormRatio: ratio(40), turns: 0, spaces: 5, circle: 15 };

it("every setting is a move, exact or near", () => {
  for (const divisions of [12, 51, 69, 127, 383, 1000]) {
    for (const setting of exactSettings(threePlates, { divisions })) expect(refusalLines(() => checkMove(setting))).toEqual([]);
    for (const near of nearSettings(threePlates, { divisions }))
      if (near.moves === "equal") expect(refusalLines(() => checkMove(near))).toEqual([]);
  }
  expect(indexDivisions(threePlates, 127).exact).toBe(true);
  // Of the crank alone: what a setting has not stands in it as null, too.
  expect(refusalLines(() => checkMove({ ...move, second: null, small: null, gears: null }))).toEqual([]);
});

describe("what is no move is refused", () => {
  it.each([
    ["nothing", undefined, /^move: undefined is not an object; its keys may be /],
    ["gears that are misspelt", { ...move, gear: {} }, /^move: there is no key "gear"; the keys are /],
    ["a second move that is none", { ...move, second: [] }, /^move\.second: a list is not an object; /],
    [
      "a second move with a key too many",
      { ...move, second: { spaces: 1, circle: 17, direction: "with", turns: 2 } },
      /^move\.second: there is no key "turns"; the keys are spaces, circle, direction$/,
    ],
    [
      "gears that are no lists",
      { ...move, gears: { drivers: 56, driven: [24], direction: "with" } },
      /^move\.gears\.drivers: 56 is not a list of teeth; give the teeth of each gear$/,
    ],
    [
      "gears that are lists of something else beside teeth",
      { ...move, gears: { drivers: [56], driven: [24, "28"], direction: "with" } },
      /^move\.gears\.driven: a list is not a list of teeth; give the teeth of each gear$/,
    ],
    [
      "gears with a key too many",
      { ...move, gears: { drivers: [56], driven: [24], direction: "with", idler: 1 } },
      /^move\.gears: there is no key "idler"; the keys are /,
    ],
    [
      "a second move with a figure that is none",
      { ...move, second: { spaces: [2], circle: 17, direction: "with" } },
      /^move\.second\.spaces: a list is neither a number nor a word$/,
    ],
    ["a move of the small crank that is none", { ...move, small: 5 }, /^move\.small: 5 is not an object; /],
    [
      "a move of the small crank with a key too many",
      { ...move, small: { ratio: 100, turns: 0, spaces: 1, circle: 54, hole: 2 } },
      /^move\.small: there is no key "hole"; the keys are ratio, turns, spaces, circle, armsEnclose$/,
    ],
    [
      "a move of the small crank with a figure that is none",
      { ...move, small: { ratio: 100, turns: 0, spaces: [1], circle: 54 } },
      /^move\.small\.spaces: a list is neither a number nor a word$/,
    ],
    ["a figure that is none", { ...move, turns: { of: 2 } }, /^move\.turns: an object is neither a number nor a word$/],
    [
      "an idler that is none",
      { ...move, gears: { drivers: [56], driven: [24], direction: "with", idlers: [2] } },
      /^move\.gears\.idlers: a list is neither a number nor a word$/,
    ],
  ])("%s", (_, given, told) => {
    const lines = refusalLines(() => checkMove(given));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(told);
  });
});
