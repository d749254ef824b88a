/**
 * A train from the spindle to the plate: one pair (`drivers` and `driven` of one gear each) or
 * two pairs on a stud. `drivers[0]` sits on the spindle and meshes `driven[0]`; in two pairs
 * `driven[0]` and `drivers[1]` are fast together on the stud, and `drivers[1]` meshes `driven[1]`
 * on the worm shaft, which turns the plate.
 */
export interface GearTrain {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  /** Why the train may not go together, or null where it fits. */
  readonly mayFoul: string | null;
}

/** The change gears of a head, ready to be asked which trains give a ratio. */
export interface GearBox {
  /** Trains of one pair with drivers : driven = numerator : denominator (lowest terms). */
  onePair(numerator: number, denominator: number): readonly GearTrain[];
  /** Trains of two pairs with that ratio, those that fit before those that may foul. */
  twoPairs(numerator: number, denominator: number): readonly GearTrain[];
  /** What the drivers of so many pairs multiply to, and likewise the driven gears; ascending, each once. */
  products(pairs: 1 | 2): readonly number[];
}

/**
 * How many teeth of room a shaft with its nut takes beside a gear, in the check for fouling.
 * Common practice for change gears, no source.
 */
export const shaftRoom = 15;

/**
 * Sorts the change gears once, so that trains are looked up and not searched for.
 *
 * A ratio p/q in lowest terms is made by products P = p·m of two drivers and Q = q·m of two
 * driven gears. Only products of two gears are kept, not trains of four: sixty gears make
 * 1,770 products and some four million trains.
 *
 * @param gears - Teeth of each gear owned, duplicates counted.
 */
export function gearBox(gears: readonly number[]): GearBox {
  const owned = new Map<number, number>();
  for (const teeth of gears) owned.set(teeth, (owned.get(teeth) ?? 0) + 1);
  const sizes = [...owned.keys()].sort((a, b) => b - a);
  const asked = new Map<number, readonly GearTrain[]>();
  let pairs: PairProducts | null = null;

  const twoPairs = (numerator: number, denominator: number): readonly GearTrain[] => {
    pairs ??= pairProducts(sizes, owned);
    if (pairs.divides[numerator] !== 1 || pairs.divides[denominator] !== 1) return [];
    const key = numerator * pairs.divides.length + denominator;
    const known = asked.get(key);
    if (known !== undefined) return known;
    const trains = findTwoPairs(numerator, denominator, pairs, owned);
    asked.set(key, trains);
    return trains;
  };

  return {
    onePair(numerator, denominator) {
      const trains: GearTrain[] = [];
      for (const driver of sizes) {
        if (driver % numerator !== 0) continue;
        const driven = (driver / numerator) * denominator;
        const needed = driven === driver ? 2 : 1;
        if ((owned.get(driven) ?? 0) >= needed) trains.push({ drivers: [driver], driven: [driven], mayFoul: null });
      }
      return trains;
    },
    twoPairs,
    products(ofPairs) {
      if (ofPairs === 1) return sizes.toReversed();
      pairs ??= pairProducts(sizes, owned);
      return [...pairs.byProduct.keys()].sort((a, b) => a - b);
    },
  };
}

interface PairProducts {
  /** Product of two gears → the pairs that make it, each larger gear first. */
  readonly byProduct: ReadonlyMap<number, readonly (readonly [number, number])[]>;
  /** 1 at each number that divides some product: any other cannot be a term of a ratio. */
  readonly divides: Uint8Array;
}

function pairProducts(sizes: readonly number[], owned: ReadonlyMap<number, number>): PairProducts {
  const byProduct = new Map<number, (readonly [number, number])[]>();
  for (const [index, larger] of sizes.entries()) {
    for (const smaller of sizes.slice((owned.get(larger) ?? 0) > 1 ? index : index + 1)) {
      const pairs = byProduct.get(larger * smaller);
      if (pairs) pairs.push([larger, smaller]);
      else byProduct.set(larger * smaller, [[larger, smaller]]);
    }
  }
  const most = Math.max(0, ...byProduct.keys());
  const divides = new Uint8Array(most + 1);
  for (const product of byProduct.keys()) {
    for (let divisor = 1; divisor * divisor <= product; divisor += 1) {
      if (product % divisor !== 0) continue;
      divides[divisor] = 1;
      divides[product / divisor] = 1;
    }
  }
  return { byProduct, divides };
}

function findTwoPairs(
  numerator: number,
  denominator: number,
  pairs: PairProducts,
  owned: ReadonlyMap<number, number>,
): readonly GearTrain[] {
  const trains: GearTrain[] = [];
  for (const [product, drivers] of pairs.byProduct) {
    if (product % numerator !== 0) continue;
    const driven = pairs.byProduct.get((product / numerator) * denominator);
    if (!driven) continue;
    for (const pair of drivers) {
      for (const other of driven) if (areOwned([...pair, ...other], owned)) trains.push(arrange(pair, other));
    }
  }
  return trains.sort((a, b) => Number(a.mayFoul !== null) - Number(b.mayFoul !== null));
}

function areOwned(train: readonly number[], owned: ReadonlyMap<number, number>): boolean {
  return train.every((teeth) => train.filter((other) => other === teeth).length <= (owned.get(teeth) ?? 0));
}

/**
 * Puts the drivers and the driven gears in the order that leaves most room beside the shafts.
 *
 * Either driver may go on the spindle and either driven gear on the worm shaft: the ratio is the
 * same. Shafts of meshing gears a and b stand (a + b)/2 teeth-modules apart, so the stud's driver
 * clears the spindle when a + b is more than its own teeth by the room that a shaft takes, and
 * likewise its driven gear at the worm shaft.
 */
function arrange([driver1, driver2]: readonly [number, number], [driven1, driven2]: readonly [number, number]): GearTrain {
  let best = { drivers: [driver1, driver2], driven: [driven1, driven2] };
  let bestRoom = Number.NEGATIVE_INFINITY;
  for (const drivers of [
    [driver1, driver2],
    [driver2, driver1],
  ] as const) {
    for (const driven of [
      [driven1, driven2],
      [driven2, driven1],
    ] as const) {
      const room = Math.min(drivers[0] + driven[0] - drivers[1], drivers[1] + driven[1] - driven[0]);
      if (room > bestRoom) {
        best = { drivers: [...drivers], driven: [...driven] };
        bestRoom = room;
      }
    }
  }
  return { ...best, mayFoul: foulingOf(best.drivers, best.driven) };
}

function foulingOf(drivers: readonly number[], driven: readonly number[]): string | null {
  const [spindle = 0, studDriver = 0] = drivers;
  const [studDriven = 0, worm = 0] = driven;
  if (spindle + studDriven < studDriver + shaftRoom) {
    return `the stud's ${studDriver} may reach the spindle: ${spindle} + ${studDriven} is less than ${studDriver} + ${shaftRoom}`;
  }
  if (studDriver + worm < studDriven + shaftRoom) {
    return `the stud's ${studDriven} may reach the worm shaft: ${studDriver} + ${worm} is less than ${studDriven} + ${shaftRoom}`;
  }
  return null;
}
