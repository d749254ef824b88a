import { checkAngle } from "../number/angle.ts";
import { checkKeys } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { fromExact, gcd, groupDigits, type Revolutions } from "../number/ratio.ts";
import type { Move } from "./move.ts";

/** What is asked for: a count of divisions, or one angle in revolutions. */
export type Target = { readonly divisions: number } | { readonly angle: Revolutions };

/** The greatest count that is answered. */
export const mostDivisions = 10_000_000;
/** The most teeth per move that can be asked for. */
const mostTeethPerMove = 1000;
/** The most teeth per move that is tried when nothing else is asked. */
export const usualTeethPerMove = 12;

/** Checks a count of divisions. */
export function checkDivisions(divisions: unknown, place = "divisions"): number {
  if (typeof divisions === "number" && Number.isInteger(divisions) && divisions >= 1 && divisions <= mostDivisions)
    return divisions;
  return refuse(
    wholeNumberFault(divisions),
    place,
    `${quoted(divisions)} is not a count of divisions; give a whole number from 1 to ${groupDigits(mostDivisions)}`,
  );
}

/** Checks the most teeth per move to try. */
export function checkTeethPerMove(most: unknown): number {
  if (typeof most === "number" && Number.isInteger(most) && most >= 1 && most <= mostTeethPerMove) return most;
  return refuse(
    wholeNumberFault(most),
    "teethPerMove",
    `${quoted(most)} is not a number of teeth per move; give a whole number from 1 to ${groupDigits(mostTeethPerMove)}`,
  );
}

/** The move that serves a target with the fewest teeth: one tooth of a count, or the angle itself. */
export function firstMove(target: Target): Move {
  if ("divisions" in target) return { divisions: checkDivisions(target.divisions), teeth: 1 };
  const { n, d } = fromExact(checkAngle(target.angle));
  return { divisions: Number(d), teeth: Number(n) };
}

/**
 * The moves that serve a target, the fewest teeth first.
 *
 * For a count: k teeth per move with k coprime to N, as otherwise the moves come back to the start
 * with teeth left out; k stays below N, as a whole turn of the work changes no position. For an
 * angle p/q of a turn there is one move, which is p of q divisions.
 */
export function movesFor(target: Target, most: number): readonly Move[] {
  const first = firstMove(target);
  if ("angle" in target) return [first];
  const { divisions } = first;
  const moves: Move[] = [first];
  for (let teeth = 2; teeth <= Math.min(most, divisions - 1); teeth += 1) {
    if (gcd(teeth, divisions) === 1) moves.push({ divisions, teeth });
  }
  return moves;
}

/**
 * Checks a target: a count or an angle, and not both.
 *
 * @throws {@link InputError} when it is neither or both, or is not allowed.
 */
export function checkTarget(target: Target): Target {
  checkKeys(target, ["divisions", "angle"], "target");
  if ("divisions" in target && "angle" in target)
    refuse("conflict", "target", "a count and an angle are both given; give one of divisions and angle");
  if (!("divisions" in target || "angle" in target))
    refuse("missing", "target", "neither a count nor an angle is given; give one of divisions and angle");
  if ("divisions" in target) return { divisions: checkDivisions(target.divisions) };
  return { angle: checkAngle(target.angle) };
}
