import type { Mark, Page } from "../layout/marks.ts";
import type { Canvas } from "./canvas.ts";

/** Draws pages as they were set. */
export function drawPages(canvas: Canvas, pages: readonly Page[]): void {
  for (const { width, height, marks } of pages) {
    canvas.page(width, height);
    for (const mark of marks) drawMark(canvas, mark);
  }
}

/** Draws one mark. */
export function drawMark(canvas: Canvas, mark: Mark): void {
  if (mark.kind === "group") for (const inner of mark.marks) drawMark(canvas, inner);
  else if (mark.kind === "text") canvas.text(mark);
  else if (mark.kind === "rule") canvas.rule(mark);
  else if (mark.kind === "band") canvas.band(mark);
  else if (mark.kind === "shape") canvas.shape(mark);
  else if (mark.kind === "dots") canvas.dots(mark);
  else if (mark.kind === "anchor") canvas.anchor(mark.name, mark.y);
  else canvas.link(mark.x, mark.y, mark.width, mark.height, mark.to);
}
