import { describe, expect, it } from "vitest";
import { defineHead, type Head, indexTable } from "../../src/index.ts";
import { type Turns, turnsOf } from "../support/bench.ts";
import { fiveToOne as oneRow } from "./heads.ts";
import { printedSeries } from "./printed-series.ts";
import { readBack } from "./read-back.ts";
import { linesOf, type Piece } from "./read-pdf.ts";
import { arcIn, lastDecimalOf, worstOff } from "./reading-on-scale.ts";

const circles = [15, 16, 17, 18, 19, 20];
const fiveToOne = defineHead({
  id: "ratio-5-one-plate",
  wormRatio: 5,
  plates: [{ name: "1", circles }],
  ring: { marksPerTurn: 360 },
});

const bareTitle = "Counts that nothing comes near";

/** The counts that something comes near, each with what that is; and those that nothing does, as their rows name them. */
async function printedOf(head: Head) {
  const pages = await readBack(head, { parts: ["impossible"] });
  const isBare = pages.map((page) => {
    const from = page.find(({ text }) => text.startsWith(bareTitle))?.y ?? Number.POSITIVE_INFINITY;
    return ({ y, text }: Piece) => y >= from && !/^page \d+ of/.test(text);
  });
  const near = pages.map((page, index) => page.filter((piece) => !isBare[index]?.(piece)));
  const bare = pages.flatMap((page, index) => linesOf(page.filter((piece) => isBare[index]?.(piece))));
  const runs = bare.flatMap((line) => [...line.matchAll(/(\d+)(?:–(\d+))?\|×\|([^|]+)/g)]);
  return {
    pages,
    rows: printedSeries(near, "Count")[0]?.rows ?? [],
    runs: runs.map(([, first, last = first, nearest]) => ({ first: Number(first), last: Number(last), nearest })),
  };
}

interface Run {
  readonly first: number;
  readonly last: number;
}

function countsOf(runs: readonly Run[]): readonly number[] {
  return runs.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, step) => first + step));
}

describe("a head with one plate on a ratio of 5, which does few counts", async () => {
  const pages = await readBack(fiveToOne);
  const { rows, runs } = await printedOf(fiveToOne);
  const found = indexTable(fiveToOne, { from: 2, to: 400 });
  const done = found.filter(({ setting }) => setting !== null).map(({ divisions }) => divisions);

  it("has each count that is not possible once, on four pages at most", () => {
    const notDone = found.filter(({ setting }) => setting === null).map(({ divisions }) => divisions);
    expect(notDone.length).toBeGreaterThan(300);
    const told = [...rows.map(({ Count }) => Number(Count)), ...countsOf(runs)];
    expect(told.sort((a, b) => a - b)).toEqual(notDone);
    const marked = pages.slice(1).filter((page) => linesOf(page).some((line) => line.endsWith("NOT POSSIBLE")));
    expect(marked.length).toBeLessThanOrEqual(4);
    expect(pages.length).toBeLessThanOrEqual(16);
  });

  it("names the nearest counts that are", () => {
    const wrong = rows.filter((row) => {
      const count = Number(row.Count);
      const [below, above] = [done.findLast((each) => each < count), done.find((each) => each > count)];
      const named = (row["nearest done"] ?? "").split(", ").map(Number);
      return below !== undefined && above !== undefined && !(named.includes(below) && named.includes(above));
    });
    expect(wrong).toEqual([]);
  });

  it("says how far the best is off at its worst: never less than by holes or ring, and no more than either", () => {
    const byHoles = circles.map((holes) => turnsOf(String(5 * holes)));
    for (const row of rows) {
      const [count, text, by] = [Number(row.Count), row["off by"] ?? "", row.by ?? ""];
      const worst = (places: readonly Turns[]) => Math.min(...places.map((each) => worstOff(count, each)));
      const [hole, ring] = [worst(byHoles), worstOff(count, turnsOf("360"))];
      const off = text === "exact" ? 0 : arcIn(text);
      const bound = { hole, ring, move: 0 }[by] ?? Number.NaN;
      // No other way comes nearer, but for what would leave a place as near to its neighbour.
      const best = Math.min(hole, ring);
      expect(off, row.Count).toBeGreaterThanOrEqual(bound - 1e-6);
      expect(off, row.Count).toBeLessThan(Math.min(best, 648_000 / count) + (text === "exact" ? 1e-6 : lastDecimalOf(text)));
    }
    for (const count of countsOf(runs)) {
      const places = [...byHoles, turnsOf("360")];
      expect(Math.min(...places.map((each) => worstOff(count, each))), String(count)).toBeGreaterThanOrEqual(648_000 / count);
    }
    expect(rows.filter((row) => row["off by"] === "exact").map(({ Count, by }) => [Count, by])).toEqual(
      ["12", "24", "36", "60", "72", "120", "180", "360"].map((count) => [count, "ring"]),
    );
  });
});

describe("counts that nothing comes near", async () => {
  const { pages, rows, runs } = await printedOf(oneRow);

  it("stand in one row from first to last, on one page with all others", () => {
    const notDone = indexTable(oneRow, { from: 2, to: 400 }).filter(({ setting }) => setting === null);
    const near = rows.map(({ Count }) => Number(Count));
    expect([...near, ...countsOf(runs)]).toEqual(notDone.map(({ divisions }) => divisions));
    expect(runs).toEqual([{ first: 101, last: 400, nearest: "100" }]);
    expect(pages.slice(1).filter((page) => linesOf(page).some((line) => line.endsWith("NOT POSSIBLE"))).length).toBe(1);
  });

  it("are those alone that every hole leaves half a division off at some place", () => {
    const worst = (count: number) => Math.min(...circles.map((holes) => worstOff(count, turnsOf(String(5 * holes)))));
    const isBare = (count: number) => worst(count) >= 648_000 / count;
    expect(countsOf(runs).filter((count) => !isBare(count))).toEqual([]);
    expect(rows.filter(({ Count }) => isBare(Number(Count)))).toEqual([]);
  });
});

/** No move of its few holes comes near, and its ring does. */
const ringAlone = defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }], ring: { marksPerTurn: 360 } });

it("in full rows, too, a ring that has a mark for every position is said to be exact, and no near move is spoken of", async () => {
  const pages = await readBack(ringAlone, { parts: ["impossible"], from: 50, to: 100 });
  const lines = pages.flatMap(linesOf);
  expect(lines.join(" ")).toMatch(/each set by itself from one zero/);
  expect(lines.join(" ")).not.toMatch(/near move/);
  const exact = lines.filter((line) => /\|exact\|/.test(line)).map((line) => Number.parseInt(line, 10));
  expect(exact).toEqual([60, 72, 90]);
});
