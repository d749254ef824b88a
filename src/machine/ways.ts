import type { OwnedCircle } from "../head/head.ts";
import { nearOn } from "../near/near.ts";
import { byHolesOf, fromZero } from "../near/near-from-zero.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import type { NearFromZero, NearSetting } from "../setting/near-setting.ts";
import { firstMove, type Target } from "../setting/target.ts";
import { placesByMoves, teethAsReached } from "./by-moves.ts";
import { placesByHole, placesByScale } from "./from-zero.ts";
import type { Place } from "./place.ts";
import { type RankedWay, type Way, type WayFromZero, wayOf } from "./way.ts";
import type { Work } from "./work.ts";

/** What is to be done of a work, and in what order. */
export interface Asked {
  /** The teeth wanted; null for all. */
  readonly teeth: readonly number[] | null;
  readonly order: "given" | "moves";
  /** Of the teeth, those whose place matters: a start or a proof that is not cut hurts no tooth. Left out, all. */
  readonly matters?: ReadonlySet<number> | undefined;
  /** In arc-seconds: of ways that leave no more the least work comes first; 0 where only the error counts. */
  readonly goodEnough: number;
}

/** The kinds of near setting with the least work first. */
const leastWork: readonly NearSetting["kind"][] = [
  "simple",
  "dial",
  "nearest-hole",
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
export function waysFor(search: Search, target: Target, work: Work, asked: Asked): readonly RankedWay[] {
  const exact = firstSetting(search, target);
  if (exact !== null) return [{ ...wayOf(exact), worstArcSeconds: 0 }];
  return nearWays(search, target, work, asked);
}

/** The ways that leave an error, the best first. */
export function nearWays(search: Search, target: Target, work: Work, asked: Asked): readonly RankedWay[] {
  const near = nearOn(search)(target);
  if (asked.teeth === null) return near.map((setting) => ({ ...wayOf(setting), worstArcSeconds: setting.worstArcSeconds }));
  const ways = near.flatMap((setting): Way[] => (setting.kind === "nearest-hole" ? [] : [wayOf(setting)]));
  if (search.methods.includes("simple")) ways.push(...bestCircle(search, target, work, asked));
  const halfStep = work.step.mul(648_000).valueOf();
  return ways
    .map((way) => ({ ...way, worstArcSeconds: worstOf(placesOf(work, way, asked), asked) }))
    .filter(({ worstArcSeconds }) => worstArcSeconds < halfStep)
    .sort((a, b) => inOrder(a, b, asked.goodEnough));
}

function inOrder(a: RankedWay, b: RankedWay, goodEnough: number): number {
  const rank = ({ worstArcSeconds }: RankedWay) => (worstArcSeconds <= goodEnough ? 0 : 1);
  const work = ({ by, setting }: RankedWay) =>
    leastWork.indexOf(by === "moves" && "kind" in setting ? setting.kind : (by as NearFromZero["kind"]));
  return (
    rank(a) - rank(b) ||
    (rank(a) === 0 ? work(a) - work(b) : 0) ||
    a.worstArcSeconds - b.worstArcSeconds ||
    a.setting.teethPerMove - b.setting.teethPerMove ||
    work(a) - work(b)
  );
}

/** The circle whose holes lie nearest to the teeth wanted; of equal ones a mounted one, then the largest. */
function bestCircle({ layout }: Search, target: Target, work: Work, asked: Asked): readonly WayFromZero<"nearest-hole">[] {
  const isMounted = ({ plate }: OwnedCircle) => Number(plate === layout.mounted);
  const [best] = layout.circles
    .map((circle) => ({ circle, worst: worstOf(placesByHole(work, circle.holes, asked.teeth ?? []), asked) }))
    .sort((a, b) => a.worst - b.worst || isMounted(b.circle) - isMounted(a.circle) || b.circle.holes - a.circle.holes);
  if (best === undefined) return [];
  const setting = byHolesOf(layout, fromZero(firstMove(target), "angle" in target), best.circle);
  return [{ by: "nearest-hole", setting }];
}

/** The places that are asked for, by a way. */
export function placesOf(work: Work, way: Way, { teeth, order }: Pick<Asked, "teeth" | "order">): readonly Place[] {
  const wanted = teeth ?? allTeeth(work);
  switch (way.by) {
    case "moves":
      return placesByMoves(
        work,
        way.setting,
        teeth === null || order === "moves" ? teethAsReached(work, way.setting, wanted) : wanted,
      );
    case "nearest-hole":
      return placesByHole(work, way.setting.circle, wanted);
    case "dial":
    case "ring":
      return placesByScale(work, way.by, wanted);
  }
}

/** All teeth, from the start on. */
export function allTeeth({ count, startTooth }: Work): readonly number[] {
  return Array.from({ length: count }, (_, index) => 1 + ((startTooth - 1 + index) % count));
}

/** The greatest error of the places that matter, without sign. */
export function worstOf(places: readonly Place[], { matters }: Pick<Asked, "matters">): number {
  let worst = 0;
  for (const { tooth, errorArcSeconds } of places) {
    if (matters === undefined || matters.has(tooth)) worst = Math.max(worst, Math.abs(errorArcSeconds));
  }
  return worst;
}
