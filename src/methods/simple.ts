import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { simpleSetting } from "./crank.ts";
import { firstThatServes } from "./first-that-serves.ts";
import { byHandling } from "./handling.ts";
import type { Law } from "./law.ts";
import { crankTurns, type HeadLayout } from "./layout.ts";
import { neededDivisors } from "./needed-divisors.ts";
import { lacksCircles } from "./owned-circles.ts";

/**
 * Simple (plain) indexing: the crank alone, over a plate held by its stop pin.
 *
 * @see US Army, OD1644, *Milling Machine Operations*, on plain indexing.
 */
export const simple: Law<"simple"> = {
  places: { simple: 2 },
  plain: true,
  find: (_, layout, trial) => firstThatServes(simpleSettings, layout, trial),
  lacks: ({ circle, plate, face }, head) => lacksCircles(head, plate, face, circle === null ? [] : [circle]),
  whyNot(layout, target, teethPerMove) {
    if (layout.circles.length === 0) return { code: "without", part: "index-plate" };
    return { code: "no-multiple", of: "circle", multiplesOf: neededDivisors(layout, target, teethPerMove), owned: [] };
  },
};

/**
 * The simple settings for a move.
 *
 * The law: t = R·k/N turns = whole turns + s/C. In lowest terms the rest of a turn is r/D, so
 * every circle that is a multiple of D serves, with s = r·C/D spaces, and no other does.
 *
 * @returns A setting for every owned circle that serves; one with no circle named where the move
 * is whole turns.
 */
function simpleSettings(layout: HeadLayout, move: Move): SettingBy<"simple">[] {
  const { turns, part, parts } = crankTurns(layout, move);
  if (parts === 1) {
    const canCountTurns = layout.circles.length > 0 || layout.head.dial !== null;
    return canCountTurns ? [simpleSetting(layout, move, { turns, spaces: 0, on: null })] : [];
  }
  return layout.circles
    .filter(({ holes }) => holes % parts === 0)
    .map((on) => simpleSetting(layout, move, { turns, spaces: (on.holes / parts) * part, on }))
    .sort(byHandling(layout.mounted));
}
