import { countOf, divisors, withoutFactorsOf } from "../number/ratio.ts";
import { layOutProducts, type Products } from "./gear-products.ts";
import { arrange, type GearTrain } from "./gear-train.ts";
import { gearsBySize } from "./owned-gears.ts";

/** The change gears of a head, ready to be asked which trains give a ratio. */
export interface GearBox {
  /**
   * The trains of so many pairs with drivers : driven = numerator : denominator, in lowest terms.
   * Those that fit come before those that may foul.
   */
  trains(pairs: 1 | 2, numerator: number, denominator: number): readonly GearTrain[];
  /** What is left of a number when every factor that the gears have is taken out of it. */
  foreignPart(value: number): number;
  /** What the drivers of so many pairs multiply to, and likewise the driven gears; ascending, each once. */
  products(pairs: 1 | 2): readonly number[];
  /** The same laid out, to look up their quotients. */
  quotients(pairs: 1 | 2): Products;
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
 *
 * @example
 * ```ts
 * gearBox([24, 48, 72]).trains(1, 2, 1)[0].drivers; // [48]
 * ```
 */
export function gearBox(gears: readonly number[]): GearBox {
  const owned = gearsBySize(gears);
  const box: Contents = { owned, sizes: [...owned.keys()].sort((a, b) => b - a) };
  const kinds = { 1: onePairs(box), 2: null as Pairs | null };
  const foreign = new Map<number, number>();
  const pairsOf = (pairs: 1 | 2): Pairs => {
    if (pairs === 1) return kinds[1];
    kinds[2] ??= twoPairs(box);
    return kinds[2];
  };

  return {
    trains(pairs, numerator, denominator) {
      const { terms, asked, find } = pairsOf(pairs);
      if (numerator >= terms.length || denominator >= terms.length) return noTrains;
      if (terms[numerator] !== 1 || terms[denominator] !== 1) return noTrains;
      const key = numerator * terms.length + denominator;
      let trains = asked.get(key);
      if (trains === undefined) {
        trains = find(numerator, denominator);
        pairsOf(pairs).kept += 1 + trains.length;
        if (pairsOf(pairs).kept > mostKept) forget(pairsOf(pairs));
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
    products: (pairs) => pairsOf(pairs).products,
    quotients: (pairs) => laidOut(pairsOf(pairs)),
  };
}

/** The products of pairs laid out for quotients, when first asked for. */
function laidOut(pairs: Pairs): NonNullable<Pairs["laidOut"]> {
  pairs.laidOut ??= layOutProducts(pairs.products);
  return pairs.laidOut;
}

/** What comes back at once for a ratio whose terms divide no product of the gears. */
export const noTrains: readonly GearTrain[] = Object.freeze([]);

/** So many trains and numbers are kept at most: gears that are asked many times must not keep more and more. */
const mostKept = 50_000;

function forget(pairs: Pairs): void {
  pairs.asked.clear();
  pairs.kept = 0;
}

/** Each gear size, the largest first, and how many there are of it. */
interface Contents {
  readonly sizes: readonly number[];
  readonly owned: ReadonlyMap<number, number>;
}

/** The trains of one number of pairs. */
interface Pairs {
  /** What their drivers, or their driven gears, multiply to; ascending. */
  readonly products: readonly number[];
  /** 1 at each number that divides some product: no other can be a term of a ratio. */
  readonly terms: Uint8Array;
  /** What was asked before, by the terms of the ratio. */
  readonly asked: Map<number, readonly GearTrain[]>;
  /** How much is kept of that: ratios and their trains. */
  kept: number;
  /** The products laid out, when first asked for. */
  laidOut?: Products;
  find(numerator: number, denominator: number): readonly GearTrain[];
}

function onePairs(box: Contents): Pairs {
  const terms = new Uint8Array((box.sizes[0] ?? 0) + 1);
  for (const teeth of box.sizes) for (const divisor of divisors(teeth)) terms[divisor] = 1;
  const find = (numerator: number, denominator: number) => {
    const trains: GearTrain[] = [];
    for (const driver of box.sizes) {
      if (driver % numerator !== 0) continue;
      const driven = (driver / numerator) * denominator;
      if (box.owned.has(driven) && areOwned([driver], [driven], box))
        trains.push({ drivers: [driver], driven: [driven], mayFoul: null });
    }
    return trains;
  };
  return { products: [...box.sizes].reverse(), terms, asked: new Map(), kept: 0, find };
}

function twoPairs(box: Contents): Pairs {
  const pairsOf = pairProducts(box);
  const products = [...pairsOf.keys()].sort((a, b) => a - b);
  const terms = new Uint8Array((products.at(-1) ?? 0) + 1);
  // The divisors of a product are the products of a divisor of either gear.
  const divisorsOf = new Map(box.sizes.map((teeth) => [teeth, divisors(teeth)]));
  for (const pairs of pairsOf.values()) {
    for (const [larger, smaller] of pairs) {
      for (const one of divisorsOf.get(larger) ?? []) for (const other of divisorsOf.get(smaller) ?? []) terms[one * other] = 1;
    }
  }
  const find = (numerator: number, denominator: number) => {
    const trains: GearTrain[] = [];
    for (const product of products) {
      if (product % numerator !== 0) continue;
      const allDriven = pairsOf.get((product / numerator) * denominator);
      if (allDriven === undefined) continue;
      for (const driven of allDriven) {
        for (const drivers of pairsOf.get(product) ?? []) {
          if (areOwned(drivers, driven, box)) trains.push(arrange(drivers, driven));
        }
      }
    }
    return trains.sort((a, b) => Number(a.mayFoul !== null) - Number(b.mayFoul !== null));
  };
  return { products, terms, asked: new Map(), kept: 0, find };
}

/** Products of two gears → the pairs that make them, the larger gear first. */
function pairProducts({ sizes, owned }: Contents): ReadonlyMap<number, readonly (readonly [number, number])[]> {
  const pairsOf = new Map<number, (readonly [number, number])[]>();
  for (const [index, larger] of sizes.entries()) {
    for (const smaller of sizes.slice((owned.get(larger) ?? 0) > 1 ? index : index + 1)) {
      const pairs = pairsOf.get(larger * smaller);
      if (pairs) pairs.push([larger, smaller]);
      else pairsOf.set(larger * smaller, [[larger, smaller]]);
    }
  }
  return pairsOf;
}

/** Whether drivers and driven gears, each owned by themselves, are owned together: they may want the same one. */
function areOwned(drivers: readonly number[], driven: readonly number[], { owned }: Contents): boolean {
  for (const teeth of drivers) {
    if (!driven.includes(teeth)) continue;
    if (countOf(teeth, drivers) + countOf(teeth, driven) > (owned.get(teeth) ?? 0)) return false;
  }
  return true;
}
