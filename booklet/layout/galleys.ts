import type { Block, ColumnsBlock, OpeningBlock, ParagraphBlock, Part } from "../content/blocks.ts";
import { blanksGalley } from "./blanks.ts";
import { figureGalley } from "./figures.ts";
import { gridGalley } from "./grid.ts";
import { headingSlugs, lines } from "./lines.ts";
import { listGalley } from "./list.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { panelGalley, ruledGalley } from "./panel.ts";
import type { Paper } from "./paper.ts";
import { seriesGalley } from "./series.ts";
import { type Galley, galley, type Slug, space } from "./slugs.ts";
import { tableGalley } from "./table.ts";

/** Sets one block to the width given. */
export function galleyOf(block: Block, width: number, paper: Paper, measure: Measure): Galley {
  switch (block.kind) {
    case "table":
      return tableGalley(block, width, paper, measure);
    case "series":
      return seriesGalley(block, width, paper, measure);
    case "heading":
      return galley(headingSlugs(block.text, block.anchor, width, paper, measure));
    case "opening":
      return openingGalley(block, width, paper, measure);
    case "paragraph":
      return galley([...paragraph(block, width, paper, measure), space(paper.text * 0.5 * paper.closeness.gap)]);
    case "grid":
      return gridGalley(block, width, paper, measure);
    case "columns":
      return galley([...columns(block, width, paper, measure), space(paper.text * 0.5 * paper.closeness.gap)]);
    case "panel":
      return panelGalley(block, width, paper, measure);
    case "ruled":
      return ruledGalley(block, width, paper, measure);
    case "blanks":
      return blanksGalley(block, width, paper, measure);
    case "figure":
      return figureGalley(block, width, paper, measure);
    case "list":
      return listGalley(block, width, paper, measure);
  }
}

/** The title of a part and its warning. */
export function titleGalley(
  { title, warning }: Pick<Part, "title" | "warning">,
  width: number,
  paper: Paper,
  measure: Measure,
): Galley {
  const style: Style = { weight: "bold", size: paper.text * 1.75 };
  const warned: Slug[] =
    warning === undefined
      ? []
      : [
          ...paragraph({ kind: "paragraph", text: warning, style: "strong" }, width, paper, measure),
          space(paper.text * 0.4 * paper.closeness.gap, true),
        ];
  return galley([
    ...lines(title, style, "H1", width, paper, measure, true),
    space(paper.text * 0.4 * paper.closeness.gap, true),
    ...warned,
  ]);
}

/** The same for a part that begins on a page already begun, a rule above it. */
function openingGalley({ title, anchor }: OpeningBlock, width: number, paper: Paper, measure: Measure): Galley {
  const rule: Slug = {
    height: paper.text * 1.6,
    keepWithNext: true,
    anchor,
    marks: (left, top) => [
      { kind: "rule", from: [left, top + paper.text * 0.9], to: [left + width, top + paper.text * 0.9], width: 1.2 },
    ],
  };
  return galley([rule, ...titleGalley({ title }, width, paper, measure).slugs]);
}

function paragraph({ text, style }: ParagraphBlock, width: number, paper: Paper, measure: Measure): Slug[] {
  const styles: Record<NonNullable<ParagraphBlock["style"]> | "regular", Style> = {
    regular: { weight: "regular", size: paper.text },
    large: { weight: "bold", size: paper.text * 2.2 },
    small: { weight: "regular", size: paper.note, grey: 0.25 },
    strong: { weight: "bold", size: paper.text },
    caution: { weight: "semibold", size: paper.text },
  };
  return lines(text, styles[style ?? "regular"], "P", width, paper, measure);
}

/** Entries side by side, in as many columns as fit, read across. */
function columns({ items }: ColumnsBlock, width: number, paper: Paper, measure: Measure): Slug[] {
  const size = paper.note + 0.5;
  const styles: readonly Style[] = [
    { weight: "bold", size },
    { weight: "regular", size },
    { weight: "regular", size, grey: 0.25 },
  ];
  const widths = styles.map((style, part) => Math.max(0, ...items.map(({ parts }) => measure(parts[part] ?? "", style))));
  const gap = size * 0.5;
  const entry = widths.reduce((sum, each) => sum + each + gap, 0);
  const perRow = Math.max(1, Math.floor((width + size) / (entry + size)));
  const pitch = (width + size) / perRow;
  const height = size * 1.45;
  const rows: Slug[] = [];
  for (let start = 0; start < items.length; start += perRow) {
    const row = items.slice(start, start + perRow);
    rows.push({
      height,
      marks(left, top) {
        return row.flatMap(({ parts, link }, at): Mark[] => {
          let right = left + at * pitch;
          const set = styles.map((style, part) => {
            right += (widths[part] ?? 0) + gap;
            const centred = part === 1;
            const x = centred ? right - gap - (widths[part] ?? 0) / 2 : right - gap;
            return setText(measure, parts[part] ?? "", style, x, top + height * 0.74, centred ? "center" : "right");
          });
          const marks: Mark[] = [{ kind: "group", role: "P", marks: set }];
          if (link !== undefined)
            marks.push({ kind: "link", x: left + at * pitch, y: top, width: entry, height, to: link, says: `count ${parts[0]}` });
          return marks;
        });
      },
    });
  }
  return rows;
}
