import type { GearFigure } from "../content/figure-blocks.ts";
import { closeUpMarks, needsCloseUp } from "./gear-close-up.ts";
import { builtUp, outline, type PlacedGear, spaceTurns, toothTurns } from "./gear-teeth.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import type { Paper } from "./paper.ts";
import { arrowRound, circleMark, pointAt, polygon } from "./shapes.ts";

/** Room outside the tips for numbers; points. */
const roomForNumbers = 36;
/** Finer teeth than this, from one to the next in points, are drawn as two circles. */
const leastPitch = 2.6;
const wheelShare = 0.36;
const closeUpHeight = 166;
const gap = 10;

/** A wheel may be drawn this much smaller where a page is short of room, and no more: its numbers stay as large. */
const leastDrawn = 0.7;

/** The height of the drawing for a width. */
export function gearHeight(figure: GearFigure, width: number, paper: Paper): number {
  return needsCloseUp(figure, width * (1 - wheelShare) - gap)
    ? Math.min(width * wheelShare, closeUpHeight)
    : Math.min(width * 0.72, paper.height * 0.27) * Math.max(leastDrawn, paper.closeness.drawing);
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
  const below = alone ? roomForNumbers : 4;
  const tip = Math.min(width / 2 - (alone ? roomForNumbers : 4), (height - roomForNumbers - below) / 2);
  const gear: PlacedGear = { figure, x: left + width / 2, y: top + roomForNumbers + tip, tip };
  return [
    ...rimMarks(gear),
    ...figure.damaged.flatMap((tooth) => builtUp(gear, tooth)),
    ...overTeeth(gear),
    ...labels(gear, measure, alone),
    ...startMark(gear, measure),
    ...turningMarks(gear),
    setText(measure, String(figure.teeth), { weight: "bold", size: 14 }, gear.x, gear.y + 1, "center"),
    setText(measure, "teeth", { weight: "regular", size: 9 }, gear.x, gear.y + 11, "center"),
  ];
}

function rimMarks(gear: PlacedGear): Mark[] {
  const { figure, tip } = gear;
  const all = Array.from({ length: figure.teeth }, (_, index) => index + 1);
  if ((2 * Math.PI * tip) / figure.teeth >= leastPitch)
    return [polygon(outline(gear, all), { fill: 1, stroke: { width: 0.8, grey: 0 } })];
  const root = (figure.profile[0]?.radius ?? 0.9) * tip;
  return [tip, Math.min(root, tip - 3)].map((radius) => circleMark(gear, radius, { stroke: { width: 0.8, grey: 0 } }));
}

const numberStyle: Style = { weight: "bold", size: 10 };

/** Teeth finer than this, in points from one to the next, are too small to be seen black from afar. */
const easilySeen = 10;

/** A black band over each run of built-up teeth that are too fine to be seen themselves. */
function overTeeth(gear: PlacedGear): Mark[] {
  const { figure, tip } = gear;
  if ((2 * Math.PI * tip) / figure.teeth >= easilySeen) return [];
  return runs(figure).map(({ from, middle }) => {
    const half = Math.max(middle - from + 0.4 / figure.teeth, 2 / (2 * Math.PI * tip));
    // Fine enough to look round, however long the run.
    const parts = Math.ceil(half * 120) + 1;
    const steps = Array.from({ length: 2 * parts + 1 }, (_, index) => middle - half + (index * half) / parts);
    const edge = (radius: number, at: readonly number[]) => at.map((turns) => pointAt(gear, radius, turns));
    return polygon([...edge(tip + 1.5, steps), ...edge(tip + 5.5, steps.toReversed())], { fill: 0 });
  });
}

/** Along the circle of numbers, in points: kept free for the arrow, and for its name to the left of it. */
const arrowRoom = 8;
const nameRoom = 62;
/** How far a number may be moved along from its teeth; a line then leads to it. */
const mostMoved = 60;

interface Label {
  readonly lines: readonly string[];
  /** What it is of, in turns from the start space. */
  readonly at: number;
  /** From where a line leads to it, over the tips. */
  readonly from: number;
}

/**
 * The numbers of the built-up teeth, those beside each other as a run, and the space that proves the
 * count; what would crowd is moved on, and left to title and table where there is no room.
 */
function labels(gear: PlacedGear, measure: Measure, alone: boolean): Mark[] {
  const { figure, tip } = gear;
  const round = 2 * Math.PI * (tip + 16);
  let taken = arrowRoom;
  return labelsOf(figure, alone).flatMap(({ lines, at, from }): Mark[] => {
    const wide = Math.max(...lines.map((text) => measure(text, numberStyle)));
    const high = lines.length * lineHeight;
    // Beside the wheel it is their height that labels take up of the circle, over and under it their width.
    const turn = 2 * Math.PI * Math.min(1, Math.max(at, taken / round));
    const half = (Math.abs(Math.cos(turn)) * wide + Math.abs(Math.sin(turn)) * high) / 2 + 3;
    const place = Math.max(at * round, taken + half);
    const moved = place - at * round;
    if (moved > mostMoved || place + half > round - nameRoom) return [];
    taken = place + half;
    const angle = (2 * Math.PI * place) / round;
    const out = 9 + (Math.abs(Math.sin(angle)) * wide + Math.abs(Math.cos(angle)) * high) / 2;
    const [x, y] = pointAt(gear, tip + out, place / round);
    const set = lines.map((text, index) =>
      setText(measure, text, numberStyle, x, y + 3.5 + (index - (lines.length - 1) / 2) * lineHeight, "center"),
    );
    const leads = moved >= 4 || lines.length > 1;
    return leads
      ? [...set, { kind: "rule", from: pointAt(gear, tip + from, at), to: pointAt(gear, tip + 10, place / round), width: 0.7 }]
      : set;
  });
}

const lineHeight = 10;

function labelsOf(figure: GearFigure, alone: boolean): readonly Label[] {
  const built = runs(figure).map(({ first, last, middle }) => ({
    lines: [first === last ? String(first) : `${first}–${last}`],
    at: middle,
    from: 6,
  }));
  if (!alone || figure.proofSpace === figure.startSpace) return built;
  return [...built, { lines: ["PROVE", String(figure.proofSpace)], at: spaceTurns(figure, figure.proofSpace), from: -4 }];
}

/** Built-up teeth that follow each other, with where the first and the middle of them lie. */
function runs(figure: GearFigure): { first: number; last: number; from: number; middle: number }[] {
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

/** The way the work turns: against the numbers, so that they come to the cutter in order. */
function turningMarks(gear: PlacedGear): Mark[] {
  const radius = Math.min(Math.max(24, gear.tip * 0.4), (gear.figure.profile[0]?.radius ?? 0.9) * gear.tip * 0.8);
  return arrowRound(gear, radius, { from: 0.12, to: -0.12, width: 1.3, head: 4 });
}
