import type { Times } from "./stopwatch.ts";

/** One figure of the benchmarks: ours against a baseline of the same minute. */
export interface Figure {
  readonly name: string;
  readonly ours: Times;
  readonly baselineName: string;
  readonly baseline: Times;
  /** Median of ours over median of the baseline. */
  readonly ratio: number;
  /** The most that the ratio should be, or null where none is set. */
  readonly goal: number | null;
  /** Anything else worth knowing: counts, megabytes. */
  readonly note: string;
}

/** Puts a figure together. */
export function figure(
  name: string,
  { ours, baseline }: { readonly ours: Times; readonly baseline: Times },
  baselineName: string,
  goal: number | null,
  note = "",
): Figure {
  return { name, ours, baselineName, baseline, ratio: ours.median / baseline.median, goal, note };
}

/** A figure in one line. */
export function figureLine({ name, ours, baselineName, baseline, ratio, goal, note }: Figure): string {
  const goalWords = goal === null ? "" : ratio <= goal ? `, within ${goal}` : `, OVER ${goal}`;
  return `${name}\n    ${ratio.toFixed(2)} × ${baselineName}${goalWords}  (${ours.median.toFixed(1)} ms, least ${ours.least.toFixed(1)}; baseline ${baseline.median.toFixed(1)}, least ${baseline.least.toFixed(1)})${note === "" ? "" : `\n    ${note}`}`;
}
