import type { ErrorBudget, ErrorGrades, ErrorItem, ErrorSource, ErrorSum } from "../gear/error-budget.ts";
import type { Item } from "./item.ts";
import { lengthsIn, type Unit } from "./lengths.ts";
import { arcUpTo, listed } from "./numbers.ts";

/** What an error is made of as a title: `WHAT THE ERROR IS MADE OF, at a radius of 50.000 mm`. */
export function budgetTitle({ radius }: ErrorBudget, unit: Unit): string {
  return `WHAT THE ERROR IS MADE OF, at a radius of ${lengthsIn(unit)(radius)}`;
}

const terms: Readonly<Record<ErrorSource, string>> = {
  setting: "Setting",
  "run-out": "Run-out",
  holes: "Holes",
  worm: "Worm",
  reading: "Reading",
};

const comesOf: Readonly<Record<ErrorSource, string>> = {
  setting: "by itself, were all else true",
  "run-out": "the axis is off by half of what the indicator shows",
  holes: "what the holes are off by, over the worm ratio",
  worm: "of worm and wheel, which nothing divides",
  reading: "as near as the scale is read",
};

/** What each source leaves, what they come to, and which of them matters. */
export function budgetItems(budget: ErrorBudget, unit: Unit): readonly Item[] {
  const { items, together, withoutSetting } = budget;
  return [
    ...items.map((each) => ({ term: terms[each.code], text: itemWords(each, unit) })),
    { term: "Together", text: `no place over ${size(together, unit)}, were all at their worst the same way` },
    ...matterItems(budget, unit),
    ...gradeItems(together, withoutSetting),
  ];
}

function itemWords(each: ErrorItem, unit: Unit): string {
  if (each.code === "setting" && each.arcSeconds === 0) return "nothing: it is exact";
  return `${size(each, unit)}: ${comesOf[each.code]}`;
}

/** A bound on an error, as an angle and along the arc. */
function size({ arcSeconds, mm }: Pick<ErrorSum, "arcSeconds" | "mm">, unit: Unit): string {
  return arcSeconds === 0 ? "nothing" : `${arcUpTo(arcSeconds)} (${lengthsIn(unit).upTo(mm, placesOfErrors)})`;
}

const placesOfErrors = 4;

/** With one source there is nothing to weigh. */
function matterItems({ items, together, withoutSetting }: ErrorBudget, unit: Unit): readonly Item[] {
  const [greatest] = items;
  const setting = items.find(({ code }) => code === "setting");
  if (greatest === undefined || items.length === 1 || together.arcSeconds === 0) return [];
  const matters = { term: "What matters", text: `most is ${what(greatest)}` };
  if (setting === undefined || setting.arcSeconds === 0) return [matters];
  return [
    matters,
    {
      term: "Set exactly",
      text: `it would still be ${size(withoutSetting, unit)} off: ${partWords(setting.arcSeconds / together.arcSeconds)} is the setting`,
    },
  ];
}

function what({ code }: ErrorItem): string {
  const words: Readonly<Record<ErrorSource, string>> = {
    setting: "the setting itself",
    "run-out": "the run-out: set the work true first",
    holes: "the holes of the plate",
    worm: "the worm and its wheel",
    reading: "the reading of the scale",
  };
  return words[code];
}

function partWords(part: number): string {
  return `${Math.max(1, Math.round(100 * part))} per cent of it`;
}

function gradeItems({ grades, arcSeconds }: ErrorSum, exact: ErrorSum): readonly Item[] {
  if (grades === null || exact.grades === null) return [];
  const [text, then] = [gradeWords(grades), gradeWords(exact.grades)];
  if (arcSeconds === exact.arcSeconds) return [{ term: "Grade", text }];
  return [
    { term: "Grade", text: `${text}; ${text === then ? "an exact setting would not change that" : `set exactly, ${then}`}` },
  ];
}

function gradeWords({ toothToTooth, allRound }: ErrorGrades): string {
  const grade = (finest: number | null) => (finest === null ? "worse than 12" : String(finest));
  return `tooth to tooth ${grade(toothToTooth)}, all round ${grade(allRound)}`;
}

/** What the grades of a budget are. */
export const budgetGradeNote =
  "Grades are those of ISO 1328-1:1995 (its formulas from memory) for a gear of that pitch radius, for these errors alone: by the single pitch deviation, and by the total.";

const untoldWords: Readonly<Record<ErrorSource, string>> = {
  setting: "the setting",
  "run-out": "what the work runs out",
  holes: "the holes of the plate",
  worm: "worm and wheel",
  reading: "the reading of a scale",
};

/** What was not reckoned with; empty where all was. */
export function untoldItems(untold: readonly ErrorSource[]): readonly Item[] {
  return untold.length === 0 ? [] : [{ term: "Not reckoned", text: listed(untold.map((code) => untoldWords[code])) }];
}
