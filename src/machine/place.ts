import type { Revolutions } from "../number/ratio.ts";
import type { SecondMove, SmallMove } from "../setting/setting.ts";
import type { BothScales } from "./scale-reader.ts";

/** From the place before to this one, by moves of a setting. */
export interface MoveBetween {
  readonly direction: "forward" | "back";
  /** Moves of the setting that this makes; 0 stays where it is. */
  readonly moves: number;
  /** Turns and spaces of the crank, all moves together. */
  readonly turns: number;
  readonly spaces: number;
  /** Compound only: turns and spaces of the part by the rear pin, all moves together. */
  readonly second?: Pick<SecondMove, "direction" | "spaces" | "circle"> & { readonly turns: number };
  /** Wide range only: turns and spaces of the small crank, all moves together. */
  readonly small?: Pick<SmallMove, "turns" | "spaces" | "circle">;
}

/** What every place of a job says, however it is reached: the scales show where the work stands then. */
export interface AnyPlace extends BothScales {
  /** 1 to the count. */
  readonly tooth: number;
  /** Where it truly lies on the ring, in revolutions from the zero. */
  readonly angle: Revolutions;
  /** How far the work stands off that, in arc-seconds; + is too far, 0 where it is exact. */
  readonly errorArcSeconds: number;
}

/** A place reached by moves of one setting, made over and over. */
export interface PlaceByMoves extends AnyPlace {
  readonly by: "moves";
  /**
   * Moves of the setting from the start to here, those back taken off. A list that comes past the
   * start again counts on: with gears the pin then stands in other holes than the first time round.
   */
  readonly move: number;
  /** Whole turns of the pin over the plate since the start; below 0 where the list has gone back past it. */
  readonly turns: number;
  /** The hole of the circle the pin stands in, numbered from 0 the way the crank goes; null where any serves. */
  readonly hole: number | null;
  /** Where the pin goes through a row of holes beside a direct plate: which of them, from 0. */
  readonly vernierHole?: number;
  /** Compound only: the hole of the second circle at the rear pin, likewise. */
  readonly rearHole?: number;
  /** Wide range only: the hole that the small crank's pin stands in, likewise. */
  readonly smallHole?: number;
  /** How to get here from the place before; the first is reached from the start. */
  readonly from: MoveBetween;
}

/** A place set to the nearest hole of one circle, or of a direct plate, by itself from the start. */
export interface PlaceByHole extends AnyPlace {
  readonly by: "nearest-hole" | "nearest-direct";
  /** Whole turns of the crank from the start; of the spindle, by a direct plate. */
  readonly turns: number;
  /** The hole of the circle the pin stands in, numbered from 0 the way the crank goes. */
  readonly hole: number;
  /** As of a place by moves. */
  readonly vernierHole?: number;
  /** How to get here from the place before. */
  readonly from: Pick<MoveBetween, "direction" | "turns" | "spaces">;
}

/** A place set by both cranks of a wide range head, by itself from the start. */
export interface PlaceByCranks extends AnyPlace {
  readonly by: "both-cranks";
  /** Whole turns of the large crank from the start. */
  readonly turns: number;
  /** The hole of the large circle, numbered from 0 the way the crank goes; null where it goes by whole turns alone. */
  readonly hole: number | null;
  /** Whole turns of the small crank beyond where its pin stood at the start, and the hole it then stands in. */
  readonly smallTurns: number;
  readonly smallHole: number;
}

/** A place set to the nearest mark of a scale, by itself from the zero. */
export interface PlaceByScale extends AnyPlace {
  readonly by: "dial" | "ring";
}

/** One place of a job: what to do to reach it, where that stands, and how far it is off. `by` tells how it is reached. */
export type Place = PlaceByMoves | PlaceByHole | PlaceByCranks | PlaceByScale;
