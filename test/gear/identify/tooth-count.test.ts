import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countsFromMarks, type MarksMeet } from "../../../src/gear/identify/tooth-count.ts";
import { countsFromAngle } from "../../../src/machine/angle-by-eye.ts";
import { revolutions } from "../../../src/number/exact.ts";
import { parseAngle } from "../../../src/number/parse-angle.ts";

/** Turns the two wheels tooth by tooth until both marks are back. */
function turnedTogether(teeth: number, mateTeeth: number): { turns: number; mateTurns: number } {
  let passed = 1;
  while (passed % teeth !== 0 || passed % mateTeeth !== 0) passed += 1;
  return { turns: passed / teeth, mateTurns: passed / mateTeeth };
}

const pairs = fc.record({ teeth: fc.integer({ min: 4, max: 150 }), mateTeeth: fc.integer({ min: 4, max: 150 }) });

describe("marks that meet again", () => {
  it("both turns counted give the one count", () => {
    fc.assert(
      fc.property(pairs, ({ teeth, mateTeeth }) => {
        expect(countsFromMarks({ mateTeeth, ...turnedTogether(teeth, mateTeeth) })).toEqual([teeth]);
      }),
    );
  });

  it("one alone gives every count that does it, and no other", () => {
    fc.assert(
      fc.property(pairs, ({ teeth, mateTeeth }) => {
        const { turns, mateTurns } = turnedTogether(teeth, mateTeeth);
        const range = { least: 4, most: 150 };
        const counts = Array.from({ length: 147 }, (_, index) => index + 4);
        expect(countsFromMarks({ mateTeeth, turns, ...range })).toEqual(
          counts.filter((count) => turnedTogether(count, mateTeeth).turns === turns),
        );
        expect(countsFromMarks({ mateTeeth, mateTurns, ...range })).toEqual(
          counts.filter((count) => turnedTogether(count, mateTeeth).mateTurns === mateTurns),
        );
      }),
      { numRuns: 25 },
    );
  });

  it("no count is an answer: a turn was miscounted", () => {
    expect(countsFromMarks({ mateTeeth: 24, turns: 7 })).toEqual([]);
    expect(countsFromMarks({ mateTeeth: 24, turns: 12, mateTurns: 41, least: 84 })).toEqual([]);
  });

  it.each([
    [{ mateTeeth: 24 }, /turns: no turns are given/],
    [{ mateTeeth: 24, turns: 4, mateTurns: 6 }, /did so after 2 and 3; count to the first meeting/],
    [{ mateTeeth: 2.5, turns: 0, mateTurns: -1 }, /mateTeeth: 2.5 is not.*turns: 0 is not.*mateTurns: -1 is not/],
    [{ mateTeeth: 24, turns: 4, least: 90, most: 80 }, /most: 80 is below the least, 90/],
    [{ mateTeeth: 24, rounds: 4 }, /no key "rounds"/],
  ])("refuses %j", (marks, sentence) => {
    expect(() => countsFromMarks(marks as unknown as MarksMeet)).toThrow(sentence);
  });
});

describe("an angle over several teeth", () => {
  const degrees = (text: string) => parseAngle(`${text}°`);
  const divisionsOf = (angle: string, either: string, teeth: number) =>
    countsFromAngle(degrees(angle), degrees(either), teeth).map(({ divisions }) => divisions);

  it("29° ± 0.05° over 10 teeth is 124 alone, where 2.9° over one left four counts", () => {
    expect(divisionsOf("2.9", "0.05", 1)).toEqual([123, 124, 125, 126]);
    expect(divisionsOf("29", "0.05", 10)).toEqual([124]);
  });

  it("covers the counts whose angle lies within the reading, by trying them all", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 200, max: 3000 }),
        fc.integer({ min: 1, max: 40 }),
        (teeth, read, either) => {
          const fits = Array.from({ length: 4000 }, (_, index) => index + 1).filter(
            (count) => (read - either) * count <= 3600 * teeth && 3600 * teeth <= (read + either) * count,
          );
          expect(
            countsFromAngle(revolutions(`${read}/3600`), revolutions(`${either}/3600`), teeth).map(({ divisions }) => divisions),
          ).toEqual(fits);
        },
      ),
    );
  });

  it("refuses a number of teeth that is none", () => {
    for (const teeth of [0, 1.5, -3])
      expect(() => countsFromAngle(revolutions("1/10"), revolutions("0"), teeth)).toThrow(/teeth: .* is not a count/);
  });
});

it("counts up to 400 teeth where no other most is given, and up to 10,000 turns; least and most may be one count", () => {
  // Of 24 teeth, marks that meet after one turn mean a multiple of 24: sixteen of them to 400.
  expect(countsFromMarks({ mateTeeth: 24, turns: 1 }).at(-1)).toBe(384);
  // All turns of the mate's count: what has no divisor in common with 24, and 399 has the 3.
  expect(countsFromMarks({ mateTeeth: 24, turns: 24 }).at(-1)).toBe(397);
  expect(countsFromMarks({ mateTeeth: 24, turns: 1, least: 48, most: 48 })).toEqual([48]);
  expect(() => countsFromMarks({ mateTeeth: 24, turns: 10_000 })).not.toThrow();
  expect(() => countsFromMarks({ mateTeeth: 24, turns: 10_001 })).toThrow(/10001 is not a whole number from 1 to 10,000/);
  expect(() => countsFromMarks({ mateTeeth: 24, turns: 1, least: 49, most: 48 })).toThrow(/48 is below the least, 49/);
});
