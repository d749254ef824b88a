import { type Head, type HeadInShort, inShort } from "../head/head.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { oneOf } from "../number/check-options.ts";
import { arcSecondsAlong, errorAtRadius } from "../number/error-at-radius.ts";
import type { Ratio } from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { chord, coordinates } from "./coordinates.ts";
import { checkDrilling, checkStep, type DrillOptions, servesOn } from "./drill-options.ts";
import { type Drilled, errorsOf, type PlateErrors, throughTheFirst } from "./hole-errors.ts";
import type { Place } from "./place.ts";
import { type NoJob, type PlannedJob, planJob } from "./plan.ts";
import type { PlanOptions } from "./plan-options.ts";
import { chordsToMeasure, type HoleChord } from "./plate-chords.ts";
import type { Way } from "./way.ts";

/** A hole of a circle that is drilled. */
export interface DrilledHole {
  /** From 0 to one below the number of holes, in the order round the plate. */
  readonly hole: number;
  /** How far it lies from its true place round the circle, in arc-seconds of the plate; + is too far on. */
  readonly errorArcSeconds: number;
  /** The same along the circle, in mm. */
  readonly errorMm: number;
}

/** A hole gone to on a head: `place` says how, as its plan does. */
export interface HoleOnHead extends DrilledHole {
  readonly place: Place;
}

/** A hole set by a table's own slides, in mm, to the nearest step. */
export interface HoleByCoordinates extends DrilledHole {
  readonly x: number;
  readonly y: number;
  /** How far out of its circle that puts it, in mm; − is inwards. A pin feels it, an index does not. */
  readonly outMm: number;
}

/** What is so of a drilled circle however it is made. The errors are of the way, and of how far the drill may wander. */
interface AnyDrilled extends PlateErrors {
  readonly planned: true;
  /** Holes in all. */
  readonly count: number;
  /** In mm. */
  readonly diameter: number;
  /** Of the head that the plate is to serve on. */
  readonly servesRatio: Ratio;
  /** How far a hole may lie from where the drill was set, in mm. */
  readonly drillWithin: number;
  /** What is left between two holes beside each other, in mm; null where the drill was not named. */
  readonly wallMm: number | null;
  /** What to measure when it is done. */
  readonly chords: readonly HoleChord[];
  /**
   * A second circle of as many holes, made through this one on the head that it serves on; null where the worm ratio
   * of that is not whole, so that it cannot be.
   */
  readonly next: PlateErrors | null;
}

/** A circle made on a dividing head or rotary table. */
export interface DrilledOnHead extends AnyDrilled {
  readonly by: Way["by"];
  /** The head that makes it. */
  readonly head: HeadInShort;
  /** The plan that is followed; its places stand with the holes. */
  readonly plan: Omit<PlannedJob, "places">;
  /** In the order of the work. */
  readonly holes: readonly HoleOnHead[];
}

/** A circle made by the coordinates of its holes. */
export interface DrilledByCoordinates extends AnyDrilled {
  readonly by: "coordinates";
  /** The finest step that the table is set to, in mm. */
  readonly step: number;
  readonly origin: "centre" | "tangents";
  /** In the order round the plate. */
  readonly holes: readonly HoleByCoordinates[];
}

/** A circle of holes to be drilled; `by` tells how. */
export type DrilledPlate = DrilledOnHead | DrilledByCoordinates;

/**
 * A circle of holes for an index plate: how each is gone to, how far off it comes to lie, and what that turns the
 * spindle by on the head that the plate serves on.
 *
 * On a head the holes are the places of its plan, exact, near, or each from one zero. What a hole is off along its
 * circle the worm divides by its ratio: 0.1 mm at a radius of 60 mm turns the spindle of a 40:1 head by 8.6″. The errors
 * of the worm wheel that the plate serves on are not in it, and no plate lessens them.
 *
 * @param head - The head or rotary table that makes it, or one that was prepared; by coordinates that which it serves on.
 * @param holes - 2 to 10,000.
 * @returns The plate, or why the head can make none, not even nearly: `planned` tells which.
 * @throws {@link InputError} when the circle or an option is not allowed.
 *
 * @example
 * ```ts
 * drillPlate(readyHeads[1], 97, { diameter: 120 }).atSpindleArcSeconds.toFixed(1); // "0.4"
 * ```
 */
