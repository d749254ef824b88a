import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { type Bench, crankSetting, crankTurns } from "./layout.ts";
import { byHandling } from "./preference.ts";

/**
 * Simple (plain) indexing: the crank alone, over a plate held by its stop pin.
 *
 * The law: t = R·k/N turns = whole turns + s/C. In lowest terms the rest of a turn is r/D, so
 * every circle that is a multiple of D serves, with s = r·C/D spaces, and no other does.
 *
 * @returns A setting for every owned circle that serves; one with no circle named where the move
 * is whole turns.
 * @see US Army, OD1644, *Milling Machine Operations*, on plain indexing.
 */
export function simple(bench: Bench, move: Move): UnprovedSetting[] {
  const { turns, part, parts } = crankTurns(bench, move);
  if (parts === 1) {
    const canCountTurns = bench.circles.length > 0 || bench.head.dial !== null;
    return canCountTurns ? [crankSetting("simple", "in", bench, move, { turns, spaces: 0, on: null })] : [];
  }
  return bench.circles
    .filter(({ holes }) => holes % parts === 0)
    .map((on) => crankSetting("simple", "in", bench, move, { turns, spaces: (on.holes / parts) * part, on }))
    .sort(byHandling(bench.mounted));
}
