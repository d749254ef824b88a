import { fault } from "./command-line.ts";
import type { MoreOfJob } from "./more.ts";

/** What the output takes in place of words, one of them. */
export const insteadOfWords = ["json", "csv", "markdown"] as const;

/** How an answer is to be told, in place of words. */
export type ToldAs = Pick<MoreOfJob, "json" | "csv" | "markdown">;

/** Reads how an answer is to be told; the output takes one of them. */
export function toldAs(given: { readonly [As in keyof ToldAs]?: boolean }): ToldAs {
  const [one, other] = insteadOfWords.filter((name) => given[name] === true);
  if (other !== undefined) throw fault("conflict", `--${one}`, `is given beside --${other}; give one of the two`);
  return { json: one === "json", csv: one === "csv", markdown: one === "markdown" };
}
