import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Mark } from "./marks.ts";
import { dotOf, type PlacedPlate, pitchOf } from "./plate-place.ts";
import { type Point, pointAt } from "./shapes.ts";

const quiet = 0.45;

/** The holes of every circle; those that are counted are filled, and the pin's own, first and last, ringed. */
export function holeMarks({ circles, chosen }: PlateFigure, plate: PlacedPlate): Mark[] {
  const pitch = pitchOf(plate);
  return circles.flatMap((holes, index) => {
    const radius = plate.radii[index] ?? 0;
    const dot = dotOf(holes, radius, pitch);
    const all = Array.from({ length: holes }, (_, hole) => pointAt(plate, radius, hole / holes));
    return chosen?.circle === holes ? countedHoles(all, chosen.spaces, dot) : openHoles(all, dot, quiet);
  });
}

function openHoles(at: readonly Point[], diameter: number, grey: number): Mark[] {
  return [
    { kind: "dots", at, diameter, grey },
    { kind: "dots", at, diameter: diameter * 0.72, grey: 1 },
  ];
}

function countedHoles(all: readonly Point[], spaces: number, dot: number): Mark[] {
  const ends = [all[0], all[spaces % all.length]].filter((point) => point !== undefined);
  return [
    ...openHoles(all.slice(spaces + 1), dot, 0),
    { kind: "dots", at: ends, diameter: dot * 2, grey: 0 },
    { kind: "dots", at: ends, diameter: dot * 1.6, grey: 1 },
    { kind: "dots", at: all.slice(0, spaces + 1), diameter: dot, grey: 0 },
  ];
}
