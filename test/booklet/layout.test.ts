import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jobOf } from "../../booklet/content/job.ts";
import { boxOf, flattened, type Mark, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { frameOf, type Paper } from "../../booklet/layout/paper.ts";
import { paperNamed, paperNames, wallPaperNamed, wallPaperNames } from "../../booklet/layout/papers.ts";
import { insideFurniture } from "../../booklet/layout/running.ts";
import { defineHead, type Head, type HeadSpec, indexDivisions, readyHeads } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { eachWithEach, everyOf, farthest, runs } from "../support/sweep.ts";
import { headSpec } from "./heads.ts";
import { faultsIn, slack } from "./page-faults.ts";
import { edition, pagesOn, type Wanted, wallBook, wholeBook } from "./set-pages.ts";

function bookPages(head: Head, paper: Paper, wanted: Wanted): readonly Page[] {
  return pagesOn(paper, wholeBook(head, wanted));
}

function wallPages(head: Head, paper: Paper, wanted: Wanted): readonly Page[] {
  return pagesOn(paper, wallBook(head, wanted));
}

function jobPages(head: Head, paper: Paper, divisions: number): readonly Page[] {
  return pagesOn(paper, jobOf(head, edition, { divisions }));
}

describe("laws of the page", () => {
  it.each(paperNames.map((name, index) => [name, readyHeads[index] as Head] as const))(
    "on %s nothing lies outside the margins or over anything else",
    (name, head) => {
      const paper = paperNamed(name);
      expect(faultsIn(bookPages(head, paper, { from: 2, to: farthest, degreeTables: [7, 127] }), paper)).toEqual([]);
    },
  );

  it.each(wallPaperNames.map((name, index) => [name, readyHeads[index] as Head] as const))(
    "nor on the wall on %s",
    (name, head) => {
      const paper = wallPaperNamed(name);
      expect(faultsIn(wallPages(head, paper, { from: 2, to: farthest }), paper)).toEqual([]);
    },
  );

  it("nor for any head on any paper", () => {
    fc.assert(
      fc.property(headSpec, fc.constantFrom(...paperNames), fc.constantFrom(...wallPaperNames), (spec, name, wallName) => {
        const head = defineHead(spec as HeadSpec);
        const [paper, wall] = [paperNamed(name), wallPaperNamed(wallName)];
        expect(faultsIn(bookPages(head, paper, { from: 2, to: 16, degreeTables: [7] }), paper)).toEqual([]);
        expect(faultsIn(wallPages(head, wall, { from: 6, to: 13 }), wall)).toEqual([]);
        if (indexDivisions(head, 13, { limit: 1 }).exact || head.ring || head.dial)
          expect(faultsIn(jobPages(head, paper, 13), paper)).toEqual([]);
      }),
      runs(20),
    );
  });

  it.each(eachWithEach(wallPaperNames, readyHeads))("on the wall how to read it stands on one sheet: %s", (_, name, head) => {
    expect(titled(wallPages(head, wallPaperNamed(name), { from: 2, to: 100 }), "How to read it")).toBe(1);
  });

  it.each(eachWithEach(paperNames, readyHeads))("the title page is one page, and how to read it another: %s", (_, name, head) => {
    const pages = bookPages(head, paperNamed(name), { from: 2, to: 60 });
    expect(pages.slice(0, 3).map((page) => headOf(page))).toEqual([head.name, "How to read it", "What this head can do"]);
  });

  it.each([
    ["a4", 86],
    ["letter", 62],
  ] as const)("%s: a job of up to %i teeth ends within two pages, notes and all", (name, most) => {
    for (const head of everyOf(2, readyHeads)) {
      for (const divisions of [7, 13, 24, 36, 48, most])
        expect(jobPages(head, paperNamed(name), divisions).length).toBeLessThan(3);
    }
  });

  it("the usual book is at most 30 pages of A4, and less than three of them are white", () => {
    const paper = paperNamed("a4");
    const pages = bookPages(readyHeads[0] as Head, paper, { from: 2, to: 400 });
    const white = pages.map((page, index) => whiteOn(page, index + 1, paper));
    expect(pages.length).toBeLessThanOrEqual(30);
    expect(Math.max(...white)).toBeLessThan(0.9);
    expect(white.reduce((sum, each) => sum + each, 0)).toBeLessThan(3);
  });

  it("keeps apart the figures that count spaces where the arms stand close together", () => {
    const head = defineHead({ wormRatio: 2642, plates: [{ name: "A", circles: [2, 377] }] });
    const paper = paperNamed("a4");
    expect(faultsIn(bookPages(head, paper, { from: 2, to: 8 }), paper)).toEqual([]);
  });

  it("keeps apart figures of three digits at the foot of a small plate", () => {
    const head = defineHead({
      wormRatio: 21,
      plates: [{ name: "A", circles: [2, 230] }],
      gears: [66, 70],
    });
    const paper = paperNamed("a4");
    expect(faultsIn(jobPages(head, paper, 13), paper)).toEqual([]);
  });

  it("keeps apart the names of shafts that stand close beside a large gear", () => {
    const head = defineHead({ wormRatio: 812, plates: [{ name: "A", circles: [2, 387] }], gears: [16, 21, 21, 119] });
    const paper = paperNamed("a4");
    expect(faultsIn(bookPages(head, paper, { from: 2, to: 16 }), paper)).toEqual([]);
  });

  it("keeps apart the large figures of the title page where every kind of count is there", () => {
    const head = defineHead({
      wormRatio: "1/2",
      plates: [{ name: "A", circles: [235, 51, 2] }],
      rearPin: true,
      gears: [16, 16],
    });
    const paper = paperNamed("half-letter");
    expect(faultsIn(bookPages(head, paper, { from: 2, to: 16 }), paper)).toEqual([]);
  });

  // 7.6 pt is 16 minutes of arc at 40 cm, a book in the hand, and 10 pt is 20; 12 pt is 16 at 60 cm, a
  // book that lies by the machine; 14 pt more than that at 70 cm, a sheet on the wall.
  const leastInBook = [
    ["a4", 12, "ratio-40-plates-15-49"],
    ["letter", 12, "ratio-40-plates-15-49-ungeared"],
    ["a5", 10, "ratio-40-faces-24-66"],
    ["half-letter", 10, "ratio-90-dial"],
    ["a4", 12, "ratio-72-table-15-49"],
    ["half-letter", 10, "ratio-40-plates-15-49"],
  ] as const;
  it.each(leastInBook)(
    "%s: what the hand sets is never smaller than %i points, nor a column's head than a note: %s",
    (name, least, id) => {
      const pages = bookPages(ready(id), paperNamed(name), { from: 2, to: farthest });
      expect(leastSet(pages)).toBeGreaterThanOrEqual(least);
      const sizes = pages.flatMap(({ marks }) => tableTexts(marks)).map(({ size }) => size);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(paperNamed(name).note);
    },
  );

  it.each(wallPaperNames)("%s: nor on the wall than can be read at 70 cm", (name) => {
    expect(leastSet(wallPages(readyHeads[0] as Head, wallPaperNamed(name), { from: 2, to: farthest }))).toBeGreaterThanOrEqual(
      14,
    );
  });
});

/** The part of a page under all that stands on it. */
function whiteOn({ marks }: Page, number: number, paper: Paper): number {
  const { top, bottom } = insideFurniture(frameOf(paper, number), paper);
  const deepest = [...flattened(marks)].flatMap((mark) => {
    const box = boxOf(mark);
    return box !== null && box[1] > top - slack && box[3] < bottom + slack ? [box[3]] : [];
  });
  return (bottom - Math.max(top, ...deepest)) / (bottom - top);
}

/** How many sheets bear this title. */
function titled(pages: readonly Page[], title: string): number {
  return pages.filter((page) => headOf(page) === title).length;
}

/** The title at the head of a page, its lines in one; empty where none is. */
function headOf({ marks }: Page): string {
  return marks
    .flatMap((mark) => (mark.kind === "group" && mark.role === "H1" ? [...flattened(mark.marks)] : []))
    .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
    .join(" ");
}

/** The smallest bold figure in a table: bold is what the hand sets. */
function leastSet(pages: readonly Page[]): number {
  const texts = pages.flatMap(({ marks }) => tableTexts(marks));
  return Math.min(...texts.filter(({ weight, text }) => weight === "bold" && /^\d+$/.test(text)).map(({ size }) => size));
}

function tableTexts(marks: readonly Mark[]): readonly TextMark[] {
  return marks
    .flatMap((mark) => (mark.kind === "group" && mark.role === "Table" ? [...flattened(mark.marks)] : []))
    .filter((mark): mark is TextMark => mark.kind === "text");
}
