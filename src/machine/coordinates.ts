import { checkAngleFromZero } from "../number/angle.ts";
import { checkKeys, keysOf, oneOf } from "../number/check-options.ts";
import { numberFault, quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { groupDigits, noTurn, type Revolutions, rational } from "../number/ratio.ts";
import { checkDivisions } from "../setting/target.ts";
import { checkListed } from "./listed.ts";

/** Where the positions of a count lie on a circle. */
export interface CircleLayout {
  /** Radius of the circle, in whatever unit the coordinates are wanted in. Above 0. */
  readonly radius: number;
  /** Where tooth 1 lies, in revolutions from the +x axis; left out, on the axis. */
  readonly startAngle?: Revolutions | undefined;
  /** Which way the teeth follow as drawn, with x to the right and y up; left out, counter-clockwise. */
  readonly sense?: "clockwise" | "counter-clockwise" | undefined;
  /**
   * `"centre"`: signed from the centre. `"tangents"`: all positive, from the left and bottom
   * tangents of the circle, for handwheels without a sign. `{ x, y }`: from a zero of the work's own, where the
   * centre lies as seen from it. Left out, the centre.
   */
  readonly origin?: "centre" | "tangents" | { readonly x: number; readonly y: number } | undefined;
}

const layoutKeys = keysOf<CircleLayout>({ radius: true, startAngle: true, sense: true, origin: true });

/** One position by its coordinates. */
export interface Coordinate {
  readonly tooth: number;
  readonly x: number;
  readonly y: number;
}

/**
 * The coordinates of every position of a count on a circle, each worked from the centre.
 *
 * @throws {@link InputError} when the count or a part of the layout is not allowed, or there are over 50,000 places.
 *
 * @example
 * ```ts
 * coordinates(4, { radius: 10 })[1]; // {"tooth":2,"x":0,"y":10}
 * ```
 */
export function coordinates(divisions: number, layout: CircleLayout): readonly Coordinate[] {
  checkDivisions(divisions);
  checkListed(divisions, "divisions");
  checkKeys(layout, layoutKeys, "layout");
  const { radius, startAngle = noTurn, sense = "counter-clockwise", origin = "centre" } = layout;
  checkRadius(radius);
  const start = checkAngleFromZero(startAngle, "startAngle");
  const isClockwise = oneOf(sense, ["clockwise", "counter-clockwise"], "sense") === "clockwise";
  const centre = centreFrom(origin, radius);
  return Array.from({ length: divisions }, (_, index) => {
    const turns = start
      .add(rational(isClockwise ? -index : index, divisions))
      .mod(1)
      .valueOf();
    return { tooth: index + 1, x: centre.x + radius * cosineOfTurns(turns), y: centre.y + radius * cosineOfTurns(turns - 0.25) };
  });
}

/**
 * The straight distance between two positions so many divisions apart, to check the work across.
 *
 * The law: chord = 2·r·sin(π·apart/N).
 *
 * @param apart - Divisions between the two; 1 for neighbours. 1 to N − 1.
 * @returns In the unit of the radius.
 * @throws {@link InputError} when the count, the radius or the number of divisions between is not allowed.
 *
 * @example
 * ```ts
 * chord(6, 10).toFixed(6); // "10.000000"
 * ```
 */
export function chord(divisions: number, radius: number, apart = 1): number {
  checkDivisions(divisions);
  checkRadius(radius);
  if (divisions === 1) refuse("cannot-be-made", "apart", "there is no chord with 1 division; give a count of 2 or more");
  if (!Number.isInteger(apart) || apart < 1 || apart >= divisions) {
    refuse(
      wholeNumberFault(apart),
      "apart",
      `${quoted(apart)} is not a number of divisions between two of ${groupDigits(divisions)}; give 1 to ${groupDigits(divisions - 1)}`,
    );
  }
  return 2 * radius * chordFactor(apart, divisions);
}

/** A chord in diameters of its circle, of a count and of places that are known to be allowed. */
export function chordFactor(apart: number, divisions: number): number {
  return Math.sin((Math.PI * apart) / divisions);
}

/** A straight distance between two places of a circle so many divisions apart. */
export interface CheckChord {
  readonly apart: number;
  readonly length: number;
}

/**
 * The chords by which a circle of holes is checked: from each to the next, and across as far as may be.
 *
 * @returns In the unit of the radius; none of a single place.
 * @throws {@link InputError} as {@link chord} does.
 *
 * @example
 * ```ts
 * checkChords(6, 40).map(({ apart }) => apart); // [1,3]
 * ```
 */
export function checkChords(divisions: number, radius: number): readonly CheckChord[] {
  if (checkDivisions(divisions) < 2) return [];
  return [...new Set([1, Math.floor(divisions / 2)])].map((apart) => ({ apart, length: chord(divisions, radius, apart) }));
}

/** Where the centre lies from the zero that is counted from. */
function centreFrom(origin: unknown, radius: number): { readonly x: number; readonly y: number } {
  if (typeof origin !== "object" || origin === null) {
    const shift = oneOf(origin, ["centre", "tangents"], "origin") === "tangents" ? radius : 0;
    return { x: shift, y: shift };
  }
  checkKeys(origin, ["x", "y"], "origin");
  const { x, y } = origin as Readonly<Record<string, unknown>>;
  for (const [name, value] of Object.entries({ x, y })) {
    if (typeof value !== "number" || !Number.isFinite(value))
      refuse("unreadable", `origin.${name}`, `${quoted(value)} is not where a centre lies; give a length`);
  }
  return { x: x as number, y: y as number };
}

function checkRadius(radius: unknown): void {
  if (typeof radius !== "number" || !Number.isFinite(radius) || radius <= 0)
    refuse(numberFault(radius), "radius", `${quoted(radius)} is not a radius; give one above 0`);
}

/** The cosine of a part of a turn, exactly 0 and ±1 on the axes, where a rounded π would leave a trace. */
function cosineOfTurns(turns: number): number {
  const quarter = Math.abs(turns * 4);
  if (quarter === 1 || quarter === 3) return 0;
  return Math.cos(2 * Math.PI * turns);
}
