import type { DirectForm } from "../head/direct-plate.ts";
import type { Ratio, Revolutions } from "../number/ratio.ts";
import type { Proof } from "./proof.ts";

/** What every setting says of the one move that is made over and over. */
export interface OfMove {
  /** Divisions that each move advances; 1 for an angle. */
  readonly teethPerMove: number;
  /** Crank turns for one spindle turn of the head it is for; null on a head that no crank turns. */
  readonly wormRatio: Ratio | null;
  /** What one move must turn the spindle, in turns. */
  readonly spindlePerMove: Revolutions;
}

/** What every setting by the crank says of its move. */
export interface OfCrankMove extends OfMove {
  readonly wormRatio: Ratio;
}

/** The pin goes from hole to hole of one circle. */
export interface OnHoles {
  /** Holes in the circle. */
  readonly circle: number;
  /** The plate as stamped. */
  readonly plate: string;
  /** The face of a two-faced plate, else null. */
  readonly face: string | null;
  /** Spaces beyond the whole turns. */
  readonly spaces: number;
  /** Holes that the sector arms enclose, the pin's own among them. */
  readonly armsEnclose: number;
}

/** The move is whole turns of the crank, which come back to the same hole of any circle. */
export interface WholeTurns {
  readonly circle: null;
  readonly plate: null;
  readonly face: null;
  readonly spaces: 0;
  readonly armsEnclose: null;
}

/** A move of the crank. */
export type Crank = {
  /** Whole turns of the crank; 0 where there are none. */
  readonly turns: number;
} & (OnHoles | WholeTurns);

/** Direct indexing: the worm is out of mesh and the spindle moves by its own plate. */
export interface DirectWay {
  readonly method: "direct";
  readonly turns: 0;
  /** The whole move, in places of the direct plate. */
  readonly spaces: number;
  /** The places that it can be set to in a turn: its holes, times those of the row where that is used. */
  readonly circle: number;
  /** The holes of the row, where the move needs it: each place is then a hole of the plate and one of the row. */
  readonly vernierHoles?: number;
  /** Left out: a plate with holes. */
  readonly form?: DirectForm;
  readonly plate: string;
  readonly face: null;
  readonly armsEnclose: null;
  readonly plateStopPin: null;
}

/** Simple (plain) indexing: the crank over a plate that its stop pin holds. */
export type SimpleWay = { readonly method: "simple"; readonly plateStopPin: "in" } & Crank;

/** The second part of a compound move: crank and plate together, counted at the rear pin. */
export interface SecondMove {
  readonly spaces: number;
  readonly circle: number;
  /** With the first part of the move, or back against it. */
  readonly direction: "with" | "against";
}

/** The second part of a wide range move: the small crank over its own plate, the large crank's pin in its hole. */
export interface SmallMove {
  /** Turns of the small crank for one of the large. */
  readonly ratio: number;
  readonly turns: number;
  readonly spaces: number;
  readonly circle: number;
  /** Holes that the arms of its plate enclose, the pin's own among them. */
  readonly armsEnclose: number;
}

/** Wide range indexing: the large crank as in simple indexing, whose pin may stay where it is, then the small crank. */
export type WideRangeWay = { readonly method: "wide-range"; readonly plateStopPin: "in"; readonly small: SmallMove } & Crank;

/** Compound indexing: the crank on one circle, then crank and plate together by the rear pin on another of the same face. */
export interface CompoundWay extends OnHoles {
  readonly method: "compound";
  readonly turns: number;
  readonly plateStopPin: "out";
  readonly second: SecondMove;
}

/** Why a train of two pairs may not go together: a gear of the stud against the shaft that it passes. */
export interface Fouling {
  readonly code: "stud-driver-at-spindle" | "stud-driven-at-worm-shaft";
  /** The gear on the stud that may reach the shaft. */
  readonly gear: number;
  /** The two gears whose meshing keeps it off. */
  readonly meshing: readonly [number, number];
  /** Teeth of room that a shaft with its nut takes; common practice, no source. */
  readonly room: number;
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
  readonly platePerSpindle: Ratio;
  /** Why the train may not go together, or null. */
  readonly mayFoul: Fouling | null;
}

/** Differential indexing: the plate is geared to the spindle and turns as the crank moves over it. */
export type DifferentialWay = {
  readonly method: "differential";
  readonly plateStopPin: "out";
  readonly gears: SettingGears;
} & Crank;

/** By the marks of the handwheel's dial, where each position falls on one. */
export interface DialWay {
  readonly method: "dial";
  readonly turns: number;
  /** Places of the dial beyond the whole turns: its marks, each in as many parts as the vernier has lines. */
  readonly spaces: number;
  /** Places in one turn of the dial. */
  readonly circle: number;
  readonly plate: null;
  readonly face: null;
  readonly armsEnclose: null;
  readonly plateStopPin: null;
}

/** A setting as a solver finds it, before the mechanism has proved it. `method` tells which way it is. */
export type UnprovedSetting =
  | (OfMove & DirectWay)
  | (OfCrankMove & (SimpleWay | WideRangeWay | CompoundWay | DifferentialWay | DialWay));

/** The trade's methods of indexing. *Simple* is also called *plain*. */
export type Method = UnprovedSetting["method"];

/** A setting by one method. */
export type SettingBy<M extends Method> = Extract<UnprovedSetting, { readonly method: M }>;

/** What only a proved setting says. */
export interface Proved {
  /** It closes with no error at all. */
  readonly exact: true;
  /** Where the last move lands against the start, in arc-seconds. */
  readonly closingArcSeconds: 0;
  /** The greatest error of any position, in arc-seconds. */
  readonly worstArcSeconds: 0;
  readonly proof: Proof;
}

/** A setting that the mechanism has proved over all its moves. No other leaves the library as exact. */
export type Setting = UnprovedSetting & Proved;
