/**
 * The printed book for a head: a title page, every count with its setting, and what cannot be done.
 *
 * @packageDocumentation
 */
import { type Head, InputError } from "../src/index.ts";
import { bookOf, type Contents } from "./content/book.ts";
import { type PartId, partIds } from "./content/parts.ts";
import { openPrintShop } from "./draw/canvas.ts";
import { drawPages } from "./draw/draw.ts";
import { editionOf } from "./edition.ts";
import { setInPages } from "./layout/pages.ts";
import { type PaperName, paperNamed } from "./layout/paper.ts";

export { type PartId, partIds } from "./content/parts.ts";
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
  /** The parts it is to have; left out, all that this head has something for. */
  readonly parts?: readonly PartId[];
  /** Counts to have a degree table each, every position by dial and ring; left out, none. */
  readonly degreeTables?: readonly number[];
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
  const { paper: paperName = "a4", created = usualDate, onProgress = () => {} } = options;
  const paper = paperNamed(paperName);
  const contents = contentsFrom(options);
  const edition = editionOf(head, { paper: paper.name, ...contents });
  const book = bookOf(head, edition, contents, (done) => {
    if (done % 50 === 0) onProgress(`working out and proving count ${contents.from + done} of ${contents.to}`);
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

function contentsFrom({ from = 2, to = 400, parts = partIds, degreeTables = [] }: BookletOptions): Contents {
  const unknown = parts.filter((part) => !partIds.includes(part));
  if (unknown.length > 0) {
    throw new InputError([
      { place: "parts", problem: `there is no part ${unknown.join(", ")}; the parts are ${partIds.join(", ")}` },
    ]);
  }
  return { from, to, parts, degreeTables };
}
