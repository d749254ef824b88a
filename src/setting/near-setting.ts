import type { Exact } from "../number/ratio.ts";
import type { UnprovedSetting } from "./setting.ts";

/**
 * The kinds of near setting, the least work first.
 *
 * The first five are one move made over and over, so that their error grows from move to move;
 * the last three set every position from one zero, so that no error adds to the next.
 */
export type NearKind = "simple" | "one-pair" | "two-pair" | "compound" | "may-foul" | "nearest-hole" | "dial" | "ring";

/** The errors of a near setting, exact, in turns of the work. */
export interface NearError {
  /** Where the last move lands against the start; + is too far. */
  readonly closing: Exact;
  /** The greatest error of any position against its true place; + is too far. */
  readonly worst: Exact;
  /** The tooth with that error; tooth 1 is at the zero. */
  readonly worstTooth: number;
  /** The greatest error of the step from one tooth to the next round the work, without sign; 0 where there is one only. */
  readonly pitch: Exact;
}

/** What every near setting says of itself. It is never exact. */
export interface NearFigures {
  readonly exact: false;
  /** Size of the closing error, without sign. */
  readonly closingArcSeconds: number;
  /** Size of the greatest error of any position, without sign. */
  readonly worstArcSeconds: number;
  /** Size of the greatest error between neighbours; what a gear's single pitch deviation compares with. */
  readonly pitchArcSeconds: number;
  readonly error: NearError;
}

/** One move made over and over that nearly serves. */
export interface NearMove extends UnprovedSetting, NearFigures {
  readonly kind: "simple" | "one-pair" | "two-pair" | "compound" | "may-foul";
  readonly moves: "equal";
  /** What one move does turn the spindle, in turns; `spindlePerMove` is what it should. */
  readonly spindleTurned: Exact;
}

/**
 * Every position set by itself from one zero, to the nearest hole or mark. The moves between
 * positions differ, so there are no turns and spaces to repeat: they are null.
 */
export interface NearFromZero extends NearFigures {
  readonly kind: "nearest-hole" | "dial" | "ring";
  readonly moves: "from-zero";
  readonly method: "simple" | "dial" | "ring";
  readonly teethPerMove: 1;
  readonly wormRatio: Exact;
  /** From one position to the next, in turns, as it should be. */
  readonly spindlePerMove: Exact;
  readonly turns: null;
  readonly spaces: null;
  readonly circle: number | null;
  readonly plate: string | null;
  readonly face: string | null;
  readonly armsEnclose: null;
  readonly plateStopPin: "in" | null;
  /** Places that one turn of the crank can be set to (of the spindle, for a ring): holes, or marks with their vernier. */
  readonly placesPerTurn: number;
}

/** A setting that does not close. */
export type NearSetting = NearMove | NearFromZero;
