import type { GearFigure } from "../content/figure-blocks.ts";
import { builtUp, outline, type PlacedGear, spaceTurns, toothTurns } from "./gear-teeth.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { pointAt, polygon } from "./shapes.ts";

/** From one tooth to the next in points: at least for the numbers to be read, and at most. */
const pitches = { least: 24, most: 44 };
/** The largest part of the gear that is drawn so, in turns. */
const mostTurns = 0.25;
const fewestTeeth = 20;
/** Left free beside the teeth, for the words that say what the numbers are; in pitches. */
const sideRoom = 2.6;

/** Teeth from the one before the start space to the one after the proof space. */
function shownTeeth({ teeth, startSpace, proofSpace }: GearFigure): readonly number[] {
  const apart = (proofSpace - startSpace + teeth) % teeth;
  return Array.from({ length: apart + 2 }, (_, index) => ((startSpace + index - 1 + teeth) % teeth) + 1);
}

/** Whether the damaged place is better shown large: the gear is fine-toothed and the place fits. */
export function needsCloseUp(figure: GearFigure, width: number): boolean {
  const { teeth, startSpace, proofSpace } = figure;
  const shown = shownTeeth(figure).length;
  return (
    teeth > fewestTeeth && startSpace !== proofSpace && shown / teeth <= mostTurns && width / (shown + sideRoom) >= pitches.least
  );
}

/** Draws the damaged place large: teeth numbered over their tips, spaces under their roots, START and PROVE in words. */
export function closeUpMarks(figure: GearFigure, box: Box, measure: Measure): Mark[] {
  const teeth = shownTeeth(figure);
  const gear = placed(figure, teeth.length, box);
  // A space has the number of the tooth before it.
  const spaces = teeth.slice(0, -1);
  const edge = polygon(outline(gear, teeth), { open: true, stroke: { width: 1, grey: 0 } });
  return [
    edge,
    ...teeth.filter((tooth) => figure.damaged.includes(tooth)).flatMap((tooth) => builtUp(gear, tooth)),
    ...teeth.map((tooth) => toothNumber(gear, tooth, measure)),
    ...spaces.flatMap((space) => spaceMarks(gear, space, space === figure.startSpace, measure)),
    ...rowNames(gear, teeth[0] ?? 1, measure),
  ];
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The gear so large, and turned so, that the place stands upright in the middle of the box. */
function placed(figure: GearFigure, shown: number, { left, top, width, height }: Box): PlacedGear {
  const pitch = Math.min(pitches.most, width / (shown + sideRoom));
  const tip = (pitch * figure.teeth) / (2 * Math.PI);
  const sag = tip * (1 - Math.cos((Math.PI * shown) / figure.teeth));
  const depth = tip * (1 - rootOf(figure));
  // Turning the teeth by the middle of the place is the same as counting the start space from there.
  const turned = { ...figure, startSpace: figure.startSpace + shown / 2 - 1 };
  return { figure: turned, x: left + width / 2, y: top + (height - sag - depth) / 2 + tip, tip };
}

/** In parts of the tip's radius. */
function rootOf({ profile }: GearFigure): number {
  return profile[0]?.radius ?? 0.9;
}

/** What the two rows of numbers are. */
function rowNames(gear: PlacedGear, first: number, measure: Measure): Mark[] {
  const { figure, tip } = gear;
  const style: Style = { weight: "regular", size: 8.5 };
  const turns = toothTurns(figure, first) - 0.75 / figure.teeth;
  const [x, over] = pointAt(gear, tip + 8, turns);
  const [, under] = pointAt(gear, rootOf(figure) * tip - 12, turns);
  return [setText(measure, "tooth", style, x, over + 2, "right"), setText(measure, "space", style, x, under + 4, "right")];
}

function toothNumber(gear: PlacedGear, tooth: number, measure: Measure): Mark {
  const style: Style = { weight: gear.figure.damaged.includes(tooth) ? "bold" : "regular", size: 10.5 };
  const [x, y] = pointAt(gear, gear.tip + 8, toothTurns(gear.figure, tooth));
  return setText(measure, String(tooth), style, x, y + 2, "center");
}

function spaceMarks(gear: PlacedGear, space: number, isStart: boolean, measure: Measure): Mark[] {
  const { figure, tip } = gear;
  const root = rootOf(figure) * tip;
  const turns = spaceTurns(figure, space);
  const [x, y] = pointAt(gear, root - 12, turns);
  const word = isStart ? "START" : space === figure.proofSpace ? "PROVE" : "";
  const style: Style = { weight: figure.cuts.includes(space) || isStart ? "bold" : "regular", size: 10.5 };
  return [
    { kind: "rule", from: pointAt(gear, root + 1, turns), to: pointAt(gear, root - 3, turns), width: 1.2 },
    setText(measure, String(space), style, x, y + 4, "center"),
    setText(measure, word, { weight: "bold", size: 8.5 }, x, y + 14, "center"),
    ...(isStart ? arrowInto(gear, turns) : []),
  ];
}

function arrowInto(gear: PlacedGear, turns: number): Mark[] {
  const beside = 4.5 / (2 * Math.PI * gear.tip);
  const corners = [
    pointAt(gear, gear.tip - 2, turns),
    pointAt(gear, gear.tip + 9, turns - beside),
    pointAt(gear, gear.tip + 9, turns + beside),
  ];
  return [
    polygon(corners, { fill: 0 }),
    { kind: "rule", from: pointAt(gear, gear.tip + 8, turns), to: pointAt(gear, gear.tip + 22, turns), width: 2.2 },
  ];
}
