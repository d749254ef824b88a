/** Keeps the candidates with the smallest error below a bar, ties together. */
export interface Closest<T> {
  /** Whether a candidate with this error would be kept: below the bar, and no further off than the nearest so far. */
  takes(error: number): boolean;
  /** The greatest error that it takes now. */
  most(): number;
  /** Gives it a candidate that it takes. */
  offer(error: number, candidate: T): void;
  readonly candidates: readonly T[];
}

/** Errors that differ by less than this part of themselves are ties; exact fractions decide later. */
const slack = 1e-11;

/**
 * Starts with no candidate.
 *
 * @param bar - Above 0; only errors below it are taken. All are sizes in one unit.
 */
export function closest<T>(bar: number): Closest<T> {
  let least = bar * (1 - 2 * slack);
  let candidates: T[] = [];
  return {
    takes: (error) => error <= least * (1 + slack),
    most: () => least * (1 + slack),
    offer(error, candidate) {
      if (error < least * (1 - slack)) candidates = [];
      if (candidates.length === 0) least = error;
      candidates.push(candidate);
    },
    get candidates() {
      return candidates;
    },
  };
}
