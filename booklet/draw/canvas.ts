import { createRequire } from "node:module";
import { InputError } from "../../src/index.ts";
import type { BandMark, DotsMark, GroupMark, LinkMark, RuleMark, ShapeMark, Style, TextMark, Weight } from "../layout/marks.ts";
import type { Measure } from "../layout/measure.ts";
import { type Structure, structureOf } from "./structure.ts";

/** What a document says of itself. */
export interface About {
  readonly title: string;
  readonly subject: string;
  readonly creator: string;
  readonly digest: string;
  /** The only date in the file; it takes part in the file's identity. */
  readonly created: Date;
  /** With the order of reading, tables and drawings in words: for screens and readers aloud. */
  readonly tagged: boolean;
}

/** An entry in the outline that viewers show. */
export interface Bookmark {
  readonly title: string;
  /** From 1. */
  readonly page: number;
  readonly within?: readonly Bookmark[];
}

/** A PDF being drawn. The one place that knows pdfkit. */
export interface Canvas {
  page(width: number, height: number): void;
  /** Draws with everything shifted, and nothing outside the size given. */
  shifted(x: number, y: number, width: number, height: number, draw: () => void): void;
  text(mark: TextMark): void;
  rule(mark: RuleMark): void;
  band(mark: BandMark): void;
  shape(mark: ShapeMark): void;
  dots(mark: DotsMark): void;
  anchor(name: string, y: number): void;
  link(mark: LinkMark): void;
  /** Draws what is one thing for a reader; in an untagged file, just draws it. */
  group(mark: GroupMark, draw: () => void): void;
  /** Draws what a reader need not be told of. */
  decoration(draw: () => void): void;
  bookmarks(entries: readonly Bookmark[]): void;
  labels(labels: readonly string[]): void;
  /** Asks the printer for both sides, turned over the short edge, at true size. */
  printFolded(): void;
  end(): Promise<Uint8Array>;
}

/** pdfkit, loaded, with the type ready to measure. */
export interface PrintShop {
  readonly measure: Measure;
  open(about: About): Canvas;
}

const files: Readonly<Record<Weight, string>> = {
  regular: "400Regular/IBMPlexSansCondensed_400Regular.ttf",
  semibold: "600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf",
  bold: "700Bold/IBMPlexSansCondensed_700Bold.ttf",
};

/** The parts of pdfkit in use that its published types lack. */
interface Untyped {
  _font: { font: { hasGlyphForCodePoint(codePoint: number): boolean } };
  _root: { data: Record<string, unknown> };
  _addInfo(): void;
  info: Record<string, unknown>;
  ref(data: unknown): { end(): void };
}

/** Loads pdfkit, which takes a tenth of a second, and opens the type. */
export async function openPrintShop(): Promise<PrintShop> {
  const { default: PDFDocument } = await import("pdfkit");
  const require = createRequire(import.meta.url);
  const paths = Object.fromEntries(
    Object.entries(files).map(([weight, file]) => [
      weight,
      require.resolve(`@expo-google-fonts/ibm-plex-sans-condensed/${file}`),
    ]),
  ) as Record<Weight, string>;
  const scratch = new PDFDocument({ autoFirstPage: false, font: paths.regular });
  return {
    measure: measureWith(scratch, paths),
    open(about) {
      const document = new PDFDocument(options(about, paths.regular));
      escapeMetadata(document as unknown as Untyped);
      return canvasOn(document, paths, about.tagged ? structureOf(document) : null);
    },
  };
}

function options({ title, subject, creator, digest, created, tagged }: About, font: string) {
  return {
    autoFirstPage: false,
    font,
    pdfVersion: "1.7" as const,
    lang: "en",
    displayTitle: true,
    tagged,
    margin: 0,
    info: {
      Title: title,
      Subject: subject,
      Author: creator,
      Creator: creator,
      Producer: creator,
      CreationDate: created,
      Inputs: digest,
    },
  };
}

/** pdfkit writes the title into XML as it is: an ampersand in it would spoil the whole packet. */
function escapeMetadata(document: Untyped): void {
  const addInfo = document._addInfo;
  document._addInfo = () => {
    const { info } = document;
    const escaped = Object.entries(info).map(([key, value]) => [key, typeof value === "string" ? xml(value) : value]);
    document.info = Object.fromEntries(escaped);
    addInfo.call(document);
    document.info = info;
  };
}

