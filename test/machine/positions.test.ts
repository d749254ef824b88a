import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  checkPositions,
  defineHead,
  indexAngle,
  type Position,
  type PositionOptions,
  parseAngle,
  positions,
  positionsAfter,
  type Setting,
} from "../../src/index.ts";
import { add, atStart, holeAt, moved, spindle, turnsOf, turnsText, withinTurn } from "../support/bench.ts";
import { refusalLines } from "../support/refusal.ts";
import { best, head40, known, secondHand, settings, zeros } from "../support/settings.ts";

const ways: fc.Arbitrary<PositionOptions> = fc
  .tuple(zeros, fc.constantFrom("forward" as const, "nearer" as const))
  .map(([zero, direction]) => ({ ...zero, direction }));

/** Makes the moves of a list on the bench, one after the other, and looks where the work stands. */
function makeMoves(
  setting: Setting,
  list: readonly Position[],
  { startHole = 0, startAngle = "0", side }: PositionOptions = {},
): void {
  let stand = atStart;
  for (const position of list) {
    stand = moved(stand, position.from, setting);
    const work = withinTurn(spindle(stand, setting));
    const onRing = add(turnsOf(startAngle), side === "minus" ? { n: -work.n, d: work.d } : work);
    expect(turnsText(withinTurn(onRing))).toBe(turnsText(withinTurn(turnsOf(position.angle))));
    expect(position.turns).toBe(Number((stand.pin.n - withinTurn(stand.pin).n) / stand.pin.d));
    expect(position.hole).toBe(setting.circle === null ? null : holeAt(stand.pin, setting.circle, startHole));
    if (setting.second) expect(position.rearHole).toBe(holeAt(stand.rear, setting.second.circle));
    else expect(position).not.toHaveProperty("rearHole");
  }
}

const all = (setting: Setting) => Array.from({ length: setting.proof.moves }, (_, index) => index + 1);

function visitsEachOnce(setting: Setting): void {
  const list = positions(setting);
  expect(list.map(({ tooth }) => tooth).sort((a, b) => a - b)).toEqual(all(setting));
  expect(new Set(list.map(({ angle }) => angle)).size).toBe(setting.proof.moves);
  expect(list.map(({ move }) => move)).toEqual(all(setting).map((tooth) => tooth - 1));
  makeMoves(setting, list);
}

/** All the moves, and the one that comes back to the start. */
function movesInAll(setting: Setting): void {
  // One tooth is there already: no list can hold its move.
  if (setting.proof.moves === 1) return;
  const back = [...positions(setting).map(({ tooth }) => tooth), 1];
  const stand = positions(setting, { teeth: back }).reduce((at, { from }) => moved(at, from, setting), atStart);
  expect(turnsText(spindle(stand, setting))).toBe(String(setting.proof.rounds));
  if (setting.method === "direct") return;
  expect(turnsText(stand.pin)).toBe(setting.proof.pinTurns);
  const wormTimesRounds = turnsOf(setting.wormRatio);
  expect(turnsText(turnsOf(`${wormTimesRounds.n * BigInt(setting.proof.rounds)}/${wormTimesRounds.d}`))).toBe(
    setting.proof.crankTurns,
  );
  if (setting.method !== "differential") {
    expect(turnsText(add(stand.pin, stand.rear))).toBe(setting.proof.crankTurns);
  }
}

function resumes(setting: Setting, options: PositionOptions = {}): void {
  const list = positions(setting, options);
  for (const [index, { tooth }] of list.entries()) {
    expect(positionsAfter(setting, tooth, options)).toEqual(list.slice(index + 1));
  }
}

