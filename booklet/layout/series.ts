import type { SeriesBlock, SeriesTable } from "../content/series-block.ts";
import type { TableBlock } from "../content/table-block.ts";
import { lines } from "./lines.ts";
import type { Mark, Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { type Galley, type Slug, space } from "./slugs.ts";
import { headSlug } from "./table.ts";
import { columnsThatFit, type Fitted, gutter, sizedToFit } from "./table-fit.ts";
import { rowSlug } from "./table-row.ts";

/** From row to row, in parts of the size: narrow columns lead the eye, and pages are saved. */
const closeSet = 1.3;

/** Sets the tables of a series to run through as many columns as their figures leave room for. */
export function seriesGalley(block: SeriesBlock, width: number, usual: Paper, measure: Measure): Galley {
  const { scale = 1 } = block;
  const closeness = { ...usual.closeness, row: Math.min(usual.closeness.row, closeSet) };
  const paper = { ...usual, table: usual.table * scale, leastTable: usual.leastTable * scale, closeness };
  const all: TableBlock = { ...block, kind: "table", rows: block.tables.flatMap(({ rows }) => rows) };
  const columns = columnsThatFit(all, width, paper, measure);
  const pitch = (width + gutter) / columns;
  const { fitted, rows } = sizedToFit(all, pitch - gutter, paper, measure);
  let from = 0;
  const slugs = block.tables.flatMap((table) => {
    from += table.rows.length;
    const fittedRows = { ...table, rows: rows.slice(from - table.rows.length, from) };
    return tableSlugs(fittedRows, fitted, pitch - gutter, paper, measure);
  });
  const toKnow = block.toKnow === "" ? [] : knownSlugs(block.toKnow, width, paper, measure);
  return {
    role: "Table",
    runs: { columns, pitch },
    opening: toKnow,
    continued: toKnow,
    head: [headSlug(fitted, paper, measure)],
    slugs,
  };
}

function knownSlugs(text: string, width: number, paper: Paper, measure: Measure): readonly Slug[] {
  const style: Style = { weight: "semibold", size: paper.text };
  return [...lines(text, style, "P", width, paper, measure, true), space(paper.text * 0.4, true)];
}

/** A table with its heading; its first rows stay with that, and its last is not left to another column alone. */
function tableSlugs(table: SeriesTable, fitted: Fitted, width: number, paper: Paper, measure: Measure): readonly Slug[] {
  const { rows, headwords } = table;
  const resumed = table.title === undefined ? [] : [titleSlug({ ...table, notes: ["continued"] }, fitted, width, paper, measure)];
  const last = rows.length - 1;
  const slugs = rows.map((row, index): Slug => {
    const { between, ...slug } = rowSlug(row, index, headwords === true, fitted, paper, measure);
    return {
      ...slug,
      ...(between === undefined || index === 0 ? {} : { between }),
      ...(index === 0 ? {} : { resumed }),
      keepWithNext: index < last && (index === 0 || index === last - 1),
    };
  });
  if (table.title === undefined) return slugs;
  const title = titleSlug(table, fitted, width, paper, measure);
  const { anchor } = table;
  const named = anchor === undefined ? title : { ...title, anchor };
  return [{ ...named, between: space(fitted.size * 0.7) }, ...slugs];
}

/** The heading of a table within its column, what is said of it to the right of it or in lines of its own. */
function titleSlug(
  { title = "", notes = [], headword }: SeriesTable,
  fitted: Fitted,
  width: number,
  paper: Paper,
  measure: Measure,
): Slug {
  const style: Style = { weight: "bold", size: fitted.size * 1.15 };
  const small: Style = { weight: "regular", size: paper.note };
  const line = style.size * 1.3;
  const [beside, ...more] = notes;
  const isBeside = beside !== undefined && measure(title, style) + measure(beside, small) + style.size * 0.6 <= width;
  const under = (isBeside ? more : notes).flatMap((note) => brokenIntoLines(measure, note, small, width));
  const height = line + under.length * small.size * 1.25 + 1;
  return {
    height,
    keepWithNext: true,
    ...(headword === undefined ? {} : { headword }),
    marks(left, top) {
      const base = top + line * 0.78;
      const right = isBeside ? [setText(measure, beside, small, left + width, base, "right")] : [];
      const below = under.map((note, at) => setText(measure, note, small, left, top + line + (at + 0.75) * small.size * 1.25));
      const cell: Mark = {
        kind: "group",
        role: "TH",
        columns: fitted.columns.length,
        marks: [setText(measure, title, style, left, base), ...right, ...below],
      };
      return [
        { kind: "group", role: "TR", marks: [cell] },
        { kind: "rule", from: [left, top + height - 0.5], to: [left + width, top + height - 0.5], width: 0.5, grey: 0.35 },
      ];
    },
  };
}
