import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Check, type PlaceByMoves, type PlannedJob, parseAngle, revolutions } from "../../src/index.ts";
import { teethOf } from "../support/hand-moves.ts";
import { chosen, laidOut, optionsOf, planned } from "../support/jobs.ts";
import { jobsByMoves, jobsFromZero, ungeared } from "../support/known-jobs.ts";
import { notSoOnBench } from "../support/places-on-bench.ts";
import { head40 } from "../support/settings.ts";

/** Settings made over and over that are gone through to the end: all but a near one of an angle. */
const wholeRounds = chosen.filter(({ setting, target }) => setting.exact || (setting.moves === "equal" && "divisions" in target));

const movesOf = (checks: readonly Check[]) => checks.map(({ at, place }) => [at, place.move]);

/** A quarter, a half and three quarters of the moves, as a person would count them, and all of them. */
function quartersOf(count: number): readonly (readonly [string, number])[] {
  if (count === 1) return [];
  const parts = (["quarter", "half", "three-quarters"] as const).map(
    (at, index) => [at, Math.floor(((index + 1) * count) / 4)] as const,
  );
  const differ = parts.filter(([, move], index) => move > 0 && move !== parts[index - 1]?.[1]);
  return [...differ, ["close", count]];
}

describe("checks on the way", () => {
  it("127: after 31, 63 and 95 moves, and back at the start after 127", () => {
    const { checks } = planned(head40, { divisions: 127 });
    expect(movesOf(checks)).toEqual([
      ["quarter", 31],
      ["half", 63],
      ["three-quarters", 95],
      ["close", 127],
    ]);
    // 127 moves of 5 of 15 are 42 1/3 turns of the pin: the work is back, and the pin five holes on.
    expect(checks.at(-1)?.place).toMatchObject({ tooth: 1, angle: "0", turns: 42, hole: 5, errorArcSeconds: 0 });
  });

  it("97 by a near move: the close says how far the last meets the first", () => {
    const { checks, way } = planned(ungeared, { divisions: 97 }, { by: "moves" });
    const close = checks.at(-1);
    expect(close).toMatchObject({ at: "close", place: { tooth: 1, move: 97 } });
    expect(Math.abs(close?.place.errorArcSeconds ?? 0)).toBeCloseTo(
      (way.setting as { closingArcSeconds: number }).closingArcSeconds,
      9,
    );
  });

  it("are places of the list, a quarter, a half and three quarters on, and then the start again", () => {
    fc.assert(
      fc.property(wholeRounds, laidOut, (job, how) => {
        const { teeth, order, ...options } = optionsOf(job, how);
        const plan = planned(job.head, job.target, options);
        expect(movesOf(plan.checks)).toEqual(quartersOf(teethOf(job.target)));
        for (const { at, place } of plan.checks) {
          const { from, ...here } = place;
          if (at !== "close") expect(plan.places[here.move]).toMatchObject(here);
          else expect(here.tooth).toBe(options.startTooth);
          expect(from).toMatchObject({ direction: "forward", moves: here.move, turns: here.turns });
        }
      }),
    );
  });

  it("the moves that lead to a check, made at once from the start, leave all parts where it says", () => {
    fc.assert(
      fc.property(wholeRounds, laidOut, (job, how) => {
        const { teeth, order, ...options } = optionsOf(job, how);
        const { checks, way } = planned(job.head, job.target, options);
        for (const { place } of checks) expect(notSoOnBench({ way, places: [place] }, { ...job, ...options })).toEqual([]);
      }),
    );
  });

  it("the close is off by the closing error of the setting", () => {
    fc.assert(
      fc.property(wholeRounds, (job) => {
        const { checks } = planned(job.head, job.target, { setting: job.setting });
        const close = checks.at(-1)?.place.errorArcSeconds;
        if (close !== undefined) expect(Math.abs(close)).toBeCloseTo(job.setting.closingArcSeconds, 7);
      }),
    );
  });
});

describe("checks that lie behind, or that there are none of", () => {
  const left = (after: number) => movesOf(planned(head40, { divisions: 127 }, { after }).checks);

  it("resumed, only those that are still to come; after the last tooth the close alone", () => {
    expect(left(31)).toEqual(quartersOf(127));
    expect(left(32)).toEqual(quartersOf(127).slice(1));
    expect(left(96)).toEqual([["close", 127]]);
    expect(left(127)).toEqual([["close", 127]]);
  });

  it("are no others than those of the whole list", () => {
    fc.assert(
      fc.property(wholeRounds, fc.nat(), (job, pick) => {
        const whole = planned(job.head, job.target, { setting: job.setting });
        const done = whole.places[pick % whole.places.length] as PlaceByMoves;
        const rest = planned(job.head, job.target, { setting: job.setting, after: done.tooth });
        expect(rest.checks).toEqual(whole.checks.filter(({ place }) => place.move > done.move));
      }),
    );
  });

  it("there are none where teeth are named, each place is set by itself, or an angle is gone to once", () => {
    const none = (plan: PlannedJob) => expect(plan.checks).toEqual([]);
    for (const { head, target, options } of jobsByMoves) none(planned(head, target, { ...options, teeth: [1] }));
    for (const { head, target, options } of jobsFromZero) none(planned(head, target, options));
    none(planned(ungeared, { angle: revolutions(29, 3601) }));
    expect(planned(head40, { angle: parseAngle("2°54'") }).checks).toHaveLength(4);
  });
});
