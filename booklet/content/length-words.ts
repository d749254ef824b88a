/** Writes a length that is given in mm; `places` are decimals of a millimetre, 3 where left out. */
export type LengthWords = (mm: number, places?: number) => string;

const mmPerInch = 25.4;

/** Lengths in millimetres, and in inches beside them for those who work in inches: `176.000 mm (6.9291 in)`. */
export function lengthsIn(inches: boolean): LengthWords {
  return (mm, places = 3) => {
    const metric = `${fixed(mm, places)} mm`;
    return inches ? `${metric} (${fixed(mm / mmPerInch, Math.max(4, places + 1))} in)` : metric;
  };
}

/** A number with so many decimals and a true minus; nothing is −0. */
export function fixed(value: number, places: number): string {
  return (Math.abs(value) < 0.5 * 10 ** -places ? 0 : value).toFixed(places).replace("-", "−");
}

/** A plain number without needless decimals: `12.7`, `2`, `3.629`. */
export function plain(value: number, places = 3): string {
  return String(Number(value.toFixed(places)));
}

/** What must not be larger than it is said to be, rounded downwards. */
export function roundedDown(mm: number, places: number): number {
  return Math.floor(mm * 10 ** places + 1e-6) / 10 ** places;
}

/** What must not be smaller than it is said to be, rounded upwards. */
export function roundedUp(mm: number, places: number): number {
  return Math.ceil(mm * 10 ** places - 1e-6) / 10 ** places;
}
