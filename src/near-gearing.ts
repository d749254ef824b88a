import { closest } from "./closest.ts";
import { allCrankMoves, type CrankMove } from "./crank-moves.ts";
import { gearedSetting } from "./differential.ts";
import type { GearBox } from "./gear-box.ts";
import type { GearTrain } from "./gear-train.ts";
import type { Bench, Move } from "./move.ts";
import { byHandling } from "./preference.ts";
import { fromExact, gcd } from "./ratio.ts";
import type { UnprovedSetting } from "./setting.ts";

/** The products that gears make, with the place of every number among them. */
export interface Products {
  /** Ascending. */
  readonly values: readonly number[];
  /** At each number up to the greatest product: how many products are not above it. */
  readonly upTo: Int32Array;
}

/** Lays out the products of so many pairs for looking up. */
export function productsOf(box: GearBox, pairs: 1 | 2): Products {
  const values = box.products(pairs);
  const upTo = new Int32Array((values.at(-1) ?? 0) + 1);
  for (const value of values) upTo[value] = 1;
  for (let number = 1; number < upTo.length; number += 1) upTo[number] = (upTo[number] ?? 0) + (upTo[number - 1] ?? 0);
  return { values, upTo };
}

/** Which trains to take: how many pairs, and whether those that fit or those that may foul. */
export interface TrainChoice {
  readonly pairs: 1 | 2;
  readonly fits: boolean;
}

/** A train to look for: the gears as products, and how near it must come. */
export interface TrainWanted {
  readonly box: GearBox;
  /** For as many pairs as the choice says. */
  readonly products: Products;
  readonly choice: TrainChoice;
  /** The closing error, in turns of the work, that it must better; above 0. */
  readonly bar: number;
}

/**
 * The differential setting nearest to a move: over all circles, crank moves and trains.
 *
 * A crank move t wants the plate ratio g* = R − N·t/k. With a train of ratio g instead, one move
 * turns the work by t/(R − g), and N moves miss k turns by k·(g − g*)/(R − g). That grows with
 * |g − g*| on either side, so of the ratios P/Q with one Q the nearest are the first on either side
 * of g*: the first products P below and above g*·Q that make a train. A crank move whose g* is
 * beyond the greatest plate ratio can serve only if it is the first such on its circle, and these
 * are tried too. A ratio of the other sign than g* misses by more than a plate that stands still,
 * which is simple indexing.
 *
 * @returns The easiest of the nearest to handle, exact or not; null where none betters the bar.
 */
export function nearGearing(bench: Bench, move: Move, { box, products, choice, bar }: TrainWanted): UnprovedSetting | null {
  const { gearing } = bench.head;
  if (gearing === null || bench.head.gears.length < 2) return null;
  const greatest = fromExact(gearing.greatestPlateRatio).valueOf();
  const worm = bench.worm.n / bench.worm.d;
  const nearest = closest<readonly [CrankMove, GearTrain]>(bar);

  /** Whether the ratio is near enough but makes no train, so that the next one out is to be tried. */
  const goesOn = (wanted: CrankMove, drivers: number, driven: number): boolean => {
    const net = worm - (wanted.with ? drivers : -drivers) / driven;
    if (drivers > greatest * driven || net <= 0) return false;
    const off = Math.abs(drivers * wanted.denominator - driven * wanted.numerator) / (driven * wanted.denominator);
    const closing = (move.teeth * off) / net;
    if (!nearest.takes(closing)) return false;
    const common = gcd(drivers, driven);
    const ratio = { numerator: drivers / common, denominator: driven / common };
    const train = box
      .trains(choice.pairs, ratio.numerator, ratio.denominator)
      .find(({ mayFoul }) => (mayFoul === null) === choice.fits);
    if (train === undefined) return true;
    nearest.offer(closing, [{ ...wanted, ...ratio }, train]);
    return false;
  };

  const { values, upTo } = products;
  for (const wanted of allCrankMoves(bench, move)) {
    const ratio = Math.min(wanted.numerator / wanted.denominator, greatest);
    for (const driven of values) {
      let above = upTo[Math.min(Math.floor(driven * ratio), upTo.length - 1)] ?? 0;
      let below = above - 1;
      while (below >= 0 && goesOn(wanted, values[below] ?? 0, driven)) below -= 1;
      while (above < values.length && goesOn(wanted, values[above] ?? 0, driven)) above += 1;
    }
  }
  const settings = nearest.candidates.map(([wanted, train]) => gearedSetting(bench, move, gearing, wanted, train));
  return settings.sort(byHandling(bench.mounted))[0] ?? null;
}
