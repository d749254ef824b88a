import { type Head, mountedPlate, type OwnedCircle, wormRatioOf } from "../head/head.ts";
import { checkAngle } from "../number/angle.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import { fromExact, lcmOf, type Revolutions, rational, toRevolutions } from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import { bestCircleFor } from "./best-circle.ts";
import { checkListed } from "./listed.ts";
import { angleOnScales, holesReader, type Reading, scalesReader, type Turned } from "./scale-reader.ts";
import { atZero } from "./zero.ts";

/** One place of a work with unequal spaces, set by itself from the zero. */
export interface SpacedPlace {
  /** 1 and upwards; place 1 is the zero. */
  readonly place: number;
  /** From the zero, in revolutions. */
  readonly angle: Revolutions;
  /** Whole turns of the crank from the zero, and the hole counted from it; null where the head has no plate. */
  readonly turns: number | null;
  readonly hole: number | null;
  /** The crank move from the place before; 0 turns and 0 spaces at the zero. */
  readonly from: { readonly turns: number; readonly spaces: number } | null;
  /** Where the hole leaves the work, in arc-seconds; + is too far, 0 where exact, null without a plate. */
  readonly errorArcSeconds: number | null;
  readonly dial: Reading | null;
  readonly ring: Reading | null;
}

/** How a work with unequal spaces is set on a head. */
export interface UnequalSpacing {
  /** The one circle that all places are set on, or null where the head has no plate. */
  readonly circle: OwnedCircle | null;
  /** Whether every place falls on a hole of it. */
  readonly exact: boolean;
  /** The greatest error of any place by its hole; null without a plate. */
  readonly worstArcSeconds: number | null;
  /** Whether the spaces make up whole turns of the work; where not, `left` is what the last misses of one. */
  readonly closes: boolean;
  /** What is left of the turn after the last space, in revolutions; 0 where it closes. */
  readonly left: Revolutions;
  readonly places: readonly SpacedPlace[];
}

/** How unequal spaces are set. */
export interface SpacingOptions {
  /** The plate that is on the head now, where it is not the head's own `mounted`. */
  readonly mounted?: string | undefined;
}

const spacingKeys = keysOf<SpacingOptions>({ mounted: true });

/** Parts of a turn that all steps may be whole numbers of, at most: far finer than any scale shows. */
const finestParts = 10n ** 15n;

/**
 * Sets a work whose spaces are not equal, such as a reamer: every place from one zero, on the one
 * circle that does best.
 *
 * The law: a place at the angle A is R·A turns of the crank from the zero, exactly so on a circle of
 * C holes when R·A·C is whole; else the nearest hole is named, with the error that it leaves. As each
 * place is counted from the zero, no error adds to the next.
 *
 * @param head - The head, or one that was prepared.
 * @param steps - From each place to the next, in revolutions; a last step back to the start may be given or left out.
 * @returns The circle on which all places are exact, the smallest first and the mounted plate
 * before others; where there is none, the circle with the least worst error.
 * @throws {@link InputError} when there is no step, one is not above 0, there are over 50,000, or
 * they are no whole multiples of a part of a turn above 1/10¹⁵.
 *
 * @example
 * ```ts
 * unequalSpacing(readyHeads[0], ["58°", "62°", "60°"].map(parseAngle)).circle.holes; // 18
 * ```
 */
export function unequalSpacing(
  head: Head | PreparedHead,
  steps: readonly Revolutions[],
  options: SpacingOptions = {},
): UnequalSpacing {
  const owned = headOf(head);
  checkKeys(options, spacingKeys, "options");
  const mounted = mountedPlate(owned, options.mounted);
  const { angles, beyond, whole } = anglesFrom(steps);
  const circle = bestCircleFor(owned, angles, mounted);
  const places = placesAt(owned, circle, angles);
  const worst = places.reduce((most, { errorArcSeconds }) => Math.max(most, Math.abs(errorArcSeconds ?? 0)), 0);
  return {
    circle,
    exact: circle !== null && worst === 0,
    worstArcSeconds: circle === null ? null : worst,
    closes: beyond === 0n,
    left: toRevolutions(beyond === 0n ? rational(0) : rational(whole - beyond, whole)),
    places,
  };
}

/** The places, and what the last step goes beyond a whole turn, in parts of which a turn has `whole`. */
interface Angles {
  readonly angles: readonly Turned[];
  readonly beyond: bigint;
  readonly whole: bigint;
}

/**
 * Every place from the zero, which is the first; that to which the steps come back is none of its own.
 * All are whole numbers of one part of a turn, which adds up with no fraction to bring to its lowest terms.
 */
function anglesFrom(steps: unknown): Angles {
  if (!Array.isArray(steps))
    refuse("unreadable", "steps", `${quoted(steps)} is not a list of angles; give each from a place to the next`);
  if (steps.length === 0) refuse("missing", "steps", "there are none; give the angle from each place to the next");
  checkListed(steps.length, "steps");
  const read = steps.map((step, index) => fromExact(checkAngle(step, `steps[${index}]`)));
  let whole = 1n;
  for (const [index, { d }] of read.entries()) {
    if (whole % d !== 0n) whole = lcmOf(whole, d);
    if (whole > finestParts)
      refuse(
        "out-of-range",
        `steps[${index}]`,
        "has too fine a common part with those before it; give all in degrees, minutes and seconds",
      );
  }
  let sum = 0n;
  const sums = [sum, ...read.map(({ n, d }) => (sum += n * (whole / d)))];
  const beyond = sum % whole;
  if (beyond === 0n) sums.pop();
  return { angles: sums.map((n) => ({ n, d: whole })), beyond, whole };
}

function placesAt(head: Head, circle: OwnedCircle | null, angles: readonly Turned[]): readonly SpacedPlace[] {
  let last = { turns: 0, hole: 0 };
  const scalesShow = scalesReader(head, atZero);
  const holes = circle && holesReader(circle.holes, wormRatioOf(head));
  return angles.map((turned, index) => {
    const { dial, ring } = scalesShow(turned);
    const angle = angleOnScales(turned, atZero);
    if (circle === null || holes === null)
      return { place: index + 1, angle, turns: null, hole: null, from: null, errorArcSeconds: null, dial, ring };
    const { turns, mark: hole, errorArcSeconds } = holes.read(turned);
    const spaces = (turns - last.turns) * circle.holes + hole - last.hole;
    last = { turns, hole };
    const from = { turns: Math.floor(spaces / circle.holes), spaces: spaces % circle.holes };
    return { place: index + 1, angle, turns, hole, from, errorArcSeconds, dial, ring };
  });
}
