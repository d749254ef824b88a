import type { RecutPlan } from "../../gear/repair/damaged-teeth.ts";
import type { RepairPurpose } from "../../gear/repair/repair-places.ts";
import type { Way } from "../../machine/way.ts";
import { type GoesBy, goesBy } from "../place-words.ts";

/** What is done at a space, in a word. */
export const purposeWords: Readonly<Record<RepairPurpose, string>> = Object.freeze({
  "set the cutter": "START",
  recut: "cut",
  "prove the count": "PROVE",
});

const goOn: Readonly<Record<GoesBy, string>> = {
  marks: "",
  "both-cranks": "",
  "spindle-row": "",
  "spindle-holes": " Go on by spaces from the line before.",
  "index-holes": " Go on by turns + spaces from the line before.",
};

/** How a list of the places begins, and what its marks mean. */
export function startWords(way: Way): string {
  return `START: a sound space. Set the cutter in it, then the scales to its line.${goOn[goesBy(way)]} * marks a built-up tooth; a flank without it is sound: it guides, do not cut it.`;
}

/** How the count is proved before any metal is cut. */
export const provingWords =
  "PROVE: a sound space past the last cut. Before any metal is cut go there with the cutter stopped and see that it drops in; if not, the count or the setting is wrong. Then go back past START and come up to it again, not on round: the holes would be others, and a near setting further off.";

/** The two teeth beside a space, a built-up one with its mark: `30 | 31*`. */
export function betweenWords(toothSpace: number, { teeth, damaged }: RecutPlan): string {
  const tooth = (number: number) => `${number}${damaged.includes(number) ? "*" : ""}`;
  return `${tooth(toothSpace)} | ${tooth((toothSpace % teeth) + 1)}`;
}
