import type { BoltCircleFigure } from "../content/figure-blocks.ts";
import { levelMeasure } from "./dimensions.ts";
import type { DrawingBox, DrawingRoom } from "./drawing-box.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { clearOfEachOther, numbered } from "./numbers-round.ts";
import { arrowRound, type Centre, circleMark, pointAt } from "./shapes.ts";
import { type DrawnScale, scaleToFit } from "./to-scale.ts";

/** Over the circle and beside it, for the names of the axes; under it, for its diameter. Points. */
const around = 34;
const under = 32;
/** A hole as it is drawn, at most, and in parts of the space from hole to hole. */
const hole = { most: 5, ofSpace: 0.28 };
/** Round the circle, for one number. */
const roomForNumber = 17;
/** A circle is not drawn smaller, in points across. */
const leastDrawn = 60;
const quiet = { width: 0.5, grey: 0.45 };

function scaleIn({ diameter }: BoltCircleFigure, { width, tallest }: Pick<DrawingRoom, "width" | "tallest">): DrawnScale {
  return scaleToFit(diameter, Math.max(leastDrawn, Math.min(tallest - around - under, width - 2 * around)));
}

/** The height of the drawing, in its scale. */
export function boltCircleHeight(figure: BoltCircleFigure, box: Pick<DrawingRoom, "width" | "tallest">): number {
  return figure.diameter * scaleIn(figure, box).pointsPerMm + around + under;
}

/** Draws a bolt circle to scale as its coordinates have it, x to the right and y up, hole 1 black, every hole numbered that has room. */
export function boltCircleMarks(figure: BoltCircleFigure, box: DrawingBox, measure: Measure): Mark[] {
  const { diameter, zero, says } = figure;
  const { pointsPerMm, says: scale } = scaleIn(figure, box);
  const radius = (diameter / 2) * pointsPerMm;
  const at = { x: box.left + box.width / 2, y: box.top + around + radius };
  const style: Style = { weight: "semibold", size: box.least };
  const [left, bottom] = [at.x - radius, at.y + radius];
  return [
    circleMark(at, radius, { stroke: quiet }),
    ...axes(at, radius, style, measure),
    ...(zero === "tangents" ? tangents(at, radius, style, measure) : []),
    ...holes(figure, at, radius, style, measure),
    ...levelMeasure(
      {
        y: bottom + under - 5,
        left: { x: left, from: zero === "tangents" ? bottom : at.y },
        right: { x: at.x + radius, from: at.y },
        says: says.diameter,
      },
      { ...style, size: style.size + 0.5 },
      measure,
    ),
    setText(measure, `Scale ${scale}`, { weight: "regular", size: box.least, grey: 0.25 }, box.left, bottom + under - 2),
  ];
}

function axes({ x, y }: Centre, radius: number, style: Style, measure: Measure): Mark[] {
  const reach = radius + 22;
  return [
    { kind: "rule", from: [x - radius - 8, y], to: [x + reach, y], ...quiet },
    { kind: "rule", from: [x, y + radius + 8], to: [x, y - reach], ...quiet },
    setText(measure, "+x", style, x + reach + 2, y + style.size * 0.35),
    setText(measure, "+y", style, x, y - reach - 2, "center"),
  ];
}

/** The two tangents that all is counted from, and the corner where both are 0. */
function tangents({ x, y }: Centre, radius: number, style: Style, measure: Measure): Mark[] {
  const [left, bottom] = [x - radius, y + radius];
  const line = { width: 0.9, grey: 0.2 };
  return [
    { kind: "rule", from: [left, bottom + 6], to: [left, y - radius / 2], ...line },
    { kind: "rule", from: [left - 6, bottom], to: [x + radius / 2, bottom], ...line },
    setText(measure, "0, 0", { ...style, weight: "bold" }, left - 4, bottom + style.size + 4, "right"),
  ];
}

/** The numbers stand inside, clear of the tangents; those on an axis, and the first on its line, stand beside it. */
function holes(figure: BoltCircleFigure, at: Centre, radius: number, style: Style, measure: Measure): Mark[] {
  const { count, start, clockwise } = figure;
  const way = clockwise ? 1 : -1;
  const turns = (each: number) => 0.25 - start + (way * (each - 1)) / count;
  const size = Math.min(hole.most, ((2 * Math.PI * radius) / count) * hole.ofSpace);
  const bold: Style = { weight: "bold", size: style.size + 1 };
  const high = bold.size * 0.7;
  const within = radius - size - bold.size;
  const from = turns(1);
  const arrow = radius * 0.42;
  const all = Array.from({ length: count }, (_, index) => index + 1);
  return [
    { kind: "rule", from: [at.x, at.y], to: pointAt(at, radius - size, from), width: 0.8 },
    ...arrowRound(at, arrow, { from: from + way * 0.03, to: from + way * 0.16, width: 1.1, head: 3.4 }),
    ...all.map((each): Mark => {
      const [x, y] = pointAt(at, radius, turns(each));
      return circleMark({ x, y }, size, each === 1 ? { fill: 0 } : { fill: 1, stroke: { width: 0.8, grey: 0 } });
    }),
    ...clearOfEachOther(
      numbered(count, (2 * Math.PI * within) / roomForNumber).map((each) => {
        const aside = each === 1 ? (-way * besideLine) / (2 * Math.PI * within) : asideOfAxis(turns(each), within);
        const round = 2 * Math.PI * (turns(each) + aside);
        const text = String(each);
        const half = (Math.abs(Math.sin(round)) * measure(text, bold) + Math.abs(Math.cos(round)) * high) / 2;
        const [x, y] = pointAt(at, radius - size - 3 - half, turns(each) + aside);
        return setText(measure, text, bold, x, y + high / 2, "center");
      }),
    ),
  ];
}

/** From a line to the middle of a number, in points. */
const besideLine = 8;

/** How far a number is moved along so that no axis runs through it, in turns. */
function asideOfAxis(turns: number, radius: number): number {
  const quarters = turns * 4;
  const off = (quarters - Math.round(quarters)) / 4;
  const least = besideLine / (2 * Math.PI * radius);
  return Math.abs(off) >= least ? 0 : (off < 0 ? -least : least) - off;
}
