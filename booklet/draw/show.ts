import type { TextMark, Weight } from "../layout/marks.ts";
import { inLongFigures, type SetWord, type TypeFiles, type Words, wordsIn } from "./type.ts";

/** The parts of pdfkit in use that its published types lack. */
interface Untyped {
  _font: Font;
  readonly page: { readonly fonts: Record<string, unknown> };
}

interface Font {
  /** The name that pages know it by. */
  readonly id: string;
  ref(): unknown;
  layoutCached(word: string): SetWord;
  /** The numbers of a word's glyphs in this file, in hexadecimal, and where they stand. */
  encode(word: string): readonly [codes: readonly string[], positions: SetWord["positions"]];
}

/** Writes the operators that show a line of text. */
export type Show = (mark: Pick<TextMark, "x" | "y" | "size" | "weight">, text: string) => void;

/** A font of the document, with the words that it has shown; null for those whose letters do not stand on the line. */
interface Shown {
  readonly font: Font;
  readonly words: Map<string, string | null>;
}

/**
 * Shows lines that are measured already. pdfkit's own `text` measures, wraps and encodes each line
 * anew, which for a book of ten thousand short lines of the same words is half of all drawing; here
 * each word is encoded once a file, by pdfkit.
 */
export function showOn(document: PDFKit.PDFDocument, paths: TypeFiles, words: Words): Show {
  const inUse = document as unknown as Untyped;
  const known = new Map<Weight, Shown>();
  const shownIn = (weight: Weight): Shown => {
    const there = known.get(weight);
    if (there !== undefined) return there;
    document.font(paths[weight]);
    const font = inUse._font;
    font.layoutCached = (word) => words(word, weight);
    const shown: Shown = { font, words: new Map() };
    known.set(weight, shown);
    return shown;
  };
  const encoded = (shown: Shown, word: string): string | null => {
    const there = shown.words.get(word);
    if (there !== undefined) return there;
    if (inLongFigures(word)) return Array.from(word, (figure) => encoded(shown, figure)).join("");
    const codes = codesOf(...shown.font.encode(word));
    shown.words.set(word, codes);
    return codes;
  };
  return ({ x, y, size, weight }, text) => {
    const shown = shownIn(weight);
    const codes = wordsIn(text).map((word) => encoded(shown, word));
    if (codes.includes(null)) {
      document.font(paths[weight]).fontSize(size).text(text, x, y, { lineBreak: false, baseline: "alphabetic" });
      return;
    }
    const { id } = shown.font;
    inUse.page.fonts[id] ??= shown.font.ref();
    // Pages are turned upside down by pdfkit so that y goes down; letters are turned back.
    document.addContent(`BT /${id} ${size} Tf 1 0 0 -1 ${x} ${y} Tm [<${codes.join("")}>] TJ ET`);
  };
}

/**
 * Glyphs one after the other, as what stands within `<` and `>`; between them how much closer the next
 * one stands. Null where one stands beside its place, as an accent does: pdfkit sets such lines itself.
 */
function codesOf(codes: readonly string[], positions: SetWord["positions"]): string | null {
  if (positions.some(({ xOffset, yOffset }) => xOffset !== 0 || yOffset !== 0)) return null;
  return codes
    .map((code, index) => {
      const { xAdvance = 0, advanceWidth = 0 } = positions[index] ?? {};
      return xAdvance === advanceWidth ? code : `${code}> ${Math.round((advanceWidth - xAdvance) * 1000) / 1000} <`;
    })
    .join("");
}
