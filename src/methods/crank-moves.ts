import type { OwnedCircle } from "../head/head.ts";
import { type Effort, take } from "../number/effort.ts";
import { gcd, withoutFactorsOf } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import { type GearBox, noTrains } from "./gear-box.ts";
import type { GearTrain } from "./gear-train.ts";

/** A ratio of whole numbers in lowest terms. */
export interface Terms {
  readonly n: number;
  readonly d: number;
}

/** What of a head its crank moves depend on. */
export interface CrankOn {
  readonly worm: Terms;
  readonly plateTurns: Terms;
  readonly circles: readonly OwnedCircle[];
}

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

/** Finds the crank moves whose plate ratio is made by trains of so many pairs: all of them, unless the effort is cut. */
export type GearedMoves = (move: Move, pairs: 1 | 2, effort: Effort) => GearedMove[];

/** Steps of work to begin on a circle. */
const stepsToBegin = 4;

/** Steps of work to try a crank move: the remainders that tell a common divisor of large numbers take up to ten times as long. */
function triedSteps(parts: number): number {
  return Math.min(10, 1 + Math.floor(parts / 2 ** 23));
}

/** Steps of work to keep one crank move and put it in its place among the others. */
const stepsToKeep = 30;

/**
 * Lays out a head to find the crank moves over all circles whose plate ratio g = R − N·t/k is made by
 * trains of its gears; whole turns once, on the first circle.
 *
 * For a move of h spaces, g = (R·C·k − N·h)/(C·k). A factor of C·k that no gear has must leave the
 * fraction, and so must divide N·h: only every so many-th h is looked at, on most circles few. Not
 * so a factor that is also below the line in a fractional R, where it may cancel against R.
 */
export function gearedMovesOn(head: CrankOn, box: GearBox): GearedMoves {
  const foreignTo = (value: number) => withoutFactorsOf(box.foreignPart(value), head.worm.d);
  let laidOut: readonly (CircleTerms & { readonly foreign: number })[] | undefined;
  return ({ divisions, teeth }, pairs, effort) => {
    const found: GearedMove[] = [];
    if (!take(effort, stepsToBegin * head.circles.length)) return found;
    laidOut ??= circleTerms(head, 1).map((terms) => ({ ...terms, foreign: foreignTo(terms.parts) }));
    const perSpace = divisions * head.worm.d;
    const stepsToLookUp = lookUpSteps(box, pairs);
    const foreignTeeth = foreignTo(teeth);
    for (const circle of laidOut) {
      const { on } = circle;
      const { full, parts, reach } = teeth === 1 ? circle : termsOf(head, on, teeth);
      // What no gear has is left of a product where it is left of either number.
      const foreign = circle.foreign * foreignTeeth;
      const step = foreign === 1 ? 1 : foreign / gcd(foreign, perSpace);
      const last = Math.floor((full + reach) / perSpace);
      const stepsToTry = triedSteps(parts);
      for (let spaces = Math.ceil(Math.max(1, (full - reach) / perSpace) / step) * step; spaces <= last; spaces += step) {
        if (!take(effort, stepsToTry)) return found;
        const ratio = full - perSpace * spaces;
        const size = Math.abs(ratio);
        // A plate that stands still is simple indexing.
        if (size === 0 || size > reach) continue;
        const common = gcd(size, parts);
        const trains = box.trains(pairs, size / common, parts / common);
        if (trains !== noTrains && !take(effort, stepsToLookUp + trains.length + stepsToKeep)) return found;
        if (trains.length === 0 || (spaces % on.holes === 0 && on !== head.circles[0])) continue;
        found.push(crankMove(on, spaces, ratio > 0, size / common, parts / common, trains));
      }
    }
    return found;
  };
}

/** Steps of work to find the trains of a ratio that passes the first look: all products are gone through. */
export function lookUpSteps(box: GearBox, pairs: 1 | 2): number {
  return box.products(pairs).length >> 4;
}

/**
 * Every crank move within the greatest plate ratio, and the first beyond it at either end of each
 * circle; whole turns once, on the first circle.
 */
export function* allCrankMoves(head: CrankOn, { divisions, teeth }: Move): Generator<CrankMove> {
  const perSpace = divisions * head.worm.d;
  for (const { on, full, parts, reach } of circleTerms(head, teeth)) {
    const last = Math.floor((full + reach) / perSpace) + 1;
    for (let spaces = Math.max(1, Math.ceil((full - reach) / perSpace) - 1); spaces <= last; spaces += 1) {
      const ratio = full - perSpace * spaces;
      if (ratio === 0 || (spaces % on.holes === 0 && on !== head.circles[0])) continue;
      const common = gcd(ratio, parts);
      yield crankMove(on, spaces, ratio > 0, Math.abs(ratio) / common, parts / common, noTrains);
    }
  }
}

/** The terms of g = (full − N·d·h)/parts on a circle, in safe integers, d being below the line in R. */
interface CircleTerms {
  readonly on: OwnedCircle;
  readonly full: number;
  readonly parts: number;
  /** |g| is kept where the size of its numerator is within this. */
  readonly reach: number;
}

function circleTerms(head: CrankOn, teeth: number): readonly CircleTerms[] {
  return head.circles.map((on) => termsOf(head, on, teeth));
}

function termsOf({ worm, plateTurns }: CrankOn, on: OwnedCircle, teeth: number): CircleTerms {
  const parts = worm.d * on.holes * teeth;
  return { on, full: worm.n * on.holes * teeth, parts, reach: Math.floor((plateTurns.n * parts) / plateTurns.d) };
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
