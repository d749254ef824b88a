import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexDivisions, indexTable } from "../src/index.ts";
import { heads, small } from "./support/arbitraries.ts";
import { threePlates } from "./support/ready.ts";
import { refusalLines } from "./support/refusal.ts";
import { wrong } from "./support/wrong.ts";

describe("indexTable", () => {
  it("has every count in its range, each with the first setting of its answer or none", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 6 }), (head, from, more) => {
        const rows = indexTable(head, { from, to: from + more, teethPerMove: 3 });
        expect(rows.map(({ divisions }) => divisions)).toEqual(Array.from({ length: more + 1 }, (_, index) => from + index));
        for (const { divisions, setting } of rows) {
          expect(setting).toEqual(indexDivisions(head, divisions, { teethPerMove: 3, limit: 1 }).settings[0] ?? null);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("a table that is refused", () => {
  const noCount = "is not a count of divisions; give a whole number from 1 to 10,000,000";

  it.each([
    [{ from: 10, to: 9 }, "to: 9 is below 10; give the smaller count first"],
    [{ from: 0, to: 9 }, `from: 0 ${noCount}`],
    [{ from: 2, to: 1e8 }, `to: 100000000 ${noCount}`],
    [{ from: 2 }, `to: undefined ${noCount}`],
    [{ from: 1, to: 100_001 }, "to: 100,001 counts are too many for one table; give at most 100,000"],
  ])("%j", (options, line) => {
    expect(refusalLines(() => indexTable(threePlates, wrong(options)))).toEqual([line]);
  });
});
