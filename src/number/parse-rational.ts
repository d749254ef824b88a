import type Fraction from "fraction.js";
import { quoted, refuse } from "./errors.ts";
import { groupDigits, rational } from "./ratio.ts";

/** The greatest numerator or denominator that exact input may have: hundredths of an arc-second in a revolution. */
export const greatestTerm = 129_600_000;

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
