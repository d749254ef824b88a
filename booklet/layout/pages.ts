import type { Block, Book, Part } from "../content/blocks.ts";
import type { Sheet } from "./filling-page.ts";
import type { Page } from "./marks.ts";
import type { Measure } from "./measure.ts";
import { frameOf, type Paper } from "./paper.ts";
import { type PartSetter, type PartSketch, partSetter } from "./part-setter.ts";
import { furniture } from "./running.ts";
import type { PageNumbers } from "./set-once.ts";

/** A book whose page numbers are settled, with the places that can be gone to. */
export interface SetBook {
  /** The least and the greatest count on each page where it holds counts: `51–96`; else nothing. */
  readonly headwords: readonly string[];
  readonly anchors: PageNumbers;
  /** Sets page after page, so that none need be kept once it is drawn. */
  pages(): Generator<Page>;
}

const mostPasses = 6;

/**
 * Sets a book in pages. Page numbers named in the text move the text, so it is sketched again until
 * every number named is the number to be printed.
 */
export function setInPages(book: Book, paper: Paper, measure: Measure): SetBook {
  const setter = partSetter(book.sheetsStandAlone, paper, measure);
  const joined = joinedOnce();
  let known: PageNumbers = new Map();
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const sketch = sketched(book, known, setter, joined);
    const settled = known.size === sketch.anchors.size && [...sketch.anchors].every(([name, page]) => known.get(name) === page);
    if (settled) return { ...sketch, pages: () => pagesOf(book, sketch, setter, paper, measure) };
    known = sketch.anchors;
  }
  throw new Error("turns-and-holes is at fault, please report it: the page numbers do not settle");
}

/** Where everything comes to stand with the page numbers known so far. */
interface Sketch extends Pick<SetBook, "headwords" | "anchors"> {
  /** The parts as they begin pages, those that join another within it, and how each is set. */
  readonly parts: readonly SketchedPart[];
}

function sketched(book: Book, known: PageNumbers, setter: PartSetter, joined: Joined): Sketch {
  const headwords: string[] = [];
  const anchors = new Map<string, number>();
  const parts = inTurn(book, known, setter, joined);
  for (const { sketch } of parts) {
    headwords.push(...sketch.sheets.map((sheet) => span(sheet.headwords)));
    for (const [name, page] of sketch.anchors) anchors.set(name, page);
  }
  return { headwords, anchors, parts };
}

interface SketchedPart {
  readonly part: Part;
  readonly first: number;
  readonly sketch: PartSketch;
}

/** Each part on a page of its own, or with the part before where that saves a page. */
function inTurn(
  { parts, sheetsStandAlone }: Book,
  known: PageNumbers,
  setter: PartSetter,
  joined: Joined,
): readonly SketchedPart[] {
  const found: SketchedPart[] = [];
  let first = 1;
  for (const part of parts) {
    const alone: SketchedPart = { part, first, sketch: setter.sketch(part, first, known) };
    const last = found.at(-1);
    const joins = last && part.joins && !last.part.mark && !sheetsStandAlone ? joined(last.part, part) : undefined;
    const together = last && joins && { part: joins, first: last.first, sketch: setter.sketch(joins, last.first, known) };
    const saves = last && together && together.sketch.sheets.length < last.sketch.sheets.length + alone.sketch.sheets.length;
    if (saves) found.pop();
    const next = saves ? together : alone;
    found.push(next);
    first = next.first + next.sketch.sheets.length;
  }
  return found;
}

/** Two parts as one; the same one whenever it is asked for. */
type Joined = (part: Part, next: Part) => Part;

function joinedOnce(): Joined {
  const known = new Map<Part, Map<Part, Part>>();
  return (part, next) => {
    const there = known.get(part) ?? new Map<Part, Part>();
    known.set(part, there);
    const { id, title, blocks } = next;
    const together = there.get(next) ?? {
      ...part,
      blocks: [...part.blocks, { kind: "opening", title, anchor: id }, ...blocks] satisfies readonly Block[],
    };
    there.set(next, together);
    return together;
  };
}

function* pagesOf(
  book: Book,
  { headwords, anchors, parts }: Sketch,
  setter: PartSetter,
  paper: Paper,
  measure: Measure,
): Generator<Page> {
  let number = 0;
  for (const { part, first, sketch } of parts) {
    // Where everything stands is settled: what grows moves nothing.
    const grown = setter.grown(part, sketch, first, anchors);
    for (const sheet of setter.sheets(part, { paper: sketch.paper, grown }, first, anchors)) {
      number += 1;
      yield pageOf(sheet, number, headwords.length, book, paper, measure);
    }
  }
}

/** What viewers and the page itself call it. */
export function labelOf(number: number): string {
  return String(number);
}

/** Puts head and foot on a page. */
function pageOf(
  { part, marks, headwords }: Sheet,
  number: number,
  pages: number,
  book: Book,
  paper: Paper,
  measure: Measure,
): Page {
  const head = { part, title: book.title, headwords: span(headwords) };
  return {
    width: paper.width,
    height: paper.height,
    label: labelOf(number),
    headwords: head.headwords,
    marks: [
      ...furniture(
        { ...book.running, ...(part.rule !== undefined && { rule: part.rule }) },
        head,
        `page ${labelOf(number)} of ${pages}`,
        frameOf(paper, number),
        paper,
        measure,
      ),
      ...marks,
    ],
  };
}

/** The most runs of counts that the head of a page names. */
const mostRuns = 2;

/**
 * From the least count to the greatest of the rows on a page: `51–96`. Where a second table goes back to lower counts
 * each has its own, in their order: `320–372, 153–303`; one over both would name what stands on other pages.
 */
function span(words: readonly string[]): string {
  const runs: { least: number; greatest: number }[] = [];
  for (const word of words) {
    const counts = word.split("–").map(Number);
    const [least, greatest] = [Math.min(...counts), Math.max(...counts)];
    const run = runs.at(-1);
    if (run !== undefined && least >= run.greatest) run.greatest = greatest;
    else runs.push({ least, greatest });
  }
  if (runs.length <= mostRuns) return runs.map(rangeOf).join(", ");
  return rangeOf({
    least: Math.min(...runs.map(({ least }) => least)),
    greatest: Math.max(...runs.map(({ greatest }) => greatest)),
  });
}

function rangeOf({ least, greatest }: { readonly least: number; readonly greatest: number }): string {
  return least === greatest ? String(least) : `${least}–${greatest}`;
}
