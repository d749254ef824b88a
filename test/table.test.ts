import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexDivisions, indexRows, indexTable } from "../src/index.ts";
import { heads, small } from "./support/arbitraries.ts";
import { threePlates } from "./support/ready.ts";
import { refusalLines } from "./support/refusal.ts";
import { runs } from "./support/sweep.ts";
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
      runs(40),
    );
  });
});

describe("a table that is watched", () => {
  it("says after every count how many are done, and of how many", () => {
    const told: string[] = [];
    const rows = indexTable(threePlates, { from: 5, to: 8, onProgress: (done, total) => told.push(`${done}/${total}`) });
    expect([told, rows]).toEqual([["1/4", "2/4", "3/4", "4/4"], indexTable(threePlates, { from: 5, to: 8 })]);
  });

  it("stops where it is told to, with the reason given", () => {
    const stop = new AbortController();
    const { signal } = stop;
    let most = 0;
    const onProgress = (done: number) => {
      most = done;
      if (done === 3) stop.abort(new Error("enough"));
    };
    expect(() => indexTable(threePlates, { from: 2, to: 20_000, signal, onProgress })).toThrow("enough");
    expect(most).toBe(3);
    expect(() => indexTable(threePlates, { from: 2, to: 9, signal })).toThrow("enough");
  });

  it("is gone through count by count, no further than it is asked, and the same", () => {
    const range = { from: 90, to: 130, teethPerMove: 4 };
    expect([...indexRows(threePlates, range)]).toEqual(indexTable(threePlates, range));
    for (const { divisions } of indexRows(threePlates, { from: 2, to: 100_000 })) {
      if (divisions < 5) continue;
      expect(divisions).toBe(5);
      break;
    }
  });

  it.each([
    [{ signal: {} }, "signal: an object is no signal to stop by; give the signal of an AbortController"],
    [{ onProgress: 3 }, "onProgress: 3 is not a function; give one that takes how many are done, and of how many"],
  ])("%j is refused", (watch, line) => {
    expect(refusalLines(() => indexTable(threePlates, wrong({ from: 2, to: 3, ...watch })))).toEqual([line]);
  });
});

describe("a table that is refused", () => {
  const noCount = "is not a count of divisions; give a whole number from 1 to 10,000,000";

  it.each([
    [{ from: 10, to: 9 }, "to: 9 is below 10; give the smaller count first"],
    [{ from: 0, to: 9 }, `from: 0 ${noCount}`],
    [{ from: 2, to: 1e8 }, `to: 100000000 ${noCount}`],
    [{ from: 2 }, `to: undefined ${noCount}`],
    [{ from: 1, to: 20_001 }, "to: 20,001 counts are too many for one table; give at most 20,000 at a time"],
  ])("%j", (options, line) => {
    expect(refusalLines(() => indexTable(threePlates, wrong(options)))).toEqual([line]);
  });
});
