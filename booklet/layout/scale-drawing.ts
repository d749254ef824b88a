import type { ScaleFigure } from "../content/figure-blocks.ts";
import type { DrawingBox, DrawingRoom } from "./drawing-box.ts";
import type { Mark } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { drawnLength, figureStyle, leastForFigures, lineWidth } from "./scale-lines-drawn.ts";
import { stripMarks, stripsHeight } from "./scale-strip.ts";
import { circleMark, pointAt } from "./shapes.ts";

/** From line to line round a dial, in points: as they are drawn where there is room, and no closer. */
const usualApart = 3.8;
const leastApart = 2.1;
const leastRadius = 62;

/** The height of the drawing. */
export function scaleHeight(figure: ScaleFigure, room: DrawingRoom, measure: Measure): number {
  const radius = dialRadius(figure, room, measure);
  return radius === null ? stripsHeight(figure, room, measure) : 2 * radius + 2;
}

/** Draws a scale as it will look: a dial as a face where its lines have room all round, anything else drawn out straight. */
export function scaleMarks(figure: ScaleFigure, box: DrawingBox, measure: Measure): Mark[] {
  const radius = dialRadius(figure, box, measure);
  return radius === null ? stripMarks(figure, box, measure) : dialMarks(figure, radius, box, measure);
}

/** The radius of a dial; null where it is none, or has more lines than there is room for. */
function dialRadius(figure: ScaleFigure, { width, tallest, least }: DrawingRoom, measure: Measure): number | null {
  if (!figure.allRound) return null;
  const style = figureStyle(least);
  const round = figure.lines.length / (2 * Math.PI);
  const forFigures = round * leastForFigures(figure, style, measure) + drawnLength.long + style.size;
  const most = Math.min(width, tallest) / 2 - 1;
  const radius = Math.max(leastRadius, Math.min(most, round * usualApart), forFigures);
  return radius > most || radius < round * leastApart ? null : radius;
}

function dialMarks(figure: ScaleFigure, radius: number, { left, top, width, least }: DrawingBox, measure: Measure): Mark[] {
  const at = { x: left + width / 2, y: top + radius + 1 };
  const style = figureStyle(least);
  const high = style.size * 0.7;
  return [
    circleMark(at, radius, { stroke: { width: 0.8, grey: 0 } }),
    circleMark(at, 2, { fill: 0 }),
    ...figure.lines.flatMap(({ at: place, length, figure: text }): Mark[] => {
      const turns = place / figure.lines.length;
      const line: Mark = {
        kind: "rule",
        from: pointAt(at, radius, turns),
        to: pointAt(at, radius - drawnLength[length], turns),
        width: lineWidth,
      };
      if (text === null) return [line];
      const angle = 2 * Math.PI * turns;
      const half = (Math.abs(Math.sin(angle)) * measure(text, style) + Math.abs(Math.cos(angle)) * high) / 2;
      const [x, y] = pointAt(at, radius - drawnLength.long - 3 - half, turns);
      return [line, setText(measure, text, style, x, y + high / 2, "center")];
    }),
  ];
}
