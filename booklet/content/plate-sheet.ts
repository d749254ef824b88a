import type { DrilledByCoordinates, DrilledOnHead, DrilledPlate, Head } from "../../src/index.ts";
import {
  between,
  cautionItemsBesides,
  chordsHow,
  circleWords,
  coordinateErrors,
  coordinatesWords,
  eachHoleItem,
  type LengthWords,
  lengthsIn,
  offByItems,
  placeColumns,
  plateErrorItems,
  slidesOneWay,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, Part } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { itemList } from "./item-list.ts";
import { checkPlaces } from "./job.ts";
import { checksFromZero, drawings, markOf, ruleOf, setUp } from "./job-setting.ts";
import { columnOf, placeCells } from "./place-table.ts";
import { keyedHead } from "./plate-keys.ts";
import { startAt } from "./start-at.ts";
import { ratioInWords } from "./words.ts";

/** What the sheet of a plate is made from. */
export interface PlateSheet {
  readonly plate: DrilledPlate;
  /** The head that makes it; by coordinates that which it serves on. */
  readonly head: Head;
  /** Whether lengths stand in inches, as the person works. */
  readonly inches: boolean;
}

/** Writes the sheet of an index plate: how each hole is gone to, with a box to tick, and what is measured when it is done. */
export function plateBookOf({ plate, head, inches }: PlateSheet, edition: Edition): Book {
  checkPlaces(plate.count, "holes", "holes are too many for a sheet");
  const length = lengthsIn(inches ? "in" : "mm");
  const circle = circleWords(plate, length);
  return {
    title: head.name,
    fileTitle: `Index plate, ${circle}: ${head.name}`,
    subject: `Index plate of ${circle} for a worm ratio of ${ratioInWords(plate.servesRatio)}`,
    digest: edition.digest,
    running: runningOf(keyedHead(head), edition),
    sheetsStandAlone: false,
    parts: [plate.by === "coordinates" ? byCoordinates(plate, length) : onHead(plate, head, length)],
  };
}

function onHead(plate: DrilledOnHead, head: Head, length: LengthWords): Part {
  const { way, exact, cautions } = plate.plan;
  const errors = plateErrorItems(plate, length);
  return {
    id: "plate",
    title: `Index plate: ${circleWords(plate, length)}${exact ? "" : ", not exact"}`,
    mark: markOf(way),
    rule: ruleOf(plate.plan, head),
    ...(exact ? {} : { warning: `Not exact: ${errors[0]?.text}.` }),
    blocks: [
      ...setUp(way, head),
      ...drawings(way, head, smallShare),
      itemList(exact ? errors : errors.slice(1)),
      itemList([
        startAt("hole 0 of the new plate", plate.plan, head),
        eachHoleItem(way, head),
        ...cautionItemsBesides(cautions),
        ...offByItems(plate.plan),
      ]),
      ...checksFromZero(plate.plan, head, "new hole"),
      holesTable(plate, head),
      ...toMeasure(plate, length),
    ],
  };
}

/** Of the height of a page, for the plate that it is made by: the new one may stand at true size besides. */
const smallShare = 0.36;

/** Every hole in the order of the work, each with a box to tick. */
function holesTable({ plan, holes }: DrilledOnHead, head: Head): Block {
  const columns = placeColumns({ way: plan.way, places: holes.map(({ place }) => place) }, head);
  return {
    kind: "table",
    title: { text: "Holes of the new plate", anchor: "holes" },
    folds: true,
    summary: "Holes of the new plate",
    columns: [{ head: "", align: "center" }, { head: "drill", align: "right", strong: true }, ...columns.map(columnOf)],
    rows: holes.map(({ hole, place }) => ({
      cells: [{ text: "", box: true }, { text: String(hole) }, ...placeCells(columns, place)],
    })),
  };
}

function byCoordinates(plate: DrilledByCoordinates, length: LengthWords): Part {
  const { diameter, origin, holes } = plate;
  const headed = (head: string, sets = false) => ({ head, align: "right", ...(sets && { strong: true }) }) as const;
  return {
    id: "plate",
    title: `Index plate: ${circleWords(plate, length)}, by coordinates`,
    rule: `Each hole by itself from the one zero, to the nearest ${length(plate.step)} of the slides`,
    blocks: [
      itemList([...plateErrorItems(plate, length), slidesOneWay]),
      { kind: "paragraph", text: coordinatesWords({ mm: diameter / 2, unit: length.unit }, origin) },
      {
        kind: "table",
        title: { text: "Holes of the new plate", anchor: "holes" },
        folds: true,
        summary: "Holes of the new plate",
        columns: [
          { head: "", align: "center" },
          headed("drill", true),
          headed("x", true),
          headed("y", true),
          headed("off\nalong"),
        ],
        rows: holes.map((hole) => ({
          cells: [
            { text: "", box: true },
            ...[String(hole.hole), length.bare(hole.x), length.bare(hole.y), coordinateErrors(hole, length)[0]].map((text) => ({
              text,
            })),
          ],
        })),
      },
      ...toMeasure(plate, length),
    ],
  };
}

/** The chords with room to write what they measure, and the circle at true size. */
function toMeasure({ chords, count, diameter }: DrilledPlate, length: LengthWords): readonly Block[] {
  return [
    { kind: "heading", text: "When it is drilled" },
    { kind: "paragraph", text: chordsHow },
    {
      kind: "blanks",
      text: "Chords, true and as measured:",
      limits: length.unit === "in" ? "inches" : "millimetres",
      labels: chords.map((chord) => `${between(chord)}: ${length.bare(chord.length ?? 0)}`),
    },
    {
      kind: "figure",
      figure: { type: "template", circles: [count], diameters: [diameter], onlyHere: true },
      alt: `The circle at true size, a cross on each of its ${count} holes and a ring round hole 0, with scales of 50 mm and 2 inches`,
      caption:
        "The circle at true size: print without scaling, and measure both scales with a rule before it is used. A cross is a hole; hole 0 is ringed.",
    },
    { kind: "ruled", text: "Notes: material, drill, reamer, date", lines: 5, least: 2 },
  ];
}
