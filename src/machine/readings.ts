import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { checkScale, type Scale } from "../head/scale.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { checkKeys } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import {
  floorMod,
  fromExact,
  isPositive,
  type Ratio,
  type Revolutions,
  rational,
  toRatio,
  toRevolutions,
} from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { checkDivisions } from "../setting/target.ts";
import { checkListed } from "./listed.ts";
import { atZero, checkZero, placeOnScales, type Side, type Zero, type ZeroOptions, zeroKeys } from "./zero.ts";

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
  readonly figure: Revolutions | null;
  /** Where setting to the reading leaves the work, in arc-seconds; + is too far. */
  readonly errorArcSeconds: number;
}

/**
 * The finest step that a scale shows, in arc-seconds of the spindle.
 *
 * @param turnsPerSpindle - Turns of the scale for one of the spindle: the worm ratio for a dial; left out, 1, as of a ring.
 * @throws {@link InputError} when the scale is none, or the turns are no ratio above 0.
 *
 * @example
 * ```ts
 * leastCountArcSeconds({ marksPerTurn: 360, vernierLines: 12, figures: "angle" }); // 300
 * ```
 */
export function leastCountArcSeconds(scale: Scale, turnsPerSpindle: Ratio = toRatio(rational(1))): number {
  const { marksPerTurn, vernierLines } = checkScale(scale, "scale");
  const turns = fromExact(turnsPerSpindle);
  if (!isPositive(turns))
    refuse("out-of-range", "turnsPerSpindle", `${quoted(turnsPerSpindle)} is not above 0; give the worm ratio for a dial`);
  return rational(arcSecondsPerTurn, marksPerTurn * vernierLines)
    .div(turns)
    .valueOf();
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
  const { shown, tooFar } = nearest(turned, perSpindle, zero);
  const step = floorMod(Number(shown % BigInt(stepsPerTurn)), stepsPerTurn);
  return {
    turns: side === "plus" ? zerosBelow(shown, step, stepsPerTurn) : zerosFrom(zero.start.mul(perSpindle), shown, stepsPerTurn),
    mark: Math.floor(step / scale.vernierLines),
    line: step % scale.vernierLines,
    side,
    figure: scale.figures === "angle" ? toRevolutions(rational(step, stepsPerTurn).div(turnsPerSpindle)) : null,
    errorArcSeconds: tooFar.mul(arcSecondsPerTurn).valueOf(),
  };
}

/** Where a scale that is set to what comes nearest leaves the work, in turns since tooth 1. */
export function setOnScale(turned: Fraction, scale: Scale, turnsPerSpindle: Fraction, zero: Zero): Fraction {
  return turned.add(nearest(turned, turnsPerSpindle.mul(scale.marksPerTurn * scale.vernierLines), zero).tooFar);
}

/** How far further than a place that leaves the work, in arc-seconds, of a scale with so many steps for one turn of the work. */
export function errorOnScale(turned: Fraction, stepsPerSpindle: Fraction, zero: Zero): number {
  return nearest(turned, stepsPerSpindle, zero).tooFar.mul(arcSecondsPerTurn).valueOf();
}

/** The step that comes nearest to a place, and how much further it leaves the work, in turns of the spindle. */
function nearest(turned: Fraction, stepsPerSpindle: Fraction, zero: Zero): { readonly shown: bigint; readonly tooFar: Fraction } {
  const place = placeOnScales(zero, turned).mul(stepsPerSpindle);
  const shown = nearestStep(place, zero.side);
  const tooFar = zero.side === "plus" ? rational(shown).sub(place) : place.sub(shown);
  return { shown, tooFar: tooFar.div(stepsPerSpindle) };
}

/** The nearest step of a scale; half-way it is the one further on, which lies below on the minus side. */
function nearestStep(place: Fraction, side: Side): bigint {
  const half = rational(1, 2);
  const nearest = side === "plus" ? place.add(half).floor() : place.sub(half).ceil();
  return nearest.s * nearest.n;
}

