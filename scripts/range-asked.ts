import { fault, wholeNumber } from "./command-line.ts";

/**
 * Reads a range of counts, such as 2-100, or one count alone.
 *
 * @param such - What is typed, as an example: `table 2-100`.
 */
export function rangeAsked(words: string, such: string): { readonly from: number; readonly to: number } {
  const [first = "", last = first, more] = words.split(/[-–]/);
  if (words.trim() === "" || more !== undefined)
    throw fault("missing", "", `"${words.slice(0, 40)}" is no range of counts; give one such as ${such}`);
  const [place = ""] = such.split(" ");
  return { from: wholeNumber(first, place), to: wholeNumber(last, place) };
}
