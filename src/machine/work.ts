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
  /** Places in all, the start among them. */
  readonly count: number;
  /** From one tooth to the next, in turns of the work. */
  readonly step: Fraction;
  /** The tooth at which pin and scales stand as they do at the start. */
  readonly startTooth: number;
  /** The hole of its circle that the pin stands in at the start. */
  readonly startHole: number;
  readonly zero: Zero;
  /** Whether the list may go back where that takes fewer moves. */
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

/** Where a tooth truly lies from the start, as a part of a turn of the work. */
export function turnedTo(work: Work, tooth: number): Fraction {
  const turned = work.step.mul(rational(stepsFromStart(work, tooth)));
  return turned.sub(turned.floor());
}

/** The move of a setting that reaches a tooth from the start: 0 to one below the count. */
export function moveTo(work: Work, { teethPerMove }: Setting | NearMove, tooth: number): number {
  const { count } = work;
  if (count === 1) return 0;
  const perTooth = BigInt(inverseModulo(floorMod(teethPerMove, count), count));
  return Number((BigInt(stepsFromStart(work, tooth)) * perTooth) % BigInt(count));
}

/** The tooth that so many moves of a setting reach from the start. */
export function toothAfter({ count, startTooth }: Work, { teethPerMove }: Setting | NearMove, move: number): number {
  const steps = (BigInt(move) * BigInt(teethPerMove)) % BigInt(count);
  return 1 + floorMod(startTooth - 1 + Number(steps), count);
}