/** Zeros passed from the scale's own zero up to a step, that of the step itself among them; `beyond` are those since the last. */
function zerosBelow(step: bigint, beyond: number, stepsPerTurn: number): number {
  return Number((step - BigInt(beyond)) / BigInt(stepsPerTurn));
}

/** Zeros passed down to a step since tooth 1, that of the step itself among them and that of tooth 1 not. */
function zerosFrom(start: Fraction, step: bigint, stepsPerTurn: number): number {
  const above = (each: bigint) => rational(each, stepsPerTurn).ceil();
  return Number(above(nearestStep(start, "minus")).sub(above(step)));
}

/** Reads a circle as a scale of its holes: the nearest hole to an angle of the spindle, and what it leaves. */
export function nearestHoleAt(angle: Fraction, circle: number, wormRatio: Ratio): Reading {
  return readScaleAt(angle, { marksPerTurn: circle, vernierLines: 1, figures: "marks" }, fromExact(wormRatio));
}

/** One position of a count by the scales of a head. */
export interface DialPosition {
  /** 1 to the count; tooth 1 lies at the start angle. */
  readonly tooth: number;
  /**
   * Where it truly lies on the ring, in revolutions from the zero, 0 or more: on the plus side the
   * start angle and what the work has turned, on the minus side the start angle less that.
   */
  readonly angle: Revolutions;
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

/**
 * The readings of every position of a count on a head's dial and ring, from one zero.
 *
 * @param head - The head, or one that was prepared.
 * @throws {@link InputError} when the count or an option is not allowed, there are over 100,000
 * places, or the head has neither dial nor ring.
 *
 * @example
 * ```ts
 * dialReadings(readyHeads[0], 90, { startAngle: parseAngle("124°"), side: "minus" }).positions[1].ring.mark; // 120
 * ```
 */
export function dialReadings(head: Head | PreparedHead, divisions: number, options: ZeroOptions = {}): DialTable {
  const owned = headOf(head);
  checkDivisions(divisions);
  checkListed(divisions, "divisions");
  checkKeys(options, zeroKeys, "options");
  if (owned.dial === null && owned.ring === null)
    refuse("not-owned", "head", "has neither dial nor ring to read; describe one in the head file");
  const zero = checkZero(options);
  const positions = Array.from({ length: divisions }, (_, index): DialPosition => {
    return { tooth: index + 1, ...scalesAt(owned, rational(index, divisions), zero) };
  });
  return { divisions, positions, worstDial: worst(positions, "dial"), worstRing: worst(positions, "ring") };
}

/** Both scales of a head, and the true place on them, when the work has turned so far since tooth 1: less than a turn. */
export function scalesAt(
  head: Pick<Head, "dial" | "ring" | "wormRatio">,
  turned: Fraction,
  zero: Zero,
): Pick<DialPosition, "angle" | "dial" | "ring"> {
  return { angle: angleOnScales(turned, zero), ...scalesShow(head, turned, zero) };
}

/** What both scales of a head show when the work has turned so far since tooth 1, be it more than a turn, or back. */
export function scalesShow(
  { dial, ring, wormRatio }: Pick<Head, "dial" | "ring" | "wormRatio">,
  turned: Fraction,
  zero: Zero,
): Pick<DialPosition, "dial" | "ring"> {
  return {
    dial: dial && readScaleAt(turned, dial, fromExact(wormRatio), zero),
    ring: ring && { ...readScaleAt(turned, ring, rational(1), zero), turns: 0 },
  };
}

/** The true place on the ring, 0 or more, when the work has turned so far since tooth 1: less than a turn. */
export function angleOnScales(turned: Fraction, zero: Zero): Revolutions {
  const place = placeOnScales(zero, turned);
  return toRevolutions(place.s < 0n ? place.add(1) : place);
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
