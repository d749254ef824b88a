import type { DrawnLine, ScaleFigure } from "../content/figure-blocks.ts";
import type { Style } from "./marks.ts";
import type { Measure } from "./measure.ts";

/** How long the lines of a scale are drawn, in points; from long to medium to short by the same step. Our own choice. */
export const drawnLength: Readonly<Record<DrawnLine["length"], number>> = { long: 17, medium: 12.5, short: 8 };

/** The weight of a line. */
export const lineWidth = 0.7;

/** Between two figures beside each other. */
const besideFigure = 5;

export function figureStyle(least: number): Style {
  return { weight: "semibold", size: least + 0.5 };
}

/** The least from line to line, so that no figure comes to lie on the next. */
export function leastForFigures({ lines }: ScaleFigure, style: Style, measure: Measure): number {
  const figured = lines.flatMap(({ figure }, index) => (figure === null ? [] : [{ index, wide: measure(figure, style) }]));
  return figured.reduce((least, { index, wide }, at) => {
    const before = figured[at - 1];
    if (before === undefined) return least;
    return Math.max(least, ((wide + before.wide) / 2 + besideFigure) / (index - before.index));
  }, 0);
}
