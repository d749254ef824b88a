import type Fraction from "fraction.js";
import { quoted, refuse } from "../number/errors.ts";
import { isPositive, rational, readExact } from "../number/ratio.ts";
import type { SettingGears } from "../setting/setting.ts";
import { checkTrain } from "./check-train.ts";

/** Plate turns for one turn of the spindle by a train, + with the crank. */
export function plateRatio({ drivers, driven, direction }: Pick<SettingGears, "drivers" | "driven" | "direction">): Fraction {
  checkTrain(drivers, driven);
  const pairs = drivers.map((driver, index) => holes(driver, driven[index] ?? 0, "gears"));
  return towards(
    direction,
    pairs.reduce((all, pair) => all.mul(pair)),
    "gears",
  );
}

/** Turns with the crank count up, turns against it down. */
export function towards(direction: unknown, turns: Fraction, place: string): Fraction {
  if (direction === "with") return turns;
  if (direction === "against") return turns.neg();
  return refuse("unknown-word", `setting.${place}.direction`, `${quoted(direction)} is neither "with" nor "against"`);
}

/** So many holes of a circle, in turns. */
export function holes(count: number, circle: number, place: string): Fraction {
  if (!Number.isSafeInteger(count) || count < 0 || !Number.isSafeInteger(circle) || circle < 1) {
    refuse("unreadable", `setting.${place}`, `${quoted(count)} of ${quoted(circle)} is not a move in whole holes`);
  }
  return rational(count, circle);
}

/** Reads an exact number above 0 of a setting. */
export function exactNumber(text: unknown, place: string): Fraction {
  const value = readExact(text);
  if (value !== null && isPositive(value)) return value;
  return refuse("unreadable", `setting.${place}`, `${quoted(text)} is not an exact number above 0, such as "40" or "81/2"`);
}
