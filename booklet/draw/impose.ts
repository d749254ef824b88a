import { flattened, type Page } from "../layout/marks.ts";
import type { Canvas } from "./canvas.ts";
import { drawMark } from "./draw.ts";

/** Thickness of one leaf of 80 g paper, in points: 0.11 mm; common practice, no source. */
const leaf = 0.11 * (72 / 25.4);

/** One side of a sheet: indices of the pages to the left and to the right; null is blank. */
export interface Side {
  readonly left: number | null;
  readonly right: number | null;
  /** How far both pages move towards the spine, in leaves. */
  readonly creep: number;
}

/**
 * The order of pages on sheets that are printed on both sides, laid in each other, folded once
 * and stitched: on the outermost sheet the last page stands beside the first.
 *
 * Inner sheets stand out at the fore edge by the thickness of those around them, so that their
 * pages are moved towards the spine by as much and the outer margins come out even once trimmed.
 */
export function sides(pages: number): readonly Side[] {
  const padded = Math.ceil(pages / 4) * 4;
  const page = (index: number) => (index < pages ? index : null);
  return Array.from({ length: padded / 4 }, (_, sheet) => [
    { left: page(padded - 1 - 2 * sheet), right: page(2 * sheet), creep: sheet },
    { left: page(1 + 2 * sheet), right: page(padded - 2 - 2 * sheet), creep: sheet },
  ]).flat();
}

/** Draws half sheets two by two on full ones, ready to fold. Links and bookmarks make no sense there. */
export function drawImposed(canvas: Canvas, pages: readonly Page[]): void {
  const [first] = pages;
  if (!first) return;
  const { width, height } = first;
  canvas.printFolded();
  for (const { left, right, creep } of sides(pages.length)) {
    canvas.page(2 * width, height);
    draw(canvas, pages, left, creep * leaf);
    draw(canvas, pages, right, width - creep * leaf);
    for (const [from, to] of [
      [4, 14],
      [height - 14, height - 4],
    ] as const) {
      canvas.rule({ kind: "rule", from: [width, from], to: [width, to], width: 0.4, grey: 0.5 });
    }
  }
}

function draw(canvas: Canvas, pages: readonly Page[], index: number | null, x: number): void {
  const page = index === null ? undefined : pages[index];
  if (!page) return;
  canvas.shifted(x, 0, page.width, page.height, () => {
    for (const mark of flattened(page.marks)) if (mark.kind !== "anchor" && mark.kind !== "link") drawMark(canvas, mark);
  });
}
