import type { Book } from "../../booklet/content/blocks.ts";
import { bookOf } from "../../booklet/content/book.ts";
import { partIds } from "../../booklet/content/parts.ts";
import { forWall, wallContents } from "../../booklet/content/wall.ts";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { flattened, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { type SetBook, setInPages } from "../../booklet/layout/pages.ts";
import type { Paper } from "../../booklet/layout/paper.ts";
import { type Head, readyHeads } from "../../src/index.ts";
import { linesOf, type Piece } from "./read-pdf.ts";

const { measure } = await openPrintShop();
/** An edition that is none, so that a page is the same at every version. */
export const edition = { version: "1.0.0", digest: "0123456789ab" };

export interface Wanted {
  readonly from: number;
  readonly to: number;
  readonly degreeTables?: readonly number[];
}

/** Books of ready heads, which many tests look at. */
const known = new Map<string, Book>();

function once(what: string, head: Head, wanted: Wanted, make: () => Book): Book {
  if (!readyHeads.some((each) => each === head)) return make();
  const name = `${what} ${head.id} ${JSON.stringify(wanted)}`;
  const book = known.get(name) ?? make();
  known.set(name, book);
  return book;
}

/** A head's book, all its parts. */
export function wholeBook(head: Head, wanted: Wanted): Book {
  return once("book", head, wanted, () => bookOf(head, edition, { parts: partIds, degreeTables: null, ...wanted }));
}

/** A head's sheets for the wall. */
export function wallBook(head: Head, wanted: Wanted): Book {
  return once("wall", head, wanted, () =>
    forWall(bookOf(head, edition, { ...wallContents(head, wanted.from, wanted.to), ...wanted })),
  );
}

/** A book set on a paper: its pages, and where in them everything stands. */
export function setOn(paper: Paper, book: Book): SetBook {
  return setInPages(book, paper, measure);
}

/** The pages of a book as they are set, before anything is drawn. */
export function pagesOn(paper: Paper, book: Book): readonly Page[] {
  return [...setOn(paper, book).pages()];
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
