/**
 * The printed book for a head: a title page, every count with its setting, and what cannot be done.
 *
 * @packageDocumentation
 */
import { createHash } from "node:crypto";
import { type FaultCode, type Head, InputError } from "../src/index.ts";
import type { Book } from "./content/blocks.ts";
import { bookOf, type Contents } from "./content/book.ts";
import { type Job, jobOf } from "./content/job.ts";
import { type PartId, partIds } from "./content/parts.ts";
import { hasTemplates } from "./content/plate-check-part.ts";
import { type RepairSheet, repairBookOf } from "./content/repair-sheet.ts";
import { forWall, wallParts } from "./content/wall.ts";
import type { Bookmark } from "./draw/canvas.ts";
import { drawPages } from "./draw/draw.ts";
import { drawImposed } from "./draw/impose.ts";
import { openPrintShop } from "./draw/print-shop.ts";
import { editionOf } from "./edition.ts";
import { labelOf, type SetBook, setInPages } from "./layout/pages.ts";
import type { Paper, PaperName } from "./layout/paper.ts";
import { paperNamed, wallPaperNamed } from "./layout/papers.ts";
import { creator } from "./plate-drawings.ts";

export type { Job } from "./content/job.ts";
export { type PartId, partIds } from "./content/parts.ts";
export type { RepairSheet } from "./content/repair-sheet.ts";
export { loadHead } from "./head-file.ts";
export type { PaperName } from "./layout/paper.ts";
export { paperNames, wallPaperNames } from "./layout/papers.ts";
export { creator, type PlateDrawing, type PlateDrawingsOptions, plateDrawings } from "./plate-drawings.ts";

/** What to print. */
export interface BookletOptions {
  /**
   * A book in pages, the default; a `booklet` of half sheets laid out on full ones, to be printed
   * on both sides, folded and stitched; or sheets in large type for the `wall`.
   */
  readonly as?: "pages" | "booklet" | "wall";
  /** Left out: `a4`, or `a5` for a booklet. */
  readonly paper?: PaperName;
  /** The first count; left out, 2. */
  readonly from?: number;
  /** The last count; left out, 400. */
  readonly to?: number;
  /** The parts it is to have; left out, all that this head has something for. */
  readonly parts?: readonly PartId[];
  /** Counts to have a degree table each, every position by dial and ring; left out, on a head without plates those to 60 that nothing closes. */
  readonly degreeTables?: readonly number[];
  /** Whether lengths to measure stand in inches; left out, in millimetres. */
  readonly inches?: boolean;
  /**
   * Tagged for screens and for reading aloud: tables with their heads, drawings in words, the order
   * of reading. Some ten times the size; left out, false. Not for a folded booklet.
   */
  readonly tagged?: boolean;
  /** The date in the file; left out, a fixed one: the same inputs give the same bytes. */
  readonly created?: Date;
  /** Called as the work goes on, with what is being done. */
  readonly onProgress?: (doing: string) => void;
}

const usualDate = new Date(Date.UTC(2000, 0, 1));

/**
 * Prints the book of a head, or its wall sheets, as a PDF.
 *
 * The same head and options give the same bytes. Every setting in it has been turned through all
 * its moves on the model of the mechanism.
 *
 * @throws {@link InputError} when an option is not allowed, or a name holds a letter that the type lacks.
 */
export async function bookletPdf(head: Head, options: BookletOptions = {}): Promise<Uint8Array> {
  const { as = "pages", created = usualDate, onProgress = () => {}, tagged = false } = options;
  const { book, paper } = written(head, options);
  if (tagged && as === "booklet")
    throw refusal("conflict", "tagged", "a folded booklet has no order of reading; leave it untagged, or print pages");
  return printed(book, paper, { created, onProgress, tagged, folded: as === "booklet" });
}

/**
 * What {@link bookletPdf} would print and where, as SHA-256: the same on every machine, even where
 * the bytes of the PDF are packed otherwise. By this a printed book is known to be what the code makes.
 *
 * @throws {@link InputError} as {@link bookletPdf} does.
 */
export async function bookletDigest(head: Head, options: BookletOptions = {}): Promise<string> {
  const { book, paper } = written(head, options);
  const { measure } = await openPrintShop();
  const hash = createHash("sha256");
  for (const page of setInPages(book, paper, measure).pages()) {
    // The last bits of sines differ between engines.
    hash.update(JSON.stringify(page, (_, value: unknown) => (typeof value === "number" ? Math.round(value * 100) / 100 : value)));
  }
  return hash.digest("hex");
}

