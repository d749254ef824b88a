import { boxOf, type TextMark } from "./marks.ts";

/**
 * Which of many things round a circle have room for their number, counted from 1: the first, and every 2nd, 5th, 10th …
 * of them all.
 *
 * @param most - Numbers that have room beside each other round the circle.
 */
export function numbered(count: number, most: number): readonly number[] {
  const all = Array.from({ length: count }, (_, index) => index + 1);
  let every = 1;
  for (const times of endless([2, 2.5, 2])) {
    if (count / every <= Math.max(1, most)) break;
    every *= times;
  }
  // Beside the first none that is nearer to it than they are to each other.
  return all.filter(
    (each) => each === 1 || (each % every === 0 && (each - 1) / every >= 0.75 && (count + 1 - each) / every >= 0.75),
  );
}

function* endless(times: readonly number[]): Generator<number> {
  for (;;) yield* times;
}

/** Between two numbers, in points. */
const apart = 1.5;

/** Those that have room, the first always: none over one that stands already. */
export function clearOfEachOther(numbers: readonly TextMark[]): readonly TextMark[] {
  const kept: TextMark[] = [];
  for (const number of numbers) if (!kept.some((each) => overlap(each, number))) kept.push(number);
  return kept;
}

function overlap(one: TextMark, other: TextMark): boolean {
  const [a, b] = [boxOf(one), boxOf(other)];
  if (a === null || b === null) return false;
  return a[0] < b[2] + apart && b[0] < a[2] + apart && a[1] < b[3] + apart && b[1] < a[3] + apart;
}
