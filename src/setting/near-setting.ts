import type { Ratio, Revolutions } from "../number/ratio.ts";
import type { DirectWay, OfMove, SettingBy, SmallMove } from "./setting.ts";

/** The errors of a near setting, exact, in turns of the work. */
export interface NearError {
  /** Where the last move lands against the start; + is too far. */
  readonly closing: Revolutions;
  /** The greatest error of any position against its true place; + is too far. */
  readonly worst: Revolutions;
  /** The tooth with that error; tooth 1 is at the zero. */
  readonly worstTooth: number;
  /** The greatest error of the step from one tooth to the next round the work, without sign; 0 where there is one only. */
  readonly pitch: Revolutions;
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

/** A move that can be near: by the crank, whatever holds or turns the plate. */
export type UnprovedNearMove = SettingBy<"simple" | "wide-range" | "compound" | "differential">;

/** One move made over and over that nearly serves, so that its error grows from move to move. */
export type NearMove = UnprovedNearMove &
  NearFigures & {
    readonly kind: "simple" | "wide-range" | "one-pair" | "two-pair" | "compound" | "may-foul";
    readonly moves: "equal";
    /** What one move does turn the spindle, in turns; `spindlePerMove` is what it should. */
    readonly spindleTurned: Revolutions;
  };

/** Set by the nearest hole of one circle, the plate held by its stop pin. */
export interface ByNearestHole {
  readonly kind: "nearest-hole";
  readonly method: "simple";
  readonly circle: number;
  readonly plate: string;
  readonly face: string | null;
  readonly plateStopPin: "in";
  readonly wormRatio: Ratio;
}

/** Set by the nearest place of a plate on the spindle, with its row of holes where it has one. */
export interface ByNearestDirect
  extends Pick<DirectWay, "method" | "circle" | "plate" | "face" | "vernierHoles" | "form" | "plateStopPin"> {
  readonly kind: "nearest-direct";
}

/** Set by both cranks of a wide range head: the large one to a hole below, the small one to the nearest from there. */
export interface ByBothCranks {
  readonly kind: "both-cranks";
  readonly method: "wide-range";
  readonly wormRatio: Ratio;
  /** Null where the large crank goes by whole turns alone. */
  readonly circle: number | null;
  readonly plate: string | null;
  readonly face: string | null;
  readonly plateStopPin: "in";
  readonly small: Pick<SmallMove, "ratio" | "circle">;
}

/** Set by the handwheel's dial or by the degree ring. */
export interface ByScale<Scale extends "dial" | "ring"> {
  readonly kind: Scale;
  readonly method: Scale;
  readonly circle: null;
  readonly plate: null;
  readonly face: null;
  readonly plateStopPin: null;
}

/**
 * Every position set by itself from one zero, so that no error adds to the next. The moves between
 * positions differ: there are no turns and spaces to repeat, and they are null.
 */
export type NearFromZero = OfMove &
  NearFigures & {
    readonly moves: "from-zero";
    readonly teethPerMove: 1;
    readonly turns: null;
    readonly spaces: null;
    readonly armsEnclose: null;
    /** Places that one turn of the crank can be set to (of the spindle, for a ring or a direct plate): holes, or marks with their vernier. */
    readonly placesPerTurn: number;
  } & (ByNearestHole | ByBothCranks | ByNearestDirect | (ByScale<"dial"> & { readonly wormRatio: Ratio }) | ByScale<"ring">);

/** A setting from one zero by one kind of place. */
export type NearBy<Kind extends NearFromZero["kind"]> = Extract<NearFromZero, { readonly kind: Kind }>;

/** A setting that does not close; `moves` tells whether one move is made over and over. */
export type NearSetting = NearMove | NearFromZero;

/** The kinds of near setting. */
export type NearKind = NearSetting["kind"];
