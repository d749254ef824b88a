import { type Bench, crankTurns } from "./move.ts";
import { mostHoles } from "./plate.ts";
import { movesFor, type Target } from "./target.ts";

/** The largest circle that a shop is likely to drill on a common plate; common practice, no source. */
const largestDrilled = 200;
const mostCirclesNamed = 6;

/** The denominator of the crank's move in lowest terms: a circle serves when it is a multiple of this. */
export function neededDivisor(bench: Bench, target: Target): number {
  const [move] = movesFor(target, 1);
  return move === undefined ? 1 : crankTurns(bench, move).parts;
}

/**
 * The circles that would do a target by simple indexing if they were drilled, smallest first.
 *
 * @returns The smallest such circle and its multiples that a common plate could hold; none where an
 * owned circle already serves, or where the smallest has over 10,000 holes.
 */
export function circlesThatWouldDo(bench: Bench, target: Target): readonly number[] {
  const needed = neededDivisor(bench, target);
  if (needed === 1 || needed > mostHoles || bench.circles.some(({ holes }) => holes % needed === 0)) return [];
  const circles = [needed];
  for (let holes = 2 * needed; holes <= largestDrilled && circles.length < mostCirclesNamed; holes += needed) circles.push(holes);
  return circles;
}
