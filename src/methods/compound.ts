import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { pairsOn } from "./circle-pairs.ts";
import { type Bench, type CrankTurns, crankSetting, crankTurns } from "./layout.ts";
import { byHandling } from "./preference.ts";

/**
 * Compound indexing: the crank over one circle, then crank and plate together, counted at the
 * rear pin over another circle of the same face.
 *
 * The law: t = R·k/N = turns + a/C1 ± b/C2. With L the least common multiple of the circles, the
 * rest of a turn is u/L, and a·(L/C1) + b·(L/C2) ≡ u (mod L) is solved by the extended Euclid
 * identity. It has a solution exactly when the denominator of t divides L; where it divides C1 or
 * C2 alone, simple indexing serves and nothing is returned for that pair.
 *
 * @returns Every pair of circles, either way round and in both directions of the second part.
 * @see *Machinery's Handbook*, 27th ed. (2004), p. 1995, on parts of a turn by two circles.
 */
export function compound(bench: Bench, move: Move): UnprovedSetting[] {
  return compoundOf(bench, move, crankTurns(bench, move));
}

/** The compound settings for a move that turn the crank by `wanted`, be it the whole move or only near it. */
export function compoundOf(bench: Bench, move: Move, wanted: CrankTurns): UnprovedSetting[] {
  if (!bench.head.rearPin) return [];
  const found: UnprovedSetting[] = [];
  for (const plate of bench.head.plates) {
    for (const face of plate.faces) {
      for (const { first, turns, spaces, second } of pairsOn(face, wanted)) {
        const on = { plate: plate.name, face: face.name, holes: first };
        found.push({ ...crankSetting("compound", "out", bench, move, { turns, spaces, on }), second });
      }
    }
  }
  return found.sort(byHandling(bench.mounted));
}
