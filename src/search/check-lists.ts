import { allMethods } from "../methods/registry.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { groupDigits } from "../number/ratio.ts";

/** Checks what a search is to try, from callers that no compiler has held to it. */
export function checkLists(methods: unknown, prefer: unknown): void {
  const known = `the methods are ${allMethods.join(", ")}`;
  for (const [place, list] of Object.entries({ methods, prefer })) {
    if (!Array.isArray(list)) refuse("unreadable", place, `${quoted(list)} is not a list; give its names in a list`);
  }
  const named = methods as readonly unknown[];
  for (const method of named) {
    if (!allMethods.some((each) => each === method))
      refuse("unknown-word", "methods", `there is no method ${quoted(method)}; ${known}`);
  }
  if (named.length === 0) refuse("missing", "methods", `the list names none; ${known}`);
}

const greatestLimit = 100_000;

/** Checks the most settings to return. */
export function checkLimit(limit: unknown): number {
  if (typeof limit === "number" && Number.isInteger(limit) && limit >= 1 && limit <= greatestLimit) return limit;
  return refuse(
    wholeNumberFault(limit),
    "limit",
    `${quoted(limit)} is not a number of settings; give a whole number from 1 to ${groupDigits(greatestLimit)}`,
  );
}
