import type { Head } from "../../head/head.ts";
import type { Place } from "../../machine/place.ts";
import { type Plan, type PlannedJob, planJob } from "../../machine/plan.ts";
import type { PlanOptions } from "../../machine/plan-options.ts";
import { checkKeys, keysOf } from "../../number/check-options.ts";
import { errorAtRadius } from "../../number/error-at-radius.ts";
import { searchKeys } from "../../search/exact-settings.ts";
import { type PreparedHead, prepare } from "../../search/prepare.ts";
import type { RecutPlan } from "./damaged-teeth.ts";

/** What is done at a space of the gear. */
export type RepairPurpose = "set the cutter" | "recut" | "prove the count";

/** One space to go to, with where everything stands there. Its `tooth` is the number of the space. */
export interface RepairPlace {
  readonly toothSpace: number;
  readonly purpose: RepairPurpose;
  readonly position: Place;
}

/** How the places of a repair are set up on the head: which settings to look among, and where it starts. */
export type RepairPlaceOptions = Omit<PlanOptions, "teeth" | "after" | "order" | "matters" | "startTooth" | "goodEnough">;

/** The keys of {@link RepairPlaceOptions}. */
export const placeKeys: readonly string[] = keysOf<RepairPlaceOptions>({
  ...searchKeys,
  setting: true,
  by: true,
  startHole: true,
  startAngle: true,
  side: true,
  direction: true,
});

/** In mm at the reference circle: what no file or cutter tells apart, so that the least work goes first; our own choice. */
const goodEnough = 0.005;

/**
 * Plans the places of a repair on a head, counted from the sound start space: first the start, then
 * every space to be recut in the order in which the way reaches them, last the sound space that
 * proves the count.
 *
 * A near move is off by the same error every time, so m moves from the sound space it is off by m
 * times that: over the few teeth of a repair far less than over the whole gear. Against it stand the
 * nearest hole, on the circle that does best for these spaces, the dial and the ring. Those that
 * leave less than 0.005 mm at the reference circle come first, the least work before the rest; then
 * the smaller error.
 *
 * @param radius - Of the reference circle, in mm.
 * @throws {@link InputError} as {@link planJob} does; which teeth are gone to, and where it starts, is for the repair to say.
 *
 * @example
 * ```ts
 * repairPlan(readyHeads[0], recutPlan(86, { damaged: [31] }), 86).exact; // true
 * ```
 */
export function repairPlan(head: Head | PreparedHead, plan: RecutPlan, radius: number, options: RepairPlaceOptions = {}): Plan {
  checkKeys(options, placeKeys, "options");
  const target = { divisions: plan.teeth };
  const cuts = plan.spaces.map(({ toothSpace }) => toothSpace);
  const from = { ...options, startTooth: plan.startSpace, matters: cuts };
  const on = prepare(head);
  const found = planJob(on, target, {
    ...from,
    teeth: cuts,
    order: "moves",
    goodEnough: goodEnough / errorAtRadius(1, radius).mm,
  });
  if (!found.planned) return found;
  const inOrder = found.places.map(({ tooth }) => tooth);
  const { setting } = found.way;
  const job = planJob(on, target, { ...from, setting, teeth: [plan.startSpace, ...inOrder, plan.proofSpace.toothSpace] });
  return job.planned ? { ...job, others: found.others } : job;
}

/**
 * The places of a planned repair with what is done at each.
 *
 * @example
 * ```ts
 * repairPlaces(repairPlan(readyHeads[0], recutPlan(86, { damaged: [31] }), 86)).map(({ purpose }) => purpose)[1]; // "recut"
 * ```
 */
export function repairPlaces({ places }: Pick<PlannedJob, "places">): readonly RepairPlace[] {
  const last = places.length - 1;
  return places.map((position, index) => ({
    toothSpace: position.tooth,
    purpose: index === 0 ? "set the cutter" : index === last ? "prove the count" : "recut",
    position,
  }));
}
