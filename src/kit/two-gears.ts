import { gcd } from "../number/ratio.ts";

/** Two gears, each a gear of its own. */
export type TwoGears = readonly [number, number];

/** Every two of the gears, each two once; two of a size where there are two. */
export function everyTwo(bySize: ReadonlyMap<number, number>): readonly TwoGears[] {
  const sizes = [...bySize.keys()];
  return sizes.flatMap((one, index) =>
    sizes.slice((bySize.get(one) ?? 0) > 1 ? index : index + 1).map((other): TwoGears => [one, other]),
  );
}

/** Two gears by what they multiply to. */
export function byProduct(pairs: readonly TwoGears[]): ReadonlyMap<number, readonly TwoGears[]> {
  return grouped(pairs.map((pair) => [pair[0] * pair[1], pair]));
}

/** Two gears either way round by the first over the second, as {@link quotientKey} has it. */
export function byQuotient(pairs: readonly TwoGears[]): ReadonlyMap<number, readonly TwoGears[]> {
  return grouped(
    pairs.flatMap(([one, other]): (readonly [number, TwoGears])[] =>
      one === other
        ? [[quotientKey(one, other), [one, other]]]
        : [
            [quotientKey(one, other), [one, other]],
            [quotientKey(other, one), [other, one]],
          ],
    ),
  );
}

/** Above any term of a quotient of two gears, and of two by two: they have at most a thousand teeth. */
const greatestTerm = 2 ** 26;

/** A quotient as one number, in lowest terms. */
export function quotientKey(over: number, under: number): number {
  const common = gcd(over, under);
  return (over / common) * greatestTerm + under / common;
}

function grouped(entries: readonly (readonly [number, TwoGears])[]): ReadonlyMap<number, readonly TwoGears[]> {
  const groups = new Map<number, TwoGears[]>();
  for (const [key, pair] of entries) {
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [pair]);
    else group.push(pair);
  }
  return groups;
}
