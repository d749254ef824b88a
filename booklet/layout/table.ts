import type { Cell, Column, Row, TableBlock } from "../content/blocks.ts";
import { headingSlugs } from "./lines.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import type { Galley, Slug } from "./slugs.ts";

/** A table measured for its width: where each column stands and how large its figures are. */
interface Fitted {
  readonly columns: readonly (Column & { readonly left: number; readonly width: number })[];
  readonly size: number;
  readonly width: number;
}

const leading = 1.42;
/** Gaps between columns in parts of the size of the type: within a group, and between groups. */
const gapWithin = 0.62;
const gapBetween = 1;
/** How far gaps may close before figures shrink under what can be read. */
const tight = 0.75;
const mostGapGrowth = 3.4;
/** Room beside the outer columns. */
const edge = 0.35;
const leastWrapped = 7;
/** Between tables that stand side by side, in points. */
const gutter = 16;
const mostColumns = 4;
/** How far figures may shrink for tables to stand side by side. */
const foldedSize = 0.85;
const fewestRows = 5;
/** Figures are never smaller than this, whatever the table. */
const leastOfAll = 5;
const rowsInBlock = 5;
const tint = 0.925;
const quiet = 0.35;

/** Sets a table: figures as large as the paper's table size where they fit, shrunk step by step where not. */
export function tableGalley(block: TableBlock, width: number, paper: Paper, measure: Measure): Galley {
  const columns = block.folds ? columnsThatFit(block, width, paper, measure) : 1;
  const pitch = (width + gutter) / columns;
  const { fitted, rows } = sizedToFit(block, pitch - gutter, paper, measure);
  return {
    role: "Table",
    ...(columns === 1 && block.title === undefined ? {} : { fold: { columns, pitch } }),
    ...(block.title === undefined ? {} : titled(block.title, width, paper, measure)),
    head: [headSlug(fitted, measure)],
    slugs: rows.map((row, index) => rowSlug(row, index, block.headwords === true, fitted, paper, measure)),
  };
}

function titled({ text, anchor }: NonNullable<TableBlock["title"]>, width: number, paper: Paper, measure: Measure) {
  return {
    opening: headingSlugs(text, anchor, width, paper, measure),
    continued: headingSlugs(`${text}, continued`, undefined, width, paper, measure),
  };
}

/** Side by side, with figures hardly smaller, where there are rows enough. */
function columnsThatFit(block: TableBlock, width: number, paper: Paper, measure: Measure): number {
  const most = Math.min(mostColumns, Math.ceil(block.rows.length / fewestRows));
  for (let columns = most; columns > 1; columns -= 1) {
    if (fitAt(Math.max(paper.leastTable, paper.table * foldedSize), block, (width + gutter) / columns - gutter, measure) !== null)
      return columns;
  }
  return 1;
}

function sizedToFit(block: TableBlock, width: number, paper: Paper, measure: Measure) {
  for (const { table, least, tightness } of [
    { table: block, least: paper.leastTable, tightness: 1 },
    { table: block, least: paper.leastTable, tightness: tight },
    { table: withUnder(block, ({ aside }) => aside), least: paper.leastNarrow, tightness: 1 },
    { table: withUnder(block, ({ aside }) => aside), least: paper.leastNarrow, tightness: tight },
    { table: withUnder(block, ({ aside, under }) => aside ?? under), least: leastOfAll, tightness: 1 },
  ]) {
    for (let size = paper.table; size >= least; size -= 0.25) {
      const fitted = fitAt(size, table, width, measure, tightness);
      if (fitted !== null) return { fitted, rows: table.rows };
    }
  }
  throw new Error(`turns-and-holes is at fault, please report it: the table "${block.summary}" does not fit`);
}

/** The table with the columns that have such a text in small lines under the rows. */
function withUnder(block: TableBlock, textOf: (column: Column) => string | undefined): TableBlock {
  const texts = block.columns.map(textOf);
  const rows = block.rows.map((row): Row => {
    const said = row.cells.flatMap(({ text }, index) => texts[index]?.replace("{}", text) ?? []);
    const notes = [...(said.length === 0 ? [] : [said.join("  ·  ")]), ...(row.notes ?? [])];
    return { ...row, cells: row.cells.filter((_, index) => texts[index] === undefined), notes };
  });
  return { ...block, columns: block.columns.filter((_, index) => texts[index] === undefined), rows };
}

