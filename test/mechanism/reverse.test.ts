import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactSettings, gearsForgotten, type Ratio, ratio, type SetMove, whatMoveGives } from "../../src/index.ts";
import { counts, heads, small, teethPerMove } from "../support/arbitraries.ts";
import { refusalLines } from "../support/refusal.ts";
import { best } from "../support/settings.ts";
import { wrong } from "../support/wrong.ts";

const onHead40 = (move: Partial<SetMove>): SetMove => ({ wormRatio: ratio(40), turns: 0, spaces: 0, circle: null, ...move });

describe("moves that gave another count in the shop (common practice, no source; the arithmetic is 40 ÷ the move)", () => {
  it.each([
    { told: "22 of 33, a geared row of 57 read as a plain one", spaces: 22, circle: 33, divisions: 60 },
    { told: "20 of 47, taken for 96", spaces: 20, circle: 47, divisions: 94 },
    { told: "13 of 39", spaces: 13, circle: 39, divisions: 120 },
    { told: "20 of 43", spaces: 20, circle: 43, divisions: 86 },
  ])("$told gives $divisions", ({ spaces, circle, divisions }) => {
    expect(whatMoveGives(onHead40({ spaces, circle }))).toMatchObject({ divisions, exact: true, closingArcSeconds: 0 });
  });

  it("9 turns + 54 of 60, a misprint for 0 + 54, gives 4 and a bit: no count at all", () => {
    const gives = whatMoveGives(onHead40({ turns: 9, spaces: 54, circle: 60 }));
    expect(gives).toMatchObject({ divisions: 4, exact: false, spindlePerMove: "99/400" });
    // 4 moves of 89.1° leave 3.6° of the round undone.
    expect(gives.closingArcSeconds).toBeCloseTo(-3.6 * 3600, 9);
  });
});

describe("the gears forgotten", () => {
  it("127 by 5 of 15 is cut as 120", () => {
    expect(best(127)).toMatchObject({ spaces: 5, circle: 15, gears: { drivers: [56], driven: [24] } });
    expect(gearsForgotten(best(127))).toMatchObject({ divisions: 120, exact: true });
  });

  it("are not looked for in a setting that is none: a part misspelt would be left out of it", () => {
    expect(refusalLines(() => gearsForgotten(wrong({ ...best(86), gear: {} })))).toEqual([
      expect.stringMatching(/^move: there is no key "gear"; the keys are /),
    ]);
  });

  it("says nothing of a setting without gears", () => {
    expect(gearsForgotten(best(86))).toBeNull();
  });

  it("the gears in place, the same move gives its count", () => {
    const gears = { drivers: [56], driven: [24], direction: "against" } as const;
    expect(whatMoveGives(onHead40({ spaces: 5, circle: 15, gears }))).toMatchObject({ divisions: 127, exact: true });
    expect(whatMoveGives(onHead40({ spaces: 5, circle: 15, gears: { ...gears, direction: "with" } }))).toMatchObject({
      divisions: 113,
      exact: true,
    });
  });
});

describe("laws", () => {
  it("the move of every exact setting gives its own count back", () => {
    fc.assert(
      fc.property(heads(small), counts, teethPerMove, (head, divisions, most) => {
        let seen = 0;
        for (const setting of exactSettings(head, { divisions }, { teethPerMove: most })) {
          expect(whatMoveGives(setting, setting.teethPerMove)).toEqual({
            spindlePerMove: setting.spindlePerMove,
            divisions,
            exact: true,
            closingArcSeconds: 0,
          });
          seen += 1;
          if (seen === 30) break;
        }
      }),
    );
  });

  it("what comes nearest does: no count closes better than the one named", () => {
    const move = fc.record({
      turns: fc.integer({ min: 0, max: 9 }),
      spaces: fc.integer({ min: 1, max: 48 }),
      circle: fc.integer({ min: 49, max: 66 }),
    });
    fc.assert(
      fc.property(move, fc.integer({ min: 1, max: 6 }), (move, teeth) => {
        const gives = whatMoveGives({ wormRatio: ratio(40), ...move }, teeth);
        const perMove = (move.turns * move.circle + move.spaces) / (40 * move.circle);
        // In places of the count itself: a half of one is the furthest that the nearest can be.
        expect(Math.abs(teeth / perMove - gives.divisions)).toBeLessThanOrEqual(0.5 + 1e-9);
        expect(gives.closingArcSeconds).toBeCloseTo((gives.divisions * perMove - teeth) * 1_296_000, 3);
      }),
    );
  });

  it("a block that shares a factor with its count is no exact setting: teeth would be left out", () => {
    // 3 of 6 a move: back at the start after two moves, with four teeth never reached.
    expect(whatMoveGives(onHead40({ turns: 20 }), 3)).toMatchObject({ divisions: 6, exact: false, closingArcSeconds: 0 });
  });
});

describe("refusals", () => {
  it.each([
    ["no move at all", { spaces: 0, circle: 33 }, 1, "setting: turns and spaces of 0 are no move; give a move above 0"],
    ["spaces without a circle", { spaces: 3 }, 1, "setting.circle: is missing; spaces say nothing without it"],
    ["a circle of 0", { spaces: 1, circle: 0 }, 1, "setting.spaces: 1 of 0 is not a move in whole holes"],
    [
      "a second part that undoes the first",
      { spaces: 5, circle: 15, second: { spaces: 7, circle: 21, direction: "against" } },
      1,
      "setting: this move brings the work back or not on at all; give one that goes forward",
    ],
    [
      "a second part that more than undoes the first",
      { spaces: 5, circle: 15, second: { spaces: 20, circle: 21, direction: "against" } },
      1,
      "setting: this move brings the work back or not on at all; give one that goes forward",
    ],
    [
      "a plate that keeps up with the crank",
      { spaces: 5, circle: 15, gears: { drivers: [80, 40], driven: [8, 10], direction: "with" } },
      1,
      "setting.gears: turn the plate as fast as the crank or faster, so that nothing can move; give a slower train",
    ],
    [
      "teeth per move of 0",
      { spaces: 5, circle: 15 },
      0,
      "teethPerMove: 0 is not a number of teeth per move; give a whole number from 1 to 1,000",
    ],
    [
      "a worm ratio of 0",
      { wormRatio: wrong<Ratio>("0"), turns: 1 },
      1,
      'setting.wormRatio: "0" is not an exact number above 0, such as "40" or "81/2"',
    ],
  ] as const)("%s", (_, move, teeth, told) => {
    expect(refusalLines(() => whatMoveGives(onHead40(move), teeth))).toEqual([told]);
  });
});
