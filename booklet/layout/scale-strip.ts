import type { DrawnLine, ScaleFigure } from "../content/figure-blocks.ts";
import type { DrawingBox, DrawingRoom } from "./drawing-box.ts";
import type { Mark, Style } from "./marks.ts";
import { type Measure, setText } from "./measure.ts";
import { drawnLength, figureStyle, leastForFigures, lineWidth } from "./scale-lines-drawn.ts";
import { type DrawnScale, scaleToFit, scaleToShow, trueSize } from "./to-scale.ts";

/** From line to line, in points: no closer, or they run together; no wider than shows them well. */
const leastApart = 2.4;
const mostApart = 26;
/** The most strips under each other. */
const mostStrips = 3;
/** Lines of the main scale nearer than this are not drawn against a vernier. */
const leastMain = 1.8;
/** Lines of a main scale, from the common edge down. */
const mainLength = 9;
const underStrip = 12;

/** Of its room, as high as its strips are. */
type Room = Omit<DrawingRoom, "tallest">;

/** A scale drawn out straight: strips of so many spaces each. */
interface Strips {
  readonly style: Style;
  /** In points, of a space of the main scale. */
  readonly space: number;
  /** The lines of each strip; the last of one begins the next. */
  readonly strips: readonly (readonly DrawnLine[])[];
  readonly height: number;
  readonly mainDrawn: boolean;
  readonly note: string;
}

/** The height of all strips. */
export function stripsHeight(figure: ScaleFigure, room: Room, measure: Measure): number {
  const { strips, height } = stripsIn(figure, room, measure);
  return strips.length * height + room.least * 1.4;
}

function stripsIn(figure: ScaleFigure, { width, least }: Room, measure: Measure): Strips {
  const style = figureStyle(least);
  const { lines, spaceMm } = figure;
  const step = stepOf(lines);
  const inset = Math.max(...lines.map(({ figure: text }) => measure(text ?? "", style))) / 2 + 1;
  const room = width - 2 * inset;
  const closest = Math.max(leastApart, leastForFigures(figure, style, measure));
  const spaces = Math.max(1, lines.length - 1);
  const drawn = spaceMm === null ? null : drawnScale(step * spaceMm, spaces, closest, room);
  const apart =
    drawn === null ? Math.max(closest, Math.min(mostApart, room / spaces)) : step * (spaceMm ?? 0) * drawn.pointsPerMm;
  const perStrip = Math.max(1, Math.floor(room / apart + 1e-9));
  const needed = Math.ceil(spaces / perStrip);
  const strips = Array.from({ length: Math.min(needed, mostStrips) }, (_, strip) =>
    lines.slice(strip * perStrip, (strip + 1) * perStrip + 1),
  );
  const mainDrawn = figure.againstMain && apart / step >= leastMain;
  return {
    style,
    space: apart / step,
    strips,
    height: style.size + 3 + drawnLength.long + (mainDrawn ? mainLength : 0) + underStrip,
    mainDrawn,
    note: noteOf(drawn, strips, needed),
  };
}

/** True size where its lines then have room on so many strips; else as large as one strip holds it, or as small as its lines may be. */
function drawnScale(stepMm: number, spaces: number, closest: number, room: number): DrawnScale {
  const truly = stepMm * trueSize.pointsPerMm;
  if (truly >= closest && spaces <= Math.floor(room / truly) * mostStrips) return trueSize;
  const whole = scaleToFit(stepMm, Math.min(room / spaces, Math.max(mostApart, truly)));
  return stepMm * whole.pointsPerMm >= closest ? whole : scaleToShow(stepMm, closest);
}

function stepOf([first, second]: readonly DrawnLine[]): number {
  return first === undefined || second === undefined ? 1 : second.at - first.at;
}

function noteOf(scale: DrawnScale | null, strips: Strips["strips"], needed: number): string {
  const size = scale === null ? "Drawn out straight, its angles alike" : `Scale ${scale.says}`;
  if (strips.length === needed) return size;
  const numbers = strips.flat().map(({ line }) => line);
  return `${size}; lines ${Math.min(...numbers)} to ${Math.max(...numbers)} only`;
}

/** Draws a scale as strips under each other, its lines up from an edge, and against a vernier the lines of the main scale down from it. */
export function stripMarks(figure: ScaleFigure, box: Omit<DrawingBox, "tallest">, measure: Measure): Mark[] {
  const { style, space, strips, height, mainDrawn, note } = stripsIn(figure, box, measure);
  const middle = strips.length === 1;
  return [
    ...strips.flatMap((lines, index) => {
      const [first, last] = [lines[0]?.at ?? 0, lines.at(-1)?.at ?? 0];
      const edges = Math.max(...figure.lines.map(({ figure: text }) => measure(text ?? "", style))) / 2 + 1;
      const left = box.left + (middle ? (box.width - (last - first) * space) / 2 : edges);
      const edge = box.top + index * height + style.size + 3 + drawnLength.long;
      return strip(lines, { edge, xOf: (at) => left + (at - first) * space }, { style, mainDrawn }, measure);
    }),
    setText(
      measure,
      note,
      { weight: "regular", size: box.least, grey: 0.25 },
      box.left,
      box.top + strips.length * height + box.least * 0.9,
    ),
  ];
}

function strip(
  lines: readonly DrawnLine[],
  { edge, xOf }: { readonly edge: number; readonly xOf: (at: number) => number },
  { style, mainDrawn }: Pick<Strips, "style" | "mainDrawn">,
  measure: Measure,
): Mark[] {
  const [first, last] = [lines[0]?.at ?? 0, lines.at(-1)?.at ?? 0];
  const from = Math.ceil(first - 1e-9);
  const main = mainDrawn ? Array.from({ length: Math.floor(last + 1e-9) - from + 1 }, (_, index) => from + index) : [];
  const upright = (at: number, to: number, width: number): Mark => ({
    kind: "rule",
    from: [xOf(at), edge],
    to: [xOf(at), edge + to],
    width,
  });
  return [
    { kind: "rule", from: [xOf(first), edge], to: [xOf(last), edge], width: 0.5 },
    ...main.map((at) => upright(at, mainLength, 0.4)),
    ...lines.flatMap(({ at, length, figure }): Mark[] => [
      upright(at, -drawnLength[length], lineWidth),
      ...(figure === null ? [] : [setText(measure, figure, style, xOf(at), edge - drawnLength.long - 3, "center")]),
    ]),
  ];
}
