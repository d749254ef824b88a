import { arcSecondsPerTurn } from "../number/angle.ts";
import { refuse } from "../number/errors.ts";
import { fromExact, gcd, isPositive, type Revolutions, rational } from "../number/ratio.ts";
import { checkMove } from "../setting/check-move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { checkTeethPerMove } from "../setting/target.ts";
import { spindleTurnsPerMove } from "./identity.ts";
import type { SetMove } from "./motion.ts";

/** What a crank move gives when it is made over and over. */
export interface MoveGives {
  /** Spindle turns of one move. */
  readonly spindlePerMove: Revolutions;
  /** The count that the moves give, or the one that comes nearest. */
  readonly divisions: number;
  /** Whether they give it exactly. */
  readonly exact: boolean;
  /** How far the work is from its start after that many moves, in arc-seconds; + is too far, 0 where exact. */
  readonly closingArcSeconds: number;
}

/**
 * The reverse question: what count a move on a head really gives, right or wrong.
 *
 * The law: N = k/s, with s the spindle turns of one move, which advances k teeth.
 *
 * @param move - The move as it is set, with the worm ratio of the head.
 * @param teethPerMove - How many teeth the move is meant to advance.
 * @throws {@link InputError} when the move is none or has a key that is none of a move's, turns the
 * work back, or jams the gears.
 *
 * @example
 * ```ts
 * whatMoveGives({ wormRatio: ratio(40), turns: 0, spaces: 22, circle: 33 }).divisions; // 60
 * ```
 */
export function whatMoveGives(move: SetMove, teethPerMove = 1): MoveGives {
  checkMove(move);
  checkTeethPerMove(teethPerMove);
  const spindlePerMove = spindleTurnsPerMove(move);
  const spindle = fromExact(spindlePerMove);
  if (!isPositive(spindle))
    refuse("out-of-range", "setting", "this move brings the work back or not on at all; give one that goes forward");
  const count = rational(teethPerMove).div(spindle);
  const divisions = Math.max(1, Number(count.add(rational(1, 2)).floor()));
  const over = spindle.mul(divisions).sub(teethPerMove);
  return {
    spindlePerMove,
    divisions,
    exact: over.n === 0n && gcd(divisions, teethPerMove) === 1,
    closingArcSeconds: over.mul(arcSecondsPerTurn).valueOf(),
  };
}

/**
 * What a differential setting gives when its gears are forgotten and the plate is left pinned.
 *
 * @returns What the crank move alone gives, or null for a setting without gears.
 *
 * @example
 * ```ts
 * gearsForgotten(indexDivisions(readyHeads[0], 97).settings[0]).divisions; // 100
 * ```
 */
export function gearsForgotten(setting: UnprovedSetting): MoveGives | null {
  checkMove(setting);
  if (setting.method !== "differential") return null;
  const { wormRatio, turns, spaces, circle, teethPerMove } = setting;
  return whatMoveGives({ wormRatio, turns, spaces, circle }, teethPerMove);
}
