import { placeAtClose, placeAtMove } from "./by-moves.ts";
import type { PlaceByMoves } from "./place.ts";
import type { Way } from "./way.ts";
import type { Work } from "./work.ts";

/** A place to look at the work on the way: where pin and ring must stand then. */
export interface Check {
  readonly at: "quarter" | "half" | "three-quarters" | "close";
  /** Its `from` is the way from the start. */
  readonly place: PlaceByMoves;
}

const quarters = ["quarter", "half", "three-quarters"] as const;

/**
 * The checks that still lie ahead: the quarters of the moves, and back at the start.
 *
 * @param ahead - The move of the first place that is yet to be reached.
 */
export function checksOn(work: Work, way: Way, ahead: number): readonly Check[] {
  if (way.by !== "moves" || work.count === 1) return [];
  const moves = quarters.map((at, index) => ({ at, move: Math.floor(((index + 1) * work.count) / 4) }));
  const differ = moves.filter(({ move }, index) => move > 0 && move >= ahead && moves[index - 1]?.move !== move);
  return [
    ...differ.map(({ at, move }): Check => ({ at, place: placeAtMove(work, way.setting, move) })),
    { at: "close", place: placeAtClose(work, way.setting) },
  ];
}