function cellStyle(column: Pick<Column, "strong">, size: number): Style {
  return { weight: column.strong ? "bold" : "regular", size };
}

function headStyle(size: number): Style {
  return { weight: "semibold", size: Math.max(Math.min(6.5, size), size * 0.8) };
}

function fitAt(size: number, { columns, rows }: TableBlock, width: number, measure: Measure, tightness = 1): Fitted | null {
  const natural = columns.map((column, index) => naturalWidth(column, index, rows, size, measure));
  const widened = widenForGroups(columns, natural, size, measure);
  const gaps = columns.map((column, index) => gapBefore(columns[index - 1], column) * size * tightness);
  const allGaps = gaps.reduce((sum, each) => sum + each, 0);
  const inside = width - 2 * edge * size;
  const wrapped = columns.map(({ wraps }, index) => (wraps ? Math.min(widened[index] ?? 0, leastWrapped * size) : 0));
  const fixed = columns.reduce((sum, { wraps }, index) => sum + (wraps ? 0 : (widened[index] ?? 0)), 0);
  const spare = inside - fixed - allGaps - wrapped.reduce((sum, each) => sum + each, 0);
  if (spare < 0) return null;
  const widths = shareOut(columns, widened, wrapped, spare);
  const used = widths.reduce((sum, each) => sum + each, 0);
  const growth = allGaps === 0 ? 1 : Math.min(mostGapGrowth, (inside - used) / allGaps);
  let left = edge * size;
  const placed = columns.map((column, index) => {
    left += (gaps[index] ?? 0) * growth;
    const here = { ...column, left, width: widths[index] ?? 0 };
    left += here.width;
    return here;
  });
  return { columns: placed, size, width: Math.min(width, left + edge * size + 0.01) };
}

function gapBefore(previous: Column | undefined, column: Column): number {
  if (previous === undefined) return 0;
  return previous.group !== undefined && previous.group === column.group ? gapWithin : gapBetween;
}

/** Columns that wrap take of the spare width what they need, in order. */
function shareOut(columns: readonly Column[], widened: readonly number[], wrapped: readonly number[], spare: number): number[] {
  let left = spare;
  return columns.map(({ wraps }, index) => {
    const natural = widened[index] ?? 0;
    if (!wraps) return natural;
    const least = wrapped[index] ?? 0;
    const more = Math.min(left, natural - least);
    left -= more;
    return least + more;
  });
}

function naturalWidth(column: Column, index: number, rows: readonly Row[], size: number, measure: Measure): number {
  const style = cellStyle(column, size);
  const head = column.head.split("\n").map((line) => measure(line, headStyle(size)));
  const cells = rows.map(({ cells }) => {
    const cell = cells[index];
    if (cell === undefined) return 0;
    return cell.box ? size * 0.9 : measure(cell.text, style) + (cell.reversed ? 0.7 * size : 0);
  });
  return Math.max(...head, ...cells);
}

/** A group head wider than its columns makes the last of them wider. */
function widenForGroups(columns: readonly Column[], natural: readonly number[], size: number, measure: Measure): number[] {
  const widths = [...natural];
  for (const { first, last, name } of groupsOf(columns)) {
    const inside = widths.slice(first, last + 1).reduce((sum, each) => sum + each, 0) + (last - first) * gapWithin * size;
    const missing = measure(name, headStyle(size)) - inside;
    if (missing > 0)
      for (let index = first; index <= last; index += 1) widths[index] = (widths[index] ?? 0) + missing / (last - first + 1);
  }
  return widths;
}

function groupsOf(columns: readonly Column[]): { first: number; last: number; name: string }[] {
  const groups: { first: number; last: number; name: string }[] = [];
  for (const [index, { group }] of columns.entries()) {
    const open = groups.at(-1);
    if (group === undefined) continue;
    if (open && open.name === group && open.last === index - 1) open.last = index;
    else groups.push({ first: index, last: index, name: group });
  }
  return groups;
}

