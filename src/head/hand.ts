import type { Head } from "./head.ts";

/** What the hand turns: a head without index plates has a handwheel in place of a crank. */
export function handOf({ plates }: Pick<Head, "plates">): "crank" | "handwheel" {
  return plates.length > 0 ? "crank" : "handwheel";
}
