import type Fraction from "fraction.js";
import type { OwnedCircle } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import { spindleTurnsPerMove } from "../mechanism/identity.ts";
import { byMounted } from "../methods/handling.ts";
import { type HeadLayout, partOfTurn } from "../methods/layout.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { furthestMultiple } from "../number/first-in-range.ts";
import { floorMod, fromExact, gcd, inverseModulo, type Ratio, rational, toRatio } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { ByNearestHole, ByScale, NearBy, NearFromZero } from "../setting/near-setting.ts";
import { closest } from "./closest.ts";
import { type Errors, figuresOf } from "./near-errors.ts";

/** Places that can be set: holes of a circle, or marks of a scale with its vernier. */
export interface Places {
  /** In one turn of the crank; of the spindle, for a ring. */
  readonly perTurn: number;
  /** Turns of what carries them for one turn of the spindle. */
  readonly turns: { readonly n: number; readonly d: number };
}

/** What is to be set, each position by itself: those of a count from the zero on, or the zero and one position at an angle. */
export interface Wanted {
  readonly move: Move;
  readonly isAngle: boolean;
}

/**
 * The circle on which the nearest hole to each position is least far off.
 *
 * The pin is never more than half a space from its place, whatever the count, and no error adds
 * to the next. On a circle of C holes a position lies r/b of a space from a hole, where b is the
 * denominator of R·C/N; every r comes up, so the worst is the one nearest to a half, and the
 * circle with the most holes is mostly, but not always, the best.
 *
 * @returns Null where the head has no circle, or one of its circles has a hole for every position.
 */
export function nearestHole(layout: HeadLayout, wanted: Wanted): NearFromZero | null {
  const { worm, mounted } = layout;
  const nearest = leastFarOff(layout.circles, ({ holes }) => ({ perTurn: holes, turns: worm }), wanted.move);
  const [circle] = nearest.toSorted((a, b) => byMounted(a, b, mounted) || b.holes - a.holes);
  return circle === undefined ? null : byHolesOf(layout, wanted, circle);
}

/** Each position by the nearest hole of one circle. */
export function byHolesOf(layout: HeadLayout, wanted: Wanted, { plate, face, holes }: OwnedCircle): NearBy<"nearest-hole"> {
  const { wormRatio } = layout;
  const by: ByNearestHole = { kind: "nearest-hole", method: "simple", wormRatio, circle: holes, plate, face, plateStopPin: "in" };
  return { ...eachFromZero(layout, wanted, { perTurn: holes, turns: layout.worm }), ...by };
}

/** Of what stands on the spindle itself. */
export const once: Places["turns"] = { n: 1, d: 1 };

/** Each position by the handwheel dial; null where there is none, or it has a mark for every position. */
export function byDial(layout: HeadLayout, wanted: Wanted): NearFromZero | null {
  return byScale(layout, wanted, layout.head.dial, "dial");
}

/**
 * Each position by the degree ring on the spindle; null where there is none. It may have a mark for every
 * position: it is still read by eye, and no setting is exact for that.
 */
export function byRing(layout: HeadLayout, wanted: Wanted): NearFromZero | null {
  return byScale(layout, wanted, layout.head.ring, "ring");
}

function byScale<Kind extends "dial" | "ring">(
  layout: HeadLayout,
  wanted: Wanted,
  scale: Scale | null,
  kind: Kind,
): NearFromZero | null {
  if (scale === null) return null;
  const turns = kind === "dial" ? layout.worm : once;
  const places = { perTurn: scale.marksPerTurn * scale.vernierLines, turns };
  // A dial with a mark for every position is an exact setting.
  if (kind === "dial" && spacing(places, wanted.move).parts === 1) return null;
  const { wormRatio } = kind === "dial" ? layout : layout.head;
  const by = { kind, method: kind, wormRatio, circle: null, plate: null, face: null, plateStopPin: null } as
    | (ByScale<"dial"> & { readonly wormRatio: Ratio })
    | ByScale<"ring">;
  return { ...eachFromZero(layout, wanted, places), ...by };
}

/**
 * What a ring's error counts as beside others: it is read by eye, no nearer than half of the least that
 * it shows, however near its marks fall (common practice, no source).
 */
export function asReadByEye({ placesPerTurn }: NearBy<"ring">, arcSeconds: number): number {
  return Math.max(arcSeconds, arcSecondsPerTurn / 2 / placesPerTurn);
}

type FromZeroAlike = Omit<
  NearFromZero,
  "kind" | "method" | "circle" | "plate" | "face" | "plateStopPin" | "small" | "vernierHoles" | "form"
>;

