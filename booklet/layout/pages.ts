import type { Block, Book, Part } from "../content/blocks.ts";
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
  const galleyFor = galleysOnce(paper.width - paper.inner - paper.outer, paper, measure);
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const set = setOnce(book, paper, measure, anchors, galleyFor);
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
    if (galley.fold) {
      if (first) runFolded(galley, galley.fold, page);
      continue;
    }
    const droppedAtFoot = slug.blank && !slug.keepWithNext && page.full(slug.height);
    if (!droppedAtFoot) putNext(page, galley, slug, above(galley, slug, first), together(strips, index));
    if (strips[index + 1]?.first !== false) page.close(galley);
    else page.of(galley);
  }
}

/** Puts a strip on the page, or on the next with the head of its galley where it and what belongs to it do not fit. */
function putNext(page: ReturnType<typeof emptyPage>, galley: Galley, slug: Slug, before: readonly Slug[], needed: number): void {
  const turns = page.full(heightOf(before) + needed);
  if (turns) {
    page.close();
    page.turn();
  }
  for (const each of turns ? galley.head : before) page.put(each);
  page.put(slug);
}

/** Fewer rows than this in a column are not worth beginning a table for. */
const fewestBegun = 8;

/**
 * Runs strips through columns side by side; on the last page the columns come out even. What
 * would fit one page whole is not parted.
 */
function runFolded(galley: Galley, { columns, pitch }: NonNullable<Galley["fold"]>, page: ReturnType<typeof emptyPage>): void {
  const head = heightOf(galley.head);
  let above = galley.opening ?? [];
  let rest = galley.slugs;
  while (rest.length > 0) {
    const room = () => page.room() - heightOf(above) - head;
    const even = evenHeight(rest, columns);
    const whole = even <= room();
    if (!whole && !page.fresh() && (even <= page.roomOnFresh() - heightOf(above) - head || thatFit(rest, room()) < fewestBegun))
      page.turn();
    for (const slug of above) page.put(slug);
    page.close();
    const limit = Math.min(page.room() - head, even);
    let deepest = 0;
    for (let column = 0; column < columns && rest.length > 0; column += 1) {
      const taken = thatFit(rest, limit);
      const strips = [...galley.head, ...withRules(rest.slice(0, taken))];
      page.column(strips, column * pitch);
      page.close(galley);
      deepest = Math.max(deepest, heightOf(strips));
      rest = rest.slice(taken);
    }
    page.down(deepest);
    above = galley.continued ?? [];
    if (rest.length > 0) page.turn();
  }
}

/** Strips with what parts them, but for the first. */
function withRules(slugs: readonly Slug[]): readonly Slug[] {
  return slugs.flatMap((slug, index) => (index > 0 && slug.between ? [slug.between, slug] : [slug]));
}

/** How many strips stand in a column of this height; always one. */
function thatFit(slugs: readonly Slug[], limit: number): number {
  let height = 0;
  for (const [index, slug] of slugs.entries()) {
    height += slug.height + (index === 0 ? 0 : (slug.between?.height ?? 0));
    if (height > limit && index > 0) return index;
  }
  return slugs.length;
}

/** The height at which all strips fill the columns evenly. */
function evenHeight(slugs: readonly Slug[], columns: number): number {
  const perColumn = Math.ceil(slugs.length / columns);
  const heights = Array.from({ length: columns }, (_, column) =>
    slugs
      .slice(column * perColumn, (column + 1) * perColumn)
      .reduce((sum, { height, between }, index) => sum + height + (index === 0 ? 0 : (between?.height ?? 0)), 0),
  );
  return Math.max(...heights) + 0.01;
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
    room: () => frame.bottom - y,
    roomOnFresh: () => frame.bottom - filledFrom,
    fresh: () => y === filledFrom,
    /** Puts strips one under the other from here, without moving on. */
    column(slugs: readonly Slug[], indent: number) {
      let at = y;
      for (const slug of slugs) {
        open.push(...slug.marks(frame.left + indent, at));
        at += slug.height;
      }
    },
    down(height: number) {
      y += height;
    },
    put(slug: Slug) {
      if (slug.anchor !== undefined) {
        anchors.set(slug.anchor, sheets.length);
        sheet.marks.push({ kind: "anchor", name: slug.anchor, y });
      }
      if (slug.headword !== undefined) sheet.headwords.push(slug.headword);
      if (slug.blank && y === filledFrom) return;
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
