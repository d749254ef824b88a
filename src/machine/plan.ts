import type { HeadInShort } from "../answer.ts";
import type { Head } from "../head/head.ts";
import { type Impossible, whyImpossible } from "../instead/impossible.ts";
import { lackOf } from "../methods/registry.ts";
import { checkKeys } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";
import { type Search, searchOn } from "../search/exact-settings.ts";
import type { PreparedHead } from "../search/prepare.ts";
import { checkTarget, type Target } from "../setting/target.ts";
import { placesByMoves, teethAfterMove } from "./by-moves.ts";
import { type Caution, cautionsFor } from "./caution.ts";
import { type Check, checksOn } from "./checks.ts";
import { placesByHole, placesByScale } from "./from-zero.ts";
import { checkListed } from "./listed.ts";
import type { Place } from "./place.ts";
import { askedFrom, checkTooth, type PlanOptions, planKeys, workFrom } from "./plan-options.ts";
import { type RankedWay, type Way, wayOf } from "./way.ts";
import { type Asked, allTeeth, nearWays, placesOf, waysFor, worstOf } from "./ways.ts";
import { moveTo, type Work } from "./work.ts";

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
}

/** A job that the head cannot do in any way, not even nearly. */
export interface NoJob {
  readonly planned: false;
  readonly head: HeadInShort;
  readonly target: Target;
  readonly impossible: Impossible;
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
 * target, or there are over 100,000 places to list.
 *
 * @example
 * ```ts
 * planJob(readyHeads[0], { divisions: 97 }, { teeth: [12, 13] }).places.map(({ hole }) => hole); // [6,12]
 * ```
 */
export function planJob(head: Head | PreparedHead, target: Target, options: PlanOptions = {}): Plan {
  checkKeys(options, planKeys, "options");
  const search = searchOn(head, options);
  const { head: owned } = search.layout;
  const { id, name, wormRatio } = owned;
  const inShort = { head: { id, name, wormRatio }, target: checkTarget(target) };
  const work = workFrom(owned, inShort.target, options);
  const asked = askedFrom(options, work);
  const [way, ...others] = chosen(search, inShort.target, work, asked, options);
  if (way === undefined) return { planned: false, ...inShort, impossible: whyImpossible(search, inShort.target) };
  checkStartHole(work, way);
  const places = options.after === undefined ? listed(work, way, asked) : placesAfter(work, way, options.after);
  return {
    planned: true,
    ...inShort,
    exact: way.setting.exact,
    way: { by: way.by, setting: way.setting } as Way,
    others,
    start: placesOf(work, way, { teeth: [work.startTooth], order: "given" })[0] as Place,
    places,
    checks: asked.teeth === null && !isGoneToOnce(work, way, asked) ? checksOn(work, way, places) : [],
    worstArcSeconds: worstOf(places, asked),
    cautions: cautionsFor(way, owned),
  };
}

/** An angle that nothing closes is gone to once: made over and over, its error would only grow. */
function isGoneToOnce(work: Work, way: Way, asked: Asked): boolean {
  return asked.teeth === null && !way.setting.exact && work.step.n !== 1n;
}

function listed(work: Work, way: Way, asked: Asked): readonly Place[] {
  const once = isGoneToOnce(work, way, asked);
  if (asked.teeth === null && !once) checkListed(work.count, "teeth");
  return placesOf(work, way, once ? { ...asked, teeth: [1, 2] } : asked);
}

/** The ways to choose from, the one to follow first. */
function chosen(search: Search, target: Target, work: Work, asked: Asked, { setting, by }: PlanOptions): readonly RankedWay[] {
  if (setting !== undefined) {
    const way = wayOf(setting);
    checkFits(way, search, target);
    return [{ ...way, worstArcSeconds: setting.worstArcSeconds }];
  }
  if (by === undefined) return waysFor(search, target, work, asked);
  const ways = by === "moves" ? waysFor(search, target, work, asked) : nearWays(search, target, work, asked);
  const wanted = ways.filter((way) => way.by === by);
  if (wanted.length === 0) {
    refuse("not-owned", "by", `this head cannot set it by ${JSON.stringify(by)}; leave it out for the best way there is`);
  }
  return [...wanted, ...ways.filter((way) => way.by !== by)];
}

/** That a setting chosen by the caller is one of this head, for this target. */
function checkFits(way: Way, { layout: { head, circles } }: Search, target: Target): void {
  const wanted = "angle" in target ? target.angle : null;
  const parts = Number(way.setting.spindlePerMove.split("/")[1] ?? 1);
  const fits = wanted === null ? "divisions" in target && parts === target.divisions : way.setting.spindlePerMove === wanted;
  if (!fits) refuse("conflict", "setting", "is for another count or angle than the job's; take one from its own answer");
  const lack =
    way.by === "moves"
      ? lackOf(way.setting, head)
      : lackFromZero(
          way,
          head,
          circles.map(({ holes }) => holes),
        );
  if (lack !== null) refuse("not-owned", "setting", lack);
}

function lackFromZero({ by, setting }: Exclude<Way, { by: "moves" }>, head: Head, circles: readonly number[]): string | null {
  if (setting.wormRatio !== head.wormRatio) return `is for a worm ratio of ${setting.wormRatio}; the head has ${head.wormRatio}`;
  if (by === "nearest-hole") return circles.includes(setting.circle ?? 0) ? null : `needs a circle of ${setting.circle}`;
  return head[by] === null ? `needs a ${by}` : null;
}

function checkStartHole({ startHole }: Work, { setting: { circle, plate } }: Way): void {
  if (startHole === 0) return;
  // Whole turns serve on any circle, and the places of a dial are no holes.
  if (plate === null) refuse("no-effect", "startHole", "has no effect on a way that goes by no circle of holes; leave it out");
  const holes = circle ?? 1;
  if (startHole >= holes)
    refuse("out-of-range", "startHole", `${startHole} is not a hole of the circle; give 0 to ${groupDigits(holes - 1)}`);
}

/** What is left after a tooth: in the order of the moves, or of the numbers where each place is set by itself. */
function placesAfter(work: Work, way: Way, after: number): readonly Place[] {
  const tooth = checkTooth(after, work.count, "after");
  const done = way.by === "moves" ? moveTo(work, way.setting, tooth) : (tooth - work.startTooth + work.count) % work.count;
  const left = work.count - done - 1;
  checkListed(left, "after");
  const rest = () => allTeeth(work).slice(done + 1);
  switch (way.by) {
    case "moves":
      return placesByMoves(work, way.setting, teethAfterMove(work, way.setting, done + 1), done);
    case "nearest-hole":
      return placesByHole(work, way.setting.circle, rest(), tooth);
    case "dial":
    case "ring":
      return placesByScale(work, way.by, rest());
  }
}
