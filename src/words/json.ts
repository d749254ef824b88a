import type { Answer } from "../answer.ts";
import type { Reason } from "../instead/impossible.ts";
import type { Route } from "../instead/routes.ts";
import type { Caution } from "../machine/caution.ts";
import type { DrilledPlate } from "../machine/drill-plate.ts";
import type { Graduated } from "../machine/graduate.ts";
import type { NoJob, Plan, PlannedJob } from "../machine/plan.ts";
import type { Way } from "../machine/way.ts";
import type { Untried } from "../search/efforts.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import type { TableRow } from "../table.ts";
import { untriedWords } from "./answer-words.ts";
import { cautionItem } from "./caution-words.ts";
import { foulingWords } from "./gear-train-words.ts";
import { whyNotWords } from "./why-not-words.ts";

/** An answer as JSON shows it: beside every code stands `why`, the same in English. */
export function answerWithWhys(answer: Answer): object {
  const { settings, near, passedOver, impossible, routes, untried } = answer;
  return {
    ...answer,
    settings: settings.map(settingWithWhy),
    near: near.map(settingWithWhy),
    passedOver: passedOver.map(reasonWithWhy),
    impossible: impossible && { ...impossible, reasons: impossible.reasons.map(reasonWithWhy) },
    untried: untried.map(untriedWithWhy),
    routes: (routes as readonly Route[]).map((route) => ({ ...route, setting: settingWithWhy(route.setting) })),
  };
}

/** The rows of a table as JSON shows them: beside every code stands `why`. */
export function tableWithWhys(rows: readonly TableRow[]): readonly object[] {
  return rows.map((row) => ({ ...row, setting: row.setting && settingWithWhy(row.setting) }));
}

/** A plan as JSON shows it, without its places: beside every code stands `why`. */
export function planWithWhys(plan: Plan): object {
  if (!plan.planned) {
    const { impossible, untried } = plan;
    const whys = { ...impossible, reasons: impossible.reasons.map(reasonWithWhy) };
    return { ...plan, impossible: whys, untried: untried.map(untriedWithWhy) };
  }
  const { places: _, ...job }: PlannedJob = plan;
  return {
    ...job,
    way: wayWithWhy(job.way),
    others: job.others.map(wayWithWhy),
    untried: job.untried.map(untriedWithWhy),
    cautions: job.cautions.map((caution: Caution) => ({ ...caution, why: cautionItem(caution).text })),
  };
}

/** A plate that is drilled as JSON shows it; the places of its plan stand with the holes. */
export function drilledWithWhys(plate: DrilledPlate | NoJob): object {
  if (!plate.planned) return planWithWhys(plate);
  return plate.by === "coordinates" ? plate : { ...plate, plan: planWithWhys({ ...plate.plan, places: [] }) };
}

/** A scale, line by line, as JSON shows it; the places of its plan stand with the lines. */
export function graduatedWithWhys(scale: Graduated | NoJob): object {
  if (!scale.planned) return planWithWhys(scale);
  return scale.shape === "straight" ? scale : { ...scale, plan: planWithWhys({ ...scale.plan, places: [] }) };
}

function wayWithWhy<Each extends Way>(way: Each): object {
  return { ...way, setting: settingWithWhy(way.setting) };
}

function reasonWithWhy(reason: Reason): object {
  return { ...reason, why: whyNotWords(reason) };
}

function untriedWithWhy(untried: Untried): object {
  return { ...untried, why: untriedWords([untried]) };
}

function settingWithWhy(setting: Setting | NearSetting): object {
  if (!("gears" in setting) || setting.gears.mayFoul === null) return setting;
  const { mayFoul } = setting.gears;
  return { ...setting, gears: { ...setting.gears, mayFoul: { ...mayFoul, why: foulingWords(mayFoul) } } };
}
