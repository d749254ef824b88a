import type { Block, OpeningBlock, ParagraphBlock, Part } from "../content/blocks.ts";
import { blanksGalley } from "./blanks.ts";
import { entriesGalley } from "./entries.ts";
import { figureGalley } from "./figures.ts";
import { gridGalley } from "./grid.ts";
import { headingSlugs, lines } from "./lines.ts";
import { listGalley } from "./list.ts";
import type { Style } from "./marks.ts";
import type { Measure } from "./measure.ts";
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
      return galley([
        ...paragraph(block, width, paper, measure),
        space(paper.text * 0.5 * paper.closeness.gap, warns(block.style)),
      ]);
    case "grid":
      return gridGalley(block, width, paper, measure);
    case "columns":
      return entriesGalley(block, width, paper, measure);
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

/** The title of a part, its warning, and what a sheet needs to stand alone. */
export function titleGalley(
  { title, warning, alone }: Pick<Part, "title" | "warning" | "alone">,
  width: number,
  paper: Paper,
  measure: Measure,
): Galley {
  const style: Style = { weight: "bold", size: paper.text * 1.75 };
  const under = [
    ...(warning === undefined ? [] : paragraph({ kind: "paragraph", text: warning, style: "strong" }, width, paper, measure)),
    ...(alone === undefined ? [] : paragraph({ kind: "paragraph", text: alone }, width, paper, measure)),
  ];
  const gap = space(paper.text * 0.4 * paper.closeness.gap, true);
  return galley([...lines(title, style, "H1", width, paper, measure, true), gap, ...under, ...(under.length === 0 ? [] : [gap])]);
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
  return lines(text, styles[style ?? "regular"], "P", width, paper, measure, warns(style));
}

/** What warns stays on the page of what it warns of. */
function warns(style: ParagraphBlock["style"]): boolean {
  return style === "strong" || style === "caution";
}
