import { type Effort, isCut, take } from "../number/effort.ts";
import { sharedBy } from "../search/efforts.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import { kindOf } from "../setting/kind.ts";
import { addCount, type CountSet, countsIn, hasCount, noCounts, sharedCounts } from "./count-set.ts";

/** What a head lacks of the counts asked for. */
export interface Lacking {
  readonly search: Search;
  /** The counts that it cannot do, ascending. */
  readonly counts: readonly number[];
  /** Those of them that are on a list of one's own. */
  readonly wanted: CountSet;
}

/** What something that is added to a kit makes possible. */
export interface Adds {
  /** The counts it does, of those that are missing, each proved on the head with it. */
  readonly unlocks: readonly number[];
  /** Those of them that are on the list of one's own. */
  readonly wanted: readonly number[];
  /** Those of them that only a train does which may foul. */
  readonly mayFoul: readonly number[];
}

/** Steps of work to find a setting and prove it, beside what the search itself takes. */
const stepsToFind = 40;

/** What a head with something added does of what it lacked: found by the search itself, and proved there. */
export function addedBy(lacking: Lacking, widened: Search, tallied: CountSet, effort: Effort): Adds {
  const unlocks: number[] = [];
  const mayFoul: number[] = [];
  const wanted: number[] = [];
  for (const [place, divisions] of lacking.counts.entries()) {
    if (!hasCount(tallied, place) || !take(effort, stepsToFind)) continue;
    const setting = firstSetting(widened, { divisions }, sharedBy(effort));
    if (setting === null) continue;
    unlocks.push(divisions);
    if (hasCount(lacking.wanted, place)) wanted.push(divisions);
    if (kindOf(setting) === "may-foul") mayFoul.push(divisions);
  }
  return { unlocks, wanted, mayFoul };
}

/** The counts that a search finds a setting for, of those that are missing. */
export function doneBy(lacking: Lacking, widened: Search, effort: Effort): CountSet {
  const done = noCounts(lacking.counts.length);
  const any: Search = { ...widened, isAnyGood: true };
  for (const [place, divisions] of lacking.counts.entries()) {
    if (!take(effort, stepsToFind)) break;
    if (firstSetting(any, { divisions }, sharedBy(effort)) !== null) addCount(done, place);
    if (isCut(effort)) break;
  }
  return done;
}

/** How much a set of counts is worth: first by how many of one's own list are in it, then by how many there are. */
export function worthOf({ counts, wanted }: Lacking, done: CountSet): number {
  return sharedCounts(done, wanted) * (counts.length + 1) + countsIn(done);
}
