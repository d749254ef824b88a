import { createRequire } from "node:module";
import { InputError } from "../../src/index.ts";
import type { Weight } from "../layout/marks.ts";
import { type Measure, withFractions } from "../layout/measure.ts";

/** Words of figures to this length are few enough to be kept. */
const shortWord = 4;

/** Where the file of each weight of the type is. */
export type TypeFiles = Readonly<Record<Weight, string>>;

const files: Readonly<Record<Weight, string>> = {
  regular: "400Regular/IBMPlexSansCondensed_400Regular.ttf",
  semibold: "600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf",
  bold: "700Bold/IBMPlexSansCondensed_700Bold.ttf",
};

/** The part of pdfkit in use that its published types lack. */
interface Untyped {
  _font: Font;
}

interface Font {
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean };
  /** Sets a word, or gives it as it was set before. */
  layoutCached(word: string): SetWord;
  drawsWith?: Words;
}

interface SetWord {
  readonly glyphs: readonly unknown[];
  readonly positions: readonly unknown[];
  readonly advanceWidth: number;
}

/** Finds the files of the type. */
export function typeFiles(): TypeFiles {
  const require = createRequire(import.meta.url);
  return Object.fromEntries(
    Object.entries(files).map(([weight, file]) => [
      weight,
      require.resolve(`@expo-google-fonts/ibm-plex-sans-condensed/${file}`),
    ]),
  ) as Record<Weight, string>;
}

/** Figures stand on equal widths, and no two of these signs are drawn together. */
const figures = /^[\d°′″≈−–+×= ]+$/;

/**
 * Widths are kept for type of one point, for they grow with the size in proportion, and word by
 * word, each with the space behind it: pdfkit itself sets words so, and most text is made of words
 * that were there before.
 */
export function measureWith(scratch: PDFKit.PDFDocument, paths: TypeFiles): Measure {
  const unit = 1000;
  const known = { regular: new Map<string, number>(), semibold: new Map<string, number>(), bold: new Map<string, number>() };
  const widthBySetting = (word: string, weight: Weight): number => {
    scratch.font(paths[weight]).fontSize(unit);
    checkGlyphs(scratch as unknown as Untyped, word);
    return scratch.widthOfString(word) / unit;
  };
  const sumOf = (word: string, weight: Weight) => [...word].reduce((sum, letter) => sum + widthOf(letter, weight), 0);
  const widthOf = (word: string, weight: Weight): number => {
    const there = known[weight].get(word);
    if (there !== undefined) return there;
    const inFigures = word.length > 1 && figures.test(word);
    const width = inFigures ? sumOf(word, weight) : widthBySetting(word, weight);
    if (!inFigures || word.length <= shortWord) known[weight].set(word, width);
    return width;
  };
  return (written, { weight, size }) => {
    const text = withFractions(written, size);
    let width = 0;
    let from = 0;
    for (let space = text.indexOf(" "); space >= 0; space = text.indexOf(" ", from)) {
      width += widthOf(text.slice(from, space + 1), weight);
      from = space + 1;
    }
    if (from < text.length) width += widthOf(text.slice(from), weight);
    return width * size;
  };
}

/** Words set once, for measuring and for drawing. */
export type Words = (word: string, weight: Weight) => SetWord;

/**
 * Sets words with the fonts of a document that is never written. Long figures are set one by one:
 * a font keeps each word that it has set, and new words are nearly all figures, as many as the book
 * is long.
 */
export function wordsOf(scratch: PDFKit.PDFDocument, paths: TypeFiles): Words {
  const fonts = Object.fromEntries(
    Object.entries(paths).map(([weight, path]) => [weight, fontInUse(scratch.font(path))]),
  ) as Record<Weight, Font>;
  return (word, weight) => {
    const font = fonts[weight];
    if (word.length <= shortWord || !figures.test(word)) return font.layoutCached(word);
    const glyphs: unknown[] = [];
    const positions: unknown[] = [];
    let advanceWidth = 0;
    for (const figure of word) {
      const each = font.layoutCached(figure);
      glyphs.push(...each.glyphs);
      positions.push(...each.positions);
      advanceWidth += each.advanceWidth;
    }
    return { glyphs, positions, advanceWidth };
  };
}

/** Lets the font in use draw the words that were set to be measured. */
export function drawWith(document: PDFKit.PDFDocument, weight: Weight, words: Words): void {
  const font = fontInUse(document);
  if (font.drawsWith === words) return;
  font.layoutCached = (word) => words(word, weight);
  font.drawsWith = words;
}

function fontInUse(document: PDFKit.PDFDocument): Font {
  return (document as unknown as Untyped)._font;
}

/** A glyph that the type lacks would be printed as nothing at all. */
function checkGlyphs({ _font }: Untyped, text: string): void {
  for (const letter of text) {
    if (_font.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)) continue;
    throw new InputError([
      {
        code: "cannot-be-made",
        place: "head",
        problem: `the type of the book has no letter ${JSON.stringify(letter)}, found in ${JSON.stringify(text.slice(0, 60))}; write the name without it`,
      },
    ]);
  }
}
