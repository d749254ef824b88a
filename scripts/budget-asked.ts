import {
  type Answer,
  arcSeconds,
  type ErrorSource,
  type Head,
  type PlannedJob,
  type SettingBudgetOptions,
  settingBudget,
} from "../src/index.ts";
import { type AtRadius, budgetGradeNote, budgetItems, budgetTitle, type Item, listed, untoldItems } from "../src/words/index.ts";
import type { budgetOptions } from "./budget-options.ts";
import { angleFromZero, fault, millimetresFromZero } from "./command-line.ts";
import { askedAs } from "./gear-options.ts";
import { type More, nothingMore } from "./more.ts";
import type { Given } from "./read-options.ts";
import { apart, itemLines, paragraph } from "./words.ts";

type BudgetGiven = Given<typeof budgetOptions>;

/** What the library calls the options. */
export const budgetNames: Readonly<Record<string, string>> = {
  radius: "--radius",
  runOut: "--run-out",
  holeError: "--hole-error",
  "holes.error": "--hole-error",
  "holes.circleDiameters[0]": "--circle-diameter",
  circleDiameter: "--circle-diameter",
  wormErrorArcSeconds: "--worm-error",
  readingArcSeconds: "--read-within",
};

/** Reads what is said of errors besides the setting's own. */
export function budgetRead(radius: AtRadius, given: BudgetGiven): SettingBudgetOptions {
  const { "run-out": runOut, "hole-error": hole, "circle-diameter": circle, "worm-error": worm, "read-within": within } = given;
  return {
    radius: radius.mm,
    ...(runOut !== undefined && { runOut: millimetresFromZero(runOut, "--run-out") }),
    ...(hole !== undefined && { holeError: millimetresFromZero(hole, "--hole-error") }),
    ...(circle !== undefined && { circleDiameter: millimetresFromZero(circle, "--circle-diameter") }),
    ...(worm !== undefined && { wormErrorArcSeconds: arcSeconds(angleFromZero(worm, "--worm-error")) }),
    ...(within !== undefined && { readingArcSeconds: arcSeconds(angleFromZero(within, "--read-within")) }),
  };
}

/** What the error is made of, asked for by `--budget`: of the positions listed by their way, else of the setting that leads. */
export function budgetAsked(
  answer: Answer,
  head: Head,
  radius: AtRadius | null,
  given: BudgetGiven,
  planned: PlannedJob | undefined,
): More {
  if (radius === null) throw fault("missing", "--budget", "needs the radius of the work; add --radius 50");
  const setting = planned?.way.setting ?? (answer.exact ? answer.settings[0] : answer.near[0]);
  if (setting === undefined) return nothingMore;
  const asked = budgetRead(radius, given);
  const worst = planned === undefined ? {} : { worstArcSeconds: planned.worstArcSeconds };
  const ask = () => settingBudget(head, answer.target, setting, { ...asked, ...worst });
  const budget = askedAs(given, ask, budgetNames);
  return {
    data: { budget },
    lines: [
      "",
      `  ${budgetTitle(budget, radius.unit)}`,
      ...(budget.together.grades === null ? [] : [paragraph(budgetGradeNote)]),
      "",
      ...itemLines(budgetItems(budget, radius.unit)),
      ...apart(itemLines(untoldItems(budget.untold).map((item) => withOptions(item, budget.untold)))),
    ],
  };
}

const optionOf: Readonly<Record<ErrorSource, string>> = {
  setting: "--by",
  "run-out": "--run-out",
  holes: "--hole-error",
  worm: "--worm-error",
  reading: "--read-within",
};

/** What was not said is said by these. */
function withOptions(item: Item, untold: readonly ErrorSource[]): Item {
  return { ...item, text: `${item.text}; give what is known with ${listed(untold.map((code) => optionOf[code]))}` };
}
