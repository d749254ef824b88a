import { mostHoles } from "../head/plate.ts";
import { neededDivisors } from "../methods/needed-divisors.ts";
import type { Search } from "../search/exact-settings.ts";
import type { Target } from "../setting/target.ts";

/** The largest circle that a shop is likely to drill on a common plate; common practice, no source. */
export const largestDrilled = 200;
const mostCirclesNamed = 6;

/** Whether a circle is likely to fit a common plate. */
export function fitsCommonPlate(holes: number): boolean {
  return holes <= largestDrilled;
}

/**
 * The circles that would do a target by simple indexing if they were drilled, smallest first.
 *
 * @returns The smallest such circle and others that a common plate could hold; none where an
 * owned circle already serves, or where the smallest has over 10,000 holes.
 */
export function circlesThatWouldDo({ layout, teethPerMove }: Search, target: Target): readonly number[] {
  if (layout.head.wormRatio === null) return [];
  const needed = neededDivisors(layout, target, teethPerMove);
  const serves = (holes: number) => needed.some((part) => holes % part === 0);
  const [smallest = 1] = needed;
  if (smallest === 1 || smallest > mostHoles || layout.circles.some(({ holes }) => serves(holes))) return [];
  const circles = [smallest];
  for (let holes = smallest + 1; holes <= largestDrilled && circles.length < mostCirclesNamed; holes += 1) {
    if (serves(holes)) circles.push(holes);
  }
  return circles;
}
