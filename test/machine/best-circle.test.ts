import fc from "fast-check";
import { expect, it } from "vitest";
import { defineHead, ownedCircles, wormRatioOf } from "../../src/index.ts";
import { bestCircleFor } from "../../src/machine/best-circle.ts";
import { effortOf } from "../../src/number/effort.ts";
import { rational } from "../../src/number/ratio.ts";
import { headSpecs } from "../support/arbitraries.ts";
import { turnsOf } from "../support/bench.ts";
import { runs } from "../support/sweep.ts";

/** How far a place of the work, n/d of a turn, is from the nearest hole, over one common size for all circles. */
function offBy(n: bigint, d: bigint, worm: { n: bigint; d: bigint }, holes: bigint): { off: bigint; over: bigint } {
  const [part, whole] = [worm.n * n * holes, worm.d * d];
  const past = part % whole;
  return { off: past * 2n > whole ? whole - past : past, over: whole * holes };
}

const larger = (a: { off: bigint; over: bigint }, b: { off: bigint; over: bigint }) => a.off * b.over > b.off * a.over;
const places = fc.array(fc.tuple(fc.bigInt({ min: 0n, max: 4000n }), fc.bigInt({ min: 1n, max: 2000n })), {
  minLength: 1,
  maxLength: 8,
});

it("is the one that trying every circle at every place finds, in the order of preference", () => {
  fc.assert(
    fc.property(headSpecs().map(defineHead), places, fc.nat(), (head, wanted, pick) => {
      const worm = turnsOf(wormRatioOf(head));
      const mounted = pick % 2 === 0 ? null : (head.plates[pick % Math.max(1, head.plates.length)]?.name ?? null);
      const judged = ownedCircles(head).map((circle) => ({
        circle,
        worst: wanted.map(([n, d]) => offBy(n, d, worm, BigInt(circle.holes))).reduce((a, b) => (larger(b, a) ? b : a)),
      }));
      const least = judged.filter(({ worst }) => !judged.some((other) => larger(worst, other.worst)));
      const isExact = least[0]?.worst.off === 0n;
      const onMounted = least.filter(({ circle }) => circle.plate === mounted);
      const among = (onMounted.length > 0 ? onMounted : least).map(({ circle }) => circle);
      const holes = (isExact ? Math.min : Math.max)(...among.map((circle) => circle.holes));
      const angles = wanted.map(([n, d]) => rational(n, d));
      expect(bestCircleFor(head, angles, mounted)).toEqual(among.find((circle) => circle.holes === holes) ?? null);
    }),
    runs(1000),
  );
});

it.each([
  // Places by sixths of a turn on 7:1: a third of a space of 10 is as far off as half of one of 15.
  ["of equal ones the larger", { wormRatio: 7, plates: [[10, 15]] }, [1n, 6n], null, 15],
  ["the mounted one before a larger", { wormRatio: 7, plates: [[10], [15]] }, [1n, 6n], "1", 10],
  ["of exact ones the smallest", { wormRatio: 40, plates: [[18, 27], [36]] }, [1n, 9n], null, 18],
  ["an exact one that is mounted before a smaller", { wormRatio: 40, plates: [[18, 27], [36]] }, [1n, 9n], "2", 36],
  ["an exact one before a nearer mounted one", { wormRatio: 40, plates: [[18], [49]] }, [1n, 9n], "2", 18],
] as const)("takes %s", (_, { wormRatio, plates }, [n, d], mounted, holes) => {
  const named = plates.map((circles, index) => ({ name: String(index + 1), circles: [...circles] }));
  const head = defineHead({ wormRatio, plates: named });
  expect(bestCircleFor(head, [rational(0), rational(n, d)], mounted)?.holes).toBe(holes);
});

it("takes hardly more steps than there are places, among thousands of circles at a hundred thousand places", () => {
  const circles = Array.from({ length: 60 }, (_, index) => 9_000 + index);
  const plate = (name: number) => ({ name: String(name), circles: circles.map((holes) => holes - 60 * (name % 100)) });
  const head = defineHead({ wormRatio: "99991/997", plates: Array.from({ length: 50 }, (_, index) => plate(index)) });
  const angles = Array.from({ length: 100_000 }, (_, index) => rational(index * index, 1_296_000));
  const most = 1e9;
  const effort = effortOf(most);
  expect(bestCircleFor(head, angles, null, effort)).not.toBeNull();
  // Every circle at every place would be 3·10⁸. Each place is held against the best circle, and each circle against one place at least.
  const steps = most - effort.left;
  expect(steps).toBeGreaterThanOrEqual(ownedCircles(head).length);
  expect(steps).toBeLessThan(2 * angles.length);
});
