import type { FaultList } from "../number/fault-list.ts";
import type { Head } from "./head.ts";

/** Checks a head that no crank turns: nothing that a crank turns or moves over, and something that the spindle is set by. */
export function checkWithoutCrank(head: Head, faults: FaultList): void {
  const ofCrank: Readonly<Record<string, boolean>> = {
    plates: head.plates.length > 0,
    rearPin: head.rearPin,
    gears: head.gears.length > 0,
    idlers: head.idlers !== null,
    gearing: head.gearing !== null,
    dial: head.dial !== null,
    mounted: head.mounted !== null,
    wormErrorArcSeconds: head.wormErrorArcSeconds !== undefined,
    smallCrank: head.smallCrank !== undefined,
  };
  for (const [place, isThere] of Object.entries(ofCrank))
    if (isThere) faults.add("conflict", place, "goes with a crank; give a worm ratio, or leave it out");
  if (head.directPlates.length === 0 && head.ring === null)
    faults.add(
      "missing",
      "directPlates",
      "there are none, nor a ring, so no place can be set; list the plates, collars or gears on the spindle, or its ring",
    );
}
