import { oneOf } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import { waysBy } from "./way.ts";

/** What of the options says how a job is done. */
interface How {
  readonly teeth: unknown;
  readonly after: unknown;
  readonly order: unknown;
  readonly goodEnough: unknown;
  readonly by: unknown;
}

/** Checks how a job is to be done, from callers that no compiler has held to it. */
export function checkHow({ teeth, after, order, goodEnough, by }: How): void {
  oneOf(order, ["given", "moves"], "order");
  if (by !== undefined) oneOf(by, waysBy, "by");
  if (teeth !== undefined && after !== undefined)
    refuse("conflict", "after", "is given beside teeth; name the teeth that are left, or the last that is done");
  if (typeof goodEnough !== "number" || !(goodEnough >= 0))
    refuse("unreadable", "goodEnough", `${quoted(goodEnough)} is not an error in arc-seconds; give 0 or more`);
}

/** A tooth that matters and is not gone to would be passed over in silence. */
export function checkMatters(matters: readonly number[], teeth: readonly number[] | null): ReadonlySet<number> {
  if (teeth === null) refuse("no-effect", "matters", "says nothing without teeth; name the teeth that are gone to");
  const goneTo = new Set(teeth);
  const index = matters.findIndex((tooth) => !goneTo.has(tooth));
  if (index >= 0) refuse("conflict", `matters[${index}]`, `tooth ${matters[index]} is not among the teeth named; add it there`);
  return new Set(matters);
}
