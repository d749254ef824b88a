import type { FigureBlock } from "../content/figure-blocks.ts";
import { gearHeight, gearMarks } from "./gear-drawing.ts";
import { headHeight, headMarks } from "./head-drawing.ts";
import type { Style } from "./marks.ts";
import { brokenIntoLines, type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { plateMarks, roomToSpare } from "./plate-drawing.ts";
import { type Galley, type Slug, space } from "./slugs.ts";
import { trainHeight, trainMarks } from "./train-drawing.ts";

/** Sets a drawing with its caption; both stay on one page. */
export function figureGalley(block: FigureBlock, width: number, paper: Paper, measure: Measure): Galley {
  const style: Style = { weight: "regular", size: paper.note, grey: 0.25 };
  const height = style.size * 1.3;
  const caption = brokenIntoLines(measure, block.caption, style, width).map(
    (line, index, all): Slug => ({
      height,
      keepWithNext: index < all.length - 1,
      marks: (left, top) => [setText(measure, line, style, left, top + height * 0.74)],
    }),
  );
  return {
    role: "Figure",
    alt: block.alt,
    head: [],
    slugs: [drawing(block, width, paper, measure), ...caption, space(paper.text * 0.6 * paper.closeness.gap)],
  };
}

function drawing({ figure, share = 1 }: FigureBlock, whole: number, paper: Paper, measure: Measure): Slug {
  if (figure.type === "gear") {
    const height = gearHeight(figure, whole, paper);
    return { height, keepWithNext: true, marks: (left, top) => gearMarks(figure, { left, top, width: whole, height }, measure) };
  }
  const width = whole * paper.closeness.drawing;
  const indent = (whole - width) / 2;
  if (figure.type === "train") {
    return {
      height: trainHeight(figure, width, measure),
      keepWithNext: true,
      marks: (left, top) => trainMarks(figure, { left: left + indent, top, width }, measure),
    };
  }
  if (figure.type === "head") {
    return {
      height: headHeight(width),
      keepWithNext: true,
      marks: (left, top) => headMarks(figure, { left: left + indent, top, width }, measure),
    };
  }
  const side = Math.min(whole, paper.height * share * 0.62) * paper.closeness.drawing;
  return {
    height: side - roomToSpare(figure),
    keepWithNext: true,
    marks: (left, top) => plateMarks(figure, { left: left + (whole - side) / 2, top, side }, measure),
  };
}