describe("positions of settings of every kind", () => {
  it.each(known)("$name: each division once, and the moves land on it", ({ setting }) => visitsEachOnce(setting));
  it.each(known)("$name: the moves add up to the whole worm ratio, round by round", ({ setting }) => movesInAll(setting));
  it.each(known.filter(({ setting }) => setting.proof.moves < 400))(
    "$name: resumed after any tooth, it is the tail",
    ({ setting }) => resumes(setting),
  );

  it("a heading for each kind is there: none of the above stands for another", () => {
    expect(known.map(({ setting: { method, teethPerMove, circle } }) => [method, teethPerMove, circle === null])).toEqual([
      ["simple", 1, false],
      ["simple", 1, true],
      ["differential", 1, false],
      ["differential", 1, false],
      ["compound", 1, false],
      ["compound", 1, false],
      ["differential", 4, false],
      ["direct", 1, false],
      ["simple", 1, false],
      ["simple", 1, true],
      ["compound", 1, false],
    ]);
  });
});

describe("positions as a machinist would write them down", () => {
  it("86 by 20 of 43: teeth 3, 4, 31 and 60, in that order", () => {
    const list = positions(best(86), { teeth: [3, 4, 31, 60] });
    expect(list.map(({ tooth, turns, hole, from }) => [tooth, turns, hole, from.turns, from.spaces])).toEqual([
      [3, 0, 40, 0, 40],
      [4, 1, 17, 0, 20],
      [31, 13, 41, 12, 24],
      [60, 27, 19, 13, 21],
    ]);
  });

  it("8 by a direct plate of 24: the holes used are 0, 3, 6, 9, 12, 15, 18, 21", () => {
    expect(positions(best(8, secondHand)).map(({ hole }) => hole)).toEqual([0, 3, 6, 9, 12, 15, 18, 21]);
  });

  it("69 by 14 of 21 less 2 of 23: the rear pin goes back by two each time", () => {
    const list = positions(best(69, head40, { methods: ["compound"] })).slice(0, 4);
    expect(list.map(({ hole, rearHole }) => [hole, rearHole])).toEqual([
      [0, 0],
      [14, 21],
      [7, 19],
      [0, 17],
    ]);
  });

  it("383 by four teeth a move is visited 1, 5, 9 … 381, then 2, 6 …", () => {
    const teeth = positions(best(383)).map(({ tooth }) => tooth);
    expect(teeth.slice(0, 3)).toEqual([1, 5, 9]);
    expect(teeth.slice(95, 98)).toEqual([381, 2, 6]);
  });

  it("past the start the holes follow the pin: with gears tooth 1 is in another hole the second time round", () => {
    // 127 moves of 5 of 15 are 42 1/3 turns of the pin, and 1/3 of 15 is hole 5.
    const [, again] = positions(best(127), { teeth: [127, 1] });
    expect(again).toMatchObject({ tooth: 1, angle: "0", move: 127, turns: 42, hole: 5 });
    const [back] = positions(best(127), { teeth: [127], direction: "nearer" });
    expect(back).toMatchObject({ tooth: 127, move: -1, turns: -1, hole: 10, from: { direction: "back", spaces: 5 } });
  });

  it("an angle is counted off move by move: the third position of 2°54' is at 5°48'", () => {
    const setting = indexAngle(head40, parseAngle("2°54'")).settings[0] as Setting;
    const list = positions(setting, { teeth: [1, 2, 3, 125, 126] });
    expect(list.map(({ tooth, move, angle }) => [tooth, move, angle])).toEqual([
      [1, 0, "0"],
      [2, 1, parseAngle("2°54'")],
      [3, 2, parseAngle("5°48'")],
      [125, 124, parseAngle("359°36'")],
      [126, 125, parseAngle("2°30'")],
    ]);
    expect(list[1]?.from).toMatchObject({ moves: 1, turns: setting.turns, spaces: setting.spaces });
  });

  it("a head with a dial and a ring has both read at each position", () => {
    const [, second] = positions(best(86), { head: head40 });
    expect(second).toMatchObject({ dial: null, ring: { mark: 4, line: 0, turns: 0, side: "plus" } });
    expect(positions(best(86))[1]).toMatchObject({ dial: null, ring: null });
  });
});

