import { type DirectPlate, placesOf } from "../head/direct-plate.ts";
import { placesOn } from "../methods/direct.ts";
import type { HeadLayout } from "../methods/layout.ts";
import type { NearBy } from "../setting/near-setting.ts";
import { closest } from "./closest.ts";
import { eachFromZero, furthest, once, type Wanted } from "./near-from-zero.ts";

/**
 * The direct plate on which the nearest place to each position is least far off; of equal ones that with the fewest
 * places. It is asked only of a head that no crank turns: any circle comes nearer.
 *
 * @returns Null where the head has none, or one of them has a place for every position.
 */
export function nearestDirect(layout: HeadLayout, wanted: Wanted): NearBy<"nearest-direct"> | null {
  const best = closest<DirectPlate>(Number.POSITIVE_INFINITY);
  for (const plate of layout.head.directPlates) {
    const perTurn = placesOf(plate);
    const { residue, parts } = furthest({ perTurn, turns: once }, wanted.move);
    if (parts === 1) return null;
    const error = residue / (parts * perTurn);
    if (best.takes(error)) best.offer(error, plate);
  }
  const [plate] = best.candidates.toSorted((a, b) => placesOf(a) - placesOf(b));
  if (plate === undefined) return null;
  const by = { kind: "nearest-direct", method: "direct", ...placesOn(plate, true), plateStopPin: null } as const;
  return { ...eachFromZero(layout, wanted, { perTurn: by.circle, turns: once }), ...by };
}
