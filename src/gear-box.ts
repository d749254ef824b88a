import { arrange, type GearTrain } from "./gear-train.ts";
import { divisors, gcd } from "./ratio.ts";

/** The trains that make one ratio. */
export interface Trains {
  readonly onePair: readonly GearTrain[];
  /** Those that fit before those that may foul. */
  readonly twoPairs: readonly GearTrain[];
}

/** The change gears of a head, ready to be asked which trains give a ratio. */
export interface GearBox {
  /** The trains with drivers : driven = numerator : denominator, in lowest terms; null where there is none. */
  trains(numerator: number, denominator: number): Trains | null;
  /** What is left of a number when every factor that the gears have is taken out of it. */
  foreignPart(value: number): number;
  /** What the drivers of so many pairs multiply to, and likewise the driven gears; ascending, each once. */
  products(pairs: 1 | 2): readonly number[];
}

/**
 * Sorts the change gears once, so that trains are looked up and not searched for.
 *
 * A ratio p/q in lowest terms is made by products P = p·m of two drivers and Q = q·m of two
 * driven gears. Only products of two gears are kept, not trains of four: sixty gears make
 * 1,770 products and some four million trains. What divides no product cannot be p or q, which
 * sends most ratios away at once; the rest are worked out when first asked for.
 *
 * @param gears - Teeth of each gear owned, duplicates counted.
 */
export function gearBox(gears: readonly number[]): GearBox {
  const owned = new Map<number, number>();
  for (const teeth of gears) owned.set(teeth, (owned.get(teeth) ?? 0) + 1);
  const box: Contents = { owned, sizes: [...owned.keys()].sort((a, b) => b - a) };
  const asked = new Map<number, Trains | null>();
  const foreign = new Map<number, number>();
  let known: PairProducts | null = null;
  const pairs = (): PairProducts => {
    known ??= pairProducts(box);
    return known;
  };

  return {
    trains(numerator, denominator) {
      const { terms } = pairs();
      if (numerator >= terms.length || denominator >= terms.length) return null;
      if (terms[numerator] !== 1 || terms[denominator] !== 1) return null;
      const key = numerator * terms.length + denominator;
      let trains = asked.get(key);
      if (trains === undefined) {
        trains = findTrains(numerator, denominator, pairs(), box);
        asked.set(key, trains);
      }
      return trains;
    },
    foreignPart(value) {
      let part = foreign.get(value);
      if (part === undefined) {
        part = box.sizes.reduce(withoutFactorsOf, value);
        foreign.set(value, part);
      }
      return part;
    },
    products: (ofPairs) => (ofPairs === 1 ? box.sizes.toReversed() : pairs().products),
  };
}

/** Each gear size, the largest first, and how many there are of it. */
interface Contents {
  readonly sizes: readonly number[];
  readonly owned: ReadonlyMap<number, number>;
}

type Pair = readonly [number, number];

interface PairProducts {
  /** Products of two gears, ascending. */
  readonly products: readonly number[];
  /** The pairs that make each product, the larger gear first. */
  readonly pairsOf: ReadonlyMap<number, readonly Pair[]>;
  /** 1 at each number that divides some product: no other can be a term of a ratio. */
  readonly terms: Uint8Array;
}

function pairProducts({ sizes, owned }: Contents): PairProducts {
  const pairsOf = new Map<number, Pair[]>();
  for (const [index, larger] of sizes.entries()) {
    for (const smaller of sizes.slice((owned.get(larger) ?? 0) > 1 ? index : index + 1)) {
      const pairs = pairsOf.get(larger * smaller);
      if (pairs) pairs.push([larger, smaller]);
      else pairsOf.set(larger * smaller, [[larger, smaller]]);
    }
  }
  const products = [...pairsOf.keys()].sort((a, b) => a - b);
  const terms = new Uint8Array((products.at(-1) ?? 0) + 1);
  // The divisors of a product are the products of a divisor of either gear.
  const divisorsOf = new Map(sizes.map((teeth) => [teeth, divisors(teeth)]));
  for (const [[larger, smaller] = [1, 1]] of pairsOf.values()) {
    for (const one of divisorsOf.get(larger) ?? []) for (const other of divisorsOf.get(smaller) ?? []) terms[one * other] = 1;
  }
  return { products, pairsOf, terms };
}

function findTrains(numerator: number, denominator: number, { products, pairsOf }: PairProducts, box: Contents): Trains | null {
  const onePair: GearTrain[] = [];
  for (const driver of box.sizes) {
    if (driver % numerator !== 0) continue;
    const driven = (driver / numerator) * denominator;
    if (areOwned([driver, driven], box)) onePair.push({ drivers: [driver], driven: [driven], mayFoul: null });
  }
  const twoPairs: GearTrain[] = [];
  for (const product of products) {
    if (product % numerator !== 0) continue;
    for (const driven of pairsOf.get((product / numerator) * denominator) ?? []) {
      for (const drivers of pairsOf.get(product) ?? []) {
        if (areOwned([...drivers, ...driven], box)) twoPairs.push(arrange(drivers, driven));
      }
    }
  }
  if (onePair.length + twoPairs.length === 0) return null;
  return { onePair, twoPairs: twoPairs.sort((a, b) => Number(a.mayFoul !== null) - Number(b.mayFoul !== null)) };
}

function areOwned(gears: readonly number[], { owned }: Contents): boolean {
  return gears.every((teeth) => gears.filter((other) => other === teeth).length <= (owned.get(teeth) ?? 0));
}

function withoutFactorsOf(value: number, teeth: number): number {
  let rest = value;
  for (let factor = gcd(rest, teeth); factor > 1; factor = gcd(rest, factor)) rest /= factor;
  return rest;
}
