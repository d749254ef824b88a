import { type CircleLayout, chord, coordinates, fromExact, type Revolutions, revolutions } from "../../src/index.ts";
import {
  between,
  boltCircleCautions,
  boltCircleWords,
  chordsHow,
  counted,
  lengthsIn,
  shortAngle,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { BlanksBlock, Block, Book, PanelBlock } from "./blocks.ts";
import { runningWithoutHead } from "./book.ts";
import type { FigureBlock } from "./figure-blocks.ts";
import { itemList } from "./item-list.ts";
import { checkPlaces } from "./job.ts";
import type { Column } from "./table-block.ts";

/** What the sheet of a bolt circle is made from. Lengths in mm. */
export interface BoltCircleSheet {
  readonly holes: number;
  /** Through the middles of the holes. */
  readonly diameter: number;
  /** Where hole 1 lies, from the +x axis; left out, on it. */
  readonly startAngle?: Revolutions | undefined;
  /** Which way the holes follow, with x to the right and y up; left out, counter-clockwise. */
  readonly sense?: CircleLayout["sense"];
  /** Where the centre lies from a zero of the work's own; left out, the zero is the corner of the left and bottom tangents. */
  readonly centre?: { readonly x: number; readonly y: number } | undefined;
  /** Whether lengths stand in inches, as the person works. */
  readonly inches: boolean;
}

/** Writes the sheet of a bolt circle: every hole from the centre and from a zero beside it with a box to tick, a drawing, chords to measure. */
export function boltCircleBookOf(sheet: BoltCircleSheet, edition: Edition): Book {
  const { holes, diameter, inches, centre = null } = sheet;
  checkPlaces(holes, "holes", "holes are too many for a sheet");
  const unit = inches ? "in" : "mm";
  const length = lengthsIn(unit);
  const title = `Bolt circle: ${counted(holes, "hole")} on ${length(diameter)}`;
  const rule = "Each hole by itself from the one zero";
  return {
    title: bySlides,
    fileTitle: title,
    subject: `${title}, by coordinates`,
    digest: edition.digest,
    running: runningWithoutHead([counted(holes, "hole"), `on ${length(diameter)}`], { by: bySlides, rule }, edition),
    sheetsStandAlone: false,
    parts: [
      {
        id: "holes",
        title,
        rule,
        blocks: [
          figures(sheet),
          drawing(sheet),
          { kind: "paragraph", text: boltCircleWords({ mm: diameter / 2, unit }, centre) },
          itemList(boltCircleCautions),
          table(sheet),
          ...chords(sheet),
          { kind: "ruled", text: "Notes: part, material, drill, date", lines: 3, least: 1 },
        ],
      },
    ],
  };
}

const bySlides = "By the slides of the table";

function figures({ holes, diameter, startAngle = revolutions(0, 1), sense, inches }: BoltCircleSheet): PanelBlock {
  const { bare, unit } = lengthsIn(inches ? "in" : "mm");
  return {
    kind: "panel",
    items: [
      { head: "HOLES", figure: String(holes), under: sense ?? "counter-clockwise" },
      { head: "DIAMETER", figure: bare(diameter), under: `${unit}, through the holes` },
      { head: "HOLE 1 AT", figure: shortAngle(startAngle), under: "from +x upwards" },
    ],
  };
}

/** Of the height of a page, so that all of a usual circle stands on one. */
const drawingShare = 0.5;

function drawing({ holes, diameter, startAngle, sense, centre, inches }: BoltCircleSheet): FigureBlock {
  const { bare } = lengthsIn(inches ? "in" : "mm");
  return {
    kind: "figure",
    share: drawingShare,
    figure: {
      type: "bolt-circle",
      count: holes,
      diameter,
      start: startAngle === undefined ? 0 : fromExact(startAngle).valueOf(),
      clockwise: sense === "clockwise",
      zero: centre === undefined ? "tangents" : "own",
      says: { diameter: bare(diameter) },
    },
    alt: `The circle of ${bare(diameter)} with its ${counted(holes, "hole")}, x to the right and y up`,
    caption: `Hole 1 is black; the arrow is the way that the numbers run. ${
      centre === undefined
        ? "0, 0 is the zero where nothing lies below 0."
        : `Your own zero is not drawn: the centre lies from it at x ${bare(centre.x)}, y ${bare(centre.y)}.`
    }`,
  };
}

/** Every hole, first as a read-out with signs has it, then as handwheels do. */
function table({ holes, diameter, startAngle, sense, centre, inches }: BoltCircleSheet): Block {
  const { bare } = lengthsIn(inches ? "in" : "mm");
  const layout = { radius: diameter / 2, startAngle, sense };
  const signed = coordinates(holes, layout);
  const fromZero = coordinates(holes, { ...layout, origin: centre ?? "tangents" });
  const headed = (head: string, group: string): Column => ({ head, group, align: "right", strong: true });
  const [centred, zeroed] = ["FROM CENTRE", "FROM ZERO"];
  return {
    kind: "table",
    title: { text: "Holes", anchor: "holes" },
    folds: true,
    summary: "Holes of the bolt circle",
    columns: [
      { head: "", align: "center" },
      { head: "hole", align: "right", strong: true },
      headed("x", centred),
      headed("y", centred),
      headed("x", zeroed),
      headed("y", zeroed),
    ],
    rows: signed.map(({ tooth, x, y }, index) => ({
      cells: [
        { text: "", box: true },
        ...[String(tooth), bare(x), bare(y), bare(fromZero[index]?.x ?? 0), bare(fromZero[index]?.y ?? 0)].map((text) => ({
          text,
        })),
      ],
    })),
  };
}

/** To the next and back to the first, then across as far as may be, twice where that can be. */
function chords({ holes, diameter, inches }: BoltCircleSheet): readonly (Block | BlanksBlock)[] {
  if (holes < 2) return [];
  const { bare, unit } = lengthsIn(inches ? "in" : "mm");
  const across = Math.floor(holes / 2);
  const quarter = 1 + Math.floor(holes / 4);
  const pairs = [
    { from: 1, to: 2 },
    ...(holes > 2 ? [{ from: holes, to: 1 }] : []),
    ...(holes > 3
      ? [
          { from: 1, to: 1 + across },
          { from: quarter, to: quarter + across },
        ]
      : []),
  ];
  return [
    {
      kind: "blanks",
      text: `${chordsHow} True and as measured:`,
      limits: unit === "in" ? "inches" : "millimetres",
      labels: pairs.map((pair) => `${between(pair)}: ${bare(chord(holes, diameter / 2, Math.abs(pair.to - pair.from)))}`),
    },
  ];
}
