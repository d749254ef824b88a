import type { NearBy, NearFromZero, NearMove, NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";

/** One setting made over and over: exact, or near, so that its error grows from move to move. */
export interface WayByMoves {
  readonly by: "moves";
  readonly setting: Setting | NearMove;
}

/** Every place by itself from the start: no error adds to the next. */
export interface WayFromZero<Kind extends NearFromZero["kind"]> {
  readonly by: Kind;
  readonly setting: NearBy<Kind>;
}

/** The way a job is done. `by` tells which. */
export type Way =
  | WayByMoves
  | WayFromZero<"nearest-hole">
  | WayFromZero<"both-cranks">
  | WayFromZero<"nearest-direct">
  | WayFromZero<"dial">
  | WayFromZero<"ring">;

const each: Readonly<Record<Way["by"], true>> = {
  moves: true,
  "nearest-hole": true,
  dial: true,
  ring: true,
  "both-cranks": true,
  "nearest-direct": true,
};

/** All that a job can be done by; the compiler names one that is missing. */
export const waysBy: readonly Way["by"][] = Object.freeze(Object.keys(each) as Way["by"][]);

/**
 * The way of a setting.
 *
 * @example
 * ```ts
 * wayOf(indexDivisions(readyHeads[0], 127).settings[0]).by; // "moves"
 * ```
 */
export function wayOf(setting: Setting | NearSetting): Way {
  if (setting.exact || setting.moves === "equal") return { by: "moves", setting };
  switch (setting.kind) {
    case "nearest-hole":
      return { by: setting.kind, setting };
    case "both-cranks":
      return { by: setting.kind, setting };
    case "nearest-direct":
      return { by: setting.kind, setting };
    case "dial":
      return { by: setting.kind, setting };
    case "ring":
      return { by: setting.kind, setting };
  }
}

/** A way with how far it is off over the places of a job. */
export type RankedWay = Way & {
  /** The greatest error of any place asked for, in arc-seconds without sign; 0 where exact. */
  readonly worstArcSeconds: number;
};
