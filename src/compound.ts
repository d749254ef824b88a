import { type Bench, type CrankTurns, crankMove, crankTurns, type Move, settingOf } from "./move.ts";
import type { Face } from "./plate.ts";
import { byHandling } from "./preference.ts";
import { floorMod, gcd, inverseModulo, lcm } from "./ratio.ts";
import type { SecondMove, UnprovedSetting } from "./setting.ts";

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
  if (!bench.head.rearPin) return [];
  const wanted = crankTurns(bench, move);
  const base = { ...settingOf("compound", bench, move), plateStopPin: "out" as const };
  const found: UnprovedSetting[] = [];
  for (const plate of bench.head.plates) {
    for (const face of plate.faces) {
      for (const { first, turns, spaces, second } of pairsOn(face, wanted)) {
        found.push({ ...base, ...crankMove(turns, spaces, { plate: plate.name, face: face.name, holes: first }), second });
      }
    }
  }
  return found.sort(byHandling(bench.mounted));
}

interface Pairing {
  readonly first: number;
  readonly turns: number;
  readonly spaces: number;
  readonly second: SecondMove;
}

function* pairsOn({ circles }: Face, wanted: CrankTurns): Generator<Pairing> {
  for (const first of circles) {
    if (first % wanted.parts === 0) continue;
    for (const second of circles) {
      if (second === first || second % wanted.parts === 0) continue;
      if (lcm(first, second) % wanted.parts === 0) yield* solvePair(first, second, wanted);
    }
  }
}

function* solvePair(first: number, second: number, { turns, part, parts }: CrankTurns): Generator<Pairing> {
  const common = gcd(first, second);
  const [oneOfFirst, oneOfSecond] = [second / common, first / common];
  const whole = first * oneOfFirst;
  const rest = (whole / parts) * part;
  const start = floorMod(rest * inverseModulo(oneOfFirst, oneOfSecond), oneOfSecond);
  // The solutions repeat every first/common holes, so there are `common` of them.
  for (let spaces = start; spaces < first; spaces += oneOfSecond) {
    const onward = floorMod((rest - spaces * oneOfFirst) / oneOfSecond, second);
    // spaces/first + onward/second is rest/whole, or one turn more.
    const turnsOnward = spaces * oneOfFirst + onward * oneOfSecond > rest ? turns - 1 : turns;
    if (turnsOnward >= 0)
      yield { first, turns: turnsOnward, spaces, second: { spaces: onward, circle: second, direction: "with" } };
    yield { first, turns: turnsOnward + 1, spaces, second: { spaces: second - onward, circle: second, direction: "against" } };
  }
}
