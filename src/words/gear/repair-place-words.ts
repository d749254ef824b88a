import type { RecutPlan } from "../../gear/repair/damaged-teeth.ts";
import type { RepairPlace, RepairPurpose } from "../../gear/repair/repair-places.ts";

/** What is done at a space, in a table. */
export const purposeWords: Readonly<Record<RepairPurpose, string>> = {
  "set the cutter": "START",
  recut: "cut",
  "prove the count": "PROVE",
};

/** The two teeth of a space, those built up marked by a star: `30 | 31*`. */
export function betweenWords({ toothSpace }: RepairPlace, { damaged, teeth }: RecutPlan): string {
  const tooth = (number: number) => `${number}${damaged.includes(number) ? "*" : ""}`;
  return `${tooth(toothSpace)} | ${tooth((toothSpace % teeth) + 1)}`;
}

/** What a list of the spaces begins with. */
export const startWords =
  "START: a sound space. Set the cutter in it, then the scales to its line. * marks a built-up tooth; a flank without it is sound: it guides, do not cut it.";

/** What the last of them is for. */
export const proveWords =
  "PROVE: a sound space past the last cut. Before any metal is cut go there with the cutter stopped and see that it drops in; if not, the count or the setting is wrong. Then go back past START and come up to it again, not on round: the holes would be others, and a near setting further off.";
