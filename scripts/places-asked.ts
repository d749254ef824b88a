import { type Answer, type Head, type PlannedJob, type PlanOptions, type PreparedHead, planJob } from "../src/index.ts";
import {
  type AtRadius,
  asNearAsRead,
  backWords,
  cautionsBesides,
  checkItem,
  goesBy,
  legendWords,
  noPlaces,
  offBy,
  orderItems,
  placeNoun,
  planWithWhys,
  positionColumns,
  secondRoundWords,
  wayItems,
  wayShort,
  wayTitle,
} from "../src/words/index.ts";
import { fault, optionNames, wholeNumber } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { placeTable } from "./place-table.ts";
import { withOptionNames } from "./read-options.ts";
import { everyAsked, searchAsked, startAsked, wayAsked } from "./shared-options.ts";
import { apart, itemLines, line, paragraph } from "./words.ts";

/** The positions asked for by `--teeth` or `--after`, each by the way that leads or by the one named. */
export function placesAsked(answer: Answer, head: PreparedHead, radius: AtRadius | null, options: Options): More {
  const asked = planOptions(answer, options);
  const plan = withOptionNames(optionNames, () => planJob(head, answer.target, asked));
  if (!plan.planned) {
    return {
      data: { positions: [], plan: planWithWhys(plan) },
      table: positionColumns([]),
      lines: ["", paragraph(noPlaces.possible)],
    };
  }
  checkGoesBack(plan, options);
  return {
    data: { positions: plan.places, plan: planWithWhys(plan) },
    table: positionColumns(plan.places),
    lines: planLines(plan, { answer, head: head.head, radius, asked }),
    cautions: cautionsBesides(plan.cautions),
    planned: plan,
  };
}

function planOptions(answer: Answer, options: Options): PlanOptions {
  const { teeth, every, after, by, nearer } = options;
  return {
    ...searchAsked(options),
    ...startAsked(options),
    // What was answered is what is set up: the search is not made again.
    ...(answer.exact && by === undefined && { setting: answer.settings[0] }),
    ...(by !== undefined && { by: wayAsked(by) }),
    ...(after !== undefined && { after: wholeNumber(after, "--after") }),
    ...(teeth !== undefined && teeth.trim() !== "all" && { teeth: numbersListed(teeth, "--teeth") }),
    ...(every !== undefined && "divisions" in answer.target && { teeth: everyAsked(answer.target.divisions, every) }),
    direction: nearer === true ? "nearer" : "forward",
  };
}

/** Going back changes a list only where teeth are named, and turns are counted to them. */
function checkGoesBack({ way }: PlannedJob, { nearer, teeth }: Options): void {
  if (nearer !== true) return;
  if (teeth?.trim() === "all")
    throw fault("no-effect", "--nearer", "has no effect on all teeth in their order; name the teeth, or leave it out");
  if (way.by === "ring")
    throw fault("no-effect", "--nearer", `has no effect where each position is set by ${wayShort(way)}; leave it out`);
}

interface Planned {
  readonly answer: Answer;
  readonly head: Head;
  readonly radius: AtRadius | null;
  readonly asked: PlanOptions;
}

function planLines(plan: PlannedJob, planned: Planned): readonly string[] {
  const { asked, head } = planned;
  if (plan.places.length === 0) return ["", paragraph(noPlaces.left)];
  const after = asked.after ?? null;
  const back = backWords(plan.places);
  return [
    "",
    ...setUpLines(plan, planned),
    ...apart([paragraph(legendWords(plan, { after, side: asked.side ?? "plus", head }))]),
    "",
    ...placeTable(plan, head),
    ...apart(back === "" ? [] : [paragraph(back)]),
    ...apart(itemLines(orderItems(plan, head))),
    ...apart(itemLines(plan.checks.map((check) => checkItem(check, plan.way, { noun: placeNoun(plan.target) })))),
    ...secondRoundLines(plan, planned),
    ...otherWays(plan, planned),
  ];
}

/** An exact setting stands above in full; a near way only in few words, and so it is set up here. */
function setUpLines(plan: PlannedJob, { asked, head, radius }: Planned): readonly string[] {
  const list = asked.after === undefined ? "POSITIONS" : `WHAT IS LEFT AFTER TOOTH ${asked.after}`;
  if (plan.exact) return [`  ${list}`];
  return [
    `  ${list}: NEAR ONLY, NOT EXACT`,
    `  ${wayTitle(plan.way)}`,
    "",
    ...itemLines(wayItems(plan.way, head)),
    line("Off by", offListed(plan, radius)),
  ];
}

function offListed({ worstArcSeconds, way }: PlannedJob, radius: Planned["radius"]): string {
  if (worstArcSeconds > 0) return `no position listed over ${offBy(worstArcSeconds, radius)}`;
  return way.by === "ring" ? asNearAsRead : "nothing";
}

/** Where the pins are in other holes when the work comes round again. */
function secondRoundLines({ target, way }: PlannedJob, { head, asked }: Planned): readonly string[] {
  const { setting } = way;
  if (!setting.exact || goesBy(way) !== "index-holes" || setting.circle === null) return [];
  const { pinTurns, moves } = setting.proof;
  if (pinTurns === null || !pinTurns.includes("/")) return [];
  const plan = planJob(head, target, { setting, startHole: asked.startHole, teeth: [moves, 1] });
  const again = plan.planned ? plan.places[1] : undefined;
  return again?.by === "moves" ? ["", paragraph(secondRoundWords(again))] : [];
}

const mostWaysShown = 4;

/** The ways that were not taken, with how far off they are over the same teeth. */
function otherWays(plan: PlannedJob, { answer, radius }: Planned): readonly string[] {
  if (answer.exact && !plan.exact) return ["", paragraph("The setting above has no error at all: leave --by out to follow it.")];
  const { others, way } = plan;
  if (others.length === 0) return [];
  const shown = others
    .slice(0, mostWaysShown)
    .map(
      (other) =>
        `${wayShort(other)}: ${other.worstArcSeconds === 0 ? "no error" : `up to ${offBy(other.worstArcSeconds, radius)} off`}`,
    );
  const named = [...new Set(others.map(({ by }) => by))].filter((by) => by !== way.by);
  return [
    "",
    ...shown.map((text, index) => line(index === 0 ? "Other ways" : "", text)),
    ...(named.length === 0 ? [] : [line("", `--by ${named.join(", --by ")} ${named.length === 1 ? "takes it" : "take them"}`)]),
  ];
}
