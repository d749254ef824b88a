import { errorAtRadius } from "../number/error-at-radius.ts";
import { floorMod, fromExact, type Ratio } from "../number/ratio.ts";

/** How far the holes of a circle are off, and what that becomes at the spindle of the head that the plate serves on. */
export interface PlateErrors {
  /** No hole lies further from its place than this, along its circle, in mm. */
  readonly worstHoleMm: number;
  /** What that turns the spindle by, in arc-seconds: the worm divides it by its ratio. */
  readonly atSpindleArcSeconds: number;
  /** From any hole to any other the spindle is turned too far or too little by no more, in arc-seconds. */
  readonly betweenHolesArcSeconds: number;
}

/** A circle that was drilled. */
export interface Drilled {
  /** How far each hole is off its place round the circle, in arc-seconds of the plate, by number from 0. */
  readonly arcSeconds: readonly number[];
  /** How far any of them may lie off besides, either way, in arc-seconds of the plate. */
  readonly within: number;
  /** Of the circle, in mm. */
  readonly diameter: number;
  /** Crank turns for one of the spindle, on the head that the plate serves on. */
  readonly wormRatio: Ratio;
}

/** What the errors of a circle come to. */
export function errorsOf({ arcSeconds, within, diameter, wormRatio }: Drilled): PlateErrors {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const each of arcSeconds) [least, most] = [Math.min(least, each), Math.max(most, each)];
  const worst = Math.max(-least, most) + within;
  const turns = fromExact(wormRatio).valueOf();
  return {
    worstHoleMm: errorAtRadius(worst, diameter / 2).mm,
    atSpindleArcSeconds: worst / turns,
    betweenHolesArcSeconds: (most - least + 2 * within) / turns,
  };
}

/**
 * A second circle of as many holes, made through the first on the head that it serves on: by R turns of N spaces for
 * a turn of the work, the first hole of the first plate under the pin at its first hole.
 *
 * The law: hole i of the second is drilled with the pin in hole i·R (mod N) of the first, so it is off by what that is
 * off against the first hole, divided by R. How far the drill wanders is as it was, and comes anew to every plate.
 *
 * @returns Null where the ratio is not whole: the holes of the first are then no places of the second.
 */
export function throughTheFirst(first: Drilled): Drilled | null {
  const { n, d } = fromExact(first.wormRatio);
  if (d !== 1n) return null;
  const { arcSeconds, within } = first;
  const [ratio, holes] = [Number(n), arcSeconds.length];
  const at = (hole: number) => arcSeconds[floorMod(hole, holes)] ?? 0;
  return {
    ...first,
    arcSeconds: arcSeconds.map((_, hole) => (at(hole * ratio) - at(0)) / ratio),
    within: within + (2 * within) / ratio,
  };
}
