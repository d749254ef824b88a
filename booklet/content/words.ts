import { wormRatioOf } from "../../src/head/head.ts";
import { type DirectPlate, type Face, fromExact, type Head, type Ratio, type Setting } from "../../src/index.ts";
import { toRevolutions } from "../../src/number/ratio.ts";
import { plateShort, shortAngle } from "../../src/words/index.ts";
import type { PlateFigure } from "./figure-blocks.ts";

/** The spindle's angle for one turn of the crank. */
export function degreesPerTurn(head: Pick<Head, "wormRatio">): string {
  return shortAngle(toRevolutions(fromExact(wormRatioOf(head)).inverse()));
}

/** What a book is for: `a worm ratio of 40 : 1`, `a head without a crank`. */
export function ratioOrNone({ wormRatio }: Pick<Head, "wormRatio">): string {
  return wormRatio === null ? "a head without a crank" : `a worm ratio of ${ratioInWords(wormRatio)}`;
}

/** What a direct plate has: `24`, `36 + row of 10`. */
export function placesInWords({ holes, vernierHoles }: DirectPlate): string {
  return vernierHoles === undefined ? String(holes) : `${holes} + row of ${vernierHoles}`;
}

/** A ratio as it is said: `40 : 1`, `81 : 2`. */
export function ratioInWords(wormRatio: Ratio): string {
  const { n, d } = fromExact(wormRatio);
  return `${n} : ${d}`;
}

/** The plate of a setting with its face in a table of a head: `1`, `1 front`, or what to say where none is needed. */
export function plateOf(head: Head, on: Pick<Setting, "plate" | "face">): string {
  return on.plate === null && head.plates.length === 0 ? "none" : plateShort(on);
}

/** A number that two digits would sort wrongly, filled up for an anchor: `simple00116`. */
export function anchorOf(part: string, count: number): string {
  return `${part}${String(count).padStart(5, "0")}`;
}

/** The circles of a face for a drawing, with their diameters where the head states them. */
export function circlesAndDiameters({ circles, diameters }: Face): Pick<PlateFigure, "circles" | "diameters"> {
  return diameters === undefined ? { circles } : { circles, diameters };
}
