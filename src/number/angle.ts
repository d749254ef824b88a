import type Fraction from "fraction.js";
import { quoted, refuse, wholeNumberFault } from "./errors.ts";
import { greatestTerm, parseRational } from "./parse-rational.ts";
import { fromExact, groupDigits, isPositive, type Revolutions, rational, toRevolutions } from "./ratio.ts";

/** Arc-seconds in one revolution. */
export const arcSecondsPerTurn = 1_296_000;

/** A number without a sign, for patterns. */
export const number = "\\d+(?:\\.\\d+)?";
/** The same and nothing besides. */
export const bareNumber: RegExp = new RegExp(`^${number}$`);

/**
 * Checks an angle to move by, in revolutions as exact text, and returns it in lowest terms.
 *
 * @throws {@link InputError} when it is no exact text, is not above 0, is over 1,000 revolutions, or is too fine.
 */
export function checkAngle(angle: unknown, place = "angle"): Revolutions {
  return angleToMoveBy(readRevolutions(angle, place), angle, place);
}

/** An angle that was read, in lowest terms; `shown` is what a refusal calls it. */
export function angleToMoveBy(value: Fraction, shown: unknown, place: string): Revolutions {
  if (!isPositive(value)) refuse("out-of-range", place, `${quoted(shown)} is no angle to move by; give one above 0`);
  if (value.n > 1000n * value.d)
    refuse("out-of-range", place, `${quoted(shown)} is over 1,000 revolutions; give a smaller angle`);
  if (value.n > greatestTerm || value.d > greatestTerm) {
    refuse(
      "out-of-range",
      place,
      `${quoted(shown)} is too fine; give it to the hundredth of a second within one turn, or as a fraction of a turn with terms up to ${groupDigits(greatestTerm)}`,
    );
  }
  return toRevolutions(value);
}

/** Checks an angle from a zero, in revolutions as exact text: 0 or more. */
export function checkAngleFromZero(angle: unknown, place: string): Fraction {
  const value = readRevolutions(angle, place);
  if (value.s < 0n || value.n > 1000n * value.d)
    refuse("out-of-range", place, `${quoted(angle)} is not an angle from 0 to 1,000 revolutions`);
  return value;
}

const termsOfTurn = /^\s*[+-]?\d{1,15}\s*(?:\/\s*\d{1,15}\s*)?$/;

/**
 * Reads exact text in revolutions, `"p/q"` or `"p"`. A decimal is refused: it is more likely to be
 * meant in degrees.
 *
 * @throws {@link InputError} when it is no such text, or has too large terms.
 */
export function readRevolutions(angle: unknown, place: string): Fraction {
  if (typeof angle === "string" && termsOfTurn.test(angle)) return parseRational(angle, place);
  const degrees = typeof angle === "number" || (typeof angle === "string" && bareNumber.test(angle.trim())) ? angle : 2.9;
  return refuse(
    "unreadable",
    place,
    `${quoted(angle)} is not an angle in revolutions; give text such as "29/3600", or parseAngle("${degrees}°") for degrees`,
  );
}

/** The finest that an angle is written: a millionth of a second. */
const mostPlaces = 6;

/**
 * Writes an angle in degrees, minutes and seconds: `2° 54′ 00″`.
 *
 * Seconds are rounded to `places` decimals (half up), and a value that is not exact at
 * that many places is preceded by `≈`, so that nobody takes a rounded angle for a true one.
 *
 * @param angle - In revolutions, exact.
 * @param places - Decimals of a second, 0 to 6.
 * @throws {@link InputError} when the angle is no exact text or `places` is not allowed.
 *
 * @example
 * ```ts
 * formatAngle(revolutions(1, 7), 1); // "≈ 51° 25′ 42.9″"
 * ```
 */
export function formatAngle(angle: Revolutions, places = 0): string {
  const value = fromExact(angle);
  if (!(Number.isInteger(places) && places >= 0 && places <= mostPlaces)) {
    refuse(wholeNumberFault(places), "places", `${quoted(places)} is not a number of decimals; give 0 to ${mostPlaces}`);
  }
  const scale = 10n ** BigInt(places);
  const { n, d } = value.mul(rational(BigInt(arcSecondsPerTurn) * scale));
  const units = (2n * n + d) / (2n * d);
  const seconds = units / scale;
  const decimals = places === 0 ? "" : `.${String(units % scale).padStart(places, "0")}`;
  const two = (part: bigint) => String(part).padStart(2, "0");
  const sign = value.s < 0n && units > 0n ? "−" : "";
  const mark = d === 1n ? "" : "≈ ";
  return `${mark}${sign}${seconds / 3600n}° ${two((seconds / 60n) % 60n)}′ ${two(seconds % 60n)}${decimals}″`;
}

/**
 * Arc-seconds of an exact angle in revolutions, as a plain number for display.
 *
 * @example
 * ```ts
 * arcSeconds(parseAngle("2.9°")); // 10440
 * ```
 */
export function arcSeconds(angle: Revolutions): number {
  return fromExact(angle).mul(arcSecondsPerTurn).valueOf();
}
