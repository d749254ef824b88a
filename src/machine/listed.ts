import { refuse } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";

/** The most places that are listed at once. */
const mostPlaces = 50_000;

/**
 * Refuses a list of more places than are listed at once.
 *
 * @throws {@link InputError} when there are over 50,000.
 */
export function checkListed(count: number, place: string): void {
  if (count <= mostPlaces) return;
  refuse("too-many", place, `${groupDigits(count)} places are too many to list; give at most ${groupDigits(mostPlaces)}`);
}