function written(head: Head, options: BookletOptions): { readonly book: Book; readonly paper: Paper } {
  const { as = "pages", onProgress = () => {} } = options;
  const paper = paperFor(as, options.paper);
  const contents = contentsFrom(as, options);
  const edition = editionOf(head, { as, paper: paper.name, ...contents });
  const book = bookOf(head, edition, contents, (done) => {
    if (done % 50 === 0) onProgress(`working out and proving count ${contents.from + done} of ${contents.to}`);
  });
  return { book: as === "wall" ? forWall(book) : book, paper };
}

/** What a job sheet is for: a count or an angle, how it is planned, and the paper. */
export type JobOptions = Job & Pick<BookletOptions, "paper" | "created" | "tagged">;

/**
 * Prints the sheet of one job: the way in large figures and in words, drawings, every position or
 * the chosen teeth with a box to tick, ring and dial readings, how far each is off where the way is
 * not exact, checks on the way, cautions, room for notes.
 *
 * It prints the plan that {@link planJob} makes of the same head, target and options. An angle that
 * takes over 1,000 moves to come back to its start is listed to one turn of the work.
 *
 * @throws {@link InputError} as {@link planJob} does, when there are over 1,000 positions to list, or
 * when the head cannot do the job even nearly.
 */
export async function jobSheetPdf(
  head: Head,
  { paper: name, created = usualDate, tagged = false, ...job }: JobOptions,
): Promise<Uint8Array> {
  const paper = paperNamed(name ?? "a4");
  const book = jobOf(head, editionOf(head, { job, paper: paper.name }), job);
  return printed(book, paper, { created, onProgress: () => {}, tagged, folded: false });
}

/** What the sheet of a repair is for. */
export interface RepairSheetOptions extends RepairSheet, Pick<BookletOptions, "paper" | "created" | "tagged"> {}

/**
 * Prints the sheet of a gear's repair: the setting, the gear with its damaged teeth, every move
 * with a box to tick, what to make and to measure with room to write, cautions, notes.
 *
 * @throws {@link InputError} when the paper is not one of those for a book.
 */
export async function repairSheetPdf({
  paper: name,
  created = usualDate,
  tagged = false,
  ...sheet
}: RepairSheetOptions): Promise<Uint8Array> {
  const paper = paperNamed(name ?? "a4");
  const book = repairBookOf(sheet, editionOf(sheet.head, { repair: sheet, paper: paper.name }));
  return printed(book, paper, { created, onProgress: () => {}, tagged, folded: false });
}

type Printing = Required<Pick<BookletOptions, "created" | "onProgress" | "tagged">> & { readonly folded: boolean };

async function printed(book: Book, paper: Paper, { created, onProgress, tagged, folded }: Printing): Promise<Uint8Array> {
  const shop = await openPrintShop();
  onProgress("setting the pages");
  const set = setInPages(book, paper, shop.measure);
  onProgress(`drawing ${set.headwords.length} pages`);
  const canvas = shop.open({ title: book.fileTitle, subject: book.subject, creator, digest: book.digest, created, tagged });
  if (hasTemplates(book)) canvas.printTrue();
  if (folded) drawImposed(canvas, [...set.pages()]);
  else {
    drawPages(canvas, set.pages());
    canvas.bookmarks(bookmarksOf(book, set));
    canvas.labels(set.headwords.map((_, index) => labelOf(index + 1)));
  }
  return canvas.end();
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

function paperFor(as: BookletOptions["as"], name: string | undefined): Paper {
  if (as === "wall") return wallPaperNamed(name ?? "a4");
  const paper = paperNamed(name ?? (as === "booklet" ? "a5" : "a4"));
  if (as === "booklet" && paper.width > 450) {
    throw refusal("conflict", "paper", `${paper.name} is a full sheet; a booklet is folded from half sheets, a5 or half-letter`);
  }
  return paper;
}

function contentsFrom(
  as: BookletOptions["as"],
  { from = 2, to = 400, parts = as === "wall" ? wallParts : partIds, degreeTables, inches }: BookletOptions,
): Contents {
  const unknown = parts.filter((part) => !partIds.includes(part));
  if (unknown.length > 0)
    throw refusal("unknown-word", "parts", `there is no part ${unknown.join(", ")}; the parts are ${partIds.join(", ")}`);
  return { from, to, parts, degreeTables: degreeTables ?? null, ...(inches === true && { inches }) };
}

function refusal(code: FaultCode, place: string, problem: string): InputError {
  return new InputError([{ code, place, problem }]);
}
