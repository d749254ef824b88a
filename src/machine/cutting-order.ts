import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { gcd } from "../number/ratio.ts";
import { checkDivisions } from "../setting/target.ts";
import { checkListed } from "./listed.ts";

/**
 * The teeth of a count in an order that spreads what cutting does to the work, its heat and its spring: every so
 * many-th tooth, and where that comes back to one that is cut, on from the next that is not.
 *
 * The law: from a tooth on, steps of m reach N/g teeth of N before they come back, with g their greatest common divisor,
 * so g such rows reach every tooth once. Common practice, no source.
 *
 * @param divisions - The count.
 * @param step - Go on by so many teeth each time, 1 to N − 1; 1 is the usual order.
 * @returns Every tooth once, beginning with 1: as `teeth` of {@link planJob}.
 * @throws {@link InputError} when the count or the step is not allowed, or there are over 50,000 teeth.
 *
 * @example
 * ```ts
 * cuttingOrder(8, 3); // [1,4,7,2,5,8,3,6]
 * ```
 */
export function cuttingOrder(divisions: number, step: number): readonly number[] {
  checkDivisions(divisions);
  checkListed(divisions, "divisions");
  if (!Number.isInteger(step) || step < 1 || step >= Math.max(2, divisions)) {
    const most = Math.max(1, divisions - 1);
    refuse(wholeNumberFault(step), "step", `${quoted(step)} is not a step from tooth to tooth; give 1 to ${most}`);
  }
  const row = divisions / gcd(divisions, step);
  return Array.from({ length: divisions }, (_, index) => {
    const begun = Math.floor(index / row);
    return 1 + ((begun + (index % row) * step) % divisions);
  });
}

/**
 * How often the work goes round when teeth are visited in an order, always onward, and back to the first at the end.
 *
 * @param teeth - The order, no tooth twice running.
 * @param divisions - The count.
 * @throws {@link InputError} when the count is not allowed, or a tooth is none of it.
 *
 * @example
 * ```ts
 * roundsOfOrder(cuttingOrder(8, 3), 8); // 3
 * ```
 */
export function roundsOfOrder(teeth: readonly number[], divisions: number): number {
  checkDivisions(divisions);
  if (!Array.isArray(teeth))
    refuse("unreadable", "teeth", `${quoted(teeth)} is not a list of teeth; give numbers such as [1, 17, 40]`);
  const wrong = teeth.findIndex((tooth) => !Number.isInteger(tooth) || tooth < 1 || tooth > divisions);
  if (wrong >= 0)
    refuse("out-of-range", `teeth[${wrong}]`, `${quoted(teeth[wrong])} is not a tooth of ${divisions}; give 1 to ${divisions}`);
  return roundsOf(teeth, divisions);
}

/** The same of teeth that are known to be of the count, as those of a plan. */
export function roundsOf(teeth: readonly number[], divisions: number): number {
  const [first = 1] = teeth;
  const onward = teeth.reduce((sum, tooth, index) => sum + (((teeth[index + 1] ?? first) - tooth + divisions) % divisions), 0);
  return onward / divisions;
}
