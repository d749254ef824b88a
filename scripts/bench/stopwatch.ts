/** The middle, the least and the greatest of some times, in milliseconds. */
export interface Times {
  readonly median: number;
  readonly least: number;
  readonly most: number;
}

/** Sums up some times. */
export function times(all: readonly number[]): Times {
  const sorted = all.toSorted((a, b) => a - b);
  return { median: sorted[sorted.length >> 1] ?? 0, least: sorted[0] ?? 0, most: sorted.at(-1) ?? 0 };
}

/** How long a piece of work takes, in milliseconds. */
export function timeOf(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Times two pieces of work in turn, so that what else the machine does falls on both alike. */
export function inTurn(
  runs: number,
  ours: () => number,
  baseline: () => number,
): { readonly ours: Times; readonly baseline: Times } {
  const [own, other]: [number[], number[]] = [[], []];
  for (let run = 0; run < runs; run += 1) {
    own.push(ours());
    other.push(baseline());
  }
  return { ours: times(own), baseline: times(other) };
}