/** What all settings from one zero say alike. */
export function eachFromZero({ head }: HeadLayout, wanted: Wanted, places: Places): FromZeroAlike {
  return {
    moves: "from-zero",
    teethPerMove: 1,
    wormRatio: head.wormRatio,
    spindlePerMove: partOfTurn(wanted.move.divisions, wanted.move.teeth),
    turns: null,
    spaces: null,
    armsEnclose: null,
    placesPerTurn: places.perTurn,
    ...figuresOf(errorsOf(wanted, places)),
  } as const;
}

/** From one position to the next: so many `parts` of the way between two places past a place, in lowest terms. */
function spacing({ perTurn, turns }: Places, { divisions, teeth }: Move): { readonly step: number; readonly parts: number } {
  const numerator = turns.n * perTurn * teeth;
  const common = gcd(numerator, turns.d * divisions);
  const parts = (turns.d * divisions) / common;
  return { step: floorMod(numerator / common, parts), parts };
}

/**
 * Those on whose places the worst position of a count is least far off, equal ones together; none where one of them
 * has a place for every position.
 *
 * @param placesOf - Of each, on what turns alike.
 */
export function leastFarOff<On>(all: readonly On[], placesOf: (on: On) => Places, move: Move): readonly On[] {
  const best = closest<On>(Number.POSITIVE_INFINITY);
  for (const on of all) {
    const places = placesOf(on);
    const { residue, parts } = furthest(places, move);
    if (parts === 1) return [];
    // In turns of what carries the places.
    const error = residue / (parts * places.perTurn);
    if (best.takes(error)) best.offer(error, on);
  }
  return best.candidates;
}

/** How far the worst position of a count lies from a place, in `residue` of the `parts` between two places. */
interface Furthest {
  /** Steps from the zero. */
  readonly index: number;
  readonly residue: number;
  readonly parts: number;
}

/**
 * The position of a count furthest from a place; of equal ones the first.
 *
 * With a/b the places from one position to the next in lowest terms, position j lies j·a mod b
 * parts past a place: residue r comes up at j = r·a⁻¹ (mod b), or as far before a place at b − j. On a
 * whole worm ratio b divides the count, so the residue nearest to half of b is there; on a fractional
 * one it may lie beyond the last position, and the greatest that does not is found by Euclid.
 */
function furthest(places: Places, move: Move): Furthest {
  const { step, parts } = spacing(places, move);
  const residue = Math.floor(parts / 2);
  const past = Number((BigInt(inverseModulo(step, parts)) * BigInt(residue)) % BigInt(parts));
  const index = Math.min(past, parts - past);
  if (index < move.divisions) return { index, residue, parts };
  const far = furthestMultiple(BigInt(step), BigInt(parts), BigInt(move.divisions));
  return { index: Number(far.index), residue: Number(far.distance), parts };
}

/** The errors of all positions, those named measured on the mechanism. */
function errorsOf({ move, isAngle }: Wanted, places: Places): Errors {
  const perStep = rational(move.teeth, move.divisions);
  const perSpindle = rational(places.turns.n, places.turns.d).mul(places.perTurn);
  const stepPlaces = perStep.mul(perSpindle);
  // A ring turns with the spindle, as a crank would on a worm ratio of 1.
  const wormRatio = toRatio(rational(places.turns.n, places.turns.d));
  const nearestPlace = (steps: number) => stepPlaces.mul(steps).add(rational(1, 2)).floor();
  const errorAfter = (steps: number): Fraction => {
    const shown = Number(nearestPlace(steps));
    const at = { turns: Math.floor(shown / places.perTurn), spaces: shown % places.perTurn, circle: places.perTurn };
    const turned = shown === 0 ? rational(0) : fromExact(spindleTurnsPerMove({ wormRatio, ...at }));
    return turned.sub(perStep.mul(steps));
  };
  if (isAngle) {
    const error = errorAfter(1);
    return { closing: error, worst: error, worstTooth: 2, pitch: error };
  }
  const { index } = furthest(places, move);

  // Every step is the whole places in a step, or one place more; the last goes back to the zero itself.
  const last = move.divisions - 1;
  const short = stepPlaces.floor();
  const longSteps = nearestPlace(last).sub(short.mul(last));
  const misses = [errorAfter(last)];
  if (longSteps.valueOf() < last) misses.push(short.sub(stepPlaces).div(perSpindle));
  if (longSteps.n > 0n) misses.push(short.add(1).sub(stepPlaces).div(perSpindle));
  const pitch = misses.map((miss) => miss.abs()).reduce((a, b) => (a.compare(b) > 0 ? a : b));
  return { closing: errorAfter(move.divisions), worst: errorAfter(index), worstTooth: index + 1, pitch };
}
