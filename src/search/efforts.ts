import type { TrialEffort } from "../methods/law.ts";
import { type Effort, effortOf, isCut } from "../number/effort.ts";
import type { Method } from "../setting/setting.ts";

/** The most steps that each part of an answer may take: see {@link Effort}. */
export interface Allowed {
  /** Compound settings: pairs of circles, and the moves on each. */
  readonly compound: number;
  /** Wide range settings: pairs of circles, one of each crank, for every number of teeth per move. */
  readonly wideRange: number;
  /** Differential settings: crank moves, and the trains of each. */
  readonly differential: number;
  /** What comes nearest. */
  readonly near: number;
  /** The nearest counts that can be done. */
  readonly counts: number;
  /** Gears that would do it if they were added. */
  readonly gears: number;
}

/**
 * Together less than half a second on a small machine. What a usual shop has takes less than a
 * hundredth of it: it is heads with hundreds of circles or gears that are cut short.
 */
export const usuallyAllowed: Allowed = {
  compound: 1_000_000,
  wideRange: 2_000_000,
  differential: 3_000_000,
  near: 1_500_000,
  counts: 1_500_000,
  gears: 1_500_000,
};

/** What each part of one answer may still take. */
export type Efforts = Readonly<Record<keyof Allowed, Effort>>;

/** Starts one answer. */
export function effortsOf({ compound, wideRange, differential, near, counts, gears }: Allowed): Efforts {
  return {
    compound: effortOf(compound),
    wideRange: effortOf(wideRange),
    differential: effortOf(differential),
    near: effortOf(near),
    counts: effortOf(counts),
    gears: effortOf(gears),
  };
}

/** The methods that were not tried to their end. */
export function cutMethods({ compound, wideRange, differential }: TrialEffort): readonly Method[] {
  return [
    ...(isCut(wideRange) ? ["wide-range" as const] : []),
    ...(isCut(compound) ? ["compound" as const] : []),
    ...(isCut(differential) ? ["differential" as const] : []),
  ];
}

/** What of an answer was not tried to its end, on a head so large that it would take too long. */
export interface Untried {
  readonly code: "settings" | "near" | "nearest-counts" | "gears-to-add";
}

/** What was cut short. */
export function untriedOf(efforts: Efforts): readonly Untried[] {
  const cut: Readonly<Record<Untried["code"], boolean>> = {
    settings: cutMethods(efforts).length > 0,
    near: isCut(efforts.near),
    "nearest-counts": isCut(efforts.counts),
    "gears-to-add": isCut(efforts.gears),
  };
  return (Object.keys(cut) as Untried["code"][]).filter((code) => cut[code]).map((code) => ({ code }));
}

/** One effort for all that a trial may take. */
export function sharedBy(effort: Effort): TrialEffort {
  return { compound: effort, wideRange: effort, differential: effort };
}
