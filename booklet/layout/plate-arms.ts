import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { PlacedPlate } from "./plate-place.ts";
import { arrowRound, type Point, pointAt, polygon, sectorMark } from "./shapes.ts";

/** Of the rim's radius. */
export const hub = 0.16;
/** From the middle of the pin to the edge of an arm, in points. */
const edge = 3.2;
/** Between the middles of two figures that count spaces, in points. */
const leastApart = 15;

/** What the arms are set to. */
export type Chosen = NonNullable<PlateFigure["chosen"]>;

/** The part of the plate between the arms. */
export function sectorOf({ circle, spaces }: Chosen, plate: PlacedPlate): Mark {
  return sectorMark(plate, plate.rim, Math.min(spaces / circle, 0.9999), 0.93);
}

/** Two tapered bars: the near one touches the hole the pin is in, the far one the hole it goes to. */
export function armMarks({ circle, spaces }: Chosen, radius: number, plate: PlacedPlate): Mark[] {
  return [arm(plate, 0, -1, radius), arm(plate, spaces / circle, 1, radius)];
}

function arm(plate: PlacedPlate, turns: number, side: 1 | -1, radius: number): Mark {
  const { x, y, rim } = plate;
  const angle = 2 * Math.PI * turns;
  const out: Point = [Math.sin(angle), -Math.cos(angle)];
  const across: Point = [side * Math.cos(angle), side * Math.sin(angle)];
  const place = (along: number, sideways: number): Point => [
    x + out[0] * along + across[0] * sideways,
    y + out[1] * along + across[1] * sideways,
  ];
  const [start, tip, thick] = [hub * rim, radius + 5, edge + rim * 0.075];
  const corners = [
    place(start, edge),
    place(tip, edge),
    place(tip + 3, edge + 3),
    place(radius * 0.62, thick),
    place(start, thick),
  ];
  return polygon(corners, { fill: 1, stroke: { width: 0.9, grey: 0 } });
}

/** An arrow on the hub: the way the crank goes. */
export function forwardOnHub(plate: PlacedPlate): Mark[] {
  const radius = hub * plate.rim * 0.58;
  return arrowRound(plate, radius, { from: -0.3, to: 0.28, width: 1.1, head: radius * 0.3 });
}

/** Counts the spaces outside the rim, from 0 at the pin; figures that would crowd are left out, never the last. */
export function countMarks({ circle, spaces }: Chosen, plate: PlacedPlate, measure: Measure): Mark[] {
  const { rim, size } = plate;
  const large = Math.max(11, size);
  const apart = (2 * Math.PI * (rim + 15)) / circle;
  const figuresApart = Math.max(leastApart, measure(String(spaces), { weight: "bold", size: large }) + 4);
  const every = [1, 2, 5, 10, 20, 50, 100, 200].find((step) => step * apart >= figuresApart) ?? 500;
  const lastMeetsFirst = Math.min(spaces, circle - spaces) * apart < figuresApart;
  const isNamed = (space: number) =>
    space === 0 ||
    space === spaces ||
    (space % every === 0 && (spaces - space) * apart >= figuresApart && (circle - space) * apart >= figuresApart);
  return Array.from({ length: spaces + 1 }, (_, space) => space).flatMap((space): Mark[] => {
    const turns = space / circle;
    const tick = (length: number, width: number): Mark => ({
      kind: "rule",
      from: pointAt(plate, rim + 3, turns),
      to: pointAt(plate, rim + length, turns),
      width,
    });
    if (!isNamed(space)) return apart < 3 ? [] : [tick(5.5, 0.7)];
    const isEnd = space === 0 || space === spaces;
    const style: Style = { weight: isEnd ? "bold" : "regular", size: isEnd ? large : Math.max(9, size) };
    const [x, y] = pointAt(plate, rim + (space === spaces && lastMeetsFirst ? 25 : 15), turns);
    return [tick(8, 1.1), ...onWhite(setText(measure, String(space), style, x, y + style.size * 0.35, "center"))];
  });
}

/** Text with the ground behind it white, so that a line that passes there is broken and does not strike it out. */
function onWhite(text: ReturnType<typeof setText>): Mark[] {
  const { x, y, width, size } = text;
  return [{ kind: "band", x: x - 1, y: y - size * 0.78, width: width + 2, height: size * 0.86, grey: 1 }, text];
}
