import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bookOf } from "../../booklet/content/book.ts";
import { partIds } from "../../booklet/content/parts.ts";
import { openPrintShop } from "../../booklet/draw/canvas.ts";
import { boxOf, flattened, type Mark, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { setInPages } from "../../booklet/layout/pages.ts";
import { frameOf, paperNamed, paperNames } from "../../booklet/layout/paper.ts";
import { defineHead, type Head, type HeadSpec, readyHeads } from "../../src/index.ts";
import { headSpec } from "./heads.ts";

const { measure } = await openPrintShop();

function pagesOf(
  head: Head,
  paper: string,
  contents: { from: number; to: number; degreeTables?: readonly number[] },
): readonly Page[] {
  const book = bookOf(head, { version: "1.0.0", digest: "0123456789ab" }, { parts: partIds, degreeTables: null, ...contents });
  return setInPages(book, paperNamed(paper), measure).pages;
}

const slack = 0.7;

/** Marks that reach beyond the margins of their page. */
function beyondMargins(page: Page, number: number, paper: string): Mark[] {
  const { left, right, top, bottom } = frameOf(paperNamed(paper), number);
  return [...flattened(page.marks)].filter((mark) => {
    const box = boxOf(mark);
    return box !== null && (box[0] < left - slack || box[1] < top - slack || box[2] > right + slack || box[3] > bottom + slack);
  });
}

/** Pieces of text that lie over each other. */
function overlapping(page: Page): [string, string][] {
  const texts = [...flattened(page.marks)]
    .filter((mark): mark is TextMark => mark.kind === "text" && mark.text !== "")
    .sort((a, b) => a.y - b.y);
  const found: [string, string][] = [];
  for (const [index, one] of texts.entries()) {
    for (const other of texts.slice(index + 1)) {
      if (other.y - one.y > 40) break;
      const [a, b] = [boxOf(one), boxOf(other)];
      if (a && b && Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > 0.3 && Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 0.5)
        found.push([one.text, other.text]);
    }
  }
  return found;
}

/** Pages that end on a heading, which belongs with what follows. */
function endsOnHeading({ marks }: Page): boolean {
  const last = marks.findLast((mark) => mark.kind === "group");
  return last?.kind === "group" && (last.role === "H1" || last.role === "H2");
}

function faultsIn(pages: readonly Page[], paper: string) {
  return pages.flatMap((page, index) => [
    ...beyondMargins(page, index + 1, paper).map((mark) => ({ page: index + 1, beyond: mark })),
    ...overlapping(page).map((pair) => ({ page: index + 1, over: pair })),
    ...(endsOnHeading(page) ? [{ page: index + 1, endsOnHeading: true }] : []),
  ]);
}

describe("laws of the page", () => {
  it.each(paperNames.map((paper, index) => [paper, readyHeads[index] as Head] as const))(
    "%s: nothing lies outside the margins or over anything else",
    (paper, head) => {
      expect(faultsIn(pagesOf(head, paper, { from: 2, to: 400, degreeTables: [7, 127] }), paper)).toEqual([]);
    },
  );

  it("holds for any head on any paper", () => {
    fc.assert(
      fc.property(headSpec, fc.constantFrom(...paperNames), (spec, paper) => {
        const head = defineHead(spec as HeadSpec);
        expect(faultsIn(pagesOf(head, paper, { from: 2, to: 16, degreeTables: [7] }), paper)).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it("keeps apart the figures that count spaces where the arms stand close together", () => {
    const head = defineHead({ wormRatio: 2642, plates: [{ name: "A", circles: [2, 377] }] });
    expect(faultsIn(pagesOf(head, "a4", { from: 2, to: 8 }), "a4")).toEqual([]);
  });

  it.each(paperNames)("prints no figure in a table under the size for %s", (paper) => {
    const least = paper.startsWith("half") || paper === "a5" ? 8 : 8.5;
    const texts = pagesOf(readyHeads[0] as Head, paper, { from: 2, to: 400 }).flatMap(({ marks }) => tableTexts(marks));
    expect(Math.min(...texts.map(({ size }) => size))).toBeGreaterThanOrEqual(least - 1.6);
  });
});

function tableTexts(marks: readonly Mark[]): readonly TextMark[] {
  return marks
    .flatMap((mark) => (mark.kind === "group" && mark.role === "Table" ? [...flattened(mark.marks)] : []))
    .filter((mark): mark is TextMark => mark.kind === "text");
}
