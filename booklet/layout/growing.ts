import type { Block, Part } from "../content/blocks.ts";
import type { FigureBlock } from "../content/figure-blocks.ts";

/** By how much each drawing is larger than it need be; those not named are as large as they need be. */
export type Grown = ReadonlyMap<Block, number>;

/** Nothing grows. */
export const ungrown: Grown = new Map();

/** From one size to the next, and the largest. */
const step = 1.07;
const mostSteps = 20;

/** What must not change while drawings grow: on how many pages a part stands, and where its names lead. */
export interface Standing {
  readonly sheets: readonly unknown[];
  readonly anchors: ReadonlyMap<string, number>;
}

/**
 * Lets the drawings of a part grow to fill what their pages leave, all alike and each only so far
 * that nothing of the part moves to another page.
 *
 * @param set - Tells where everything stands with drawings of such sizes.
 */
export function grownToFill(part: Part, set: (grown: Grown) => Standing): Grown {
  let growing = part.blocks.filter((block): block is FigureBlock => block.kind === "figure" && block.grows === true);
  if (growing.length === 0) return ungrown;
  const stands = set(ungrown);
  let grown = ungrown;
  for (let steps = 1; steps <= mostSteps && growing.length > 0; steps += 1) {
    growing = growing.filter((block) => {
      const larger = new Map(grown).set(block, step ** steps);
      if (!alike(stands, set(larger))) return false;
      grown = larger;
      return true;
    });
  }
  return grown;
}

function alike(one: Standing, other: Standing): boolean {
  return one.sheets.length === other.sheets.length && [...one.anchors].every(([name, page]) => other.anchors.get(name) === page);
}
