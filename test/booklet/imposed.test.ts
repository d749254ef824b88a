import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sides } from "../../booklet/draw/impose.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { printedBook, readBack } from "./read-back.ts";
import { openPdf, piecesOf } from "./read-pdf.ts";

describe("the order of pages on folded sheets", () => {
  it("is 16 and 1, 2 and 15, 14 and 3 … for sixteen pages", () => {
    const printed = sides(16).map(({ left, right }) => [(left ?? -1) + 1, (right ?? -1) + 1]);
    expect(printed).toEqual([
      [16, 1],
      [2, 15],
      [14, 3],
      [4, 13],
      [12, 5],
      [6, 11],
      [10, 7],
      [8, 9],
    ]);
  });

  it("has every page once, and each leaf's two sides back to back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (pages) => {
        const all = sides(pages);
        const there = all.flatMap(({ left, right }) => [left, right]).filter((page) => page !== null);
        expect(there.sort((a, b) => a - b)).toEqual(Array.from({ length: pages }, (_, index) => index));
        // Folded, the right of a front is backed by the left of its back: pages that follow each other.
        for (let sheet = 0; sheet < all.length; sheet += 2) {
          const [front, back] = [all[sheet], all[sheet + 1]];
          if (front?.right != null && back?.left != null) expect(back.left).toBe(front.right + 1);
          if (front?.left != null && back?.right != null) expect(front.left).toBe(back.right + 1);
        }
      }),
    );
  });

  it("is what is printed, on full sheets, moved towards the spine by the sheets around", async () => {
    const bytes = await printedBook(readyHeads[0] as Head, { as: "booklet", to: 60 });
    const document = await openPdf(bytes);
    const [, , width = 0, height = 0] = (await document.getPage(1)).view;
    expect([width, height].map((points) => Math.round((points / 72) * 25.4))).toEqual([297, 210]);
    await document.destroy();
    const pages = await piecesOf(bytes);
    const folios = pages.map((pieces) =>
      pieces.filter(({ text }) => /^page \d+ of \d+$/.test(text)).sort((a, b) => a.left - b.left),
    );
    const total = Number(/of (\d+)/.exec(folios.flat()[0]?.text ?? "")?.[1]);
    const wanted = sides(total).map(({ left, right }) =>
      [left, right].filter((page) => page !== null).map((page) => `page ${page + 1} of ${total}`),
    );
    expect(folios.map((side) => side.map(({ text }) => text))).toEqual(wanted);
    const rightEdges = folios.flatMap((side, index) => (index % 2 === 0 ? [side.at(-1)?.right ?? 0] : []));
    for (const [sheet, edge] of rightEdges.entries()) {
      expect((rightEdges[0] ?? 0) - edge).toBeCloseTo(sheet * 0.11 * (72 / 25.4), 1);
    }
  });

  it("leaves no page blank: what is over is ruled to write on, under its title, the back cover too", async () => {
    const pages = await readBack(readyHeads[0] as Head, { as: "booklet", to: 60 });
    const texts = pages.map((pieces) => pieces.map(({ text }) => text));
    const total = Number(/of (\d+)/.exec(texts.flat().find((text) => /^page \d+ of \d+$/.test(text)) ?? "")?.[1]);
    expect(total % 4).toBe(0);
    const count = (wanted: RegExp) => texts.flat().filter((text) => wanted.test(text)).length;
    expect(count(/^Notes$/)).toBeGreaterThan(0);
    // The glossary ends with the same lines.
    expect(count(/^Notes and date/)).toBe(count(/^Notes$/) + 1);
  });
});
