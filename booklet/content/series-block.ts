import type { Column, Row } from "./table-block.ts";

/**
 * Narrow tables with the same columns, one after the other, which run on through columns side by side
 * and from page to page, so that hardly any paper is left white.
 */
export interface SeriesBlock {
  readonly kind: "series";
  readonly columns: readonly Column[];
  readonly tables: readonly SeriesTable[];
  /** In a word or two, for a reader that cannot see it. */
  readonly summary: string;
  /** What must be known to use any of them: said at the head of every page. */
  readonly toKnow: string;
  /** Size of the figures in parts of the usual of tables on the paper; left out, 1. */
  readonly scale?: number;
}

/** One table of a series. */
export interface SeriesTable {
  /** Said again where the table goes on in another column; left out, the table has no heading. */
  readonly title?: string;
  /** Small, beside the title or under it. */
  readonly notes?: readonly string[];
  readonly anchor?: string;
  /** What the head of the page says of the table. */
  readonly headword?: string;
  /** Whether it says each row by its first cell instead. */
  readonly headwords?: boolean;
  readonly rows: readonly Row[];
}
