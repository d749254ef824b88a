import type { OwnedCircle } from "../head/head.ts";
import { byMounted } from "../methods/handling.ts";
import type { HeadLayout } from "../methods/layout.ts";
import { byCranking, wideRangeSetting } from "../methods/wide-range.ts";
import { type Effort, take } from "../number/effort.ts";
import type { Move } from "../setting/move.ts";
import type { NearBy } from "../setting/near-setting.ts";
import type { SettingBy } from "../setting/setting.ts";
import { closest } from "./closest.ts";
import { eachFromZero, leastFarOff, type Wanted } from "./near-from-zero.ts";

/**
 * The wide range setting nearest to a move, both cranks going forward.
 *
 * Where the large crank goes a holes less, the small one goes on by what is left, to its nearest hole. What is left over
 * comes round again once the large one has gone C1 holes, so that for each pair of circles so many are tried, those that
 * leave the small crank the least to turn.
 *
 * @param bar - The closing error, in turns of the work, that it must better.
 */
export function nearWideRange(layout: HeadLayout, move: Move, bar: number, effort: Effort): SettingBy<"wide-range"> | null {
  const { worm, circles, head } = layout;
  if (head.smallCrank === undefined) return null;
  const { ratio } = head.smallCrank;
  // Turns of the large crank, and what one of them too many would close with.
  const wanted = (worm.n * move.teeth) / (worm.d * move.divisions);
  const perTurn = (worm.d * move.divisions) / worm.n;
  const nearest = closest<SettingBy<"wide-range">>(bar);
  for (const on of circles) {
    if (!take(effort, 2 * on.holes * head.smallCrank.circles.length)) return null;
    for (const circle of head.smallCrank.circles) {
      const most = Math.floor(wanted * on.holes);
      for (let large = most; large >= Math.max(0, most - on.holes + 1); large -= 1) {
        const small = Math.round((wanted - large / on.holes) * ratio * circle);
        const closing = Math.abs(large / on.holes + small / (ratio * circle) - wanted) * perTurn;
        if (small > 0 && nearest.takes(closing))
          nearest.offer(closing, wideRangeSetting(layout, move, { on, large, circle, small }));
      }
    }
  }
  return nearest.candidates.toSorted(byCranking(layout.mounted))[0] ?? null;
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
  const nearest = leastFarOff(circles, (circle) => ({ perTurn: ratio * circle, turns: worm }), wanted.move);
  const [small] = nearest.toSorted((a, b) => b - a);
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
  return circles.filter(({ holes }) => perTurn % holes === 0).sort((a, b) => b.holes - a.holes || byMounted(a, b, mounted))[0];
}
