import type { Mark, Role } from "./marks.ts";

/** A strip of a page that is not broken: a line, a row, a drawing. */
export interface Slug {
  readonly height: number;
  /** Its marks with its top left corner at the place given. */
  marks(left: number, top: number): readonly Mark[];
  /** Whether it may not stand last on a page. */
  readonly keepWithNext?: boolean;
  /** Nothing but room, which is dropped at the head and the foot of a page. */
  readonly blank?: boolean;
  /** Goes above it, unless it stands first under a head. */
  readonly between?: Slug;
  /** Goes above it where it stands first in a column and goes on from the one before. */
  readonly resumed?: readonly Slug[];
  /** What the head of the page says of its first and last strip: `51`, or `106–107`. */
  readonly headword?: string;
  /** Smaller ones that may stand for it where there is less room, the largest first. */
  readonly smaller?: readonly Slug[];
  /** The name that leads here. */
  readonly anchor?: string;
  /** Further names that lead here. */
  readonly also?: readonly string[];
}

/** Strips that belong together, with a head that is repeated where they run on to a new page. */
export interface Galley {
  readonly role?: Role;
  /** What is drawn, in words. */
  readonly alt?: string;
  readonly head: readonly Slug[];
  /** Columns that the strips run through on each page, and how far apart; left out, one. */
  readonly fold?: { readonly columns: number; readonly pitch: number };
  /** Columns that the strips run down one after the other, from page to page. */
  readonly runs?: { readonly columns: number; readonly pitch: number };
  /** Stands above all columns at the start, and what stands there where it goes on on another page. */
  readonly opening?: readonly Slug[];
  readonly continued?: readonly Slug[];
  readonly slugs: readonly Slug[];
}

/** An empty strip. */
export function space(height: number, keepWithNext = false): Slug {
  return { height, keepWithNext, blank: true, marks: () => [] };
}

/** Strips without a head. */
export function galley(slugs: readonly Slug[]): Galley {
  return { head: [], slugs };
}
