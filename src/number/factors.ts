import { type Effort, take } from "./effort.ts";

/** A whole number above 0 as its primes with their powers, the primes ascending. */
export type Factors = readonly (readonly [prime: number, power: number])[];

/** The primes of a number: for the numbers of a head, which are small or have a small square root. */
export function factorsOf(value: number): Factors {
  const factors: [number, number][] = [];
  let rest = value;
  for (let prime = 2; prime * prime <= rest; prime += 1) {
    let power = 0;
    for (; rest % prime === 0; rest /= prime) power += 1;
    if (power > 0) factors.push([prime, power]);
  }
  if (rest > 1) factors.push([rest, 1]);
  return factors;
}

/** The primes of a product. */
export function timesFactors(a: Factors, b: Factors): Factors {
  return merged(a, b, (one, other) => one + other);
}

/** The primes of a least common multiple. */
export function lcmFactors(a: Factors, b: Factors): Factors {
  return merged(a, b, Math.max);
}

function merged(a: Factors, b: Factors, power: (one: number, other: number) => number): Factors {
  const found: (readonly [number, number])[] = [];
  let [left, right] = [0, 0];
  while (left < a.length || right < b.length) {
    const [one = none, other = none] = [a[left], b[right]];
    if (one[0] <= other[0]) left += 1;
    if (other[0] <= one[0]) right += 1;
    found.push(one[0] === other[0] ? [one[0], power(one[1], other[1])] : one[0] < other[0] ? one : other);
  }
  return found;
}

/** Stands where a list has come to its end. */
const none: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];

/**
 * The divisors of a number from `least` to `most`, in no order. Of the number itself only the primes
 * are known, so it may be any size; branches that cannot reach the range are not gone into.
 *
 * @returns Fewer once the effort is cut.
 */
export function divisorsWithin(factors: Factors, least: number, most: number, effort: Effort): number[] {
  const found: number[] = [];
  // What all primes from each on can multiply to.
  const reach = factors.map((_, from) => factors.slice(from).reduce((all, [prime, power]) => all * prime ** power, 1));
  const visit = (from: number, divisor: number): void => {
    if (divisor > most || divisor * (reach[from] ?? 1) < least || !take(effort, 1)) return;
    const factor = factors[from];
    if (factor === undefined) {
      found.push(divisor);
      return;
    }
    let next = divisor;
    for (let power = 0; power <= factor[1] && next <= most; power += 1) {
      visit(from + 1, next);
      next *= factor[0];
    }
  };
  visit(0, 1);
  return found;
}
