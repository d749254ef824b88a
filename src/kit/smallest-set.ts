import { type Effort, isCut, take } from "../number/effort.ts";
import type { CircleTally } from "./circles-to-add.ts";
import { anyOf, type CountSet, countsIn, hasCount, noCounts, sharedCounts } from "./count-set.ts";
import type { GearTally } from "./gear-tally.ts";

/** What is bought or drilled together. */
export interface Chosen {
  readonly circles: readonly CircleTally[];
  readonly gears: readonly number[];
}

/** A set that does a list, and whether it was shown that no smaller one does. */
export interface SmallestSet extends Chosen {
  readonly smallest: boolean;
}

/** What there is to choose from, and the counts that are to be done. */
interface Choice {
  readonly needed: CountSet;
  readonly places: readonly number[];
  readonly circles: readonly CircleTally[];
  readonly gears: GearTally;
  readonly effort: Effort;
}

const nothing: Chosen = { circles: [], gears: [] };
const sizeOf = ({ circles, gears }: Chosen) => circles.length + gears.length;

/**
 * The fewest circles and gears that do every count needed, each count by one new circle with the gears
 * owned, or by one or two new gears over circles that are owned.
 *
 * First a set is put together by what adds the most. Then every set of one, of two and so on up to one
 * less than that is gone through: of the counts still to be done the one with the fewest ways is taken, and
 * each of its ways is tried, first what does the most besides. Where the effort runs out, the set found first stands, and is not called the smallest.
 */
export function smallestSet(
  needed: CountSet,
  of: number,
  circles: readonly CircleTally[],
  gears: GearTally,
  effort: Effort,
): SmallestSet {
  const places = Array.from({ length: of }, (_, place) => place).filter((place) => hasCount(needed, place));
  const choice: Choice = { needed, places, circles: distinct(circles, needed), gears, effort };
  const found = byMost(choice);
  for (let most = 1; most < sizeOf(found); most += 1) {
    const smaller = within(choice, nothing, most);
    if (isCut(effort)) return { ...found, smallest: false };
    if (smaller !== null) return { ...smaller, smallest: true };
  }
  return { ...found, smallest: true };
}

/** Of the circles that do the same of what is needed the smallest, and none that does only what another does too. */
function distinct(circles: readonly CircleTally[], needed: CountSet): readonly CircleTally[] {
  const useful = circles
    .map((circle) => ({ circle, does: sharedCounts(circle.does, needed) }))
    .filter(({ does }) => does > 0)
    .sort((a, b) => b.does - a.does || a.circle.holes - b.circle.holes);
  const kept: CircleTally[] = [];
  for (const { circle } of useful) {
    const doesMore = kept.every(
      (other) => sharedCounts(anyOf(other.does, circle.does), needed) > sharedCounts(other.does, needed),
    );
    if (doesMore) kept.push(circle);
  }
  return kept;
}

/** What is done by all that is chosen: a pair of gears does what each of them does, too. */
function doneBy({ circles, gears }: Chosen, { gears: tally, needed }: Choice): CountSet {
  const [first] = gears;
  const byGears =
    gears.length === 1 && first !== undefined
      ? [tally.one(first)]
      : gears.flatMap((one, index) => gears.slice(index + 1).map((other) => tally.two(one, other)));
  return anyOf(noCounts(32 * needed.length), ...circles.map(({ does }) => does), ...byGears);
}

/** One circle more, one gear more or two: by each of them a count is done that was not. */
function* waysToDo(place: number, chosen: Chosen, left: number, { circles, gears: tally }: Choice): Generator<Chosen> {
  for (const circle of circles) {
    if (hasCount(circle.does, place)) yield { ...chosen, circles: [...chosen.circles, circle] };
  }
  const { gears } = chosen;
  const joins = (teeth: number) => gears.some((owned) => hasCount(tally.two(owned, teeth), place));
  const alone = new Set(tally.sizes.filter((teeth) => (gears.length === 0 ? hasCount(tally.one(teeth), place) : joins(teeth))));
  for (const teeth of alone) yield { ...chosen, gears: [...gears, teeth] };
  if (left < 2) return;
  for (const [index, one] of tally.sizes.entries()) {
    if (alone.has(one)) continue;
    for (const other of tally.sizes.slice(index)) {
      if (!alone.has(other) && hasCount(tally.two(one, other), place)) yield { ...chosen, gears: [...gears, one, other] };
    }
  }
}

/** Steps of work to go through the ways of one count. */
function stepsOf({ circles, gears: { sizes }, needed }: Choice, left: number): number {
  return 20 + (circles.length + sizes.length + (left > 1 ? sizes.length ** 2 / 2 : 0)) * (1 + needed.length);
}

/** Steps of work to see what is done by all that is chosen. */
function stepsOfDone({ circles, gears }: Chosen): number {
  return 10 + 4 * (circles.length + gears.length ** 2);
}

/** A set of at most so many more that does all that is needed; null where there is none. */
function within(choice: Choice, chosen: Chosen, left: number): Chosen | null {
  const done = doneBy(chosen, choice);
  const open = choice.places.filter((place) => !hasCount(done, place));
  if (open.length === 0) return chosen;
  if (left === 0) return null;
  let fewest: readonly Chosen[] | null = null;
  for (const place of open) {
    if (!take(choice.effort, stepsOf(choice, left))) return null;
    const ways = [...waysToDo(place, chosen, left, choice)];
    if (ways.length < (fewest?.length ?? Number.POSITIVE_INFINITY)) fewest = ways;
    if (ways.length < 2) break;
  }
  // Of sets as small as each other one that does much besides is the better buy.
  const ways = (fewest ?? []).map((way) => ({ way, besides: countsIn(doneBy(way, choice)) }));
  for (const { way } of ways.sort((a, b) => b.besides - a.besides)) {
    const found = within(choice, way, left - (sizeOf(way) - sizeOf(chosen)));
    if (found !== null) return found;
  }
  return null;
}

/** A set put together step by step, by what does the most for each circle or gear more. */
function byMost(choice: Choice): Chosen {
  const { needed } = choice;
  let chosen = nothing;
  for (;;) {
    const done = doneBy(chosen, choice);
    const place = choice.places.find((each) => !hasCount(done, each));
    if (place === undefined) return chosen;
    let best = chosen;
    let most = { gain: 0, besides: 0 };
    for (const way of waysToDo(place, chosen, 2, choice)) {
      const does = doneBy(way, choice);
      const gain = (sharedCounts(does, needed) - sharedCounts(done, needed)) / (sizeOf(way) - sizeOf(chosen));
      const besides = countsIn(does);
      if (gain > most.gain || (gain === most.gain && besides > most.besides)) [best, most] = [way, { gain, besides }];
      // Whatever does this count, once there is no time to look for better.
      if (!take(choice.effort, needed.length * 4 + stepsOfDone(way))) break;
    }
    chosen = best;
  }
}
