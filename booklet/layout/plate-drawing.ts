import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Mark } from "./marks.ts";
import type { Measure } from "./measure.ts";
import { armMarks, countMarks, forwardOnHub, hub, sectorOf } from "./plate-arms.ts";
import { holeMarks } from "./plate-holes.ts";
import { circleNumbers } from "./plate-numbers.ts";
import { type PlacedPlate, pitchOf } from "./plate-place.ts";
import { circleMark } from "./shapes.ts";

/**
 * Draws a plate face as seen from the crank, hole 0 at the top and the way forward clockwise. Where
 * the diameters of its circles are not known they stand at even distances, the smallest innermost.
 *
 * @param counted - Whether figures outside the rim count the spaces, and an arrow on the hub shows forward.
 */
export function plateMarks(figure: PlateFigure, plate: PlacedPlate, measure: Measure, counted = true): Mark[] {
  const { circles } = figure;
  const at = circles.indexOf(figure.chosen?.circle ?? -1);
  const chosen = at < 0 ? null : figure.chosen;
  const radius = plate.radii[at] ?? 0;
  const { lines, numbers } = circleNumbers(figure, plate, measure);
  const band = { width: Math.min(pitchOf(plate) * 0.8, 11), grey: 0.82 };
  return [
    ...(chosen ? [sectorOf(chosen, plate), circleMark(plate, radius, { stroke: band })] : []),
    ...lines,
    ...holeMarks(figure, plate),
    circleMark(plate, plate.rim, { stroke: { width: 1.4, grey: 0 } }),
    circleMark(plate, hub * plate.rim, { fill: 1, stroke: { width: 1.2, grey: 0 } }),
    ...(chosen ? armMarks(chosen, radius, plate) : []),
    ...(chosen && counted ? [...countMarks(chosen, plate, measure), ...forwardOnHub(plate)] : []),
    ...numbers,
  ];
}
