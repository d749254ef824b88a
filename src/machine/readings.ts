import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { checkScale, type Scale } from "../head/scale.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { checkKeys } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import { fromExact, isPositive, type Ratio, type Revolutions, rational, toRatio } from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { checkDivisions } from "../setting/target.ts";
import { checkListed } from "./listed.ts";
import { angleOnScales, arcSecondsOf, type BothScales, scaleReader, scalesReader } from "./scale-reader.ts";
import { checkZero, type ZeroOptions, zeroKeys } from "./zero.ts";

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
export function leastCountArcSeconds(scale: Scale, turnsPerSpindle: Ratio = once): number {
  const { marksPerTurn, vernierLines } = checkScale(scale, "scale");
  return rational(arcSecondsPerTurn, marksPerTurn * vernierLines)
    .div(checkTurns(turnsPerSpindle))
    .valueOf();
}

/**
 * What is left at the end where the reading of one step is added to the last, over and over, instead of
 * each place being read from the one zero: in arc-seconds of the work, + too far.
 *
 * The law: with P places of the scale in a turn of the work, a step of 1/N of it is read as the nearest
 * whole p of P/N, and N of those leave N·p/P − 1 of a turn. In whole minutes that is 24′ at 53.
 *
 * @param turnsPerSpindle - Turns of the scale for one of the spindle: the worm ratio for a dial; left out, 1, as of a ring.
 * @throws {@link InputError} when the scale is none, the count is not allowed, or the turns are no ratio above 0.
 *
 * @example
 * ```ts
 * stepsAddedUp({ marksPerTurn: 240, vernierLines: 1, figures: "angle" }, 53, ratio(90)); // 1440
 * ```
 */
export function stepsAddedUp(scale: Scale, divisions: number, turnsPerSpindle: Ratio = once): number {
  const checked = checkScale(scale, "scale");
  const count = BigInt(checkDivisions(divisions));
  const { n, d } = scaleReader(checked, checkTurns(turnsPerSpindle)).set({ n: 1n, d: count });
  return arcSecondsOf(count * n - d, d);
}

const once = toRatio(rational(1));

function checkTurns(turnsPerSpindle: Ratio): Fraction {
  const turns = fromExact(turnsPerSpindle);
  if (isPositive(turns)) return turns;
  return refuse("out-of-range", "turnsPerSpindle", `${quoted(turnsPerSpindle)} is not above 0; give the worm ratio for a dial`);
}

/** One position of a count by the scales of a head. */
export interface DialPosition extends BothScales {
  /** 1 to the count; tooth 1 lies at the start angle. */
  readonly tooth: number;
  /**
   * Where it truly lies on the ring, in revolutions from the zero, 0 or more: on the plus side the
   * start angle and what the work has turned, on the minus side the start angle less that.
   */
  readonly angle: Revolutions;
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
 * @throws {@link InputError} when the count or an option is not allowed, there are over 50,000
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
  const scales = scalesReader(owned, zero);
  const positions = Array.from({ length: divisions }, (_, index): DialPosition => {
    const turned = { n: BigInt(index), d: BigInt(divisions) };
    return { tooth: index + 1, angle: angleOnScales(turned, zero), ...scales(turned) };
  });
  return { divisions, positions, worstDial: worst(positions, "dial"), worstRing: worst(positions, "ring") };
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
