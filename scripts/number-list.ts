import { fault, wholeNumber } from "./command-line.ts";

/** The most numbers that a list may name: as many places as the library lists at once. */
const mostListed = 50_000;

/**
 * Reads numbers such as `31,32,33`, `31-33` or `7,11,30-36`, in the order written.
 *
 * The list is measured run by run before any of it is made, so that it never takes more room than
 * its bound allows.
 *
 * @param most - The greatest number that will be taken; a longer run is cut there, for its numbers
 * are refused as soon as they are looked at.
 */
export function numbersListed(text: string, place: string, most: number = mostListed): readonly number[] {
  const runs = text.split(",").map((piece) => runOf(piece, place, most));
  let named = 0;
  for (const { length } of runs) {
    named += length;
    if (named > mostListed) {
      const shown = mostListed.toLocaleString("en-US");
      throw fault("too-many", place, `names over ${shown} numbers, too many to list; give at most ${shown}`);
    }
  }
  return runs.flatMap(({ from, length }) => Array.from({ length }, (_, index) => from + index));
}

interface Run {
  readonly from: number;
  readonly length: number;
}

function runOf(piece: string, place: string, most: number): Run {
  const [first = "", last = first, more] = piece.split(/[-–]/);
  const [from, to] = [wholeNumber(first, place), wholeNumber(last, place)];
  if (more === undefined && to >= from) return { from, length: Math.min(to - from, most) + 1 };
  throw fault(
    "unreadable",
    place,
    `"${piece.trim().slice(0, 40)}" is not a run of numbers; write the smaller first, such as 31-33, or list them`,
  );
}
