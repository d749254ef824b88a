import { type Answer, formatAngle, type Head, type Setting } from "../src/index.ts";
import { settingLines, settingTitle, shortSetting } from "./setting-words.ts";
import { count, degrees, headLine, line, paragraph } from "./words.ts";

/** The answer in words, to be read at arm's length. */
export function answerWords(answer: Answer, head: Head): string[] {
  const [best, ...others] = answer.settings;
  return [targetWords(answer), headLine(head), "", ...(best ? exactWords(answer, head, best, others) : impossibleWords(answer))];
}

function targetWords({ target }: Answer): string {
  return "divisions" in target ? count(target.divisions, "division").toUpperCase() : `ANGLE ${formatAngle(target.angle, 2)}`;
}

function exactWords(answer: Answer, head: Head, best: Setting, others: readonly Setting[]): string[] {
  return [
    `  ${settingTitle(best)}: exact`,
    "",
    ...settingLines(best),
    ...otherWords(answer, others),
    ...passedOverWords(answer, head),
  ];
}

/** Why not the usual methods; nobody asks why a head without a direct plate does no direct indexing. */
function passedOverWords({ passedOver }: Answer, { directPlates }: Head): string[] {
  const told = passedOver.filter(({ method }) => method !== "direct" || directPlates.length > 0);
  return told.length === 0 ? [] : ["", ...told.map(({ method, why }) => line(`Not ${method}`, why))];
}

const mostShown = 10;

function otherWords({ complete }: Answer, others: readonly Setting[]): string[] {
  if (others.length === 0) return [];
  const shown = others.slice(0, mostShown).map((setting, index) => line(index === 0 ? "Or" : "", shortSetting(setting)));
  const left = others.length - shown.length;
  if (left > 0 || !complete)
    shown.push(line("", `and ${left}${complete ? "" : " or more"} others; --json lists them, --limit says how many`));
  return ["", ...shown];
}

function impossibleWords({ impossible, nearestCounts, circlesThatWouldDo, target }: Answer): string[] {
  const most = impossible?.teethPerMoveTried ?? 1;
  const what = "divisions" in target ? count(target.divisions, "division") : degrees(target.angle);
  return [
    "  NOT POSSIBLE exactly with what this head has",
    "",
    ...(impossible?.reasons.map(({ method, why }) => line(method[0]?.toUpperCase() + method.slice(1), why)) ?? []),
    ...(most > 1 ? [line("", `Moves of 1 to ${most} teeth were tried; --teeth-per-move tries more.`)] : []),
    "",
    ...(circlesThatWouldDo.length > 0
      ? [line("Would do it", `a circle of ${circlesThatWouldDo.join(", ")} holes, by simple indexing`)]
      : []),
    ...(nearestCounts.length > 0 ? [line("Nearest counts", `${nearestCounts.join(" and ")} can be done; ${what} cannot`)] : []),
  ];
}

/** What is said under every answer that leads to cutting. */
export function cautionLines({ settings: [best] }: Answer): string[] {
  const compound = best?.second ? " Keep the two parts in the same order all through, and take up the play in each." : "";
  return [
    "",
    paragraph(
      `Turn one way only. Past the hole: go back half a turn or more and come up to it again.${compound} Unlock the spindle to move, lock it to cut.`,
    ),
    paragraph(
      "Before metal is cut: make a light mark at every position and count them. Keep hands clear of a turning cutter; the machine's manual and your shop's rules come first.",
    ),
  ];
}
