import type { Head } from "./head.ts";

/**
 * What the hand turns: a head without index plates has a handwheel in place of a crank, and one without a worm
 * is turned by its spindle.
 */
export function handOf({ plates, wormRatio }: Pick<Head, "plates" | "wormRatio">): "crank" | "handwheel" | "spindle" {
  if (wormRatio === null) return "spindle";
  return plates.length > 0 ? "crank" : "handwheel";
}
