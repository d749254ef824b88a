import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Mark, ShapeMark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";

/** Radii in parts of the rim's. */
const hub = 0.16;
const innermost = 0.42;
const outermost = 0.92;
const leastNumber = 4;
/** Room outside the rim for the figures that count spaces, in points. */
export const roomForFigures = 30;
const leastApart = 15;

/** What the drawing leaves free at its foot, where no figure counts spaces; points. */
export function roomToSpare({ chosen }: PlateFigure): number {
  const reach = chosen === null ? 0 : chosen.spaces / chosen.circle;
  return reach < 0.33 ? roomForFigures - 6 : 0;
}

interface Drawing {
  readonly x: number;
  readonly y: number;
  readonly rim: number;
  readonly measure: Measure;
}

type Point = readonly [number, number];

/**
 * Draws a plate face as seen from the crank, hole 0 at the top and the way forward clockwise. The
 * circles stand at even distances, the smallest innermost; a plate of one's own may place them otherwise.
 *
 * @param box - Left, top, and side of the square that holds it.
 * @param counted - Whether figures outside the rim count the spaces, and an arrow on the hub shows forward.
 */
export function plateMarks(
  { circles, chosen }: PlateFigure,
  box: { left: number; top: number; side: number },
  measure: Measure,
  counted = true,
): Mark[] {
  const rim = box.side / 2 - roomForFigures;
  const drawing: Drawing = { x: box.left + box.side / 2, y: box.top + box.side / 2, rim, measure };
  const radii = circles.map((_, index) => radiusOf(index, circles.length) * rim);
  const pitch = circles.length > 1 ? ((outermost - innermost) * rim) / (circles.length - 1) : rim * 0.2;
  const at = circles.indexOf(chosen?.circle ?? -1);
  const marks: Mark[] = [];
  if (chosen && at >= 0) marks.push(...sector(chosen, drawing), ring(drawing, radii[at] ?? 0, Math.min(pitch * 0.8, 11), 0.82));
  for (const [index, holes] of circles.entries()) {
    const radius = radii[index] ?? 0;
    const dot = Math.min(5.2, pitch * 0.42, ((2 * Math.PI * radius) / holes) * 0.5);
    if (index === at && chosen) marks.push(...chosenHoles(chosen, radius, dot, drawing));
    else marks.push(...openHoles(allHoles(holes, radius, drawing), dot, 0.45));
    marks.push(...circleNumber(holes, { radius, dot, pitch, isChosen: index === at, near: numbersAt(chosen) }, drawing));
  }
  marks.push(ring(drawing, rim, 1.4, 0), { ...ring(drawing, hub * rim, 1.2, 0), fill: 1 });
  if (chosen && at >= 0) {
    marks.push(...arms(chosen, radii[at] ?? 0, drawing));
    if (counted) marks.push(...ticks(chosen, drawing), ...forward(drawing));
  }
  return marks;
}

function radiusOf(index: number, circles: number): number {
  return circles === 1 ? outermost * 0.9 : innermost + ((outermost - innermost) * index) / (circles - 1);
}

/** A point at so many turns clockwise from the top. */
function pointAt({ x, y }: Drawing, radius: number, turns: number): Point {
  const angle = 2 * Math.PI * turns;
  return [x + radius * Math.sin(angle), y - radius * Math.cos(angle)];
}

function allHoles(holes: number, radius: number, drawing: Drawing): Point[] {
  return Array.from({ length: holes }, (_, hole) => pointAt(drawing, radius, hole / holes));
}

function openHoles(at: readonly Point[], diameter: number, grey: number): Mark[] {
  return [
    { kind: "dots", at, diameter, grey },
    { kind: "dots", at, diameter: diameter * 0.72, grey: 1 },
  ];
}

/** Holes that are counted are filled; the pin's own, first and last, are ringed. */
function chosenHoles(
  { circle, spaces }: { circle: number; spaces: number },
  radius: number,
  dot: number,
  drawing: Drawing,
): Mark[] {
  const all = allHoles(circle, radius, drawing);
  const ends = [all[0], all[spaces % circle]].filter((point) => point !== undefined);
  return [
    ...openHoles(all.slice(spaces + 1), dot, 0),
    { kind: "dots", at: ends, diameter: dot * 2, grey: 0 },
    { kind: "dots", at: ends, diameter: dot * 1.6, grey: 1 },
    { kind: "dots", at: all.slice(0, spaces + 1), diameter: dot, grey: 0 },
  ];
}

function ring({ x, y }: Drawing, radius: number, width: number, grey: number): ShapeMark {
  const out = radius + width / 2;
  return {
    kind: "shape",
    path: `M${d(x - radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x + radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x - radius)} ${d(y)}Z`,
    stroke: { width, grey },
    box: [x - out, y - out, x + out, y + out],
  };
}

function sector({ circle, spaces }: { circle: number; spaces: number }, drawing: Drawing): Mark[] {
  const { x, y, rim } = drawing;
  const turns = Math.min(spaces / circle, 0.9999);
  const [x1, y1] = pointAt(drawing, rim, 0);
  const [x2, y2] = pointAt(drawing, rim, turns);
  const large = turns > 0.5 ? 1 : 0;
  return [
    {
      kind: "shape",
      path: `M${d(x)} ${d(y)}L${d(x1)} ${d(y1)}A${d(rim)} ${d(rim)} 0 ${large} 1 ${d(x2)} ${d(y2)}Z`,
      fill: 0.93,
      box: [x - rim, y - rim, x + rim, y + rim],
    },
  ];
}

interface NumberPlace {
  readonly radius: number;
  readonly dot: number;
  readonly pitch: number;
  readonly isChosen: boolean;
  /** Where round the plate, in turns from the top. */
  readonly near: number;
}

