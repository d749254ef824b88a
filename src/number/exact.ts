import { readRevolutions } from "./angle.ts";
import { quoted, refuse } from "./errors.ts";
import { parseRational } from "./parse-rational.ts";
import { type Exact, fromExact, type Ratio, type Revolutions, rational, readExact, toRatio, toRevolutions } from "./ratio.ts";

/**
 * Makes an exact ratio, in lowest terms: of text or a whole number, or of its two terms.
 *
 * @throws {@link InputError} when it is none, or when the denominator is 0.
 *
 * @example
 * ```ts
 * ratio("81/2"); // "81/2"
 * ratio(40); // "40"
 * ratio(14, -6); // "-7/3"
 * ```
 */
export function ratio(value: string | number | bigint, denominator?: number | bigint): Ratio {
  return toRatio(denominator === undefined ? readNumber(value) : ofTerms(value, denominator, "ratio"));
}

/**
 * Makes an exact angle in revolutions, in lowest terms: of text, or of its two terms. It takes no
 * decimals, which are more likely to be meant in degrees: those are for {@link parseAngle}.
 *
 * @throws {@link InputError} when it is none, or when the denominator is 0.
 *
 * @example
 * ```ts
 * revolutions("58/7200"); // "29/3600"
 * revolutions(1, 7); // "1/7"
 * ```
 */
export function revolutions(value: string | number | bigint, denominator?: number | bigint): Revolutions {
  if (denominator !== undefined) return toRevolutions(ofTerms(value, denominator, "revolutions"));
  return toRevolutions(isWhole(value) ? rational(value) : (readExact(value) ?? readRevolutions(value, "revolutions")));
}

function readNumber(value: unknown) {
  return isWhole(value) ? rational(value) : (readExact(value) ?? parseRational(value, "ratio"));
}

function isWhole(value: unknown): value is number | bigint {
  return typeof value === "bigint" || Number.isSafeInteger(value);
}

function ofTerms(numerator: unknown, denominator: unknown, place: string) {
  if (!isWhole(numerator) || !isWhole(denominator)) {
    const term = isWhole(numerator) ? denominator : numerator;
    return refuse("unreadable", place, `${quoted(term)} is not a whole number; give two terms such as 1, 7`);
  }
  if (BigInt(denominator) === 0n) refuse("out-of-range", place, "divides by 0; give a denominator that is not 0");
  return rational(numerator, denominator);
}

/**
 * An exact value as a plain number, rounded to the nearest there is: for display, and for programs
 * that need no more.
 *
 * @throws {@link InputError} when it is no exact text.
 *
 * @example
 * ```ts
 * toNumber(ratio("81/2")); // 40.5
 * ```
 */
export function toNumber(exact: Exact): number {
  return fromExact(exact).valueOf();
}

/**
 * An exact angle in degrees, as a plain number.
 *
 * @throws {@link InputError} when it is no exact text.
 *
 * @example
 * ```ts
 * toDegrees(parseAngle("2°54'")); // 2.9
 * ```
 */
export function toDegrees(angle: Revolutions): number {
  return fromExact(angle).mul(360).valueOf();
}
