import {
  InputError,
  type LengthUnit,
  type Span,
  type SpurGear,
  type SpurGearSpec,
  spurGear,
  thinningFromSpan,
} from "../src/index.ts";
import { faultIn, lengthsIn } from "../src/words/index.ts";
import { fault, millimetres, millimetresFromZero, wholeNumber } from "./command-line.ts";
import type { gearOptions } from "./gear-option-table.ts";
import { type Given, withOptionNames } from "./read-options.ts";

/** The same, as they were given. */
export type GearGiven = Given<typeof gearOptions>;

/** What the library calls the things, and what the command does. */
export const optionNames: Readonly<Record<string, string>> = {
  teeth: "",
  module: "--module",
  diametralPitch: "--dp",
  pressureAngle: "--pressure-angle",
  profileShift: "--shift",
  depthRule: "--depth-rule",
  tipDiameter: "--outside",
  wholeDepth: "--depth",
  spans: "--span",
  thinning: "--thinning",
  fragment: "--chord",
  "fragment.height": "--height",
  mateTeeth: "--mate",
  centreDistance: "--centres",
  mateTipDiameter: "--mate-outside",
  turns: "--turns",
  mateTurns: "--mate-turns",
  most: "--most",
  limit: "--limit",
  damaged: "--damaged",
  startSpace: "--start-space",
  backlash: "--backlash",
  mateThinning: "--mate-thinning",
  "saw.depth": "--saw-depth",
  "saw.width": "--saw",
  "saw.leave": "--leave",
  offCentre: "--off-centre",
  arcSeconds: "--setting-error",
  startHole: "--start-hole",
  startAngle: "--start-angle",
  mounted: "--mounted",
  methods: "--method",
  teethPerMove: "--teeth-per-move",
};

/** Reads the count of teeth that a gear command begins with. */
export function teethAsked(positionals: readonly string[], example: string): number {
  const [text, more] = positionals;
  if (text === undefined) throw fault("missing", "", `how many teeth? Begin with the count, such as ${example}`);
  if (more !== undefined)
    throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one count of teeth, such as ${example}`);
  if (/^\d{1,6}$/.test(text.trim())) return Number(text);
  throw fault("unreadable", "", `"${text.slice(0, 40)}" is not a count of teeth; give a whole number, such as ${example}`);
}

/** The options that are lengths. */
const lengths = new Set([
  "outside",
  "depth",
  "span",
  "thinning",
  "pins",
  "chord",
  "height",
  "centres",
  "mate-outside",
  "backlash",
  "mate-thinning",
  "saw",
  "saw-depth",
  "leave",
  "off-centre",
  "diameter",
  "drill",
  "within",
  "step",
  "chords",
  "radius",
  "run-out",
  "hole-error",
  "circle-diameter",
  "across",
  "blank",
  "space",
  "lead",
]);

type AnyGiven = Readonly<Record<string, string | boolean | undefined>>;

/** The unit that the person works in: inches where the pitch is given in DP, or any length in inches. */
export function unitOf(given: AnyGiven): LengthUnit {
  const inInch = ([name, text]: [string, string | boolean | undefined]) => lengths.has(name) && /in|"/.test(String(text ?? ""));
  return given.dp !== undefined || Object.entries(given).some(inInch) ? "in" : "mm";
}

/**
 * Asks the library what the options say, and words what it refuses by the option that the person
 * wrote and in the unit that they work in.
 */
export function askedAs<Result>(
  given: AnyGiven,
  ask: () => Result,
  names: Readonly<Record<string, string>> = optionNames,
): Result {
  return withOptionNames(names, () => {
    try {
      return ask();
    } catch (error) {
      throw inUnitOf(given, error);
    }
  });
}

/** What the library refused, its lengths in the unit that the person works in; any other error as it is. */
export function inUnitOf(given: AnyGiven, error: unknown): unknown {
  if (!(error instanceof InputError)) return error;
  return new InputError(error.faults.map((each) => faultIn(unitOf(given), each)));
}

/** Whether a pitch was given, and with it all that a gear needs. */
export function pitchGiven({ module, dp }: GearGiven): boolean {
  return module !== undefined || dp !== undefined;
}

/** The gear of a count and a pitch, as the options describe it. */
export function gearFrom(teeth: number, given: GearGiven): SpurGear {
  if (given.module !== undefined && given.dp !== undefined)
    throw fault("conflict", "--module", "is given beside --dp; give one of the two");
  const spec = specFrom(teeth, given);
  const gear = askedAs(given, () => spurGear(spec));
  if (given.span === undefined) return gear;
  if (given.thinning !== undefined)
    throw fault("conflict", "--thinning", "is given beside --span, which tells it; give one of the two");
  const thinning = thinningOf(gear, readSpans(given.span), given);
  return askedAs(given, () => spurGear({ ...spec, thinning }));
}

function specFrom(teeth: number, given: GearGiven): SpurGearSpec {
  return {
    teeth,
    ...(given.module !== undefined && { module: number(given.module, "--module") }),
    ...(given.dp !== undefined && { diametralPitch: number(given.dp, "--dp") }),
    ...(given["pressure-angle"] !== undefined && {
      pressureAngle: number(given["pressure-angle"].replace(/\s*°\s*$/, ""), "--pressure-angle"),
    }),
    ...(given.shift !== undefined && { profileShift: number(given.shift, "--shift") }),
    ...(given["depth-rule"] !== undefined && { depthRule: given["depth-rule"] as SpurGearSpec["depthRule"] & string }),
    ...(given.outside !== undefined && { tipDiameter: millimetres(given.outside, "--outside") }),
    ...(given.depth !== undefined && { wholeDepth: millimetres(given.depth, "--depth") }),
    ...(given.thinning !== undefined && { thinning: millimetresFromZero(given.thinning, "--thinning") }),
  };
}

/** The sound teeth's own thinning, the mean of the spans measured on them. */
function thinningOf(gear: SpurGear, spans: readonly Span[], given: GearGiven): number {
  const names = { length: "--span", teeth: "--span" };
  const each = askedAs(given, () => spans.map((span) => thinningFromSpan(gear, span)), names);
  const mean = each.reduce((sum, thinning) => sum + thinning, 0) / each.length;
  if (mean >= 0) return mean;
  throw fault(
    "conflict",
    "--span",
    `the sound teeth measure ${lengthsIn(unitOf(given))(-mean)} thicker than drawn; check the pitch, the pressure angle and the count between the jaws, or give --shift`,
  );
}

/** Reads spans such as `55.38 over 10, 61.29 over 11`. */
export function readSpans(text: string): readonly Span[] {
  return text.split(",").map((each) => {
    const [, length, teeth] = /^\s*(.+?)\s+over\s+(\d{1,4})(?:\s+teeth)?\s*$/.exec(each) ?? [];
    if (length === undefined || teeth === undefined)
      throw fault(
        "unreadable",
        "--span",
        `"${each.trim().slice(0, 40)}" is not a span; write its length and the teeth between the jaws, such as "55.38 over 10"`,
      );
    return { length: millimetres(length, "--span"), teeth: wholeNumber(teeth, "--span") };
  });
}

/** Reads a plain number. */
export function number(text: string, place: string): number {
  if (/^\s*[+−-]?(?:\d{1,6}(?:\.\d{1,9})?|\.\d{1,9})\s*$/.test(text)) return Number(text.replace("−", "-"));
  throw fault("unreadable", place, `"${text.slice(0, 40)}" is not a number; give one such as 2 or 1.25`);
}
