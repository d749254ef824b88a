import { numberFault, quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { mmPerInch } from "../number/length-unit.ts";

/** A form cutter for gear teeth: its number in its set, and the counts it is for. Go by the counts. */
export interface FormCutter {
  /** `"5"`, `"5 1/2"`. */
  readonly number: string;
  readonly from: number;
  /** Null where it goes up to a rack. */
  readonly to: number | null;
}

/** The cutters for one gear, in both numberings, from the set of 8 and from the set with half numbers. */
export interface FormCutters {
  /** Inch numbering: 1 is the rack end. */
  readonly inch: FormCutter;
  /** Inch numbering with half numbers; null outside 2 to 8 DP, for which alone they are made. */
  readonly inchHalf: FormCutter | null;
  /** Reversed numbering, in which many module sets are stamped: 8 is the rack end. */
  readonly reversed: FormCutter;
  /** Reversed numbering with half numbers; null as above. */
  readonly reversedHalf: FormCutter | null;
}

/**
 * Where each cutter's range begins in the inch numbering: of the set of 8, and of the half numbers
 * between (a half number takes over the upper part of the range of the next whole number).
 *
 * *Practical Treatise on Milling and Milling Machines*, p. 149. Cutter 4 1/2 is printed there as 23
 * to 35, which overlaps cutter 4; here it ends where cutter 5 ends, as all the others do. Cutter
 * 7 1/2 could not be read there and is from memory. The reversed numbering is common practice and
 * from memory: the same ranges, number n stamped 9 − n.
 */
const ranges = [
  { number: 1, from: 135 },
  { number: 1.5, from: 80 },
  { number: 2, from: 55 },
  { number: 2.5, from: 42 },
  { number: 3, from: 35 },
  { number: 3.5, from: 30 },
  { number: 4, from: 26 },
  { number: 4.5, from: 23 },
  { number: 5, from: 21 },
  { number: 5.5, from: 19 },
  { number: 6, from: 17 },
  { number: 6.5, from: 15 },
  { number: 7, from: 14 },
  { number: 7.5, from: 13 },
  { number: 8, from: 12 },
] as const;

/** The pitches that half numbers are made for (the same page); the same pitch in modules has its diametral pitch reckoned. */
const halfNumberPitches = { least: 2, most: 8 };
/** What reckoning a diametral pitch from a module may add: 8 DP is 8 DP. */
const lastBits = 1e-9;

/** One more than the last number of a set: what the two numberings of a cutter add up to. */
const bothNumberings = 9;

/** The fewest teeth that the sets of form cutters go down to. */
export const fewestFormCutTeeth = 12;

/**
 * The form cutters for a gear, by number *and* range: in some sets the numbers run the other way,
 * so only the range is safe to go by.
 *
 * @param gear - Its count of teeth, and its module in mm; a {@link SpurGear} has both.
 * @returns Null below 12 teeth, where no cutter of the sets serves.
 * @throws {@link InputError} when the count is not a whole number above 0, or the module no number above 0.
 * @see *Practical Treatise on Milling and Milling Machines*, p. 149.
 *
 * @example
 * ```ts
 * formCutters({ teeth: 45, module: 2 }).inch; // { "number": "3", "from": 35, "to": 54 }
 * formCutters({ teeth: 45, module: 2 }).inchHalf; // null
 * ```
 */
export function formCutters(gear: { readonly teeth: number; readonly module: number }): FormCutters | null {
  if (typeof gear !== "object" || gear === null)
    refuse("unreadable", "gear", `${quoted(gear)} is not a gear; give one, or its teeth and module`);
  const { teeth, module } = gear;
  if (!(Number.isInteger(teeth) && teeth > 0)) {
    refuse(wholeNumberFault(teeth), "teeth", `${quoted(teeth)} is not a count of teeth; give a whole number above 0`);
  }
  if (!(typeof module === "number" && module > 0))
    refuse(numberFault(module), "module", `${quoted(module)} is not a module; give a number above 0`);
  if (teeth < fewestFormCutTeeth) return null;
  const whole = inSet(
    ranges.filter(({ number }) => Number.isInteger(number)),
    teeth,
  );
  const half = hasHalfNumbers(module) ? inSet(ranges, teeth) : null;
  return {
    inch: stamped(whole.number, whole),
    inchHalf: half && stamped(half.number, half),
    reversed: stamped(bothNumberings - whole.number, whole),
    reversedHalf: half && stamped(bothNumberings - half.number, half),
  };
}

function hasHalfNumbers(module: number): boolean {
  const pitch = mmPerInch / module;
  return pitch >= halfNumberPitches.least - lastBits && pitch <= halfNumberPitches.most + lastBits;
}

interface Range {
  readonly number: number;
  readonly from: number;
}

/** The cutter of a set, listed from the rack down, whose range holds a count. */
function inSet(set: readonly Range[], teeth: number): Range & { readonly to: number | null } {
  const index = set.findIndex(({ from }) => from <= teeth);
  const { number, from } = set[index] ?? { number: 8, from: fewestFormCutTeeth };
  const next = set[index - 1];
  return { number, from, to: next === undefined ? null : next.from - 1 };
}

function stamped(number: number, { from, to }: { readonly from: number; readonly to: number | null }): FormCutter {
  return { number: Number.isInteger(number) ? String(number) : `${Math.floor(number)} 1/2`, from, to };
}
