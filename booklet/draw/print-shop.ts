import { ifInstalled } from "../installed.ts";
import type { Measure } from "../layout/measure.ts";
import { type Canvas, canvasOn } from "./canvas.ts";
import { type Outlines, outlinesWith } from "./outlines.ts";
import { structureOf } from "./structure.ts";
import { keptWords, measureWith, typeFiles, wordsOf } from "./type.ts";

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

/** pdfkit, loaded, with the type ready to measure. */
export interface PrintShop {
  readonly measure: Measure;
  /** Letters as shapes, for drawings that are no PDF. */
  readonly outlines: Outlines;
  open(about: About): Canvas;
}

/** The parts of pdfkit in use that its published types lack. */
interface Untyped {
  _addInfo(): void;
  info: Record<string, unknown>;
}

/** What every book is printed with. */
async function loaded() {
  const { PDFDocument, paths } = await ifInstalled(async () => ({
    PDFDocument: (await import("pdfkit")).default,
    paths: typeFiles(),
  }));
  const scratch = () => new PDFDocument({ autoFirstPage: false, font: paths.regular });
  return { PDFDocument, paths, words: wordsOf(scratch(), paths), outlines: outlinesWith(scratch, paths) };
}

/** pdfkit and the type, read once a process: what was found out of the one font serves every book. */
let kept: ReturnType<typeof loaded> | undefined;

/**
 * Loads pdfkit and opens the type, which takes a tenth of a second the first time.
 *
 * @throws {@link InputError} that says what to install, where printing was left out.
 */
export async function openPrintShop(): Promise<PrintShop> {
  kept ??= loaded();
  const { PDFDocument, paths, words: everyWord, outlines } = await kept;
  const words = keptWords(everyWord);
  return {
    measure: measureWith(words),
    outlines,
    open(about) {
      const document = new PDFDocument(options(about, paths.regular));
      escapeMetadata(document as unknown as Untyped);
      return canvasOn(document, paths, words, about.tagged ? structureOf(document) : null);
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
