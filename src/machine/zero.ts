import type Fraction from "fraction.js";
import { checkAngleFromZero } from "../number/angle.ts";
import { keysOf, oneOf } from "../number/check-options.ts";
import { noTurn, type Revolutions, rational } from "../number/ratio.ts";

/** Which way a scale goes as the work turns: on the plus side its figures rise, on the minus side they fall. */
export type Side = "plus" | "minus";

/** How positions lie against the zero of the scales. */
export interface ZeroOptions {
  /** Where the ring stands at tooth 1, in revolutions, 0 or more; left out, at its zero. */
  readonly startAngle?: Revolutions | undefined;
  /** Which way the scales go from there; left out, `"plus"`. */
  readonly side?: Side | undefined;
}

/** The keys of {@link ZeroOptions}. */
export const zeroKeys: readonly string[] = keysOf<ZeroOptions>({ startAngle: true, side: true });

/**
 * Checks how positions lie against the zero of the scales.
 *
 * @throws {@link InputError} when the start angle is none from 0 to 1,000 revolutions, or the side is no side.
 */
export function checkZero({ startAngle = noTurn, side = "plus" }: ZeroOptions): Zero {
  return { start: checkAngleFromZero(startAngle, "startAngle"), side: oneOf(side, ["plus", "minus"], "side") };
}

/** Where the scales stand at tooth 1, and which way they go from there. */
export interface Zero {
  /** Turns of the spindle, 0 or more. */
  readonly start: Fraction;
  readonly side: Side;
}

/** At the zero of the scales, and on the plus side. */
export const atZero: Zero = { start: rational(0), side: "plus" };
