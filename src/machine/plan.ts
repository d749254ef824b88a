import { type Head, type HeadInShort, inShort } from "../head/head.ts";
import { type Impossible, whyImpossible } from "../instead/impossible.ts";
import { checkKeys } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";
import { type Untried, untriedOf } from "../search/efforts.ts";
import { once, type SearchOnce, searchOn } from "../search/exact-settings.ts";
import type { PreparedHead } from "../search/prepare.ts";
import { checkTarget, type Target } from "../setting/target.ts";
import { type Caution, cautionsFor } from "./caution.ts";
import { type Check, checksOn } from "./checks.ts";
import { checkListed } from "./listed.ts";
import type { Place } from "./place.ts";
import { type Asked, askedFrom, checkTooth, type PlanOptions, planKeys, workFrom } from "./plan-options.ts";
import type { RankedWay, Way } from "./way.ts";
import { wayChosen } from "./way-chosen.ts";
import { worstAmong } from "./way-errors.ts";
import { doneBefore, placesBy, teethFrom, teethOf } from "./way-places.ts";
import { nearWays, waysFor } from "./ways.ts";
import type { Work } from "./work.ts";

/** A job from the setting to the hand. Plain data, through JSON unchanged. */
export interface PlannedJob {
  readonly planned: true;
  readonly head: HeadInShort;
  readonly target: Target;
  /** Whether the way followed has no error at all. */
  readonly exact: boolean;
  /** The way followed. */
  readonly way: Way;
  /** The other ways there are, the best first, where the one followed was not the only one to choose from. */
  readonly others: readonly RankedWay[];
  /** Where everything stands at the start. */
  readonly start: Place;
  /** Every place in the order of the work, with what to do there and where that stands. */
  readonly places: readonly Place[];
  /** Where to look at the work on the way, and where it ends; none where single teeth were named, or each is set by itself. */
  readonly checks: readonly Check[];
  /** The greatest error of any place listed that matters, in arc-seconds without sign. */
  readonly worstArcSeconds: number;
  readonly cautions: readonly Caution[];
  /** As of an answer: where a head is so large that not all was tried, there may be a better way. */
  readonly untried: readonly Untried[];
}

/** A job that the head cannot do in any way, not even nearly. */
export interface NoJob {
  readonly planned: false;
  readonly head: HeadInShort;
  readonly target: Target;
  readonly impossible: Impossible;
  /** As of an answer: where a head is so large that not all was tried, there may be a way. */
  readonly untried: readonly Untried[];
}

/** A job, or that there is none. `planned` tells which. */
export type Plan = PlannedJob | NoJob;

/**
 * Plans a job: the way chosen, where it starts, every place with what to do there, where that
 * stands and how far it is off, what to check on the way and what to mind. It is the one source of
 * positions: whatever lists, prints or walks through a job shows these.
 *
 * An exact setting leads where there is one; else the way that is least off, over the teeth named or
 * over the whole round.
 *
 * @param head - The head, or one that was prepared.
 * @param target - `{ divisions }`, or `{ angle }` in revolutions, which is made over and over.
 * @throws {@link InputError} when an option is not allowed, the setting chosen is for another head or
 * target, or there are over 50,000 places to list.
 *
 * @example
 * ```ts
 * planJob(readyHeads[0], { divisions: 97 }, { teeth: [12, 13] }).places.map(({ hole }) => hole); // [6,12]
 * ```
 */
export function planJob(head: Head | PreparedHead, target: Target, options: PlanOptions = {}): Plan {
  checkKeys(options, planKeys, "options");
  const search = once(searchOn(head, options));
  const { head: owned } = search.layout;
  const job = { head: inShort(owned), target: checkTarget(target) };
  const work = workFrom(owned, job.target, options);
  const asked = askedFrom(options, work, job.target);
  const [ranked, ...others] = waysToChoose(search, job.target, work, asked, options);
  if (ranked === undefined)
    return {
      planned: false,
      ...job,
      impossible: whyImpossible(search, job.target),
      untried: untriedOf(search.efforts),
    };
  const way = { by: ranked.by, setting: ranked.setting } as Way;
  checkStartHole(work, way);
  const isOnce = "angle" in job.target && !way.setting.exact;
  const { teeth, before } = teethToVisit(work, way, asked, options.after, isOnce);
  const places = placesBy(work, way, teeth, before);
  const isAll = asked.teeth === null && !isOnce;
  return {
    planned: true,
    ...job,
    exact: way.setting.exact,
    way,
    others,
    start: placesBy(work, way, [work.startTooth])[0] as Place,
    places,
    checks: isAll ? checksOn(work, way, work.count - teeth.length) : [],
    worstArcSeconds: worstAmong(places, asked.matters),
    cautions: cautionsFor(way, owned),
    untried: untriedOf(search.efforts),
  };
}

/** The teeth to visit, and the one that is left last for the first of them where that is not the start. */
interface Visit {
  readonly teeth: readonly number[];
  readonly before?: number;
}

function teethToVisit(work: Work, way: Way, asked: Asked, after: number | undefined, isOnce: boolean): Visit {
  if (after !== undefined) {
    const before = checkTooth(after, work.count, "after");
    const done = 1 + doneBefore(work, way, before);
    checkListed(work.count - done, "after");
    return { teeth: teethFrom(work, way, done), before };
  }
  // An angle that nothing closes is gone to once: made over and over, its error would only grow.
  if (asked.teeth === null && isOnce) return { teeth: [...new Set([work.startTooth, 1 + (work.startTooth % work.count)])] };
  if (asked.teeth === null) checkListed(work.count, "teeth");
  return { teeth: teethOf(work, way, asked) };
}

/** The ways to choose from, the one to follow first. */
function waysToChoose(
  search: SearchOnce,
  target: Target,
  work: Work,
  asked: Asked,
  { setting, by }: PlanOptions,
): readonly RankedWay[] {
  if (setting !== undefined) {
    const way = wayChosen(setting, target, search.layout.head);
    if (by !== undefined && by !== way.by)
      refuse(
        "conflict",
        "by",
        `is ${JSON.stringify(by)}, and the setting chosen is by ${JSON.stringify(way.by)}; give one of the two`,
      );
    return [{ ...way, worstArcSeconds: setting.worstArcSeconds }];
  }
  if (by === undefined) return waysFor(search, target, work, asked);
  const ways = by === "moves" ? waysFor(search, target, work, asked) : nearWays(search, target, work, asked);
  const wanted = ways.filter((way) => way.by === by);
  if (wanted.length === 0) {
    refuse(
      "not-owned",
      "by",
      `this head has no setting by ${JSON.stringify(by)} that comes near; leave it out for the best there is`,
    );
  }
  return [...wanted, ...ways.filter((way) => way.by !== by)];
}

/** Whole turns serve on any circle, and the places of a scale are no holes: only of a circle a hole can be the start. */
function checkStartHole({ startHole }: Work, { setting }: Way): void {
  const { circle, plate } = setting;
  if (startHole === 0) return;
  if (plate === null) refuse("no-effect", "startHole", "has no effect on a way that goes by no circle of holes; leave it out");
  const row = "vernierHoles" in setting ? (setting.vernierHoles ?? 1) : 1;
  const holes = (circle ?? 1) / row;
  if (startHole >= holes)
    refuse("out-of-range", "startHole", `${startHole} is not a hole of the circle; give 0 to ${groupDigits(holes - 1)}`);
}
