import type { Column, Row, TableBlock } from "../content/table-block.ts";
import type { Style } from "./marks.ts";
import { type Measure, setsFractions } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { large, small, withUnder } from "./under-rows.ts";

/** A table measured for its width: where each column stands and how large its figures are. */
export interface Fitted {
  readonly columns: readonly (Column & { readonly left: number; readonly width: number })[];
  readonly size: number;
  readonly width: number;
}

/** Gaps between columns in parts of the size of the type: within a group, and between groups. */
const gapWithin = 0.62;
const gapBetween = 1;
/** How far gaps may close before columns go under the rows, and before figures shrink under what can be read. */
const tight = 0.75;
const tightest = 0.6;
const mostGapGrowth = 3.4;
/** Room beside the outer columns. */
const edge = 0.35;
const leastWrapped = 7;
const sizeStep = 0.25;

/** Between tables that stand side by side, in points. */
export const gutter = 16;

const mostColumns = 4;
const fewestRows = 5;
/** Figures are never smaller than this part of the least, whatever the table. */
const leastOfAll = 0.5;

/** Side by side, with figures hardly smaller, where there are rows enough. */
export function columnsThatFit(block: TableBlock, width: number, paper: Paper, measure: Measure): number {
  const most = Math.min(mostColumns, Math.ceil(block.rows.length / fewestRows));
  const fitAt = fitting(block, paper, measure);
  for (let columns = most; columns > 1; columns -= 1) {
    if (fitAt(paper.leastTable, (width + gutter) / columns - gutter, tightest) !== null) return columns;
  }
  return 1;
}

/** A table that fits, with its rows: where it lacks columns, with what they say under them. */
interface Sized {
  readonly fitted: Fitted;
  readonly rows: readonly Row[];
}

/** Sizes a table: whole where it fits, else with its quiet columns under the rows, gaps closing before figures shrink too far. */
export function sizedToFit(block: TableBlock, width: number, paper: Paper, measure: Measure): Sized {
  const sized = (table: TableBlock, gaps: readonly number[], least: number, most: number): Sized | null => {
    const fitAt = fitting(table, paper, measure);
    for (const tightness of gaps) {
      for (let size = most; size >= least; size -= sizeStep) {
        const fitted = fitAt(size, width, tightness);
        if (fitted !== null) return { fitted, rows: table.rows };
      }
    }
    return null;
  };
  const readable = (table: TableBlock, ...gaps: readonly number[]) => sized(table, gaps, paper.leastTable, paper.table);
  const narrower = () => withUnder(block, ({ aside }) => small(aside));
  const narrowest = () => withUnder(block, ({ aside, under }) => large(under) ?? small(aside));
  const found =
    readable(block, 1, tight, ...(block.folds ? [tightest] : [])) ??
    readable(narrower(), 1, tight, tightest) ??
    readable(narrowest(), 1, tight, tightest) ??
    sized(narrowest(), [tightest], paper.leastTable * leastOfAll, paper.leastTable);
  if (found === null) throw new Error(`turns-and-holes is at fault, please report it: the table "${block.summary}" does not fit`);
  return found;
}

/** The size of figures that only check, and of those found from afar, in parts of those that are set. */
const sizes = { fine: 0.84, usual: 1, huge: 1.5 } as const;

/** How the figures of a column look. */
export function cellStyle(column: Pick<Column, "strong" | "size">, size: number): Style {
  return { weight: column.strong ? "bold" : "regular", size: size * sizes[column.size ?? "usual"] };
}

/** How the heads of columns look: smaller than their figures, no larger than running text, and never smaller than a note. */
export function headStyle(size: number, { text, note }: Pick<Paper, "text" | "note">): Style {
  return { weight: "semibold", size: Math.max(note, Math.min(text, size * 0.8)) };
}

/** Where the columns of a table stand at a size, a width and a tightness of its gaps; null where they do not fit. */
function fitting({ columns, rows }: TableBlock, paper: Paper, measure: Measure) {
  const cells = columns.map((column, index) => widestCell(column, index, rows, measure));
  return (size: number, width: number, tightness: number): Fitted | null => {
    const heads = headStyle(size, paper);
    const natural = columns.map(({ head }, index) =>
      Math.max(...head.split("\n").map((line) => measure(line, heads)), cells[index]?.(size) ?? 0),
    );
    const widened = widenForGroups(columns, natural, size, heads, measure);
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
  };
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

/** How wide the widest cell of a column is at a size: measured once, as widths grow with the size but where fractions come to be set. */
function widestCell(column: Column, index: number, rows: readonly Row[], measure: Measure): (size: number) => number {
  const known = new Map<boolean, number>();
  const measured = (size: number): number => {
    const style = cellStyle(column, size);
    let widest = 0;
    for (const { cells } of rows) {
      const cell = cells[index];
      if (cell === undefined) continue;
      const wide = cell.box ? size * 0.9 : measure(cell.text, style) + (cell.reversed ? 0.7 * size : 0);
      if (wide > widest) widest = wide;
    }
    return widest / size;
  };
  return (size) => {
    const fractions = setsFractions(cellStyle(column, size).size);
    const perPoint = known.get(fractions) ?? measured(size);
    known.set(fractions, perPoint);
    return perPoint * size;
  };
}

/** A group head wider than its columns makes the last of them wider. */
function widenForGroups(
  columns: readonly Column[],
  natural: readonly number[],
  size: number,
  heads: Style,
  measure: Measure,
): number[] {
  const widths = [...natural];
  for (const { first, last, name } of groupsOf(columns)) {
    const inside = widths.slice(first, last + 1).reduce((sum, each) => sum + each, 0) + (last - first) * gapWithin * size;
    const missing = measure(name, heads) - inside;
    if (missing > 0)
      for (let index = first; index <= last; index += 1) widths[index] = (widths[index] ?? 0) + missing / (last - first + 1);
  }
  return widths;
}

/** Columns beside each other that stand under one group head. */
export function groupsOf(columns: readonly Column[]): { first: number; last: number; name: string }[] {
  const groups: { first: number; last: number; name: string }[] = [];
  for (const [index, { group }] of columns.entries()) {
    const open = groups.at(-1);
    if (group === undefined) continue;
    if (open && open.name === group && open.last === index - 1) open.last = index;
    else groups.push({ first: index, last: index, name: group });
  }
  return groups;
}
