import { describe, expect, it } from "vitest";
import { allMethods, ratio, type SetMove, spindleTurnsPerMove } from "../../src/index.ts";
import { motionOf } from "../../src/mechanism/motion.ts";
import { toRatio } from "../../src/number/ratio.ts";
import { type HandWorked, handWorked } from "../support/hand-worked.ts";
import { refusalLines } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

const { simple, compoundWith, compoundAgainst, direct, onePairWith, onePairAgainst, twoPairsWith } = handWorked;
const cases: readonly HandWorked[] = Object.values(handWorked);
const named = cases.map((each) => [each.name, each] as const);

/** The acts of one move as text: crank, plate and spindle, each in turns. */
const actsOf = (move: SetMove) =>
  motionOf(move).acts.map(({ crank, plate, spindle }) => [crank, plate, spindle].map(toRatio).join(", "));

describe("the acts of one move, as the hand makes them", () => {
  it("direct: the spindle alone", () => {
    expect(actsOf(direct.setting)).toEqual(["0, 0, 1/6"]);
  });

  it("simple: the crank over a plate that stands still", () => {
    expect(actsOf(simple.setting)).toEqual(["40/7, 0, 1/7"]);
  });

  it("compound with: the crank, then crank and plate together", () => {
    expect(actsOf(compoundWith.setting)).toEqual(["2/3, 0, 1/60", "2/17, 2/17, 1/340"]);
  });

  it("compound against: what goes back is made first, so that the worm is last moved forward", () => {
    expect(actsOf(compoundAgainst.setting)).toEqual(["-1/3, -1/3, -1/120", "21/23, 0, 21/920"]);
  });

  it("differential: crank and plate at once, the plate at the ratio of its gears", () => {
    expect(actsOf(onePairAgainst.setting)).toEqual(["40/127, -7/381, 1/127"]);
    expect(actsOf(twoPairsWith.setting)).toEqual(["40/53, 15/371, 1/53"]);
  });

  it.each(named)("%s: the last act goes forward, and the pin drops into a circle for every pin", (_, { setting }) => {
    const { acts, pins } = motionOf(setting);
    expect(acts.at(-1)?.spindle.compare(0)).toBe(1);
    const circles = setting.method === "compound" ? [setting.circle, setting.second.circle] : [setting.circle];
    expect(pins.map(({ circle }) => circle)).toEqual(circles);
  });
});

describe("a move that names no method", () => {
  const move = { wormRatio: ratio(40), turns: 0, spaces: 5, circle: 15 };

  it("is simple, compound where there is a second part, geared where there are gears", () => {
    expect(spindleTurnsPerMove(move)).toBe("1/120");
    expect(spindleTurnsPerMove({ ...move, second: { spaces: 5, circle: 15, direction: "with" } })).toBe("1/60");
    expect(spindleTurnsPerMove({ ...move, gears: { drivers: [56], driven: [24], direction: "against" } })).toBe("1/127");
  });
});

describe("a move whose parts are not those of its method is refused", () => {
  const fits = "give one that fits its method";

  it.each([
    ["simple", onePairWith, `setting: a move by the method "simple" has no gears; ${fits}`],
    ["dial", onePairWith, `setting: a move by the method "dial" has no gears; ${fits}`],
    ["direct", compoundWith, `setting: a move by the method "direct" has no second move; ${fits}`],
    ["compound", simple, `setting: a move by the method "compound" needs a second move; ${fits}`],
    ["compound", onePairWith, `setting: a move by the method "compound" needs a second move; ${fits}`],
    ["differential", simple, `setting: a move by the method "differential" needs gears; ${fits}`],
    ["differential", compoundWith, `setting: a move by the method "differential" needs gears; ${fits}`],
  ] as const)("%s of $1.name", (method, { setting }, line) => {
    expect(refusalLines(() => motionOf(wrong<SetMove>({ ...setting, method })))).toEqual([line]);
  });

  it("both compound and geared", () => {
    const both = wrong<SetMove>({ ...compoundWith.setting, gears: onePairWith.setting.gears });
    expect(refusalLines(() => motionOf(both))).toEqual(["setting: a move is compound or geared, not both"]);
  });

  it("of the small crank, and compound or geared besides", () => {
    const small = { ratio: 100, turns: 0, spaces: 1, circle: 54, armsEnclose: 2 };
    for (const other of [compoundWith.setting, onePairWith.setting]) {
      expect(refusalLines(() => motionOf(wrong<SetMove>({ ...other, small })))).toEqual([
        "setting: a move of the small crank is neither compound nor geared",
      ]);
    }
  });

  it("a method that is none, by a word that objects have of themselves among them", () => {
    for (const method of ["plain", "toString", ""]) {
      expect(refusalLines(() => motionOf(wrong<SetMove>({ ...simple.setting, method })))).toEqual([
        `setting.method: there is no method "${method}"; the methods are direct, simple, dial, compound, differential, wide-range`,
      ]);
    }
  });

  it("knows every method that the registry knows", () => {
    const named = refusalLines(() => motionOf(wrong<SetMove>({ ...simple.setting, method: "plain" }))).join();
    expect(named.split("the methods are ")[1]?.split(", ").sort()).toEqual([...allMethods].sort());
  });
});

