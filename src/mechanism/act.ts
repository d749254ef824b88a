import type Fraction from "fraction.js";
import { type Ratio, rational } from "../number/ratio.ts";
import { exactNumber } from "./turns.ts";

/** How far crank, plate and spindle turn in one act of the hand, seen from the bench, in turns; + is forward. */
export interface Act {
  /** The crank; of two the large. */
  readonly crank: Fraction;
  /** The small crank, over its plate. */
  readonly small: Fraction;
  readonly plate: Fraction;
  readonly spindle: Fraction;
}

/** A pin that is to drop into a hole when a move is made, and the circle it drops into. */
export interface Pin {
  readonly at: "index-pin" | "small-pin" | "rear-pin" | "spindle-pin" | "dial";
  /** Holes of the circle, or places of the dial; null where any circle serves. */
  readonly circle: number | null;
}

/** One move of a head that is set up: the acts in the order of work, and the pins. */
export interface Motion {
  readonly acts: readonly Act[];
  /** The pin over the plate; for direct indexing over the plate on the spindle. */
  readonly pin: Fraction;
  readonly pins: readonly Pin[];
}

/** That a part does not turn. */
export const still: Fraction = rational(0);

/** The crank over a plate that stands still. */
export function byCrank(wormRatio: Ratio | null, turns: Fraction): Act {
  return { crank: turns, small: still, plate: still, spindle: turns.div(exactNumber(wormRatio, "wormRatio")) };
}
