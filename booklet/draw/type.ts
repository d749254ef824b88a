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

/** The part of pdfkit in use that its published types lack. */
interface Untyped {
  _font: Font;
}

/** A font as pdfkit has it; lengths are in thousandths of the size of the type. */
interface Font {
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean };
  /** Shapes text as the font itself asks: with what its letters do to each other. */
  layoutRun(text: string): SetWord;
}

/** A word as it is set. */
export interface SetWord {
  readonly glyphs: readonly { readonly id: number }[];
  readonly positions: readonly Position[];
  readonly advanceWidth: number;
}

interface Position {
  /** How far the next letter stands from here, and how wide this one is. */
  readonly xAdvance: number;
  readonly advanceWidth: number;
  readonly xOffset: number;
  readonly yOffset: number;
}

/** Sets words for measuring and for drawing. */
export type Words = (word: string, weight: Weight) => SetWord;

/** Figures stand on equal widths, and no two of these signs are drawn together. */
const figures = /^[\d°′″≈−–+×= ]+$/;

/** Whether a word is one of figures alone, of which each book has as many as it has rows: they are not kept. */
export function inLongFigures(word: string): boolean {
  return word.length > shortWord && figures.test(word);
}

/** Sets words with the fonts of a document that is never written. */
export function wordsOf(scratch: PDFKit.PDFDocument, paths: TypeFiles): Words {
  const setters = Object.fromEntries(
    Object.entries(paths).map(([weight, path]) => [weight, setterOf((scratch.font(path) as unknown as Untyped)._font)]),
  ) as Record<Weight, (word: string) => SetWord>;
  return (word, weight) => setters[weight](word);
}

/** Sets each word once, as long as a book is being made. */
export function keptWords(words: Words): Words {
  const known: Record<Weight, Map<string, SetWord>> = { regular: new Map(), semibold: new Map(), bold: new Map() };
  return (word, weight) => {
    const there = known[weight].get(word);
    if (there !== undefined) return there;
    const set = words(word, weight);
    if (!inLongFigures(word)) known[weight].set(word, set);
    return set;
  };
}

/** Of what has to be shaped whole so much is kept: more than there is in any book. */
const mostWhole = 2000;

/**
 * To shape each word of a book takes as long as to draw it. What the letters of this type do to each
 * other, two by two, tells nearly all: only words in which two are drawn as one, or otherwise than
 * they stand alone, are shaped whole.
 */
function setterOf(font: Font): (word: string) => SetWord {
  const letters = new Map<string, SetWord>();
  const pairs = new Map<string, number | null>();
  const whole = new Map<string, SetWord>();
  const letterOf = (letter: string, word: string): SetWord => {
    const there = letters.get(letter);
    if (there !== undefined) return there;
    checkGlyph(font, letter, word);
    const set = font.layoutRun(letter);
    letters.set(letter, set);
    return set;
  };
  /** By how much more or less than its width the first of two moves on; null where they are drawn otherwise than alone. */
  const closerBy = (first: string, second: string, alone: readonly [SetWord, SetWord]): number | null => {
    const there = pairs.get(first + second);
    if (there !== undefined) return there;
    const by = kerningOf(font.layoutRun(first + second), alone);
    pairs.set(first + second, by);
    return by;
  };
  const shapedWhole = (word: string): SetWord => {
    const set = whole.get(word) ?? font.layoutRun(word);
    if (whole.size < mostWhole) whole.set(word, set);
    return set;
  };
  return (word) => {
    const alone = Array.from(word, (letter) => ({ letter, set: letterOf(letter, word) }));
    let advanceWidth = 0;
    const positions: Position[] = [];
    for (const [index, { letter, set }] of alone.entries()) {
      const next = alone[index + 1];
      const by = next === undefined ? 0 : closerBy(letter, next.letter, [set, next.set]);
      const [position] = set.positions;
      if (by === null || position === undefined || set.positions.length > 1) return shapedWhole(word);
      positions.push(by === 0 ? position : { ...position, xAdvance: position.xAdvance + by });
      advanceWidth += position.xAdvance + by;
    }
    return { glyphs: alone.flatMap(({ set }) => set.glyphs), positions, advanceWidth };
  };
}

function kerningOf({ glyphs, positions }: SetWord, alone: readonly [SetWord, SetWord]): number | null {
  const [first, second] = positions;
  const same = alone.flatMap((each) => each.glyphs).every(({ id }, index) => glyphs[index]?.id === id);
  if (!same || glyphs.length !== 2 || first === undefined || second === undefined) return null;
  const moved = [first, second].some(({ xOffset, yOffset }) => xOffset !== 0 || yOffset !== 0);
  return moved || second.xAdvance !== second.advanceWidth ? null : first.xAdvance - first.advanceWidth;
}

/**
 * Measures word by word, each with the space behind it: most text is made of words that are kept. Long
 * figures, which are not, are as wide as their figures are.
 */
export function measureWith(words: Words): Measure {
  const widthOf = (word: string, weight: Weight): number => {
    if (!inLongFigures(word)) return words(word, weight).advanceWidth / 1000;
    let width = 0;
    for (const figure of word) width += widthOf(figure, weight);
    return width;
  };
  return (written, { weight, size }) => {
    let width = 0;
    for (const word of wordsIn(withFractions(written, size))) width += widthOf(word, weight);
    return width * size;
  };
}

/** Words as a line is set from them: each with the space behind it. */
export function wordsIn(text: string): readonly string[] {
  const found: string[] = [];
  let from = 0;
  for (let space = text.indexOf(" "); space >= 0; space = text.indexOf(" ", from)) {
    found.push(text.slice(from, space + 1));
    from = space + 1;
  }
  if (from < text.length) found.push(text.slice(from));
  return found;
}

/** A glyph that the type lacks would be printed as nothing at all. */
function checkGlyph({ font }: Font, letter: string, word: string): void {
  if (font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)) return;
  throw new InputError([
    {
      code: "cannot-be-made",
      place: "head",
      problem: `the type of the book has no letter ${JSON.stringify(letter)}, found in ${JSON.stringify(word.trim().slice(0, 60))}; write the name without it`,
    },
  ]);
}
