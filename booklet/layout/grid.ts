import type { GridBlock, Look } from "../content/blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Galley, galley, type Slug, space } from "./slugs.ts";

const wide = 20;
const narrow = 10;
/** From row to row, and from line to line of the key, in parts of the size of the figures. */
const rowHeight = 2.05;
const keyHeight = 1.75;
/** Of that height what goes where the page is set closest of all. */
const spareHeight = 0.4;

/** Sets a grid of counts, twenty in a row or ten, as large as one page holds it. */
export function gridGalley({ cells, key, summary, small }: GridBlock, width: number, paper: Paper, measure: Measure): Galley {
  const { size, perRow } = fittedTo(cells, key.length, small ? paper.text : paper.table, width, paper, measure);
  const box = { width: width / perRow, height: size * closer(rowHeight, paper), size };
  const rows: Slug[] = [];
  // Rows end on whole tens, so that a count is found by its last figure.
  const lead = (Number(cells[0]?.text ?? 1) - 1) % perRow;
  for (let start = -lead; start < cells.length; start += perRow) {
    const row = cells.slice(Math.max(0, start), start + perRow);
    const indent = Math.max(0, -start);
    rows.push({
      height: box.height,
      marks: (left, top) => row.flatMap((cell, at) => cellMarks(cell, left + (indent + at) * box.width, top, box, measure)),
    });
  }
  return { ...galley([...keyLines(key, size, paper, measure), ...rows, space(size)]), role: "Figure", alt: summary };
}

/** The largest type with which all rows stand on one page; where none does, the paper's own. */
function fittedTo(cells: GridBlock["cells"], keys: number, largest: number, width: number, paper: Paper, measure: Measure) {
  const room = (paper.height - paper.top - paper.bottom) * 0.8;
  const fits = (size: number, perRow: number) =>
    Math.max(...cells.map(({ text }) => measure(text, { weight: "bold", size }) + size * 0.5)) * perRow <= width;
  for (let size = largest; size >= paper.note; size -= 0.5) {
    for (const perRow of [wide, narrow]) {
      const rows = Math.ceil(cells.length / perRow) + 1 + keys;
      if (fits(size, perRow) && rows * size * rowHeight <= room) return { size, perRow };
    }
  }
  return { size: paper.note, perRow: fits(paper.note, wide) ? wide : narrow };
}

/** A height in parts of the size, less where the gaps of the page are closed. */
function closer(height: number, { closeness }: Paper): number {
  return height - spareHeight * (1 - closeness.gap);
}

interface Box {
  readonly width: number;
  readonly height: number;
  readonly size: number;
}

function cellMarks(cell: GridBlock["cells"][number], left: number, top: number, box: Box, measure: Measure): Mark[] {
  const marks = counted(cell.text, cell.look, left, top, box, measure);
  if (cell.link !== undefined)
    marks.push({
      kind: "link",
      x: left,
      y: top,
      width: box.width,
      height: box.height,
      to: cell.link,
      says: `count ${cell.text}`,
    });
  return marks;
}

/** A count in the look that tells how it is done. */
function counted(text: string, look: Look, left: number, top: number, { width, height, size }: Box, measure: Measure): Mark[] {
  const style: Style = {
    weight: look === "struck" ? "regular" : "bold",
    size,
    grey: look === "reversed" ? 1 : look === "struck" ? 0.35 : 0,
  };
  const label = setText(
    measure,
    look === "queried" ? `${text}?` : text,
    style,
    left + width / 2,
    top + height / 2 + size * 0.35,
    "center",
  );
  const inset = { x: left + 0.8, y: top + 1, width: width - 1.6, height: height - 2 };
  const [right, bottom] = [inset.x + inset.width, inset.y + inset.height];
  const around = `M${inset.x} ${inset.y}H${right}V${bottom}H${inset.x}Z`;
  const behind: Record<Look, Mark[]> = {
    plain: [],
    underlined: [{ kind: "rule", from: [label.x, label.y + 2], to: [label.x + label.width, label.y + 2], width: 1 }],
    reversed: [{ kind: "band", ...inset, grey: 0 }],
    framed: [{ kind: "shape", path: around, stroke: { width: 0.9, grey: 0 }, box: [inset.x, inset.y, right, bottom] }],
    queried: [],
    struck: [{ kind: "rule", from: [inset.x + 1, bottom - 1], to: [right - 1, inset.y + 1], width: 0.7, grey: 0.35 }],
  };
  return [...behind[look], label];
}

function keyLines(key: GridBlock["key"], size: number, paper: Paper, measure: Measure): Slug[] {
  const box = { width: size * 2.4, height: size * closer(keyHeight, paper), size };
  const style: Style = { weight: "regular", size };
  return key.map(({ look, text }) => ({
    height: box.height + 1.5,
    keepWithNext: true,
    marks: (left, top) => [
      ...counted("123", look, left, top, box, measure),
      setText(measure, text, style, left + box.width + size * 0.6, top + box.height / 2 + size * 0.35),
    ],
  }));
}