function xml(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

const figures = /^[\d°′″≈−–+×= ]+$/;

/**
 * Widths are kept for type of one point, for they grow with the size in proportion, and word by
 * word, each with the space behind it: pdfkit itself sets words so, and most text is made of words
 * that were there before.
 */
function measureWith(scratch: PDFKit.PDFDocument, paths: Record<Weight, string>): Measure {
  const unit = 1000;
  const known = { regular: new Map<string, number>(), semibold: new Map<string, number>(), bold: new Map<string, number>() };
  const widthBySetting = (word: string, weight: Weight): number => {
    scratch.font(paths[weight]).fontSize(unit);
    checkGlyphs(scratch as unknown as Untyped, word);
    return scratch.widthOfString(word) / unit;
  };
  // Figures stand on equal widths and no two of these signs are drawn together.
  const sumOf = (word: string, weight: Weight) => [...word].reduce((sum, letter) => sum + widthOf(letter, weight), 0);
  const widthOf = (word: string, weight: Weight): number => {
    let width = known[weight].get(word);
    if (width === undefined) {
      width = figures.test(word) && word.length > 1 ? sumOf(word, weight) : widthBySetting(word, weight);
      known[weight].set(word, width);
    }
    return width;
  };
  return (text, { weight, size }) => {
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

/** A glyph that the type lacks would be printed as nothing at all. */
function checkGlyphs({ _font }: Untyped, text: string): void {
  for (const letter of text) {
    if (_font.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)) continue;
    throw new InputError([
      {
        place: "head",
        problem: `the type of the book has no letter ${JSON.stringify(letter)}, found in ${JSON.stringify(text.slice(0, 60))}; write the name without it`,
      },
    ]);
  }
}

function canvasOn(document: PDFKit.PDFDocument, paths: Record<Weight, string>, structure: Structure | null): Canvas {
  const chunks: Uint8Array[] = [];
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const finished = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  const grey = (value: number, stroke = false) => document.addContent(`${rounded(value)} ${stroke ? "G" : "g"}`);
  return {
    page: (width, height) => void document.addPage({ size: [width, height], margin: 0 }),
    shifted(x, y, width, height, draw) {
      document.save().translate(rounded(x), rounded(y)).rect(0, 0, width, height).clip();
      draw();
      document.restore();
    },
    text({ x, y, text, weight, size, grey: shade = 0 }: TextMark & Style) {
      grey(shade);
      document
        .font(paths[weight])
        .fontSize(size)
        .text(text, rounded(x), rounded(y), { lineBreak: false, baseline: "alphabetic" });
    },
    rule({ from, to, width, grey: shade = 0 }) {
      grey(shade, true);
      document.lineWidth(width).moveTo(rounded(from[0]), rounded(from[1])).lineTo(rounded(to[0]), rounded(to[1])).stroke();
    },
    band({ x, y, width, height, grey: shade }) {
      grey(shade);
      document.rect(rounded(x), rounded(y), rounded(width), rounded(height)).fill();
    },
    shape({ path, fill, stroke }) {
      if (fill !== undefined) grey(fill);
      if (stroke) {
        grey(stroke.grey, true);
        document.lineWidth(stroke.width);
      }
      document.path(path);
      if (fill !== undefined && stroke) document.fillAndStroke();
      else if (fill !== undefined) document.fill();
      else document.stroke();
    },
    // A stroke of no length with round ends is a disc: a seventh of the bytes of as many drawn circles.
    dots({ at, diameter, grey: shade }) {
      grey(shade, true);
      const discs = at.map(([x, y]) => `${rounded(x)} ${rounded(y)} m ${rounded(x)} ${rounded(y)} l`).join(" ");
      document.addContent(`1 J ${rounded(diameter)} w ${discs} S 0 J`);
    },
    anchor: (name, y) => void document.addNamedDestination(name, "XYZ", null, rounded(y), null),
    link: ({ x, y, width, height, to, says }) => {
      const place = [rounded(x), rounded(y), rounded(width), rounded(height)] as const;
      if (structure === null) document.annotate(...place, linkTo(to));
      else structure.link((options) => document.annotate(...place, { ...linkTo(to), ...options }), says);
    },
    group(mark, draw) {
      if (structure === null) draw();
      else structure.group(mark, draw);
    },
    decoration(draw) {
      if (structure === null) draw();
      else structure.artifact(draw);
    },
    bookmarks(entries) {
      for (const { title, page, within = [] } of entries) {
        const item = document.outline.addItem(title, place(page));
        for (const inner of within) item.addItem(inner.title, place(inner.page));
      }
    },
    labels(labels) {
      const { _root, ref } = document as unknown as Untyped;
      const tree = ref.call(document, { Nums: labels.flatMap((label, index) => [index, { P: new String(label) }]) });
      _root.data.PageLabels = tree;
      tree.end();
    },
    printFolded() {
      const { _root } = document as unknown as Untyped;
      const preferences = _root.data.ViewerPreferences as { data: Record<string, unknown> };
      Object.assign(preferences.data, { PrintScaling: "None", Duplex: "DuplexFlipShortEdge" });
    },
    async end() {
      structure?.end();
      document.end();
      await finished;
      return Buffer.concat(chunks);
    },
  };
}

/** A link by its destination alone: pdfkit's own makes an object more for each. */
function linkTo(name: string): PDFKit.Mixins.AnnotationOption {
  return { Subtype: "Link", Dest: name } as PDFKit.Mixins.AnnotationOption;
}

/** pdfkit takes the whole page into view only when told so. */
function place(page: number): object {
  return { expanded: false, fit: true, pageNumber: page - 1 };
}

/** Three decimals of a point: the last bits of sines differ between engines and must not reach the file. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
