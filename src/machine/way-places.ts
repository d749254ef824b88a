import { placesByCranks } from "./by-cranks.ts";
import { placesByMoves } from "./by-moves.ts";
import { placesByHole, placesByScale } from "./from-zero.ts";
import type { Place } from "./place.ts";
import type { Asked } from "./plan-options.ts";
import type { Way } from "./way.ts";
import { moveTo, partsTo, stepsFromStart, toothAfter, type Work } from "./work.ts";

/**
 * The places of teeth by a way, one after the other.
 *
 * @param before - The tooth that the first is gone to from; left out, the start.
 */
export function placesBy(work: Work, way: Way, teeth: readonly number[], before?: number): readonly Place[] {
  switch (way.by) {
    case "moves":
      return placesByMoves(work, way.setting, teeth, before === undefined ? 0 : moveTo(work, way.setting, before));
    case "nearest-hole":
    case "nearest-direct":
      return placesByHole(work, way, teeth, before);
    case "both-cranks":
      return placesByCranks(work, way.setting, teeth, before);
    case "dial":
    case "ring":
      return placesByScale(work, way.by, teeth, before);
  }
}

/** The teeth that are asked for, in the order in which a way visits them. */
export function teethOf(work: Work, way: Way, asked: Pick<Asked, "teeth" | "order">): readonly number[] {
  if (asked.teeth === null) return teethFrom(work, way, 0);
  return teethVisited(asked.teeth, asked, (tooth) =>
    way.by === "moves" ? moveTo(work, way.setting, tooth) : partsTo(work, tooth),
  );
}

/** Teeth as they are named, or in the order of where a way has them, which `place` tells. */
export function teethVisited(
  teeth: readonly number[],
  { order }: Pick<Asked, "order">,
  place: (tooth: number) => number,
): readonly number[] {
  if (order === "given") return teeth;
  return teeth
    .map((tooth) => ({ tooth, at: place(tooth) }))
    .sort((a, b) => a.at - b.at)
    .map(({ tooth }) => tooth);
}

/** All teeth in the order in which a way visits them, but for as many as are done. */
export function teethFrom(work: Work, way: Way, done: number): readonly number[] {
  if (way.by !== "moves") return allFrom(work, done);
  return Array.from({ length: work.count - done }, (_, index) => toothAfter(work, way.setting, done + index));
}

/** How many teeth a way has visited before a tooth, when it visits all. */
export function doneBefore(work: Work, way: Way, tooth: number): number {
  return way.by === "moves" ? moveTo(work, way.setting, tooth) : stepsFromStart(work, tooth);
}

/** All teeth from the start on, but for the first of them. */
function allFrom({ count, startTooth }: Work, done: number): readonly number[] {
  return Array.from({ length: count - done }, (_, index) => 1 + ((startTooth - 1 + done + index) % count));
}
