import { checkKeys, keysOf } from "../number/check-options.ts";
import { arcSecondsAlong } from "../number/error-at-radius.ts";
import { numberFault, quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { fromExact, groupDigits, type Ratio, ratioOf } from "../number/ratio.ts";
import { chordFactor } from "./coordinates.ts";
import { checkDiameter, checkHoles, servesOn } from "./drill-options.ts";

/** A chord that was measured on a plate, from middle to middle of two holes. */
export interface MeasuredChord {
  /** The hole that it begins at, counted from 0; left out, 0. */
  readonly from?: number | undefined;
  /** Spaces from there to the other. 1 to one below the holes. */
  readonly spaces: number;
  /** In mm. */
  readonly length: number;
}

/** What a plate is checked by besides. */
export interface PlateCheckOptions {
  /** Of the circle, in mm; left out, that by which the chords fit best. */
  readonly diameter?: number | undefined;
  /** The worm ratio of the head that the plate serves on; left out, 40. */
  readonly servesRatio?: number | string | undefined;
}

/** A measured chord against the true one. */
export interface CheckedChord {
  readonly from: number;
  readonly to: number;
  /** As it was measured, in mm. */
  readonly length: number;
  /** What it is on a true circle of the diameter, in mm. */
  readonly trueLength: number;
  /** Measured less true, in mm. */
  readonly offMm: number;
  /**
   * How far the second hole so lies from its place against the first, along the circle, in mm; + is too far on. Null
   * of a chord nearly across the circle: that tells its diameter, and not where its holes are.
   */
  readonly alongMm: number | null;
  /** What that turns the spindle by too far, in arc-seconds. */
  readonly atSpindleArcSeconds: number | null;
}

/** A plate that was measured. */
export interface PlateCheck {
  readonly holes: number;
  /** As given, or by which the chords fit best; in mm. */
  readonly diameter: number;
  readonly diameterGiven: boolean;
  readonly servesRatio: Ratio;
  readonly chords: readonly CheckedChord[];
  /** The greatest of `alongMm` and of `atSpindleArcSeconds`, without sign; null where no chord tells. */
  readonly worstAlongMm: number | null;
  readonly atSpindleArcSeconds: number | null;
}

const chordKeys = keysOf<MeasuredChord>({ from: true, spaces: true, length: true });
const optionKeys = keysOf<PlateCheckOptions>({ diameter: true, servesRatio: true });
const usualRatio = ratioOf(40, 1);

/** Below this cosine of half the angle between its holes, a chord grows by less than a fifth of what the arc does. */
const leastTelling = 0.2;

/**
 * Holds the chords that were measured on a plate against those of a true circle.
 *
 * The law: chord = D·sin(π·spaces/N). Where the diameter is not given, the one that leaves the least squares. Along the
 * circle a hole is off by what its chord is off, divided by the cosine of half the angle between the holes.
 *
 * @param holes - Of the circle, 2 to 10,000.
 * @param measured - At least one, and without a diameter two.
 * @throws {@link InputError} when something is not allowed, or one chord alone is to tell diameter and holes.
 *
 * @example
 * ```ts
 * checkPlate(6, [{ spaces: 1, length: 40.1 }], { diameter: 80 }).chords[0].alongMm.toFixed(3); // "0.115"
 * ```
 */
export function checkPlate(holes: number, measured: readonly MeasuredChord[], options: PlateCheckOptions = {}): PlateCheck {
  checkHoles(holes);
  checkKeys(options, optionKeys, "options");
  const chords = checkMeasured(measured, holes);
  const servesRatio = servesOn(options.servesRatio, usualRatio);
  const given = options.diameter === undefined ? null : checkDiameter(options.diameter);
  if (given === null && chords.length < 2)
    refuse("missing", "measured", "one chord tells the diameter and nothing of its holes; measure another, or give the diameter");
  const diameter = given ?? diameterOf(chords, holes);
  const checked = chords.map((chord) => against(chord, holes, diameter, fromExact(servesRatio).valueOf()));
  return {
    holes,
    diameter,
    diameterGiven: given !== null,
    servesRatio,
    chords: checked,
    worstAlongMm: greatest(checked.map(({ alongMm }) => alongMm)),
    atSpindleArcSeconds: greatest(checked.map(({ atSpindleArcSeconds }) => atSpindleArcSeconds)),
  };
}

function diameterOf(chords: readonly MeasuredChord[], holes: number): number {
  let [products, squares] = [0, 0];
  for (const { spaces, length } of chords) {
    const factor = chordFactor(spaces, holes);
    products += factor * length;
    squares += factor * factor;
  }
  return products / squares;
}

function against({ from = 0, spaces, length }: MeasuredChord, holes: number, diameter: number, ratio: number): CheckedChord {
  const trueLength = diameter * chordFactor(spaces, holes);
  const offMm = length - trueLength;
  const telling = Math.cos((Math.PI * spaces) / holes);
  const alongMm = Math.abs(telling) < leastTelling ? null : offMm / telling;
  return {
    from,
    to: (from + spaces) % holes,
    length,
    trueLength,
    offMm,
    alongMm,
    atSpindleArcSeconds: alongMm === null ? null : arcSecondsAlong(alongMm, diameter / 2) / ratio,
  };
}

function greatest(sizes: readonly (number | null)[]): number | null {
  const known = sizes.flatMap((size) => (size === null ? [] : [Math.abs(size)]));
  return known.length === 0 ? null : Math.max(...known);
}

const mostChords = 1000;
const mostLength = 10_000;

/** Checks a list of chords; where the holes of the circle are not known, one of them may span any number. */
export function checkMeasured(measured: unknown, holes: number): readonly MeasuredChord[] {
  if (!Array.isArray(measured) || measured.length === 0)
    refuse(Array.isArray(measured) ? "missing" : "unreadable", "measured", "no chords were measured; give each with its spaces");
  if (measured.length > mostChords)
    refuse("too-many", "measured", `${measured.length} chords are too many; give at most ${groupDigits(mostChords)}`);
  return Array.from(measured, (chord: MeasuredChord, index) => {
    const place = `measured[${index}]`;
    checkKeys(chord, chordKeys, place);
    const { from = 0, spaces, length } = chord;
    if (!Number.isInteger(spaces) || spaces < 1 || spaces >= holes)
      refuse(
        wholeNumberFault(spaces),
        `${place}.spaces`,
        `${quoted(spaces)} is not a number of spaces between two holes; give 1 to ${groupDigits(holes - 1)}`,
      );
    if (!Number.isInteger(from) || from < 0 || from >= holes)
      refuse(
        wholeNumberFault(from),
        `${place}.from`,
        `${quoted(from)} is not a hole of the circle; give 0 to ${groupDigits(holes - 1)}`,
      );
    if (typeof length !== "number" || !(length > 0 && length <= mostLength))
      refuse(numberFault(length), `${place}.length`, `${quoted(length)} is not a length; give millimetres above 0`);
    return { from, spaces, length };
  });
}