export function drillPlate(head: Head | PreparedHead, holes: number, options: DrillOptions): DrilledPlate | NoJob {
  checkDrilling(holes, options);
  const owned = headOf(head);
  const serves = servesOn(options.servesRatio, owned.wormRatio);
  const { by } = options;
  if (by === "coordinates") return byCoordinates(holes, serves, options);
  const plan = planJob(head, { divisions: holes }, { ...wayOptions(options), by });
  return plan.planned ? onHead(plan, inShort(owned), serves, options) : plan;
}

/** Of the options, those of a plan, but for what it goes by. */
function wayOptions(options: DrillOptions): PlanOptions {
  const { methods, teethPerMove, prefer, mounted, setting, startHole, startAngle, side } = options;
  return { methods, teethPerMove, prefer, mounted, setting, startHole, startAngle, side };
}

function onHead({ places, ...plan }: PlannedJob, head: HeadInShort, serves: Ratio, options: DrillOptions): DrilledOnHead {
  const holes = places.map((place): HoleOnHead => {
    const { tooth, errorArcSeconds } = place;
    return { hole: tooth - 1, ...errorsAlong(errorArcSeconds, options.diameter), place };
  });
  return { ...circleOf(holes, serves, options), by: plan.way.by, head, plan, holes };
}

function byCoordinates(count: number, serves: Ratio, options: DrillOptions): DrilledByCoordinates {
  const { diameter, startAngle, sense } = options;
  const origin = oneOf(options.origin ?? "centre", ["centre", "tangents"], "origin");
  const step = checkStep(options.step);
  const radius = diameter / 2;
  const centre = origin === "tangents" ? radius : 0;
  const onward = sense === "clockwise" ? -1 : 1;
  // Without the trace that a step such as 0.1 leaves.
  const toStep = (length: number) => Number((Math.round(length / step) * step).toFixed(finestPlaces));
  const holes = coordinates(count, { radius, startAngle, sense, origin }).map(({ tooth, ...at }): HoleByCoordinates => {
    const [x, y] = [toStep(at.x), toStep(at.y)];
    // From the centre, as it is and as it should be.
    const [fromX, fromY, toX, toY] = [x - centre, y - centre, at.x - centre, at.y - centre];
    const turns = Math.atan2(toX * fromY - toY * fromX, fromX * toX + fromY * toY) / (2 * Math.PI);
    return {
      hole: tooth - 1,
      ...errorsAlong(onward * turns * arcSecondsPerTurn, diameter),
      x,
      y,
      outMm: Math.hypot(fromX, fromY) - radius,
    };
  });
  return { ...circleOf(holes, serves, options), by: "coordinates", step, origin, holes };
}

const finestPlaces = 9;

function errorsAlong(errorArcSeconds: number, diameter: number): Pick<DrilledHole, "errorArcSeconds" | "errorMm"> {
  return { errorArcSeconds, errorMm: errorAtRadius(errorArcSeconds, diameter / 2).mm };
}

/** What is so of the circle, however its holes are gone to. */
function circleOf(holes: readonly DrilledHole[], servesRatio: Ratio, options: DrillOptions): AnyDrilled {
  const { diameter, drill, drillWithin = 0 } = options;
  const count = holes.length;
  const inOrder = holes.toSorted((one, other) => one.hole - other.hole);
  const drilled: Drilled = {
    arcSeconds: inOrder.map(({ errorArcSeconds }) => errorArcSeconds),
    within: arcSecondsAlong(drillWithin, diameter / 2),
    diameter,
    wormRatio: servesRatio,
  };
  const second = throughTheFirst(drilled);
  return {
    planned: true,
    count,
    diameter,
    servesRatio,
    drillWithin,
    wallMm: drill === undefined ? null : chord(count, diameter / 2) - drill,
    ...errorsOf(drilled),
    chords: chordsToMeasure(count, diameter),
    next: second && errorsOf(second),
  };
}
