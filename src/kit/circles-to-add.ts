import type { Plate } from "../head/plate.ts";
import { canIdle } from "../methods/differential.ts";
import { type HeadLayout, withPlates } from "../methods/layout.ts";
import { neededDivisors } from "../methods/needed-divisors.ts";
import { type Effort, isCut, take } from "../number/effort.ts";
import type { Search } from "../search/exact-settings.ts";
import { movesFor } from "../setting/target.ts";
import { addCount, type CountSet, countsIn, distinctBy, hasCount, noCounts } from "./count-set.ts";
import { type Adds, addedBy, type Lacking, worthOf } from "./lacking.ts";

/** A circle to drill or buy, on a plate of its own. */
export interface CircleToAdd extends Adds {
  readonly circle: number;
  /** Larger circles that do the same counts. */
  readonly alike: readonly number[];
}

/** What a circle would do of the counts that are missing. */
export interface CircleTally {
  readonly holes: number;
  readonly does: CountSet;
}

/**
 * What each circle would do that is not owned, by simple indexing and with the gears that are owned.
 *
 * On a plate of its own a circle has no other to be paired with. So whatever it adds is done on it alone:
 * by simple indexing where it is a multiple of the denominator of the crank's move, and otherwise by a
 * plate that is geared, which is looked for on a head with this circle and no other.
 */
export function tallyCircles({ search, counts }: Lacking, sizes: readonly number[], effort: Effort): readonly CircleTally[] {
  const { layout, methods, teethPerMove } = search;
  const bySimple = methods.includes("simple");
  const needed = counts.map((divisions) => (bySimple ? neededDivisors(layout, { divisions }, teethPerMove) : []));
  const canGear = methods.includes("differential") && layout.head.gearing !== null && layout.head.gears.length >= 2;
  const owned = new Set(layout.circles.map(({ holes }) => holes));
  return sizes
    .filter((holes) => !owned.has(holes))
    .map((holes) => {
      const does = noCounts(counts.length);
      if (!take(effort, counts.length)) return { holes, does };
      for (const [place, parts] of needed.entries()) if (parts.some((part) => holes % part === 0)) addCount(does, place);
      if (!canGear) return { holes, does };
      const alone = withPlates(layout, [plateOf([holes])]);
      for (const [place, divisions] of counts.entries()) {
        if (isCut(effort)) break;
        if (!hasCount(does, place) && isGeared(alone, divisions, teethPerMove, effort)) addCount(does, place);
      }
      return { holes, does };
    })
    .filter(({ does }) => countsIn(does) > 0);
}

/** Whether any crank move over the circles of a layout has a train that makes it serve. */
function isGeared(layout: HeadLayout, divisions: number, teethPerMove: number, effort: Effort): boolean {
  const { head } = layout;
  const { gearing } = head;
  if (gearing === null) return false;
  for (const pairs of [1, 2] as const) {
    for (const move of movesFor({ divisions }, teethPerMove)) {
      const found = layout.gearedMoves(move, pairs, effort);
      if (found.some((crank) => crank.trains.some((train) => canIdle(head, gearing, crank, train)))) return true;
    }
  }
  return false;
}

/** A new plate with one face, for a head that has no other plate. */
export function plateOf(circles: readonly number[]): Plate {
  return { name: "new", faces: [{ name: null, circles }] };
}

/** A search on a head that has such plates and none of its own. */
export function searchOnPlates(search: Search, plates: readonly Plate[]): Search {
  return { ...search, layout: withPlates(search.layout, plates) };
}

/** The circles that add the most, the smaller first of those that add as much; of those that do the same the smallest. */
export function bestCircles(
  lacking: Lacking,
  tallies: readonly CircleTally[],
  most: number,
  effort: Effort,
): readonly CircleToAdd[] {
  const ranked = tallies
    .map((tally) => ({ ...tally, worth: worthOf(lacking, tally.does) }))
    .sort((a, b) => b.worth - a.worth || a.holes - b.holes);
  return distinctBy(ranked)
    .slice(0, most)
    .map(({ holes, does, others }) => ({
      circle: holes,
      alike: others.map((other) => other.holes),
      ...addedBy(lacking, searchOnPlates(lacking.search, [plateOf([holes])]), does, effort),
    }));
}
