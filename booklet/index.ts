/**
 * The printed book for a head: a title page, every count with its setting, and what cannot be done.
 *
 * @packageDocumentation
 */
import type { Head } from "../src/index.ts";
import { bookOf } from "./content/book.ts";
import { openPrintShop } from "./draw/canvas.ts";
import { drawPages } from "./draw/draw.ts";
import { editionOf } from "./edition.ts";
import { setInPages } from "./layout/pages.ts";
import { type PaperName, paperNamed } from "./layout/paper.ts";

export { loadHead } from "./head-file.ts";
export { type PaperName, paperNames } from "./layout/paper.ts";

/** What book to make. */
export interface BookletOptions {
  /** Left out: `a4`. */
  readonly paper?: PaperName;
  /** The first count; left out, 2. */
  readonly from?: number;
  /** The last count; left out, 400. */
  readonly to?: number;
  /** The date in the file; left out, a fixed one, so that the same inputs give the same bytes. */
  readonly created?: Date;
  /** Called as the work goes on, with what is being done. */
  readonly onProgress?: (doing: string) => void;
}

/** Named in the file, and by this a file is known to be a book of ours. */
export const creator = "Turns & Holes";

const usualDate = new Date(Date.UTC(2000, 0, 1));

/**
 * Makes the book of a head as a PDF.
 *
 * The same head and options give the same bytes. Every setting in it has been turned through all
 * its moves on the model of the mechanism.
 *
 * @throws {@link InputError} when an option is not allowed, or a name holds a letter that the type lacks.
 */
export async function bookletPdf(head: Head, options: BookletOptions = {}): Promise<Uint8Array> {
  const { paper: paperName = "a4", from = 2, to = 400, created = usualDate, onProgress = () => {} } = options;
  const paper = paperNamed(paperName);
  const edition = editionOf(head, { paper: paper.name, from, to });
  const book = bookOf(head, edition, { from, to }, (done) => {
    if (done % 50 === 0) onProgress(`working out and proving count ${from + done} of ${to}`);
  });
  const shop = await openPrintShop();
  onProgress("setting the pages");
  const { pages, anchors } = setInPages(book, paper, shop.measure);
  onProgress(`drawing ${pages.length} pages`);
  const canvas = shop.open({ title: book.title, subject: book.subject, creator, digest: book.digest, created });
  drawPages(canvas, pages);
  canvas.bookmarks(book.parts.map(({ id, title }) => ({ title, page: anchors.get(id) ?? 1 })));
  canvas.labels(pages.map(({ label }) => label));
  return canvas.end();
}
