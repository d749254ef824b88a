import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { floorMod, fromExact, inverseModulo, rational } from "../number/ratio.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import type { Zero } from "./zero.ts";

/** The work on the head: what is divided, and where everything stands at the start. */
export interface Work {
  readonly head: Head;
  /** Places in all, the start among them. They lie all round the work, as many parts of a turn. */
  readonly count: number;
  /** From one tooth to the next, in turns of the work. */
  readonly step: Fraction;
  /** The tooth at which pin and scales stand as they do at the start. */
  readonly startTooth: number;
  /** The hole of its circle that the pin stands in at the start. */
  readonly startHole: number;
  readonly zero: Zero;
  /** Whether the list may go back where that is nearer. */
  readonly direction: "forward" | "nearer";
}

/** The places of a target: the teeth of a count, or the angle made over and over until it comes back to the start. */
export function stepsOf(target: Target): Pick<Work, "count" | "step"> {
  if ("divisions" in target) return { count: target.divisions, step: rational(1, target.divisions) };
  const step = fromExact(target.angle);
  return { count: Number(step.d), step };
}

/** How far a tooth lies from the start, in steps: 0 to one below the count. */
export function stepsFromStart({ count, startTooth }: Work, tooth: number): number {
  return floorMod(tooth - startTooth, count);
}

/**
 * Where a tooth truly lies from the start, in parts of a turn of which the work has as many as
 * places: 0 to one below the count.
 */
export function partsTo(work: Work, tooth: number): number {
  const { count, step } = work;
  const steps = stepsFromStart(work, tooth);
  if (step.n === 1n) return steps;
  return Number((BigInt(steps) * step.n) % BigInt(count));
}

/** The move of a setting that reaches a tooth from the start: 0 to one below the count. */
export function moveTo(work: Work, { teethPerMove }: Setting | NearMove, tooth: number): number {
  const { count } = work;
  const steps = stepsFromStart(work, tooth);
  if (teethPerMove === 1 || count === 1) return steps;
  return Number((BigInt(steps) * BigInt(inverseModulo(floorMod(teethPerMove, count), count))) % BigInt(count));
}

/** The tooth that so many moves of a setting reach from the start. */
export function toothAfter({ count, startTooth }: Work, { teethPerMove }: Setting | NearMove, move: number): number {
  const steps = teethPerMove === 1 ? move : Number((BigInt(move) * BigInt(teethPerMove)) % BigInt(count));
  return 1 + floorMod(startTooth - 1 + (steps % count), count);
}

/**
 * The way from one place to the next round the work, in as many parts as it is divided in: always on,
 * or whichever way is less, and on where both are as far.
 */
export function wayRound({ count, direction }: Pick<Work, "count" | "direction">, from: number, to: number): number {
  const onward = floorMod(to - from, count);
  return direction === "nearer" && count - onward < onward ? onward - count : onward;
}
