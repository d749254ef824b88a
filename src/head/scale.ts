import { InputError } from "../number/errors.ts";
import { type FaultList, faultList } from "../number/fault-list.ts";

/** A graduated scale: the degree ring on the spindle, or the dial on the handwheel. */
export interface Scale {
  /** Main marks round the whole scale. */
  readonly marksPerTurn: number;
  /** Lines of the vernier, each a like part of one main mark; 1 where there is no vernier. */
  readonly vernierLines: number;
  /** Whether its figures count marks, or the angle of the spindle in degrees and minutes. */
  readonly figures: "marks" | "angle";
}

/** A scale as written in a head file. */
export interface ScaleSpec {
  readonly marksPerTurn: number;
  readonly vernierLines?: number | undefined;
  readonly figures?: "marks" | "angle" | undefined;
}

/** The most marks of a scale, and lines of its vernier. */
export const mostMarks = 100_000;
export const mostLines = 120;

/** Checks a ring or dial of a spec; null where the head has none. */
export function readScale(value: unknown, place: string, usualFigures: Scale["figures"], faults: FaultList): Scale | null {
  return value === undefined || value === null ? null : readGiven(value, place, usualFigures, faults);
}

/**
 * Checks a scale that is asked about by itself.
 *
 * @throws {@link InputError} that lists every fault.
 */
export function checkScale(value: unknown, place: string): Scale {
  const faults = faultList();
  const scale = readGiven(value, place, "marks", faults);
  if (scale === null || faults.all.length > 0) throw new InputError(faults.all);
  return scale;
}

function readGiven(value: unknown, place: string, usualFigures: Scale["figures"], faults: FaultList): Scale | null {
  const spec = faults.object(value, place, ["marksPerTurn", "vernierLines", "figures"]);
  if (spec === null) return null;
  const { figures = usualFigures, vernierLines = 1 } = spec;
  if (figures !== "marks" && figures !== "angle") {
    faults.add(
      "unknown-word",
      `${place}.figures`,
      'give "marks" where the figures count marks, or "angle" where they are degrees',
    );
  }
  return Object.freeze({
    marksPerTurn: faults.wholeNumber(spec.marksPerTurn, `${place}.marksPerTurn`, 2, mostMarks),
    vernierLines: faults.wholeNumber(vernierLines, `${place}.vernierLines`, 1, mostLines),
    figures: figures === "angle" ? "angle" : "marks",
  });
}
