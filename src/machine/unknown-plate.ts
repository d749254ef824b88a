import { mostHoles } from "../head/plate.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { numberFault, quoted, refuse } from "../number/errors.ts";
import { checkMeasured, type MeasuredChord } from "./check-plate.ts";
import { chordFactor } from "./coordinates.ts";
import { checkDiameter } from "./drill-options.ts";

/** What is known of a circle besides its chords. */
export interface UnknownPlateOptions {
  /** How far any measure may be off either way, in mm; 0 or above. */
  readonly within: number;
  /** Of the circle, where it was measured as closely, in mm. */
  readonly diameter?: number | undefined;
}

/** A number of holes that the measures allow, or that comes nearest to them. */
export interface PlateCandidate {
  readonly holes: number;
  /** The diameter by which the measures fit best, in mm. */
  readonly diameter: number;
  /** The least and the greatest diameter that they allow for it, in mm. */
  readonly least: number;
  readonly most: number;
  /** With that diameter no measure is off by more, in mm. */
  readonly offMm: number;
}

/** What the measures of a circle tell of it. */
export interface UnknownPlate {
  /** The best fit first. */
  readonly candidates: readonly PlateCandidate[];
  /** Where none fits, the count that comes nearest; its diameters overlap nowhere, and `offMm` is above what was allowed. */
  readonly nearest: PlateCandidate | null;
  /** How many more fit, too many to be listed. */
  readonly unlisted: number;
  /**
   * Spaces over which one more chord, measured as closely, leaves one candidate alone whichever it is; null where there
   * is no choice, or no chord does.
   */
  readonly spacesToTellApart: number | null;
}

const optionKeys = keysOf<UnknownPlateOptions>({ within: true, diameter: true });
const mostListed = 12;

/**
 * Which count and diameter a circle has, from chords over a part of it that was counted.
 *
 * The law: chord = D·sin(π·spaces/N). A measure L ± w allows, for each N, the diameters from (L − w)/sin to (L + w)/sin; a
 * count fits where those of all measures have some in common. So the true one is never left out.
 *
 * @param measured - At least two over different spaces, or one with the diameter. Their `from` says nothing here.
 * @returns Of 2 to 10,000 holes, those that fit.
 * @throws {@link InputError} when a measure is not allowed, or too little was measured.
 *
 * @example
 * ```ts
 * plateFromChords([{ spaces: 10, length: 60.2 }], { diameter: 150, within: 0.1 }).candidates[0].holes; // 76
 * ```
 */
export function plateFromChords(measured: readonly MeasuredChord[], options: UnknownPlateOptions): UnknownPlate {
  checkKeys(options, optionKeys, "options");
  const chords = checkMeasured(measured, mostHoles);
  const within = checkWithin(options.within, chords);
  const diameter = options.diameter === undefined ? null : checkDiameter(options.diameter);
  if (diameter === null && new Set(chords.map(({ spaces }) => spaces)).size < 2)
    refuse(
      "missing",
      "measured",
      "chords over one number of spaces fit any count; measure one over another number, or the diameter",
    );
  const first = 1 + Math.max(...chords.map(({ spaces }) => spaces));
  const fits: PlateCandidate[] = [];
  let nearest: PlateCandidate | null = null;
  for (let holes = first; holes <= mostHoles; holes += 1) {
    const fit = fitOf(holes, chords, within, diameter);
    if (fit.least <= fit.most) fits.push(fit);
    if (nearest === null || fit.offMm < nearest.offMm) nearest = fit;
  }
  const candidates = fits.toSorted((one, other) => one.offMm - other.offMm).slice(0, mostListed);
  const unlisted = fits.length - candidates.length;
  return {
    candidates,
    nearest: fits.length > 0 ? null : nearest,
    unlisted,
    spacesToTellApart: unlisted > 0 ? null : toTellApart(candidates, within),
  };
}

function fitOf(holes: number, chords: readonly MeasuredChord[], within: number, measured: number | null): PlateCandidate {
  let [least, most] = measured === null ? [0, Number.POSITIVE_INFINITY] : [measured - within, measured + within];
  for (const { spaces, length } of chords) {
    const factor = chordFactor(spaces, holes);
    [least, most] = [Math.max(least, (length - within) / factor), Math.min(most, (length + within) / factor)];
  }
  const diameter = (least + most) / 2;
  const off = chords.map(({ spaces, length }) => Math.abs(length - diameter * chordFactor(spaces, holes)));
  return { holes, diameter, least, most, offMm: Math.max(...off, Math.abs(diameter - (measured ?? diameter))) };
}

/** The fewest spaces over which what each of the candidates may measure is clear of what any other may. */
function toTellApart(candidates: readonly PlateCandidate[], within: number): number | null {
  if (candidates.length < 2) return null;
  const inOrder = (spaces: number) =>
    candidates
      .map(({ holes, least, most }) => {
        const factor = chordFactor(spaces, holes);
        return { from: least * factor - within, to: most * factor + within };
      })
      .sort((one, other) => one.from - other.from);
  const fewest = Math.min(...candidates.map(({ holes }) => holes));
  for (let spaces = 1; spaces < fewest; spaces += 1) {
    const ranges = inOrder(spaces);
    if (ranges.every(({ from }, index) => from > (ranges[index - 1]?.to ?? Number.NEGATIVE_INFINITY))) return spaces;
  }
  return null;
}

function checkWithin(within: unknown, chords: readonly MeasuredChord[]): number {
  const shortest = Math.min(...chords.map(({ length }) => length));
  if (typeof within === "number" && within >= 0 && within < shortest) return within;
  return refuse(
    numberFault(within),
    "within",
    typeof within === "number" && within >= shortest
      ? "it is as large as a measure itself, which so tells nothing; measure closer, or over more spaces"
      : `${quoted(within)} is not how far a measure may be off; give millimetres from 0`,
  );
}
