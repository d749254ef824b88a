import type { Part } from "../content/blocks.ts";
import type { Mark } from "./marks.ts";
import type { Frame } from "./paper.ts";
import type { Galley, Slug } from "./slugs.ts";

/** A page with what stands on it, head and foot not yet set. */
export interface Sheet {
  readonly part: Part;
  readonly marks: Mark[];
  readonly headwords: string[];
  /** How far it is filled, from 0 to 1. */
  filled: number;
}

/** Where pages are filled. */
export interface Ground {
  /** The number of the first page. */
  readonly first: number;
  readonly frameFor: (page: number) => Frame;
  /** Anchor → number of its page; filled with those that are met. */
  readonly anchors: Map<string, number>;
  /** Stands at the head of every page. */
  readonly onEach: readonly Slug[];
  /** Whether only places are wanted, and no marks. */
  readonly sketch: boolean;
}

/** The page being filled; `y` is where the next strip goes. */
export interface FillingPage {
  /** Ends the page and begins the next. */
  turn(): Sheet;
  /** Ends the last page. */
  end(): Sheet;
  /** Gives the page a name that leads to it. */
  name(anchor: string): void;
  /** Whether so much more does not fit, on a page that has something on it. */
  full(height: number): boolean;
  /** Room from here to the foot, and what an empty page has. */
  room(): number;
  roomOnFresh(): number;
  /** Whether nothing is on it yet. */
  fresh(): boolean;
  /** Whether too little is on it to be left so. */
  sparse(): boolean;
  /** Puts a strip here and moves on below it. */
  put(slug: Slug): void;
  /** Puts strips one under the other from here, without moving on. */
  column(slugs: readonly Slug[], indent: number): void;
  /** Moves on without putting anything. */
  down(height: number): void;
  /** Says which galley the strips put so far are of. */
  of(galley: Galley): void;
  /** Ends a galley on this page: its marks are one thing for a reader. */
  close(galley?: Galley): void;
}

/** A page filled less than this is better not left: two fifths of it would stay white. */
const sparse = 0.6;

/** Starts filling pages. */
export function emptyPage(part: Part, { first, frameFor, anchors, onEach, sketch }: Ground): FillingPage {
  let number = first - 1;
  let sheet: Sheet = { part, marks: [], headwords: [], filled: 0 };
  let frame = frameFor(first);
  let y = 0;
  let open: Mark[] = [];
  let current: Galley | null = null;
  let filledFrom = 0;
  const draw = (marks: Mark[], slug: Slug, left: number, top: number) => {
    if (!sketch) marks.push(...slug.marks(left, top));
  };
  const note = ({ anchor, also = [], headword }: Slug, at: number) => {
    for (const name of anchor === undefined ? also : [anchor, ...also]) {
      anchors.set(name, number);
      sheet.marks.push({ kind: "anchor", name, y: at });
    }
    if (headword !== undefined) sheet.headwords.push(headword);
  };
  const filled = () => (y - filledFrom) / (frame.bottom - filledFrom);
  const end = () => {
    sheet.filled = filled();
    return sheet;
  };
  const begin = () => {
    number += 1;
    sheet = { part, marks: [], headwords: [], filled: 0 };
    frame = frameFor(number);
    y = frame.top;
    for (const slug of onEach) {
      draw(sheet.marks, slug, frame.left, y);
      y += slug.height;
    }
    filledFrom = y;
  };
  begin();
  return {
    turn() {
      const ended = end();
      begin();
      return ended;
    },
    end,
    name(anchor) {
      anchors.set(anchor, number);
      sheet.marks.push({ kind: "anchor", name: anchor, y: 0 });
    },
    full: (height) => y + height > frame.bottom && y > filledFrom,
    of(galley) {
      current = galley;
    },
    room: () => frame.bottom - y,
    roomOnFresh: () => frame.bottom - filledFrom,
    fresh: () => y === filledFrom,
    sparse: () => filled() < sparse,
    column(slugs, indent) {
      let at = y;
      for (const slug of slugs) {
        note(slug, at);
        draw(open, slug, frame.left + indent, at);
        at += slug.height;
      }
    },
    down(height) {
      y += height;
    },
    put(slug) {
      note(slug, y);
      if (slug.blank && y === filledFrom) return;
      draw(open, slug, frame.left, y);
      y += slug.height;
    },
    close(galley) {
      const { role, alt } = galley ?? current ?? {};
      if (open.length > 0 && role !== undefined)
        sheet.marks.push({ kind: "group", role, ...(alt === undefined ? {} : { alt }), marks: open });
      else sheet.marks.push(...open);
      open = [];
      current = null;
    },
  };
}
