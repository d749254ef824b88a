import type { Mark, ShapeMark } from "./marks.ts";

/** A place on the page, in points. */
export type Point = readonly [number, number];

/** The middle of something round. */
export interface Centre {
  readonly x: number;
  readonly y: number;
}

/** How the edge of a shape is drawn. */
export interface Stroke {
  readonly width: number;
  readonly grey: number;
}

/** A point at a radius and so many turns clockwise from the top. */
export function pointAt({ x, y }: Centre, radius: number, turns: number): Point {
  const angle = 2 * Math.PI * turns;
  return [x + radius * Math.sin(angle), y - radius * Math.cos(angle)];
}

/** A filled or outlined shape with straight sides. */
export function polygon(
  points: readonly Point[],
  look: { readonly fill?: number; readonly stroke?: Stroke; readonly open?: boolean },
): ShapeMark {
  const { open = false, ...paint } = look;
  const beyond = (paint.stroke?.width ?? 0) / 2;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    kind: "shape",
    path: `M${points.map(([x, y]) => `${d(x)} ${d(y)}`).join("L")}${open ? "" : "Z"}`,
    ...paint,
    box: [Math.min(...xs) - beyond, Math.min(...ys) - beyond, Math.max(...xs) + beyond, Math.max(...ys) + beyond],
  };
}

/** A circle, outlined or filled. */
export function circleMark(
  { x, y }: Centre,
  radius: number,
  look: { readonly fill?: number; readonly stroke?: Stroke },
): ShapeMark {
  const out = radius + (look.stroke?.width ?? 0) / 2;
  return {
    kind: "shape",
    path: `M${d(x - radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x + radius)} ${d(y)}A${d(radius)} ${d(radius)} 0 1 1 ${d(x - radius)} ${d(y)}Z`,
    ...look,
    box: [x - out, y - out, x + out, y + out],
  };
}

/** The part of a disc from the top through so many turns clockwise. */
export function sectorMark(centre: Centre, radius: number, turns: number, fill: number): ShapeMark {
  const { x, y } = centre;
  const [[x1, y1], [x2, y2]] = [pointAt(centre, radius, 0), pointAt(centre, radius, turns)];
  const large = turns > 0.5 ? 1 : 0;
  return {
    kind: "shape",
    path: `M${d(x)} ${d(y)}L${d(x1)} ${d(y1)}A${d(radius)} ${d(radius)} 0 ${large} 1 ${d(x2)} ${d(y2)}Z`,
    fill,
    box: [x - radius, y - radius, x + radius, y + radius],
  };
}

/** An arrow along a circle, from one place to another in turns from the top; where `to` is less, it goes anticlockwise. */
export function arrowRound(
  centre: Centre,
  radius: number,
  { from, to, width, head }: { from: number; to: number; width: number; head: number },
): Mark[] {
  const way = Math.sign(to - from);
  const [start, end] = [pointAt(centre, radius, from), pointAt(centre, radius, to)];
  const large = Math.abs(to - from) > 0.5 ? 1 : 0;
  const out = radius + head;
  const box = [centre.x - out, centre.y - out, centre.x + out, centre.y + out] as const;
  const tip = to + (way * 2.6 * head) / (2 * Math.PI * radius);
  return [
    {
      kind: "shape",
      path: `M${d(start[0])} ${d(start[1])}A${d(radius)} ${d(radius)} 0 ${large} ${way > 0 ? 1 : 0} ${d(end[0])} ${d(end[1])}`,
      stroke: { width, grey: 0 },
      box,
    },
    polygon([pointAt(centre, radius, tip), pointAt(centre, radius + head, to), pointAt(centre, radius - head, to)], { fill: 0 }),
  ];
}

/** Three decimals of a point, as in the file. */
export function d(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
