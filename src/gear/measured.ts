import { numberFault, quoted } from "../number/errors.ts";
import type { FaultList } from "../number/fault-list.ts";
import { lengthSentence, type SaidLength, said } from "../number/length-sentence.ts";

/** What a measured number may be, both ends allowed. */
export interface Bounds {
  /** With its article: `"a diameter"`. */
  readonly what: string;
  readonly least: number;
  readonly most: number;
  /** A length in mm, which is said in the unit of the person; or the unit that a plain number always has. */
  readonly unit?: "length" | "mm" | "degrees";
}

/** Lengths of work that a dividing head or rotary table holds, with room to spare. */
export const lengthBounds = { least: 0.001, most: 100_000, unit: "length" } as const;

/**
 * Reads a measured number, such as a diameter read from a caliper. These are the only numbers
 * that come in as floats: gear geometry is not rational.
 */
export function readMeasured(value: unknown, place: string, bounds: Bounds, faults: FaultList): number {
  const { what, least, most, unit } = bounds;
  if (typeof value === "number" && value >= least && value <= most) return value;
  const problem =
    unit === "length"
      ? lengthSentence`${asGiven(value)} is not ${what}; give ${said.least(least)} to ${said.most(most)}`
      : `${quoted(value)} is not ${what}; give a number from ${least} to ${most}${unit === undefined ? "" : ` ${unit}`}`;
  faults.add(numberFault(value), place, problem);
  return least;
}

/** As {@link readMeasured}; undefined where nothing was given. */
export function readIfGiven(value: unknown, place: string, bounds: Bounds, faults: FaultList): number | undefined {
  return value === undefined ? undefined : readMeasured(value, place, bounds, faults);
}

/** What was given for a length, for the sentence that refuses it: it may be anything. */
export function asGiven(value: unknown): SaidLength | string {
  return typeof value === "number" && Number.isFinite(value) ? said.given(value) : quoted(value);
}
