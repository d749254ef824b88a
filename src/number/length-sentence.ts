import { type LengthUnit, mmPerInch } from "./length-unit.ts";
import { roundedDown, roundedUp } from "./rounded.ts";

/**
 * A length in a sentence, and how it is shown: a measure to the nearest, what is allowed rounded to
 * the side that is allowed, and what was given as it was given.
 */
export interface SaidLength {
  readonly mm: number;
  readonly as: "measure" | "least" | "most" | "given";
}

/** A sentence with lengths in it, which can be said in either unit: the words between them, and the lengths. */
export interface LengthSentence {
  /** One more than there are lengths. */
  readonly words: readonly string[];
  readonly lengths: readonly SaidLength[];
}

/** A sentence with lengths in it: said in millimetres, and taken apart so that it can be said in inches. */
export interface SaidProblem {
  readonly problem: string;
  readonly lengths: LengthSentence;
}

/** Writes a sentence with lengths in it, each marked by one of {@link said}. */
export function lengthSentence(text: TemplateStringsArray, ...values: readonly (SaidLength | string | number)[]): SaidProblem {
  const words = [text[0] ?? ""];
  const lengths: SaidLength[] = [];
  for (const [index, value] of values.entries()) {
    const after = text[index + 1] ?? "";
    if (typeof value === "object") {
      lengths.push(value);
      words.push(after);
    } else {
      words.push(`${words.pop()}${value}${after}`);
    }
  }
  const sentence: LengthSentence = { words, lengths };
  return { problem: saidIn("mm", sentence), lengths: sentence };
}

/** A length for a sentence, in mm: what is allowed, what the gear measures, what was given. */
export const said: Readonly<Record<SaidLength["as"], (mm: number) => SaidLength>> = {
  measure: (mm) => ({ mm, as: "measure" }),
  least: (mm) => ({ mm, as: "least" }),
  most: (mm) => ({ mm, as: "most" }),
  given: (mm) => ({ mm, as: "given" }),
};

/** The sentence in one of the units. */
export function saidIn(unit: LengthUnit, { words, lengths }: LengthSentence): string {
  return words.map((text, index) => `${lengthIn(unit, lengths[index - 1])}${text}`).join("");
}

/** A bound is shown to three figures at least, so that a small one does not become nothing. */
const leastFigures = 3;
/** As many as a length on the command line may have. */
const mostPlaces = 6;
/** Finer than any length that can be measured; no number is written with many more. */
const finestPlaces = 20;
const usualPlaces = { mm: 3, in: 4 } as const;

const roundings: Readonly<Record<SaidLength["as"], (size: number, places: number) => number>> = {
  measure: (size, places) => Number(size.toFixed(places)),
  given: (size) => Number(size.toFixed(mostPlaces)),
  least: roundedUp,
  most: roundedDown,
};

/** Nothing before the first words. */
function lengthIn(unit: LengthUnit, length: SaidLength | undefined): string {
  if (length === undefined) return "";
  const size = unit === "mm" ? length.mm : length.mm / mmPerInch;
  const figures = leastFigures - 1 - Math.floor(Math.log10(Math.abs(size)));
  const places = Math.min(finestPlaces, Math.max(usualPlaces[unit], figures));
  return `${roundings[length.as](size, places)} ${unit}`;
}
