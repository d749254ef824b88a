import type { DrilledByCoordinates, DrilledOnHead, DrilledPlate, Head, NoJob } from "../src/index.ts";
import {
  cautionsBesides,
  checkFromZero,
  chordItems,
  chordsHow,
  circleWords,
  coordinateErrors,
  coordinatesWords,
  headLine,
  type LengthWords,
  legendWords,
  noPlaces,
  otherPlateItems,
  plateErrorItems,
  reasonItems,
  slidesOneWay,
  wayItems,
  wayTitle,
} from "../src/words/index.ts";
import { placeTable } from "./place-table.ts";
import { table } from "./table.ts";
import { apart, itemLines, paragraph } from "./words.ts";

/** A circle of holes to drill, in words. */
export function drilledLines(
  plate: DrilledPlate,
  bySlides: DrilledPlate | null,
  head: Head,
  length: LengthWords,
): readonly string[] {
  return [
    `INDEX PLATE: ${circleWords(plate, length)}`,
    ...(plate.by === "coordinates" ? [] : [headLine(head)]),
    "",
    ...(plate.by === "coordinates"
      ? []
      : [`  ${wayTitle(plate.plan.way)}: ${plate.plan.exact ? "exact" : "NEAR ONLY, NOT EXACT"}`, ""]),
    ...(plate.by === "coordinates" ? [] : itemLines(wayItems(plate.plan.way, head))),
    ...itemLines(plateErrorItems(plate, length)),
    ...apart(itemLines(otherPlateItems(plate, bySlides, length))),
    "",
    ...itemLines(chordItems(plate.chords, length)),
    paragraph(chordsHow),
    "",
    ...(plate.by === "coordinates" ? coordinateLines(plate, length) : holeLines(plate, head)),
  ];
}

/** Where the head can make none. */
export function noPlateLines({ impossible }: NoJob, head: Head): readonly string[] {
  return [headLine(head), "", ...itemLines(reasonItems(impossible.reasons, head)), "", paragraph(noPlaces.possible)];
}

function holeLines({ plan: planned, holes }: DrilledOnHead, head: Head): readonly string[] {
  const plan = { ...planned, places: holes.map(({ place }) => place) };
  const side = (plan.start.ring ?? plan.start.dial)?.side ?? "plus";
  return [
    paragraph(`"Drill" is the hole that is drilled. ${legendWords(plan, { after: null, side, head })}`),
    "",
    ...placeTable(plan, head, [{ head: "drill", cells: holes.map(({ hole }) => String(hole)) }]),
    ...apart(itemLines(plan.checks.map((check) => checkFromZero(check, plan.way, { noun: "new hole" })))),
    "",
    paragraph(cautionsBesides(plan.cautions)),
  ];
}

function coordinateLines({ diameter, origin, holes }: DrilledByCoordinates, length: LengthWords): readonly string[] {
  const off = holes.map((hole) => coordinateErrors(hole, length));
  return [
    paragraph(coordinatesWords({ mm: diameter / 2, unit: length.unit }, origin)),
    "",
    ...table([
      { head: "drill", cells: holes.map(({ hole }) => String(hole)) },
      { head: "x", cells: holes.map(({ x }) => length.bare(x)) },
      { head: "y", cells: holes.map(({ y }) => length.bare(y)) },
      { head: "off along", cells: off.map(([along]) => along) },
      { head: "off outwards", cells: off.map(([, out]) => out) },
    ]),
    "",
    paragraph(slidesOneWay.text),
  ];
}
