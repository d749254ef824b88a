/**
 * The printed book for a head: a title page, every count with its setting, and what cannot be done.
 *
 * @module turns-and-holes/booklet
 */
import { createHash } from "node:crypto";
import type { Head } from "../src/index.ts";
import type { Book } from "./content/blocks.ts";
import { type BoltCircleSheet, boltCircleBookOf } from "./content/bolt-circle-sheet.ts";
import { type FlatsSheet, flatsBookOf } from "./content/flats-sheet.ts";
import { type Job, jobOf } from "./content/job.ts";
import { type KitSheet, kitBookOf } from "./content/kit-sheet.ts";
import { type PlateSheet, plateBookOf } from "./content/plate-sheet.ts";
import { type RepairSheet, repairBookOf } from "./content/repair-sheet.ts";
import { type ScaleSheet, scaleBookOf } from "./content/scale-sheet.ts";
import { openPrintShop } from "./draw/print-shop.ts";
import { type Edition, editionOf } from "./edition.ts";
import { type BookletOptions, formed } from "./forms.ts";
import { setInPages } from "./layout/pages.ts";
import { largePaperNamed, paperNamed } from "./layout/papers.ts";
import { type PdfBytes, printed } from "./printed.ts";

export { type Fault, InputError } from "../src/index.ts";
export type { BoltCircleSheet } from "./content/bolt-circle-sheet.ts";
export type { FlatsSheet } from "./content/flats-sheet.ts";
export type { Job, JobBudget } from "./content/job.ts";
export type { KitSheet } from "./content/kit-sheet.ts";
export { type PartId, partIds } from "./content/parts.ts";
export type { PlateSheet } from "./content/plate-sheet.ts";
export type { RepairSheet } from "./content/repair-sheet.ts";
export type { ScaleSheet } from "./content/scale-sheet.ts";
export { FileError } from "./file-error.ts";
export { type BookForm, type BookletOptions, bookForms } from "./forms.ts";
export { headFromText, loadHead } from "./head-file.ts";
export type { PaperName } from "./layout/paper.ts";
export { cardPaperNames, largePaperNames, paperNames, posterPaperNames, wallPaperNames } from "./layout/papers.ts";
export type { Watched } from "./pausing.ts";
export { creator, type PlateDrawing, type PlateDrawingsOptions, plateDrawings } from "./plate-drawings.ts";
export type { PdfBytes } from "./printed.ts";
export { screenPage } from "./screen-page.ts";

const usualDate = new Date(Date.UTC(2000, 0, 1));

/**
 * Prints the book of a head, or its wall sheets, as a PDF. It lets other work have a turn as it goes
 * on, tells of its progress, and stops where its signal says so.
 *
 * The same head and options give the same bytes. Every setting in it has been turned through all
 * its moves on the model of the mechanism.
 *
 * @throws {@link InputError} when an option is not allowed, or a name holds a letter that the type lacks.
 */
export async function bookletPdf(head: Head, options: BookletOptions = {}): Promise<PdfBytes> {
  const { created = usualDate, tagged = false, signal, onProgress } = options;
  return printed(await formed(head, options), { created, tagged, signal, onProgress });
}

/**
 * What {@link bookletPdf} would print and where, as SHA-256: the same on every machine, even where
 * the bytes of the PDF are packed otherwise. By this a printed book is known to be what the code makes.
 *
 * @throws {@link InputError} as {@link bookletPdf} does.
 */
export async function bookletDigest(head: Head, options: BookletOptions = {}): Promise<string> {
  const { book, paper } = await formed(head, options);
  const { measure } = await openPrintShop();
  const hash = createHash("sha256");
  for (const page of setInPages(book, paper, measure).pages()) {
    // The last bits of sines differ between engines.
    hash.update(JSON.stringify(page, (_, value: unknown) => (typeof value === "number" ? Math.round(value * 100) / 100 : value)));
  }
  return hash.digest("hex");
}

/** How a sheet is printed, whatever it is of. */
export type SheetPrinting = Pick<BookletOptions, "paper" | "created" | "tagged" | "signal" | "onProgress">;

/** What a job sheet is for: a count or an angle, how it is planned, and the paper. */
export type JobOptions = Job &
  SheetPrinting & {
    /** Whether it is set in large type, on a full sheet; left out, false. */
    readonly large?: boolean;
  };

/**
 * Prints the sheet of one job: the way in large figures and in words, drawings, every position or
 * the chosen teeth with a box to tick, ring and dial readings, how far each is off where the way is
 * not exact, checks on the way, cautions, room for notes.
 *
 * It prints the plan that `planJob` of the library makes of the same head, target and options. An angle that
 * takes over 1,000 moves to come back to its start is listed to one turn of the work.
 *
 * @throws {@link InputError} as `planJob` of the library does, when there are over 1,000 positions to list, or
 * when the head cannot do the job even nearly.
 */
