import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactSettings, prove, spindleTurnsPerMove, type UnprovedSetting } from "../../src/index.ts";
import { counts, heads, teethPerMove } from "../support/arbitraries.ts";
import { type HandWorked, handWorked } from "../support/hand-worked.ts";
import { refusalLines } from "../support/refusal.ts";

const cases: readonly HandWorked[] = Object.values(handWorked);
const { simple, wholeTurns, direct, compoundWith, onePairWith, onePairAgainst, twoPairsWith } = handWorked;

/** Whether a setting closes, by the identity and by the walk, which must agree. */
function closes(setting: UnprovedSetting): boolean {
  const [identity, walk] = [prove(setting), prove(setting, { walk: true })];
  expect(walk).toEqual({ ...identity, shownBy: "walk" });
  return identity.closes;
}

describe("settings worked by hand", () => {
  it.each(cases)("$name", ({ setting, moves, rounds, crankTurns, pinTurns, plateTurns }) => {
    const proof = { closes: true, moves, rounds, crankTurns, pinTurns, plateTurns };
    expect(prove(setting)).toEqual({ ...proof, shownBy: "identity" });
    expect(prove(setting, { walk: true })).toEqual({ ...proof, shownBy: "walk" });
    expect(spindleTurnsPerMove(setting)).toBe(setting.spindlePerMove);
  });

  it.each(cases)("$name: also through JSON", ({ setting }) => {
    expect(closes(JSON.parse(JSON.stringify(setting)))).toBe(true);
  });
});

describe("wrong settings do not close, by the identity and by the walk alike", () => {
  it.each(cases)("$name: one space more or less", ({ setting }) => {
    const circle = setting.circle ?? 20;
    expect(closes({ ...setting, circle, spaces: setting.spaces + 1 })).toBe(false);
    if (setting.spaces > 1) expect(closes({ ...setting, spaces: setting.spaces - 1 })).toBe(false);
  });

  it.each(cases)("$name: one turn more", ({ setting }) => {
    expect(closes({ ...setting, turns: setting.turns + 1 })).toBe(false);
  });

  it.each(cases.filter(({ setting }) => setting.circle !== null))("$name: the next circle", ({ setting }) => {
    expect(closes({ ...setting, circle: (setting.circle ?? 0) + 1 })).toBe(false);
  });

  it.each(cases.filter(({ setting }) => setting.method !== "direct"))("$name: on a 60:1 head", ({ setting }) => {
    expect(closes({ ...setting, wormRatio: "60" })).toBe(false);
  });

  it.each(cases)("$name: for one division more", ({ setting, moves, rounds }) => {
    expect(closes({ ...setting, spindlePerMove: `${rounds}/${moves + 1}` })).toBe(false);
  });

  const geared = cases.flatMap(({ name, setting }) => (setting.gears ? [{ name, setting, gears: setting.gears }] : []));

  it.each(geared)("$name: the plate turning the other way", ({ setting, gears }) => {
    const direction = gears.direction === "with" ? "against" : "with";
    expect(closes({ ...setting, gears: { ...gears, direction } })).toBe(false);
  });

  it.each(geared)("$name: the train the other way round", ({ setting, gears }) => {
    expect(closes({ ...setting, gears: { ...gears, drivers: gears.driven, driven: gears.drivers } })).toBe(false);
  });

  it.each(geared)("$name: without the gears", ({ setting }) => {
    const { gears: _, ...alone } = setting;
    expect(closes(alone)).toBe(false);
  });

  it.each(cases.flatMap(({ name, setting }) => (setting.second ? [{ name, setting, second: setting.second }] : [])))(
    "$name: the second part the other way, or one space more, or left out",
    ({ setting, second }) => {
      const direction = second.direction === "with" ? "against" : "with";
      expect(closes({ ...setting, second: { ...second, direction } })).toBe(false);
      expect(closes({ ...setting, second: { ...second, spaces: second.spaces + 1 } })).toBe(false);
      const { second: _, ...alone } = setting;
      expect(closes(alone)).toBe(false);
    },
  );

  it("a move that skips divisions: 2 of 8 comes back after 4, with the odd ones left out", () => {
    expect(closes({ ...wholeTurns.setting, turns: 10 })).toBe(false);
  });

  it("a move that reaches every division but goes round more often than it says", () => {
    // 10 turns + 10/21 is 2 of 7 where 1 of 7 is meant.
    expect(closes({ ...simple.setting, turns: 11, spaces: 9 })).toBe(false);
  });
});

describe("the identity and the walk agree", () => {
  it("on every setting of a head, and on each with one space more", () => {
    fc.assert(
      fc.property(heads(), counts, teethPerMove, (head, divisions, teeth) => {
        let checked = 0;
        for (const setting of exactSettings(head, { divisions }, { teethPerMove: teeth })) {
          expect(closes(setting)).toBe(true);
          expect(closes({ ...setting, circle: setting.circle ?? 20, spaces: setting.spaces + 1 })).toBe(false);
          checked += 1;
          if (checked === 5) break;
        }
      }),
    );
  });
});

