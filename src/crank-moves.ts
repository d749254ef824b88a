import type { GearBox } from "./gear-box.ts";
import type { GearTrain } from "./gear-train.ts";
import type { OwnedCircle } from "./head.ts";
import type { Bench, Move } from "./move.ts";
import { gcd, withoutFactorsOf } from "./ratio.ts";

/** A crank move with the plate ratio that makes it serve: numerator over denominator, lowest terms. */
export interface CrankMove {
  readonly turns: number;
  readonly spaces: number;
  readonly circle: number | null;
  readonly plate: string | null;
  readonly on: OwnedCircle;
  /** Whether the plate is to turn with the crank. */
  readonly with: boolean;
  readonly numerator: number;
  readonly denominator: number;
}

/** A crank move with the trains that make its plate ratio, one or more. */
export interface GearedMove extends CrankMove {
  readonly trains: readonly GearTrain[];
}

/**
 * The crank moves over all circles whose plate ratio g = R − N·t/k is made by trains of so many
 * pairs; whole turns once, on the first circle.
 *
 * For a move of h spaces, g = (R·C·k − N·h)/(C·k). A factor of C·k that no gear has must leave the
 * fraction, and so must divide N·h: only every so many-th h is looked at, on most circles few. Not
 * so a factor that is also below the line in a fractional R, where it may cancel against R.
 */
export function gearedMoves(bench: Bench, move: Move, box: GearBox, pairs: 1 | 2): GearedMove[] {
  const found: GearedMove[] = [];
  for (const on of bench.circles) {
    const { full, parts, perSpace, reach } = circleTerms(bench, move, on);
    const foreign = withoutFactorsOf(box.foreignPart(parts), bench.worm.d);
    const step = foreign === 1 ? 1 : foreign / gcd(foreign, perSpace);
    const last = Math.floor((full + reach) / perSpace);
    for (let spaces = Math.ceil(Math.max(1, (full - reach) / perSpace) / step) * step; spaces <= last; spaces += step) {
      const ratio = full - perSpace * spaces;
      const size = Math.abs(ratio);
      // A plate that stands still is simple indexing.
      if (size === 0 || size > reach) continue;
      const common = gcd(size, parts);
      const trains = box.trains(pairs, size / common, parts / common);
      if (trains.length === 0 || (spaces % on.holes === 0 && on !== bench.circles[0])) continue;
      found.push(crankMove(on, spaces, ratio > 0, size / common, parts / common, trains));
    }
  }
  return found;
}

/**
 * Every crank move within the greatest plate ratio, and the first beyond it at either end of each
 * circle; whole turns once, on the first circle.
 */
export function* allCrankMoves(bench: Bench, move: Move): Generator<CrankMove> {
  for (const on of bench.circles) {
    const { full, parts, perSpace, reach } = circleTerms(bench, move, on);
    const last = Math.floor((full + reach) / perSpace) + 1;
    for (let spaces = Math.max(1, Math.ceil((full - reach) / perSpace) - 1); spaces <= last; spaces += 1) {
      const ratio = full - perSpace * spaces;
      if (ratio === 0 || (spaces % on.holes === 0 && on !== bench.circles[0])) continue;
      const common = gcd(ratio, parts);
      yield crankMove(on, spaces, ratio > 0, Math.abs(ratio) / common, parts / common, noTrains);
    }
  }
}

const noTrains: readonly GearTrain[] = Object.freeze([]);

/** The terms of g = (full − perSpace·h)/parts on a circle, in safe integers; |g| is kept where its numerator is within `reach`. */
function circleTerms({ worm, plateTurns }: Bench, { divisions, teeth }: Move, { holes }: OwnedCircle) {
  const parts = worm.d * holes * teeth;
  return {
    full: worm.n * holes * teeth,
    parts,
    perSpace: divisions * worm.d,
    reach: Math.floor((plateTurns.n * parts) / plateTurns.d),
  };
}

/** Whole turns come back to the same hole on any circle, so they name none. */
function crankMove(
  on: OwnedCircle,
  allSpaces: number,
  isWith: boolean,
  numerator: number,
  denominator: number,
  trains: readonly GearTrain[],
): GearedMove {
  const spaces = allSpaces % on.holes;
  return {
    turns: (allSpaces - spaces) / on.holes,
    spaces,
    circle: spaces === 0 ? null : on.holes,
    plate: spaces === 0 ? null : on.plate,
    on,
    with: isWith,
    numerator,
    denominator,
    trains,
  };
}
