import type Fraction from "fraction.js";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { parseRational } from "../number/parse-rational.ts";
import { isPositive, type Ratio, rational, toRatio } from "../number/ratio.ts";

/** What was done with a head whose worm ratio is not known. */
export interface RatioTrial {
  /** Turns that the crank was given, above 0; whole, or exact text such as `"9.5"`. */
  readonly crankTurns: number | string;
  /** How far the spindle came round by that, in degrees, whole turns of it counted too: 360 for one. */
  readonly degrees: number | string;
  /** How far off that reading may be either way, in degrees. */
  readonly within: number | string;
}

/** A worm ratio that a trial allows. */
export interface RatioCandidate {
  readonly wormRatio: Ratio;
  /** Whether heads and rotary tables are commonly made with it. */
  readonly common: boolean;
  /** How much further the spindle would have come than was read, in degrees; below 0, less far. */
  readonly offDegrees: number;
}

/** What a trial tells of the worm ratio. */
export interface RatioFound {
  /** The least and the greatest ratio that the reading allows, whole or not. */
  readonly least: Ratio;
  readonly greatest: Ratio;
  /** Every common ratio within these, and other whole ones where they are few; the common ones first, then the closest. */
  readonly candidates: readonly RatioCandidate[];
  /** How many whole ratios are within these besides, too many to be listed. */
  readonly unlisted: number;
  /**
   * Crank turns in all, counted on from the start of the trial and read as closely, that leave one
   * candidate alone whatever it is; null where there is no choice of candidates.
   */
  readonly turnsToTellApart: Ratio | null;
}

/**
 * Ratios that dividing heads and rotary tables are made with. Common practice, no source; 40, 60, 72 and 90 are those
 * of this library's ready heads.
 */
const commonRatios: readonly number[] = [
  4, 5, 6, 8, 10, 12, 15, 18, 20, 24, 30, 36, 40, 45, 48, 50, 54, 60, 64, 70, 72, 75, 80, 90, 96, 100, 110, 120, 127, 144, 160,
  180, 240, 360,
];
const mostOthers = 12;
const trialKeys = keysOf<RatioTrial>({ crankTurns: true, degrees: true, within: true });

/**
 * The worm ratios that a trial allows: the crank is turned, and it is read how far the spindle came round.
 *
 * n turns of the crank turn the spindle by 360°·n/R. Read as θ ± w, that leaves 360n/(θ + w) ≤ R ≤ 360n/(θ − w). Two
 * ratios are told apart once what they turn the spindle by differs by more than 2w: over 2w·R₁R₂/(360(R₂ − R₁)) turns.
 *
 * @throws {@link InputError} when something is no number above 0, or the reading is no larger than what it may be off by.
 *
 * @example
 * ```ts
 * ratioFromTrial({ crankTurns: 10, degrees: 90, within: 1 }).candidates[0].wormRatio; // "40"
 * ```
 */
export function ratioFromTrial(trial: RatioTrial): RatioFound {
  checkKeys(trial, trialKeys, "trial");
  const turns = read(trial.crankTurns, "crankTurns");
  const angle = read(trial.degrees, "degrees");
  const within = read(trial.within, "within", true);
  if (within.compare(angle) >= 0)
    refuse("out-of-range", "within", "it is as large as the reading itself, which so tells nothing; give the crank more turns");
  const round = turns.mul(360);
  const [least, greatest] = [round.div(angle.add(within)), round.div(angle.sub(within))];
  const fits = (ratio: number) => least.compare(ratio) <= 0 && greatest.compare(ratio) >= 0;
  const common = commonRatios.filter(fits);
  const [first, last] = [Math.max(1, Number(least.ceil())), Number(greatest.floor())];
  const many = Math.max(0, last - first + 1) - common.length;
  const others =
    many > mostOthers
      ? []
      : Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((ratio) => !commonRatios.includes(ratio));
  const candidate = (ratio: number, isCommon: boolean): RatioCandidate => ({
    wormRatio: toRatio(rational(ratio)),
    common: isCommon,
    offDegrees: round.div(ratio).sub(angle).valueOf(),
  });
  const inOrder = (ratios: readonly number[], isCommon: boolean) =>
    ratios.map((ratio) => candidate(ratio, isCommon)).sort((one, other) => Math.abs(one.offDegrees) - Math.abs(other.offDegrees));
  return {
    least: toRatio(least),
    greatest: toRatio(greatest),
    candidates: [...inOrder(common, true), ...inOrder(others, false)],
    unlisted: many - others.length,
    turnsToTellApart: toTellApart([...common, ...others], within, turns),
  };
}

/** The closest two of several ratios tell how far on the crank must go; half turns of it are easily counted. */
function toTellApart(ratios: readonly number[], within: Fraction, turns: Fraction): Ratio | null {
  const inOrder = ratios.toSorted((one, other) => one - other);
  const needed = inOrder.slice(1).map((larger, index) => {
    const smaller = inOrder[index] ?? larger;
    return within
      .mul(2)
      .mul(rational(BigInt(smaller) * BigInt(larger), BigInt(larger - smaller)))
      .div(360);
  });
  const [most] = needed.toSorted((one, other) => other.compare(one));
  if (most === undefined) return null;
  // More than that, and no fewer than were made.
  const whole = most.floor().add(1);
  return toRatio(whole.compare(turns) > 0 ? whole : turns);
}

function read(value: unknown, place: keyof RatioTrial, mayBeNothing = false): Fraction {
  const found = parseRational(typeof value === "number" ? String(value) : value, place);
  if (isPositive(found) || (mayBeNothing && found.n === 0n)) return found;
  return refuse("out-of-range", place, `${String(value)} is not ${mayBeNothing ? "0 or above" : "above 0"}`);
}
