import type { TemplateFigure } from "../content/figure-blocks.ts";
import type { Mark, ShapeMark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { mm } from "./paper.ts";
import { circleNumbers } from "./plate-numbers.ts";
import { type PlacedPlate, plateOfRim, rimAround } from "./plate-place.ts";
import { circleMark, d, type Point, pointAt } from "./shapes.ts";

/** Half of a centre mark, at most, and in parts of the space between two holes; points. */
const halfMark = { most: mm(1.5), ofSpace: 0.3 };
const fine = { width: 0.25, grey: 0.55 };
const markWidth = 0.4;
/** Under the plate, for the scales. */
export const scalesHeight = 58;

/** The two scales: how long, where they are divided, and what stands at their end. */
const scales = [
  { length: mm(50), parts: 5, says: "50 mm" },
  { length: 2 * 72, parts: 4, says: "2 in" },
] as const;

/** Where a template goes; its size is its own. */
export interface TemplateBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** The least size of type. */
  readonly least: number;
}

function placedTemplate({ circles, diameters }: TemplateFigure, box: TemplateBox, measure: Measure): PlacedPlate {
  const figure = { type: "plate", circles, diameters, chosen: null } as const;
  return plateOfRim(figure, { ...box, counted: false }, rimAround(mm(Math.max(...diameters))), measure);
}

/** What a template takes up at true size. */
export function templateSize(figure: TemplateFigure, least: number, measure: Measure): { width: number; height: number } {
  const { width, top, bottom } = placedTemplate(figure, { left: 0, top: 0, width: 0, least }, measure);
  return { width, height: bottom - top + scalesHeight };
}

/**
 * Draws a plate face at true size to be drilled through: a cross on each hole, hole 0 of each circle
 * ringed, every circle numbered, and under it 50 mm and 2 inches to be measured with a rule.
 */
export function templateMarks(figure: TemplateFigure, box: TemplateBox, measure: Measure): Mark[] {
  const plate = placedTemplate(figure, box, measure);
  const numbered = { type: "plate", circles: figure.circles, diameters: figure.diameters, chosen: null } as const;
  const { lines, numbers } = circleNumbers(numbered, plate, measure);
  return [
    ...lines,
    circleMark(plate, plate.rim, { stroke: { width: 0.8, grey: 0 } }),
    ...figure.circles.flatMap((holes, index) => circleOf(holes, plate.radii[index] ?? 0, plate)),
    cross([{ at: [plate.x, plate.y], turns: 0 }], mm(4)),
    ...numbers,
    ...scaleMarks({ ...box, top: plate.bottom + 10 }, measure),
  ];
}

function circleOf(holes: number, radius: number, plate: PlacedPlate): Mark[] {
  const half = Math.min(halfMark.most, ((2 * Math.PI * radius) / holes) * halfMark.ofSpace);
  const at = Array.from({ length: holes }, (_, hole) => ({ at: pointAt(plate, radius, hole / holes), turns: hole / holes }));
  const [x, y] = pointAt(plate, radius, 0);
  return [
    circleMark(plate, radius, { stroke: fine }),
    cross(at, half),
    circleMark({ x, y }, half, { stroke: { width: markWidth, grey: 0 } }),
  ];
}

/** Crosses, each with one line towards the middle of the plate. */
function cross(marks: readonly { readonly at: Point; readonly turns: number }[], half: number): ShapeMark {
  const line = ([x, y]: Point, turns: number) => {
    const [dx, dy] = pointAt({ x: 0, y: 0 }, half, turns);
    return `M${d(x - dx)} ${d(y - dy)}L${d(x + dx)} ${d(y + dy)}`;
  };
  const xs = marks.map(({ at }) => at[0]);
  const ys = marks.map(({ at }) => at[1]);
  return {
    kind: "shape",
    path: marks.map(({ at, turns }) => line(at, turns) + line(at, turns + 0.25)).join(""),
    stroke: { width: markWidth, grey: 0 },
    box: [Math.min(...xs) - half, Math.min(...ys) - half, Math.max(...xs) + half, Math.max(...ys) + half],
  };
}

/** The scales side by side where they fit, one under the other. */
export function scaleMarks({ left, top, width, least }: TemplateBox, measure: Measure): Mark[] {
  const style: Style = { weight: "semibold", size: least };
  return scales.flatMap(({ length, parts, says }, row): Mark[] => {
    const y = top + 12 + row * 22;
    const start = left + Math.max(0, (width - length) / 2);
    const ticks = Array.from({ length: parts + 1 }, (_, part): Mark => {
      const x = start + (length * part) / parts;
      return { kind: "rule", from: [x, y], to: [x, y - (part === 0 || part === parts ? 7 : 4)], width: 0.6 };
    });
    const line: Mark = { kind: "rule", from: [start, y], to: [start + length, y], width: 0.6 };
    return [line, ...ticks, setText(measure, says, style, start + length + 5, y)];
  });
}
