import type { HeadFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { plateMarks, roomForFigures } from "./plate-drawing.ts";

/** Of the width, for the plate; the rest is for the names of the parts. */
const plateShare = 0.56;

const nameStyle: Style = { weight: "semibold", size: 9.5 };

/** Height of the drawing for a width. */
export function headHeight(width: number): number {
  return width * plateShare + 34;
}

type Point = readonly [number, number];

/**
 * Draws the head as it is seen from the crank, its parts named: the plate with arms and crank, the
 * stop pin behind it, and which way is forward, with the crank and against it.
 */
export function headMarks(
  { circle, spaces }: HeadFigure,
  box: { readonly left: number; readonly top: number; readonly width: number },
  measure: Measure,
): Mark[] {
  const side = box.width * plateShare;
  const centre: Point = [box.left + box.width / 2, box.top + side / 2];
  const rim = side / 2 - roomForFigures;
  const at = (radius: number, turns: number): Point => [
    centre[0] + rim * radius * Math.sin(2 * Math.PI * turns),
    centre[1] - rim * radius * Math.cos(2 * Math.PI * turns),
  ];
  const [left, right] = [box.left, box.left + box.width];
  const far = spaces / circle;
  const name = (text: string, y: number, to: Point, from: "left" | "right"): Mark[] => {
    const label = setText(measure, text, nameStyle, from === "left" ? left : right, y, from);
    const end = from === "left" ? label.x + label.width + 4 : label.x - 4;
    return [label, { kind: "rule", from: [end, y - 3], to, width: 0.5, grey: 0.35 }];
  };
  const foot = box.top + side + 4;
  return [
    ...plateMarks(
      { type: "plate", circles: [circle], chosen: { circle, spaces } },
      { left: centre[0] - side / 2, top: box.top, side },
      measure,
      false,
    ),
    ...forward(centre, rim + 11),
    ...crank(centre, at(0.828, 0)),
    ...stopPin(at(1, 0.5)),
    ...name("index pin, in hole 0", centre[1] - rim * 0.98, at(0.828, -0.012), "left"),
    ...name("crank", centre[1] - rim * 0.55, at(0.5, -0.015), "left"),
    ...name("near arm", centre[1] - rim * 0.12, at(0.42, -0.05), "left"),
    ...name("index plate", centre[1] + rim * 0.72, at(0.98, 0.63), "left"),
    ...name("forward", centre[1] - rim * 0.98, at(1.11, 0.13), "right"),
    ...name("holes of the move", centre[1] - rim * 0.4, at(0.83, far * 0.7), "right"),
    ...name("far arm", centre[1] + rim * 0.3, at(0.6, far + 0.02), "right"),
    ...name("plate stop pin, behind", centre[1] + rim * 0.95, at(1, 0.49), "right"),
    setText(
      measure,
      "With the crank: the plate turns the way of the arrow. Against the crank: the other way.",
      { weight: "regular", size: 9 },
      centre[0],
      foot + 14,
      "center",
    ),
  ];
}

/** The crank from a little below the hub up to the pin. */
function crank([x, y]: Point, [, pinY]: Point): Mark[] {
  const half = 4.2;
  const [top, bottom] = [pinY - 8, y + 26];
  const path = `M${d(x - half)} ${d(top)}A${half} ${half} 0 0 1 ${d(x + half)} ${d(top)}V${d(bottom)}A${half} ${half} 0 0 1 ${d(x - half)} ${d(bottom)}Z`;
  return [
    { kind: "shape", path, fill: 1, stroke: { width: 1, grey: 0 }, box: [x - half, top - half, x + half, bottom + half] },
    { kind: "dots", at: [[x, y]], diameter: 5, grey: 0 },
    { kind: "dots", at: [[x, pinY]], diameter: 6, grey: 0 },
  ];
}

/** An arrow round the rim: the way the crank goes. */
function forward([x, y]: Point, radius: number): Mark[] {
  const at = (turns: number, r = radius): Point => [x + r * Math.sin(2 * Math.PI * turns), y - r * Math.cos(2 * Math.PI * turns)];
  const [from, to, tip, outer, inner] = [at(0.03), at(0.2), at(0.225), at(0.198, radius + 4), at(0.198, radius - 4)];
  const box = [x, y - radius - 4, x + radius + 4, y] as const;
  const arc = `M${d(from[0])} ${d(from[1])}A${d(radius)} ${d(radius)} 0 0 1 ${d(to[0])} ${d(to[1])}`;
  const head = `M${d(tip[0])} ${d(tip[1])}L${d(outer[0])} ${d(outer[1])}L${d(inner[0])} ${d(inner[1])}Z`;
  return [
    { kind: "shape", path: arc, stroke: { width: 1.4, grey: 0 }, box },
    { kind: "shape", path: head, fill: 0, box },
  ];
}

/** A pin behind the rim: only its outline is to be seen. */
function stopPin([x, y]: Point): Mark[] {
  return [{ kind: "band", x: x - 3, y: y - 1, width: 6, height: 11, grey: 0.5 }];
}

/** Three decimals of a point, as in the file. */
function d(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
