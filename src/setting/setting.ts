import type { Exact } from "../number/ratio.ts";
import type { Proof } from "./proof.ts";

/**
 * The trade's methods of indexing. *Simple* is also called *plain*; `dial` is by the marks of the
 * handwheel's dial, where each position falls on one.
 */
export type Method = "direct" | "simple" | "compound" | "differential" | "dial";

/** The second part of a compound move: crank and plate together, counted at the rear pin. */
export interface SecondMove {
  readonly spaces: number;
  readonly circle: number;
  /** With the first part of the move, or back against it. */
  readonly direction: "with" | "against";
}

/** The change gears of a differential setting. */
export interface SettingGears {
  /** First driver on the spindle; in two pairs the second is on the stud. */
  readonly drivers: readonly number[];
  /** Last driven on the worm shaft; in two pairs the first is on the stud. */
  readonly driven: readonly number[];
  readonly idlers: number;
  /** Which way the plate turns when the crank turns forward. */
  readonly direction: "with" | "against";
  /** Plate turns for one spindle turn, + with the crank. */
  readonly platePerSpindle: Exact;
  /** Why the train may not go together (common practice, no source), or null. */
  readonly mayFoul: string | null;
}

/** A setting as a solver finds it, before the mechanism has proved it. */
export interface UnprovedSetting {
  readonly method: Method;
  /** Divisions that each move advances; 1 for an angle. */
  readonly teethPerMove: number;
  /** Crank turns for one spindle turn of the head it is for. */
  readonly wormRatio: Exact;
  /** What one move must turn the spindle, in turns. */
  readonly spindlePerMove: Exact;
  /** Whole turns of the crank in one move; 0 where there are none. */
  readonly turns: number;
  /** Spaces beyond the whole turns; for direct indexing the whole move; by the dial, its places. */
  readonly spaces: number;
  /** Holes in the circle, or places on the dial; null where the move is whole turns and any circle serves. */
  readonly circle: number | null;
  /** The plate as stamped; null where any serves. */
  readonly plate: string | null;
  /** The face of a two-faced plate, else null. */
  readonly face: string | null;
  /** Holes that the sector arms enclose, the pin's own among them; null where no arms are used. */
  readonly armsEnclose: number | null;
  /** Whether the pin that holds the plate still is in or out; null where the worm is out of mesh. */
  readonly plateStopPin: "in" | "out" | null;
  /** Compound only. */
  readonly second?: SecondMove;
  /** Differential only. */
  readonly gears?: SettingGears;
}

/** A setting that the mechanism has proved over all its moves. No other leaves the library. */
export interface Setting extends UnprovedSetting {
  /** Whether the last move lands where the first began, with no error at all. */
  readonly exact: boolean;
  /** Where the last move lands against the start, in arc-seconds; 0 where exact. */
  readonly closingArcSeconds: number;
  /** The greatest error of any position, in arc-seconds; 0 where exact. */
  readonly worstArcSeconds: number;
  readonly proof: Proof;
}
