import { allCrankMoves } from "../methods/crank-moves.ts";
import { gearBox } from "../methods/gear-box.ts";
import { type Effort, take } from "../number/effort.ts";
import { movesFor } from "../setting/target.ts";
import type { Lacking } from "./lacking.ts";

/** A plate ratio by which missing counts would be done, if there were a train that makes it. */
export interface WantedRatio {
  /** In lowest terms. */
  readonly numerator: number;
  readonly denominator: number;
  /** Whether the plate is to turn with the crank. */
  readonly with: boolean;
  /** The counts, by their places in the list of those missing. */
  readonly places: readonly number[];
}

/** Steps of work to look at one crank move. */
const stepsToLook = 4;

/**
 * The plate ratios of all crank moves that would do the missing counts on the circles owned, each once.
 *
 * Left out are those that no gears of these sizes and of those owned can make: one with a factor that
 * none of them has, or with terms greater than a product of two of them.
 */
export function wantedRatios({ search, counts }: Lacking, sizes: readonly number[], effort: Effort): readonly WantedRatio[] {
  const { layout, teethPerMove } = search;
  const { n, d } = layout.plateTurns;
  const all = [...layout.head.gears, ...sizes];
  const box = gearBox(all);
  const largest = Math.max(0, ...all) ** 2;
  const isMade = (term: number) => term <= largest && box.foreignPart(term) === 1;
  const ratios = new Map<number, WantedRatio & { readonly places: number[] }>();
  for (const [place, divisions] of counts.entries()) {
    for (const move of movesFor({ divisions }, teethPerMove)) {
      for (const { numerator, denominator, with: isWith } of allCrankMoves(layout, move)) {
        if (!take(effort, stepsToLook)) return [...ratios.values()];
        if (numerator * d > denominator * n || !isMade(denominator) || !isMade(numerator)) continue;
        const key = 2 * (numerator * (largest + 1) + denominator) + (isWith ? 1 : 0);
        const known = ratios.get(key);
        if (known === undefined) ratios.set(key, { numerator, denominator, with: isWith, places: [place] });
        else if (known.places.at(-1) !== place) known.places.push(place);
      }
    }
  }
  return [...ratios.values()];
}
