import { checkIsHead } from "../head/check-is-head.ts";
import type { Head } from "../head/head.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";
import type { Proof } from "../setting/proof.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { proveByIdentity } from "./identity.ts";
import { motionOf } from "./motion.ts";
import { exactNumber } from "./turns.ts";
import { walk } from "./walk.ts";

/** How a setting is proved. */
export interface ProofOptions {
  /** Make every move on this head, of at most 100,000 moves; left out, the identity of one move proves them all. */
  readonly walkOn?: Head | undefined;
}

/** The most moves that are made one by one. */
const mostWalked = 100_000n;

const proofKeys = keysOf<ProofOptions>({ walkOn: true });

/**
 * Turns a setting through all its moves on a model of the head (crank, pin, plate, gears, worm,
 * spindle) and says whether it lands on every position. It knows nothing of how settings are found.
 *
 * One move turns the spindle by s. Should s be exactly k/N in lowest terms, then move j lands at
 * j·k/N: the N moves reach N places that differ, as k has an inverse modulo N, and the last is the
 * start. That identity proves every move at once. With `walkOn` the moves are made one by one on the
 * head: its plate stands in one frame with the pins, and each pin must find a hole that is drilled
 * there, each division be reached once.
 *
 * @param setting - As returned by the library, or through JSON.
 * @throws {@link InputError} when the setting is no move at all, or jams, or there are over 100,000
 * moves to make one by one.
 *
 * @example
 * ```ts
 * prove(indexDivisions(readyHeads[0], 36).settings[0]).crankTurns; // "40"
 * ```
 */
export function prove(setting: UnprovedSetting, options: ProofOptions = {}): Proof {
  checkKeys(options, proofKeys, "options");
  const { walkOn } = options;
  if (walkOn === undefined) return proveByIdentity(setting);
  checkIsHead(walkOn);
  const motion = motionOf(setting);
  const wanted = exactNumber(setting.spindlePerMove, "spindlePerMove");
  if (wanted.d > mostWalked)
    refuse(
      "too-many",
      "walkOn",
      `${groupDigits(Number(wanted.d))} moves are too many to make one by one; leave it out, and the identity of one move proves them all`,
    );
  return { ...proveByIdentity(setting), closes: walk(setting, motion, wanted, walkOn), shownBy: "walk" };
}
