import type Fraction from "fraction.js";
import { spindleTurnsPerMove } from "../mechanism/identity.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { fromExact, inverseModulo, rational, toRevolutions } from "../number/ratio.ts";
import type { NearFigures, NearMove, UnprovedNearMove } from "../setting/near-setting.ts";
import type { Target } from "../setting/target.ts";

/** The errors of a near setting as exact fractions of a turn of the work. */
export interface Errors {
  readonly closing: Fraction;
  readonly worst: Fraction;
  readonly worstTooth: number;
  readonly pitch: Fraction;
}

/** Writes errors as a near setting carries them. */
export function figuresOf({ closing, worst, worstTooth, pitch }: Errors): NearFigures {
  const size = (turns: Fraction) => turns.abs().mul(arcSecondsPerTurn).valueOf();
  return {
    exact: false,
    closingArcSeconds: size(closing),
    worstArcSeconds: size(worst),
    pitchArcSeconds: size(pitch),
    error: { closing: toRevolutions(closing), worst: toRevolutions(worst), worstTooth, pitch: toRevolutions(pitch.abs()) },
  };
}

/** A move that nearly serves, measured on the mechanism. */
export interface Measured {
  readonly setting: UnprovedNearMove;
  readonly spindleTurned: Fraction;
  readonly errors: Errors;
}

/**
 * Turns a setting on the mechanism, which knows nothing of how it was found, and measures it.
 *
 * Each move misses by the same e, so move j has missed by j·e. Of a count, the last of the N
 * positions misses most, by (N − 1)·e, and the return to the start by N·e. Two neighbours are
 * reached m or N − m moves apart, m·k = 1 (mod N), and their step misses by as many times e. An
 * angle is one move, and its error is e.
 */
export function measure(setting: UnprovedNearMove, target: Target): Measured {
  const spindleTurned = fromExact(spindleTurnsPerMove(setting));
  const error = spindleTurned.sub(fromExact(setting.spindlePerMove));
  return { setting, spindleTurned, errors: "angle" in target ? ofAngle(error) : ofCount(error, target.divisions, setting) };
}

function ofAngle(error: Fraction): Errors {
  return { closing: error, worst: error, worstTooth: 2, pitch: error };
}

function ofCount(error: Fraction, divisions: number, { teethPerMove }: UnprovedNearMove): Errors {
  const between = inverseModulo(teethPerMove, divisions);
  return {
    closing: error.mul(rational(divisions)),
    worst: error.mul(rational(divisions - 1)),
    worstTooth: divisions - teethPerMove + 1,
    pitch: error.mul(rational(divisions === 1 ? 0 : Math.max(between, divisions - between))),
  };
}

/** A measured move as it leaves the library. */
export function nearMove({ setting, spindleTurned, errors }: Measured, target: Target): NearMove {
  return {
    ...setting,
    teethPerMove: "angle" in target ? 1 : setting.teethPerMove,
    kind: kindOfMove(setting),
    moves: "equal",
    spindleTurned: toRevolutions(spindleTurned),
    ...figuresOf(errors),
  };
}

/** The kind of a near move: of a geared one the train tells, however many teeth it advances. */
function kindOfMove(setting: UnprovedNearMove): NearMove["kind"] {
  if (setting.method !== "differential") return setting.method;
  const { mayFoul, drivers } = setting.gears;
  if (mayFoul !== null) return "may-foul";
  return drivers.length === 1 ? "one-pair" : "two-pair";
}
