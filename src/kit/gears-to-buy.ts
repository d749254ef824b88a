import { layOut } from "../methods/layout.ts";
import { type Effort, take } from "../number/effort.ts";
import type { Search } from "../search/exact-settings.ts";
import { distinctBy } from "./count-set.ts";
import type { GearTally } from "./gear-tally.ts";
import { type Adds, addedBy, type Lacking, worthOf } from "./lacking.ts";
import { everyTwo } from "./two-gears.ts";

/** One or two change gears to buy. */
export interface GearsToBuy extends Adds {
  /** Teeth of each, the smaller first. */
  readonly gears: readonly number[];
  /** Others of the same number that do the same counts, the smaller first; as many as six. */
  readonly alike: readonly (readonly number[])[];
}

const mostAlike = 6;

/** A search on a head with gears beside its own. */
function searchWithGears(search: Search, gears: readonly number[]): Search {
  const { layout } = search;
  const all = [...layout.head.gears, ...gears].sort((a, b) => a - b);
  return { ...search, layout: { ...layOut({ ...layout.head, gears: all }), mounted: layout.mounted } };
}

/**
 * The gears that add the most: single ones, and pairs that do more than either gear of them alone. Of
 * those that add as much the fewer and the smaller come first.
 */
export function bestGears(lacking: Lacking, tally: GearTally, most: number, effort: Effort): readonly GearsToBuy[] {
  const { counts } = lacking;
  const ones = tally.sizes.map((teeth) => {
    const does = tally.one(teeth);
    return { gears: [teeth], does, worth: worthOf(lacking, does) };
  });
  const alone = new Map(ones.map(({ gears: [teeth = 0], worth }) => [teeth, worth]));
  const twos = everyTwo(new Map(tally.sizes.map((teeth) => [teeth, 2]))).flatMap(([first, second]) => {
    if (!take(effort, 10 + (counts.length >> 2))) return [];
    const does = tally.two(first, second);
    const worth = worthOf(lacking, does);
    const isMore = worth > Math.max(alone.get(first) ?? 0, alone.get(second) ?? 0);
    return isMore ? [{ gears: [first, second], does, worth }] : [];
  });
  const sum = (gears: readonly number[]) => gears.reduce((total, each) => total + each, 0);
  const best = (tried: typeof ones) =>
    distinctBy(tried.filter(({ worth }) => worth > 0).sort((a, b) => b.worth - a.worth || sum(a.gears) - sum(b.gears))).slice(
      0,
      most,
    );
  return [...best(ones), ...best(twos)]
    .sort((a, b) => b.worth - a.worth || a.gears.length - b.gears.length || sum(a.gears) - sum(b.gears))
    .map(({ gears, does, others }) => ({
      gears,
      alike: others.slice(0, mostAlike).map((other) => other.gears),
      ...addedBy(lacking, searchWithGears(lacking.search, gears), does, effort),
    }));
}
