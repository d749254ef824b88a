import { usualGears } from "../instead/usual-gears.ts";

/** Why one would think that a count is done. */
export type Expectation = "small" | "round" | "gear";

/** A count that one would think is done, and is not. */
export interface ExpectedCount {
  readonly divisions: number;
  readonly because: readonly Expectation[];
}

/**
 * As far as the common three plates do every count: *Practical Treatise on Milling and Milling
 * Machines*, p. 52.
 */
const smallTo = 50;
/** Beyond this a round count ends in 0 or 5, as those of dials do. */
const anyRoundTo = 100;
const roundTo = 400;

/**
 * Why a count is one that is expected of a dividing head; nothing where it is not.
 *
 * `small`: to 50, as far as the common plates of a 40:1 head do every count. `round`: made of twos, threes and
 * fives alone, as 96 is; above 100 those that end in 0 or 5, as 125 does, to 400. `gear`: the teeth of a
 * usual change gear. The rule is our own.
 */
export function expectationsOf(divisions: number): readonly Expectation[] {
  const holds: Readonly<Record<Expectation, boolean>> = {
    small: divisions <= smallTo,
    round: divisions <= (divisions % 5 === 0 ? roundTo : anyRoundTo) && isRound(divisions),
    gear: usualGears.includes(divisions),
  };
  return (Object.keys(holds) as Expectation[]).filter((each) => holds[each]);
}

function isRound(divisions: number): boolean {
  let left = divisions;
  for (const prime of [2, 3, 5]) while (left % prime === 0) left /= prime;
  return left === 1;
}