export async function jobSheetPdf(
  head: Head,
  { paper: name, created = usualDate, tagged = false, large = false, signal, onProgress, ...job }: JobOptions,
): Promise<PdfBytes> {
  const paper = (large ? largePaperNamed : paperNamed)(name ?? "a4");
  const book = jobOf(head, editionOf(head, { job, paper: paper.name, ...(large && { large }) }), job);
  return printed({ book, paper, put: "pages" }, { created, tagged, signal, onProgress });
}

/** What the sheet of an index plate is for. */
export interface PlateSheetOptions extends PlateSheet, SheetPrinting {}

/**
 * Prints the sheet of an index plate: the setting, every hole with a box to tick, how far off they come to lie and what
 * that is at the spindle, the chords with room to write what they measure, and the circle at true size where the paper
 * holds it.
 *
 * @throws {@link InputError} when the paper is not one of those for a book, or there are over 1,000 holes.
 */
export function plateSheetPdf(options: PlateSheetOptions): Promise<PdfBytes> {
  return sheetPdf("plate", plateBookOf, options);
}

/** What the sheet of a scale is for. */
export interface ScaleSheetOptions extends ScaleSheet, SheetPrinting {}

/**
 * Prints the sheet of a scale or a vernier: the setting, a drawing as it will look, and every line with a box to tick, its
 * length and its figure.
 *
 * @throws {@link InputError} when the paper is not one of those for a book, or there are over 1,000 lines.
 */
export function scaleSheetPdf(options: ScaleSheetOptions): Promise<PdfBytes> {
  return sheetPdf("scale", scaleBookOf, options);
}

/** What the sheet of a repair is for. */
export interface RepairSheetOptions extends RepairSheet, SheetPrinting {}

/**
 * Prints the sheet of a gear's repair: the setting, the gear with its damaged teeth, every move
 * with a box to tick, what to make and to measure with room to write, cautions, notes.
 *
 * @throws {@link InputError} when the paper is not one of those for a book.
 */
export function repairSheetPdf(options: RepairSheetOptions): Promise<PdfBytes> {
  return sheetPdf("repair", repairBookOf, options);
}

/** What the sheet of a kit is for. */
export interface KitSheetOptions extends KitSheet, SheetPrinting {}

/**
 * Prints the sheet of a kit: every count at a glance, the counts that one would expect and that fail, what
 * is lost with each plate, and which circle, plate or gears would add the most.
 *
 * @throws {@link InputError} when the paper is not one of those for a book.
 */
export function kitSheetPdf(options: KitSheetOptions): Promise<PdfBytes> {
  return sheetPdf("kit", kitBookOf, options);
}

/** What the sheet of flats is for. */
export interface FlatsSheetOptions extends FlatsSheet, SheetPrinting {}

/**
 * Prints the sheet of flats on round stock: blank, depth of cut and what is measured on a drawing to scale, the move on
 * the head, or without one the degrees, and every flat with a box to tick.
 *
 * @throws {@link InputError} when the paper is not one of those for a book, or the plan is of another count than the flats.
 */
export function flatsSheetPdf(options: FlatsSheetOptions): Promise<PdfBytes> {
  return sheetPdf("flats", flatsBookOf, options);
}

/** What the sheet of a bolt circle is for. */
export interface BoltCircleSheetOptions extends BoltCircleSheet, SheetPrinting {}

/**
 * Prints the sheet of a bolt circle: x and y of each hole with a box to tick, signed from the centre and from a zero
 * beside it, a drawing to scale, and chords with room to write what they measure.
 *
 * @throws {@link InputError} when the paper is not one of those for a book, there are over 1,000 holes, or the circle is not allowed.
 */
export function boltCircleSheetPdf(options: BoltCircleSheetOptions): Promise<PdfBytes> {
  return sheetPdf("boltCircle", boltCircleBookOf, options);
}

/** Prints a sheet, and says in its edition what it was made from. */
async function sheetPdf<Options extends SheetPrinting>(
  of: string,
  bookOf: (sheet: Omit<Options, keyof SheetPrinting>, edition: Edition) => Book,
  options: Options & { readonly head?: Head },
): Promise<PdfBytes> {
  const { paper: name, created = usualDate, tagged = false, signal, onProgress, ...sheet } = options;
  const paper = paperNamed(name ?? "a4");
  const book = bookOf(sheet, editionOf(options.head ?? null, { [of]: sheet, paper: paper.name }));
  return printed({ book, paper, put: "pages" }, { created, tagged, signal, onProgress });
}
