import type { GearBox } from "../methods/gear-box.ts";

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

/** Room for the rounding of a product worked out in floating point. */
const rounding = 1e-6;

/**
 * Every quotient of two products from `least` to `most`, not in lowest terms: the product of the
 * drivers over that of the driven gears. For each divisor the place of the first is looked up, so
 * the work grows with the products and not with their quotients: sixty gears make three million.
 */
export function quotientsWithin(
  { values, upTo }: Products,
  least: number,
  most: number,
): readonly (readonly [drivers: number, driven: number])[] {
  let found: [number, number][] | null = null;
  for (const driven of values) {
    const first = Math.ceil(driven * least - rounding);
    if (first >= upTo.length) break;
    const last = driven * most + rounding;
    let index = upTo[Math.max(0, first - 1)] ?? 0;
    for (let drivers = values[index]; drivers !== undefined && drivers <= last; drivers = values[index]) {
      found ??= [];
      found.push([drivers, driven]);
      index += 1;
    }
  }
  return found ?? none;
}

const none: readonly [number, number][] = [];
