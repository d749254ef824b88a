import { fault, wholeNumber } from "./command-line.ts";

/**
 * Reads numbers such as `31,32,33`, `31-33` or `7,11,30-36`, in the order written.
 *
 * @param most - The most that one run may name; a longer run is cut there, for its numbers are
 * refused as soon as they are looked at.
 */
export function numbersListed(text: string, place: string, most: number): readonly number[] {
  return text.split(",").flatMap((piece) => {
    const [first = "", last = first, more] = piece.split(/[-–]/);
    const [from, to] = [wholeNumber(first, place), wholeNumber(last, place)];
    if (more !== undefined || to < from) {
      throw fault(
        "unreadable",
        place,
        `"${piece.trim().slice(0, 40)}" is not a run of numbers; write the smaller first, such as 31-33, or list them`,
      );
    }
    return Array.from({ length: Math.min(to - from, most) + 1 }, (_, index) => from + index);
  });
}
