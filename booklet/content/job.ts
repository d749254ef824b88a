import {
  fromExact,
  type Head,
  InputError,
  type LengthUnit,
  type Plan,
  type PlannedJob,
  type PlanOptions,
  type PreparedHead,
  planJob,
  prepare,
  type Revolutions,
  type SettingBudgetOptions,
  settingBudget,
  type Target,
} from "../../src/index.ts";
import { checkAngle } from "../../src/number/angle.ts";
import {
  arcUpTo,
  asNearAsRead,
  budgetItems,
  cautionItemsBesides,
  checkItem,
  counted,
  eachPlaceItem,
  type Item,
  lengthsIn,
  nearErrorWords,
  offByItems,
  orderItems,
  otherWayItems,
  shortAngle,
  startItem,
  untoldItems,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, Part } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { walked } from "./head-counts.ts";
import { itemList } from "./item-list.ts";
import { drawings, markOf, ruleOf, setUp } from "./job-setting.ts";
import { positionsTable } from "./place-table.ts";
import { keyedHead } from "./plate-keys.ts";
import { ratioOrNone } from "./words.ts";

/** What the error of a job is made of, beside the setting; its lengths in mm. */
export type JobBudget = Omit<SettingBudgetOptions, "worstArcSeconds"> & {
  /** The unit that lengths are printed in; left out, mm. */
  readonly unit?: LengthUnit | undefined;
};

/** One job: a count, or an angle made over and over, and how it is done where it is not to be done as is best. */
export type Job = Target & PlanOptions & { readonly budget?: JobBudget | undefined };

/** Writes the sheet of one job: the way, every place with a box to tick, checks on the way, cautions. */
export function jobOf(head: Head, edition: Edition, job: Job): Book {
  const plan = plannedJob(head, job);
  return {
    title: head.name,
    fileTitle: `${titleOf(plan.target)}, job sheet: ${head.name}`,
    subject: `Job sheet: ${titleOf(plan.target)} on ${ratioOrNone(head)}`,
    digest: edition.digest,
    running: runningOf(keyedHead(head), edition),
    parts: [partOf(plan, head, job, budgetOf(plan, head, job.budget))],
    sheetsStandAlone: false,
  };
}

/** The job planned for its sheet, its setting proved. */
export function plannedJob(head: Head, job: Job): PlannedJob {
  return planned(prepare(head), job);
}

/** The most places that a sheet lists. */
const mostPlaces = 1000;

/** A job before it is known whether it is a count or an angle. */
interface AnyJob extends PlanOptions {
  readonly budget?: JobBudget | undefined;
  readonly divisions?: number;
  readonly angle?: Revolutions;
}

/** The job planned, its setting turned through all its moves before it may be printed. */
function planned(on: PreparedHead, { divisions, angle, budget: _, ...options }: AnyJob): PlannedJob {
  const target = { ...(divisions !== undefined && { divisions }), ...(angle !== undefined && { angle }) } as Target;
  const plan = planWithin(on, target, options);
  if (!plan.planned) {
    const problem = `${titleOf(plan.target)} cannot be done on this head, not even nearly; look it up for the routes that remain`;
    throw new InputError([{ code: "not-owned", place: "job", problem }]);
  }
  checkLength(plan.places.length);
  if (plan.way.by === "moves" && plan.way.setting.exact) walked(plan.way.setting, on);
  return plan;
}

function checkLength(places: number): void {
  checkPlaces(places, "job", "positions are too many for a job sheet", ", or name the teeth");
}

/** Refuses more places than a sheet lists. */
export function checkPlaces(places: number, place: string, areTooMany: string, or = ""): void {
  if (!(places > mostPlaces)) return;
  const problem = `${places} ${areTooMany}; give at most ${mostPlaces}${or}`;
  throw new InputError([{ code: "too-many", place, problem }]);
}

/**
 * All places, where a sheet holds them. Of an angle that takes more moves to come back to its start,
 * those that lie within one turn of the work.
 */
function planWithin(on: PreparedHead, target: Target, options: PlanOptions): Plan {
  if (options.teeth !== undefined || options.after !== undefined) return planJob(on, target, options);
  if (!("angle" in target)) {
    checkLength(target.divisions);
    return planJob(on, target, options);
  }
  const { n, d } = fromExact(checkAngle(target.angle));
  if (d <= BigInt(mostPlaces)) return planJob(on, target, options);
  const { startTooth = 1 } = options;
  const teeth = (many: number) => Array.from({ length: many }, (_, index) => ((startTooth - 1 + index) % Number(d)) + 1);
  const start = planJob(on, target, { ...options, teeth: teeth(1) });
  if (!start.planned || !start.exact) return planJob(on, target, options);
  const withinTurn = Math.max(2, Math.min(mostPlaces, Number(d / n) + 1));
  return planJob(on, target, { ...options, setting: start.way.setting, teeth: teeth(withinTurn) });
}

/** A job by name: `127 divisions`. */
export function titleOf(target: Target): string {
  return "divisions" in target ? counted(target.divisions, "division") : `Angle of ${shortAngle(target.angle)}`;
}

function partOf(plan: PlannedJob, head: Head, { after }: PlanOptions, budget: readonly Item[]): Part {
  const { way, exact } = plan;
  const left = after === undefined ? "" : `, what is left after tooth ${after}`;
  return {
    id: "job",
    title: `${titleOf(plan.target)}${left}${exact ? "" : ", not exact"}`,
    mark: markOf(way),
    rule: ruleOf(plan, head),
    ...(exact ? {} : { warning: `Not exact: ${errorOf(plan)}.` }),
    blocks: [
      ...setUp(way, head),
      ...drawings(way, head),
      ...listIfAny(orderItems(plan, head)),
      itemList([startItem(plan, head), eachPlaceItem(way, head), ...cautionItemsBesides(plan.cautions), ...offByItems(plan)]),
      ...listIfAny(plan.checks.map((check) => checkItem(check, way, { head }))),
      ...listIfAny(otherWayItems(plan.others)),
      ...listIfAny(budget),
      positionsTable(plan, head),
      { kind: "ruled", text: "Notes: part, material, cutter, depth, date", lines: 5, least: 2 },
    ],
  };
}

/** How far the places listed are off; of a whole round what it leaves at its end, too. */
function errorOf({ target, way, places, worstArcSeconds }: PlannedJob): string {
  const { setting } = way;
  const count = "divisions" in target ? target.divisions : null;
  // In an order of its own the error of moves adds up over more than a round.
  const isUsual = worstArcSeconds <= setting.worstArcSeconds;
  if (!setting.exact && count === places.length && isUsual) return nearErrorWords(setting, count, null);
  if (worstArcSeconds === 0) return way.by === "ring" ? asNearAsRead : "no place listed is off at all";
  return `no place listed is off by over ${arcUpTo(worstArcSeconds)}`;
}

/** What the error of the places listed is made of; nothing where it was not asked. */
function budgetOf(plan: PlannedJob, head: Head, asked: JobBudget | undefined): readonly Item[] {
  if (asked === undefined) return [];
  const { unit = "mm", ...known } = asked;
  const { way, target, worstArcSeconds } = plan;
  const budget = settingBudget(head, target, way.setting, { ...known, worstArcSeconds });
  return [
    { term: "Error", text: `what it is made of, at a radius of ${lengthsIn(unit)(budget.radius)}` },
    ...budgetItems(budget, unit),
    ...untoldItems(budget.untold),
  ];
}

function listIfAny(items: readonly Item[]): readonly Block[] {
  return items.length === 0 ? [] : [itemList(items)];
}
