import type { TrainFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";

/** Teeth that an idler is drawn with; any size serves. */
const idlerTeeth = 24;
/** Of the width, for the largest gear: three trains to a page. */
const tallest = 0.26;

const nameStyle: Style = { weight: "semibold", size: 9.5 };
const teethStyle: Style = { weight: "regular", size: 8.5, grey: 0.25 };

interface Shaft {
  readonly name: string;
  /** Gears on it, each with the side it meshes on. */
  readonly gears: readonly { readonly teeth: number; readonly label: string }[];
  readonly idler: boolean;
}

interface Placed extends Shaft {
  /** Centre along the line of shafts, in teeth. */
  readonly at: number;
  /** Whether it turns as the spindle does. */
  readonly asSpindle: boolean;
}

/** From one level of names to the next, in points. */
const levelHeight = 22;

/** Height of the drawing for a width: as the largest gear needs, and the names under it. */
export function trainHeight(figure: TrainFigure, width: number, measure: Measure): number {
  const scale = scaleFor(figure, width);
  const largest = Math.max(...figure.drivers, ...figure.driven);
  return largest * scale + 18 + levelsFor(placed(figure), scale, measure) * levelHeight;
}

/** How many levels the names need so that no two of one level touch. */
function levelsFor(shafts: readonly Placed[], scale: number, measure: Measure): number {
  const touch = (one: Placed, other: Placed) =>
    (other.at - one.at) * scale < (labelWidth(one, measure) + labelWidth(other, measure)) / 2 + 8;
  for (let levels = 1; levels < shafts.length; levels += 1) {
    const clear = shafts.every((shaft, index) => {
      const next = shafts[index + levels];
      return next === undefined || !touch(shaft, next);
    });
    if (clear) return levels;
  }
  return shafts.length;
}

function scaleFor(figure: TrainFigure, width: number): number {
  const shafts = placed(figure);
  const [first, last] = [shafts[0], shafts.at(-1)];
  const span = (last?.at ?? 0) + largestOf(last) / 2 - (first?.at ?? 0) + largestOf(first) / 2;
  const largest = Math.max(...figure.drivers, ...figure.driven);
  return Math.min((width - 10) / span, (width * tallest) / largest);
}

function largestOf(shaft: Shaft | undefined): number {
  return Math.max(0, ...(shaft?.gears ?? []).map(({ teeth }) => teeth));
}

/**
 * Draws a train as circles that touch where gears mesh: spindle to the left, worm shaft to the
 * right, with an arrow on each for the way it turns when the spindle turns clockwise.
 */
export function trainMarks(figure: TrainFigure, box: { left: number; top: number; width: number }, measure: Measure): Mark[] {
  const scale = scaleFor(figure, box.width);
  const shafts = placed(figure);
  const largest = Math.max(...figure.drivers, ...figure.driven);
  const y = box.top + (largest * scale) / 2 + 6;
  const used = ((shafts.at(-1)?.at ?? 0) + largestOf(shafts.at(-1)) / 2 + largestOf(shafts[0]) / 2) * scale;
  const start = box.left + (box.width - used) / 2 + (largestOf(shafts[0]) / 2) * scale;
  const levels = levelsFor(shafts, scale, measure);
  return shafts.flatMap((shaft, index) => {
    const labelTop = box.top + largest * scale + 10 + (index % levels) * levelHeight;
    return shaftMarks(shaft, start + shaft.at * scale, y, scale, labelTop, measure);
  });
}

function labelWidth(shaft: Shaft, measure: Measure): number {
  return Math.max(measure(shaft.name, nameStyle), measure(teethOf(shaft), teethStyle));
}

function teethOf({ idler, gears }: Shaft): string {
  return idler ? "any size" : gears.map(({ label, teeth }) => `${label} ${teeth}`).join(", ");
}

function placed({ drivers, driven, idlers }: TrainFigure): readonly Placed[] {
  const [spindle = 0, studDriver = 0] = drivers;
  const chain: Shaft[] = [{ name: "spindle", gears: [{ teeth: spindle, label: "driver" }], idler: false }];
  if (drivers.length > 1)
    chain.push({
      name: "stud",
      gears: [
        { teeth: driven[0] ?? 0, label: "driven" },
        { teeth: studDriver, label: "driver" },
      ],
      idler: false,
    });
  for (let idler = 0; idler < idlers; idler += 1)
    chain.push({ name: "idler", gears: [{ teeth: idlerTeeth, label: "" }], idler: true });
  chain.push({ name: "worm shaft", gears: [{ teeth: driven.at(-1) ?? 0, label: "driven" }], idler: false });
  let at = 0;
  return chain.map((shaft, index) => {
    const before = chain[index - 1];
    // The last gear of the shaft before meshes with the first of this one.
    if (before) at += ((before.gears.at(-1)?.teeth ?? 0) + (shaft.gears[0]?.teeth ?? 0)) / 2;
    return { ...shaft, at, asSpindle: index % 2 === 0 };
  });
}

function shaftMarks(shaft: Placed, x: number, y: number, scale: number, labelTop: number, measure: Measure): Mark[] {
  const marks: Mark[] = shaft.gears.map(({ teeth }) => circle(x, y, (teeth * scale) / 2, shaft.idler));
  const radius = (Math.max(...shaft.gears.map(({ teeth }) => teeth)) * scale) / 2;
  marks.push(
    { kind: "dots", at: [[x, y]], diameter: 3.5, grey: 0 },
    ...turning(x, y, Math.max(9, radius * 0.62), shaft.asSpindle),
  );
  marks.push(setText(measure, shaft.name, nameStyle, x, labelTop + 9, "center"));
  marks.push(setText(measure, teethOf(shaft), teethStyle, x, labelTop + 20, "center"));
  return marks;
}

function circle(x: number, y: number, radius: number, light: boolean): Mark {
  return {
    kind: "shape",
    path: `M${d(x - radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x + radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x - radius)} ${d(y)}Z`,
    stroke: { width: light ? 0.8 : 1.3, grey: light ? 0.4 : 0 },
    box: [x - radius - 1, y - radius - 1, x + radius + 1, y + radius + 1],
  };
}

/** An arc over the shaft with a head that shows which way it turns. */
function turning(x: number, y: number, radius: number, clockwise: boolean): Mark[] {
  const way = clockwise ? 1 : -1;
  const angle = (turns: number) => 2 * Math.PI * turns;
  const point = (turns: number, r: number): readonly [number, number] => [
    x + way * r * Math.sin(angle(turns)),
    y - r * Math.cos(angle(turns)),
  ];
  const [from, to] = [point(-0.13, radius), point(0.13, radius)];
  const [tip, outer, inner] = [point(0.13 + 4 / radius / Math.PI, radius), point(0.125, radius + 3), point(0.125, radius - 3)];
  return [
    {
      kind: "shape",
      path: `M${d(from[0])} ${d(from[1])}A${d(radius)} ${d(radius)} 0 0 ${clockwise ? 1 : 0} ${d(to[0])} ${d(to[1])}`,
      stroke: { width: 1.1, grey: 0 },
      box: [x - radius - 1, y - radius - 1, x + radius + 1, y],
    },
    {
      kind: "shape",
      path: `M${d(tip[0])} ${d(tip[1])}L${d(outer[0])} ${d(outer[1])}L${d(inner[0])} ${d(inner[1])}Z`,
      fill: 0,
      box: [x - radius - 5, y - radius - 5, x + radius + 5, y + 5],
    },
  ];
}

function d(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
