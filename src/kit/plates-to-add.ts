import type { Plate } from "../head/plate.ts";
import { readyHeads } from "../head/ready-heads.ts";
import type { Effort } from "../number/effort.ts";
import { type CircleTally, plateOf, searchOnPlates } from "./circles-to-add.ts";
import { anyOf, type CountSet, noCounts } from "./count-set.ts";
import { type Adds, addedBy, doneBy, type Lacking, worthOf } from "./lacking.ts";

/** A plate to buy or to make. */
export interface PlateToAdd extends Adds {
  /** The circles of each face. */
  readonly faces: readonly (readonly number[])[];
  /** `usual`: one that common heads come with. `own`: one to drill, put together circle by circle. */
  readonly made: "usual" | "own";
}

/** As many circles as there are on a plate of the common three; common practice, no source. */
const circlesOnOwn = 6;

/** The plates that the ready heads have, each once. */
const usualPlates: readonly Plate[] = [
  ...new Map(readyHeads.flatMap(({ plates }) => plates.map((plate) => [JSON.stringify(facesOf(plate)), plate]))).values(),
];

function facesOf({ faces }: Plate): readonly (readonly number[])[] {
  return faces.map(({ circles }) => circles);
}

/**
 * The plates that add the most: those that common heads come with, and one of six circles to drill.
 *
 * The one to drill takes at each step the circle that adds the most to those before it: the best found,
 * and not shown to be the best there is. Once it is whole, its circles are tried in pairs as well.
 */
export function bestPlates(lacking: Lacking, tallies: readonly CircleTally[], effort: Effort): readonly PlateToAdd[] {
  const own = ownCircles(lacking, tallies);
  const tried = [
    ...usualPlates.map((plate) => ({ plate, made: "usual" as const })),
    ...(own.length > 1 ? [{ plate: plateOf(own), made: "own" as const }] : []),
  ];
  return tried
    .map(({ plate, made }) => {
      const widened = searchOnPlates(lacking.search, [plate]);
      const does = doneBy(lacking, widened, effort);
      return { plate, made, widened, does, worth: worthOf(lacking, does) };
    })
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => b.worth - a.worth)
    .map(({ plate, made, widened, does }) => ({
      faces: facesOf(plate),
      made,
      ...addedBy(lacking, widened, does, effort),
    }));
}

/** Circles for a plate of one's own, ascending. */
function ownCircles(lacking: Lacking, tallies: readonly CircleTally[]): readonly number[] {
  const chosen: number[] = [];
  let does: CountSet = noCounts(lacking.counts.length);
  while (chosen.length < circlesOnOwn) {
    const before = worthOf(lacking, does);
    let best: { readonly holes: number; readonly does: CountSet; readonly worth: number } | null = null;
    for (const tally of tallies) {
      const both = anyOf(does, tally.does);
      const worth = worthOf(lacking, both);
      if (worth > (best?.worth ?? before)) best = { holes: tally.holes, does: both, worth };
    }
    if (best === null) break;
    chosen.push(best.holes);
    does = best.does;
  }
  return chosen.sort((a, b) => a - b);
}
