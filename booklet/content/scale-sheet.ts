import { fromExact, type Graduated, type GraduatedRound, type GraduatedStraight, type Head } from "../../src/index.ts";
import {
  capital,
  cautionItemsBesides,
  counted,
  type Item,
  type LengthWords,
  lengthsIn,
  offByItems,
  placeColumns,
  scaleCautions,
  scaleItems,
  scaleWords,
  straightCells,
  straightHeads,
  straightLegend,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, Part } from "./blocks.ts";
import { runningOf, runningWithoutHead } from "./book.ts";
import type { DrawnLine, FigureBlock } from "./figure-blocks.ts";
import { itemList } from "./item-list.ts";
import { checkPlaces } from "./job.ts";
import { checksFromZero, drawings, markOf, ruleOf, setUp } from "./job-setting.ts";
import { columnOf, placeCells } from "./place-table.ts";
import { keyedHead } from "./plate-keys.ts";
import type { Cell, Column } from "./table-block.ts";
import { ratioOrNone } from "./words.ts";

/** What the sheet of a scale is made from. */
export interface ScaleSheet {
  readonly scale: Graduated;
  /** The head that it is cut on; by the dial of a screw it only heads the sheet. */
  readonly head: Head;
  /** Whether lengths stand in inches, as the person works. */
  readonly inches: boolean;
}

/** Writes the sheet of a scale or a vernier: every line with a box to tick, how long it is and what is stamped at it. */
export function scaleBookOf({ scale, head, inches }: ScaleSheet, edition: Edition): Book {
  checkPlaces(scale.lines.length, "lines", "lines are too many for a sheet");
  const length = lengthsIn(inches ? "in" : "mm");
  const what = capital(scaleWords(scale, length));
  const of = headedBy(scale, head, length, edition);
  return {
    title: of.title,
    fileTitle: `${what}: ${of.title}`,
    subject: `${what}, ${of.on}`,
    digest: edition.digest,
    running: of.running,
    sheetsStandAlone: false,
    parts: [scale.shape === "round" ? round(scale, head, length) : straight(scale, length)],
  };
}

const bySlide = "By the screw of the table";
const eachFromFirst = "Every line by itself from the first; only its reading is rounded";

/** By the screw's dial no head is turned: its name, ratio and plates do not stand on the page. */
function headedBy(
  scale: Graduated,
  head: Head,
  length: LengthWords,
  edition: Edition,
): Pick<Book, "title" | "running"> & { on: string } {
  if (scale.shape === "round" || scale.counter.by === "crank")
    return {
      title: head.name,
      on: `on ${ratioOrNone(head)}`,
      running: runningOf(keyedHead(head), edition),
    };
  const lead = length(fromExact(scale.travelPerTurn).valueOf());
  const marks = counted(scale.counter.marks, "mark");
  return {
    title: bySlide,
    on: `by a screw of ${lead} a turn, ${marks}`,
    running: runningWithoutHead([lead, `a turn of the screw, ${marks}`], { by: bySlide, rule: eachFromFirst }, edition),
  };
}

/** Of the height of a page, for the plate with its arms. */
const plateShare = 0.36;

function round(scale: GraduatedRound, head: Head, length: LengthWords): Part {
  const { way, exact, cautions } = scale.plan;
  const columns = placeColumns({ way, places: scale.lines.map(({ place }) => place) }, head);
  return {
    ...titled(scale, length),
    mark: markOf(way),
    rule: ruleOf(scale.plan, head),
    blocks: [
      ...setUp(way, head),
      ...drawings(way, head, plateShare),
      itemList([
        ...aboutScale(scale, length),
        ...scaleCautions(scale.shape),
        ...cautionItemsBesides(cautions),
        ...offByItems({ exact }),
      ]),
      ...checksFromZero(scale.plan, head, "line"),
      drawing(scale),
      linesTable(scale, columns.map(columnOf), (index) => {
        const line = scale.lines[index];
        return line === undefined ? [] : placeCells(columns, line.place);
      }),
      notes,
    ],
  };
}

