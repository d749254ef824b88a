import type { Effort } from "../number/effort.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { pairsOn } from "./circle-pairs.ts";
import { firstThatServes } from "./first-that-serves.ts";
import { byHandling } from "./handling.ts";
import type { Law } from "./law.ts";
import { type CrankTurns, crankTurns, type HeadLayout, partOfTurn } from "./layout.ts";
import { neededDivisors } from "./needed-divisors.ts";
import { lacksCircles } from "./owned-circles.ts";

/**
 * Compound indexing: the crank over one circle, and crank and plate together, counted at the rear
 * pin over another circle of the same face.
 *
 * @see *Machinery's Handbook*, 27th ed. (2004), p. 1995, on parts of a turn by two circles.
 */
export const compound: Law<"compound"> = {
  places: { compound: 6 },
  plain: true,
  find(_, layout, trial) {
    const { effort, isAnyGood } = trial;
    const find = isAnyGood ? anyCompound : compoundSettings;
    return firstThatServes((on, move) => find(on, move, crankTurns(on, move), effort.compound), layout, trial);
  },
  lacks({ plate, face, circle, second }, head) {
    // From elsewhere a setting may come without it.
    if (!second) return "has no second move";
    return lacksCircles(head, plate, face, [circle, second.circle]) ?? (head.rearPin ? null : "needs a rear pin");
  },
  whyNot(layout, target, teethPerMove) {
    if (!layout.head.rearPin) return { code: "without", part: "rear-pin" };
    return { code: "no-multiple", of: "two-circles", multiplesOf: neededDivisors(layout, target, teethPerMove), owned: [] };
  },
};

/**
 * The compound settings for a move that turn the crank by `wanted`, be it the whole move or only near it.
 *
 * The law: t = R·k/N = turns + a/C1 ± b/C2. With L the least common multiple of the circles, the
 * rest of a turn is u/L, and a·(L/C1) + b·(L/C2) ≡ u (mod L) is solved by the extended Euclid
 * identity. It has a solution exactly when the denominator of t divides L; where it divides C1 or
 * C2 alone, simple indexing serves and nothing is returned for that pair.
 *
 * @returns Every pair of circles, either way round and in both directions of the second part, in
 * order of handling; fewer once the effort is cut.
 */
export function compoundSettings(layout: HeadLayout, move: Move, wanted: CrankTurns, effort: Effort): SettingBy<"compound">[] {
  return [...unsorted(layout, move, wanted, effort)].sort(byHandling(layout.mounted));
}

/** One of the settings, whichever comes first; none where there is none. */
const anyCompound: typeof compoundSettings = (...move) => {
  const { value } = unsorted(...move).next();
  return value === undefined ? [] : [value];
};

function* unsorted(layout: HeadLayout, move: Move, wanted: CrankTurns, effort: Effort): Generator<SettingBy<"compound">> {
  if (!layout.head.rearPin) return;
  const spindlePerMove = partOfTurn(move.divisions, move.teeth);
  for (const plate of layout.head.plates) {
    for (const face of plate.faces) {
      for (const { first, turns, spaces, second } of pairsOn(face, wanted, effort)) {
        yield {
          method: "compound",
          teethPerMove: move.teeth,
          wormRatio: layout.wormRatio,
          spindlePerMove,
          turns,
          spaces,
          circle: first,
          plate: plate.name,
          face: face.name,
          armsEnclose: spaces + 1,
          plateStopPin: "out",
          second,
        };
      }
    }
  }
}
