import type { HeadFigure, PlateFigure } from "../content/figure-blocks.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { plateMarks } from "./plate-drawing.ts";
import { type PlacedPlate, placedPlate } from "./plate-place.ts";
import { arrowRound, type Point, pointAt, polygon } from "./shapes.ts";

/** Round the plate, for the arrow and the stop pin; points. */
const room = 22;
/** Under the plate, for the sentence. */
const foot = 28;
/** From the middle to a name beside it, at most. */
const furthest = 235;
/** Of the width, at most, so that the names have room. */
const widest = 0.73;

/** Where the drawing goes. */
export interface HeadBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Height of the plate with what stands round it. */
  readonly side: number;
  /** The least size of type. */
  readonly least: number;
}

/** The height of the plate within the drawing, for a height that is wanted. */
export function headSide(width: number, wanted: number): number {
  return Math.min(width * widest, wanted);
}

/** Height of the drawing with a plate so high. */
export function headHeight(side: number): number {
  return side + foot;
}

/**
 * Draws the head as it is seen from the crank, its parts named: the plate with arms and crank, the
 * stop pin behind it, and which way is forward, with the crank and against it.
 */
export function headMarks({ circle, spaces, plateTurns }: HeadFigure, box: HeadBox, measure: Measure): Mark[] {
  const figure: PlateFigure = { type: "plate", circles: [circle], chosen: { circle, spaces } };
  const within = { left: box.left + room, top: box.top + room, width: box.width - 2 * room, height: box.side - 2 * room };
  const plate = placedPlate(figure, { ...within, least: box.least, counted: false }, measure);
  const pin = pointAt(plate, plate.radii[0] ?? 0, 0);
  return [
    ...plateMarks(figure, plate, measure, false),
    ...arrowRound(plate, plate.rim + 11, { from: 0.03, to: 0.2, width: 1.4, head: 4 }),
    ...crank(plate, pin),
    { kind: "band", x: plate.x - 3, y: plate.y + plate.rim - 1, width: 6, height: 11, grey: 0.5 },
    ...names(plate, spaces / circle, box, measure),
    whichWay(plateTurns, box, measure),
  ];
}

function whichWay(plateTurns: boolean, { left, top, width, side, least }: HeadBox, measure: Measure): Mark {
  const text = plateTurns
    ? "With the crank: the plate turns the way of the arrow. Against the crank: the other way."
    : "The crank alone turns: the plate stands still on its stop pin.";
  return setText(measure, text, { weight: "regular", size: Math.max(9, least) }, left + width / 2, top + side + 14, "center");
}

/** The parts by name: where each is, in parts of the rim's radius and in turns, and how high its name stands. */
function names(plate: PlacedPlate, far: number, box: HeadBox, measure: Measure): Mark[] {
  const style: Style = { weight: "semibold", size: Math.max(9.5, box.least) };
  const middle = box.left + box.width / 2;
  const half = Math.min(box.width / 2, furthest, plate.rim + 150);
  const name = (side: 1 | -1) => (text: string, up: number, radius: number, turns: number) => {
    const [x, y] = [middle + side * half, plate.y - plate.rim * up];
    const label = setText(measure, text, style, x, y, side < 0 ? "left" : "right");
    const from: Point = [side < 0 ? label.x + label.width + 4 : label.x - 4, y - 3];
    const line: Mark = { kind: "rule", from, to: pointAt(plate, plate.rim * radius, turns), width: 0.5, grey: 0.35 };
    return [label, line];
  };
  const [left, right] = [name(-1), name(1)];
  return [
    ...left("index pin, in hole 0", 0.98, 0.828, -0.012),
    ...left("crank", 0.55, 0.5, -0.015),
    ...left("near arm", 0.12, 0.42, -0.05),
    ...left("index plate", -0.72, 0.98, 0.63),
    ...right("forward", 0.98, 1.11, 0.13),
    ...right("holes of the move", 0.12, 0.83, far * 0.7),
    ...right("far arm", -0.3, 0.6, far + 0.02),
    ...right("plate stop pin, behind", -0.95, 1, 0.49),
  ];
}

/** The crank from a little below the hub up to the pin, round at both ends. */
function crank({ x, y }: PlacedPlate, [pinX, pinY]: Point): Mark[] {
  const half = 4.2;
  const end = (turns: number, at: number) =>
    Array.from({ length: 13 }, (_, index) => pointAt({ x, y: at }, half, turns + index / 24));
  const outline = polygon([...end(0.75, pinY - 8), ...end(0.25, y + 26)], { fill: 1, stroke: { width: 1, grey: 0 } });
  return [
    outline,
    { kind: "dots", at: [[x, y]], diameter: 5, grey: 0 },
    { kind: "dots", at: [[pinX, pinY]], diameter: 6, grey: 0 },
  ];
}