describe("laws of positions", () => {
  it("each division once, and the moves land on it", () => {
    fc.assert(fc.property(settings, visitsEachOnce), { numRuns: 60 });
  });

  it("the moves add up to the whole worm ratio, round by round", () => {
    fc.assert(fc.property(settings, movesInAll), { numRuns: 60 });
  });

  it("resumed after any tooth, the list is the tail", () => {
    fc.assert(
      fc.property(
        settings.filter(({ proof }) => proof.moves < 60),
        ways,
        resumes,
      ),
      { numRuns: 40 },
    );
  });

  it("any teeth in any order, either way: the moves listed land on each", () => {
    fc.assert(
      fc.property(
        settings,
        ways,
        fc.array(fc.nat(), { minLength: 1, maxLength: 12 }),
        fc.nat(),
        (setting, options, picks, hole) => {
          const teeth = picks.map((pick) => 1 + (pick % setting.proof.moves));
          const how = { ...options, teeth, startHole: hole % (setting.circle ?? 1) };
          const list = positions(setting, how);
          expect(list.map(({ tooth }) => tooth)).toEqual(teeth);
          makeMoves(setting, list, how);
        },
      ),
    );
  });

  it("forward never turns back; nearer takes at most half of the moves, and as many as forward or fewer", () => {
    fc.assert(
      fc.property(settings, fc.array(fc.nat(), { minLength: 1, maxLength: 8 }), (setting, picks) => {
        const teeth = picks.map((pick) => 1 + (pick % setting.proof.moves));
        const forward = positions(setting, { teeth });
        const nearer = positions(setting, { teeth, direction: "nearer" });
        expect(forward.every(({ from }) => from.direction === "forward")).toBe(true);
        for (const [index, { from }] of nearer.entries()) {
          const onward = forward[index]?.from.moves ?? Number.NaN;
          expect(from.moves).toBe(Math.min(onward, setting.proof.moves - onward));
          expect(from.direction).toBe(from.moves === onward ? "forward" : "back");
        }
      }),
    );
  });

  it("the checks on the way are positions of the list, a quarter, a half and three quarters on", () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const count = setting.proof.moves;
        const list = positions(setting);
        const at = checkPositions(setting);
        expect(at.map(({ move }) => move)).toEqual(
          [...new Set([count / 4, count / 2, (3 * count) / 4].map(Math.floor))].filter((move) => move > 0),
        );
        for (const { from, ...here } of at) {
          expect(list[here.move]).toMatchObject(here);
          expect(from).toMatchObject({ moves: here.move, turns: here.turns });
        }
      }),
      { numRuns: 50 },
    );
  });

  it("goes through JSON unchanged", () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const list = positions(setting);
        expect(JSON.parse(JSON.stringify(list))).toEqual(list);
        expect(positions(JSON.parse(JSON.stringify(setting)))).toEqual(list);
      }),
      { numRuns: 20 },
    );
  });
});

describe("refusals of positions", () => {
  const tooMany = best(200_000, defineHead({ wormRatio: 100_000, plates: [{ name: "1", circles: [8] }] }));

  it.each([
    [
      "a tooth that is not there",
      () => positions(best(86), { teeth: [1, 87] }),
      "teeth[1]: 87 is not a tooth of 86; give 1 to 86",
    ],
    ["a tooth of 0", () => positionsAfter(best(86), 0), "tooth: 0 is not a tooth of 86; give 1 to 86"],
    ["a tooth and a half", () => positions(best(86), { teeth: [1.5] }), "teeth[0]: 1.5 is not a tooth of 86; give 1 to 86"],
    [
      "a hole that is not there",
      () => positions(best(86), { startHole: 43 }),
      "startHole: 43 is not a hole of the circle; give 0 to 42",
    ],
    [
      "a start below zero",
      () => positions(best(86), { startAngle: "-1/4" }),
      'startAngle: "-1/4" is not an angle from 0 to 1,000 revolutions',
    ],
    [
      "more positions than can be listed",
      () => positions(tooMany),
      "teeth: 200,000 positions are too many to list; name the teeth wanted",
    ],
    [
      "more positions left than can be listed",
      () => positionsAfter(tooMany, 1),
      "tooth: 199,999 positions are too many to list; name the teeth wanted",
    ],
  ])("%s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});
