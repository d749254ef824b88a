import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Head,
  indexDivisions,
  nearSettings,
  ownedCircles,
  type PlanOptions,
  planJob,
  type Target,
  wormRatioOf,
} from "../../src/index.ts";
import { add, atStart, moved, spindle, type Turns, turnsOf } from "../support/bench.ts";
import { type Bench, secondsOf, shownByHand, teethOf, trueTurn } from "../support/hand-moves.ts";
import { benchHeads, planned, targets } from "../support/jobs.ts";
import { ungeared } from "../support/known-jobs.ts";
import { ofRingByEye } from "../support/near-errors.ts";
import { head40 } from "../support/settings.ts";
import { runs } from "../support/sweep.ts";

/*
 * Every near setting, every circle of the head, the dial and the ring, tried on the bench over the teeth
 * that are named. Nothing is looked up in a plan.
 */

/** How far off a way is over teeth that are visited one after the other, always forward. */
interface Tried {
  readonly name: string;
  readonly worst: number;
}

const minus = ({ n, d }: Turns): Turns => ({ n: -n, d });
const size = (turns: Turns) => Math.abs(secondsOf(turns));

function everyWay(bench: Bench, teeth: readonly number[], matters: readonly number[]): readonly Tried[] {
  const { head, target } = bench;
  const moves = nearSettings(head, target).filter((near) => near.moves === "equal");
  const scales = (["dial", "ring"] as const).filter(
    (by) => head[by] !== null && nearSettings(head, target).some(({ kind }) => kind === by),
  );
  const ofThese = <Each>(list: readonly Each[]) => list.filter((_, index) => matters.includes(teeth[index] as number));
  const places = ofThese(gonePast(bench, teeth));
  return [
    ...moves.map((near, index) => ({
      name: `moves ${index}`,
      worst: Math.max(...ofThese(movesMade(bench, near.teethPerMove, teeth)).map((move) => size(missAfter(near, move)))),
    })),
    ...ownedCircles(head).map(({ holes, plate, face }) => ({
      name: `${holes} of ${plate}/${face}`,
      worst: Math.max(...places.map((place) => size(nearestOf(head, holes, place)))),
    })),
    ...scales.map((by) => ({ name: by, worst: Math.max(...places.map((place) => size(shownByHand(bench, by, place).off))) })),
  ];
}

/** How often a near move must be made until each of the teeth is there, counted on. */
function movesMade({ target, startTooth = 1 }: Bench, teethPerMove: number, teeth: readonly number[]): readonly number[] {
  const count = teethOf(target);
  let [tooth, move] = [startTooth, 0];
  return teeth.map((wanted) => {
    for (; tooth !== wanted; move += 1) tooth = 1 + ((tooth - 1 + teethPerMove) % count);
    return move;
  });
}

function missAfter(near: Extract<ReturnType<typeof nearSettings>[number], { moves: "equal" }>, move: number): Turns {
  const one = { direction: "forward", moves: 1, turns: near.turns, spaces: near.spaces } as const;
  const stand = moved(atStart, "second" in near ? { ...one, second: { ...near.second, turns: 0 } } : one, near);
  const miss = add(spindle(stand, near), minus(turnsOf(near.spindlePerMove)));
  return add({ n: BigInt(move) * miss.n, d: miss.d }, { n: 0n, d: 1n });
}

/** Where the teeth lie from the start, each as far on as it takes to come to it. */
function gonePast(bench: Bench, teeth: readonly number[]): readonly Turns[] {
  let at: Turns = { n: 0n, d: 1n };
  return teeth.map((tooth) => {
    let next = trueTurn(bench, tooth);
    while (next.n * at.d < at.n * next.d) next = add(next, { n: 1n, d: 1n });
    at = next;
    return at;
  });
}

/** What the nearest hole of a circle leaves. */
function nearestOf({ wormRatio }: Head, holes: number, place: Turns): Turns {
  const worm = turnsOf(wormRatioOf({ wormRatio }));
  const perTurn = { n: worm.n * BigInt(holes), d: worm.d };
  const spaces = { n: place.n * perTurn.n, d: place.d * perTurn.d };
  const below = spaces.n / spaces.d;
  const [under, over] = [below, below + 1n].map((each) => add({ n: each * perTurn.d, d: perTurn.n }, minus(place))) as [
    Turns,
    Turns,
  ];
  return size(under) < size(over) ? under : over;
}

const isNear = (head: Head, target: Target) => {
  const plan = planJob(head, target, { teeth: [1] });
  return plan.planned && !plan.exact;
};

const nearJobs = fc
  .tuple(benchHeads, targets, fc.array(fc.nat(), { minLength: 1, maxLength: 6 }), fc.nat(), fc.integer({ min: 1, max: 6 }))
  .filter(([head, target]) => isNear(head, target))
  .map(([head, target, picks, start, many]) => {
    const count = teethOf(target);
    const teeth = picks.map((pick) => 1 + (pick % count));
    return { head, target, teeth, matters: teeth.slice(0, many), startTooth: 1 + (start % count) };
  });

