import type { TableBlock } from "../content/table-block.ts";
import { headingSlugs } from "./lines.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import type { Galley, Slug } from "./slugs.ts";
import { columnsThatFit, type Fitted, groupsOf, gutter, headStyle, sizedToFit } from "./table-fit.ts";
import { headEdge, rowSlug, underLeftOf } from "./table-row.ts";

const quiet = 0.35;

/** Sets a table: figures as large as the paper's table size where they fit, shrunk step by step where not. */
export function tableGalley(whole: TableBlock, width: number, paper: Paper, measure: Measure): Galley {
  const { block, columns } = folded(whole, width, paper, measure);
  const pitch = (width + gutter) / columns;
  const { fitted, rows } = sizedToFit(block, pitch - gutter, paper, measure);
  const underLeft = underLeftOf(rows, fitted, paper, measure);
  return {
    role: "Table",
    ...(columns === 1 && block.title === undefined ? {} : { fold: { columns, pitch } }),
    ...(block.title === undefined ? {} : titled(block.title, width, paper, measure)),
    head: [headSlug(fitted, paper, measure)],
    slugs: rows.map((row, index) => rowSlug(row, index, block.headwords === true, fitted, paper, measure, underLeft)),
  };
}

/** As many columns side by side as fit, without those that can be spared where that makes them more. */
function folded(block: TableBlock, width: number, paper: Paper, measure: Measure) {
  const columns = block.folds ? columnsThatFit(block, width, paper, measure) : 1;
  const kept = block.columns.map(({ spare }) => spare !== true);
  if (!block.folds || kept.every(Boolean)) return { block, columns };
  const spared: TableBlock = {
    ...block,
    columns: block.columns.filter((_, index) => kept[index]),
    rows: block.rows.map((row) => ({ ...row, cells: row.cells.filter((_, index) => kept[index] !== false) })),
  };
  const more = columnsThatFit(spared, width, paper, measure);
  return more > columns ? { block: spared, columns: more } : { block, columns };
}

function titled({ text, anchor }: NonNullable<TableBlock["title"]>, width: number, paper: Paper, measure: Measure) {
  return {
    opening: headingSlugs(text, anchor, width, paper, measure),
    continued: headingSlugs(`${text}, continued`, undefined, width, paper, measure),
  };
}

/** A row of the heads of groups, each over its columns; over those of no group an empty one. */
function groupMarks({ columns }: Fitted, style: Style, left: number, top: number, measure: Measure): Mark[] {
  const line = style.size * 1.15;
  const cells: Mark[] = [];
  const rules: Mark[] = [];
  let next = 0;
  const over = (many: number, marks: readonly Mark[]) => {
    if (many > 0) cells.push({ kind: "group", role: "TH", scope: "Column", columns: many, marks });
  };
  for (const { first, last, name } of groupsOf(columns)) {
    const from = left + (columns[first]?.left ?? 0);
    const end = columns[last];
    const to = left + (end === undefined ? 0 : end.left + end.width);
    over(first - next, []);
    over(last - first + 1, [setText(measure, name, { ...style, grey: quiet }, (from + to) / 2, top + line * 0.8, "center")]);
    rules.push({ kind: "rule", from: [from, top + line + 0.6], to: [to, top + line + 0.6], width: 0.5, grey: quiet });
    next = last + 1;
  }
  over(columns.length - next, []);
  return [{ kind: "group", role: "TR", marks: cells }, ...rules];
}

/** The heads of columns under those of their groups, with the rule below them. */
export function headSlug(fitted: Fitted, paper: Paper, measure: Measure): Slug {
  const style = headStyle(fitted.size, paper);
  const line = style.size * 1.15;
  const groups = groupsOf(fitted.columns);
  const deepest = Math.max(...fitted.columns.map(({ head }) => head.split("\n").length));
  const groupHeight = groups.length === 0 ? 0 : line + 2;
  const height = groupHeight + deepest * line + 4;
  return {
    height,
    keepWithNext: true,
    marks(left, top) {
      const marks: Mark[] = groups.length === 0 ? [] : groupMarks(fitted, style, left, top, measure);
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
