import type { OwnedCircle } from "../head/head.ts";
import { addCommonMultiples } from "../methods/circle-pairs.ts";
import { compoundSettings } from "../methods/compound.ts";
import { simpleSetting } from "../methods/crank.ts";
import { byHandling } from "../methods/handling.ts";
import type { CrankTurns, HeadLayout } from "../methods/layout.ts";
import { type Effort, take } from "../number/effort.ts";
import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { closest } from "./closest.ts";

/** Whole parts of a crank turn nearest to a move, and how far all the moves then miss the start. */
export interface NearestParts {
  readonly parts: number;
  /** In turns of the work, without sign. */
  readonly closing: number;
}

/**
 * The multiple of 1/`perTurn` of a crank turn nearest to the move R·k/N.
 *
 * With T such parts each move turns the work by T/(perTurn·R), and N moves miss k turns of the
 * work by (N·T − R·k·perTurn)/(R·perTurn). The numerator is a remainder to N, so the nearest T is
 * a division with rounding and no search. What goes beyond the safe integers is divided as a large one.
 */
export function nearestParts({ worm }: Pick<HeadLayout, "worm">, { divisions, teeth }: Move, perTurn: number): NearestParts {
  const whole = worm.n * teeth * perTurn;
  const perPart = divisions * worm.d;
  if (!Number.isSafeInteger(whole))
    return nearestOfMany(BigInt(worm.n) * BigInt(teeth) * BigInt(perTurn), perPart, worm.n * perTurn);
  const parts = Math.round(whole / perPart);
  return { parts, closing: Math.abs(perPart * parts - whole) / (worm.n * perTurn) };
}

function nearestOfMany(whole: bigint, perPart: number, of: number): NearestParts {
  const each = BigInt(perPart);
  const parts = (2n * whole + each) / (2n * each);
  const missed = each * parts - whole;
  return { parts: Number(parts), closing: Math.abs(Number(missed)) / of };
}

/**
 * The simple setting nearest to a move: over all circles, k teeth per move.
 *
 * @param bar - The closing error, in turns of the work, that it must better: half a step or less, which a crank that stands still never does.
 * @returns The easiest of the nearest to handle, exact or not; null where none betters the bar.
 */
export function nearSimple(layout: HeadLayout, move: Move, bar: number, effort: Effort): SettingBy<"simple"> | null {
  const nearest = closest<readonly [OwnedCircle, number]>(bar);
  if (!take(effort, layout.circles.length)) return null;
  for (const circle of layout.circles) {
    const { parts, closing } = nearestParts(layout, move, circle.holes);
    if (nearest.takes(closing)) nearest.offer(closing, [circle, parts]);
  }
  const settings = nearest.candidates.map(([on, parts]) =>
    simpleSetting(layout, move, { turns: Math.floor(parts / on.holes), spaces: parts % on.holes, on }),
  );
  return settings.sort(byHandling(layout.mounted))[0] ?? null;
}

function inLowestTerms(parts: number, perTurn: number): CrankTurns {
  const rest = parts % perTurn;
  const common = gcd(rest, perTurn);
  return { turns: Math.floor(parts / perTurn), part: rest / common, parts: perTurn / common };
}

/** The least common multiples of the circles on each face: what compound moves can add up to. */
export function pairMultiples({ head }: HeadLayout): readonly number[] {
  if (!head.rearPin) return [];
  const multiples = new Set<number>();
  for (const { faces } of head.plates) for (const face of faces) addCommonMultiples(face, multiples);
  return [...multiples];
}

/**
 * The compound setting nearest to a move.
 *
 * Two circles of a face make every multiple of 1/L of a turn, L their least common multiple. The
 * nearest one is found for each L; the two moves that make it follow from the extended Euclid
 * identity. Where one circle alone would make it too, it is a simple setting and not returned.
 *
 * @param multiples - From {@link pairMultiples}.
 * @param bar - As of {@link nearSimple}.
 */
export function nearCompound(
  layout: HeadLayout,
  multiples: readonly number[],
  move: Move,
  bar: number,
  effort: Effort,
): SettingBy<"compound"> | null {
  const nearest = closest<CrankTurns>(bar);
  if (!take(effort, 2 * multiples.length)) return null;
  for (const perTurn of multiples) {
    const { parts, closing } = nearestParts(layout, move, perTurn);
    if (nearest.takes(closing)) nearest.offer(closing, inLowestTerms(parts, perTurn));
  }
  // Multiples of one another come near by the same turns: those are looked for once.
  const wanted = new Map(nearest.candidates.map((turns) => [`${turns.turns} ${turns.part}/${turns.parts}`, turns]));
  const settings = [...wanted.values()].flatMap((turns) => compoundSettings(layout, move, turns, effort).slice(0, 1));
  return settings.sort(byHandling(layout.mounted))[0] ?? null;
}
