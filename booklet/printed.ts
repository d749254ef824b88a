import type { Book } from "./content/blocks.ts";
import { withNotes } from "./content/notes-part.ts";
import { hasTemplates } from "./content/plate-check-part.ts";
import type { Bookmark, Canvas } from "./draw/canvas.ts";
import { drawCutOut } from "./draw/cut-out.ts";
import { drawPage } from "./draw/draw.ts";
import { drawImposed } from "./draw/impose.ts";
import { openPrintShop } from "./draw/print-shop.ts";
import type { FormedBook } from "./forms.ts";
import { labelOf, type SetBook, setInPages } from "./layout/pages.ts";
import { sheetSize } from "./layout/papers.ts";
import { type Pause, pausing, type Watched } from "./pausing.ts";
import { creator } from "./plate-drawings.ts";

/** How a book is printed, whatever is in it. */
export interface Printing extends Watched {
  readonly created: Date;
  readonly tagged: boolean;
}

/**
 * A file's bytes, in a buffer of their own: `new Response(pdf)` takes them, and `pdf.buffer` holds nothing else.
 * (Where the compiler knows kinds of buffers, from 5.7 on, it is a `Uint8Array<ArrayBuffer>`.)
 */
export type PdfBytes = ReturnType<Uint8ArrayConstructor["from"]>;

/** Sets a book, draws its pages and puts them on paper. */
export async function printed(formedBook: FormedBook, { created, tagged, ...watched }: Printing): Promise<PdfBytes> {
  const { paper } = formedBook;
  const pause = pausing(watched);
  const shop = await openPrintShop();
  await pause("setting the pages");
  const { book, set } = filled(formedBook, (each) => setInPages(each, paper, shop.measure));
  const canvas = shop.open({ title: book.fileTitle, subject: book.subject, creator, digest: book.digest, created, tagged });
  if (hasTemplates(book)) canvas.printTrue();
  await put(canvas, { ...formedBook, book }, set, pause);
  // Of their own: what pdfkit hands out is a view on what it shares with other files.
  return new Uint8Array(await canvas.end());
}

/** Of a folded book four pages are one sheet: what that leaves blank is ruled, to write on. */
function filled({ book, put: how }: FormedBook, setOf: (book: Book) => SetBook): { readonly book: Book; readonly set: SetBook } {
  const set = setOf(book);
  const blank = how === "folded" ? (pagesToSheet - (set.headwords.length % pagesToSheet)) % pagesToSheet : 0;
  if (blank === 0) return { book, set };
  const ruled = withNotes(book, blank);
  return { book: ruled, set: setOf(ruled) };
}

const pagesToSheet = 4;

async function put(canvas: Canvas, { book, paper, put: how }: FormedBook, set: SetBook, pause: Pause): Promise<void> {
  const total = set.headwords.length;
  await pause("drawing the pages", 0, total);
  switch (how) {
    case "folded":
      drawImposed(canvas, [...set.pages()]);
      return;
    case "cut-out":
      drawCutOut(canvas, [...set.pages()], sheetSize(paper.name));
      return;
    case "pages":
      for (const [index, page] of numbered(set.pages())) {
        drawPage(canvas, page);
        await pause("drawing the pages", index + 1, total);
      }
      canvas.bookmarks(bookmarksOf(book, set));
      canvas.labels(set.headwords.map((_, index) => labelOf(index + 1)));
  }
}

function* numbered<Each>(all: Iterable<Each>): Generator<readonly [number, Each], undefined> {
  let index = 0;
  for (const each of all) {
    yield [index, each];
    index += 1;
  }
}

/** Each part, and in it each page of counts by the least and the greatest of them. */
function bookmarksOf({ parts }: Book, { headwords, anchors }: SetBook): readonly Bookmark[] {
  const starts = parts.map(({ id }) => anchors.get(id) ?? 1);
  return parts.map(({ title }, index) => {
    const [from = 1, to = headwords.length + 1] = [starts[index], starts[index + 1]];
    const within = headwords.flatMap((words, at) =>
      at + 1 >= from && at + 1 < to && words !== "" ? [{ title: words, page: at + 1 }] : [],
    );
    return { title, page: from, within };
  });
}
