import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import type { Trial } from "./law.ts";
import type { HeadLayout } from "./layout.ts";

/**
 * The settings of the first move that has any. The denominator of R·k/N changes with k only where k
 * cancels against that of R: on a whole worm ratio one tooth per move decides for all.
 */
export function firstThatServes<S extends UnprovedSetting>(
  solve: (layout: HeadLayout, move: Move) => S[],
  layout: HeadLayout,
  { first, moves }: Trial,
): S[] {
  if (layout.worm.d === 1) return solve(layout, first);
  const seen = new Set<number>();
  for (const move of moves()) {
    const alike = gcd(move.teeth, layout.worm.d);
    if (seen.has(alike)) continue;
    seen.add(alike);
    const found = solve(layout, move);
    if (found.length > 0) return found;
  }
  return [];
}