function straight(scale: GraduatedStraight, length: LengthWords): Part {
  const columns = straightHeads(scale).map(
    (head, index): Column => ({
      head: head.replace(" of ", "\nof "),
      align: "right",
      ...(index < 3 ? { strong: true } : { size: "fine" }),
    }),
  );
  return {
    ...titled(scale, length),
    rule: eachFromFirst,
    blocks: [
      itemList([...aboutScale(scale, length), ...scaleCautions(scale.shape)]),
      drawing(scale),
      { kind: "paragraph", text: straightLegend(scale, length) },
      linesTable(scale, columns, (index) => {
        const line = scale.lines[index];
        return line === undefined ? [] : straightCells(line, scale, length).map((text) => ({ text }));
      }),
      notes,
    ],
  };
}

/** How far it is off stands over all where it is not exact. */
function aboutScale(scale: Graduated, length: LengthWords): readonly Item[] {
  return scale.exact ? scaleItems(scale, length) : scaleItems(scale, length).slice(0, -1);
}

function titled(scale: Graduated, length: LengthWords): Pick<Part, "id" | "title" | "warning"> {
  const off = scaleItems(scale, length).at(-1)?.text;
  return {
    id: "scale",
    title: `${capital(scaleWords(scale, length))}${scale.exact ? "" : ", not exact"}`,
    ...(scale.exact ? {} : { warning: `Not exact: ${off}.` }),
  };
}

const notes: Block = {
  kind: "ruled",
  text: "Notes: material, tool, depth, stops of the three lengths, date",
  lines: 5,
  least: 2,
};

/** Of the height of a page, for the scale as it will look. */
const scaleShare = 0.5;

function drawing(scale: Graduated): FigureBlock {
  const { vernier, lines } = scale;
  const allRound = scale.shape === "round" && vernier === null && lines.length === scale.divisions;
  const drawn = drawnLines(scale);
  const alike = "The three lengths are drawn only as longer and shorter.";
  return {
    kind: "figure",
    share: scaleShare,
    figure: {
      type: "scale",
      lines: drawn,
      allRound,
      spaceMm: scale.shape === "straight" ? fromExact(scale.space).valueOf() : null,
      againstMain: vernier !== null,
    },
    alt: `The ${lines.length} lines as they will look: ${["long", "medium", "short"]
      .map((length) => `${lines.filter((line) => line.length === length).length} ${length}`)
      .join(", ")}`,
    caption: allRound
      ? `As it will look, seen so that its lines run clockwise, or to the right where it is drawn out straight. ${alike}`
      : `As it will look${vernier === null ? "" : "; under the edge the main scale, its figures rising to the right"}. ${alike}`,
  };
}

/** The lines from left to right: of a vernier that runs against its scale those after its zero lie to the left. */
function drawnLines({ lines, vernier }: Graduated): readonly DrawnLine[] {
  const space = vernier === null ? 1 : fromExact(vernier.space).valueOf();
  const zero = vernier?.twoSided === true ? vernier.spaces : 0;
  const way = vernier !== null && !vernier.twoSided && vernier.runs === "against" ? -1 : 1;
  return lines
    .map(({ line, length, figure }) => ({ line, length, figure, at: way * (line - zero) * space }))
    .sort((one, other) => one.at - other.at);
}

/** Every line in the order of the work, each with a box to tick. */
function linesTable({ lines }: Graduated, columns: readonly Column[], cells: (index: number) => readonly Cell[]): Block {
  return {
    kind: "table",
    title: { text: "Lines", anchor: "lines" },
    folds: true,
    summary: "Lines of the scale",
    columns: [
      { head: "", align: "center" },
      { head: "line", align: "right", strong: true },
      { head: "length", align: "left", strong: true },
      { head: "figure", align: "right", strong: true },
      ...columns,
    ],
    rows: lines.map(({ line, length, figure }, index) => ({
      cells: [{ text: "", box: true }, { text: String(line) }, { text: length }, { text: figure ?? "" }, ...cells(index)],
    })),
  };
}
