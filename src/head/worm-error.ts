import type { FaultList } from "../number/fault-list.ts";
import type { Head } from "./head.ts";

/** Of worm and wheel, in arc-seconds: a degree, far worse than any head that indexes. */
export const mostWormError = 3600;

/** Checks what a spec says of worm and wheel; nothing where it says nothing, as most heads' papers do. */
export function readWormError(value: unknown, faults: FaultList): Pick<Head, "wormErrorArcSeconds"> {
  if (value === undefined) return {};
  return { wormErrorArcSeconds: faults.number(value, "wormErrorArcSeconds", 0, mostWormError, "arc-seconds") };
}
