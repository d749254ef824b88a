import type { Cell, Row } from "../content/table-block.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenAtPoints, brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import type { Slug } from "./slugs.ts";
import { cellStyle, type Fitted } from "./table-fit.ts";

const rowsInBlock = 5;
const tint = 0.925;
const quiet = 0.35;

/** Where the text of a column begins, stands about, or ends. */
export function headEdge({ align, left, width }: Fitted["columns"][number]): number {
  return align === "left" ? left : align === "right" ? left + width : left + width / 2;
}

/** The columns that the lines under a row may begin at: that of its set-up, or where that saves lines the one before. */
const underColumns = { usual: 2, wider: 1 } as const;

/** Where the lines under the rows of a table begin, the same for all: further left where fewer of them then go on below. */
export function underLeftOf(rows: readonly Row[], fitted: Fitted, paper: Paper, measure: Measure): number {
  const [usual, wider] = [underColumns.usual, underColumns.wider].map((at) => fitted.columns[at]?.left ?? 0) as [number, number];
  const all = rows.flatMap((row) => underLines(row, fitted.size, paper));
  if (all.every(({ text, style }) => measure(text, style) <= fitted.width - usual)) return usual;
  const linesFrom = (left: number) =>
    all.reduce((sum, { text, style }) => sum + brokenAtPoints(measure, text, style, fitted.width - left).length, 0);
  return linesFrom(wider) < linesFrom(usual) ? wider : usual;
}

/** Sets one row with its small lines, in blocks of five for the eye to count by. */
export function rowSlug(
  row: Row,
  index: number,
  headwords: boolean,
  fitted: Fitted,
  paper: Paper,
  measure: Measure,
  underLeft: number = fitted.columns[underColumns.usual]?.left ?? 0,
): Slug {
  const lines = broken(row, fitted, paper, measure, underLeft);
  return {
    height: lines.height,
    ...(index % rowsInBlock === 0 ? { between: blockRule(fitted.width) } : {}),
    ...(headwords && row.cells[0] ? { headword: row.cells[0].text } : {}),
    ...(row.anchor === undefined ? {} : { anchor: row.anchor }),
    ...(row.also === undefined ? {} : { also: row.also }),
    marks: (left, top) => rowMarks(row, lines, index, left, top, fitted, measure),
  };
}

/** A line under the cells of a row. */
interface UnderLine {
  readonly text: string;
  readonly style: Style;
  readonly height: number;
}

/** A row broken into lines. */
interface Broken {
  readonly cells: readonly (readonly string[])[];
  readonly under: readonly UnderLine[];
  readonly underLeft: number;
  /** From line to line of the cells, and how far down the lines under them begin. */
  readonly line: number;
  readonly underFrom: number;
  readonly height: number;
}

function broken(row: Row, fitted: Fitted, paper: Paper, measure: Measure, underLeft: number): Broken {
  const { size } = fitted;
  const line = Math.max(...fitted.columns.map((column) => cellStyle(column, size).size)) * paper.closeness.row;
  const cells = row.cells.map((cell, at) => linesOf(cell, fitted.columns[at], size, measure));
  const under = underLines(row, size, paper).flatMap(({ text, style, height }) =>
    brokenAtPoints(measure, text, style, fitted.width - underLeft).map((each): UnderLine => ({ text: each, style, height })),
  );
  const underFrom = Math.max(1, ...cells.map((each) => each.length)) * line;
  const underHeight = under.reduce((sum, { height }) => sum + height, 0);
  return { cells, under, underLeft, line, underFrom, height: underFrom + underHeight + (under.length > 0 ? 1.5 : 0) };
}

function underLines({ lines = [], notes = [] }: Row, size: number, paper: Paper): readonly UnderLine[] {
  const large: Style = { weight: "regular", size };
  const small: Style = { weight: "regular", size: Math.min(paper.note, size), grey: quiet };
  return [
    ...lines.map((text) => ({ text, style: large, height: large.size * 1.25 })),
    ...notes.map((text) => ({ text, style: small, height: small.size * 1.25 })),
  ];
}

