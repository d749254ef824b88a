import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { type Point, polygon } from "./shapes.ts";

/*
 * Measures on a drawing: a line between two others that lead out from what is measured, an arrow at each end. Figures
 * stand upright, to be read from below.
 */

const thin = { width: 0.5, grey: 0 };
const arrow = { length: 6, half: 1.9 };
/** How far a line leads beyond the arrows, and is kept from what is measured. */
const beyond = 3;
/** Arrows stand outside of what is too short for them. */
const leastBetween = 2 * arrow.length + 3;
const outside = 13;

/** A measure up and down. */
export interface UprightMeasure {
  readonly x: number;
  /** What is measured, from its top to its bottom, and where the edge is that each is led out from. */
  readonly top: { readonly y: number; readonly from: number };
  readonly bottom: { readonly y: number; readonly from: number };
  readonly says: string;
}

/** Draws a measure up and down; its figure stands in a gap of its line, or over it where it is short. */
export function uprightMeasure({ x, top, bottom, says }: UprightMeasure, style: Style, measure: Measure): Mark[] {
  const high = bottom.y - top.y;
  const leads = [top, bottom].map(({ y, from }): Mark => {
    const way = Math.sign(x - from);
    return { kind: "rule", from: [from + way * 2, y], to: [x + way * beyond, y], ...thin };
  });
  const line = (from: number, to: number): Mark => ({ kind: "rule", from: [x, from], to: [x, to], ...thin });
  if (high < leastBetween + style.size * 1.2)
    return [
      ...leads,
      line(top.y - outside, top.y),
      line(bottom.y, bottom.y + outside),
      head([x, top.y], [0, 1]),
      head([x, bottom.y], [0, -1]),
      setText(measure, says, style, x, top.y - outside - 2.5, "center"),
    ];
  const middle = (top.y + bottom.y) / 2;
  return [
    ...leads,
    line(top.y, middle - style.size * 0.62),
    line(middle + style.size * 0.62, bottom.y),
    head([x, top.y], [0, -1]),
    head([x, bottom.y], [0, 1]),
    setText(measure, says, style, x, middle + style.size * 0.35, "center"),
  ];
}

/** A measure across. */
export interface LevelMeasure {
  readonly y: number;
  readonly left: { readonly x: number; readonly from: number };
  readonly right: { readonly x: number; readonly from: number };
  readonly says: string;
}

/** Draws a measure across, its figure over its line, or before it where it is short. */
export function levelMeasure({ y, left, right, says }: LevelMeasure, style: Style, measure: Measure): Mark[] {
  const isShort = right.x - left.x < Math.max(leastBetween, measure(says, style) + 2);
  const [from, to] = isShort ? [left.x - outside, right.x + outside] : [left.x, right.x];
  const inwards = isShort ? -1 : 1;
  return [
    ...[left, right].map((each): Mark => {
      const way = Math.sign(y - each.from);
      return { kind: "rule", from: [each.x, each.from + way * 2], to: [each.x, y + way * beyond], ...thin };
    }),
    { kind: "rule", from: [from, y], to: [to, y], ...thin },
    head([left.x, y], [-inwards, 0]),
    head([right.x, y], [inwards, 0]),
    isShort
      ? setText(measure, says, style, from - 3, y + style.size * 0.35, "right")
      : setText(measure, says, style, (left.x + right.x) / 2, y - 2.5, "center"),
  ];
}

/** The head of an arrow with its point at a place, pointing along x or y. */
function head([x, y]: Point, [alongX, alongY]: Point): Mark {
  const [backX, backY] = [x - alongX * arrow.length, y - alongY * arrow.length];
  return polygon(
    [
      [x, y],
      [backX + alongY * arrow.half, backY + alongX * arrow.half],
      [backX - alongY * arrow.half, backY - alongX * arrow.half],
    ],
    { fill: 0 },
  );
}
