import { leastTeeth, mostTeeth } from "../head/gearing.ts";
import { mostHoles } from "../head/plate.ts";
import { largestDrilled } from "../instead/missing-circles.ts";
import { usualGears } from "../instead/usual-gears.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";
import type { SearchOptions } from "../search/exact-settings.ts";
import { checkDivisions } from "../setting/target.ts";

/** What is asked of a kit. */
export interface CoverageOptions extends Pick<SearchOptions, "methods" | "teethPerMove"> {
  /** The first count of the range. */
  readonly from: number;
  /** The last count; at most 2,000 in all. */
  readonly to: number;
  /** A list of one's own, at most 200 counts, in the range or beyond it. */
  readonly want?: readonly number[] | undefined;
  /** The circles that could be had; left out, all to 200 holes, which a common plate can hold. */
  readonly circleSizes?: readonly number[] | undefined;
  /** The teeth of gears that could be had; left out, those that are in most sets of change gears. At most 100 sizes. */
  readonly gearSizes?: readonly number[] | undefined;
}

/** The options checked, and filled in. */
export interface KitAsked extends Pick<SearchOptions, "methods" | "teethPerMove"> {
  readonly from: number;
  readonly to: number;
  /** Ascending, each once; null where no list was given. */
  readonly want: readonly number[] | null;
  readonly circleSizes: readonly number[];
  readonly gearSizes: readonly number[];
}

const kitKeys = keysOf<CoverageOptions>({
  methods: true,
  teethPerMove: true,
  from: true,
  to: true,
  want: true,
  circleSizes: true,
  gearSizes: true,
});

/** A tenth of what a table takes: the counts are gone through anew for each plate lost. */
const mostCounts = 2000;
const mostWanted = 200;
const mostCircleSizes = 1000;
const mostGearSizes = 100;

const allDrilled: readonly number[] = Array.from({ length: largestDrilled - 1 }, (_, index) => index + 2);

/**
 * Checks what is asked of a kit.
 *
 * @throws {@link InputError} when a count, a size or a list is not allowed.
 */
export function checkKitOptions(options: CoverageOptions): KitAsked {
  checkKeys(options, kitKeys, "options");
  const { from, to, want, circleSizes = allDrilled, gearSizes = usualGears, ...search } = options;
  checkDivisions(from, "from");
  checkDivisions(to, "to");
  if (to < from) refuse("conflict", "to", `${to} is below ${from}; give the smaller count first`);
  if (to - from >= mostCounts)
    refuse(
      "too-many",
      "to",
      `${groupDigits(to - from + 1)} counts are too many to go through; give at most ${groupDigits(mostCounts)} at a time`,
    );
  return {
    ...search,
    from,
    to,
    want: want === undefined ? null : listOf(want, "want", mostWanted, "counts", (each, place) => checkDivisions(each, place)),
    circleSizes: listOf(circleSizes, "circleSizes", mostCircleSizes, "circles", sizeFrom(2, mostHoles, "holes in a circle")),
    gearSizes: listOf(gearSizes, "gearSizes", mostGearSizes, "gears", sizeFrom(leastTeeth, mostTeeth, "teeth of a gear")),
  };
}

/** A list, each of it checked; ascending, each once. */
function listOf(
  given: unknown,
  place: string,
  most: number,
  what: string,
  check: (each: unknown, place: string) => number,
): readonly number[] {
  if (!Array.isArray(given)) refuse("unreadable", place, `${quoted(given)} is not a list; give ${what} in a list`);
  if (given.length > most)
    refuse("too-many", place, `it has ${groupDigits(given.length)} ${what}; give at most ${groupDigits(most)}`);
  return [...new Set(Array.from(given, (each, index) => check(each, `${place}[${index}]`)))].sort((a, b) => a - b);
}

function sizeFrom(least: number, most: number, what: string): (each: unknown, place: string) => number {
  return (each, place) => {
    if (typeof each === "number" && Number.isInteger(each) && each >= least && each <= most) return each;
    return refuse(
      wholeNumberFault(each),
      place,
      `${quoted(each)} is not a number of ${what}; give ${least} to ${groupDigits(most)}`,
    );
  };
}
