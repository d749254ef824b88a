import type Fraction from "fraction.js";
import { quoted, refuse, wholeNumberFault } from "./errors.ts";
import { greatestTerm, parseRational } from "./parse-rational.ts";
import { fromExact, groupDigits, isPositive, type Revolutions, rational, toRevolutions } from "./ratio.ts";

/** Arc-seconds in one revolution. */
export const arcSecondsPerTurn = 1_296_000;

const number = String.raw`\d+(?:\.\d+)?`;
const sexagesimal = new RegExp(
  String.raw`^(?:(${number})\s*(?:°|d|deg|degrees?))?\s*(?:(${number})\s*(?:['′]|m|min|minutes?))?\s*(?:(${number})\s*(?:["″]|''|′′|s|sec|seconds?))?$`,
  "i",
);
const colons = new RegExp(String.raw`^(\d+):(\d+)(?::(${number}))?$`);
const ofTurn = /^(\d+(?:\.\d+|\s*\/\s*\d+)?)\s*(?:rev|revs|revolutions?|turns?)$/i;
const gon = new RegExp(String.raw`^(${number})\s*(?:gon|grad|grads)$`, "i");
const bare = new RegExp(`^${number}$`);

/**
 * Reads an angle as a person writes it, exactly.
 *
 * `2.9` and `2.9°` are degrees; `2°54'`, `2d 54m`, `2:54:00` are degrees, minutes and seconds;
 * `1/124 rev` is a part of a revolution; `10 gon` is a part of the 400 of a circle. The marks of a
 * telephone are read as well, `2º54’`, and a decimal comma, `2,9°`, and a half or a quarter, `46½°`.
 *
 * @returns The angle in revolutions, exact: `"29/3600"` for 2.9 degrees. Always above 0.
 * @throws {@link InputError} when the text is no angle, is zero, or is over 1,000 revolutions.
 *
 * @example
 * ```ts
 * parseAngle("2°54'"); // "29/3600"
 * ```
 */
export function parseAngle(text: string): Revolutions {
  const revolutions = readAngle(text);
  if (revolutions === null) {
    return refuse(
      "unreadable",
      "angle",
      `${quoted(text)} is not an angle; write it as 2.9°, 2°54', 2:54:00, 1/124 rev or 10 gon`,
    );
  }
  return forward(revolutions, text, "angle");
}

/**
 * Checks an angle to move by, in revolutions as exact text, and returns it in lowest terms.
 *
 * @throws {@link InputError} when it is no exact text, is not above 0, is over 1,000 revolutions, or is too fine.
 */
export function checkAngle(angle: unknown, place = "angle"): Revolutions {
  return forward(readRevolutions(angle, place), angle, place);
}

function forward(value: Fraction, shown: unknown, place: string): Revolutions {
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
  const degrees = typeof angle === "number" || (typeof angle === "string" && bare.test(angle.trim())) ? angle : 2.9;
  return refuse(
    "unreadable",
    place,
    `${quoted(angle)} is not an angle in revolutions; give text such as "29/3600", or parseAngle("${degrees}°") for degrees`,
  );
}

/** What a telephone or a hand writes for a mark, and the mark that is meant. A comma before three digits may part thousands: it stays. */
const asTyped: readonly (readonly [RegExp, string])[] = [
  [/[º˚]/g, "°"],
  [/[’‘´`ʹ]/g, "'"],
  [/[”“ʺ]/g, '"'],
  [/^([^.,]*\d),(?=\d)(?!\d{3}(?:\D|$))/, "$1."],
  [/½/g, ".5"],
  [/¼/g, ".25"],
  [/¾/g, ".75"],
  // ".5" is written too.
  [/(^|[^\d])\.(?=\d)/g, "$10."],
];

function readAngle(given: unknown) {
  if (typeof given !== "string" || given.trim().length > 60) return null;
  const text = asTyped.reduce((typed, [mark, meant]) => typed.replace(mark, meant), given.trim());
  if (bare.test(text)) return parseRational(text, "angle").div(360);
  const turn = ofTurn.exec(text);
  if (turn) return parseRational(turn[1], "angle");
  const centesimal = gon.exec(text);
  if (centesimal) return parseRational(centesimal[1], "angle").div(400);
  const clock = colons.exec(text);
  if (clock) return fromParts(clock[1], clock[2], clock[3]);
  const parts = sexagesimal.exec(text);
  if (parts && text !== "") return fromParts(parts[1], parts[2], parts[3]);
  return null;
}

function fromParts(degrees?: string, minutes?: string, seconds?: string) {
  const over = (part: string | undefined, larger: unknown) => part !== undefined && larger !== undefined && Number(part) >= 60;
  if (over(minutes, degrees) || over(seconds, degrees ?? minutes)) {
    refuse("unreadable", "angle", "has 60 or more minutes or seconds beside a larger unit; carry them over, 2°70' being 3°10'");
  }
  return parseRational(degrees ?? "0", "angle")
    .add(parseRational(minutes ?? "0", "angle").div(60))
    .add(parseRational(seconds ?? "0", "angle").div(3600))
    .div(360);
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
  const scaled = value.mul(rational(BigInt(arcSecondsPerTurn) * scale));
  const magnitude = scaled.abs();
  const units = (2n * magnitude.n + magnitude.d) / (2n * magnitude.d);
  const seconds = units / scale;
  const decimals = places === 0 ? "" : `.${String(units % scale).padStart(places, "0")}`;
  const two = (part: bigint) => String(part).padStart(2, "0");
  const sign = value.s < 0n && units > 0n ? "−" : "";
  const mark = magnitude.d === 1n ? "" : "≈ ";
  return `${mark}${sign}${seconds / 3600n}° ${two((seconds / 60n) % 60n)}′ ${two(seconds % 60n)}${decimals}″`;
}

/** Arc-seconds of an exact angle in revolutions, as a plain number for display. */
export function arcSeconds(angle: Revolutions): number {
  return fromExact(angle).mul(arcSecondsPerTurn).valueOf();
}
