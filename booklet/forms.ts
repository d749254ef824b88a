import { type FaultCode, type Head, InputError } from "../src/index.ts";
import type { Book } from "./content/blocks.ts";
import { bookOf, type Contents, countsTold } from "./content/book.ts";
import type { HeadCount } from "./content/head-counts.ts";
import { type PartId, partIds } from "./content/parts.ts";
import { cardOf, posterContents, posterOf } from "./content/poster.ts";
import { forWall, wallContents } from "./content/wall.ts";
import { editionOf } from "./edition.ts";
import type { Paper, PaperName } from "./layout/paper.ts";
import {
  cardPaperNamed,
  foldedPaperNamed,
  largePaperNamed,
  paperNamed,
  posterPaperNamed,
  wallPaperNamed,
} from "./layout/papers.ts";
import { pausing, type Watched } from "./pausing.ts";

/**
 * The forms that a book can take: `pages`; the same in `large` type; a `booklet` of half sheets laid
 * out on full ones, to be printed on both sides, folded and stitched; sheets in larger type for the
 * `wall`; a `poster` and a `card` of the counts that shops use most.
 */
export const bookForms = ["pages", "large", "booklet", "wall", "poster", "card"] as const;

/** The name of a form. */
export type BookForm = (typeof bookForms)[number];

/** What to print, and how it is watched and stopped. */
export interface BookletOptions extends Watched {
  /** Left out, `pages`. */
  readonly as?: BookForm | undefined;
  /** Left out: `a4`; `a5` for a booklet, `a3` for a poster. */
  readonly paper?: PaperName | undefined;
  /** The first count; left out, 2. */
  readonly from?: number | undefined;
  /** The last count; left out, 400. */
  readonly to?: number | undefined;
  /** The parts it is to have; left out, all that this head has something for. */
  readonly parts?: readonly PartId[] | undefined;
  /** Counts to have a table of every position each; left out, on a head without plates those to 60, on others those to 60 that nothing closes. */
  readonly degreeTables?: readonly number[] | undefined;
  /** Whether lengths to measure stand in inches; left out, in millimetres. */
  readonly inches?: boolean | undefined;
  /**
   * Tagged for screens and for reading aloud: tables with their heads, drawings in words, the order
   * of reading. Some ten times the size; left out, false. Not for a folded booklet.
   */
  readonly tagged?: boolean | undefined;
  /** The date in the file; left out, a fixed one: the same inputs give the same bytes. */
  readonly created?: Date | undefined;
}

/** A book as it is put on paper. */
export interface FormedBook {
  readonly book: Book;
  readonly paper: Paper;
  /** Page by page, two on a sheet to fold, or two to cut out. */
  readonly put: "pages" | "folded" | "cut-out";
}

/** What makes a form. */
interface Form extends Pick<FormedBook, "put"> {
  readonly usualPaper: PaperName;
  paperNamed(name: string): Paper;
  /** What it holds where the options say nothing; null where it holds the same whatever they say. */
  usual: ((head: Head, from: number, to: number) => Pick<Contents, "parts" | "degreeTables">) | null;
  made(head: Head, book: () => Book, making: Making): Book;
}

/** What a form is made with besides the book of the head. */
type Making = { readonly edition: ReturnType<typeof editionOf>; readonly counts: readonly HeadCount[] };

const whole = () => ({ parts: partIds, degreeTables: null });
const asItIs = (_: Head, book: () => Book) => book();

const forms: Readonly<Record<BookForm, Form>> = {
  pages: { put: "pages", usualPaper: "a4", paperNamed, usual: whole, made: asItIs },
  large: { put: "pages", usualPaper: "a4", paperNamed: largePaperNamed, usual: whole, made: asItIs },
  booklet: { put: "folded", usualPaper: "a5", paperNamed: foldedPaperNamed, usual: whole, made: asItIs },
  wall: {
    put: "pages",
    usualPaper: "a4",
    paperNamed: wallPaperNamed,
    usual: wallContents,
    made: (_, book) => forWall(book()),
  },
  poster: {
    put: "pages",
    usualPaper: "a3",
    paperNamed: posterPaperNamed,
    usual: null,
    made: (head, _, { edition, counts }) => posterOf(head, edition, counts),
  },
  card: {
    put: "cut-out",
    usualPaper: "a4",
    paperNamed: cardPaperNamed,
    usual: null,
    made: (head, _, { edition, counts }) => cardOf(head, edition, counts),
  },
};

/** Options that change nothing of a form that always holds the same. */
const notOfFixed = ["from", "to", "parts", "degreeTables"] as const;

/**
 * Writes the book of a head in the form asked for.
 *
 * @throws {@link InputError} when an option is not allowed, or has no effect on the form; and whatever
 * its signal stops it with.
 */
export async function formed(head: Head, options: BookletOptions): Promise<FormedBook> {
  const { as = "pages" } = options;
  const form = formNamed(as);
  const paper = form.paperNamed(options.paper ?? form.usualPaper);
  checkTogether(head, form, as, options);
  const contents = contentsFrom(head, form, options);
  const edition = editionOf(head, { as, paper: paper.name, ...contents });
  const counts = await countsWatched(head, form.usual === null ? posterContents : contents, options);
  const book = form.made(head, () => bookOf(head, edition, contents, counts), { edition, counts });
  return { book, paper, put: form.put };
}

/** Works out and proves every count, and lets others work between them. */
async function countsWatched(
  head: Head,
  { from, to }: Pick<Contents, "from" | "to">,
  watched: Watched,
): Promise<readonly HeadCount[]> {
  const pause = pausing(watched);
  const counts: HeadCount[] = [];
  const total = to - from + 1;
  await pause("working out and proving the counts", 0, total);
  for (const count of countsTold(head, from, to)) {
    counts.push(count);
    await pause("working out and proving the counts", counts.length, total);
  }
  return counts;
}

function formNamed(name: string): Form {
  const found = Object.entries(forms).find(([form]) => form === name);
  if (found) return found[1];
  throw refusal("unknown-word", "as", `there is no form ${JSON.stringify(name)}; the forms are ${bookForms.join(", ")}`);
}

function checkTogether(head: Head, { put, usual }: Form, as: BookForm, options: BookletOptions): void {
  if (options.tagged === true && put !== "pages")
    throw refusal("conflict", "tagged", `a ${as} has no order of reading; leave it untagged, or print pages`);
  if (usual !== null) return;
  if (head.plates.length === 0)
    throw refusal(
      "conflict",
      "as",
      `a ${as} holds moves over index plates, and this head has none; print its wall sheets instead`,
    );
  const idle = notOfFixed.filter((name) => options[name] !== undefined);
  if (idle.length > 0)
    throw new InputError(
      idle.map((place) => ({
        code: "no-effect",
        place,
        problem: `has no effect on a ${as}, which always holds the same counts; leave it out`,
      })),
    );
}

function contentsFrom(head: Head, form: Form, { from = 2, to = 400, inches, ...asked }: BookletOptions): Contents {
  const usual = (form.usual ?? whole)(head, from, to);
  const { parts = usual.parts, degreeTables = usual.degreeTables } = asked;
  const unknown = parts.filter((part) => !partIds.includes(part));
  if (unknown.length > 0)
    throw refusal("unknown-word", "parts", `there is no part ${unknown.join(", ")}; the parts are ${partIds.join(", ")}`);
  return { from, to, parts, degreeTables, ...(inches === true && { inches }) };
}

function refusal(code: FaultCode, place: string, problem: string): InputError {
  return new InputError([{ code, place, problem }]);
}
