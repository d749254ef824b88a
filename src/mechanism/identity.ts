import type Fraction from "fraction.js";
import { noTurn, type Revolutions, rational, toRevolutions } from "../number/ratio.ts";
import type { Proof } from "../setting/proof.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { still } from "./act.ts";
import { motionOf, type SetMove, spindleOf, sumOf } from "./motion.ts";
import { exactNumber } from "./turns.ts";

/**
 * Proves all moves of a setting at once, by one of them. The search asks no more, so that a program that
 * only looks up need not carry the walk of every move: see {@link prove}.
 *
 * One move turns the spindle by s. Should s be exactly k/N in lowest terms, then move j lands at
 * j·k/N: the N moves reach N places that differ, as k has an inverse modulo N, and the last is the
 * start.
 *
 * @throws {@link InputError} when the setting is no move at all, or jams.
 */
export function proveByIdentity(setting: UnprovedSetting): Proof {
  const motion = motionOf(setting);
  const wanted = exactNumber(setting.spindlePerMove, "spindlePerMove");
  const allMoves = rational(wanted.d);
  const over = (turns: Fraction) => (turns === still ? noTurn : toRevolutions(turns.mul(allMoves)));
  const crank = sumOf(motion.acts, "crank");
  const pinTurns = over(motion.pin);
  const isDirect = motion.pins[0]?.at === "spindle-pin";
  return {
    closes: spindleOf(motion).equals(wanted),
    shownBy: "identity",
    moves: Number(wanted.d),
    rounds: Number(wanted.n),
    crankTurns: isDirect ? null : crank === motion.pin ? pinTurns : over(crank),
    pinTurns: isDirect ? null : pinTurns,
    ...(setting.method === "wide-range" ? { smallTurns: over(sumOf(motion.acts, "small")) } : {}),
    plateTurns: isDirect ? null : over(sumOf(motion.acts, "plate")),
  };
}

/**
 * How far one move really turns the spindle, in turns.
 *
 * @throws {@link InputError} when it is no move at all, or jams.
 *
 * @example
 * ```ts
 * spindleTurnsPerMove({ wormRatio: ratio(40), turns: 1, spaces: 2, circle: 18 }); // "1/36"
 * ```
 */
export function spindleTurnsPerMove(move: SetMove): Revolutions {
  return toRevolutions(spindleOf(motionOf(move)));
}
