import { type Answer, formatAngle, type Head, type Reason, type Setting } from "../src/index.ts";
import { nearLines, routeLines } from "./near-words.ts";
import { settingLines, settingTitle, shortSetting } from "./setting-words.ts";
import { count, headLine, line, paragraph } from "./words.ts";

/** The answer in words, to be read at arm's length. */
export function answerWords(answer: Answer, head: Head, radius: number | null): string[] {
  const [best, ...others] = answer.settings;
  const body = best ? exactWords(answer, head, best, others) : impossibleWords(answer, head);
  return [targetWords(answer), headLine(head), "", ...body, ...nearLines(answer, radius)];
}

function targetWords({ target }: Answer): string {
  return "divisions" in target ? count(target.divisions, "division").toUpperCase() : `ANGLE ${formatAngle(target.angle, 2)}`;
}

function exactWords(answer: Answer, head: Head, best: Setting, others: readonly Setting[]): string[] {
  return [
    `  ${settingTitle(best)}: exact`,
    "",
    ...settingLines(best, head),
    ...otherWords(answer, others),
    ...passedOverWords(answer, head),
  ];
}

/** Nobody asks why a head without a direct plate does no direct indexing, or one without a dial none by it. */
function isTold({ directPlates, dial }: Head): (reason: Reason) => boolean {
  return ({ method }) => (method !== "direct" || directPlates.length > 0) && (method !== "dial" || dial !== null);
}

function methodName(method: string): string {
  return `${method[0]?.toUpperCase()}${method.slice(1)}`;
}

/** Why not the methods that would be preferred. */
function passedOverWords({ passedOver }: Answer, head: Head): string[] {
  const told = passedOver.filter(isTold(head));
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

function impossibleWords(answer: Answer, head: Head): string[] {
  const { impossible, target } = answer;
  const most = impossible?.teethPerMoveTried ?? 1;
  return [
    "  NOT POSSIBLE exactly with what this head has",
    "",
    ...(impossible?.reasons ?? []).filter(isTold(head)).map(({ method, why }) => line(methodName(method), why)),
    ...(most > 1 && "divisions" in target
      ? ["", paragraph(`Moves of 1 to ${most} teeth were tried; --teeth-per-move tries more.`)]
      : []),
    ...routeLines(answer),
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
