import { arcSecondsPerTurn } from "./angle.ts";
import { numberFault, quoted, refuse } from "./errors.ts";
import { mmPerInch } from "./length-unit.ts";

/** A length in both measures of the shop. */
export interface Length {
  readonly mm: number;
  readonly inch: number;
}

const greatestRadiusMm = 100_000;

/**
 * How far off the work is at a radius when it is turned by so many arc-seconds too far or too little.
 *
 * The law: along the arc, radius · angle, the angle in radians. One minute at 50 mm is 0.0145 mm.
 *
 * @param arcSeconds - Of the work; its sign is kept.
 * @param radiusMm - In millimetres, above 0 to 100,000.
 * @throws {@link InputError} when either is not a number that can be used.
 *
 * @example
 * ```ts
 * errorAtRadius(60, 50).mm; // 0.01454…
 * ```
 */
export function errorAtRadius(arcSeconds: number, radiusMm: number): Length {
  if (typeof arcSeconds !== "number" || !Number.isFinite(arcSeconds)) {
    refuse(numberFault(arcSeconds), "arcSeconds", `${quoted(arcSeconds)} is not an angle in arc-seconds; give a number`);
  }
  if (typeof radiusMm !== "number" || !(radiusMm > 0 && radiusMm <= greatestRadiusMm)) {
    refuse(numberFault(radiusMm), "radiusMm", `${quoted(radiusMm)} is not a radius; give millimetres above 0, up to 100,000`);
  }
  const mm = (radiusMm * 2 * Math.PI * arcSeconds) / arcSecondsPerTurn;
  return { mm, inch: mm / mmPerInch };
}

/** The reverse: a length along the arc in arc-seconds of the work, of a length and a radius in mm that are known to be allowed. */
export function arcSecondsAlong(mm: number, radiusMm: number): number {
  return (mm / (2 * Math.PI * radiusMm)) * arcSecondsPerTurn;
}
