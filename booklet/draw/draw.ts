import type { Mark, Page } from "../layout/marks.ts";
import type { Canvas } from "./canvas.ts";

/** Draws pages as they were set, one after the other; none is kept. */
export function drawPages(canvas: Canvas, pages: Iterable<Page>): void {
  for (const page of pages) drawPage(canvas, page);
}

/** Draws a page as it was set. */
export function drawPage(canvas: Canvas, { width, height, marks }: Page): void {
  canvas.page(width, height);
  for (const mark of marks) drawMark(canvas, mark);
}

/** Draws one mark, with all that is in it. */
export function drawMark(canvas: Canvas, mark: Mark): void {
  if (mark.kind === "group") {
    canvas.group(mark, () => {
      for (const inner of mark.marks) if (inner.kind !== "link") drawMark(canvas, inner);
    });
    // Links come after what they lie over: in a tagged file they cannot be within its content.
    if (mark.role !== "Table" && mark.role !== "TR") drawLinks(canvas, mark.marks);
  } else if (mark.kind === "anchor") canvas.anchor(mark.name, mark.y);
  else if (mark.kind === "link") canvas.link(mark);
  else canvas.decoration(() => drawInk(canvas, mark));
}

function drawInk(canvas: Canvas, mark: Exclude<Mark, { kind: "group" | "anchor" | "link" }>): void {
  if (mark.kind === "text") canvas.text(mark);
  else if (mark.kind === "rule") canvas.rule(mark);
  else if (mark.kind === "band") canvas.band(mark);
  else if (mark.kind === "shape") canvas.shape(mark);
  else canvas.dots(mark);
}

function drawLinks(canvas: Canvas, marks: readonly Mark[]): void {
  for (const mark of marks) {
    if (mark.kind === "link") canvas.link(mark);
    else if (mark.kind === "group") drawLinks(canvas, mark.marks);
  }
}