describe("moves that no head can make are refused", () => {
  const refused = (setting: object) => refusalLines(() => prove({ ...simple.setting, ...setting } as UnprovedSetting));
  const noMove = "is not a move in whole holes";
  const noNumber = 'is not an exact number above 0, such as "40" or "81/2"';

  it.each([
    ["no move at all", { turns: 0, spaces: 0 }, "setting: turns and spaces of 0 are no move; give a move above 0"],
    ["spaces without a circle", { circle: null }, "setting.circle: is missing; spaces say nothing without it"],
    ["spaces with the circle left out", { circle: undefined }, "setting.circle: is missing; spaces say nothing without it"],
    ["a circle of 0", { circle: 0 }, `setting.spaces: 15 of 0 ${noMove}`],
    ["spaces below 0", { spaces: -1 }, `setting.spaces: -1 of 21 ${noMove}`],
    ["half a space", { spaces: 0.5 }, `setting.spaces: 0.5 of 21 ${noMove}`],
    ["NaN spaces", { spaces: Number.NaN }, `setting.spaces: NaN of 21 ${noMove}`],
    ["spaces in quotes", { spaces: "15" }, `setting.spaces: "15" of 21 ${noMove}`],
    ["turns below 0", { turns: -1 }, `setting.turns: -1 of 1 ${noMove}`],
    ["a worm ratio of 0", { wormRatio: "0" }, `setting.wormRatio: "0" ${noNumber}`],
    ["a worm ratio below 0", { wormRatio: "-40" }, `setting.wormRatio: "-40" ${noNumber}`],
    ["a worm ratio that is a number", { wormRatio: 40 }, `setting.wormRatio: 40 ${noNumber}`],
    ["a worm ratio over 0", { wormRatio: "40/0" }, `setting.wormRatio: "40/0" ${noNumber}`],
    ["no spindle move", { spindlePerMove: "0/7" }, `setting.spindlePerMove: "0/7" ${noNumber}`],
    ["a spindle move that is no number", { spindlePerMove: "NaN" }, `setting.spindlePerMove: "NaN" ${noNumber}`],
  ])("%s", (_, change, line) => {
    expect(refused(change)).toEqual([line]);
  });

  it("a train that turns the plate as fast as the crank, or faster, jams", () => {
    const gears = { ...twoPairsWith.setting.gears };
    const jam = (drivers: number[], driven: number[], wormRatio: string) =>
      refusalLines(() => prove({ ...twoPairsWith.setting, wormRatio, gears: { ...gears, drivers, driven } }));
    const line = "setting.gears: turn the plate as fast as the crank or faster, so that nothing can move; give a slower train";
    expect(jam([40], [8], "5")).toEqual([line]);
    expect(jam([48], [8], "5")).toEqual([line]);
    expect(jam([80, 80], [40, 8], "20")).toEqual([line]);
    expect(jam([39], [8], "5")).toEqual([]);
  });

  it("a train of no gears, of three pairs, of odd ones, or of no teeth", () => {
    const train = (drivers: number[], driven: number[]) =>
      refusalLines(() => prove({ ...onePairWith.setting, gears: { ...onePairWith.setting.gears, drivers, driven } }));
    const noTrain = (text: string) => [`setting.gears: ${text} are no train of one or two pairs`];
    expect(train([], [])).toEqual(noTrain("0 drivers and 0 driven gears"));
    expect(train([24, 24], [40])).toEqual(noTrain("2 drivers and 1 driven gears"));
    expect(train([24, 24, 24], [40, 40, 40])).toEqual(noTrain("3 drivers and 3 driven gears"));
    const noTeeth = "are not the teeth of gears; give whole numbers above 0";
    expect(train([24], [0])).toEqual([`setting.gears: 24 to 0 ${noTeeth}`]);
    expect(train([0], [24])).toEqual([`setting.gears: 0 to 24 ${noTeeth}`]);
    expect(train([-24], [-40])).toEqual([`setting.gears: -24 to -40 ${noTeeth}`]);
  });

  it("a direction that is neither with nor against", () => {
    const { gears } = onePairAgainst.setting;
    const { second } = compoundWith.setting;
    const sideways = "sideways" as "with";
    expect(refusalLines(() => prove({ ...onePairAgainst.setting, gears: { ...gears, direction: sideways } }))).toEqual([
      'setting.gears.direction: "sideways" is neither "with" nor "against"',
    ]);
    expect(refusalLines(() => prove({ ...compoundWith.setting, second: { ...second, direction: sideways } }))).toEqual([
      'setting.second.direction: "sideways" is neither "with" nor "against"',
    ]);
  });

  it("a move both compound and geared", () => {
    const both = { ...compoundWith.setting, gears: onePairWith.setting.gears };
    expect(refusalLines(() => prove(both))).toEqual(["setting: a move is compound or geared, not both"]);
  });

  it("a compound move whose second part is no move in holes", () => {
    const second = { ...compoundWith.setting.second, circle: 0 };
    expect(refusalLines(() => prove({ ...compoundWith.setting, second }))).toEqual([`setting.second.spaces: 2 of 0 ${noMove}`]);
  });

  it("direct indexing asks for no worm ratio, as the worm is out of mesh", () => {
    expect(prove({ ...direct.setting, wormRatio: "0" }).closes).toBe(true);
  });
});
