import { numberFault, quoted } from "../number/errors.ts";
import type { FaultList } from "../number/fault-list.ts";

/** What a measured number may be, both ends allowed. */
export interface Bounds {
  /** With its article: `"a diameter"`. */
  readonly what: string;
  readonly least: number;
  readonly most: number;
  /** `"mm"`, `"degrees"`; left out for a plain number. */
  readonly unit?: string;
}

/** Lengths of work that a dividing head or rotary table holds, with room to spare. */
export const lengthBounds = { least: 0.001, most: 100_000, unit: "mm" } as const;

/**
 * Reads a measured number, such as a diameter read from a caliper. These are the only numbers
 * that come in as floats: gear geometry is not rational.
 */
export function readMeasured(value: unknown, place: string, { what, least, most, unit }: Bounds, faults: FaultList): number {
  if (typeof value === "number" && value >= least && value <= most) return value;
  const ofUnit = unit === undefined ? "" : ` ${unit}`;
  faults.add(numberFault(value), place, `${quoted(value)} is not ${what}; give a number from ${least} to ${most}${ofUnit}`);
  return least;
}

/** As {@link readMeasured}; undefined where nothing was given. */
export function readIfGiven(value: unknown, place: string, bounds: Bounds, faults: FaultList): number | undefined {
  return value === undefined ? undefined : readMeasured(value, place, bounds, faults);
}

/** Writes a number for a sentence: rounded to `places` decimals, no trailing zeros. */
export function shown(value: number, places = 3): string {
  return String(Number(value.toFixed(places)));
}
