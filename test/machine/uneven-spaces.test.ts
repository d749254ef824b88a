import { describe, expect, it } from "vitest";
import { allDifferent, neighboursDiffer, type SpacesWanted } from "../../src/machine/uneven-spaces.ts";

/** Every list of so many numbers within the bounds that comes to the sum. */
function* everyList({ many, sum, least, greatest }: SpacesWanted): Generator<readonly number[]> {
  if (many === 0) {
    if (sum === 0) yield [];
    return;
  }
  for (let first = least; first <= greatest; first += 1)
    for (const rest of everyList({ many: many - 1, sum: sum - first, least, greatest })) yield [first, ...rest];
}

const haveUnlikeNeighbours = (list: readonly number[]) =>
  list.length > 1 && list.every((each, index) => each !== list[(index + 1) % list.length]);
const areAllDifferent = (list: readonly number[]) => list.length > 1 && new Set(list).size === list.length;

const cases = [1, 2, 3, 4, 5].flatMap((many) =>
  [1, 2, 3, 4].flatMap((span) =>
    Array.from({ length: many * span + 3 }, (_, over) => ({ many, least: 3, greatest: 3 + span, sum: 3 * many + over - 1 })),
  ),
);

describe.each([
  ["neighbours that differ", neighboursDiffer, haveUnlikeNeighbours],
  ["spaces that all differ", allDifferent, areAllDifferent],
] as const)("%s", (_, found, holds) => {
  it("are found wherever there are any, by trying every list", () => {
    for (const wanted of cases) {
      const spaces = found(wanted);
      const { value } = [...everyList(wanted)].filter(holds).values().next();
      expect(spaces === null, JSON.stringify(wanted)).toBe(value === undefined);
      if (spaces === null) continue;
      expect(holds(spaces)).toBe(true);
      expect(spaces.reduce((sum, each) => sum + each, 0)).toBe(wanted.sum);
      expect(spaces.every((each) => each >= wanted.least && each <= wanted.greatest)).toBe(true);
    }
  });
});
