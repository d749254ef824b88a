import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ownedCircles, type PlaceByHole, type PlannedJob, type WayFromZero } from "../../src/index.ts";
import { placesByHole } from "../../src/machine/from-zero.ts";
import { workFrom } from "../../src/machine/plan-options.ts";
import { add, type Turns } from "../support/bench.ts";
import { teethOf, trueTurn } from "../support/hand-moves.ts";
import { benchHeads, type Chosen, chosen, type LaidOut, laidOut, optionsOf, planned, targets } from "../support/jobs.ts";
import { jobsFromZero, ungeared } from "../support/known-jobs.ts";
import { goneTo, notSoOnBench } from "../support/places-on-bench.ts";
import { threePlates } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";

/** Settings whose every place is set by itself. */
const fromZero = chosen.filter(({ setting }) => !setting.exact && setting.moves === "from-zero");
/** Those of which the turns are counted: a ring does not tell how often it has gone round. */
const counted = fromZero.filter(({ setting }) => setting.method !== "ring");

const holesOf = ({ places }: Pick<PlannedJob, "places">) => places as readonly PlaceByHole[];
const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
const isLess = (a: Turns, b: Turns) => a.n * b.d < b.n * a.d;

/** A way that goes by the nearest holes of a circle. */
const onCircle = (circle: number) => ({ by: "nearest-hole", setting: { circle } }) as WayFromZero<"nearest-hole">;

describe("places set each by itself", () => {
  it.each(jobsFromZero)("$name: every tooth in order, each set to what lies nearest", ({ head, target, options, way }) => {
    const plan = planned(head, target, options);
    expect(plan.way.by).toBe(way);
    expect(plan.places.map(({ tooth }) => tooth)).toEqual(upTo(teethOf(target)));
    expect(notSoOnBench(plan, { head, target })).toEqual([]);
  });

  it("97 by the 49: tooth 2 is 20 holes on, tooth 97 is 39 turns and 29 holes from the start", () => {
    const list = holesOf(planned(ungeared, { divisions: 97 }, { by: "nearest-hole" }));
    // 40 · 49/97 = 20.2 spaces, and 40 · 49 · 96/97 = 1,939.8.
    expect([list[1], list[96]].map((place) => [place?.turns, place?.hole])).toEqual([
      [0, 20],
      [39, 29],
    ]);
  });

  it("laid out in any way, what is counted or set leaves all parts where it says, and the nearest there is", () => {
    fc.assert(
      fc.property(fromZero, laidOut, (job, how) => {
        const options = optionsOf(job, how);
        expect(notSoOnBench(planned(job.head, job.target, options), { ...job, ...options })).toEqual([]);
      }),
      runs(400),
    );
  });

  it("resumed after any tooth, the list is the tail", () => {
    fc.assert(
      fc.property(fromZero, laidOut, fc.nat(), (job, how, pick) => {
        const { teeth, order, ...options } = optionsOf(job, { ...how, direction: "forward" });
        const whole = planned(job.head, job.target, options).places;
        fc.pre(whole.length === teethOf(job.target));
        const done = pick % whole.length;
        expect(planned(job.head, job.target, { ...options, after: whole[done]?.tooth }).places).toEqual(whole.slice(done + 1));
      }),
    );
  });

  it("teeth are visited as they are given, or in the order in which they follow the start", () => {
    fc.assert(
      fc.property(fromZero, laidOut, (job, how) => {
        const { teeth, ...options } = optionsOf(job, how);
        if (teeth === undefined) return;
        const visited = planned(job.head, job.target, { ...options, teeth }).places.map(({ tooth }) => tooth);
        expect(visited.toSorted()).toEqual(teeth.toSorted());
        if (how.order === "given") expect(visited).toEqual(teeth);
        const turned = visited.map((tooth) => trueTurn({ ...job, ...options }, tooth));
        if (how.order === "moves")
          expect(turned.some((each, index) => index > 0 && isLess(each, turned[index - 1] as Turns))).toBe(false);
      }),
    );
  });
});

describe("by the nearest holes and by the dial", () => {
  it("forward never turns back: a tooth that lies behind is gone to a turn of the work further on", () => {
    fc.assert(
      fc.property(counted, laidOut, (job, how) => {
        for (const on of stepsOf(job, { ...how, direction: "forward" })) expect(on >= 0 && on < 1).toBe(true);
      }),
      runs(200),
    );
  });

  it("nearer goes on or back by half a turn at most, and forward where both are as far", () => {
    fc.assert(
      fc.property(counted, laidOut, (job, how) => {
        for (const on of stepsOf(job, { ...how, direction: "nearer" })) expect(on > -0.5 && on <= 0.5).toBe(true);
      }),
      runs(200),
    );
  });

  it("the crank is never turned back on a list that goes forward", () => {
    fc.assert(
      fc.property(counted, laidOut, (job, how) => {
        const { places, way } = planned(job.head, job.target, optionsOf(job, { ...how, direction: "forward" }));
        if (way.by === "nearest-hole") expect(holesOf({ places }).map(({ from }) => from.direction)).not.toContain("back");
      }),
    );
  });
});

/** From place to place, in turns of the work; + is forward. Exact but for the last division. */
function stepsOf(job: Chosen, how: LaidOut): readonly number[] {
  const options = optionsOf(job, how);
  const turned = goneTo(planned(job.head, job.target, options), { ...job, ...options });
  return turned.map((each, index) => {
    const { n, d } = add(each, minus(turned[index - 1] ?? { n: 0n, d: 1n }));
    return Number(n) / Number(d);
  });
}

function minus({ n, d }: Turns): Turns {
  return { n: -n, d };
}

describe("by the nearest holes", () => {
  it("back at the start after other teeth, the crank has made the whole worm ratio", () => {
    const list = holesOf(planned(ungeared, { divisions: 97 }, { by: "nearest-hole", teeth: [1, 20, 90, 1, 1] }));
    expect(list.map(({ turns, hole }) => [turns, hole]).slice(3)).toEqual([
      [40, 0],
      [40, 0],
    ]);
    expect(list.map(({ from }) => from.direction)).toEqual(Array(5).fill("forward"));
    expect(list[4]?.from).toEqual({ direction: "forward", turns: 0, spaces: 0 });
  });

  it("on any circle the pin is never over half a space from its place, be it exact or not", () => {
    fc.assert(
      fc.property(benchHeads, targets, fc.nat(), (head, target, pick) => {
        const circles = ownedCircles(head);
        const circle = circles[pick % circles.length]?.holes ?? 0;
        const list = placesByHole(workFrom(head, target, {}), onCircle(circle), upTo(teethOf(target)));
        expect(
          notSoOnBench({ way: { by: "nearest-hole", setting: { circle } }, places: list } as never, { head, target }),
        ).toEqual([]);
      }),
    );
  });

  it("is exact where the circle serves: 7 on the 49", () => {
    const list = placesByHole(workFrom(threePlates, { divisions: 7 }, {}), onCircle(49), upTo(7));
    expect(list.map(({ turns, hole }) => [turns, hole])).toEqual([
      [0, 0],
      [5, 35],
      [11, 21],
      [17, 7],
      [22, 42],
      [28, 28],
      [34, 14],
    ]);
    expect(list.every(({ errorArcSeconds }) => errorArcSeconds === 0)).toBe(true);
    expect(list[3]?.angle).toBe("3/7");
  });
});
