import {
  type Answer,
  cautionsFor,
  type Found,
  type Head,
  kindOf,
  type NotPossible,
  planJob,
  prove,
  type Setting,
  wayOf,
} from "../src/index.ts";
import {
  type AtRadius,
  cautionsBesides,
  gradeNote,
  headLine,
  holesUsedWords,
  isShownImpossible,
  kindWords,
  marksAmong,
  nearItems,
  noNear,
  passedOverItems,
  proofShort,
  proofShownWords,
  proofWords,
  reasonItems,
  routeItems,
  settingItemsAmong,
  settingTitle,
  shortSetting,
  shownImpossible,
  targetWords,
  triedWords,
  untriedWords,
} from "../src/words/index.ts";
import { apart, itemLines, line, paragraph } from "./words.ts";

/** How an answer is told. */
export interface Telling {
  readonly head: Head;
  /** The plate that is on the head now. */
  readonly mounted: string | null;
  readonly radius: AtRadius | null;
  /** Whether near settings were asked for, are told where there are any, or stand with the positions that follow. */
  readonly near: "asked" | "told" | "below";
  /** Whether the proof is wanted in full. */
  readonly proof: boolean;
  /** The most settings to name, where it was said. */
  readonly limit: number | null;
}

/** The answer in words, to be read at arm's length. */
export function answerLines(answer: Answer, telling: Telling): string[] {
  const body = answer.exact ? exactLines(answer, telling) : impossibleLines(answer, telling);
  return [
    targetWords(answer.target),
    headLine(telling.head),
    "",
    ...body,
    ...apart(answer.untried.length === 0 ? [] : [paragraph(untriedWords(answer.untried))]),
    ...(telling.near === "below" ? [] : nearLines(answer, telling)),
  ];
}

function exactLines(answer: Found, telling: Telling): string[] {
  const { settings } = answer;
  const [best, ...others] = settings;
  const byCrank = best.method === "direct" ? others.find(({ method }) => method !== "direct") : undefined;
  const noError = { term: "Off by", text: "nothing, at any radius: it closes exactly" };
  return [
    `  ${settingTitle(best)}: exact`,
    "",
    ...settingLines(best, answer, telling),
    ...itemLines(telling.radius === null || answer.near.length > 0 ? [] : [noError]),
    ...(byCrank === undefined
      ? []
      : ["", `  OR BY THE CRANK: ${settingTitle(byCrank)}: exact`, "", ...settingLines(byCrank, answer, telling)]),
    ...otherLines(
      answer,
      others.filter((each) => each !== byCrank),
      telling,
    ),
    ...apart(itemLines(passedOverItems(answer, telling.head))),
  ];
}

/** A setting in full, its proof last. */
function settingLines(setting: Setting, { settings, target }: Found, { head, mounted, proof }: Telling): string[] {
  const alike = settings.filter(({ method }) => method === setting.method);
  return [
    ...itemLines(settingItemsAmong(setting, alike, mounted, head)),
    ...(setting.method === "direct" ? [line("Holes used", holesUsed(setting, target, head))] : []),
    ...proofLines(setting, head, proof),
  ];
}

const mostHolesNamed = 60;

function holesUsed(setting: Setting, target: Found["target"], head: Head): string {
  if (setting.proof.moves > mostHolesNamed) return "--teeth all lists them";
  const plan = planJob(head, target, { setting });
  return plan.planned ? holesUsedWords(plan.places, plan.way) : "";
}

/** The most moves that are made one by one. */
const mostWalked = 100_000;

function proofLines(setting: Setting, head: Head, inFull: boolean): string[] {
  if (!inFull) return [line("Proof", proofShort(setting))];
  const proof = setting.proof.moves > mostWalked ? setting.proof : prove(setting, { walkOn: head });
  const walked = { ...setting, proof };
  return [line("Proof", proofWords(walked)), line("Shown", proofShownWords(walked))];
}

const mostShown = 10;

/** The other settings in few words: those of the same kind, then with `--all` those of the others. */
function otherLines(
  { settings, complete, untried }: Found,
  others: readonly Setting[],
  { mounted, limit }: Telling,
): readonly string[] {
  const [best] = settings;
  const term = (setting: Setting) => (kindOf(setting) === kindOf(best) ? "Or" : kindWords[kindOf(setting)].name);
  const shown = others.slice(0, limit ?? mostShown);
  const lines = shown.map((setting, index) => {
    const alike = settings.filter(({ method }) => method === setting.method);
    const before = shown[index - 1];
    const isNew = before === undefined || term(before) !== term(setting);
    return line(isNew ? term(setting) : "", `${shortSetting(setting)}${marksAmong(setting, alike, mounted)}`);
  });
  const left = others.length - shown.length;
  if (!complete && untried.length === 0) lines.push(line("", "and more; a greater --limit lists them"));
  else if (left > 0) lines.push(line("", `and ${left} others; --limit ${settings.length} lists them`));
  return apart(lines);
}

function impossibleLines(answer: NotPossible, { head, proof }: Telling): string[] {
  const isShown = isShownImpossible(answer.impossible);
  const tried = triedWords(answer);
  const routes = itemLines(routeItems(answer));
  return [
    isShown ? "  NOT POSSIBLE exactly with what this head has" : "  NONE FOUND that is exact, and not everything was tried",
    "",
    ...itemLines(reasonItems(answer.impossible.reasons, head)),
    ...apart(tried === "" ? [] : [paragraph(`${tried} --teeth-per-move tries more.`)]),
    ...apart(proof && isShown ? [paragraph(shownImpossible)] : []),
    ...apart(routes.length === 0 ? [] : [paragraph("What would help, the least effort first:"), ...routes]),
    ...drillLines(answer),
  ];
}

/** Where a circle would do it, what says how it is drilled. */
function drillLines({ routes }: NotPossible): readonly string[] {
  const drill = routes.find(({ kind }) => kind === "circle");
  if (drill?.kind !== "circle") return [];
  const circle = `plate ${drill.circles[0]} --diameter LENGTH`;
  return [
    "",
    paragraph(
      `${circle} tells how such a circle is drilled, on this head (give the same --head) or another, and how good it is.`,
    ),
  ];
}

const mostNearShown = 6;

function nearLines(answer: Answer, { radius, limit, near: asked }: Telling): readonly string[] {
  const { near, target } = answer;
  if (near.length === 0) return asked === "asked" ? ["", line("Near settings", noNear)] : [];
  const count = "divisions" in target ? target.divisions : null;
  const shown = near.slice(0, limit ?? mostNearShown);
  const left = near.length - shown.length;
  return [
    "",
    "  NEAR ONLY, NOT EXACT: each leaves the error that it states",
    ...(radius === null ? [] : [paragraph(gradeNote(radius, count))]),
    "",
    ...shown.flatMap((setting) => itemLines(nearItems(setting, count, radius))),
    ...(left > 0 ? [line("", `and ${left} that are worse; --limit ${near.length} lists them`)] : []),
    ...apart(
      answer.exact || count === null
        ? []
        : [paragraph("--teeth all lists every position by the best of them, --by takes another way.")],
    ),
  ];
}

/** What is to be minded when the way that leads is set up; empty where there is none, not even a near one. */
export function cautionsOf(answer: Answer, head: Head): string {
  const setting = answer.exact ? answer.settings[0] : answer.near[0];
  if (setting === undefined) return "";
  return cautionsBesides(cautionsFor(wayOf(setting), head));
}
