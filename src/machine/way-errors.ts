import type Fraction from "fraction.js";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { floorMod, fromExact, rational } from "../number/ratio.ts";
import { worstByMoves } from "./by-moves.ts";
import { partsVisited } from "./from-zero.ts";
import type { Place } from "./place.ts";
import type { Asked } from "./plan-options.ts";
import { errorOnScale } from "./readings.ts";
import type { Way } from "./way.ts";
import type { Work } from "./work.ts";
import { atZero, type Zero } from "./zero.ts";

/** Teeth one after the other, and which of them matter. */
type Matters = Pick<Asked, "matters">;

/** The greatest error of the places that matter, in arc-seconds without sign. */
export function worstAmong(places: readonly Place[], { matters }: Matters): number {
  let worst = 0;
  for (const { tooth, errorArcSeconds } of places) {
    if (matters === undefined || matters.has(tooth)) worst = Math.max(worst, Math.abs(errorArcSeconds));
  }
  return worst;
}

/** The greatest error of the teeth that matter when a way visits them, in arc-seconds without sign. No place is made for it. */
export function worstOf(work: Work, way: Way, teeth: readonly number[], { matters }: Matters): number {
  const { head } = work;
  switch (way.by) {
    case "moves":
      return worstByMoves(work, way.setting, teeth, matters);
    case "nearest-hole":
      return worstByHole(work, way.setting.circle, teeth, { matters });
    case "dial":
      return worstOnPlaces(work, fromExact(head.wormRatio).mul(way.setting.placesPerTurn), work.zero, teeth, matters);
    case "ring":
      return worstOnPlaces(work, rational(way.setting.placesPerTurn), work.zero, teeth, matters);
  }
}

/** The same by the nearest holes of a circle, which are counted from the start. */
export function worstByHole(work: Work, circle: number, teeth: readonly number[], { matters }: Matters): number {
  return worstOnPlaces(work, fromExact(work.head.wormRatio).mul(circle), atZero, teeth, matters);
}

/**
 * The greatest distance from the nearest of places that lie evenly round the work, in arc-seconds.
 *
 * With p/q places to a part of the turn, part j lies j·p mod q of the q between two places past one.
 * Whole numbers do that as long as they are safe; beyond, fractions.
 *
 * @param perSpindle - Places for one turn of the work.
 */
function worstOnPlaces(
  work: Work,
  perSpindle: Fraction,
  zero: Zero,
  teeth: readonly number[],
  matters: ReadonlySet<number> | undefined,
): number {
  const perPart = perSpindle.div(work.count);
  const [p, q] = [Number(perPart.n), Number(perPart.d)];
  const start = zero.start.mul(perSpindle);
  const isSafe = start.d === 1n && Number.isSafeInteger(p * q);
  let most = 0;
  for (const [index, parts] of partsVisited(work, teeth).entries()) {
    if (matters !== undefined && !matters.has(teeth[index] ?? 0)) continue;
    if (isSafe) {
      const past = (floorMod(parts, q) * p) % q;
      most = Math.max(most, Math.min(past, q - past));
    } else most = Math.max(most, Math.abs(errorOnScale(rational(parts, work.count), perSpindle, zero)));
  }
  return isSafe ? rational(most, q).div(perSpindle).mul(arcSecondsPerTurn).valueOf() : most;
}
