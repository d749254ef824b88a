/** What a float that was worked out in several steps may be off by, as a part of itself: 4.9 is to stay 4.9. */
const lastBits = 1e-13;

/** The upper bound of a size at so many decimals: what is called *not over* is never over. */
export function roundedUp(size: number, places: number): number {
  const least = size - Math.abs(size) * lastBits;
  const units = 10 ** places;
  // A product may be rounded to a whole number that it is not: the bound itself is compared.
  const near = Math.round(size * units);
  const bound = [near - 1, near, near + 1].find((each) => each / units >= least);
  // Nothing is −0.
  return bound === undefined ? size : bound / units + 0;
}

/** The lower bound of a size at so many decimals: what is called *at least* is never under. */
export function roundedDown(size: number, places: number): number {
  return 0 - roundedUp(-size, places);
}
