import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import { arcSecondsPerTurn, checkAngleFromZero } from "../number/angle.ts";
import { refuse } from "../number/errors.ts";
import { type Exact, fromExact, groupDigits, rational, toExact } from "../number/ratio.ts";
import { checkDivisions } from "../setting/target.ts";

/** The side of its zero on which a scale is read: onward, or turned back from it. */
export type Side = "plus" | "minus";

/** What a scale shows at a position: its own marks, rounded to the nearest it can show. */
export interface Reading {
  /** Whole turns of the scale from its zero. */
  readonly turns: number;
  /** The main mark, 0 to one below the marks of a turn. */
  readonly mark: number;
  /** The vernier line, 0 to one below the lines; 0 where there is no vernier. */
  readonly line: number;
  readonly side: Side;
  /** What the figures of a scale in degrees read, in revolutions of the spindle; null on one that counts marks. */
  readonly figure: Exact | null;
  /** Where setting to the reading leaves the work, in arc-seconds; + is too far. */
  readonly errorArcSeconds: number;
}

/** The finest step that a scale shows, in arc-seconds of the spindle. */
export function leastCountArcSeconds({ marksPerTurn, vernierLines }: Scale, turnsPerSpindle: Exact = "1"): number {
  return rational(arcSecondsPerTurn, marksPerTurn * vernierLines)
    .div(fromExact(turnsPerSpindle))
    .valueOf();
}

/**
 * Reads a scale at an angle of the spindle.
 *
 * The angle is exact from one zero and only its reading is rounded, half upwards, so the error
 * of one position never adds to the next and is at most half the least count.
 *
 * @param angle - Turns of the spindle from the zero, 0 or more.
 * @param turnsPerSpindle - Turns of the scale for one of the spindle: the worm ratio for a dial, 1 for a ring.
 */
export function readScaleAt(angle: Fraction, scale: Scale, turnsPerSpindle: Fraction, side: Side = "plus"): Reading {
  const stepsPerTurn = scale.marksPerTurn * scale.vernierLines;
  const steps = angle.mul(turnsPerSpindle).mul(stepsPerTurn);
  const shown = (2n * steps.n + steps.d) / (2n * steps.d);
  const turns = Number(shown / BigInt(stepsPerTurn));
  const onward = Number(shown % BigInt(stepsPerTurn));
  const step = side === "plus" || onward === 0 ? onward : stepsPerTurn - onward;
  const error = rational(shown).sub(steps).div(stepsPerTurn).div(turnsPerSpindle);
  return {
    turns,
    mark: Math.floor(step / scale.vernierLines),
    line: step % scale.vernierLines,
    side,
    figure: scale.figures === "angle" ? toExact(rational(step, stepsPerTurn).div(turnsPerSpindle)) : null,
    errorArcSeconds: error.mul(arcSecondsPerTurn).valueOf(),
  };
}

/** Reads a circle as a scale of its holes: the nearest hole to an angle of the spindle, and what it leaves. */
export function nearestHoleAt(angle: Fraction, circle: number, wormRatio: Exact): Reading {
  return readScaleAt(angle, { marksPerTurn: circle, vernierLines: 1, figures: "marks" }, fromExact(wormRatio));
}

/** How positions lie against the zero of the scales. */
export interface ZeroOptions {
  /** Where tooth 1 lies from the zero, in revolutions, 0 or more; left out, at the zero. */
  readonly startAngle?: Exact;
  /** Which way the scales are turned from their zero; left out, `"plus"`. */
  readonly side?: Side;
}

/** One position of a count by the scales of a head. */
export interface DialPosition {
  /** 1 to the count; tooth 1 lies at the start angle. */
  readonly tooth: number;
  /** From the zero, in revolutions. */
  readonly angle: Exact;
  /** The handwheel dial, or null where the head has none. */
  readonly dial: Reading | null;
  /** The degree ring, or null where the head has none. */
  readonly ring: Reading | null;
}

/** Every position of a count by dial and ring, with the worst reading of each. */
export interface DialTable {
  readonly divisions: number;
  readonly positions: readonly DialPosition[];
  readonly worstDial: WorstReading | null;
  readonly worstRing: WorstReading | null;
}

/** The reading that leaves the work furthest off, and where. */
export interface WorstReading {
  readonly tooth: number;
  /** + is too far. */
  readonly arcSeconds: number;
}

/** The most positions that are listed at once. */
export const mostPositions = 100_000;

/**
 * The readings of every position of a count on a head's dial and ring, from one zero.
 *
 * @throws {@link InputError} when the count is not allowed or over 100,000, or when the head has
 * neither dial nor ring.
 */
export function dialReadings(head: Head, divisions: number, { startAngle = "0", side = "plus" }: ZeroOptions = {}): DialTable {
  checkDivisions(divisions);
  if (divisions > mostPositions)
    refuse(
      "too-many",
      "divisions",
      `${groupDigits(divisions)} positions are too many to list; give at most ${groupDigits(mostPositions)}`,
    );
  if (head.dial === null && head.ring === null)
    refuse("not-owned", "head", "has neither dial nor ring to read; describe one in the head file");
  const start = checkAngleFromZero(startAngle, "startAngle");
  const positions = Array.from({ length: divisions }, (_, index): DialPosition => {
    const angle = start.add(rational(index, divisions));
    return { tooth: index + 1, angle: toExact(angle), ...scalesAt(head, angle, side) };
  });
  return { divisions, positions, worstDial: worst(positions, "dial"), worstRing: worst(positions, "ring") };
}

/** Both scales of a head at an angle of its spindle. */
export function scalesAt(
  { dial, ring, wormRatio }: Pick<Head, "dial" | "ring" | "wormRatio">,
  angle: Fraction,
  side: Side,
): Pick<DialPosition, "dial" | "ring"> {
  return {
    dial: dial && readScaleAt(angle, dial, fromExact(wormRatio), side),
    // The ring comes round to the same mark after each turn of the spindle.
    ring: ring && { ...readScaleAt(angle, ring, rational(1), side), turns: 0 },
  };
}

function worst(positions: readonly DialPosition[], scale: "dial" | "ring"): WorstReading | null {
  let found: WorstReading | null = null;
  for (const { tooth, [scale]: reading } of positions) {
    if (reading && (found === null || Math.abs(reading.errorArcSeconds) > Math.abs(found.arcSeconds))) {
      found = { tooth, arcSeconds: reading.errorArcSeconds };
    }
  }
  return found;
}
