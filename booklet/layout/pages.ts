import type { Block, Book } from "../content/blocks.ts";
import type { Sheet } from "./filling-page.ts";
import { galleyOf, titleGalley } from "./galleys.ts";
import type { Page } from "./marks.ts";
import type { Measure } from "./measure.ts";
import { runIntoPages } from "./page-run.ts";
import { frameOf, type Paper } from "./paper.ts";
import { furniture, insideFurniture } from "./running.ts";
import type { Galley } from "./slugs.ts";

/** A book set in pages, with the places that can be gone to. */
export interface SetBook {
  readonly pages: readonly Page[];
  /** Anchor → number of its page, from 1. */
  readonly anchors: ReadonlyMap<string, number>;
}

const mostPasses = 6;
/** Stands for a page until its number is known. */
const unknownPage = 88;

/**
 * Sets a book in pages. Page numbers named in the text move the text, so it is set again until
 * every number named is the number printed.
 */
export function setInPages(book: Book, paper: Paper, measure: Measure): SetBook {
  let anchors: ReadonlyMap<string, number> = new Map();
  const galleyFor = galleysOnce(paper.width - paper.inner - paper.outer, paper, measure);
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const set = setOnce(book, paper, measure, anchors, galleyFor);
    const settled = anchors.size === set.anchors.size && [...set.anchors].every(([name, page]) => anchors.get(name) === page);
    if (settled) return set;
    anchors = set.anchors;
  }
  throw new Error("turns-and-holes is at fault, please report it: the page numbers do not settle");
}

function setOnce(
  book: Book,
  paper: Paper,
  measure: Measure,
  known: ReadonlyMap<string, number>,
  galleyFor: (block: Block, known: ReadonlyMap<string, number>) => Galley,
): SetBook {
  const sheets: Sheet[] = [];
  const anchors = new Map<string, number>();
  const width = paper.width - paper.inner - paper.outer;
  for (const part of book.parts) {
    const opening = titleGalley(part, width, paper, measure);
    const galleys = [...(book.sheetsStandAlone ? [] : [opening]), ...part.blocks.map((block) => galleyFor(block, known))];
    anchors.set(part.id, sheets.length + 1);
    runIntoPages(galleys, book.sheetsStandAlone ? opening.slugs : [], part, sheets, anchors, (number) =>
      insideFurniture(frameOf(paper, number), paper),
    );
  }
  const pages = sheets.map(({ part, marks, headwords }, index): Page => {
    const number = index + 1;
    const folio = `page ${number} of ${sheets.length}`;
    return {
      width: paper.width,
      height: paper.height,
      label: String(number),
      headwords: span(headwords),
      marks: [
        ...furniture(
          book.running,
          { part, title: book.title, headwords: span(headwords) },
          folio,
          frameOf(paper, number),
          paper,
          measure,
        ),
        ...marks,
      ],
    };
  });
  return { pages, anchors };
}

/** From the first word to the last: `51–96`. */
function span(words: readonly string[]): string {
  const first = words[0]?.split("–")[0] ?? "";
  const last = words.at(-1)?.split("–").at(-1) ?? "";
  return first === last ? first : `${first}–${last}`;
}

/** Sets blocks with the numbers of pages that they name; a block that names none is set once for all passes. */
function galleysOnce(width: number, paper: Paper, measure: Measure) {
  const known = new Map<Block, Galley>();
  return (block: Block, pages: ReadonlyMap<string, number>): Galley => {
    const galley = known.get(block);
    if (galley) return galley;
    const text = JSON.stringify(block);
    if (text.includes("{page:")) return galleyOf(JSON.parse(withPageNumbers(text, pages)) as Block, width, paper, measure);
    const set = galleyOf(block, width, paper, measure);
    known.set(block, set);
    return set;
  };
}

/** Puts in the numbers of pages that are named; before they are known, as wide a number. */
function withPageNumbers(text: string, known: ReadonlyMap<string, number>): string {
  return text.replace(/\{page:([a-z]+\d*)\}/g, (_, anchor: string) => String(known.get(anchor) ?? unknownPage));
}
