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
  /** A bound from above, rounded upwards: nothing is longer than it says. */
  upTo(mm: number, places?: number): string;
  /** A bound from below, rounded downwards: nothing is shorter than it says. */
  downTo(mm: number, places?: number): string;
}

const usualPlaces = 3;

type Rounding = (size: number, places: number) => number;
const nearest: Rounding = (size) => size;

/** Lengths in the unit asked for. */
export function lengthsIn(unit: Unit): LengthWords {
  const figure =
    (rounded: Rounding) =>
    (mm: number, places = usualPlaces): string => {
      const [size, decimals] = unit === "mm" ? [mm, places] : [mm / mmPerInch, Math.max(usualPlaces + 1, places + 1)];
      return fixed(rounded(size, decimals), decimals);
    };
  const words =
    (rounded: Rounding) =>
    (mm: number, places?: number): string =>
      `${figure(rounded)(mm, places)} ${unit}`;
  return Object.assign(words(nearest), { unit, bare: figure(nearest), upTo: words(roundedUp), downTo: words(roundedDown) });
}
