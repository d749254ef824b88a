import type { OwnedCircle } from "../head/head.ts";
import type { HeadLayout } from "../methods/layout.ts";
import { partsOfBoth, wideRangeSettings } from "../methods/wide-range.ts";
import { type Effort, take } from "../number/effort.ts";
import type { Move } from "../setting/move.ts";
import type { NearBy } from "../setting/near-setting.ts";
import type { SettingBy } from "../setting/setting.ts";
import { closest } from "./closest.ts";
import { eachFromZero, furthest, type Wanted } from "./near-from-zero.ts";
import { inLowestTerms, nearestParts } from "./near-plate.ts";

/**
 * The wide range setting nearest to a move: the two cranks make every multiple of 1/lcm(C1, r·C2) of a turn of the
 * large one. The nearest of each pair of circles is tried, the least off first, until one can be made going forward.
 *
 * @param bar - The closing error, in turns of the work, that it must better.
 */
export function nearWideRange(layout: HeadLayout, move: Move, bar: number, effort: Effort): SettingBy<"wide-range"> | null {
  const { smallCrank } = layout.head;
  if (smallCrank === undefined || !take(effort, 4 * layout.circles.length * smallCrank.circles.length)) return null;
  const { ratio, circles } = smallCrank;
  const multiples = new Set(layout.circles.flatMap(({ holes }) => circles.map((circle) => partsOfBoth(holes, ratio, circle))));
  const tried = [...multiples]
    .map((perTurn) => ({ perTurn, ...nearestParts(layout, move, perTurn) }))
    .filter(({ closing }) => closing < bar)
    .sort((a, b) => a.closing - b.closing);
  for (const { perTurn, parts } of tried) {
    const [setting] = wideRangeSettings(layout, move, inLowestTerms(parts, perTurn));
    if (setting !== undefined) return setting;
  }
  return null;
}

/**
 * Each position by both cranks, by itself from one zero: the large one to the hole below it, the small one to the
 * nearest hole from there.
 *
 * That is one of r·C2 places in a turn of the large crank, whichever circle that stands on, so long as its holes are
 * among them: the circle with the most holes leaves the small crank the least to turn. On a head of 40 × 100 turns
 * with 100 holes there are 400,000 places round the work, 3.24″ apart, and no position is further than 1.62″ off.
 *
 * @returns Null where the head has no small crank, or one of its circles has a hole for every position.
 */
export function nearestByBoth(layout: HeadLayout, wanted: Wanted): NearBy<"both-cranks"> | null {
  const { head, wormRatio, worm } = layout;
  if (head.smallCrank === undefined) return null;
  const { ratio, circles } = head.smallCrank;
  const best = closest<number>(Number.POSITIVE_INFINITY);
  for (const circle of circles) {
    const perTurn = ratio * circle;
    const { residue, parts } = furthest({ perTurn, turns: worm }, wanted.move);
    if (parts === 1) return null;
    const error = residue / (parts * perTurn);
    if (best.takes(error)) best.offer(error, circle);
  }
  const [small] = best.candidates.toSorted((a, b) => b - a);
  if (small === undefined) return null;
  const perTurn = ratio * small;
  const on = standsOn(layout, perTurn);
  return {
    ...eachFromZero(layout, wanted, { perTurn, turns: worm }),
    kind: "both-cranks",
    method: "wide-range",
    wormRatio,
    circle: on?.holes ?? null,
    plate: on?.plate ?? null,
    face: on?.face ?? null,
    plateStopPin: "in",
    small: { ratio, circle: small },
  };
}

/** The circle for the large crank, on the plate that is on the head where that has one; none where only whole turns are among the places. */
function standsOn({ circles, mounted }: HeadLayout, perTurn: number): OwnedCircle | undefined {
  const other = ({ plate }: OwnedCircle) => Number(plate !== mounted);
  return circles.filter(({ holes }) => perTurn % holes === 0).sort((a, b) => b.holes - a.holes || other(a) - other(b))[0];
}
