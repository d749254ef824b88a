import type { Face } from "../head/plate.ts";
import { type Effort, take } from "../number/effort.ts";
import { floorMod, gcd, inverseModulo, lcm } from "../number/ratio.ts";
import type { SecondMove } from "../setting/setting.ts";
import type { CrankTurns } from "./layout.ts";

/** A compound move on two circles of one face: `spaces` of the circle `first`, then the second part. */
export interface CirclePairing {
  readonly first: number;
  readonly turns: number;
  readonly spaces: number;
  readonly second: SecondMove;
}

/**
 * Every move on two circles of a face that makes exactly the crank turns wanted.
 *
 * A pair serves when the denominator of the turns divides the least common multiple of its
 * circles; a pair of which one circle would do alone is passed over. Once the effort is cut, no more.
 */
export function* pairsOn({ circles }: Face, wanted: CrankTurns, effort: Effort): Generator<CirclePairing> {
  if (!take(effort, circles.length) || !dividesProduct(wanted.parts, circles)) return;
  for (const first of circles) {
    if (first % wanted.parts === 0) continue;
    if (!take(effort, 2 * circles.length)) return;
    for (const second of circles) {
      if (second === first || second % wanted.parts === 0) continue;
      if (lcm(first, second) % wanted.parts === 0) yield* solvePair(first, second, wanted, effort);
    }
  }
}

/** Whether a number divides the product of all circles: where it does not, no two of them serve. */
function dividesProduct(value: number, circles: readonly number[]): boolean {
  return circles.reduce((rest, circle) => rest / gcd(rest, circle), value) === 1;
}

/**
 * Adds the least common multiples of the pairs on a face, each once. Moves on circles C1 and C2 add up
 * to every multiple of 1/lcm(C1, C2) of a turn, and to nothing between.
 */
export function addCommonMultiples({ circles }: Face, multiples: Set<number>): void {
  for (const [index, first] of circles.entries())
    for (let other = index + 1; other < circles.length; other += 1) multiples.add(lcm(first, circles[other] ?? first));
}

/** Steps of work to keep the two moves of one solution and put them in their place among the others. */
const stepsToKeep = 20;

function* solvePair(first: number, second: number, { turns, part, parts }: CrankTurns, effort: Effort): Generator<CirclePairing> {
  const common = gcd(first, second);
  const [oneOfFirst, oneOfSecond] = [second / common, first / common];
  const whole = first * oneOfFirst;
  const rest = (whole / parts) * part;
  const start = floorMod(rest * inverseModulo(oneOfFirst, oneOfSecond), oneOfSecond);
  // The solutions repeat every first/common holes, so there are `common` of them.
  for (let spaces = start; spaces < first; spaces += oneOfSecond) {
    if (!take(effort, stepsToKeep)) return;
    const onward = floorMod((rest - spaces * oneOfFirst) / oneOfSecond, second);
    // spaces/first + onward/second is rest/whole, or one turn more: then the second part alone is more than the rest.
    const turnsOnward = onward * oneOfSecond > rest ? turns - 1 : turns;
    if (turnsOnward >= 0)
      yield { first, turns: turnsOnward, spaces, second: { spaces: onward, circle: second, direction: "with" } };
    yield { first, turns: turnsOnward + 1, spaces, second: { spaces: second - onward, circle: second, direction: "against" } };
  }
}
