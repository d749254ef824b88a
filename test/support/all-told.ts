import type { Head, Place, PlannedJob } from "../../src/index.ts";
import {
  cautionItems,
  checkItem,
  eachPlaceItem,
  goOnWords,
  holeStands,
  type Item,
  legendWords,
  offByItems,
  placeColumns,
  proofShort,
  proofShownWords,
  proofWords,
  scalesStand,
  startItem,
  wayItems,
  wayName,
  wayShort,
  wayTitle,
} from "../../src/words/index.ts";

/** All that is said of a job, line by line, under what it is said of. */
export interface Told {
  readonly title: readonly string[];
  readonly setUp: readonly string[];
  readonly cautions: readonly string[];
  readonly start: readonly string[];
  readonly legend: readonly string[];
  readonly places: readonly string[];
  readonly checks: readonly string[];
  readonly proof: readonly string[];
}

const lines = (items: readonly Item[]) => items.map(({ term, text }) => `${term}: ${text}`);

/** Everything that the words say of a job on a head. */
export function allTold(job: PlannedJob, head: Head): Told {
  const { way, places, cautions, checks } = job;
  const columns = placeColumns(job, head);
  const heads = columns.map(({ group, head: over }) => [group, over].filter(Boolean).join(" "));
  const cellsOf = (place: Place) => columns.map(({ cell }) => cell(place)).join(" | ");
  const exact = way.by === "moves" && way.setting.exact ? [way.setting] : [];
  return {
    title: [wayTitle(way), wayName(way), wayShort(way)],
    setUp: lines(wayItems(way, head)),
    cautions: lines(cautionItems(cautions)),
    start: lines([startItem(job, head), eachPlaceItem(way, head), ...offByItems(job)]),
    legend: [legendWords(job, { after: null, side: "plus", head }), ...heads],
    places: places.flatMap((place) => [
      cellsOf(place),
      goOnWords(place, way),
      holeStands(place, way),
      ...scalesStand(place, head),
    ]),
    checks: lines(checks.map((check) => checkItem(check, way, { head }))),
    proof: exact.flatMap((setting) => [proofWords(setting), proofShort(setting), proofShownWords(setting)]),
  };
}

/** The same as one text. */
export function wholeText(told: Told): string {
  return Object.values(told).flat().join("\n");
}
