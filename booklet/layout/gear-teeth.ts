import type { GearFigure } from "../content/figure-blocks.ts";
import type { Mark } from "./marks.ts";
import { type Centre, type Point, pointAt, polygon } from "./shapes.ts";

/** A gear placed on the page: its middle, and the radius of its tips; in points. */
export interface PlacedGear extends Centre {
  readonly figure: GearFigure;
  readonly tip: number;
}

/** Where the middle of a tooth lies, in turns clockwise from the start space, which is at the top. */
export function toothTurns({ teeth, startSpace }: GearFigure, tooth: number): number {
  const on = (tooth - startSpace + teeth) % teeth;
  return (on - 0.5) / teeth;
}

/** Where the middle of a tooth space lies. */
export function spaceTurns({ teeth, startSpace }: GearFigure, space: number): number {
  return ((space - startSpace + teeth) % teeth) / teeth;
}

/** The outline of teeth beside each other, from the root before the first to the root after the last. */
export function outline(gear: PlacedGear, teeth: readonly number[]): readonly Point[] {
  return teeth.flatMap((tooth) => toothPoints(gear, tooth));
}

/** A tooth from root to root, clockwise. */
function toothPoints(gear: PlacedGear, tooth: number): Point[] {
  const { figure, tip } = gear;
  const middle = toothTurns(figure, tooth);
  const up = figure.profile.map(({ radius, half }) => pointAt(gear, radius * tip, middle - half));
  const down = figure.profile.toReversed().map(({ radius, half }) => pointAt(gear, radius * tip, middle + half));
  return [...up, ...down];
}

/** A built-up tooth: outlined and hatched, or black where it is too small for that. */
export function builtUp(gear: PlacedGear, tooth: number): Mark[] {
  const { figure, tip } = gear;
  const points = toothPoints(gear, tooth);
  const width = (2 * Math.PI * tip) / figure.teeth / 2;
  if (width < leastHatched) return [polygon(points, { fill: 0 })];
  return [polygon(points, { fill: 1, stroke: { width: 1.1, grey: 0 } }), ...hatching(gear, tooth, width)];
}

const leastHatched = 5;
/** Between two lines of hatching, and how much each rises over the width of a tooth; points. */
const hatchApart = 3;

/** Lines that rise from the left flank to the right, each from point to point of the tooth's own form. */
function hatching(gear: PlacedGear, tooth: number, width: number): Mark[] {
  const { figure, tip } = gear;
  const middle = toothTurns(figure, tooth);
  const root = (figure.profile[0]?.radius ?? 0.9) * tip;
  const rise = Math.min(width * 0.7, (tip - root) * 0.6);
  const lines: Mark[] = [];
  for (let at = root - rise + hatchApart / 2; at < tip; at += hatchApart) {
    // Where the line would leave the tooth below or above, it begins or ends on the way.
    const from = Math.max(0, (root - at) / rise);
    const to = Math.min(1, (tip - at) / rise);
    if (to - from < 0.08) continue;
    const place = (part: number) => {
      const radius = at + part * rise;
      return pointAt(gear, radius, middle + (2 * part - 1) * halfAt(figure, radius / tip));
    };
    lines.push({ kind: "rule", from: place(from), to: place(to), width: 0.7 });
  }
  return lines;
}

/** Half the angle of a tooth at a radius, between those that the figure gives. */
function halfAt({ profile }: GearFigure, radius: number): number {
  const above = profile.findIndex((point) => point.radius >= radius);
  const [low, high] = [profile[Math.max(0, above - 1)], profile[above === -1 ? profile.length - 1 : above]];
  if (!low || !high) return 0;
  const part = high.radius === low.radius ? 0 : (Math.min(radius, high.radius) - low.radius) / (high.radius - low.radius);
  return low.half + Math.max(0, part) * (high.half - low.half);
}
