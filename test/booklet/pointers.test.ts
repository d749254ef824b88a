import { describe, expect, it } from "vitest";
import { type BookletOptions, paperNames, wallPaperNames } from "../../booklet/index.ts";
import { paperNamed, wallPaperNamed } from "../../booklet/layout/papers.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { eachWithEach, everyOf, farthest } from "../support/sweep.ts";
import { fiveToOne, secondHand } from "./heads.ts";
import { astray, countNamed, hasRow, linksAstray, pointersOn } from "./pointers.ts";
import { printedBook, readBack } from "./read-back.ts";
import { linesOf, openPdf, type Piece } from "./read-pdf.ts";
import { linesIn, pagesOn, wallBook, wholeBook } from "./set-pages.ts";

const heads = [...readyHeads, secondHand, fiveToOne];
const [usual] = readyHeads as readonly [Head];
const all = { from: 2, to: farthest };

describe("what points to a page in the book", () => {
  it.each(eachWithEach(heads, paperNames))("leads every count to the page that has its row: %s", (_, head, paper) => {
    const pages = pagesOn(paperNamed(paper), wholeBook(head, all));
    const lines = pages.map(linesIn);
    // Where every count stands in one row in its order, only contents and readings point.
    expect(pointersOn(lines).length).toBeGreaterThan(head.plates.length === 0 ? 5 : farthest - 1);
    expect(astray(lines)).toEqual([]);
    expect(linksAstray(pages)).toEqual([]);
  });

  it.each(eachWithEach(heads, wallPaperNames))("and on the wall: %s", (_, head, paper) => {
    const pages = pagesOn(wallPaperNamed(paper), wallBook(head, all));
    expect(astray(pages.map(linesIn))).toEqual([]);
    expect(linksAstray(pages)).toEqual([]);
  });
});

describe("in the file", () => {
  const files = [
    ["the book on A4", 600, {}],
    ["the book on half Letter", 600, { paper: "half-letter" }],
    ["the wall", 250, { as: "wall" }],
  ] as const;
  it.each(everyOf(3, files))("%s: numbers and links lead to the row", async (_, least, options: BookletOptions) => {
    const bytes = await printedBook(usual, options);
    const lines = (await readBack(usual, options)).map(linesOf);
    expect(pointersOn(lines).length).toBeGreaterThan(least);
    expect(astray(lines)).toEqual([]);
    const links = await linksIn(bytes);
    expect(links.length).toBeGreaterThan(100);
    const wrong = links.filter(({ to, page }) => {
      const count = countNamed(to);
      return count !== undefined && !hasRow(lines[page - 1] ?? [], count);
    });
    expect(wrong).toEqual([]);
  });

  it.each(everyOf(2, ["half-letter", "a5"] as const))(
    "a booklet folded from %s: numbers lead to the page of that number",
    async (paper) => {
      const sides = await readBack(usual, { as: "booklet", paper });
      const width = 2 * paperNamed(paper).width;
      const pages = new Map(
        sides.flatMap((side) => halves(side, width / 2)).map((pieces) => [numberOf(pieces), linesOf(pieces)] as const),
      );
      const lines = Array.from({ length: Math.max(...pages.keys()) }, (_, index) => pages.get(index + 1) ?? []);
      expect(pointersOn(lines).length).toBeGreaterThan(600);
      expect(astray(lines)).toEqual([]);
    },
  );
});

/** Where each link leads, by name and by page from 1. */
async function linksIn(bytes: Uint8Array): Promise<readonly { readonly to: string; readonly page: number }[]> {
  const document = await openPdf(bytes);
  const found: { to: string; page: number }[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    for (const { dest } of await (await document.getPage(number)).getAnnotations()) {
      const [place] = (await document.getDestination(dest)) ?? [];
      found.push({ to: String(dest), page: 1 + (await document.getPageIndex(place)) });
    }
  }
  await document.destroy();
  return found;
}

/** The two pages of a side; one that is blank is left out. */
function halves(side: readonly Piece[], spine: number): readonly (readonly Piece[])[] {
  const [left, right] = [side.filter((piece) => piece.left < spine), side.filter((piece) => piece.left >= spine)];
  return [left, right].filter((pieces) => pieces.length > 0);
}

function numberOf(pieces: readonly Piece[]): number {
  return Number(pieces.map(({ text }) => /^page (\d+) of/.exec(text)?.[1]).find((number) => number !== undefined));
}
