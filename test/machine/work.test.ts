import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, revolutions, type Setting, type Target } from "../../src/index.ts";
import { placesByMoves } from "../../src/machine/by-moves.ts";
import { workFrom } from "../../src/machine/plan-options.ts";
import { moveTo, partsTo, toothAfter, type Work, wayRound } from "../../src/machine/work.ts";
import { turnsText } from "../support/bench.ts";
import { trueTurn } from "../support/hand-moves.ts";
import { planned } from "../support/jobs.ts";
import { notSoOnBench } from "../support/places-on-bench.ts";
import { head40 } from "../support/settings.ts";

const mostDivisions = 10_000_000;
const greatestTerm = 129_600_000;

const workOf = (target: Target, startTooth = 1): Work => workFrom(head40, target, { startTooth });
const advancing = (teethPerMove: number) => ({ teethPerMove }) as Setting;

/** A count, a number of teeth per move that visits every tooth, a start and a tooth. */
const visits = fc
  .record({
    count: fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: mostDivisions })),
    teeth: fc.integer({ min: 1, max: 1000 }),
    start: fc.nat(),
    tooth: fc.nat(),
  })
  .filter(({ count, teeth }) => isCoprime(count, teeth))
  .map(({ count, teeth, start, tooth }) => ({ count, teeth, start: 1 + (start % count), tooth: 1 + (tooth % count) }));

describe("moves and teeth", () => {
  it("so many moves as lead to a tooth reach it, and fewer than there are teeth", () => {
    fc.assert(
      fc.property(visits, ({ count, teeth, start, tooth }) => {
        const work = workOf({ divisions: count }, start);
        const move = moveTo(work, advancing(teeth), tooth);
        expect(move >= 0 && move < count).toBe(true);
        expect(toothAfter(work, advancing(teeth), move)).toBe(tooth);
        // Worked out apart, in whole numbers of any size.
        expect((BigInt(start - 1) + BigInt(move) * BigInt(teeth)) % BigInt(count)).toBe(BigInt(tooth - 1));
      }),
      { numRuns: 500 },
    );
  });

  it("a tooth lies as many parts of the turn from the start as there are places", () => {
    const angles = fc.tuple(fc.integer({ min: 1, max: greatestTerm }), fc.integer({ min: 1, max: greatestTerm }), fc.nat());
    fc.assert(
      fc.property(angles, fc.nat(), ([n, d, tooth], start) => {
        fc.pre(n <= 1000 * d);
        const target = { angle: revolutions(n, d) };
        const { count } = workOf(target);
        const [first, other] = [1 + (start % count), 1 + (tooth % count)];
        const there = trueTurn({ head: head40, target, startTooth: first }, other);
        const parts = partsTo(workOf(target, first), other);
        expect(parts >= 0 && parts < count).toBe(true);
        expect(turnsText(there)).toBe(parts === 0 ? "0" : String(revolutions(parts, count)));
      }),
      { numRuns: 500 },
    );
  });

  it("the way round is on and less than a round, or whichever is less", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer(), fc.integer(), (count, from, to) => {
        const [onward, nearer] = (["forward", "nearer"] as const).map((direction) => wayRound({ count, direction }, from, to));
        for (const way of [onward, nearer] as [number, number]) expect(Math.abs((from + way - to) % count)).toBe(0);
        expect(onward !== undefined && onward >= 0 && onward < count).toBe(true);
        expect(nearer !== undefined && 2 * nearer > -count && 2 * nearer <= count).toBe(true);
      }),
    );
  });
});

describe("large numbers", () => {
  it("holds on the finest worm, the largest circle and the largest count", () => {
    const head = defineHead({ wormRatio: 99_991, plates: [{ name: "1", circles: [10_000] }] });
    const target = { divisions: 9_999_100 };
    const teeth = [9_999_100, 2, 5_000_000, 4_999_999, 1, 1];
    const plan = planned(head, target, { teeth });
    expect(plan.exact).toBe(true);
    expect(notSoOnBench(plan, { head, target })).toEqual([]);
  });

  it("holds where the spaces counted are more than a number can tell apart", () => {
    const target = { divisions: 127 };
    const { way } = planned(head40, target);
    if (way.by !== "moves") throw new Error("127 is exact");
    const made = 127 * 2 ** 45;
    const places = placesByMoves(workOf(target), way.setting, [5, 1], made);
    expect(notSoOnBench({ way, places }, { head: head40, target }, made)).toEqual([]);
  });
});

function isCoprime(a: number, b: number): boolean {
  return b === 0 ? a === 1 : isCoprime(b, a % b);
}
