import type { Revolutions } from "../number/ratio.ts";

/**
 * What the mechanism did when a setting was turned through all its moves.
 *
 * All turns are exact, over all the moves until the work is back where it started.
 */
export interface Proof {
  /** Whether the moves land on every position, once each, and end where they began. */
  readonly closes: boolean;
  /** How it was shown: by the identity of one move, or by walking every move. */
  readonly shownBy: "identity" | "walk";
  /** Moves in all; one for each position. */
  readonly moves: number;
  /** Turns of the work in all these moves. */
  readonly rounds: number;
  /** Turns of the crank, as seen from the bench; null for direct indexing. */
  readonly crankTurns: Revolutions | null;
  /** Turns of the pin over the plate; null for direct indexing. */
  readonly pinTurns: Revolutions | null;
  /** Turns of the small crank; only of wide range indexing. */
  readonly smallTurns?: Revolutions;
  /** Turns of the plate, + with the crank; null for direct indexing. */
  readonly plateTurns: Revolutions | null;
}