function headSlug(fitted: Fitted, measure: Measure): Slug {
  const style = headStyle(fitted.size);
  const line = style.size * 1.15;
  const groups = groupsOf(fitted.columns);
  const deepest = Math.max(...fitted.columns.map(({ head }) => head.split("\n").length));
  const groupHeight = groups.length === 0 ? 0 : line + 2;
  const height = groupHeight + deepest * line + 4;
  return {
    height,
    keepWithNext: true,
    marks(left, top) {
      const marks: Mark[] = [];
      for (const { first, last, name } of groups) {
        const from = left + (fitted.columns[first]?.left ?? 0);
        const end = fitted.columns[last];
        const to = left + (end === undefined ? 0 : end.left + end.width);
        marks.push(setText(measure, name, { ...style, grey: quiet }, (from + to) / 2, top + line * 0.8, "center"));
        marks.push({ kind: "rule", from: [from, top + line + 0.6], to: [to, top + line + 0.6], width: 0.5, grey: quiet });
      }
      const cells = fitted.columns.map((column): Mark => {
        const lines = column.head.split("\n");
        const base = top + height - 4 - (lines.length - 1) * line - line * 0.2;
        const at = headEdge(column);
        return {
          kind: "group",
          role: "TH",
          scope: "Column",
          marks: lines
            .filter((each) => each !== "")
            .map((each, index) => setText(measure, each, style, left + at, base + index * line, column.align)),
        };
      });
      marks.push({ kind: "group", role: "TR", marks: cells });
      marks.push({ kind: "rule", from: [left, top + height - 1], to: [left + fitted.width, top + height - 1], width: 0.9 });
      return marks;
    },
  };
}

function headEdge({ align, left, width }: Fitted["columns"][number]): number {
  return align === "left" ? left : align === "right" ? left + width : left + width / 2;
}

function rowSlug(row: Row, index: number, headwords: boolean, fitted: Fitted, paper: Paper, measure: Measure): Slug {
  const { size } = fitted;
  const line = size * leading;
  const lines = row.cells.map((cell, at) => linesOf(cell, fitted.columns[at], size, measure));
  const deepest = Math.max(1, ...lines.map((each) => each.length));
  const noteStyle: Style = { weight: "regular", size: Math.min(paper.note, size), grey: quiet };
  const noteLeft = fitted.columns[2]?.left ?? 0;
  const notes = (row.notes ?? []).flatMap((note) => brokenIntoLines(measure, note, noteStyle, fitted.width - noteLeft));
  const noteLine = noteStyle.size * 1.25;
  const inBlock = index % rowsInBlock;
  const body = deepest * line + notes.length * noteLine + (notes.length > 0 ? 1.5 : 0);
  return {
    height: body,
    ...(inBlock === 0 ? { between: blockRule(fitted.width) } : {}),
    ...(headwords && row.cells[0] ? { headword: row.cells[0].text } : {}),
    ...(row.anchor === undefined ? {} : { anchor: row.anchor }),
    marks(left, top) {
      const marks: Mark[] = [];
      if (inBlock % 2 === 1) marks.push({ kind: "band", x: left, y: top, width: fitted.width, height: body, grey: tint });
      const base = top + line * 0.5 + size * 0.35;
      const cells = row.cells.map((cell, at) => cellMark(cell, lines[at] ?? [], fitted, at, left, base, line, measure));
      if (row.rest) cells.push(restMark(row.rest, row.cells.length, fitted, left, base, line, measure));
      marks.push({ kind: "group", role: "TR", marks: cells });
      const under = notes.map((note, at) => {
        const y = top + deepest * line + (at + 0.75) * noteLine - 1;
        return setText(measure, note, noteStyle, left + noteLeft, y);
      });
      if (under.length > 0) {
        const cell: Mark = { kind: "group", role: "TD", columns: fitted.columns.length, marks: under };
        marks.push({ kind: "group", role: "TR", marks: [cell] });
      }
      return marks;
    },
  };
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
