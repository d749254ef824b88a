import type { Head, Revolutions, Side, Target } from "../../src/index.ts";

/** A gear to repair, as it was typed: lengths in mm. */
export interface GearTyped {
  readonly teeth: number;
  /** In modules, or teeth to the inch. */
  readonly pitch: number;
  readonly system: "module" | "dp";
  /** In degrees. */
  readonly pressureAngle: number;
  readonly damaged: readonly number[];
  /** The most that the pair may have; null where it was not said. */
  readonly backlash: number | null;
}

/** Which teeth, in the order of work: those named, or all of a count, every so many-th first; null for all in the usual order. */
export type Teeth = readonly number[] | { readonly step: number } | null;

/** What is done: a count or an angle divided; or the repair of a gear. */
export type Work =
  | { readonly kind: "divide"; readonly target: Target; readonly teeth: Teeth }
  | { readonly kind: "repair"; readonly gear: GearTyped };

/** A job at the machine, with all that it takes to go on with it on another day. */
export interface Job {
  readonly head: Head;
  readonly work: Work;
  /** The way, by its own words; null for the best there is. */
  readonly way: string | null;
  readonly startHole: number;
  /** Where ring and dial stand at the start. */
  readonly startAngle: Revolutions;
  readonly side: Side;
  /** How many of its places are done. */
  readonly done: number;
}

/** Set out as most jobs are: from hole 0 and the zero of the scales, which rise from there. */
export function newJob(head: Head, work: Work, way: string | null): Job {
  return { head, work, way, startHole: 0, startAngle: "0" as Revolutions, side: "plus", done: 0 };
}
