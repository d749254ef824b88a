import type { Head } from "../head/head.ts";
import type { Coverage, WantedCounts } from "../kit/coverage.ts";
import type { UntriedOfKit } from "../kit/efforts.ts";
import type { Expectation } from "../kit/expected.ts";
import type { Adds } from "../kit/lacking.ts";
import { allMethods } from "../methods/registry.ts";
import { capital } from "./capital.ts";
import { runsOf } from "./gear/repair-items.ts";
import type { Item } from "./item.ts";
import { methodWords } from "./methods.ts";
import { counted, listed } from "./numbers.ts";

/** What a kit does, as a title: `WHAT THIS KIT DOES, 2 TO 400`. */
export function kitTitle({ from, to }: Coverage): string {
  return `WHAT THIS KIT DOES, ${from} TO ${to}`;
}

/** How many counts of the range are done, and by which methods. */
export function kitDoneItem({ counts, byMethod }: Coverage): Item {
  const done = counts.filter(({ kind }) => kind !== null).length;
  const methods = allMethods
    .filter((method) => byMethod[method].length > 0)
    .map((method) => `${byMethod[method].length} ${methodWords[method].name.toLowerCase()}`);
  const by = methods.length === 0 ? "" : `: ${methods.join(", ")}`;
  return { term: "Done", text: `${done} of ${counted(counts.length, "count")}${by}` };
}

/** All counts that are not done. */
export function kitMissingItem({ missing }: Coverage): Item {
  return { term: "Not done", text: missing.length === 0 ? "none" : countRuns(missing) };
}

/** Every count of a list, runs of three and more in short: `53, 59, 61–63`. */
export function countRuns(counts: readonly number[]): string {
  return runsOf(counts)
    .flatMap(([first, last]) => (last - first > 1 ? [`${first}–${last}`] : first === last ? [`${first}`] : [`${first}, ${last}`]))
    .join(", ");
}

const expectations: Readonly<Record<Expectation, string>> = {
  small: "to 50",
  round: "round",
  gear: "teeth of a usual change gear",
};

/** Why a count is expected: `to 50, round`. */
export function expectedWhy(because: readonly Expectation[]): string {
  return because.map((each) => expectations[each]).join(", ");
}

/** The counts that one would think are done and are not, once each, by the first reason there is. */
export function expectedItems({ expected }: Coverage): readonly Item[] {
  if (expected.length === 0) return [];
  const parts = (Object.keys(expectations) as Expectation[]).flatMap((reason) => {
    const counts = expected.filter(({ because }) => because[0] === reason).map(({ divisions }) => divisions);
    return counts.length === 0 ? [] : [`${expectations[reason]}: ${counts.join(", ")}`];
  });
  return [{ term: "Mind", text: `not done, though one would think so. ${parts.map(sentence).join(" ")}` }];
}

/** What is lost with each plate taken away. */
export function withoutPlateItems({ withoutPlate }: Coverage): readonly Item[] {
  return withoutPlate.map(({ plate, lost }) => ({
    term: "Without",
    text: `plate ${plate}: ${lost.length === 0 ? "nothing is lost" : `${counted(lost.length, "count")} lost, ${few(lost)}`}`,
  }));
}

/** The one circle more that adds the most, and those after it. */
export function circleItems({ bestCircles, want }: Coverage): readonly Item[] {
  return bestCircles.map((circle) => ({
    term: `Circle ${circle.circle}`,
    text: `${alikeWords(circle.alike)}${addsWords(circle, want)}`,
  }));
}

/** The one plate more that adds the most, and those after it. */
export function plateItems({ bestPlates, want }: Coverage): readonly Item[] {
  return bestPlates.map((plate) => ({
    term: plate.made === "own" ? "Plate to drill" : "Plate to buy",
    text: `${plate.faces.map((circles) => circles.join(" ")).join(" / ")}: ${addsWords(plate, want)}`,
  }));
}

/** The one gear more that adds the most, and the two. */
export function kitGearItems({ bestGears, want }: Coverage): readonly Item[] {
  return bestGears.map((each) => ({
    term: `${each.gears.length === 1 ? "Gear" : "Gears"} ${each.gears.join(", ")}`,
    text: `${alikeWords(each.alike.map((gears) => gears.join(" and ")))}${addsWords(each, want)}`,
  }));
}

/** What does the same, where there is any. */
function alikeWords(alike: readonly (string | number)[]): string {
  return alike.length === 0 ? "" : `or ${alike.join(", or ")}: `;
}

/** What something adds: how many counts, of the list first, and which only a train does that may foul. */
function addsWords({ unlocks, wanted, mayFoul }: Adds, want: WantedCounts | null): string {
  const ofList = want === null || wanted.length === 0 ? "" : `of the list ${wanted.join(", ")}; `;
  const foul = mayFoul.length === 0 ? "" : `; ${few(mayFoul)} by a train that may foul`;
  return `${ofList}${unlocks.length} more: ${few(unlocks)}${foul}`;
}

/** What a list of one's own takes; nothing where none was given. */
export function wantItems({ want }: Coverage, head: Pick<Head, "gears">): readonly Item[] {
  if (want === null) return [];
  const { done, missing, left, set } = want;
  const parts = [
    ...(set.circles.length === 0 ? [] : [`a circle of ${listed(set.circles)}`]),
    ...(set.gears.length === 0 ? [] : [`${set.gears.length === 1 ? "a gear" : "gears"} of ${listed(set.gears)}`]),
  ];
  const shown = set.smallest
    ? "No fewer do it, each count by one circle or by one or two of the gears."
    : "It is the best found, and there may be a smaller one.";
  const beside = set.gears.length > 0 && head.gears.length > 0 ? " beside those owned" : "";
  return [
    ...(done.length === 0 ? [] : [{ term: "Done already", text: done.join(", ") }]),
    ...(missing.length === 0
      ? []
      : [{ term: "Smallest set", text: `${parts.join(" and ")}${beside}: ${missing.join(", ")}. ${shown}` }]),
    ...(left.length === 0
      ? []
      : [{ term: "Left", text: `${left.join(", ")}: no one circle and no two gears of the sizes tried do it` }]),
  ];
}

const untriedParts: Readonly<Record<UntriedOfKit["code"], string>> = {
  settings: "settings",
  plates: "what is lost with a plate",
  circles: "circles to add",
  "plates-to-add": "plates to add",
  gears: "gears to add",
  set: "the smallest set",
};

/** That there may be more than an answer about a kit holds; empty where everything was tried. */
export function untriedOfKitWords(untried: readonly UntriedOfKit[]): string {
  if (untried.length === 0) return "";
  const parts = untried.map(({ code }) => untriedParts[code]).join(", ");
  return `So much was asked that not everything was tried. There may be others, and better ones, of: ${parts}.`;
}

/** An answer about a kit as JSON shows it: beside every code stands `why`, the same in English. */
export function coverageWithWhys(coverage: Coverage): object {
  return {
    ...coverage,
    expected: coverage.expected.map((each) => ({ ...each, why: expectedWhy(each.because) })),
    untried: coverage.untried.map((each) => ({ ...each, why: untriedParts[each.code] })),
  };
}

/** As many counts as stand on a line or two. */
const mostNamed = 14;

/** The first of many counts, and how many there are besides. */
function few(counts: readonly number[]): string {
  if (counts.length <= mostNamed + 1) return counts.join(", ");
  return `${counts.slice(0, mostNamed).join(", ")} and ${counts.length - mostNamed} others`;
}

function sentence(text: string): string {
  return `${capital(text)}.`;
}
