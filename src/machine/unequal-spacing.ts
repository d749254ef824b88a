import type Fraction from "fraction.js";
import { type Head, mountedPlate, type OwnedCircle, ownedCircles } from "../head/head.ts";
import { spindleTurnsPerMove } from "../mechanism/prove.ts";
import { arcSecondsPerTurn, checkAngle } from "../number/angle.ts";
import { refuse } from "../number/errors.ts";
import { fromExact, groupDigits, type Revolutions, rational, toRevolutions } from "../number/ratio.ts";
import { nearestHoleAt, type Reading, scalesAt } from "./readings.ts";
import { atZero } from "./zero.ts";

/** The most steps that are taken at once. */
const mostSteps = 10_000;

/** One place of a work with unequal spaces, set by itself from the zero. */
export interface SpacedPlace {
  /** 1 and upwards; place 1 is the zero. */
  readonly place: number;
  /** From the zero, in revolutions. */
  readonly angle: Revolutions;
  /** Whole turns of the crank from the zero, and the hole counted from it; null where the head has no plate. */
  readonly turns: number | null;
  readonly hole: number | null;
  /** The crank move from the place before; 0 turns and 0 spaces at the zero. */
  readonly from: { readonly turns: number; readonly spaces: number } | null;
  /** Where the hole leaves the work, in arc-seconds; + is too far, 0 where exact, null without a plate. */
  readonly errorArcSeconds: number | null;
  readonly dial: Reading | null;
  readonly ring: Reading | null;
}

/** How a work with unequal spaces is set on a head. */
export interface UnequalSpacing {
  /** The one circle that all places are set on, or null where the head has no plate. */
  readonly circle: OwnedCircle | null;
  /** Whether every place falls on a hole of it. */
  readonly exact: boolean;
  /** The greatest error of any place by its hole; null without a plate. */
  readonly worstArcSeconds: number | null;
  /** Whether the spaces make up whole turns of the work; where not, `left` is what the last misses of one. */
  readonly closes: boolean;
  /** What is left of the turn after the last space, in revolutions; 0 where it closes. */
  readonly left: Revolutions;
  readonly places: readonly SpacedPlace[];
}

/**
 * Sets a work whose spaces are not equal, such as a reamer: every place from one zero, on the one
 * circle that does best.
 *
 * The law: a place at the angle A is R·A turns of the crank from the zero, exactly so on a circle of
 * C holes when R·A·C is whole; else the nearest hole is named, with the error measured on the
 * mechanism. As each place is counted from the zero, no error adds to the next.
 *
 * @param steps - From each place to the next, in revolutions; a last step back to the start may be given or left out.
 * @returns The circle on which all places are exact, the smallest first and the mounted plate
 * before others; where there is none, the circle with the least worst error.
 * @throws {@link InputError} when there is no step, one is not above 0, or there are over 10,000.
 */
export function unequalSpacing(
  head: Head,
  steps: readonly Revolutions[],
  options: { readonly mounted?: string } = {},
): UnequalSpacing {
  if (!Array.isArray(steps) || steps.length === 0)
    refuse("missing", "steps", "there are none; give the angle from each place to the next");
  if (steps.length > mostSteps)
    refuse("too-many", "steps", `${groupDigits(steps.length)} are too many; give at most ${groupDigits(mostSteps)}`);
  const angles = [rational(0)];
  for (const step of steps) angles.push((angles.at(-1) ?? rational(0)).add(fromExact(checkAngle(step))));
  const sum = angles.at(-1) ?? rational(0);
  const closes = sum.d === 1n;
  if (closes) angles.pop();
  const circle = bestCircle(head, angles, mountedPlate(head, options.mounted));
  const places = angles.map((angle, index) => placeAt(head, circle, angle, index, angles[index - 1]));
  const worst = Math.max(...places.map(({ errorArcSeconds }) => Math.abs(errorArcSeconds ?? 0)));
  return {
    circle,
    exact: circle !== null && worst === 0,
    worstArcSeconds: circle === null ? null : worst,
    closes,
    left: toRevolutions(closes ? rational(0) : sum.ceil().sub(sum)),
    places,
  };
}

function bestCircle(head: Head, angles: readonly Fraction[], mounted: string | null): OwnedCircle | null {
  const judged = ownedCircles(head).map((circle) => ({
    circle,
    worst: Math.max(...angles.map((angle) => Math.abs(nearestHoleAt(angle, circle.holes, head.wormRatio).errorArcSeconds))),
  }));
  const other = ({ plate }: OwnedCircle) => Number(plate !== mounted);
  judged.sort(
    (a, b) =>
      a.worst - b.worst || other(a.circle) - other(b.circle) || (a.worst === 0 ? 1 : -1) * (a.circle.holes - b.circle.holes),
  );
  return judged[0]?.circle ?? null;
}

function placeAt(
  head: Head,
  circle: OwnedCircle | null,
  angle: Fraction,
  index: number,
  before: Fraction | undefined,
): SpacedPlace {
  const scales = { place: index + 1, ...scalesAt(head, angle, atZero) };
  if (circle === null) return { ...scales, turns: null, hole: null, from: null, errorArcSeconds: null };
  const { turns, mark: hole } = nearestHoleAt(angle, circle.holes, head.wormRatio);
  const last = before === undefined ? { turns, mark: hole } : nearestHoleAt(before, circle.holes, head.wormRatio);
  const spaces = (turns - last.turns) * circle.holes + hole - last.mark;
  return {
    ...scales,
    turns,
    hole,
    from: { turns: Math.floor(spaces / circle.holes), spaces: spaces % circle.holes },
    errorArcSeconds: errorOf(head, circle, { turns, hole }, angle),
  };
}

/** Turns the crank to the hole on the mechanism, and looks where that leaves the work. */
function errorOf(
  { wormRatio }: Head,
  { holes }: OwnedCircle,
  { turns, hole }: { turns: number; hole: number },
  angle: Fraction,
): number {
  if (turns === 0 && hole === 0) return angle.neg().mul(arcSecondsPerTurn).valueOf();
  const reached = fromExact(spindleTurnsPerMove({ wormRatio, turns, spaces: hole, circle: holes }));
  return reached.sub(angle).mul(arcSecondsPerTurn).valueOf();
}
