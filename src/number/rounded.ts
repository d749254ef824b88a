/** What the last bit of a float may add to a bound that it does not have: 4.9 is to stay 4.9. */
const lastBit = 1e-9;

/** The upper bound of a size at so many decimals: what is called *not over* is never over. */
export function roundedUp(size: number, places: number): number {
  return Math.ceil(size * 10 ** places - lastBit) / 10 ** places;
}

/** The lower bound of a size at so many decimals: what is called *at least* is never under. */
export function roundedDown(size: number, places: number): number {
  return Math.floor(size * 10 ** places + lastBit) / 10 ** places;
}
