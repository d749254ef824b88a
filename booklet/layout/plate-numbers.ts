import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { gapsAt, numbersFrom, type PlacedPlate, rowOfNumbers } from "./plate-place.ts";
import { pointAt } from "./shapes.ts";

/** How far round from the line across the outermost circle is pointed at, in turns. */
const sweep = 0.165;
const lineGrey = 0.3;

/** The numbers of all circles, none left out, with the lines that lead to those outside the rim. */
export interface CircleNumbers {
  /** To be drawn under the holes. */
  readonly lines: readonly Mark[];
  readonly numbers: readonly Mark[];
}

/** Numbers every circle: in the gap between two of its holes, or outside the rim with a line to one of its holes. */
export function circleNumbers(figure: PlateFigure, plate: PlacedPlate, measure: Measure): CircleNumbers {
  if (plate.numbering === "in gaps") {
    const numbers = figure.circles.flatMap((_, index) => numberInGap(figure, index, plate, measure));
    return { lines: [], numbers };
  }
  const fromInside = figure.circles
    .map((holes, index) => ({ holes, radius: plate.radii[index] ?? 0 }))
    .sort((a, b) => a.radius - b.radius);
  if (plate.numbering === "left") return columnOf(fromInside, figure, plate, "left", measure);
  const half = Math.ceil(fromInside.length / 2);
  const columns = [
    columnOf(fromInside.slice(0, half), figure, plate, "left", measure),
    columnOf(fromInside.slice(half), figure, plate, "right", measure),
  ];
  return { lines: columns.flatMap(({ lines }) => lines), numbers: columns.flatMap(({ numbers }) => numbers) };
}

function numberInGap(figure: PlateFigure, index: number, plate: PlacedPlate, measure: Measure): Mark[] {
  const holes = figure.circles[index] ?? 0;
  const [x, y] = pointAt(plate, plate.radii[index] ?? 0, (Math.floor(holes * gapsAt(figure) - 0.5) + 0.5) / holes);
  return numberMarks(holes, figure, plate, x, y, "center", measure);
}

/** A number; that of the circle in use is white on black. */
function numberMarks(
  holes: number,
  { chosen }: PlateFigure,
  { size }: PlacedPlate,
  x: number,
  middle: number,
  align: "left" | "center" | "right",
  measure: Measure,
): Mark[] {
  const isChosen = chosen?.circle === holes;
  const style: Style = { weight: isChosen ? "bold" : "semibold", size, grey: isChosen ? 1 : 0 };
  const label = setText(measure, String(holes), style, x, middle + size * 0.35, align);
  const behind: Mark = { kind: "band", x: label.x - 1, y: middle - size * 0.5, width: label.width + 2, height: size, grey: 0 };
  return isChosen ? [behind, label] : [label];
}

interface Numbered {
  readonly holes: number;
  readonly radius: number;
}

/** A column of numbers from the innermost circle to the outermost, each with a line to a hole of its own. */
function columnOf(
  circles: readonly Numbered[],
  figure: PlateFigure,
  plate: PlacedPlate,
  side: "left" | "right",
  measure: Measure,
): CircleNumbers {
  const way = upward(figure) ? -1 : 1;
  const from = numbersFrom(plate, figure)[side];
  const x = side === "left" ? plate.x - from : plate.x + from;
  const targets = circles.map(({ holes, radius }, index) => {
    const round = circles.length === 1 ? sweep / 2 : (sweep * index) / (circles.length - 1);
    const turns = side === "left" ? 0.75 - way * round : 0.25 + way * round;
    return pointAt(plate, radius, Math.round(turns * holes) / holes);
  });
  const rows = rowsFor(
    targets.map(([, y]) => y),
    way,
    plate,
  );
  return {
    lines: targets.map((to, index): Mark => {
      const start = side === "left" ? x + 2 : x - 2;
      return { kind: "rule", from: [start, rows[index] ?? 0], to, width: 0.4, grey: lineGrey };
    }),
    numbers: circles.flatMap(({ holes }, index) =>
      numberMarks(holes, figure, plate, x, rows[index] ?? 0, side === "left" ? "right" : "left", measure),
    ),
  };
}

/** Whether the numbers stand beside the upper half, since the far arm lies over the lower one. */
function upward({ chosen }: PlateFigure): boolean {
  const arm = chosen === null ? 0 : chosen.spaces / chosen.circle;
  return arm > 0.56 && arm < 0.78;
}

/** Heights of the numbers: evenly apart, about as high as the holes that they lead to, and within the drawing. */
function rowsFor(wanted: readonly number[], way: 1 | -1, { top, bottom, size }: PlacedPlate): readonly number[] {
  const row = size * rowOfNumbers;
  const [least, most] = [Math.min(...wanted), Math.max(...wanted)];
  const apart = wanted.length === 1 ? row : Math.max(row, Math.min(2.2 * row, (most - least) / (wanted.length - 1)));
  const span = apart * (wanted.length - 1);
  const start = Math.max(top + row / 2, Math.min(bottom - row / 2 - span, (least + most - span) / 2));
  return wanted.map((_, index) => start + (way > 0 ? index : wanted.length - 1 - index) * apart);
}
