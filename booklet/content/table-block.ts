/** A cell of a table; a link leads to an anchor. */
export interface Cell {
  readonly text: string;
  readonly link?: string;
  /** White on black: a mark that must not be overlooked. */
  readonly reversed?: boolean;
  /** An empty box to tick. */
  readonly box?: boolean;
}

/** A column of a table. */
export interface Column {
  /** Head in one or more lines, parted by `\n`. */
  readonly head: string;
  /** Columns beside each other with the same group stand under one group head. */
  readonly group?: string;
  readonly align: "left" | "right" | "center";
  /** Bold: what the hand sets. */
  readonly strong?: boolean;
  /** Smaller than the rest: a check, where the hand sets something else. Larger: what is found from across the shop. */
  readonly size?: "fine" | "huge";
  /** Left out where the table can so stand in more columns side by side. */
  readonly spare?: boolean;
  /** Whether long text in it is broken into lines; else the column is as wide as its widest cell. */
  readonly wraps?: boolean;
  /**
   * Where the paper is too narrow for every column, those with this text go into a small line under
   * the row instead, the cell standing in place of `{}`.
   */
  readonly aside?: string;
  /**
   * On wall sheets columns with `aside` are left out; with this text a column goes under the row
   * there, as large as its figures, its cell in place of `{}`. So it does on paper that is narrower still.
   */
  readonly under?: string;
}

/** A row with a cell for each column, or, as a pointer, a few cells and then one line of text. */
export interface Row {
  readonly cells: readonly Cell[];
  /** Set in place of the columns that `cells` leaves free. */
  readonly rest?: Cell;
  /** Lines under the row as large as its figures: what warns, and what the hand needs that has no column. */
  readonly lines?: readonly string[];
  /** Small lines under those. */
  readonly notes?: readonly string[];
  /** The row can be linked to by this name: lower-case letters, then digits. */
  readonly anchor?: string;
  /** The further names of a row that stands for several. */
  readonly also?: readonly string[];
  /**
   * Whether it is one with the row before it where that joins too and both say the same but for
   * their first cell: `96` and `97` on the same page become `96–97`.
   */
  readonly joins?: boolean;
}

/** A table; its head is repeated on each page. */
export interface TableBlock {
  readonly kind: "table";
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** In a word or two, for a reader that cannot see it. */
  readonly summary: string;
  /** Whether its first and last row on a page are named at the head of the page. */
  readonly headwords?: boolean;
  /** A heading of its own, said again where the table goes on to another page. */
  readonly title?: { readonly text: string; readonly anchor: string };
  /** Whether it may stand in two or more columns side by side where it is narrow. */
  readonly folds?: boolean;
}
