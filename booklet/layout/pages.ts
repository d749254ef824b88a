import type { Book, Part } from "../content/blocks.ts";
import { galleyOf, titleGalley } from "./galleys.ts";
import type { Mark, Page } from "./marks.ts";
import type { Measure } from "./measure.ts";
import { type Frame, frameOf, type Paper } from "./paper.ts";
import { furniture, insideFurniture } from "./running.ts";
import type { Galley, Slug } from "./slugs.ts";

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
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const set = setOnce(book, paper, measure, anchors);
    const settled = anchors.size === set.anchors.size && [...set.anchors].every(([name, page]) => anchors.get(name) === page);
    if (settled) return set;
    anchors = set.anchors;
  }
  throw new Error("turns-and-holes is at fault, please report it: the page numbers do not settle");
}

interface Sheet {
  readonly part: Part;
  readonly marks: Mark[];
  readonly headwords: string[];
}

function setOnce(book: Book, paper: Paper, measure: Measure, known: ReadonlyMap<string, number>): SetBook {
  const sheets: Sheet[] = [];
  const anchors = new Map<string, number>();
  const width = paper.width - paper.inner - paper.outer;
  for (const part of book.parts) {
    const resolved = withPageNumbers(part, known);
    const opening = titleGalley(part, width, paper, measure);
    const galleys = [
      ...(book.sheetsStandAlone ? [] : [opening]),
      ...resolved.blocks.map((block) => galleyOf(block, width, paper, measure)),
    ];
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

interface Strip {
  readonly galley: Galley;
  readonly slug: Slug;
  readonly first: boolean;
}

/** Fills page after page with strips; a part begins a new page. */
function runIntoPages(
  galleys: readonly Galley[],
  onEach: readonly Slug[],
  part: Part,
  sheets: Sheet[],
  anchors: Map<string, number>,
  frameFor: (page: number) => Frame,
): void {
  const strips = galleys.flatMap((galley) => galley.slugs.map((slug, index): Strip => ({ galley, slug, first: index === 0 })));
  const page = emptyPage(part, sheets, anchors, onEach, frameFor);
  page.turn();
  page.name(part.id);
  for (const [index, { galley, slug, first }] of strips.entries()) {
    const before = above(galley, slug, first);
    if (page.full(heightOf(before) + together(strips, index))) {
      page.close();
      page.turn();
      for (const each of galley.head) page.put(each);
    } else {
      for (const each of before) page.put(each);
    }
    page.put(slug);
    if (strips[index + 1]?.first !== false) page.close(galley);
    else page.of(galley);
  }
}

/** The page being filled. */
function emptyPage(
  part: Part,
  sheets: Sheet[],
  anchors: Map<string, number>,
  onEach: readonly Slug[],
  frameFor: (page: number) => Frame,
) {
  let sheet: Sheet = { part, marks: [], headwords: [] };
  let frame = frameFor(sheets.length + 1);
  let y = 0;
  let open: Mark[] = [];
  let current: Galley | null = null;
  let filledFrom = 0;
  return {
    turn() {
      sheet = { part, marks: [], headwords: [] };
      sheets.push(sheet);
      frame = frameFor(sheets.length);
      y = frame.top;
      for (const slug of onEach) {
        sheet.marks.push(...slug.marks(frame.left, y));
        y += slug.height;
      }
      filledFrom = y;
    },
    name: (anchor: string) => void sheet.marks.push({ kind: "anchor", name: anchor, y: 0 }),
    full: (height: number) => y + height > frame.bottom && y > filledFrom,
    of(galley: Galley) {
      current = galley;
    },
    put(slug: Slug) {
      if (slug.anchor !== undefined) {
        anchors.set(slug.anchor, sheets.length);
        sheet.marks.push({ kind: "anchor", name: slug.anchor, y });
      }
      if (slug.headword !== undefined) sheet.headwords.push(slug.headword);
      open.push(...slug.marks(frame.left, y));
      y += slug.height;
    },
    /** Ends a galley on this page: its marks are one thing for a reader. */
    close(galley: Galley | null = current) {
      const { role, alt } = galley ?? {};
      if (open.length > 0 && role !== undefined)
        sheet.marks.push({ kind: "group", role, ...(alt === undefined ? {} : { alt }), marks: open });
      else sheet.marks.push(...open);
      open = [];
      current = null;
    },
  };
}

/** What goes above a strip: the head of its galley, or what parts it from the strip before. */
function above(galley: Galley, slug: Slug, first: boolean): readonly Slug[] {
  if (first) return galley.head;
  return slug.between ? [slug.between] : [];
}

function heightOf(slugs: readonly Slug[]): number {
  return slugs.reduce((sum, { height }) => sum + height, 0);
}

/** The height of a strip with those that must stay with it. */
function together(strips: readonly Strip[], from: number): number {
  let height = 0;
  for (let index = from; index < strips.length; index += 1) {
    const strip = strips[index];
    if (!strip) break;
    height += strip.slug.height + (index > from ? heightOf(above(strip.galley, strip.slug, strip.first)) : 0);
    if (!strip.slug.keepWithNext) break;
  }
  return height;
}

/** Puts in the numbers of pages that are named; before they are known, as wide a number. */
function withPageNumbers(part: Part, known: ReadonlyMap<string, number>): Part {
  return JSON.parse(
    JSON.stringify(part).replace(/\{page:([a-z]+\d*)\}/g, (_, anchor: string) => String(known.get(anchor) ?? unknownPage)),
  ) as Part;
}
