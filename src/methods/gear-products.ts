/** The products that gears make, with the place of every number among them. */
export interface Products {
  /** Ascending. */
  readonly values: readonly number[];
  /** At each number up to the greatest product: how many products are not above it. */
  readonly upTo: Int32Array;
  /** All quotients of two of them, ascending; null where they are too many to lay out. */
  readonly quotients: Float64Array | null;
}

/** So many products have up to 40,000 quotients, which are sorted sooner than they are gone through a few times. */
const mostLaidOut = 200;

/** Lays out products for looking up: ascending, each once. */
export function layOutProducts(values: readonly number[]): Products {
  const upTo = new Int32Array((values.at(-1) ?? 0) + 1);
  for (const value of values) upTo[value] = 1;
  for (let number = 1; number < upTo.length; number += 1) upTo[number] = (upTo[number] ?? 0) + (upTo[number - 1] ?? 0);
  return { values, upTo, quotients: values.length > mostLaidOut ? null : quotientsOf(values) };
}

function quotientsOf(values: readonly number[]): Float64Array {
  const quotients = new Float64Array(values.length * values.length);
  let index = 0;
  for (const driven of values) {
    for (const drivers of values) {
      quotients[index] = drivers / driven;
      index += 1;
    }
  }
  return quotients.sort();
}

/** Whether any quotient lies in a window: most windows hold none, which is seen here in a few steps. */
function anyWithin(quotients: Float64Array, least: number, most: number): boolean {
  let [low, high] = [0, quotients.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((quotients[middle] ?? 0) < least) low = middle + 1;
    else high = middle;
  }
  return low < quotients.length && (quotients[low] ?? 0) <= most;
}

/** Steps of work to look through a window: few where it is seen at once whether it holds any. */
export function windowSteps({ values, quotients }: Products): number {
  return quotients === null ? 4 + (values.length >> 4) : 4;
}

/** Room for the rounding of a product worked out in floating point. */
const rounding = 1e-6;

/**
 * Visits every quotient of two products from `least` to `most`, not in lowest terms: the product of
 * the drivers over that of the driven gears. For each divisor the place of the first is looked up, so
 * the work grows with the products and not with their quotients: sixty gears make three million.
 *
 * @param visit - Says by false that it has had enough.
 */
export function visitWithin(
  { values, upTo, quotients }: Products,
  least: number,
  most: number,
  visit: (drivers: number, driven: number) => boolean,
): void {
  if (quotients !== null && !anyWithin(quotients, least - rounding, most + rounding)) return;
  for (const driven of values) {
    const first = Math.ceil(driven * least - rounding);
    if (first >= upTo.length) break;
    const last = driven * most + rounding;
    // No whole number lies in most windows.
    if (first > last) continue;
    let index = upTo[Math.max(0, first - 1)] ?? 0;
    for (let drivers = values[index]; drivers !== undefined && drivers <= last; drivers = values[index]) {
      if (!visit(drivers, driven)) return;
      index += 1;
    }
  }
}
