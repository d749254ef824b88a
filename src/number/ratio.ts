import Fraction from "fraction.js";
import { quoted, refuse } from "./errors.ts";

declare const isRatio: unique symbol;
declare const isRevolutions: unique symbol;

/**
 * An exact ratio as text, in lowest terms: `"40"`, `"-7/3"`. {@link ratio} makes one.
 *
 * All exact values leave the library as text: it survives JSON, and any rational library reads it
 * back without loss. They are branded, so that a plain text cannot be handed in for one by mistake.
 */
export type Ratio = string & { readonly [isRatio]: true };

/**
 * An exact angle or number of turns as text, in revolutions, in lowest terms: `"29/3600"` for 2.9
 * degrees. {@link parseAngle} reads one from an angle as a person writes it, {@link revolutions}
 * makes one from its terms.
 */
export type Revolutions = string & { readonly [isRevolutions]: true };

/** Exact text of either kind. */
export type Exact = Ratio | Revolutions;

/**
 * Makes a rational from two integers. The only door to fraction.js for numbers: it silently
 * rounds non-integer numbers (1e-8 becomes 0), so they never get there.
 */
export function rational(numerator: number | bigint, denominator: number | bigint = 1): Fraction {
  return new Fraction(BigInt(numerator), BigInt(denominator));
}

/** Writes a ratio as `"p/q"`, or `"p"` when whole. */
export function toRatio(value: Fraction): Ratio {
  return exactText(value) as Ratio;
}

/** Writes an angle or turns in revolutions as `"p/q"`, or `"p"` when whole. */
export function toRevolutions(value: Fraction): Revolutions {
  return exactText(value) as Revolutions;
}

/** No turn at all. */
export const noTurn: Revolutions = "0" as Revolutions;

/** {@link toRatio} of terms that are in lowest terms, the denominator above 0: for hot loops. */
export function ratioOf(numerator: number, denominator: number): Ratio {
  return (denominator === 1 ? String(numerator) : `${numerator}/${denominator}`) as Ratio;
}

/** As {@link ratioOf}, of revolutions. */
export function revolutionsOf(numerator: number, denominator: number): Revolutions {
  return (denominator === 1 ? String(numerator) : `${numerator}/${denominator}`) as Revolutions;
}

function exactText(value: Fraction): string {
  return value.d === 1n ? String(value.s * value.n) : `${value.s * value.n}/${value.d}`;
}

const exactPattern = /^(-?\d{1,300})(?:\/0*([1-9]\d{0,299}))?$/;

/**
 * Reads exact text, such as `"-7/3"`, into a rational to reckon with.
 *
 * @throws {@link InputError} when it is none.
 *
 * @example
 * ```ts
 * fromExact("29/3600").mul(360).valueOf(); // 2.9
 * ```
 */
export function fromExact(text: string): Fraction {
  return (
    readExact(text) ??
    refuse("unreadable", "exact", `${quoted(text)} is not exact text; give "p/q" or "p" as the library writes it`)
  );
}

/** As {@link fromExact}; null where it is none. */
export function readExact(text: unknown): Fraction | null {
  const terms = typeof text === "string" ? exactPattern.exec(text) : null;
  return terms && rational(BigInt(terms[1] ?? ""), BigInt(terms[2] ?? "1"));
}

/** Whether a rational is above 0. Its sign alone would not do: fraction.js gives 0 the sign of 1. */
export function isPositive({ s, n }: Fraction): boolean {
  return s > 0n && n > 0n;
}

/** The greatest common divisor of two safe integers; the sign is dropped. */
export function gcd(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) {
    const rest = x % y;
    x = y;
    y = rest;
  }
  return x;
}

/** The greatest common divisor of two integers that need not be safe; of 0 and another it is that other. */
export function gcdOf(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x < 0n ? -x : x;
}

/** The least common multiple of two positive integers that need not be safe. */
export function lcmOf(a: bigint, b: bigint): bigint {
  return (a / gcdOf(a, b)) * b;
}

/** The least common multiple of two positive safe integers. */
export function lcm(a: number, b: number): number {
  return (a / gcd(a, b)) * b;
}

/** What is left of a positive safe integer when every prime factor that it shares with another is taken out: 40 without 6 is 5. */
export function withoutFactorsOf(value: number, other: number): number {
  let rest = value;
  for (let factor = gcd(rest, other); factor > 1; factor = gcd(rest, factor)) rest /= factor;
  return rest;
}

/** The remainder that is never negative: `floorMod(-1, 5)` is 4. */
export function floorMod(value: number, modulus: number): number {
  const rest = value % modulus;
  // In JavaScript the remainder of −5 by 5 is −0, which is no hole of a circle.
  if (rest === 0) return 0;
  return rest < 0 ? rest + modulus : rest;
}

/**
 * The inverse of `value` modulo `modulus`, by the extended Euclid identity.
 * Both are positive and coprime.
 */
export function inverseModulo(value: number, modulus: number): number {
  let [previous, rest] = [value, modulus];
  let [coefficient, next] = [1, 0];
  while (rest !== 0) {
    const quotient = Math.floor(previous / rest);
    [previous, rest] = [rest, previous - quotient * rest];
    [coefficient, next] = [next, coefficient - quotient * next];
  }
  return floorMod(coefficient, modulus);
}

/** How often a number is in a list. */
export function countOf(value: number, list: readonly number[]): number {
  let count = 0;
  for (const each of list) if (each === value) count += 1;
  return count;
}

/** All positive divisors of a positive safe integer, ascending. */
export function divisors(value: number): number[] {
  const small: number[] = [];
  const large: number[] = [];
  for (let divisor = 1; divisor * divisor <= value; divisor += 1) {
    if (value % divisor !== 0) continue;
    small.push(divisor);
    if (divisor * divisor !== value) large.push(value / divisor);
  }
  return [...small, ...large.reverse()];
}

/** Writes an integer with commas between thousands: `10,000,000`. */
export function groupDigits(value: number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
}
