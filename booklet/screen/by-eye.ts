import { parseAngle, type Revolutions } from "../../src/index.ts";
import { angleTyped, refuseTyped, wholeTyped } from "./numbers-typed.ts";

/** An angle that was read by eye, as it was written. */
export interface ReadByEye {
  readonly angle: Revolutions;
  /** How far off it may be either way. */
  readonly either: Revolutions;
  /** The same in the words of the person. */
  readonly eitherWritten: string;
  /** How many teeth it was read over. */
  readonly teeth: number;
}

/** `±`, or the two signs one after the other, as the keys of a phone have them. */
const plusOrMinus = /±|\+\/?[-−]/;

/** Whether what was written is an angle read by eye; whether it can be read is seen later. */
export function isByEye(text: string): boolean {
  return plusOrMinus.test(text);
}

/**
 * Reads `2.9° ± 0.05°`, or `14.5° ± 0.05° over 5`: an angle read by eye over one tooth or several.
 *
 * @throws {@link InputError} in a sentence where it is none.
 */
export function byEyeTyped(text: string): ReadByEye {
  const [angle = "", after = "", more] = text.split(plusOrMinus);
  if (more !== undefined) refuseTyped("", `"${text.slice(0, 40)}" has more than one ±; write an angle such as "2.9° ± 0.05°"`);
  const [, either = "", teeth = "1"] = /^(.*?)(?:\s+over\s+(\d+)(?:\s+teeth)?)?\s*$/s.exec(after) ?? [];
  const eitherWritten = either.trim();
  return {
    angle: parseAngle(angle),
    either: angleTyped(eitherWritten, "after ±"),
    eitherWritten,
    teeth: wholeTyped(teeth, "over"),
  };
}
