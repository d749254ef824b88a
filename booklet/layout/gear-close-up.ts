import type { GearFigure } from "../content/figure-blocks.ts";
import { builtUp, outline, type PlacedGear, pointAt, polygon, spaceTurns, toothTurns } from "./gear-teeth.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";

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
export function closeUpMarks(
  figure: GearFigure,
  box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  measure: Measure,
): Mark[] {
  const teeth = shownTeeth(figure);
  const pitch = Math.min(pitches.most, box.width / (teeth.length + sideRoom));
  const tip = (pitch * figure.teeth) / (2 * Math.PI);
  // The middle of the place stands upright.
  const middle = (teeth.length / 2 - 1) / figure.teeth;
  const centre = { x: box.left + box.width / 2, y: 0 };
  const sag = tip * (1 - Math.cos((Math.PI * teeth.length) / figure.teeth));
  const depth = tip * (1 - (figure.profile[0]?.radius ?? 0.9));
  const top = box.top + (box.height - sag - depth) / 2;
  const turned = { ...figure, startSpace: figure.startSpace };
  const gear: PlacedGear = { figure: turned, ...centre, y: top + tip, tip };
  const rotated = rotate(gear, middle);
  return [
    ...rotated.body(teeth),
    ...teeth.map((tooth) => rotated.toothNumber(tooth, measure)),
    ...spacesOf(figure, teeth).flatMap((space) => rotated.spaceNumber(space, measure)),
    ...rotated.words(teeth[0] ?? 1, measure),
  ];
}

function spacesOf({ startSpace, teeth }: GearFigure, shown: readonly number[]): readonly number[] {
  return Array.from({ length: shown.length - 1 }, (_, index) => ((startSpace + index - 1) % teeth) + 1);
}

/** The same drawing, turned so that a place other than the start space stands at the top. */
function rotate(gear: PlacedGear, middle: number) {
  const { tip } = gear;
  // Turning the teeth by the middle is the same as counting the start space from there.
  const figure: GearFigure = { ...gear.figure, startSpace: gear.figure.startSpace + middle * gear.figure.teeth };
  const at: PlacedGear = { ...gear, figure };
  const root = (figure.profile[0]?.radius ?? 0.9) * tip;
  const built = new Set(figure.damaged);
  const cuts = new Set(figure.cuts);
  return {
    body(teeth: readonly number[]): Mark[] {
      const edge = outline(at, teeth);
      return [
        polygon(edge, { open: true, stroke: { width: 1, grey: 0 } }),
        ...teeth.filter((tooth) => built.has(tooth)).flatMap((tooth) => builtUp(at, tooth)),
      ];
    },
    /** What the two rows of numbers are. */
    words(first: number, measure: Measure): Mark[] {
      const style: Style = { weight: "regular", size: 8.5 };
      const turns = toothTurns(figure, first) - 0.75 / figure.teeth;
      const [x, over] = pointAt(at, tip + 8, turns);
      const [, under] = pointAt(at, root - 12, turns);
      return [setText(measure, "tooth", style, x, over + 2, "right"), setText(measure, "space", style, x, under + 4, "right")];
    },
    toothNumber(tooth: number, measure: Measure): Mark {
      const style: Style = { weight: built.has(tooth) ? "bold" : "regular", size: 10.5 };
      const [x, y] = pointAt(at, tip + 8, toothTurns(figure, tooth));
      return setText(measure, String(tooth), style, x, y + 2, "center");
    },
    spaceNumber(space: number, measure: Measure): Mark[] {
      const turns = spaceTurns(figure, space);
      const [x, y] = pointAt(at, root - 12, turns);
      const start = space === gear.figure.startSpace;
      const word = start ? "START" : space === figure.proofSpace ? "PROVE" : "";
      const style: Style = { weight: cuts.has(space) || start ? "bold" : "regular", size: 10.5 };
      return [
        { kind: "rule", from: pointAt(at, root + 1, turns), to: pointAt(at, root - 3, turns), width: 1.2 },
        setText(measure, String(space), style, x, y + 4, "center"),
        setText(measure, word, { weight: "bold", size: 8.5 }, x, y + 14, "center"),
        ...(start ? arrowInto(at, turns) : []),
      ];
    },
  };
}

function arrowInto(gear: PlacedGear, turns: number): Mark[] {
  const beside = 4.5 / (2 * Math.PI * gear.tip);
  return [
    polygon(
      [
        pointAt(gear, gear.tip - 2, turns),
        pointAt(gear, gear.tip + 9, turns - beside),
        pointAt(gear, gear.tip + 9, turns + beside),
      ],
      { fill: 0 },
    ),
    { kind: "rule", from: pointAt(gear, gear.tip + 8, turns), to: pointAt(gear, gear.tip + 22, turns), width: 2.2 },
  ];
}
