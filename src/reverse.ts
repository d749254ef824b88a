import { arcSecondsPerTurn } from "./angle.ts";
import { refuse } from "./errors.ts";
import { type SetMove, spindleTurnsPerMove } from "./mechanism.ts";
import { type Exact, fromExact } from "./ratio.ts";
import type { UnprovedSetting } from "./setting.ts";

/** What a crank move gives when it is made over and over. */
export interface MoveGives {
  /** Spindle turns of one move. */
  readonly spindlePerMove: Exact;
  /** Positions made before the work is back at its start. */
  readonly positions: number;
  /** Turns of the work until then; 1 where the move gives a plain count. */
  readonly rounds: number;
  /** The count it gives in one turn of the work, or null where it gives no whole count. */
  readonly divisions: number | null;
  /** The whole count that comes nearest in one turn of the work. */
  readonly nearestCount: number;
  /** How far the work is from its start after that many moves, in arc-seconds; + is too far. 0 where `divisions` is whole. */
  readonly closingArcSeconds: number;
}

/**
 * The reverse question: what a move on a head really gives, right or wrong.
 *
 * With s = p/q spindle turns for one move in lowest terms, the moves make q positions in p turns
 * of the work: a plain count when p is 1.
 *
 * @param move - The move as it is set, with the worm ratio of the head.
 * @throws {@link InputError} when the move is none, turns the work back, or jams the gears.
 *
 * @example
 * ```ts
 * whatMoveGives({ wormRatio: "40", turns: 0, spaces: 22, circle: 33 }).divisions; // 60
 * ```
 */
export function whatMoveGives(move: SetMove): MoveGives {
  const spindlePerMove = spindleTurnsPerMove(move);
  const spindle = fromExact(spindlePerMove);
  if (spindle.s <= 0n) refuse("setting", "this move brings the work back or not on at all; give one that goes forward");
  const nearestCount = Math.max(1, Number(spindle.inverse().round()));
  const over = spindle.mul(nearestCount).sub(1);
  return {
    spindlePerMove,
    positions: Number(spindle.d),
    rounds: Number(spindle.n),
    divisions: spindle.n === 1n ? Number(spindle.d) : null,
    nearestCount,
    closingArcSeconds: over.mul(arcSecondsPerTurn).valueOf(),
  };
}

/**
 * What a differential setting gives when its gears are forgotten and the plate is left pinned.
 *
 * @returns What the crank move alone gives, or null for a setting without gears.
 */
export function gearsForgotten(setting: UnprovedSetting): MoveGives | null {
  const { gears, ...alone } = setting;
  return gears ? whatMoveGives(alone) : null;
}
