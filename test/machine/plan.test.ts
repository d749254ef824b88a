import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, nearSettings, planJob, prepare, revolutions } from "../../src/index.ts";
import { teethOf } from "../support/hand-moves.ts";
import { benchHeads, chosen, laidOut, optionsOf, planned, targets } from "../support/jobs.ts";
import { jobsByMoves, jobsFromZero, ungeared } from "../support/known-jobs.ts";
import { head40 } from "../support/settings.ts";
import { runs } from "../support/sweep.ts";

const every = [...jobsByMoves, ...jobsFromZero];
const directOnly = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });

describe("the near move is followed where nothing closes: 97 on three plates without gears", () => {
  // The compound move of one tooth closes to 18.378″ after 97 moves: our own arithmetic.
  const closing = 18.377_765_173;

  it("all teeth, by a compound move, and none is over 18.4″ off", () => {
    const plan = planned(ungeared, { divisions: 97 });
    expect(plan).toMatchObject({ exact: false, way: { by: "moves", setting: { method: "compound" } } });
    expect(plan.places).toHaveLength(97);
    expect(plan.worstArcSeconds).toBeLessThan(closing);
    expect(Math.max(...plan.places.map(({ errorArcSeconds }) => Math.abs(errorArcSeconds)))).toBe(plan.worstArcSeconds);
  });

  it("one tooth a move, the error grows by as much with each: tooth 97 is 96 of 97 parts of the closing error off", () => {
    const plan = planned(ungeared, { divisions: 97 }, { teethPerMove: 1 });
    expect(plan).toMatchObject({ way: { by: "moves", setting: { method: "compound", teethPerMove: 1 } } });
    for (const [index, { tooth, errorArcSeconds }] of plan.places.entries()) {
      expect(tooth).toBe(index + 1);
      expect(Math.abs(errorArcSeconds)).toBeCloseTo((closing * index) / 97, 6);
    }
    expect(plan.checks.at(-1)).toMatchObject({ at: "close", place: { tooth: 1, move: 97 } });
    expect(Math.abs(plan.checks.at(-1)?.place.errorArcSeconds ?? 0)).toBeCloseTo(closing, 6);
  });

  it("teeth 2, 3 and 4 with compound alone: within 0.57″, and not by the ring", () => {
    const plan = planned(ungeared, { divisions: 97 }, { teeth: [2, 3, 4], methods: ["compound"] });
    expect(plan.way).toMatchObject({ by: "moves", setting: { method: "compound" } });
    expect(plan.worstArcSeconds).toBeCloseTo((3 * closing) / 97, 6);
    expect(plan.others.map(({ by }) => by)).toContain("ring");
  });

  it("what is left after tooth 90 goes on by the same moves", () => {
    const options = { teethPerMove: 1 };
    const [whole, rest] = [{}, { after: 90 }].map((more) => planned(ungeared, { divisions: 97 }, { ...options, ...more }));
    expect(rest?.way).toEqual(whole?.way);
    expect(rest?.places).toEqual(whole?.places.slice(90));
    expect(rest?.places.map(({ tooth }) => tooth)).toEqual([91, 92, 93, 94, 95, 96, 97]);
    expect(rest?.worstArcSeconds).toBeCloseTo((96 * closing) / 97, 6);
  });
});

describe("an angle that nothing closes", () => {
  it("is gone to once, however often it would take to come back to the start", () => {
    for (const angle of [revolutions(29, 3601), revolutions(1, 97), revolutions(100_003, 360_001)]) {
      const plan = planned(ungeared, { angle });
      expect(plan.exact).toBe(false);
      expect(plan.places.map(({ tooth }) => tooth)).toEqual([1, 2]);
      expect(plan.checks).toEqual([]);
      expect(plan.worstArcSeconds).toBeCloseTo(plan.way.setting.worstArcSeconds, 9);
    }
  });

  it("from a start at another tooth, it is the next that is gone to", () => {
    const plan = planned(ungeared, { angle: revolutions(29, 3601) }, { startTooth: 3601 });
    expect(plan.places.map(({ tooth }) => tooth)).toEqual([3601, 1]);
  });
});

