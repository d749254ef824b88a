import type { OwnedCircle } from "../head/head.ts";
import { commonMultiples } from "../methods/circle-pairs.ts";
import { compoundSettings } from "../methods/compound.ts";
import { simpleSetting } from "../methods/crank.ts";
import { byHandling } from "../methods/handling.ts";
import type { HeadLayout } from "../methods/layout.ts";
import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { closest } from "./closest.ts";

/** Whole parts of a crank turn nearest to a move, and how far all the moves then miss the start. */
interface NearestParts {
  readonly parts: number;
  /** In turns of the work, without sign. */
  readonly closing: number;
}

/**
 * The multiple of 1/`perTurn` of a crank turn nearest to the move R·k/N.
 *
 * With T such parts each move turns the work by T/(perTurn·R), and N moves miss k turns of the
 * work by (N·T − R·k·perTurn)/(R·perTurn). The numerator is a remainder to N, so the nearest T is
 * a division with rounding and no search.
 */
function nearestParts({ worm }: HeadLayout, { divisions, teeth }: Move, perTurn: number): NearestParts {
  const whole = worm.n * teeth * perTurn;
  const perPart = divisions * worm.d;
  const parts = Math.round(whole / perPart);
  return { parts, closing: Math.abs(perPart * parts - whole) / (worm.n * perTurn) };
}

/**
 * The simple setting nearest to a move: over all circles, k teeth per move.
 *
 * @param bar - The closing error, in turns of the work, that it must better.
 * @returns The easiest of the nearest to handle, exact or not; null where none betters the bar.
 */
export function nearSimple(layout: HeadLayout, move: Move, bar: number): SettingBy<"simple"> | null {
  const nearest = closest<readonly [OwnedCircle, number]>(bar);
  for (const circle of layout.circles) {
    const { parts, closing } = nearestParts(layout, move, circle.holes);
    if (parts > 0 && nearest.takes(closing)) nearest.offer(closing, [circle, parts]);
  }
  const settings = nearest.candidates.map(([on, parts]) =>
    simpleSetting(layout, move, { turns: Math.floor(parts / on.holes), spaces: parts % on.holes, on }),
  );
  return settings.sort(byHandling(layout.mounted))[0] ?? null;
}

/** The least common multiples of the circles on each face: what compound moves can add up to. */
export function pairMultiples({ head }: HeadLayout): readonly number[] {
  if (!head.rearPin) return [];
  return [...new Set(head.plates.flatMap(({ faces }) => faces.flatMap(commonMultiples)))];
}

/**
 * The compound setting nearest to a move.
 *
 * Two circles of a face make every multiple of 1/L of a turn, L their least common multiple. The
 * nearest one is found for each L; the two moves that make it follow from the extended Euclid
 * identity. Where one circle alone would make it too, it is a simple setting and not returned.
 *
 * @param multiples - From {@link pairMultiples}.
 * @param bar - The closing error, in turns of the work, that it must better.
 */
export function nearCompound(
  layout: HeadLayout,
  multiples: readonly number[],
  move: Move,
  bar: number,
): SettingBy<"compound"> | null {
  const nearest = closest<readonly [number, number]>(bar);
  for (const perTurn of multiples) {
    const { parts, closing } = nearestParts(layout, move, perTurn);
    if (parts > 0 && nearest.takes(closing)) nearest.offer(closing, [parts, perTurn]);
  }
  const settings = nearest.candidates.flatMap(([parts, perTurn]) => {
    const rest = parts % perTurn;
    const common = gcd(rest, perTurn);
    const wanted = { turns: Math.floor(parts / perTurn), part: rest / common, parts: perTurn / common };
    return compoundSettings(layout, move, wanted).slice(0, 1);
  });
  return settings.sort(byHandling(layout.mounted))[0] ?? null;
}
