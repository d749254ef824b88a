import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { linesOf, type Piece, piecesOf } from "../booklet/read-pdf.ts";
import { run } from "../support/command.ts";
import { ownFolder } from "../support/own-folder.ts";

const folder = ownFolder("job-sheet");

const ofRing = ["booklet", "--head", "ratio-90-dial", "--job", "53", "--by", "ring"];

async function sheet(name: string, words: readonly string[]): Promise<readonly (readonly Piece[])[]> {
  const { code, stderr } = await run([...words, "--out", name], folder);
  expect({ code, stderr }).toMatchObject({ code: 0 });
  return piecesOf(readFileSync(join(folder, name)));
}

/** The teeth of the rows of places on a page: two stand side by side, each with what it is off by and what it reads. */
function teethOn(page: readonly Piece[]): readonly number[] {
  const row = /(?:^|\|)(\d+)\|(?:[+−]\d+\.\d″|0)\|\d+\|\d° \d\d′ \d\d″\|\d+°(?=\||$)/g;
  return linesOf(page).flatMap((line) => [...line.matchAll(row)].map(([, tooth]) => Number(tooth)));
}

const teeth = Array.from({ length: 53 }, (_, index) => index + 1);

describe("the sheet of a job in large type", async () => {
  const pages = await sheet("large.pdf", [...ofRing, "--as", "large"]);

  it("has every place once, the first of them on the page that is half empty without them", () => {
    expect(pages.flatMap(teethOn).sort((a, b) => a - b)).toEqual(teeth);
    const [first = []] = pages;
    expect(teethOn(first).length).toBeGreaterThan(10);
    const foot = Math.min(...first.filter(({ text }) => text === "no plates").map(({ y }) => y));
    const lowest = Math.max(...first.map(({ y }) => y).filter((y) => y < foot - 1));
    expect(lowest / foot).toBeGreaterThan(0.9);
    expect(pages.length).toBe(2);
  });

  it("stands larger than the usual one, row for row", async () => {
    const usual = await sheet("usual.pdf", ofRing);
    expect(usual.flatMap(teethOn).sort((a, b) => a - b)).toEqual(teeth);
    const widest = (sheets: typeof pages) =>
      Math.max(...sheets.flatMap((page) => page.filter(({ text }) => text === "353°").map(({ left, right }) => right - left)));
    expect(widest(pages) / widest(usual)).toBeGreaterThan(14 / 12 - 1e-9);
  });

  it.each([
    [["--as", "wall"], "--as: goes with a book and has no effect on a job sheet"],
    [["--as", "large", "--paper", "a5"], "large type"],
    [["--as", "large", "--to", "60"], "--to: goes with a book and has no effect on a job sheet"],
  ])("%j is refused in a sentence, and nothing is written", async (more, sentence) => {
    const { code, stdout, stderr } = await run([...ofRing, ...more, "--out", "none.pdf"], folder);
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toContain(sentence);
    expect(() => readFileSync(join(folder, "none.pdf"))).toThrow(/ENOENT/);
  });
});
