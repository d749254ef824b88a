import { wormRatioOf } from "../head/head.ts";
import { fromExact, rational } from "../number/ratio.ts";
import { worstByMoves } from "./by-moves.ts";
import { partOf, partsVisited } from "./from-zero.ts";
import type { Place } from "./place.ts";
import type { Asked } from "./plan-options.ts";
import { holesReader, placesReader, type ScaleReader, scaleReader } from "./scale-reader.ts";
import type { Way } from "./way.ts";
import type { Work } from "./work.ts";

/** The teeth that matter; left out, all. */
type Matters = Asked["matters"];

/** The greatest error of the places that matter, in arc-seconds without sign. */
export function worstAmong(places: readonly Place[], matters: Matters): number {
  let worst = 0;
  for (const { tooth, errorArcSeconds } of places) {
    if (matters === undefined || matters.has(tooth)) worst = Math.max(worst, Math.abs(errorArcSeconds));
  }
  return worst;
}

/** The same of teeth that a way visits one after the other. No place is made for it. */
export function worstOf(work: Work, way: Way, teeth: readonly number[], matters: Matters): number {
  switch (way.by) {
    case "moves":
      return worstByMoves(work, way.setting, teeth, matters);
    case "nearest-hole":
      return worstRead(work, holesReader(way.setting.circle, wormRatioOf(work.head)), teeth, matters);
    case "both-cranks":
      return worstRead(work, holesReader(way.setting.placesPerTurn, wormRatioOf(work.head)), teeth, matters);
    case "nearest-direct":
      return worstRead(work, placesReader(way.setting.circle), teeth, matters);
    case "dial":
    case "ring": {
      const scale = { marksPerTurn: way.setting.placesPerTurn, vernierLines: 1, figures: "marks" } as const;
      const turns = way.by === "dial" ? fromExact(wormRatioOf(work.head)) : rational(1);
      return worstRead(work, scaleReader(scale, turns, work.zero), teeth, matters);
    }
  }
}

function worstRead(work: Work, reader: ScaleReader, teeth: readonly number[], matters: Matters): number {
  let worst = 0;
  for (const [index, parts] of partsVisited(work, teeth).entries()) {
    if (matters === undefined || matters.has(teeth[index] ?? 0))
      worst = Math.max(worst, Math.abs(reader.error(partOf(work, parts))));
  }
  return worst;
}
