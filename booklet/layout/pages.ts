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
}

function setOnce(book: Book, paper: Paper, measure: Measure, known: ReadonlyMap<string, number>): SetBook {
  const sheets: Sheet[] = [];
  const anchors = new Map<string, number>();
  const width = paper.width - paper.inner - paper.outer;
  for (const part of book.parts) {
    const resolved = withPageNumbers(part, known);
    const galleys = [
      titleGalley(part.title, width, paper, measure),
      ...resolved.blocks.map((block) => galleyOf(block, width, paper, measure)),
    ];
    anchors.set(part.id, sheets.length + 1);
    runIntoPages(galleys, part, sheets, anchors, (number) => insideFurniture(frameOf(paper, number), paper));
  }
  const pages = sheets.map(({ part, marks }, index): Page => {
    const number = index + 1;
    const folio = `page ${number} of ${sheets.length}`;
    return {
      width: paper.width,
      height: paper.height,
      label: String(number),
      marks: [...furniture(book.running, part, book.title, folio, frameOf(paper, number), paper, measure), ...marks],
    };
  });
  return { pages, anchors };
}

/** Fills page after page with strips; a part begins a new page. */
function runIntoPages(
  galleys: readonly Galley[],
  part: Part,
  sheets: Sheet[],
  anchors: Map<string, number>,
  frameFor: (page: number) => Frame,
): void {
  let sheet: Sheet = { part, marks: [] };
  let frame: Frame = frameFor(sheets.length + 1);
  let y = 0;
  const turn = () => {
    sheet = { part, marks: [] };
    sheets.push(sheet);
    frame = frameFor(sheets.length);
    y = frame.top;
  };
  turn();
  sheet.marks.push({ kind: "anchor", name: part.id, y: 0 });
  for (const { role, alt, head, slugs } of galleys) {
    let open: Mark[] = [];
    const close = () => {
      if (open.length > 0)
        sheet.marks.push(
          ...(role === undefined ? open : [{ kind: "group", role, ...(alt === undefined ? {} : { alt }), marks: open } as const]),
        );
      open = [];
    };
    const put = (slug: Slug) => {
      if (slug.anchor !== undefined) {
        anchors.set(slug.anchor, sheets.length);
        sheet.marks.push({ kind: "anchor", name: slug.anchor, y });
      }
      open.push(...slug.marks(frame.left, y));
      y += slug.height;
    };
    for (const [index, slug] of slugs.entries()) {
      const before = index === 0 ? head : slug.between ? [slug.between] : [];
      const needed = before.reduce((sum, { height }) => sum + height, 0) + together(slugs, index);
      if (y + needed > frame.bottom && y > frame.top) {
        close();
        turn();
        head.forEach(put);
      } else {
        before.forEach(put);
      }
      put(slug);
    }
    close();
  }
}

/** The height of a strip with those that must stay with it. */
function together(slugs: readonly Slug[], from: number): number {
  let height = 0;
  for (let index = from; index < slugs.length; index += 1) {
    const slug = slugs[index];
    height += slug?.height ?? 0;
    if (!slug?.keepWithNext) break;
  }
  return height;
}

/** Puts in the numbers of pages that are named; before they are known, as wide a number. */
function withPageNumbers(part: Part, known: ReadonlyMap<string, number>): Part {
  return JSON.parse(
    JSON.stringify(part).replace(/\{page:([a-z]+\d*)\}/g, (_, anchor: string) => String(known.get(anchor) ?? unknownPage)),
  ) as Part;
}
