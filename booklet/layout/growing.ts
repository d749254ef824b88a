import type { Block, Part } from "../content/blocks.ts";
import type { FigureBlock } from "../content/figure-blocks.ts";

/** By how much each drawing is larger than it need be; those not named are as large as they need be. */
export type Grown = ReadonlyMap<Block, number>;

/** Nothing grows. */
export const ungrown: Grown = new Map();

/** From one size to the next, and how many there are. */
const step = 1.07;
const mostSteps = 20;

/** What must not change while drawings grow: on how many pages a part stands, and where its names lead. */
export interface Standing {
  readonly sheets: readonly unknown[];
  readonly anchors: ReadonlyMap<string, number>;
}

/**
 * Lets the drawings of a part grow to fill what their pages leave: all alike as far as they can, then
 * each by itself, and none so far that anything of the part moves to another page.
 *
 * @param stands - Where everything stands with drawings no larger than they need be.
 * @param set - Tells where it stands with drawings of such sizes.
 */
export function grownToFill(part: Part, stands: Standing, set: (grown: Grown) => Standing): Grown {
  const growing = part.blocks.filter((block): block is FigureBlock => block.kind === "figure" && block.grows === true);
  if (growing.length === 0) return ungrown;
  const holds = (grown: Grown) => alike(stands, set(grown));
  const together = (steps: number): Grown => new Map(growing.map((block) => [block, step ** steps]));
  const common = mostThatHold(0, (steps) => holds(together(steps)));
  return growing.reduce((grown, block) => {
    const alone = (steps: number): Grown => new Map(grown).set(block, step ** steps);
    return alone(mostThatHold(common, (steps) => holds(alone(steps))));
  }, together(common));
}

/** The most steps that hold, found by halving: what holds with many holds with fewer. */
function mostThatHold(from: number, holds: (steps: number) => boolean): number {
  let [good, bad] = [from, mostSteps + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

function alike(one: Standing, other: Standing): boolean {
  return one.sheets.length === other.sheets.length && [...one.anchors].every(([name, page]) => other.anchors.get(name) === page);
}
