import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import { arcSecondsPerTurn, checkAngleFromZero } from "../number/angle.ts";
import { refuse } from "../number/errors.ts";
import { type Exact, floorMod, fromExact, groupDigits, rational, toExact } from "../number/ratio.ts";
import { checkDivisions } from "../setting/target.ts";

/** Which way a scale goes as the work turns: on the plus side its figures rise, on the minus side they fall. */
export type Side = "plus" | "minus";

/** What a scale shows at a position: its own marks, rounded to the nearest it can show. */
export interface Reading {
  /**
   * How often the zero of the scale has come under its line: on the plus side from the zero itself, on
   * the minus side since tooth 1. 0 on a ring, which is at the same mark after each turn of the work.
   */
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

/** Where the scales stand at tooth 1, and which way they go from there. */
export interface Zero {
  /** Turns of the spindle, 0 or more. */
  readonly start: Fraction;
  readonly side: Side;
}

/** At the zero of the scales, and on the plus side. */
export const atZero: Zero = { start: rational(0), side: "plus" };

/** Where the scales stand when the work has turned so far since tooth 1, in turns of the spindle; below 0 past the zero on the minus side. */
function placeOf({ start, side }: Zero, turned: Fraction): Fraction {
  return side === "plus" ? start.add(turned) : start.sub(turned);
}

/**
 * Reads a scale when the work has turned so far since tooth 1.
 *
 * The place is exact from one zero and only its reading is rounded, half-way to the mark further
 * on, so the error of one position never adds to the next and is at most half the least count.
 *
 * @param turned - Turns of the spindle since tooth 1, 0 or more.
 * @param turnsPerSpindle - Turns of the scale for one of the spindle: the worm ratio for a dial, 1 for a ring.
 */
export function readScaleAt(turned: Fraction, scale: Scale, turnsPerSpindle: Fraction, zero: Zero = atZero): Reading {
  const { side } = zero;
  const stepsPerTurn = scale.marksPerTurn * scale.vernierLines;
  const perSpindle = turnsPerSpindle.mul(stepsPerTurn);
  const place = placeOf(zero, turned).mul(perSpindle);
  const shown = nearestStep(place, side);
  const step = floorMod(Number(shown % BigInt(stepsPerTurn)), stepsPerTurn);
  const tooFar = side === "plus" ? rational(shown).sub(place) : place.sub(shown);
  return {
    turns: side === "plus" ? zerosBelow(shown, stepsPerTurn) : zerosFrom(zero.start.mul(perSpindle), shown, stepsPerTurn),
    mark: Math.floor(step / scale.vernierLines),
    line: step % scale.vernierLines,
    side,
    figure: scale.figures === "angle" ? toExact(rational(step, stepsPerTurn).div(turnsPerSpindle)) : null,
    errorArcSeconds: tooFar.div(perSpindle).mul(arcSecondsPerTurn).valueOf(),
  };
}

/** The nearest step of a scale; half-way it is the one further on, which lies below on the minus side. */
function nearestStep(place: Fraction, side: Side): bigint {
  const half = rational(1, 2);
  const nearest = side === "plus" ? place.add(half).floor() : place.sub(half).ceil();
  return nearest.s * nearest.n;
}

/** Zeros passed from the scale's own zero up to a step, that of the step itself among them. */
function zerosBelow(step: bigint, stepsPerTurn: number): number {
  return Number(step / BigInt(stepsPerTurn));
}

/** Zeros passed down to a step since tooth 1, that of the step itself among them and that of tooth 1 not. */
function zerosFrom(start: Fraction, step: bigint, stepsPerTurn: number): number {
  const above = (each: bigint) => rational(each, stepsPerTurn).ceil();
  return Number(above(nearestStep(start, "minus")).sub(above(step)));
}

/** Reads a circle as a scale of its holes: the nearest hole to an angle of the spindle, and what it leaves. */
export function nearestHoleAt(angle: Fraction, circle: number, wormRatio: Exact): Reading {
  return readScaleAt(angle, { marksPerTurn: circle, vernierLines: 1, figures: "marks" }, fromExact(wormRatio));
}

/** How positions lie against the zero of the scales. */
export interface ZeroOptions {
  /** Where the ring stands at tooth 1, in revolutions, 0 or more; left out, at its zero. */
  readonly startAngle?: Exact | undefined;
  /** Which way the scales go from there; left out, `"plus"`. */
  readonly side?: Side | undefined;
}

/** Checks how positions lie against the zero of the scales. */
export function checkZero({ startAngle = "0", side = "plus" }: ZeroOptions): Zero {
  return { start: checkAngleFromZero(startAngle, "startAngle"), side };
}

/** One position of a count by the scales of a head. */
export interface DialPosition {
  /** 1 to the count; tooth 1 lies at the start angle. */
  readonly tooth: number;
  /**
   * Where it truly lies on the ring, in revolutions from the zero, 0 or more: on the plus side the
   * start angle and what the work has turned, on the minus side the start angle less that.
   */
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
export function dialReadings(head: Head, divisions: number, options: ZeroOptions = {}): DialTable {
  checkDivisions(divisions);
  if (divisions > mostPositions) {
    refuse(
      "too-many",
      "divisions",
      `${groupDigits(divisions)} positions are too many to list; give at most ${groupDigits(mostPositions)}`,
    );
  }
  if (head.dial === null && head.ring === null)
    refuse("not-owned", "head", "has neither dial nor ring to read; describe one in the head file");
  const zero = checkZero(options);
  const positions = Array.from({ length: divisions }, (_, index): DialPosition => {
    return { tooth: index + 1, ...scalesAt(head, rational(index, divisions), zero) };
  });
  return { divisions, positions, worstDial: worst(positions, "dial"), worstRing: worst(positions, "ring") };
}

/** Both scales of a head, and the true place on them, when the work has turned so far since tooth 1: less than a turn. */
export function scalesAt(
  { dial, ring, wormRatio }: Pick<Head, "dial" | "ring" | "wormRatio">,
  turned: Fraction,
  zero: Zero,
): Pick<DialPosition, "angle" | "dial" | "ring"> {
  return {
    angle: angleOnScales(turned, zero),
    dial: dial && readScaleAt(turned, dial, fromExact(wormRatio), zero),
    ring: ring && { ...readScaleAt(turned, ring, rational(1), zero), turns: 0 },
  };
}

/** The true place on the ring, 0 or more, when the work has turned so far since tooth 1: less than a turn. */
export function angleOnScales(turned: Fraction, zero: Zero): Exact {
  const place = placeOf(zero, turned);
  return toExact(place.s < 0n ? place.add(1) : place);
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
