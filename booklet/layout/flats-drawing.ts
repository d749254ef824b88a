import type { FlatsFigure } from "../content/figure-blocks.ts";
import { levelMeasure, uprightMeasure } from "./dimensions.ts";
import type { DrawingBox, DrawingRoom } from "./drawing-box.ts";
import type { Mark, ShapeMark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { clearOfEachOther, numbered } from "./numbers-round.ts";
import { arrowRound, circleMark, d, type Point, pointAt } from "./shapes.ts";
import { scaleToFit } from "./to-scale.ts";

/** Over the blank, for the width of a flat and the depth of cut; under it. Points. */
const over = 34;
const under = 5;
/** From an edge to the first measure, and between two. */
const apart = 14;
/** Along the flats, for one number. */
const roomForNumber = 15;

/** Work is not drawn smaller, in points across. */
const leastDrawn = 72;

/** The height of the drawing, in its scale. */
export function flatsHeight(figure: FlatsFigure, room: DrawingRoom, measure: Measure): number {
  return figure.blank * placedIn(figure, room, measure).scale.pointsPerMm + over + under;
}

/** How wide the measures on either side are, from the work outwards, and the scale that they leave room for. */
function placedIn({ says, blank }: FlatsFigure, { width, tallest, least }: DrawingRoom, measure: Measure) {
  const style: Style = { weight: "semibold", size: least + 0.5 };
  const columns = {
    left: [measure(says.opposite, style), measure(says.flatToRound, style)],
    right: [measure(says.depth, style), measure(says.blank, style)],
  };
  const most = Math.max(beside(columns.left), beside(columns.right));
  const room = Math.max(leastDrawn, Math.min(tallest - over - under, width - 2 * most));
  return { style, columns, scale: scaleToFit(blank, room) };
}

function beside(widths: readonly number[]): number {
  return widths.reduce((sum, width) => sum + width + apart, apart / 2);
}

/** Draws the work from its end, to scale, flat 1 at the top where the cutter is, and with all that is measured on it. */
export function flatsMarks(figure: FlatsFigure, box: DrawingBox, measure: Measure): Mark[] {
  const { says } = figure;
  const { style, columns, scale } = placedIn(figure, box, measure);
  const { pointsPerMm } = scale;
  const radius = (figure.blank / 2) * pointsPerMm;
  const at = { x: box.left + box.width / 2, y: box.top + over + radius };
  const flat = at.y - (figure.acrossFlats / 2) * pointsPerMm;
  const half = (figure.flatWidth / 2) * pointsPerMm;
  const [round, opposite] = [at.y + radius, flat + figure.opposite * pointsPerMm];
  const column = (widths: readonly number[], index: number, way: 1 | -1) =>
    at.x + way * (radius + beside(widths.slice(0, index)) + (widths[index] ?? 0) / 2);
  return [
    circleMark(at, radius, { fill: 0.86, stroke: { width: 0.5, grey: 0.3 } }),
    outline(figure, at, pointsPerMm),
    ...centreLines(at, radius),
    ...numbers(figure, at, pointsPerMm, style, measure),
    ...arrowRound(at, Math.min(24, (figure.acrossFlats / 4) * pointsPerMm), { from: 0.12, to: -0.12, width: 1.1, head: 3.4 }),
    ...(says.opposite === says.flatToRound
      ? []
      : uprightMeasure(
          {
            x: column(columns.left, 0, -1),
            top: { y: flat, from: at.x - half },
            bottom: { y: opposite, from: at.x - (figure.sides % 2 === 0 ? half : 0) },
            says: says.opposite,
          },
          style,
          measure,
        )),
    ...uprightMeasure(
      {
        x: column(columns.left, 1, -1),
        top: { y: flat, from: at.x - half },
        bottom: { y: round, from: at.x },
        says: says.flatToRound,
      },
      style,
      measure,
    ),
    ...uprightMeasure(
      {
        x: column(columns.right, 0, 1),
        top: { y: at.y - radius, from: at.x },
        bottom: { y: flat, from: at.x + half },
        says: says.depth,
      },
      style,
      measure,
    ),
    ...uprightMeasure(
      {
        x: column(columns.right, 1, 1),
        top: { y: at.y - radius, from: at.x },
        bottom: { y: round, from: at.x },
        says: says.blank,
      },
      style,
      measure,
    ),
    ...levelMeasure(
      {
        y: at.y - radius - 12,
        left: { x: at.x - half, from: flat },
        right: { x: at.x + half, from: flat },
        says: says.flatWidth,
      },
      style,
      measure,
    ),
    setText(measure, `Scale ${scale.says}`, { weight: "regular", size: box.least, grey: 0.25 }, box.left, round + under - 2),
  ];
}

/** The work with its flats; between two that do not meet some of the round is left. */
function outline({ sides, blank, flatWidth, acrossFlats }: FlatsFigure, at: { x: number; y: number }, scale: number): ShapeMark {
  const corner = Math.hypot(acrossFlats, flatWidth) / 2;
  const half = Math.atan2(flatWidth, acrossFlats) / (2 * Math.PI);
  const radius = corner * scale;
  const isSharp = half * 2 * sides > 1 - 1e-9;
  const text = ([x, y]: Point) => `${d(x)} ${d(y)}`;
  const flats = Array.from({ length: sides }, (_, side) => {
    const [from, to] = [pointAt(at, radius, side / sides - half), pointAt(at, radius, side / sides + half)];
    const next = pointAt(at, radius, (side + 1) / sides - half);
    return `${side === 0 ? `M${text(from)}` : ""}L${text(to)}${isSharp ? "" : `A${d(radius)} ${d(radius)} 0 0 1 ${text(next)}`}`;
  });
  const reach = (Math.min(blank / 2, corner) || corner) * scale + 0.6;
  return {
    kind: "shape",
    path: `${flats.join("")}Z`,
    fill: 1,
    stroke: { width: 1.2, grey: 0 },
    box: [at.x - reach, at.y - reach, at.x + reach, at.y + reach],
  };
}

function centreLines({ x, y }: { x: number; y: number }, radius: number): Mark[] {
  const half = Math.min(8, radius / 3);
  return [
    { kind: "rule", from: [x - half, y], to: [x + half, y], width: 0.4, grey: 0.3 },
    { kind: "rule", from: [x, y - half], to: [x, y + half], width: 0.4, grey: 0.3 },
  ];
}

function numbers(
  { sides, acrossFlats }: FlatsFigure,
  at: { x: number; y: number },
  scale: number,
  style: Style,
  measure: Measure,
): Mark[] {
  const bold: Style = { ...style, weight: "bold", size: style.size + 1 };
  const radius = (acrossFlats / 2) * scale - bold.size * 0.9;
  const set = numbered(sides, (2 * Math.PI * radius) / roomForNumber).map((flat) => {
    const [x, y] = pointAt(at, radius, (flat - 1) / sides);
    return setText(measure, String(flat), bold, x, y + bold.size * 0.35, "center");
  });
  return [...clearOfEachOther(set)];
}