describe("what a plan says of itself", () => {
  it.each(every)("$name: for all teeth it is off by what its setting is", (job) => {
    const plan = planned(job.head, job.target, job.options);
    expect(plan.exact).toBe(plan.way.setting.exact);
    expect(plan.worstArcSeconds).toBeCloseTo(plan.way.setting.worstArcSeconds, 9);
    if (plan.exact) expect(plan.worstArcSeconds).toBe(0);
  });

  it("is off by the most of any place that matters, and for all teeth by what its setting is", () => {
    fc.assert(
      fc.property(chosen, laidOut, fc.array(fc.nat(), { minLength: 1, maxLength: 4 }), (job, how, picks) => {
        const options = optionsOf(job, how);
        const { teeth } = options;
        const matters = teeth && picks.map((pick) => teeth[pick % teeth.length] as number);
        const plan = planned(job.head, job.target, { ...options, matters });
        const errors = plan.places
          .filter(({ tooth }) => matters === undefined || matters.includes(tooth))
          .map(({ errorArcSeconds }) => Math.abs(errorArcSeconds));
        expect(plan.worstArcSeconds).toBe(Math.max(...errors));
        const isScale = plan.way.by === "dial" || plan.way.by === "ring";
        // A scale that starts between two of its marks is off already there.
        if (teeth === undefined && !isScale && how.direction === "forward")
          expect(plan.worstArcSeconds).toBeCloseTo(job.setting.worstArcSeconds, 6);
      }),
      runs(200),
    );
  });

  it("the start is where the first place is gone to from: tooth, hole and scales of no move at all", () => {
    fc.assert(
      fc.property(chosen, laidOut, (job, how) => {
        const { teeth, order, ...options } = optionsOf(job, how);
        const { start, places } = planned(job.head, job.target, options);
        expect(start.tooth).toBe(options.startTooth);
        expect(start).toEqual(places[0]);
        if (start.by === "moves") expect([start.move, start.errorArcSeconds, start.from.moves]).toEqual([0, 0, 0]);
        if (start.by !== "moves" || start.hole === null) return;
        expect([start.turns, start.hole]).toEqual([0, options.startHole]);
      }),
    );
  });

  it("goes through JSON and structuredClone unchanged", () => {
    fc.assert(
      fc.property(chosen, laidOut, (job, how) => {
        const options = optionsOf(job, how);
        const plan = planJob(job.head, job.target, options);
        expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
        expect(structuredClone(plan)).toEqual(plan);
        expect(planJob(job.head, job.target, JSON.parse(JSON.stringify(options)))).toEqual(plan);
      }),
    );
  });

  it("on a prepared head it is the same", () => {
    fc.assert(
      fc.property(benchHeads, targets, laidOut, (head, target, how) => {
        const count = teethOf(target);
        const options = { startTooth: 1 + (how.startTooth % count), side: how.side };
        expect(planJob(prepare(head), target, options)).toEqual(planJob(head, target, options));
      }),
    );
  });
});

describe("where a head can do none of it", () => {
  it("there is no plan, and it is said why", () => {
    const plan = planJob(directOnly, { divisions: 97 });
    expect(plan).toMatchObject({ planned: false, head: { id: "ratio-40" }, target: { divisions: 97 } });
    expect(plan).toHaveProperty("impossible.reasons");
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });
});

describe("ways told apart", () => {
  it("an exact setting leads, and there is no other way to choose from", () => {
    const plan = planned(head40, { divisions: 127 });
    expect([plan.exact, plan.way.by, plan.others]).toEqual([true, "moves", []]);
  });

  it("by moves, by the nearest holes or by the ring: the one asked for leads, and the others follow it", () => {
    for (const by of ["moves", "nearest-hole", "ring"] as const) {
      const plan = planned(ungeared, { divisions: 97 }, { by });
      expect([plan.way.by, ...plan.others.map((way) => way.by)].toSorted()).toEqual(
        nearSettings(ungeared, { divisions: 97 })
          .map(({ moves, kind }) => (moves === "equal" ? "moves" : kind))
          .toSorted(),
      );
      expect(plan.way.by).toBe(by);
    }
  });
});