describe("the way that is least off over the teeth named", () => {
  it("is the least of every near setting, every circle, the dial and the ring; the others follow in order", () => {
    fc.assert(
      fc.property(nearJobs, ({ head, target, teeth, matters, startTooth }) => {
        const ways = everyWay({ head, target, startTooth }, teeth, matters);
        const tried = ways.map(({ worst }) => worst);
        const step = "divisions" in target ? 1 / target.divisions : Number(turnsOf(target.angle).n) / teethOf(target);
        const least = Math.min(...tried);
        const plan = planJob(head, target, { teeth, matters, startTooth });
        // Over half a step off, a tooth is as near to its neighbour's place.
        expect(plan.planned).toBe(least < step * 648_000);
        if (!plan.planned) return;
        const byEye = (by: string, off: number) =>
          by === "ring" && head.ring ? ofRingByEye(off, head.ring.marksPerTurn * head.ring.vernierLines) : off;
        const { way, worstArcSeconds: worst, others } = plan;
        expect(byEye(way.by, worst)).toBeCloseTo(Math.min(...ways.map(({ name, worst }) => byEye(name, worst))), 6);
        const inOrder = [{ by: way.by, worstArcSeconds: worst }, ...others].map((each) => byEye(each.by, each.worstArcSeconds));
        expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
      }),
      runs(300),
    );
  });

  it("every way says of itself what its places are off by", () => {
    fc.assert(
      fc.property(nearJobs, fc.constantFrom("given", "moves"), ({ head, target, teeth, matters, startTooth }, order) => {
        const options = { teeth, matters, startTooth, order } as const;
        const plan = planJob(head, target, options);
        fc.pre(plan.planned);
        for (const other of plan.others) {
          const { worstArcSeconds } = planned(head, target, { ...options, setting: other.setting });
          expect(worstArcSeconds).toBeCloseTo(other.worstArcSeconds, 6);
        }
      }),
    );
  });
});

describe("what is good enough", () => {
  it("is asked for: else a tenth of a second less is worth another pair of gears", () => {
    const kindOf = (options: PlanOptions) => {
      const plan = planned(head40, { divisions: 383 }, { teeth: [2], teethPerMove: 1, ...options });
      return "kind" in plan.way.setting && plan.way.setting.kind;
    };
    expect([kindOf({}), kindOf({ goodEnough: 0.1 })]).toEqual(["two-pair", "one-pair"]);
  });
});

describe("the way to follow for all teeth", () => {
  it("is the near setting that answers lead with", () => {
    for (const divisions of [97, 787, 877, 963]) {
      const [first, ...rest] = indexDivisions(ungeared, divisions).near;
      const plan = planned(ungeared, { divisions });
      expect(plan.way.setting).toEqual(first);
      expect(plan.others.map(({ setting }) => setting)).toEqual(rest);
    }
  });

  it("is the preferred exact setting where there is one", () => {
    for (const divisions of [12, 59, 127, 383]) {
      expect(planned(head40, { divisions }).way.setting).toEqual(indexDivisions(head40, divisions).settings[0]);
    }
  });
});

describe("where any error is small enough, the least work goes first", () => {
  const teeth = [2, 3, 4];

  it("over the teeth named: a plain move before a compound one, and both before the ring", () => {
    const kinds = (goodEnough: number) => {
      const plan = planned(ungeared, { divisions: 97 }, { teeth, goodEnough });
      return [plan.way, ...plan.others].map(({ setting }) => ("kind" in setting ? setting.kind : "exact"));
    };
    expect(kinds(0)[0]).toBe("compound");
    expect(kinds(0)).toContain("simple");
    expect(kinds(1e6)[0]).toBe("simple");
    expect(kinds(1e6).at(-1)).toBe("ring");
  });

  it("what is over the limit follows by its error", () => {
    const limit = 60;
    const plan = planned(ungeared, { divisions: 97 }, { teeth, goodEnough: limit });
    const worst = [plan.worstArcSeconds, ...plan.others.map(({ worstArcSeconds }) => worstArcSeconds)];
    const over = worst.filter((each) => each > limit);
    expect(over).toEqual(over.toSorted((a, b) => a - b));
    expect(worst.slice(0, worst.length - over.length).every((each) => each <= limit)).toBe(true);
  });

  it("over the whole round as well", () => {
    expect(planned(ungeared, { divisions: 97 }).way.setting).toMatchObject({ kind: "compound" });
    expect(planned(ungeared, { divisions: 97 }, { goodEnough: 1e6 }).way.setting).toMatchObject({ kind: "simple" });
  });
});
