import { nearOn } from "../near/near.ts";
import { asReadByEye, byHolesOf } from "../near/near-from-zero.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { firstSetting, type Search, type SearchOnce } from "../search/exact-settings.ts";
import type { NearFromZero, NearSetting } from "../setting/near-setting.ts";
import { firstMove, type Target } from "../setting/target.ts";
import { bestCircleFor } from "./best-circle.ts";
import { partsVisited } from "./from-zero.ts";
import type { Asked } from "./plan-options.ts";
import { type RankedWay, type Way, wayOf } from "./way.ts";
import { worstOf } from "./way-errors.ts";
import { teethOf, teethVisited } from "./way-places.ts";
import { partsTo, type Work } from "./work.ts";

/** The kinds of near setting with the least work first. */
const leastWork: readonly NearSetting["kind"][] = [
  "simple",
  "wide-range",
  "dial",
  "nearest-hole",
  "both-cranks",
  "nearest-direct",
  "one-pair",
  "two-pair",
  "compound",
  "may-foul",
  "ring",
];

/**
 * The ways to do a job, the best first: the preferred exact setting, or what comes nearest.
 *
 * For all teeth a near way is judged over the whole round; for teeth that are named, over those
 * alone, since a near move made from a start close by is off by very little there, and another
 * circle may have the nearest holes.
 */
export function waysFor(search: SearchOnce, target: Target, work: Work, asked: Asked): readonly RankedWay[] {
  const exact = firstSetting(search, target, search.efforts);
  if (exact !== null) return [{ ...wayOf(exact), worstArcSeconds: 0 }];
  return nearWays(search, target, work, asked);
}

/** Teeth that are named. */
type Named = Asked & { readonly teeth: readonly number[] };

/** The ways that leave an error, the best first. */
export function nearWays(search: SearchOnce, target: Target, work: Work, asked: Asked): readonly RankedWay[] {
  const near = nearOn(search)(target, search.efforts.near);
  const byWork = (a: RankedWay, b: RankedWay) => inGoodEnough(a, b, asked.goodEnough);
  if (asked.teeth === null)
    return near.map((setting) => ({ ...wayOf(setting), worstArcSeconds: setting.worstArcSeconds })).sort(byWork);
  const ways = near.flatMap((setting): Way[] => (setting.kind === "nearest-hole" ? [] : [wayOf(setting)]));
  if (search.methods.includes("simple")) ways.push(...byBestCircle(search, target, work, { ...asked, teeth: asked.teeth }));
  const halfStep = work.step.mul(arcSecondsPerTurn / 2).valueOf();
  return ways
    .map((way) => ({ ...way, worstArcSeconds: worstOf(work, way, teethOf(work, way, asked), asked.matters) }))
    .filter(({ worstArcSeconds }) => worstArcSeconds < halfStep)
    .sort((a, b) => byWork(a, b) || byError(a, b));
}

/** Of ways whose error is small enough to be all one, that with the least work; they go before the others. */
function inGoodEnough(a: RankedWay, b: RankedWay, goodEnough: number): number {
  const isOver = (way: RankedWay) => Number(rankedError(way) > goodEnough);
  return isOver(a) - isOver(b) || (isOver(a) === 0 ? workOf(a) - workOf(b) : 0);
}

/** The error that a way is ranked by. */
function rankedError(way: RankedWay): number {
  return way.by === "ring" ? asReadByEye(way.setting, way.worstArcSeconds) : way.worstArcSeconds;
}

function byError(a: RankedWay, b: RankedWay): number {
  return (
    rankedError(a) - rankedError(b) ||
    a.worstArcSeconds - b.worstArcSeconds ||
    a.setting.teethPerMove - b.setting.teethPerMove ||
    workOf(a) - workOf(b)
  );
}

function workOf({ by, setting }: RankedWay): number {
  return leastWork.indexOf(by === "moves" && "kind" in setting ? setting.kind : (by as NearFromZero["kind"]));
}

/** Each of the teeth by the nearest hole, on the circle that does best for those that matter. */
function byBestCircle({ layout }: Search, target: Target, work: Work, { teeth, order, matters }: Named): readonly Way[] {
  const visited = teethVisited(teeth, { order }, (tooth) => partsTo(work, tooth));
  const places = partsVisited(work, visited).filter((_, index) => matters === undefined || matters.has(visited[index] ?? 0));
  const angles = [...new Set(places)].map((parts) => ({ n: BigInt(parts), d: BigInt(work.count) }));
  const circle = bestCircleFor(work.head, angles, layout.mounted);
  if (circle === null) return [];
  return [{ by: "nearest-hole", setting: byHolesOf(layout, { move: firstMove(target), isAngle: "angle" in target }, circle) }];
}
