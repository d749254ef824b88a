import type Fraction from "fraction.js";
import { type Head, wormRatioOf } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { fromExact, gcd, type Ratio, type Revolutions, rational, revolutionsOf, toRevolutions } from "../number/ratio.ts";
import { atZero, type Side, type Zero } from "./zero.ts";

/** What a scale shows at a position: its own marks, rounded to the nearest it can show. */
export interface Reading {
  /**
   * How often the zero of the scale has come under its line: on the plus side from the zero itself, on
   * the minus side since tooth 1; below 0 where it went back past it. 0 on a ring, which is at the same
   * mark after each turn of the work.
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

/** How far the work has turned since tooth 1, n/d of a turn, not always in lowest terms; n is below 0 where it went back. */
export interface Turned {
  readonly n: bigint;
  readonly d: bigint;
}

/** A scale to be read at many places. */
export interface ScaleReader {
  /** What it shows when the work has turned so far. */
  read(turned: Turned): Reading;
  /** How far the work has turned once the scale is set to that. */
  set(turned: Turned): Turned;
  /** How far that is past the place, in arc-seconds. */
  error(turned: Turned): number;
}

/** The step that comes nearest, and how much further than the place it is: `over`/`of` of a turn of the work. */
interface Nearest {
  readonly shown: bigint;
  readonly over: bigint;
  readonly of: bigint;
}

/**
 * Reads a scale at places that are exact from one zero. Only the reading is rounded, half-way to the
 * mark further on, so the error of one position never adds to the next and is at most half the least
 * count.
 *
 * Whole numbers of any size: fractions in lowest terms would be most of the work of a long list.
 *
 * @param turnsPerSpindle - Turns of the scale for one of the spindle: the worm ratio for a dial, 1 for a ring.
 */
export function scaleReader(scale: Scale, turnsPerSpindle: Fraction, zero: Zero = atZero): ScaleReader {
  return readerOf(scale, turnsPerSpindle, zero, zerosOn(scale, turnsPerSpindle, zero));
}

/** A ring is at the same mark after each turn of the work, and no turns of it are counted. */
export function ringReader(ring: Scale, zero: Zero): ScaleReader {
  return readerOf(ring, rational(1), zero, () => 0);
}

/** How often the zero has come under its line, from the whole turns below a step and the steps beyond them. */
type Zeros = (turnsBelow: number, beyond: number) => number;

function readerOf(scale: Scale, turnsPerSpindle: Fraction, zero: Zero, zeros: Zeros): ScaleReader {
  const stepsPerTurn = BigInt(scale.marksPerTurn * scale.vernierLines);
  const steps = turnsPerSpindle.mul(stepsPerTurn);
  const nearest = nearestOn(steps, zero);
  return {
    read(turned) {
      const { shown, over, of } = nearest(turned);
      const turnsBelow = floorOf(shown, stepsPerTurn);
      const step = Number(shown - turnsBelow * stepsPerTurn);
      return {
        turns: zeros(Number(turnsBelow), step),
        mark: Math.floor(step / scale.vernierLines),
        line: step % scale.vernierLines,
        side: zero.side,
        figure: scale.figures === "angle" ? figureOf(step, steps) : null,
        errorArcSeconds: arcSecondsOf(over, of),
      };
    },
    set(turned) {
      const { start, side } = zero;
      const beyond = nearest(turned).shown * steps.d * start.d - start.s * start.n * steps.n;
      return { n: side === "plus" ? beyond : -beyond, d: steps.n * start.d };
    },
    error(turned) {
      const { over, of } = nearest(turned);
      return arcSecondsOf(over, of);
    },
  };
}

function zerosOn({ marksPerTurn, vernierLines }: Scale, turnsPerSpindle: Fraction, zero: Zero): Zeros {
  if (zero.side === "plus") return (turnsBelow) => turnsBelow;
  // Passed on the way down, that of the step itself among them and that of tooth 1 not.
  const stepsPerTurn = marksPerTurn * vernierLines;
  const { shown } = nearestOn(turnsPerSpindle.mul(stepsPerTurn), zero)({ n: 0n, d: 1n });
  const above = Number(-floorOf(-shown, BigInt(stepsPerTurn)));
  return (turnsBelow, beyond) => above - turnsBelow - (beyond > 0 ? 1 : 0);
}

/** Half-way between two steps it is the one further on, which lies below on the minus side. */
function nearestOn(steps: Fraction, { start, side }: Zero): (turned: Turned) => Nearest {
  const from = start.s * start.n;
  return ({ n, d }) => {
    const of = start.d * d;
    const place = side === "plus" ? from * d + n * start.d : from * d - n * start.d;
    const [inSteps, oneStep] = [place * steps.n, of * steps.d];
    const shown =
      side === "plus" ? floorOf(2n * inSteps + oneStep, 2n * oneStep) : -floorOf(oneStep - 2n * inSteps, 2n * oneStep);
    const above = shown * oneStep - inSteps;
    return { shown, over: side === "plus" ? above : -above, of: of * steps.n };
  };
}

function floorOf(numerator: bigint, denominator: bigint): bigint {
  const quotient = numerator / denominator;
  return numerator < 0n && quotient * denominator !== numerator ? quotient - 1n : quotient;
}

/** What the figures read at a step, in revolutions of the spindle. */
function figureOf(step: number, { n, d }: Fraction): Revolutions {
  const [numerator, denominator] = [step * Number(d), Number(n)];
  const common = gcd(numerator, denominator);
  return revolutionsOf(numerator / common, denominator / common);
}

/** What both scales of a head show. */
export interface BothScales {
  /** The handwheel dial, or null where the head has none. */
  readonly dial: Reading | null;
  /** The degree ring, or null where the head has none. */
  readonly ring: Reading | null;
}

/** Reads both scales of a head when the work has turned so far since tooth 1, be it more than a turn, or back. */
export function scalesReader(head: Pick<Head, "dial" | "ring" | "wormRatio">, zero: Zero): (turned: Turned) => BothScales {
  const { dial, ring } = head;
  const onDial = dial && scaleReader(dial, fromExact(wormRatioOf(head)), zero);
  const onRing = ring && ringReader(ring, zero);
  return (turned) => ({ dial: onDial?.read(turned) ?? null, ring: onRing?.read(turned) ?? null });
}

/** A circle read as a scale of its holes, counted from the start. */
export function holesReader(circle: number, wormRatio: Ratio): ScaleReader {
  return scaleReader({ marksPerTurn: circle, vernierLines: 1, figures: "marks" }, fromExact(wormRatio));
}

/** The places of a direct plate read as a scale, counted from the start. */
export function placesReader(places: number): ScaleReader {
  return scaleReader({ marksPerTurn: places, vernierLines: 1, figures: "marks" }, rational(1));
}

/** The true place on the ring, 0 or more, when the work has turned so far since tooth 1: less than a turn, and not back. */
export function angleOnScales({ n, d }: Turned, { start, side }: Zero): Revolutions {
  const of = start.d * d;
  const [from, on] = [start.s * start.n * d, n * start.d];
  const place = side === "plus" ? from + on : from - on;
  const within = place < 0n ? place + of : place;
  const [above, below] = [Number(within), Number(of)];
  if (!Number.isSafeInteger(above) || !Number.isSafeInteger(below)) return toRevolutions(rational(within, of));
  const common = gcd(above, below);
  return revolutionsOf(above / common, below / common);
}

/** As whole numbers. */
export function turnedBy({ s, n, d }: Fraction): Turned {
  return { n: s * n, d };
}

/** A part of a turn of the work in arc-seconds, as near as a number comes. */
export function arcSecondsOf(n: bigint, d: bigint): number {
  if (n === 0n) return 0;
  const numerator = n * BigInt(arcSecondsPerTurn);
  const [above, below] = [Number(numerator), Number(d)];
  return Number.isSafeInteger(above) && Number.isSafeInteger(below) ? above / below : rational(numerator, d).valueOf();
}
