import fc from "fast-check";
import PDFDocument from "pdfkit";
import { describe, expect, it } from "vitest";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { type SetWord, typeFiles, type Words, wordsIn, wordsOf } from "../../booklet/draw/type.ts";
import { flattened, type Weight } from "../../booklet/layout/marks.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { readyHeads } from "../../src/index.ts";
import { everyOf, farthest } from "../support/sweep.ts";
import { piecesOf } from "./read-pdf.ts";
import { pagesOn, wholeBook } from "./set-pages.ts";

const weights: readonly Weight[] = ["regular", "semibold", "bold"];
const paths = typeFiles();
const words: Words = wordsOf(new PDFDocument({ autoFirstPage: false, font: paths.regular }), paths);

/** Words as the font itself shapes them, each whole, in a document of its own. */
const whole = new PDFDocument({ autoFirstPage: false, font: paths.regular }) as unknown as {
  font(path: string): { readonly _font: { layoutRun(text: string): SetWord } };
};

function asShapedWhole(word: string, weight: Weight): SetWord {
  return whole.font(paths[weight])._font.layoutRun(word);
}

/** Glyphs, and where each stands, to a millionth of the size of the type. */
function placed({ glyphs, positions }: SetWord): readonly (readonly number[])[] {
  return glyphs.map(({ id }, index) => {
    const { xAdvance = 0, advanceWidth = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    return [id, ...[xAdvance, advanceWidth, xOffset, yOffset].map((length) => Math.round(length * 1000) / 1000)];
  });
}

describe("a word set letter by letter", () => {
  it.each(everyOf(4, readyHeads).map((head) => [head.id, head] as const))(
    "%s: is what the font makes of it whole, in all of the book",
    (_, head) => {
      const said = new Map<string, readonly [word: string, weight: Weight]>();
      for (const { marks } of pagesOn(paperNamed("a4"), wholeBook(head, { from: 2, to: farthest })))
        for (const mark of flattened(marks))
          if (mark.kind === "text")
            for (const word of wordsIn(mark.text)) said.set(`${mark.weight} ${word}`, [word, mark.weight]);
      expect(said.size).toBeGreaterThan(500);
      const otherwise = [...said.values()].filter(
        ([word, weight]) => JSON.stringify(placed(words(word, weight))) !== JSON.stringify(placed(asShapedWhole(word, weight))),
      );
      expect(otherwise).toEqual([]);
    },
  );

  it("is so whatever its letters", () => {
    const letters = [
      ..."abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,:;-–—/⁄()+×÷=°′″≈½¼äöüßéèñçåøÅØł\u0301\u0308",
    ];
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...letters), { minLength: 1, maxLength: 12 }).map((each) => each.join("")),
        fc.constantFrom(...weights),
        (word, weight) => {
          expect(placed(words(word, weight))).toEqual(placed(asShapedWhole(word, weight)));
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe("a line that is shown", async () => {
  const shop = await openPrintShop();

  it.each([
    "AVATAR To Wa Ty, 11 fi ffl qualified",
    "0° 53′ 20″ ≈ 12 345 678 ± 1",
    "Café à l’œuvre, Ångström, Łódź",
    "Cafe\u0301 u\u0308ber",
    "1 7⁄43 and 53 12⁄49",
  ])("is as wide as it was measured, and says what it should: %s", async (text) => {
    const about = { title: "", subject: "", creator: "", digest: "", created: new Date(0), tagged: false };
    for (const weight of weights) {
      const canvas = shop.open(about);
      canvas.page(500, 100);
      const width = shop.measure(text, { weight, size: 12 });
      canvas.text({ kind: "text", x: 20, y: 50, width, text, weight, size: 12 });
      const [pieces = []] = await piecesOf(await canvas.end());
      expect(
        pieces
          .map((piece) => piece.text)
          .join("")
          .normalize("NFC"),
      ).toBe(text.replaceAll("⁄", "/").normalize("NFC"));
      const [left, right] = [Math.min(...pieces.map((piece) => piece.left)), Math.max(...pieces.map((piece) => piece.right))];
      expect(left).toBeCloseTo(20, 2);
      expect(right - left).toBeCloseTo(width, 1);
    }
  });
});
