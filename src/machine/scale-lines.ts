import type Fraction from "fraction.js";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { parseRational } from "../number/parse-rational.ts";
import type { Vernier } from "./vernier.ts";

/** How long the lines of a scale are, and what is stamped at them. */
export interface LineStyle {
  /** Every so many-th line is long, the first among them; 0 for none. Left out, 10; of a vernier as its spaces allow. */
  readonly long?: number | undefined;
  /** Every so many-th of the others is of medium length; 0 for none. Left out, 5; of a vernier none. */
  readonly medium?: number | undefined;
  /** Every so many-th line has a figure; 0 for none. Left out, as the long ones. */
  readonly figureEvery?: number | undefined;
  /** The figure at the first line, exact: `90`, `"0.5"`; left out, 0. */
  readonly figureFrom?: number | string | undefined;
  /** What the figures rise by from line to line, exact; below 0 where they fall. Left out, 1: they count the lines. */
  readonly perLine?: number | string | undefined;
}

/** A line of a scale. */
export interface ScaleLine {
  /** From 0, in the order in which they lie. */
  readonly line: number;
  readonly length: "long" | "medium" | "short";
  /** What is stamped at it; null for nothing. */
  readonly figure: string | null;
}

/** The keys of {@link LineStyle}. */
export const styleKeys = { long: true, medium: true, figureEvery: true, figureFrom: true, perLine: true } as const;

const keys = keysOf<LineStyle>(styleKeys);

/** The most lines between two long ones. */
const mostApart = 50_000;

/**
 * The lines of a scale in the order in which they lie: how long each is, and what is stamped at it.
 *
 * @param count - Lines in all.
 * @param vernier - Where it is one: on both sides of its zero its lines are counted from there.
 */
export function scaleLines(count: number, style: LineStyle, vernier: Vernier | null): readonly ScaleLine[] {
  checkKeys(style, keys, "style");
  const { figureFrom = 0, perLine = 1 } = style;
  const long = every(style.long ?? (vernier === null ? 10 : longOf(vernier)), "long");
  const medium = every(style.medium ?? (vernier === null ? 5 : 0), "medium");
  const figured = every(style.figureEvery ?? long, "figureEvery");
  const [first, step] = [exact(figureFrom, "figureFrom"), exact(perLine, "perLine")];
  const zero = vernier?.twoSided === true ? vernier.spaces : 0;
  return Array.from({ length: count }, (_, line): ScaleLine => {
    const from = Math.abs(line - zero);
    const isOf = (apart: number) => apart > 0 && from % apart === 0;
    return {
      line,
      length: isOf(long) ? "long" : isOf(medium) ? "medium" : "short",
      figure: isOf(figured) ? figureText(first.add(step.mul(from))) : null,
    };
  });
}

/** Long lines of verniers stand at tenths, fifths, or what else divides them evenly; our own choice. */
function longOf({ spaces }: Vernier): number {
  const [evenly = spaces] = (spaces >= 50 ? [10, 5, 3] : [5, 3, 4]).filter((apart) => spaces % apart === 0);
  return evenly;
}

function every(apart: unknown, place: keyof LineStyle): number {
  if (typeof apart === "number" && Number.isInteger(apart) && apart >= 0 && apart <= mostApart) return apart;
  return refuse(
    wholeNumberFault(apart),
    place,
    `${quoted(apart)} is not how many lines apart; give a whole number, or 0 for none`,
  );
}

function exact(value: number | string, place: keyof LineStyle): Fraction {
  return parseRational(typeof value === "number" ? String(value) : value, place);
}

/** A figure as it is stamped: a decimal where that ends, else a fraction. */
function figureText(value: Fraction): string {
  const { s, n, d } = value;
  const sign = s < 0n && n > 0n ? "−" : "";
  let [places, power] = [0, 1n];
  while (power % d !== 0n && places < mostPlaces) [places, power] = [places + 1, power * 10n];
  if (power % d !== 0n) return `${sign}${n}/${d}`;
  const digits = String(n * (power / d)).padStart(places + 1, "0");
  return `${sign}${digits.slice(0, digits.length - places)}${places > 0 ? `.${digits.slice(-places)}` : ""}`;
}

const mostPlaces = 6;
