import type { TrainFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { type Point, polygon } from "./shapes.ts";
import type { Shaft, Wheel } from "./train-shafts.ts";

function styleOf(least: number): Style {
  return { weight: "regular", size: Math.max(8.5, least) };
}

/** How thick wheels are drawn for what stands in them, and how far apart the planes stand; points. */
function thickness(least: number): number {
  return styleOf(least).size + 3.5;
}

const between = 5;
const over = 12;
/** From the middle of what stands in a wheel down to its line, in parts of its size. */
const drop = 3 / 8.5;
const planes = [1, 2] as const;

/** What the drawing from the side takes; a train of one pair stands in one plane and needs none. */
export function sideHeight({ drivers }: TrainFigure, least: number): number {
  return drivers.length > 1 ? over + 2 * thickness(least) + between + 4 : 0;
}

/** What the names of the planes take beside it. */
export function sideRoom({ drivers }: TrainFigure, least: number, measure: Measure): number {
  return drivers.length > 1 ? measure("plane 2", styleOf(least)) + 8 : 0;
}

/** Where it stands: each shaft under itself. */
export interface SidePlace {
  readonly at: (shaft: Shaft) => number;
  readonly top: number;
  /** Points to a tooth. */
  readonly scale: number;
  readonly left: number;
  /** The least size of its labels, in points. */
  readonly least: number;
}

/** The train from the side: wheels as bars as long as they are wide, in two planes, those that mesh end to end. */
export function sideMarks(shafts: readonly Shaft[], { at, top, scale, left, least }: SidePlace, measure: Measure): Mark[] {
  const [style, thick] = [styleOf(least), thickness(least)];
  const rowOf = (plane: 1 | 2) => top + over + (plane - 1) * (thick + between);
  const [first] = shafts;
  const from = first === undefined ? left : at(first) - ((first.wheels[0]?.teeth ?? 0) * scale) / 2;
  return [
    ...shafts.map((shaft): Mark => {
      const [y1, y2] = [top + over - 5, top + over + 2 * thick + between + 5];
      return { kind: "rule", from: [at(shaft), y1], to: [at(shaft), y2], width: 0.6, grey: 0.4 };
    }),
    ...shafts.flatMap((shaft) =>
      shaft.wheels.flatMap((wheel) => wheelMarks(wheel, at(shaft), rowOf(wheel.plane), scale, least, measure)),
    ),
    ...planes.map((plane) =>
      setText(measure, `plane ${plane}`, style, from - 6, rowOf(plane) + thick / 2 + style.size * drop, "right"),
    ),
  ];
}

function wheelMarks({ teeth, label }: Wheel, x: number, y: number, scale: number, least: number, measure: Measure): Mark[] {
  const [style, thick] = [styleOf(least), thickness(least)];
  const half = (teeth * scale) / 2;
  const corners: readonly Point[] = [
    [x - half, y],
    [x + half, y],
    [x + half, y + thick],
    [x - half, y + thick],
  ];
  const isIdler = label === "";
  const bar = polygon(corners, { fill: 1, stroke: { width: isIdler ? 0.8 : 1.1, grey: isIdler ? 0.4 : 0 } });
  const texts = isIdler ? ["idler"] : [`${label} ${teeth}`, String(teeth)];
  const text = texts.find((each) => measure(each, style) <= 2 * half - 3);
  return text === undefined ? [bar] : [bar, setText(measure, text, style, x, y + thick / 2 + style.size * drop, "center")];
}
