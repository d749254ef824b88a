import { mostHoles } from "../head/plate.ts";
import { crankTurns } from "../methods/layout.ts";
import type { Search } from "../search/exact-settings.ts";
import { movesFor, type Target } from "../setting/target.ts";

/** The largest circle that a shop is likely to drill on a common plate; common practice, no source. */
const largestDrilled = 200;
const mostCirclesNamed = 6;

/** Whether a circle is likely to fit a common plate. */
export function fitsCommonPlate(holes: number): boolean {
  return holes <= largestDrilled;
}

/**
 * The denominators of the crank's move in lowest terms: a circle serves when it is a multiple of
 * one of these, and no other circle does.
 *
 * There is one, unless the worm ratio is a fraction: then more than one tooth per move may cancel
 * against it. Those that are multiples of another are left out.
 */
export function neededDivisors({ bench, teethPerMove }: Search, target: Target): readonly number[] {
  const moves = movesFor(target, bench.worm.d === 1 ? 1 : teethPerMove);
  const parts = [...new Set(moves.map((move) => crankTurns(bench, move).parts))].sort((a, b) => a - b);
  return parts.filter((part) => !parts.some((other) => other < part && part % other === 0));
}

/**
 * The circles that would do a target by simple indexing if they were drilled, smallest first.
 *
 * @returns The smallest such circle and others that a common plate could hold; none where an
 * owned circle already serves, or where the smallest has over 10,000 holes.
 */
export function circlesThatWouldDo(search: Search, target: Target): readonly number[] {
  const needed = neededDivisors(search, target);
  const serves = (holes: number) => needed.some((part) => holes % part === 0);
  const [smallest = 1] = needed;
  if (smallest === 1 || smallest > mostHoles || search.bench.circles.some(({ holes }) => serves(holes))) return [];
  const circles = [smallest];
  for (let holes = smallest + 1; holes <= largestDrilled && circles.length < mostCirclesNamed; holes += 1) {
    if (serves(holes)) circles.push(holes);
  }
  return circles;
}
