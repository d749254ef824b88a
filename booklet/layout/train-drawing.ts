import type { TrainFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { arrowRound, circleMark } from "./shapes.ts";
import { sideHeight, sideMarks, sideRoom } from "./train-from-side.ts";
import { largestOn, type Shaft, shaftsOf } from "./train-shafts.ts";

/** Names of shafts under the train, and what is on each, no smaller than the least of the paper. */
function nameStyle(least: number): Style {
  return { weight: "semibold", size: Math.max(9.5, least) };
}

function teethStyle(least: number): Style {
  return { weight: "regular", size: Math.max(8.5, least), grey: 0.25 };
}

/** From one level of names to the next, and from a name to what is under it, in parts of their size. */
const levelLines = 22 / 18;
const nameLine = 9 / 9.5;
const teethLine = 11 / 8.5;
const overWheels = 6;

function levelHeight(least: number): number {
  return (nameStyle(least).size + teethStyle(least).size) * levelLines;
}

/** Where a train goes. */
export interface TrainBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** As high as its largest gear may be. */
  readonly tallest: number;
  /** The least size of its labels, in points. */
  readonly least: number;
}

interface PlacedTrain {
  readonly shafts: readonly Shaft[];
  /** Points to a tooth, along the line of shafts. */
  readonly scale: number;
  /** The largest gear's diameter. */
  readonly largest: number;
  readonly levels: number;
}

function placedTrain(
  figure: TrainFigure,
  { width, tallest, least }: Pick<TrainBox, "width" | "tallest" | "least">,
  measure: Measure,
): PlacedTrain {
  const shafts = shaftsOf(figure);
  const most = Math.max(...shafts.map(largestOn));
  const scale = Math.min((width - 2 * sideRoom(figure, least, measure) - 10) / spanOf(shafts), tallest / most);
  return { shafts, scale, largest: most * scale, levels: levelsFor(shafts, scale, least, measure) };
}

/** From the edge of the first gear to that of the last, in teeth. */
function spanOf(shafts: readonly Shaft[]): number {
  return (shafts.at(-1)?.at ?? 0) + (largestOn(shafts[0]) + largestOn(shafts.at(-1))) / 2;
}

/** How many levels the names need so that no two of one level touch. */
function levelsFor(shafts: readonly Shaft[], scale: number, least: number, measure: Measure): number {
  const touch = (one: Shaft, other: Shaft) =>
    (other.at - one.at) * scale < (labelWidth(one, least, measure) + labelWidth(other, least, measure)) / 2 + 8;
  for (let levels = 1; levels < shafts.length; levels += 1) {
    const clear = shafts.every((shaft, index) => {
      const next = shafts[index + levels];
      return next === undefined || !touch(shaft, next);
    });
    if (clear) return levels;
  }
  return shafts.length;
}

function labelWidth(shaft: Shaft, least: number, measure: Measure): number {
  return Math.max(measure(shaft.name, nameStyle(least)), measure(teethOf(shaft), teethStyle(least)));
}

function teethOf({ name, wheels }: Shaft): string {
  return name === "idler" ? "any size" : wheels.map(({ label, teeth }) => `${label} ${teeth}`).join(", ");
}

/** Height of the drawing: as the largest gear needs, the planes of two pairs under it, and the names. */
export function trainHeight(figure: TrainFigure, box: Omit<TrainBox, "left" | "top">, measure: Measure): number {
  const { largest, levels } = placedTrain(figure, box, measure);
  return largest + overWheels + sideHeight(figure, box.least) + levels * levelHeight(box.least) + 12;
}

/**
 * Draws a train as circles that touch where gears mesh: spindle to the left, worm shaft to the
 * right, with an arrow on each for the way it turns when the spindle turns clockwise. Two pairs are
 * drawn from the side as well, each wheel under itself in its plane.
 */
export function trainMarks(figure: TrainFigure, box: TrainBox, measure: Measure): Mark[] {
  const { least } = box;
  const train = placedTrain(figure, box, measure);
  const { shafts, scale, largest, levels } = train;
  const start = box.left + (box.width - spanOf(shafts) * scale) / 2 + (largestOn(shafts[0]) / 2) * scale;
  const y = box.top + overWheels + largest / 2;
  const sideTop = box.top + overWheels + largest;
  const [name, teeth] = [nameStyle(least), teethStyle(least)];
  const at = (shaft: Shaft) => start + shaft.at * scale;
  return [
    ...shafts.flatMap((shaft) => shaftMarks(shaft, { x: at(shaft), y }, scale)),
    ...(sideHeight(figure, least) === 0 ? [] : sideMarks(shafts, { at, top: sideTop, scale, left: box.left, least }, measure)),
    ...shafts.flatMap((shaft, index) => {
      const top = sideTop + sideHeight(figure, least) + 4 + (index % levels) * levelHeight(least);
      return [
        setText(measure, shaft.name, name, at(shaft), top + name.size * nameLine, "center"),
        setText(measure, teethOf(shaft), teeth, at(shaft), top + name.size * nameLine + teeth.size * teethLine, "center"),
      ];
    }),
  ];
}

function shaftMarks(shaft: Shaft, centre: { x: number; y: number }, scale: number): Mark[] {
  const light = shaft.name === "idler";
  const radius = (largestOn(shaft) * scale) / 2;
  const way = shaft.asSpindle ? 1 : -1;
  return [
    ...shaft.wheels.map(({ teeth }) =>
      circleMark(centre, (teeth * scale) / 2, { stroke: { width: light ? 0.8 : 1.3, grey: light ? 0.4 : 0 } }),
    ),
    { kind: "dots", at: [[centre.x, centre.y]], diameter: 3.5, grey: 0 },
    ...arrowRound(centre, Math.max(9, radius * 0.62), { from: -0.13 * way, to: 0.13 * way, width: 1.1, head: 3 }),
  ];
}
