import type { Head } from "../head/head.ts";
import { keysOf, oneOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { groupDigits, type Revolutions } from "../number/ratio.ts";
import { type SearchOptions, searchKeys } from "../search/exact-settings.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import { checkHow, checkMatters } from "./check-plan.ts";
import { checkListed } from "./listed.ts";
import type { Way } from "./way.ts";
import { stepsOf, type Work } from "./work.ts";
import { checkZero, type Side } from "./zero.ts";

/** How a job is planned; what is left out is as on most jobs. */
export interface PlanOptions extends SearchOptions {
  /** The setting to follow, exact or near, as an answer of the same head and target gave it; left out, the best. */
  readonly setting?: Setting | NearSetting | undefined;
  /** The way to follow: by moves, or each place by itself from the start; left out, the best. */
  readonly by?: Way["by"] | undefined;
  /** The teeth to visit, 1 to the count; left out, all in the order that the moves reach them. */
  readonly teeth?: readonly number[] | undefined;
  /** The last tooth that is done: what comes after it is planned. Not beside `teeth`. */
  readonly after?: number | undefined;
  /** Whether teeth named are visited as they are given, which is usual, or as the moves reach them. */
  readonly order?: "given" | "moves" | undefined;
  /** Of the teeth named, those whose place matters, where some are only gone to; left out, all of them. */
  readonly matters?: readonly number[] | undefined;
  /** The tooth at which pin and scales stand as at the start; left out, 1. */
  readonly startTooth?: number | undefined;
  /** The hole of its circle that the pin stands in at the start; left out, 0. */
  readonly startHole?: number | undefined;
  /** Where ring and dial stand at the start, in revolutions from their zero; left out, at it. */
  readonly startAngle?: Revolutions | undefined;
  /** Which way ring and dial go from there; left out, plus. */
  readonly side?: Side | undefined;
  /** `"forward"` never turns back; `"nearer"` goes whichever way is less. Left out, forward. */
  readonly direction?: "forward" | "nearer" | undefined;
  /** In arc-seconds: near ways that leave no more are ranked by least work; left out, 0. */
  readonly goodEnough?: number | undefined;
}

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

/** The keys of {@link PlanOptions}. */
export const planKeys: readonly string[] = keysOf<PlanOptions>({
  ...searchKeys,
  setting: true,
  by: true,
  teeth: true,
  after: true,
  order: true,
  matters: true,
  startTooth: true,
  startHole: true,
  startAngle: true,
  side: true,
  direction: true,
  goodEnough: true,
});

/** The work as the options lay it out. */
export function workFrom(head: Head, target: Target, options: PlanOptions): Work {
  const { startTooth = 1, startHole = 0, direction = "forward", startAngle, side } = options;
  const steps = stepsOf(target);
  if (typeof startHole !== "number" || !Number.isInteger(startHole) || startHole < 0) {
    refuse(wholeNumberFault(startHole), "startHole", `${quoted(startHole)} is not a hole; give a whole number from 0`);
  }
  oneOf(direction, ["forward", "nearer"], "direction");
  return {
    head,
    ...steps,
    startTooth: checkTooth(startTooth, steps.count, "startTooth"),
    startHole,
    zero: checkZero({ startAngle, side }),
    direction,
  };
}

/** What is asked for of the work. */
export function askedFrom(options: PlanOptions, work: Work, target: Target): Asked {
  const { teeth, after, order = "given", matters, goodEnough = 0, by } = options;
  checkHow({ teeth, after, order, goodEnough, by });
  // Checked here, too, where the head can do no tooth of the job.
  if (after !== undefined) checkTooth(after, work.count, "after");
  // An angle that is not closed is gone to once: how many places there are is seen when the way is found.
  if (teeth === undefined && after === undefined && "divisions" in target) checkListed(work.count, "teeth");
  const wanted = teeth === undefined ? null : teethNamed(teeth, work, "teeth");
  return {
    teeth: wanted,
    order,
    matters: matters === undefined ? undefined : checkMatters(teethNamed(matters, work, "matters"), wanted),
    goodEnough,
  };
}

/** Checks a list of teeth: no more than can be listed, and each one of the work. */
function teethNamed(list: unknown, { count }: Work, place: string): readonly number[] {
  if (!Array.isArray(list))
    refuse("unreadable", place, `${quoted(list)} is not a list of teeth; give numbers such as [1, 17, 40]`);
  if (list.length === 0) refuse("missing", place, "the list names none; give teeth such as 1, 17, 40, or leave it out for all");
  checkListed(list.length, place);
  return Array.from(list, (tooth, index) => checkTooth(tooth, count, `${place}[${index}]`));
}

/** Checks the number of a tooth. */
export function checkTooth(tooth: unknown, count: number, place: string): number {
  if (typeof tooth === "number" && Number.isInteger(tooth) && tooth >= 1 && tooth <= count) return tooth;
  return refuse(
    wholeNumberFault(tooth),
    place,
    `${quoted(tooth)} is not a tooth of ${groupDigits(count)}; give 1 to ${groupDigits(count)}`,
  );
}
