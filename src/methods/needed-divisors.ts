import { movesFor, type Target } from "../setting/target.ts";
import { crankTurns, type HeadLayout } from "./layout.ts";

/**
 * The denominators of the crank's move in lowest terms: a circle serves when it is a multiple of
 * one of these, and no other circle does.
 *
 * There is one, unless the worm ratio is a fraction: then more than one tooth per move may cancel
 * against it. Those that are multiples of another are left out.
 */
export function neededDivisors(layout: Pick<HeadLayout, "worm">, target: Target, teethPerMove: number): readonly number[] {
  const moves = movesFor(target, layout.worm.d === 1 ? 1 : teethPerMove);
  const parts = [...new Set(moves.map((move) => crankTurns(layout, move).parts))].sort((a, b) => a - b);
  return parts.filter((part) => !parts.some((other) => other < part && part % other === 0));
}
