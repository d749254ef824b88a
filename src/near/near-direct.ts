import { type DirectPlate, placesOf } from "../head/direct-plate.ts";
import { placesOn } from "../methods/direct.ts";
import type { HeadLayout } from "../methods/layout.ts";
import type { NearBy } from "../setting/near-setting.ts";
import { eachFromZero, leastFarOff, once, type Wanted } from "./near-from-zero.ts";

/**
 * The direct plate on which the nearest place to each position is least far off; of equal ones that with the fewest
 * places. It is asked only of a head that no crank turns: any circle comes nearer.
 *
 * @returns Null where the head has none, or one of them has a place for every position.
 */
export function nearestDirect(layout: HeadLayout, wanted: Wanted): NearBy<"nearest-direct"> | null {
  const onSpindle = (plate: DirectPlate) => ({ perTurn: placesOf(plate), turns: once });
  const nearest = leastFarOff(layout.head.directPlates, onSpindle, wanted.move);
  const [plate] = nearest.toSorted((a, b) => placesOf(a) - placesOf(b));
  if (plate === undefined) return null;
  const by = { kind: "nearest-direct", method: "direct", ...placesOn(plate, true), plateStopPin: null } as const;
  return { ...eachFromZero(layout, wanted, { perTurn: by.circle, turns: once }), ...by };
}