it.each([null, undefined, "5/15", 7])("%j is not a setting or a move", (none) => {
  expect(refusalLines(() => motionOf(wrong<SetMove>(none)))[0]).toMatch(/^setting: .* is not a setting or a move$/);
});

describe("moves that no head can make are refused", () => {
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
  ])("%s", (_, change, line) => {
    expect(refusalLines(() => motionOf(wrong<SetMove>({ ...simple.setting, ...change })))).toEqual([line]);
  });

  it.each([
    ["drivers", { drivers: 56 }, "56"],
    ["driven gears", { driven: "24" }, '"24"'],
  ])("%s that are no list", (_, change, shown) => {
    const { gears, ...move } = onePairAgainst.setting;
    expect(refusalLines(() => motionOf(wrong<SetMove>({ ...move, gears: { ...gears, ...change } })))).toEqual([
      `setting.gears: ${shown} is not a list of gears; give drivers and driven, such as [56] and [24]`,
    ]);
  });

  it("a train that turns the plate as fast as the crank, or faster, jams", () => {
    const { gears } = twoPairsWith.setting;
    const jam = (drivers: number[], driven: number[], wormRatio: string) =>
      refusalLines(() =>
        motionOf({ ...twoPairsWith.setting, wormRatio: ratio(wormRatio), gears: { ...gears, drivers, driven } }),
      );
    const line = "setting.gears: turn the plate as fast as the crank or faster, so that nothing can move; give a slower train";
    expect(jam([40], [8], "5")).toEqual([line]);
    expect(jam([48], [8], "5")).toEqual([line]);
    expect(jam([80, 80], [40, 8], "20")).toEqual([line]);
    expect(jam([39], [8], "5")).toEqual([]);
  });

  it("a train of no gears, of three pairs, of odd ones, or of no teeth", () => {
    const train = (drivers: number[], driven: number[]) =>
      refusalLines(() => motionOf({ ...onePairWith.setting, gears: { ...onePairWith.setting.gears, drivers, driven } }));
    const noTrain = (text: string) => [`setting.gears: ${text} are no train of one or two pairs`];
    expect(train([], [])).toEqual(noTrain("0 drivers and 0 driven gears"));
    expect(train([24, 24], [40])).toEqual(noTrain("2 drivers and 1 driven gears"));
    expect(train([24, 24, 24], [40, 40, 40])).toEqual(noTrain("3 drivers and 3 driven gears"));
    const noTeeth = "are not the teeth of gears; give whole numbers above 0";
    expect(train([24], [0])).toEqual([`setting.gears: 24 to 0 ${noTeeth}`]);
    expect(train([0], [24])).toEqual([`setting.gears: 0 to 24 ${noTeeth}`]);
    expect(train([-24], [-40])).toEqual([`setting.gears: -24 to -40 ${noTeeth}`]);
    // One that is none among others.
    expect(train([24, 0], [40, 28])).toEqual([`setting.gears: 24 and 0 to 40 and 28 ${noTeeth}`]);
    expect(train([24, 32], [40, 28.5])).toEqual([`setting.gears: 24 and 32 to 40 and 28.5 ${noTeeth}`]);
    expect(train([1], [24])).toEqual([]);
  });

  it("a direction that is neither with nor against", () => {
    const direction = wrong<"with">("sideways");
    const { gears } = onePairAgainst.setting;
    const { second } = compoundWith.setting;
    expect(refusalLines(() => motionOf({ ...onePairAgainst.setting, gears: { ...gears, direction } }))).toEqual([
      'setting.gears.direction: "sideways" is neither "with" nor "against"',
    ]);
    expect(refusalLines(() => motionOf({ ...compoundWith.setting, second: { ...second, direction } }))).toEqual([
      'setting.second.direction: "sideways" is neither "with" nor "against"',
    ]);
  });

  it("a compound move whose second part is no move in holes", () => {
    const second = { ...compoundWith.setting.second, circle: 0 };
    expect(refusalLines(() => motionOf({ ...compoundWith.setting, second }))).toEqual([
      `setting.second.spaces: 2 of 0 ${noMove}`,
    ]);
  });
});
