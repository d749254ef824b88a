import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PlaceByMoves, type PlannedJob, parseAngle } from "../../src/index.ts";
import { add, atStart, moved, spindle, turnsOf, turnsText } from "../support/bench.ts";
import { teethOf } from "../support/hand-moves.ts";
import { chosen, laidOut, optionsOf, planned } from "../support/jobs.ts";
import { backwards69, jobsByMoves, oddDial } from "../support/known-jobs.ts";
import { notSoOnBench } from "../support/places-on-bench.ts";
import { head40, secondHand } from "../support/settings.ts";
import { runs } from "../support/sweep.ts";

const movesOf = ({ places }: PlannedJob) => places as readonly PlaceByMoves[];
const planOf = ({ head, target, options }: (typeof jobsByMoves)[number], more = {}) =>
  planned(head, target, { ...options, ...more });

/** Settings made over and over, exact and near. */
const byMoves = chosen.filter(({ setting }) => setting.exact || setting.moves === "equal");

describe("places by moves of every kind", () => {
  it.each(jobsByMoves)("$name: each tooth once, and the moves land on it", (job) => {
    const plan = planOf(job);
    const numbers = Array.from({ length: teethOf(job.target) }, (_, index) => index);
    expect(
      movesOf(plan)
        .map(({ tooth }) => tooth - 1)
        .sort((a, b) => a - b),
    ).toEqual(numbers);
    expect(movesOf(plan).map(({ move }) => move)).toEqual(numbers);
    expect(notSoOnBench(plan, job)).toEqual([]);
  });

  it.each(jobsByMoves)("$name: so it is done, and by no other way", (job) => {
    const { way } = planOf(job);
    if (way.by !== "moves") throw new Error(`it is done by ${way.by}`);
    const { setting } = way;
    const how =
      setting.method === "differential"
        ? ` with ${setting.gears.drivers.length * 2} gears`
        : setting.method === "compound"
          ? ` ${setting.second.direction}`
          : setting.circle === null
            ? " in whole turns"
            : "";
    const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} teeth per move`;
    expect(`${setting.method}${how}${teeth}, ${setting.exact ? "exact" : "near"}`).toBe(job.way);
  });

  it.each(jobsByMoves.filter(({ way }) => way.endsWith("exact")))(
    "$name: the moves add up to the whole worm ratio, round by round",
    (job) => {
      const plan = planOf(job);
      if (plan.way.by !== "moves" || !plan.way.setting.exact) throw new Error("it is not exact");
      const { setting } = plan.way;
      const { proof } = setting;
      // One tooth is there already: no list can hold its move.
      if (proof.moves === 1) return;
      const back = planOf(job, { teeth: [...plan.places.map(({ tooth }) => tooth), 1] });
      const stand = movesOf(back).reduce((at, { from }) => moved(at, from, setting), atStart);
      expect(turnsText(spindle(stand, setting))).toBe(String(proof.rounds));
      if (setting.method === "direct") return;
      expect(turnsText(stand.pin)).toBe(proof.pinTurns);
      if (setting.method === "wide-range") {
        expect([turnsText(stand.pin), turnsText(stand.small)]).toEqual([proof.crankTurns, proof.smallTurns]);
        return;
      }
      const worm = turnsOf(setting.wormRatio);
      expect(turnsText(turnsOf(`${worm.n * BigInt(proof.rounds)}/${worm.d}`))).toBe(proof.crankTurns);
      if (setting.method !== "differential") expect(turnsText(add(stand.pin, stand.rear))).toBe(proof.crankTurns);
    },
  );
});

describe("places as a machinist would write them down", () => {
  it("86 by 20 of 43: teeth 3, 4, 31 and 60, in that order", () => {
    const list = movesOf(planned(head40, { divisions: 86 }, { teeth: [3, 4, 31, 60] }));
    expect(list.map(({ tooth, turns, hole, from }) => [tooth, turns, hole, from.turns, from.spaces])).toEqual([
      [3, 0, 40, 0, 40],
      [4, 1, 17, 0, 20],
      [31, 13, 41, 12, 24],
      [60, 27, 19, 13, 21],
    ]);
  });

  it("8 by a direct plate of 24: the holes used are 0, 3, 6, 9, 12, 15, 18, 21", () => {
    expect(movesOf(planned(secondHand, { divisions: 8 })).map(({ hole }) => hole)).toEqual([0, 3, 6, 9, 12, 15, 18, 21]);
  });

  it("69 by 14 of 21 less 2 of 23: the rear pin goes back by two each time", () => {
    const list = movesOf(planned(head40, { divisions: 69 }, { setting: backwards69 }));
    expect(list.slice(0, 4).map(({ hole, rearHole }) => [hole, rearHole])).toEqual([
      [0, 0],
      [14, 21],
      [7, 19],
      [0, 17],
    ]);
  });

  it("383 by four teeth a move is visited 1, 5, 9 … 381, then 2, 6 …", () => {
    const teeth = planned(head40, { divisions: 383 }).places.map(({ tooth }) => tooth);
    expect(teeth.slice(0, 3)).toEqual([1, 5, 9]);
    expect(teeth.slice(95, 98)).toEqual([381, 2, 6]);
  });

  it("past the start the holes follow the pin: with gears tooth 1 is in another hole the second time round", () => {
    // 127 moves of 5 of 15 are 42 1/3 turns of the pin, and 1/3 of 15 is hole 5.
    const [, again] = planned(head40, { divisions: 127 }, { teeth: [127, 1] }).places;
    expect(again).toMatchObject({ tooth: 1, angle: "0", move: 127, turns: 42, hole: 5 });
    const [back] = planned(head40, { divisions: 127 }, { teeth: [127], direction: "nearer" }).places;
    expect(back).toMatchObject({ tooth: 127, move: -1, turns: -1, hole: 10, from: { direction: "back", spaces: 5 } });
  });

  it("an angle is counted off move by move: the third place of 2°54' is at 5°48'", () => {
    const list = movesOf(planned(head40, { angle: parseAngle("2°54'") }, { teeth: [1, 2, 3, 125, 126] }));
    expect(list.map(({ tooth, move, angle }) => [tooth, move, angle])).toEqual([
      [1, 0, "0"],
      [2, 1, parseAngle("2°54'")],
      [3, 2, parseAngle("5°48'")],
      [125, 124, parseAngle("359°36'")],
      [126, 125, parseAngle("2°30'")],
    ]);
  });

  it("the second time round, a dial on 81:2 shows half a turn more, as the handwheel has made it", () => {
    // Two teeth of 17 a move: after 9 moves, 42 15/17 turns of the handwheel, the work is at tooth 2 of its second round.
    expect(movesOf(planned(oddDial, { divisions: 17 }))[9]).toMatchObject({
      tooth: 2,
      move: 9,
      dial: { turns: 42, mark: 15, errorArcSeconds: 0 },
    });
  });

  it("a dial has no holes for a pin to stand in", () => {
    expect(movesOf(planned(oddDial, { divisions: 17 })).every(({ hole }) => hole === null)).toBe(true);
  });
});

describe("laws of places by moves", () => {
  it("laid out in any way, the moves listed, made one after the other, leave all parts where it says", () => {
    fc.assert(
      fc.property(byMoves, laidOut, (job, how) => {
        const options = optionsOf(job, how);
        expect(notSoOnBench(planned(job.head, job.target, options), { ...job, ...options })).toEqual([]);
      }),
      runs(400),
    );
  });

  it("teeth are visited as they are given, or as the moves reach them from the start", () => {
    fc.assert(
      fc.property(byMoves, laidOut, (job, how) => {
        const options = optionsOf(job, how);
        const list = movesOf(planned(job.head, job.target, options));
        if (options.teeth === undefined) return;
        if (options.order === "given") expect(list.map(({ tooth }) => tooth)).toEqual(options.teeth);
        else {
          expect(list.map(({ tooth }) => tooth).sort()).toEqual([...options.teeth].sort());
          // Gone back to, a move is as far before the start as it would be short of the whole round.
          const count = teethOf(job.target);
          const moves = list.map(({ move }) => (move < 0 ? move + count : move));
          expect(moves).toEqual(moves.toSorted((a, b) => a - b));
        }
      }),
    );
  });

  it("forward never turns back; nearer takes at most half of the moves, and as many as forward or fewer", () => {
    fc.assert(
      fc.property(byMoves, laidOut, (job, how) => {
        const options = { ...optionsOf(job, how), order: "given" as const };
        const forward = movesOf(planned(job.head, job.target, { ...options, direction: "forward" }));
        const nearer = movesOf(planned(job.head, job.target, { ...options, direction: "nearer" }));
        expect(forward.every(({ from }) => from.direction === "forward")).toBe(true);
        for (const [index, { from }] of nearer.entries()) {
          const onward = forward[index]?.from.moves ?? Number.NaN;
          expect(from.moves).toBe(Math.min(onward, teethOf(job.target) - onward));
          expect(from.direction).toBe(from.moves === onward ? "forward" : "back");
        }
      }),
    );
  });

  it("resumed after any tooth, the list is the tail, and made from there it lands on each", () => {
    fc.assert(
      fc.property(byMoves, laidOut, fc.nat(), (job, how, pick) => {
        const { teeth, order, ...options } = optionsOf(job, { ...how, direction: "forward" });
        const whole = planned(job.head, job.target, options);
        fc.pre(whole.places.length === teethOf(job.target));
        const done = pick % whole.places.length;
        const rest = planned(job.head, job.target, { ...options, after: whole.places[done]?.tooth });
        expect(rest.places).toEqual(whole.places.slice(done + 1));
        expect(notSoOnBench(rest, { ...job, ...options }, done)).toEqual([]);
      }),
    );
  });
});
