import { type LengthUnit, mmPerInch } from "../number/length-unit.ts";
import { fixed, roundedDown, roundedUp } from "./numbers.ts";

/** The unit that the person works in. Data are always in millimetres. */
export type Unit = LengthUnit;

/** Writes lengths that are given in mm, in the unit of the person: `176.000 mm` or `6.9291 in`. */
export interface LengthWords {
  readonly unit: Unit;
  /** The nearest that is shown. `places` are decimals of a millimetre, 3 where left out; an inch has one more. */
  (mm: number, places?: number): string;
  /** The nearest without the unit, for a column of figures. */
  bare(mm: number, places?: number): string;
  /** The length that stands there where this one is shown, in mm. */
  asShown(mm: number, places?: number): number;
  /** What may lie between two bounds, each rounded inwards with as many decimals as leave room: `41.347 mm to 41.417 mm`. */
  between(least: number, most: number): string;
  /** A bound from above, rounded upwards: nothing is longer than it says. */
  upTo(mm: number, places?: number): string;
  /** A bound from below, rounded downwards: nothing is shorter than it says. */
  downTo(mm: number, places?: number): string;
}

const usualPlaces = 3;

/** Where a window is narrower than its last decimal, it is given more, up to these. */
const mostPlaces = 6;

type Rounding = (size: number, places: number) => number;
const nearest: Rounding = (size, places) => Number(size.toFixed(places));

/** Lengths in the unit asked for. */
export function lengthsIn(unit: Unit): LengthWords {
  const mmPerUnit = unit === "mm" ? 1 : mmPerInch;
  const decimalsOf = (places: number) => (unit === "mm" ? places : Math.max(usualPlaces + 1, places + 1));
  const sizeOf = (rounded: Rounding, mm: number, places: number) => rounded(mm / mmPerUnit, decimalsOf(places));
  const figure =
    (rounded: Rounding) =>
    (mm: number, places = usualPlaces): string =>
      fixed(sizeOf(rounded, mm, places), decimalsOf(places));
  const words =
    (rounded: Rounding) =>
    (mm: number, places?: number): string =>
      `${figure(rounded)(mm, places)} ${unit}`;
  const [up, down] = [words(roundedUp), words(roundedDown)];
  return Object.assign(words(nearest), {
    unit,
    bare: figure(nearest),
    asShown: (mm: number, places = usualPlaces) => sizeOf(nearest, mm, places) * mmPerUnit,
    between(least: number, most: number): string {
      for (let places = usualPlaces; places <= mostPlaces; places += 1) {
        if (sizeOf(roundedUp, least, places) <= sizeOf(roundedDown, most, places)) {
          return `${up(least, places)} to ${down(most, places)}`;
        }
      }
      return `${words(nearest)((least + most) / 2)} as near as can be`;
    },
    upTo: up,
    downTo: down,
  });
}