function rowMarks(row: Row, lines: Broken, index: number, left: number, top: number, fitted: Fitted, measure: Measure): Mark[] {
  const { cells, under, underLeft, line, underFrom, height } = lines;
  const marks: Mark[] = [];
  if ((index % rowsInBlock) % 2 === 1) marks.push({ kind: "band", x: left, y: top, width: fitted.width, height, grey: tint });
  const base = top + line * 0.5 + fitted.size * 0.35;
  const set = row.cells.map((cell, at) => cellMark(cell, cells[at] ?? [], fitted, at, left, base, line, measure));
  if (row.rest) set.push(restMark(row.rest, row.cells.length, fitted, left, base, line, measure));
  marks.push({ kind: "group", role: "TR", marks: set });
  let below = top + underFrom - 1;
  const said = under.map(({ text, style, height: down }): Mark => {
    const mark = setText(measure, text, style, left + underLeft, below + 0.75 * down);
    below += down;
    return mark;
  });
  if (said.length > 0) {
    const cell: Mark = { kind: "group", role: "TD", columns: fitted.columns.length, marks: said };
    marks.push({ kind: "group", role: "TR", marks: [cell] });
  }
  return marks;
}

/** The rule that parts one block of rows from the next, for the eye to count by. */
function blockRule(width: number): Slug {
  const height = 3.2;
  return {
    height,
    marks: (left, top) => [
      { kind: "rule", from: [left, top + height / 2], to: [left + width, top + height / 2], width: 0.5, grey: 0.5 },
    ],
  };
}

function linesOf(cell: Cell, column: Fitted["columns"][number] | undefined, size: number, measure: Measure): readonly string[] {
  if (!column?.wraps) return [cell.text];
  return brokenIntoLines(measure, cell.text, cellStyle(column, size), column.width + 0.01);
}

function cellMark(
  cell: Cell,
  lines: readonly string[],
  fitted: Fitted,
  at: number,
  left: number,
  base: number,
  line: number,
  measure: Measure,
): Mark {
  const column = fitted.columns[at];
  if (column === undefined) throw new Error("turns-and-holes is at fault, please report it: a row has more cells than columns");
  const style = cellStyle(column, fitted.size);
  const from = left + headEdge(column);
  const marks: Mark[] = [];
  if (cell.box) marks.push(tickBox(from, base, fitted.size));
  for (const [index, text] of cell.box ? [] : lines.entries()) {
    const y = base + index * line;
    if (!cell.reversed) marks.push(setText(measure, text, style, from, y, column.align));
    else {
      const white = setText(measure, text, { weight: "bold", size: fitted.size, grey: 1 }, from, y, column.align);
      const pad = fitted.size * 0.3;
      marks.push({
        kind: "band",
        x: white.x - pad,
        y: y - fitted.size * 0.82,
        width: white.width + 2 * pad,
        height: fitted.size * 1.06,
        grey: 0,
      });
      marks.push(white);
    }
  }
  const [first] = lines;
  if (cell.link !== undefined && first !== undefined) {
    const { x, width } = setText(measure, first, style, from, base, column.align);
    marks.push({ kind: "link", x, y: base - line * 0.7, width, height: line, to: cell.link, says: cell.text });
  }
  return { kind: "group", ...(at === 0 ? { role: "TH", scope: "Row" } : { role: "TD" }), marks };
}

function tickBox(middle: number, base: number, size: number): Mark {
  const side = size * 0.78;
  const [left, top] = [middle - side / 2, base - side + size * 0.04];
  const box = [left, top, left + side, top + side] as const;
  return { kind: "shape", path: `M${left} ${top}H${box[2]}V${box[3]}H${left}Z`, fill: 1, stroke: { width: 0.7, grey: 0 }, box };
}

function restMark(cell: Cell, from: number, fitted: Fitted, left: number, base: number, line: number, measure: Measure): Mark {
  const x = left + (fitted.columns[from]?.left ?? 0);
  const text = setText(measure, cell.text, { weight: "regular", size: fitted.size, grey: quiet }, x, base);
  const marks: Mark[] = [text];
  if (cell.link !== undefined)
    marks.push({ kind: "link", x, y: base - line * 0.7, width: text.width, height: line, to: cell.link, says: cell.text });
  return { kind: "group", role: "TD", columns: fitted.columns.length - from, marks };
}
