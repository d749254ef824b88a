import { type FaultCode, InputError } from "../src/index.ts";
import type { AtRadius } from "../src/words/index.ts";
import { type Options, options } from "./look-up-options.ts";
import { readOptions } from "./read-options.ts";

// Whole numbers and angles from a zero are read as the page for the screen reads them.
export { angleTyped as angleFromZero, wholeTyped as wholeNumber } from "../booklet/screen/numbers-typed.ts";

/** What the command was asked, still in words; an option that was not given is undefined. */
export interface Asked {
  /** What to look up, or the name of another job. */
  readonly question: string | undefined;
  /** Words after the question. */
  readonly rest: readonly string[];
  readonly options: Options;
}

/** Reads the command line; each mistake is one sentence. */
export function readCommandLine(words: readonly string[]): Asked {
  const negative = words.find((word) => /^-\d/.test(word));
  if (negative !== undefined)
    throw fault("out-of-range", "", `"${negative}" is below 0; give a count such as 127 or an angle such as 2°54'`);
  const { values, positionals } = readOptions(words, options, "--help");
  const [question, ...rest] = positionals;
  return { question, rest, options: values };
}

/** What the library calls the options. */
export const optionNames: Readonly<Record<string, string>> = {
  methods: "--method",
  teethPerMove: "--teeth-per-move",
  mounted: "--mounted",
  limit: "--limit",
  teeth: "--teeth",
  after: "--after",
  by: "--by",
  startHole: "--start-hole",
  startAngle: "--start-angle",
  radius: "--radius",
  radiusMm: "--radius",
  "setting.gears": "--gears",
};

const lengthPattern = /^\s*(\d{1,6}(?:\.\d{1,6})?)\s*(mm|in|")?\s*$/;

/** Reads a length that an option was given: plain millimetres, or inches with `in`. */
export function millimetres(text: string, place: string): number {
  const [, size, unit] = lengthPattern.exec(text) ?? [];
  const length = Number(size) * (unit === undefined || unit === "mm" ? 1 : 25.4);
  if (length > 0) return length;
  throw fault(
    "unreadable",
    place,
    `"${text.slice(0, 40)}" is not a length above 0; give millimetres such as 50, or inches such as 2in`,
  );
}

/** As a length, but 0 is one too. */
export function millimetresFromZero(text: string, place: string): number {
  return /^\s*0+(?:\.0+)?\s*(?:mm|in|")?\s*$/.test(text) ? 0 : millimetres(text, place);
}

/** Reads the radius of the work, with the unit that it was given in: answers are told in the same. */
export function radiusAsked({ radius }: { readonly radius?: string | undefined }): AtRadius | null {
  if (radius === undefined) return null;
  return { mm: millimetres(radius, "--radius"), unit: /in|"/.test(radius) ? "in" : "mm" };
}

/** One mistake, as the library's own type of refusal. */
export function fault(code: FaultCode, place: string, problem: string): InputError {
  return new InputError([{ code, place, problem }]);
}
