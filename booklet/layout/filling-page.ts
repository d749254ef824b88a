import type { Part } from "../content/blocks.ts";
import type { Mark } from "./marks.ts";
import type { Frame } from "./paper.ts";
import type { Galley, Slug } from "./slugs.ts";

/** A page with what stands on it, head and foot not yet set. */
export interface Sheet {
  readonly part: Part;
  readonly marks: Mark[];
  readonly headwords: string[];
}

/** The page being filled; `y` is where the next strip goes. */
export interface FillingPage {
  /** Begins a new page. */
  turn(): void;
  /** Gives the page a name that leads to it. */
  name(anchor: string): void;
  /** Whether so much more does not fit, on a page that has something on it. */
  full(height: number): boolean;
  /** Room from here to the foot, and what an empty page has. */
  room(): number;
  roomOnFresh(): number;
  /** Whether nothing is on it yet. */
  fresh(): boolean;
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

/** Starts filling pages; each one begun is added to the sheets. */
export function emptyPage(
  part: Part,
  sheets: Sheet[],
  anchors: Map<string, number>,
  onEach: readonly Slug[],
  frameFor: (page: number) => Frame,
): FillingPage {
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
    name: (anchor) => void sheet.marks.push({ kind: "anchor", name: anchor, y: 0 }),
    full: (height) => y + height > frame.bottom && y > filledFrom,
    of(galley) {
      current = galley;
    },
    room: () => frame.bottom - y,
    roomOnFresh: () => frame.bottom - filledFrom,
    fresh: () => y === filledFrom,
    column(slugs, indent) {
      let at = y;
      for (const slug of slugs) {
        open.push(...slug.marks(frame.left + indent, at));
        at += slug.height;
      }
    },
    down(height) {
      y += height;
    },
    put(slug) {
      if (slug.anchor !== undefined) {
        anchors.set(slug.anchor, sheets.length);
        sheet.marks.push({ kind: "anchor", name: slug.anchor, y });
      }
      if (slug.headword !== undefined) sheet.headwords.push(slug.headword);
      if (slug.blank && y === filledFrom) return;
      open.push(...slug.marks(frame.left, y));
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
