import Fraction from "fraction.js";
import { quoted, refuse } from "./errors.ts";

/**
 * An exact rational as text, in lowest terms: `"40"`, `"-7/3"`, `"29/3600"`.
 *
 * All exact values leave the library in this form: it survives JSON, and any rational
 * library (fraction.js among them) reads it back without loss.
 */
export type Exact = string;

/** The greatest numerator or denominator that exact input may have: hundredths of an arc-second in a revolution. */
export const greatestTerm = 129_600_000;

/**
 * Makes a rational from two integers. The only door to fraction.js for numbers: it silently
 * rounds non-integer numbers (1e-8 becomes 0), so they never get there.
 */
export function rational(numerator: number | bigint, denominator: number | bigint = 1): Fraction {
  return new Fraction(BigInt(numerator), BigInt(denominator));
}

/** Writes a rational as `"p/q"`, or `"p"` when whole. */
export function toExact(value: Fraction): Exact {
  return value.d === 1n ? String(value.s * value.n) : `${value.s * value.n}/${value.d}`;
}

/** Reads an exact number that the library wrote, such as `"-7/3"`, into a rational to reckon with. For its own text only. */
export function fromExact(text: Exact): Fraction {
  const [numerator = "", denominator = "1"] = text.split("/");
  return rational(BigInt(numerator), BigInt(denominator));
}

const integerPattern = /^[+-]?\d{1,15}$/;
const decimalPattern = /^[+-]?\d{1,15}\.\d{1,12}$/;
const quotientPattern = /^([+-]?\d{1,15})\s*\/\s*(\d{1,15})$/;

/**
 * Reads an exact rational from text (`"40"`, `"81/2"`, `"2.9"`) or from a whole number.
 *
 * @throws {@link InputError} when it is none of these, when the denominator is 0, or when a
 * term is beyond {@link greatestTerm} in lowest terms.
 */
export function parseRational(value: unknown, place: string): Fraction {
  const result = readRational(value, place);
  if (result.n > greatestTerm || result.d > greatestTerm) {
    refuse(
      "out-of-range",
      place,
      `${quoted(value)} is out of range; give a fraction with terms up to ${groupDigits(greatestTerm)}`,
    );
  }
  return result;
}

function readRational(value: unknown, place: string): Fraction {
  if (typeof value === "number" && Number.isSafeInteger(value)) return rational(value);
  if (typeof value === "string") {
    const text = value.trim();
    if (integerPattern.test(text)) return rational(BigInt(text));
    if (decimalPattern.test(text)) {
      const [whole = "", places = ""] = text.split(".");
      return rational(BigInt(whole + places), 10n ** BigInt(places.length));
    }
    const quotient = quotientPattern.exec(text);
    if (quotient) {
      const denominator = BigInt(quotient[2] ?? "1");
      if (denominator === 0n) refuse("out-of-range", place, `${quoted(value)} divides by zero; give a fraction such as 81/2`);
      return rational(BigInt(quotient[1] ?? "0"), denominator);
    }
  }
  return refuse(
    "unreadable",
    place,
    `${quoted(value)} is not an exact number; give a whole number or a fraction in quotes, such as "81/2"`,
  );
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
