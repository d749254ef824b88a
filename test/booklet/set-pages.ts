import type { Book } from "../../booklet/content/blocks.ts";
import { bookOf, countsTold } from "../../booklet/content/book.ts";
import type { HeadCount } from "../../booklet/content/head-counts.ts";
import { type PartId, partIds } from "../../booklet/content/parts.ts";
import { forWall, wallContents } from "../../booklet/content/wall.ts";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { flattened, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { type SetBook, setInPages } from "../../booklet/layout/pages.ts";
import type { Paper } from "../../booklet/layout/paper.ts";
import type { Head } from "../../src/index.ts";
import { sweepsAll } from "../support/sweep.ts";
import { linesOf, type Piece } from "./read-pdf.ts";

const { measure } = await openPrintShop();
/** An edition that is none, so that a page is the same at every version. */
export const edition = { version: "1.0.0", digest: "0123456789ab" };

export interface Wanted {
  readonly from: number;
  readonly to: number;
  readonly degreeTables?: readonly number[];
}

/** Books of heads that many tests look at, by what is wanted of them; and the counts that they tell. */
const books = new WeakMap<Head, Map<string, Book>>();
const counts = new WeakMap<Head, Map<number, HeadCount>>();

function once(what: string, head: Head, wanted: Wanted, make: () => Book): Book {
  const known = books.get(head) ?? new Map<string, Book>();
  books.set(head, known);
  const name = `${what} ${JSON.stringify(wanted)}`;
  const book = known.get(name) ?? make();
  known.set(name, book);
  return book;
}

/** The counts of a head, each worked out once for all its books. */
function countsOf(head: Head, { from, to }: Wanted): readonly HeadCount[] {
  const known = counts.get(head) ?? new Map<number, HeadCount>();
  counts.set(head, known);
  const wanted = Array.from({ length: to - from + 1 }, (_, index) => from + index);
  const missing = wanted.filter((count) => !known.has(count));
  const [first, last] = [missing[0], missing.at(-1)];
  if (first !== undefined && last !== undefined)
    for (const count of countsTold(head, first, last)) known.set(count.divisions, count);
  return wanted.flatMap((count) => known.get(count) ?? []);
}

/** A head's book, all its parts or those that are named. */
export function wholeBook(head: Head, wanted: Wanted, parts: readonly PartId[] = partIds): Book {
  return once(parts.join(), head, wanted, () =>
    bookOf(head, edition, { parts, degreeTables: null, ...wanted }, countsOf(head, wanted)),
  );
}

/** A head's sheets for the wall. */
export function wallBook(head: Head, wanted: Wanted): Book {
  return once("wall", head, wanted, () =>
    forWall(bookOf(head, edition, { ...wallContents(head, wanted.from, wanted.to), ...wanted }, countsOf(head, wanted))),
  );
}

/** A book set on a paper: its pages, and where in them everything stands. */
export function setOn(paper: Paper, book: Book): SetBook {
  return setInPages(book, paper, measure);
}

const pagesSet = new WeakMap<Book, Map<Paper, readonly Page[]>>();

/** The pages of a book as they are set, before anything is drawn; set once on a paper, but in a soak, which sets too many to keep. */
export function pagesOn(paper: Paper, book: Book): readonly Page[] {
  if (sweepsAll) return [...setOn(paper, book).pages()];
  const known = pagesSet.get(book) ?? new Map<Paper, readonly Page[]>();
  pagesSet.set(book, known);
  const pages = known.get(paper) ?? [...setOn(paper, book).pages()];
  known.set(paper, pages);
  return pages;
}

/** The text of a page piece by piece, as it would be read from the file; fractions with the slash of the line. */
export function piecesIn({ marks }: Pick<Page, "marks">): readonly Piece[] {
  const texts = [...flattened(marks)].filter((mark): mark is TextMark => mark.kind === "text" && mark.text.trim() !== "");
  return texts.map(({ x, y, width, text }) => ({ left: x, right: x + width, y, text: text.replaceAll("⁄", "/") }));
}

/** The lines of a page, each with its pieces parted by `|`. */
export function linesIn(page: Pick<Page, "marks">): readonly string[] {
  return linesOf(piecesIn(page));
}
