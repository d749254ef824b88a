import { allCrankMoves, type CrankMove, lookUpSteps } from "../methods/crank-moves.ts";
import { canIdle, gearedSetting } from "../methods/differential.ts";
import { visitWithin, windowSteps } from "../methods/gear-products.ts";
import type { GearTrain } from "../methods/gear-train.ts";
import { byGearedHandling } from "../methods/handling.ts";
import type { HeadLayout } from "../methods/layout.ts";
import { type Effort, take } from "../number/effort.ts";
import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { closest } from "./closest.ts";

/** A train to look for, and how near it must come. */
export interface TrainWanted {
  readonly pairs: 1 | 2;
  /** Whether one that fits, or one that may foul. */
  readonly fits: boolean;
  /** The closing error, in turns of the work, that it must better; above 0. */
  readonly bar: number;
  readonly effort: Effort;
}

/** What a search for the nearest train found. */
export interface NearTrain {
  /** The easiest of the nearest to handle, exact or not; null where none betters the bar. */
  readonly setting: SettingBy<"differential"> | null;
  /** Whether trains that were not to be taken came as near on the way: where none did, none of them betters what was found. */
  readonly othersMet: boolean;
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
 */
export function nearGearing(layout: HeadLayout, move: Move, { pairs, fits, bar, effort }: TrainWanted): NearTrain {
  const { gearing, gears } = layout.head;
  if (gearing === null || gears.length < 2 || move.teeth > move.divisions) return { setting: null, othersMet: false };
  const products = layout.box.quotients(pairs);
  const [worm, greatest] = [layout.worm.n / layout.worm.d, layout.plateTurns.n / layout.plateTurns.d];
  const nearest = closest<readonly [CrankMove, GearTrain]>(bar);
  const isWanted = ({ mayFoul }: GearTrain) => (mayFoul === null) === fits;
  let othersMet = false;
  const stepsToLookUp = lookUpSteps(layout.box, pairs);

  const consider = (wanted: CrankMove, drivers: number, driven: number): void => {
    const net = worm - (wanted.with ? drivers : -drivers) / driven;
    if (drivers * layout.plateTurns.d > driven * layout.plateTurns.n || net <= 0) return;
    const off = Math.abs(drivers * wanted.denominator - driven * wanted.numerator) / (driven * wanted.denominator);
    const closing = (move.teeth * off) / net;
    if (!nearest.takes(closing)) return;
    take(effort, stepsToLookUp);
    const common = gcd(drivers, driven);
    const ratio = { numerator: drivers / common, denominator: driven / common };
    const trains = layout.box.trains(pairs, ratio.numerator, ratio.denominator);
    othersMet ||= !trains.every(isWanted);
    const train = trains.find((each) => isWanted(each) && canIdle(layout.head, gearing, wanted, each));
    if (train) nearest.offer(closing, [{ ...wanted, ...ratio }, train]);
  };

  for (const wanted of allCrankMoves(layout, move)) {
    if (!take(effort, windowSteps(products))) break;
    const ratio = wanted.numerator / wanted.denominator;
    const window = (nearest.most() * (worm + greatest)) / move.teeth;
    visitWithin(products, ratio - window, ratio + window, (drivers, driven) => {
      consider(wanted, drivers, driven);
      return take(effort, 1);
    });
  }
  const easiest = byGearedHandling(layout.mounted);
  const [found] = nearest.candidates.toSorted(([a], [b]) => easiest(a, b));
  return { setting: found === undefined ? null : gearedSetting(layout, move, gearing, ...found), othersMet };
}