/** At the foot of the plate, or to the left where the far arm would lie over them. */
function numbersAt(chosen: PlateFigure["chosen"]): number {
  const arm = chosen === null ? 0 : chosen.spaces / chosen.circle;
  return arm > 0.36 && arm < 0.56 ? 0.75 : 0.5;
}

/** The number of a circle, in the gap between two of its holes. */
function circleNumber(holes: number, { radius, dot, pitch, isChosen, near }: NumberPlace, drawing: Drawing): Mark[] {
  const { measure } = drawing;
  const gap = (2 * Math.PI * radius) / holes - dot;
  const unit: Style = { weight: isChosen ? "bold" : "semibold", size: 1 };
  const width = measure(String(holes), unit);
  const [along, across] = near === 0.5 ? [width, 1] : [0.8, width * 1.15];
  const size = Math.min(8, (pitch * 0.9) / across, (gap * 0.94) / along);
  if (size < leastNumber) return [];
  const [x, y] = pointAt(drawing, radius, (Math.floor(holes * near - 0.5) + 0.5) / holes);
  const style: Style = { ...unit, size, grey: isChosen ? 1 : 0 };
  const label = setText(measure, String(holes), style, x, y + size * 0.35, "center");
  const behind: Mark = { kind: "band", x: label.x - 1, y: y - size * 0.5, width: label.width + 2, height: size, grey: 0 };
  return isChosen ? [behind, label] : [label];
}

/** Two tapered bars: the near one touches the hole the pin is in, the far one the hole it goes to. */
function arms({ circle, spaces }: { circle: number; spaces: number }, radius: number, drawing: Drawing): Mark[] {
  const edge = 3.2;
  return [arm(drawing, 0, -1, radius, edge), arm(drawing, spaces / circle, 1, radius, edge)];
}

function arm(drawing: Drawing, turns: number, side: 1 | -1, radius: number, offset: number): Mark {
  const { x, y, rim } = drawing;
  const angle = 2 * Math.PI * turns;
  const out: Point = [Math.sin(angle), -Math.cos(angle)];
  const across: Point = [side * Math.cos(angle), side * Math.sin(angle)];
  const place = (along: number, sideways: number): string =>
    `${d(x + out[0] * along + across[0] * sideways)} ${d(y + out[1] * along + across[1] * sideways)}`;
  const [start, tip] = [hub * rim, radius + 5];
  const thick = rim * 0.075;
  return {
    kind: "shape",
    path: `M${place(start, offset)}L${place(tip, offset)}L${place(tip + 3, offset + 3)}L${place(radius * 0.62, offset + thick)}L${place(start, offset + thick)}Z`,
    fill: 1,
    stroke: { width: 0.9, grey: 0 },
    box: [x - rim, y - rim, x + rim, y + rim],
  };
}

/** An arrow on the hub: the way the crank goes. */
function forward(drawing: Drawing): Mark[] {
  const radius = hub * drawing.rim * 0.58;
  const [from, to] = [pointAt(drawing, radius, -0.3), pointAt(drawing, radius, 0.28)];
  const [tip, outer, inner] = [
    pointAt(drawing, radius, 0.4),
    pointAt(drawing, radius * 1.3, 0.27),
    pointAt(drawing, radius * 0.7, 0.27),
  ];
  const [x, y] = [drawing.x, drawing.y];
  const box = [x - radius * 1.3, y - radius * 1.3, x + radius * 1.3, y + radius * 1.3] as const;
  return [
    {
      kind: "shape",
      path: `M${d(from[0])} ${d(from[1])}A${d(radius)} ${d(radius)} 0 1 1 ${d(to[0])} ${d(to[1])}`,
      stroke: { width: 1.1, grey: 0 },
      box,
    },
    {
      kind: "shape",
      path: `M${d(tip[0])} ${d(tip[1])}L${d(outer[0])} ${d(outer[1])}L${d(inner[0])} ${d(inner[1])}Z`,
      fill: 0,
      box,
    },
  ];
}

/** Counts the spaces outside the rim, from 0 at the pin; figures that would crowd are left out, never the last. */
function ticks({ circle, spaces }: { circle: number; spaces: number }, drawing: Drawing): Mark[] {
  const { rim, measure } = drawing;
  const apart = (2 * Math.PI * (rim + 15)) / circle;
  const figuresApart = Math.max(leastApart, measure(String(spaces), { weight: "bold", size: 11 }) + 4);
  const every = [1, 2, 5, 10, 20, 50, 100, 200].find((step) => step * apart >= figuresApart) ?? 500;
  const lastMeetsFirst = Math.min(spaces, circle - spaces) * apart < figuresApart;
  const marks: Mark[] = [];
  for (let space = 0; space <= spaces; space += 1) {
    const end = space === 0 || space === spaces;
    const named =
      end || (space % every === 0 && (spaces - space) * apart >= figuresApart && (circle - space) * apart >= figuresApart);
    if (!named && apart < 3) continue;
    const [from, to] = [pointAt(drawing, rim + 3, space / circle), pointAt(drawing, rim + (named ? 8 : 5.5), space / circle)];
    marks.push({ kind: "rule", from, to, width: named ? 1.1 : 0.7 });
    if (!named) continue;
    const style: Style = { weight: end ? "bold" : "regular", size: end ? 11 : 9 };
    const out = space === spaces && lastMeetsFirst ? 25 : 15;
    const [x, y] = pointAt(drawing, rim + out, space / circle);
    marks.push(setText(measure, String(space), style, x, y + style.size * 0.35, "center"));
  }
  return marks;
}

/** Three decimals of a point, as in the file. */
function d(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
