import { idlersFor } from "../methods/differential.ts";
import { gearsBySize, hasIdlers } from "../methods/owned-gears.ts";
import { type Effort, take } from "../number/effort.ts";
import { addCount, anyOf, type CountSet, noCounts } from "./count-set.ts";
import type { Lacking } from "./lacking.ts";
import { byProduct, byQuotient, everyTwo, quotientKey, type TwoGears } from "./two-gears.ts";
import { type WantedRatio, wantedRatios } from "./wanted-ratios.ts";

/** What gears of usual sizes would do of the counts that are missing, if they were bought. */
export interface GearTally {
  /** The sizes that were tried, ascending. */
  readonly sizes: readonly number[];
  /** What one gear does. */
  one(teeth: number): CountSet;
  /** What two do together: each alone, and both in one train. */
  two(first: number, second: number): CountSet;
}

/** Which trains there are to be, by how many pairs they have. */
type Pairs = 1 | 2;

/** What is tallied of trains: with how many gears bought there are idlers enough for one. */
interface Tallies {
  /** By one gear that is in the train, where it is all that is bought, and where another is bought too. */
  readonly ones: readonly [Map<number, CountSet>, Map<number, CountSet>];
  /** By two gears that are both in the train. */
  readonly twos: Map<number, CountSet>;
  /** By gears that are owned, once one or two gears more can be their idlers. */
  readonly any: readonly [CountSet, CountSet];
}

/**
 * Tallies what one or two gears would do beside those owned, by what their trains come to.
 *
 * A crank move wants the plate ratio p/q. With one new gear x that is a/x or x/b in one pair, x·a/(b·d)
 * or a·c/(x·b) in two, so that x follows from the owned ones by one division. With two it is x/y in
 * one pair; in two x·y/(b·d) or a·c/(x·y), where x·y follows, or x·a/(y·b), where x/y does: both are looked
 * up. Every train of one or two pairs is one of these.
 */
export function tallyGears(lacking: Lacking, sizes: readonly number[], effort: Effort): GearTally {
  const { counts, search } = lacking;
  const { head } = search.layout;
  const size = counts.length;
  const tallies: Tallies = {
    ones: [new Map(), new Map()],
    twos: new Map(),
    any: [noCounts(size), noCounts(size)],
  };
  const can = search.methods.includes("differential") && head.gearing !== null && size > 0;
  const ratios = can ? wantedRatios(lacking, sizes, effort) : [];
  const trains = trainsWith(lacking, sizes, tallies, effort);
  for (const ratio of ratios) if (take(effort, trains.steps)) trains.tally(ratio);
  const none = noCounts(size);
  const [alone, beside] = tallies.ones;
  return {
    sizes,
    one: (teeth) => anyOf(tallies.any[0], alone.get(teeth)),
    two: (first, second) =>
      anyOf(tallies.any[1], beside.get(first), beside.get(second), tallies.twos.get(keyOfTwo(first, second)) ?? none),
  };
}

/** Two gears as one number, whichever is named first: they have at most a thousand teeth. */
function keyOfTwo(first: number, second: number): number {
  return 1024 * Math.max(first, second) + Math.min(first, second);
}

/** Steps of work to look up one quotient, with its lowest terms. */
const stepsToLookUp = 3;

/** All trains that have a new gear or two in them, laid out to be looked up by the ratio they make. */
function trainsWith(
  { counts, search: { layout } }: Lacking,
  sizes: readonly number[],
  { ones, twos, any }: Tallies,
  effort: Effort,
) {
  const { head, box } = layout;
  const owned = gearsBySize(head.gears);
  const ownedSizes = [...owned.keys()];
  const isNew = new Set(sizes);
  const ownedTwos = everyTwo(owned);
  const newTwos = everyTwo(new Map(sizes.map((teeth) => [teeth, 2])));
  const newProducts = byProduct(newTwos);
  const newQuotients = byQuotient(newTwos);
  // Whatever two owned gears come to, each quotient once.
  const ownedQuotients = [...byQuotient(ownedTwos).values()].flatMap(([two]) => (two === undefined ? [] : [two]));

  const add = (tally: Map<number, CountSet>, key: number, { places }: WantedRatio) => {
    let set = tally.get(key);
    if (set === undefined) {
      set = noCounts(counts.length);
      tally.set(key, set);
    }
    take(effort, places.length >> 2);
    for (const place of places) addCount(set, place);
  };
  /** Whether there are idlers enough for a train once so many gears are bought. */
  const canIdle = ({ with: isWith }: WantedRatio, pairs: Pairs, bought: number) =>
    head.gearing !== null && hasIdlers(head, 2 * pairs - bought, idlersFor(head.gearing, pairs, isWith));
  const offerOne = (teeth: number, pairs: Pairs, ratio: WantedRatio) => {
    if (!isNew.has(teeth)) return;
    if (canIdle(ratio, pairs, 1)) add(ones[0], teeth, ratio);
    if (canIdle(ratio, pairs, 2)) add(ones[1], teeth, ratio);
  };
  const offerTwo = ([first, second]: TwoGears, pairs: Pairs, ratio: WantedRatio) => {
    if (canIdle(ratio, pairs, 2)) add(twos, keyOfTwo(first, second), ratio);
  };
  const offerOwned = (pairs: Pairs, ratio: WantedRatio) => {
    if (canIdle(ratio, pairs, 0) || !canIdle(ratio, pairs, 2)) return;
    if (box.trains(pairs, ratio.numerator, ratio.denominator).length === 0) return;
    for (const bought of [1, 2] as const) {
      if (canIdle(ratio, pairs, bought)) for (const place of ratio.places) addCount(any[bought - 1] as CountSet, place);
    }
  };

  const onePair = (ratio: WantedRatio) => {
    const { numerator, denominator } = ratio;
    for (const teeth of ownedSizes) {
      if (teeth % denominator === 0) offerOne((teeth / denominator) * numerator, 1, ratio);
      if (teeth % numerator === 0) offerOne((teeth / numerator) * denominator, 1, ratio);
    }
    for (const two of newQuotients.get(quotientKey(numerator, denominator)) ?? []) offerTwo(two, 1, ratio);
  };
  /** The two owned gears are on one side, and what is new on the other; `over` and `under` are the ratio of the other to it. */
  const againstTwo = (over: number, under: number, ratio: WantedRatio) => {
    for (const [one, other] of ownedTwos) {
      const product = one * other;
      if (product % under !== 0) continue;
      const wanted = (product / under) * over;
      for (const beside of ownedSizes) {
        if (wanted % beside !== 0) continue;
        const used = Number(one === beside) + Number(other === beside);
        if (used < (owned.get(beside) ?? 0)) offerOne(wanted / beside, 2, ratio);
      }
      for (const two of newProducts.get(wanted) ?? []) offerTwo(two, 2, ratio);
    }
  };
  const tally = (ratio: WantedRatio) => {
    const { numerator, denominator } = ratio;
    offerOwned(1, ratio);
    offerOwned(2, ratio);
    onePair(ratio);
    againstTwo(numerator, denominator, ratio);
    againstTwo(denominator, numerator, ratio);
    for (const [driver, driven] of ownedQuotients) {
      const wanted = newQuotients.get(quotientKey(numerator * driven, denominator * driver));
      for (const two of wanted ?? []) offerTwo(two, 2, ratio);
    }
  };
  return { tally, steps: 20 + 2 * ownedTwos.length + stepsToLookUp * ownedQuotients.length };
}
