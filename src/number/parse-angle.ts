import type Fraction from "fraction.js";
import { angleToMoveBy, bareNumber, number } from "./angle.ts";
import { quoted, refuse } from "./errors.ts";
import { parseRational } from "./parse-rational.ts";
import type { Revolutions } from "./ratio.ts";

const sexagesimal = new RegExp(
  String.raw`^(?:(${number})\s*(?:°|d|deg|degrees?))?\s*(?:(${number})\s*(?:['′]|m|min|minutes?))?\s*(?:(${number})\s*(?:["″]|''|′′|s|sec|seconds?))?$`,
  "i",
);
const colons = new RegExp(String.raw`^(\d+):(\d+)(?::(${number}))?$`);
const ofTurn = /^(\d+(?:\.\d+|\s*\/\s*\d+)?)\s*(?:rev|revs|revolutions?|turns?)$/i;
const gon = new RegExp(String.raw`^(${number})\s*(?:gon|grad|grads)$`, "i");
/** `7 1/2°` and `1/2'`: a common fraction of one unit. */
const commonFraction = /^(?:(\d{1,6})\s+)?(\d{1,6})\s*\/\s*(\d{1,6})\s*(\D+)$/;

/**
 * Reads an angle as a person writes it, exactly.
 *
 * `2.9` and `2.9°` are degrees; `2°54'`, `2d 54m`, `2:54:00` are degrees, minutes and seconds;
 * `1/124 rev` is a part of a revolution; `10 gon` is a part of the 400 of a circle. The marks of a
 * telephone are read as well, `2º54’`, and a decimal comma, `2,9°`, and common fractions, `46½°`, `7 1/2°`.
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
    const [, whole, thousands] = typeof text === "string" ? (/^\s*(\d+),(\d{3})(?!\d)/.exec(text) ?? []) : [];
    if (whole !== undefined)
      return refuse(
        "unreadable",
        "angle",
        `the comma of ${quoted(text)} may part thousands or decimals; write ${whole}${thousands} or ${whole}.${thousands} with the unit`,
      );
    return refuse(
      "unreadable",
      "angle",
      `${quoted(text)} is not an angle; write it as 2.9°, 2°54', 2:54:00, 1/124 rev or 10 gon`,
    );
  }
  return angleToMoveBy(revolutions, text, "angle");
}

/** What a telephone or a hand writes for a mark, and the mark that is meant. A comma before three digits may part thousands: it stays. */
const asTyped: readonly (readonly [RegExp, string])[] = [
  [/[º˚⁰]/g, "°"],
  [/[’‘´`ʹ]/g, "'"],
  [/[”“ʺ]/g, '"'],
  [/^([^.,]*\d),(?=\d)(?!\d{3}(?:\D|$))/, "$1."],
  [/\s*½/g, ".5"],
  [/\s*¼/g, ".25"],
  [/\s*¾/g, ".75"],
  [/⁄/g, "/"],
  // ".5" is written too.
  [/(^|[^\d])\.(?=\d)/g, "$10."],
];

function readAngle(given: unknown): Fraction | null {
  if (typeof given !== "string" || given.trim().length > 60) return null;
  const text = asTyped.reduce((typed, [mark, meant]) => typed.replace(mark, meant), given.trim());
  if (bareNumber.test(text)) return parseRational(text, "angle").div(360);
  const turn = ofTurn.exec(text);
  if (turn) return parseRational(turn[1], "angle");
  const centesimal = gon.exec(text);
  if (centesimal) return parseRational(centesimal[1], "angle").div(400);
  const part = commonFraction.exec(text);
  if (part) return ofUnit(part[1] ?? "0", `${part[2]}/${part[3]}`, part[4] ?? "");
  const clock = colons.exec(text);
  if (clock) return fromParts(clock[1], clock[2], clock[3]);
  const parts = sexagesimal.exec(text);
  if (parts && text !== "") return fromParts(parts[1], parts[2], parts[3]);
  return null;
}

/** A whole number and a fraction of whichever unit one of it is read as. */
function ofUnit(whole: string, fraction: string, unit: string): Fraction | null {
  const one = readAngle(`1${unit}`);
  return one === null ? null : parseRational(whole, "angle").add(parseRational(fraction, "angle")).mul(one);
}

function fromParts(degrees?: string, minutes?: string, seconds?: string): Fraction {
  const over = (part: string | undefined, larger: unknown) => part !== undefined && larger !== undefined && Number(part) >= 60;
  if (over(minutes, degrees) || over(seconds, degrees ?? minutes)) {
    refuse("unreadable", "angle", "has 60 or more minutes or seconds beside a larger unit; carry them over, 2°70' being 3°10'");
  }
  return parseRational(degrees ?? "0", "angle")
    .add(parseRational(minutes ?? "0", "angle").div(60))
    .add(parseRational(seconds ?? "0", "angle").div(3600))
    .div(360);
}
