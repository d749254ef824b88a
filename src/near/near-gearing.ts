import { allCrankMoves, type CrankMove } from "../methods/crank-moves.ts";
import { gearedSetting } from "../methods/differential.ts";
import type { GearBox } from "../methods/gear-box.ts";
import type { GearTrain } from "../methods/gear-train.ts";
import type { Bench } from "../methods/layout.ts";
import { byHandling } from "../methods/preference.ts";
import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { closest } from "./closest.ts";
import { type Products, quotientsWithin } from "./quotients.ts";

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
 * turns the work by t/(R − g), and N moves miss k turns by k·(g − g*)/(R − g). To miss by e or less,
 * |g − g*| may be at most e·(R + G)/k, G the greatest plate ratio. So with Q for the driven gears
 * only the products P for the drivers in a window about g*·Q are looked at, and as e is that of the
 * nearest so far, the window soon holds one or none. A crank move whose g* is beyond G can serve only
 * if it is the first such on its circle, and these are tried too. A ratio of the other sign than
 * g* misses by more than a plate that stands still, which is simple indexing.
 *
 * @returns The easiest of the nearest to handle, exact or not; null where none betters the bar.
 */
export function nearGearing(bench: Bench, move: Move, { box, products, choice, bar }: TrainWanted): UnprovedSetting | null {
  const { gearing, gears } = bench.head;
  if (gearing === null || gears.length < 2 || move.teeth > move.divisions) return null;
  const [worm, greatest] = [bench.worm.n / bench.worm.d, bench.plateTurns.n / bench.plateTurns.d];
  const nearest = closest<readonly [CrankMove, GearTrain]>(bar);

  const consider = (wanted: CrankMove, drivers: number, driven: number): void => {
    const net = worm - (wanted.with ? drivers : -drivers) / driven;
    if (drivers * bench.plateTurns.d > driven * bench.plateTurns.n || net <= 0) return;
    const off = Math.abs(drivers * wanted.denominator - driven * wanted.numerator) / (driven * wanted.denominator);
    const closing = (move.teeth * off) / net;
    if (!nearest.takes(closing)) return;
    const common = gcd(drivers, driven);
    const ratio = { numerator: drivers / common, denominator: driven / common };
    const trains = box.trains(choice.pairs, ratio.numerator, ratio.denominator);
    const train = trains.find(({ mayFoul }) => (mayFoul === null) === choice.fits);
    if (train) nearest.offer(closing, [{ ...wanted, ...ratio }, train]);
  };

  for (const wanted of allCrankMoves(bench, move)) {
    const ratio = wanted.numerator / wanted.denominator;
    const window = (nearest.most() * (worm + greatest)) / move.teeth;
    for (const [drivers, driven] of quotientsWithin(products, ratio - window, ratio + window)) consider(wanted, drivers, driven);
  }
  const settings = nearest.candidates.map(([wanted, train]) => gearedSetting(bench, move, gearing, wanted, train));
  return settings.sort(byHandling(bench.mounted))[0] ?? null;
}
