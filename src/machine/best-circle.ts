import type Fraction from "fraction.js";
import { type Head, type OwnedCircle, ownedCircles } from "../head/head.ts";
import { byMounted } from "../methods/handling.ts";
import type { Effort } from "../number/effort.ts";
import { fromExact, gcdOf, lcmOf } from "../number/ratio.ts";
import type { Turned } from "./scale-reader.ts";

/** A part of a turn, in parts of a whole that stands beside it. */
type Parts = bigint;

/**
 * The one circle of a head that does best for places from one zero.
 *
 * A place is x turns of the crank from the zero, and on a circle of C holes it misses by what C·x is
 * off a whole number, in spaces. The circles are taken in the order in which equal ones are
 * preferred, and one is given up at the first place where it does no better than the best so far;
 * that place is asked first of the next.
 *
 * @param angles - The places, in turns of the work; none is below 0.
 * @param effort - Takes a step for each place that is held against a circle; left out, nobody counts.
 * @returns One on which all places are exact, on the mounted plate before others and the smallest
 * first; where there is none, the one with the least worst error, of equal ones on the mounted plate
 * and the largest. Null where the head has no plate.
 */
export function bestCircleFor(
  head: Head,
  angles: readonly Turned[],
  mounted: string | null,
  effort?: Effort,
): OwnedCircle | null {
  if (head.wormRatio === null) return null;
  const { parts, whole } = partsOfTurn(fromExact(head.wormRatio), angles);
  const circles = [...ownedCircles(head)].sort((a, b) => byMounted(a, b, mounted) || b.holes - a.holes);
  const multiplesOf = whole / parts.reduce(gcdOf, whole);
  const exact = circles.filter(({ holes }) => BigInt(holes) % multiplesOf === 0n);
  const [smallest] = exact.sort((a, b) => byMounted(a, b, mounted) || a.holes - b.holes);
  return smallest ?? leastMissing(circles, [...parts], whole, effort);
}

function leastMissing(circles: readonly OwnedCircle[], parts: Parts[], whole: Parts, effort?: Effort): OwnedCircle | null {
  let best: { circle: OwnedCircle; missing: Parts } | null = null;
  for (const circle of circles) {
    const holes = BigInt(circle.holes);
    let worst = 0n;
    let isBetter = true;
    for (let index = 0; index < parts.length && isBetter; index += 1) {
      if (effort) effort.left -= 1;
      const missing = missed(parts[index] ?? 0n, holes, whole);
      if (missing > worst) worst = missing;
      // Spaces of one circle against spaces of another: missing/holes < best/holes.
      isBetter = best === null || missing * BigInt(best.circle.holes) < best.missing * holes;
      if (!isBetter) [parts[0], parts[index]] = [parts[index] ?? 0n, parts[0] ?? 0n];
    }
    if (isBetter) best = { circle, missing: worst };
  }
  return best?.circle ?? null;
}

/** How far a place lies from a hole, in `1/whole` of a space. */
function missed(part: Parts, holes: bigint, whole: Parts): Parts {
  const past = (part * holes) % whole;
  return 2n * past > whole ? whole - past : past;
}

/** The crank's parts of a turn beyond whole turns, each once, over one common denominator. */
function partsOfTurn(worm: Fraction, angles: readonly Turned[]): { parts: readonly Parts[]; whole: Parts } {
  const whole = worm.d * angles.reduce((all, { d }) => (all % d === 0n ? all : lcmOf(all, d)), 1n);
  const parts = angles.map(({ n, d }) => (worm.n * n * (whole / (worm.d * d))) % whole);
  return { parts: [...new Set(parts)], whole };
}
