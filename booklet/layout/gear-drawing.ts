import type { GearFigure } from "../content/blocks.ts";
import { closeUpMarks, needsCloseUp } from "./gear-close-up.ts";
import { builtUp, outline, type PlacedGear, pointAt, polygon, spaceTurns, toothTurns } from "./gear-teeth.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";

/** Room outside the tips for numbers; points. */
const roomForNumbers = 34;
/** Finer teeth than this, from one to the next in points, are drawn as two circles. */
const leastPitch = 2.6;
const wheelShare = 0.36;
const closeUpHeight = 166;
const gap = 10;

/** The height of the drawing for a width. */
export function gearHeight(figure: GearFigure, width: number, paper: Paper): number {
  return needsCloseUp(figure, width * (1 - wheelShare) - gap)
    ? Math.min(width * wheelShare, closeUpHeight)
    : Math.min(width * 0.72, paper.height * 0.27);
}

/**
 * Draws a gear from the side on which its numbers run clockwise, the sound start space at the top.
 * Where its teeth are fine and the damage is in one place, that place is drawn large beside it.
 */
export function gearMarks(
  figure: GearFigure,
  box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  measure: Measure,
): Mark[] {
  const beside = box.width * (1 - wheelShare) - gap;
  if (!needsCloseUp(figure, beside)) return wheelMarks(figure, box, measure, true);
  const wheel = { ...box, width: box.width * wheelShare };
  return [
    ...wheelMarks(figure, wheel, measure, false),
    ...closeUpMarks(figure, { ...box, left: box.left + box.width - beside, width: beside }, measure),
  ];
}

function wheelMarks(
  figure: GearFigure,
  { left, top, width, height }: { left: number; top: number; width: number; height: number },
  measure: Measure,
  alone: boolean,
): Mark[] {
  // Beside a close-up all numbers stand at the top.
  const below = alone ? roomForNumbers - 8 : 4;
  const tip = Math.min(width / 2 - (alone ? roomForNumbers : 4), (height - roomForNumbers - below) / 2);
  const gear: PlacedGear = { figure, x: left + width / 2, y: top + roomForNumbers + tip, tip };
  return [
    ...rimMarks(gear),
    ...figure.damaged.flatMap((tooth) => builtUp(gear, tooth)),
    ...numbers(gear, measure),
    ...(alone ? proofMark(gear, measure) : []),
    ...startMark(gear, measure),
    ...turningMarks(gear),
    setText(measure, String(figure.teeth), { weight: "bold", size: 15 }, gear.x, gear.y + 3, "center"),
    setText(measure, "teeth", { weight: "regular", size: 9 }, gear.x, gear.y + 14, "center"),
  ];
}

function rimMarks(gear: PlacedGear): Mark[] {
  const { figure, tip } = gear;
  const all = Array.from({ length: figure.teeth }, (_, index) => index + 1);
  if ((2 * Math.PI * tip) / figure.teeth >= leastPitch)
    return [polygon(outline(gear, all), { fill: 1, stroke: { width: 0.8, grey: 0 } })];
  const root = (figure.profile[0]?.radius ?? 0.9) * tip;
  return [tip, Math.min(root, tip - 3)].map((radius) => polygon(circle(gear, radius), { stroke: { width: 0.8, grey: 0 } }));
}

function circle(gear: PlacedGear, radius: number) {
  return Array.from({ length: 120 }, (_, index) => pointAt(gear, radius, index / 120));
}

const numberStyle: Style = { weight: "bold", size: 10 };

/** Along the circle of numbers, in points: kept free for the arrow, and for its name to the left of it. */
const arrowRoom = 8;
const nameRoom = 62;
/** How far a number may be moved along from its teeth; a line then leads to it. */
const mostMoved = 60;

