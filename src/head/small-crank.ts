import type { FaultList } from "../number/fault-list.ts";
import type { Head } from "./head.ts";
import { mostHoles, refuseDoubles } from "./plate.ts";

/**
 * The small crank of a wide range head: a second worm before the first. It moves over a plate of its own while the
 * large crank's pin stands in its hole.
 */
export interface SmallCrank {
  /** Turns of the small crank for one of the large. */
  readonly ratio: number;
  /** Holes in each circle of its plate, ascending. */
  readonly circles: readonly number[];
}

/** The greatest ratio of a small crank: 100 is the common one. */
export const mostSmallRatio = 1000;
/** The most circles of its plate. */
export const mostSmallCircles = 12;

/** Checks what a spec says of a small crank; nothing where it says nothing, as of most heads. */
export function readSmallCrank(value: unknown, faults: FaultList): Pick<Head, "smallCrank"> {
  if (value === undefined || value === null) return {};
  const spec = faults.object(value, "smallCrank", ["ratio", "circles"]);
  if (spec === null) return {};
  const circles = faults
    .list(spec.circles, "smallCrank.circles", mostSmallCircles, "its plate has at least one circle of holes")
    .map((holes, index) => faults.wholeNumber(holes, `smallCrank.circles[${index}]`, 2, mostHoles))
    .sort((a, b) => a - b);
  refuseDoubles(circles, "smallCrank.circles", "circle", faults);
  const ratio = faults.wholeNumber(spec.ratio, "smallCrank.ratio", 2, mostSmallRatio);
  return { smallCrank: Object.freeze({ ratio, circles: Object.freeze(circles) }) };
}
