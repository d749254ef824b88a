import type { Head } from "../head/head.ts";
import { refuse } from "../number/errors.ts";
import { type Exact, groupDigits, rational, toExact } from "../number/ratio.ts";
import { checkDivisions } from "../setting/target.ts";
import { mostPositions, nearestHoleAt } from "./readings.ts";

/** A position set to the nearest hole of a circle, by itself from the zero. */
export interface HolePosition {
  /** 1 to the count; tooth 1 is the zero. */
  readonly tooth: number;
  /** Where it should be, from the zero, in revolutions. */
  readonly angle: Exact;
  /** Whole turns of the crank from the zero. */
  readonly turns: number;
  /** The hole, numbered from 0 at the zero the way the crank goes. */
  readonly hole: number;
  /** Where that leaves the work, in arc-seconds; + is too far. */
  readonly errorArcSeconds: number;
}

/**
 * The nearest hole of a circle to every position of a count, each from one zero: no error adds to
 * the next, and none is more than half a space of the circle divided by the worm ratio.
 *
 * @param circle - Holes of the circle, one of the head's own.
 * @throws {@link InputError} when the count is not allowed or over 100,000, or the head has no such circle.
 */
export function nearestHoles(head: Head, divisions: number, circle: number): readonly HolePosition[] {
  checkDivisions(divisions);
  if (divisions > mostPositions) {
    refuse(
      "too-many",
      "divisions",
      `${groupDigits(divisions)} positions are too many to list; give at most ${groupDigits(mostPositions)}`,
    );
  }
  if (!head.plates.some(({ faces }) => faces.some(({ circles }) => circles.includes(circle)))) {
    refuse("not-owned", "circle", `this head has no circle of ${circle}; give one of its own`);
  }
  return Array.from({ length: divisions }, (_, index) => nearestHole(head, divisions, circle, index + 1));
}

/** As {@link nearestHoles}, for one tooth of a count and a circle that are known to be right. */
export function nearestHole({ wormRatio }: Head, divisions: number, circle: number, tooth: number): HolePosition {
  const angle = rational(tooth - 1, divisions);
  const { turns, mark, errorArcSeconds } = nearestHoleAt(angle, circle, wormRatio);
  return { tooth, angle: toExact(angle), turns, hole: mark, errorArcSeconds };
}
