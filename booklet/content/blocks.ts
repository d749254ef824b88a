/**
 * What a book says, apart from how it is drawn: parts, paragraphs and tables as plain data.
 *
 * Text may hold `{page:anchor}`, which the layout replaces by the number of the page where that
 * anchor stands.
 *
 * @packageDocumentation
 */

import type { FigureBlock } from "./figure-blocks.ts";
import type { PlateKey } from "./plate-keys.ts";
import type { SeriesBlock } from "./series-block.ts";
import type { TableBlock } from "./table-block.ts";

/** A heading within a part. */
export interface HeadingBlock {
  readonly kind: "heading";
  readonly text: string;
  /** Can be linked to by this name. */
  readonly anchor?: string;
}

/** The title of a part that begins on a page already begun. */
export interface OpeningBlock {
  readonly kind: "opening";
  readonly title: string;
  readonly anchor: string;
}

/** A paragraph. */
export interface ParagraphBlock {
  readonly kind: "paragraph";
  readonly text: string;
  /** Large for what is read from afar, small for notes, caution for what can hurt someone. */
  readonly style?: "large" | "small" | "caution" | "strong";
}

/** Terms with what each means, or names with what each holds. */
export interface ListBlock {
  readonly kind: "list";
  readonly items: readonly { readonly term: string; readonly text: string; readonly link?: string }[];
  /** Whether it may stand in two columns where room is short. */
  readonly folds?: boolean;
  /** Whether it stays on one page, with its heading, where it is no longer than half of one. */
  readonly together?: boolean;
}

/** Every count in its place, the look of each telling how it is done. */
export interface GridBlock {
  readonly kind: "grid";
  readonly cells: readonly { readonly text: string; readonly look: Look; readonly link?: string }[];
  readonly key: readonly { readonly look: Look; readonly text: string }[];
  /** In words, for a reader that cannot see it. */
  readonly summary: string;
  /** In the size of running text, beside something that is larger; else as large as one page holds it. */
  readonly small?: boolean;
}

/** Short entries side by side, each in parts that stand under each other. */
export interface ColumnsBlock {
  readonly kind: "columns";
  /** A heading, said again where the entries go on to another page. */
  readonly title?: string;
  /** What the entries are of, before the first; they are then as large as what the hand sets in a table. */
  readonly lead?: string;
  readonly items: readonly { readonly parts: readonly string[]; readonly link?: string }[];
}

/** Large figures side by side, to be read from the machine. */
export interface PanelBlock {
  readonly kind: "panel";
  readonly items: readonly { readonly head: string; readonly figure: string; readonly under: string }[];
}

/** Ruled lines to write on. */
export interface RuledBlock {
  readonly kind: "ruled";
  readonly text: string;
  readonly lines: number;
  /** As few as there may be where there is less room; left out, no fewer. */
  readonly least?: number;
}

/** How a count stands in the grid; told apart without colour. */
export type Look = "plain" | "underlined" | "reversed" | "framed" | "struck" | "queried";

/** What is to be measured, with room to write each measure by hand. */
export interface BlanksBlock {
  readonly kind: "blanks";
  readonly text: string;
  /** Set bold after the text: what the measure may be. */
  readonly limits: string;
  /** What each blank is for. */
  readonly labels: readonly string[];
}

/** A piece of a part. */
export type Block =
  | TableBlock
  | SeriesBlock
  | HeadingBlock
  | OpeningBlock
  | ParagraphBlock
  | ListBlock
  | GridBlock
  | ColumnsBlock
  | PanelBlock
  | RuledBlock
  | BlanksBlock
  | FigureBlock;

/** A part of the book; it begins a new page, but where it may join the part before and saves one so. */
export interface Part {
  /** Lower-case letters; also the anchor of its first page. */
  readonly id: string;
  readonly title: string;
  /** Set large in the running head where rows of the part must not be read as rows of another. */
  readonly mark?: string | null;
  /** Whether it may begin on the last page of the part before it. */
  readonly joins?: boolean;
  /** A sentence to be read before any row; repeated on every wall sheet. */
  readonly warning?: string;
  /** What a sheet that stands alone says besides, under its warning: what its marks mean, and how a move is made. */
  readonly alone?: string;
  /** What is true of its rows, at the foot of its pages; left out, the rule of the book. */
  readonly rule?: string;
  readonly blocks: readonly Block[];
}

/** What stands on every page. */
export interface Running {
  readonly ratio: string;
  /** What one turn of the crank or handwheel comes to. */
  readonly turn: string;
  /** With what gears, or that there are none; in ever fewer words. Stands in for the name of the head where that has no room. */
  readonly gears: readonly string[];
  readonly plates: string;
  /** Stands in for `plates` where they are too many for the line. */
  readonly platesInShort: string;
  readonly rule: string;
  readonly edition: string;
  /** Stands in for `edition` beside a long rule. */
  readonly editionInShort: string;
}

/** A whole book. */
export interface Book {
  /** The owner's name for the head, on every page. */
  readonly title: string;
  /** What the file calls itself: a job is named by what is made. */
  readonly fileTitle: string;
  readonly subject: string;
  readonly digest: string;
  readonly running: Running;
  readonly parts: readonly Part[];
  /** What plates that have a letter for a name are called, where the sheets do not say so themselves. */
  readonly plateKeys?: readonly PlateKey[];
  /** Whether each sheet must stand alone, with title and warning of its part. */
  readonly sheetsStandAlone: boolean;
}
