import { placesOf } from "../head/direct-plate.ts";
import type { Face } from "../head/plate.ts";
import { type Effort, take } from "../number/effort.ts";
import { type Factors, factorsOf, lcmFactors, timesFactors } from "../number/factors.ts";
import { lcm } from "../number/ratio.ts";
import type { Search } from "../search/exact-settings.ts";

/**
 * The whole numbers whose divisors are the counts that close without gears, as their primes: D of
 * each direct plate, R·C of each circle, R·lcm(C1, C2) of the circles of a face, R times the places of the dial.
 *
 * The parts are taken into primes and not their products, which go beyond what could be.
 */
export function* wholesWithoutGears({ layout, methods }: Search, effort: Effort): Generator<Factors> {
  const { head, worm, circles } = layout;
  const turns = factorsOf(worm.n);
  if (methods.includes("direct")) for (const plate of head.directPlates) yield factorsOf(placesOf(plate));
  if (head.wormRatio === null) return;
  if (methods.includes("simple")) {
    if (circles.length > 0 || head.dial !== null) yield turns;
    for (const { holes } of circles) yield timesFactors(turns, factorsOf(holes));
  }
  if (methods.includes("dial") && head.dial !== null)
    yield timesFactors(turns, factorsOf(head.dial.marksPerTurn * head.dial.vernierLines));
  const small = head.smallCrank;
  if (methods.includes("wide-range") && small !== undefined) {
    for (const circle of small.circles) {
      const asLarge = timesFactors(factorsOf(small.ratio), factorsOf(circle));
      for (const { holes } of circles) yield timesFactors(turns, lcmFactors(factorsOf(holes), asLarge));
    }
  }
  if (!methods.includes("compound") || !head.rearPin) return;
  const seen = new Set<number>();
  for (const { faces } of head.plates)
    for (const face of faces) for (const both of commonFactors(face, seen, effort)) yield timesFactors(turns, both);
}

/** Steps of work to put two circles together. */
const stepsToPair = 4;

/** The least common multiples of the circles of a face that were not there before. */
function* commonFactors({ circles }: Face, seen: Set<number>, effort: Effort): Generator<Factors> {
  const factors = circles.map(factorsOf);
  for (const [index, first] of circles.entries()) {
    for (let other = index + 1; other < circles.length; other += 1) {
      const both = lcm(first, circles[other] ?? 1);
      if (!take(effort, stepsToPair)) return;
      if (seen.has(both)) continue;
      seen.add(both);
      yield lcmFactors(factors[index] ?? [], factors[other] ?? []);
    }
  }
}