/** The numbers of the built-up teeth, those beside each other as a run; what would crowd is moved on, and left to the title where there is no room. */
function numbers(gear: PlacedGear, measure: Measure): Mark[] {
  const { figure, tip } = gear;
  const round = 2 * Math.PI * (tip + 13);
  let taken = arrowRoom;
  return runs(figure).flatMap(({ first, last, middle }): Mark[] => {
    const text = first === last ? String(first) : `${first}–${last}`;
    const wide = measure(text, numberStyle);
    // Numbers beside the wheel stand one under the other, and take up less of the circle.
    const half = (Math.abs(Math.cos(2 * Math.PI * middle)) > 0.7 ? wide / 2 : Math.max(6, wide / 3)) + 3;
    const at = Math.max(middle * round, taken + half);
    if (at - middle * round > mostMoved || at + half > round - nameRoom) return [];
    taken = at + half;
    const [x, y] = pointAt(gear, tip + 14, at / round);
    const number = setText(measure, text, numberStyle, x, y + 3.5, "center");
    if (at - middle * round < 4) return [number];
    return [number, { kind: "rule", from: pointAt(gear, tip + 1, middle), to: pointAt(gear, tip + 7, at / round), width: 0.6 }];
  });
}

function runs(figure: GearFigure): { first: number; last: number; middle: number }[] {
  const found: { first: number; last: number; middle: number; from: number }[] = [];
  const inOrder = figure.damaged.map((tooth) => ({ tooth, at: toothTurns(figure, tooth) })).sort((a, b) => a.at - b.at);
  for (const { tooth, at } of inOrder) {
    const open = found.at(-1);
    if (open && tooth === (open.last % figure.teeth) + 1) Object.assign(open, { last: tooth, middle: (open.from + at) / 2 });
    else found.push({ first: tooth, last: tooth, middle: at, from: at });
  }
  return found;
}

/** An arrow into the start space; its name to the left, where the teeth are sound. */
function startMark(gear: PlacedGear, measure: Measure): Mark[] {
  const { figure, x, y, tip } = gear;
  const point = y - tip + 1;
  return [
    polygon(
      [
        [x, point],
        [x - 5, point - 12],
        [x + 5, point - 12],
      ],
      { fill: 0 },
    ),
    { kind: "rule", from: [x, point - 24], to: [x, point - 10], width: 2.4 },
    setText(measure, "START", { weight: "bold", size: 10 }, x - 9, point - 17, "right"),
    setText(measure, `space ${figure.startSpace}`, { weight: "regular", size: 9 }, x - 9, point - 7, "right"),
  ];
}

/** The space that proves the count, where no close-up shows it. */
function proofMark(gear: PlacedGear, measure: Measure): Mark[] {
  const { figure, tip } = gear;
  const turns = spaceTurns(figure, figure.proofSpace);
  if (figure.proofSpace === figure.startSpace) return [];
  const root = (figure.profile[0]?.radius ?? 0.9) * tip;
  const style: Style = { weight: "semibold", size: 9 };
  const inside = root - 6 - measure("PROVE", style) * 0.62;
  const [x, y] = pointAt(gear, inside, turns);
  return [
    { kind: "rule", from: pointAt(gear, root - 1, turns), to: pointAt(gear, root - 8, turns), width: 1.6 },
    setText(measure, "PROVE", style, x, y, "center"),
    setText(measure, String(figure.proofSpace), style, x, y + 9, "center"),
  ];
}

/** The way the work turns: against the numbers, so that they come to the cutter in order. */
function turningMarks(gear: PlacedGear): Mark[] {
  const radius = Math.max(24, gear.tip * 0.4);
  const arc = Array.from({ length: 25 }, (_, index) => pointAt(gear, radius, 0.12 - (index * 0.24) / 24));
  const tip = pointAt(gear, radius, -0.12 - 6 / (2 * Math.PI * radius));
  return [
    polygon(arc, { open: true, stroke: { width: 1.3, grey: 0 } }),
    polygon([tip, pointAt(gear, radius + 4, -0.115), pointAt(gear, radius - 4, -0.115)], { fill: 0 }),
  ];
}
