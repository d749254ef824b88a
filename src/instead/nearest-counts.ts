import { type Effort, take } from "../number/effort.ts";
import { divisorsWithin } from "../number/factors.ts";
import { fromExact } from "../number/ratio.ts";
import { sharedBy } from "../search/efforts.ts";
import { firstSetting, type Search, type SearchOnce } from "../search/exact-settings.ts";
import { mostDivisions, usualTeethPerMove } from "../setting/target.ts";
import { wholesWithoutGears } from "./wholes.ts";

/** How far differential settings are looked for on either side, count by count; less far where many teeth per move are tried. */
function stepsEitherWay({ teethPerMove }: Search): number {
  return Math.ceil(36_000 / Math.max(teethPerMove, usualTeethPerMove));
}

/** Counts on either side that are tried by every method before the far ones are listed: most often one of them closes. */
const neighbours = 10;

/**
 * The nearest counts below and above one that cannot be done, by any method asked for.
 *
 * Counts done without gears are divisors of D, R·C, R·lcm(C1, C2) and R times the dial's places,
 * so the nearest are found however far away; differential settings are looked for among the
 * 3,000 counts on either side, or fewer where over 12 teeth per move are tried.
 *
 * @returns Once the effort is cut, the nearest of those that were tried.
 */
export function nearestCounts(search: SearchOnce, divisions: number): readonly number[] {
  const effort = search.efforts.counts;
  const closes = closesOn(search, effort);
  const below = countdown(divisions - 1, Math.max(1, divisions - neighbours)).find(closes);
  const above = countUp(divisions + 1, Math.min(mostDivisions, divisions + neighbours)).find(closes);
  if (below !== undefined && above !== undefined) return [below, above];
  const far = farCounts(search, divisions, effort);
  return [below ?? far.below, above ?? far.above].filter((count) => count > 0 && Number.isFinite(count));
}

/** A count below and one above: 0 below and infinity above where there is none. */
interface Either {
  readonly below: number;
  readonly above: number;
}

/** The nearest beyond the neighbours. */
function farCounts(search: Search, divisions: number, effort: Effort): Either {
  const { below, above } = farWithoutGears(search, divisions, effort);
  const closes = closesOn(search, effort);
  const steps = stepsEitherWay(search);
  const greatest = greatestWithGears(search);
  const top = Math.min(divisions - 1, greatest);
  const bottom = divisions + 1;
  const last = Math.min(above - 1, greatest, bottom + steps, mostDivisions);
  return {
    below: countdown(top, Math.max(below + 1, top - steps)).find(closes) ?? below,
    above: countUp(bottom, last).find(closes) ?? above,
  };
}

/** Each whole that counts divide is looked through only between the nearest so far. */
function farWithoutGears(search: Search, divisions: number, effort: Effort): Either {
  const closes = closesOn({ ...search, methods: search.methods.filter((method) => method !== "differential") }, effort);
  let [below, above] = [0, Number.POSITIVE_INFINITY];
  for (const whole of wholesWithoutGears(search, effort)) {
    const under = divisorsWithin(whole, below + 1, divisions - 1, effort).sort((a, b) => b - a);
    below = under.find(closes) ?? below;
    const over = divisorsWithin(whole, divisions + 1, Math.min(above - 1, mostDivisions), effort).sort((a, b) => a - b);
    above = over.find(closes) ?? above;
  }
  return { below, above };
}

/** Whether a count closes, by whatever setting is found first. */
function closesOn(search: Search, effort: Effort): (divisions: number) => boolean {
  const any: Search = { ...search, isAnyGood: true };
  const steps = search.teethPerMove + search.layout.circles.length;
  return (divisions) => take(effort, steps) && firstSetting(any, { divisions }, sharedBy(effort)) !== null;
}

/** N·h = C·k·(R − g) bounds the counts that gearing can reach. */
function greatestWithGears({ layout, methods, teethPerMove }: Search): number {
  const { gearing, gears } = layout.head;
  if (!methods.includes("differential") || gearing === null || gears.length < 2) return 0;
  const net = fromExact(layout.wormRatio).add(fromExact(gearing.greatestPlateRatio)).valueOf();
  return Math.floor(Math.max(...layout.circles.map(({ holes }) => holes)) * teethPerMove * net);
}

function countUp(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);
}

function countdown(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, from - to + 1) }, (_, step) => from - step);
}
