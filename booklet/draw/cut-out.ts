import { flattened, type Page } from "../layout/marks.ts";
import type { Canvas } from "./canvas.ts";
import { drawMark } from "./draw.ts";

/** A line to cut along, and one to fold on: short dashes. */
const dash = 4;

/**
 * Draws the two sides of a card on one sheet, one under the other: cut out along the line and folded
 * between them it has a side each way, and no printer need print on both sides.
 */
export function drawCutOut(
  canvas: Canvas,
  sides: readonly Page[],
  sheet: { readonly width: number; readonly height: number },
): void {
  const [first] = sides;
  if (!first) return;
  const left = (sheet.width - first.width) / 2;
  const top = (sheet.height - first.height * sides.length) / 2;
  canvas.page(sheet.width, sheet.height);
  for (const [index, side] of sides.entries()) {
    canvas.shifted(left, top + index * first.height, side.width, side.height, () => {
      for (const mark of flattened(side.marks)) if (mark.kind !== "anchor" && mark.kind !== "link") drawMark(canvas, mark);
    });
    if (index > 0) dashed(canvas, left, top + index * first.height, first.width);
  }
  const [right, bottom] = [left + first.width, top + first.height * sides.length];
  const corners = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ] as const;
  for (const [index, from] of corners.entries())
    canvas.rule({ kind: "rule", from, to: corners[(index + 1) % corners.length] ?? from, width: 0.4, grey: 0.5 });
}

function dashed(canvas: Canvas, left: number, y: number, width: number): void {
  for (let x = 0; x < width; x += 2 * dash)
    canvas.rule({ kind: "rule", from: [left + x, y], to: [left + Math.min(width, x + dash), y], width: 0.4, grey: 0.5 });
}
