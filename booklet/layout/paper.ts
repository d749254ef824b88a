/** A sheet with its margins and sizes of type; lengths in points. */
export interface Paper {
  readonly name: PaperName;
  readonly width: number;
  readonly height: number;
  /** At the binding side: room for two or three punched holes on a full sheet, for a staple on half a sheet. */
  readonly inner: number;
  readonly outer: number;
  readonly top: number;
  readonly bottom: number;
  /** Whether left pages mirror right ones, as in anything bound. */
  readonly mirrored: boolean;
  /** Size of running text. */
  readonly text: number;
  /** Size of figures in tables, and the least that a crowded table may shrink to. */
  readonly table: number;
  readonly leastTable: number;
  /** Size of notes; nothing is set smaller, figures in drawings apart. */
  readonly note: number;
  readonly closeness: Closeness;
}

/** How closely a page is set. */
export interface Closeness {
  /** From line to line of running text, in parts of its size. */
  readonly line: number;
  /** From row to row of tables likewise. */
  readonly row: number;
  /** Gaps between blocks, and sizes of drawings, in parts of the usual. */
  readonly gap: number;
  readonly drawing: number;
}

/** As a page is set where there is room. */
export const open: Closeness = { line: 1.35, row: 1.42, gap: 1, drawing: 1 };

/** Ever closer, for what would otherwise run over to a page of a few lines; our own choice. */
export const closer: readonly Closeness[] = [
  { line: 1.35, row: 1.33, gap: 0.7, drawing: 0.92 },
  { line: 1.3, row: 1.33, gap: 0.6, drawing: 0.84 },
  { line: 1.26, row: 1.33, gap: 0.5, drawing: 0.76 },
  { line: 1.22, row: 1.32, gap: 0.4, drawing: 0.68 },
  { line: 1.2, row: 1.28, gap: 0.3, drawing: 0.6 },
];

/** The papers a book can be set for; each is set natively, none is another one shrunk. */
export type PaperName = "a3" | "a4" | "a5" | "letter" | "half-letter" | "tabloid";

const pointsPerMillimetre = 72 / 25.4;

/** Points in a length given in millimetres. */
export function mm(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}

/** The area that a page's content may fill. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The frame inside the margins; odd pages lie to the right of the spine. */
export function frameOf(paper: Paper, pageNumber: number): Frame {
  const left = !paper.mirrored || pageNumber % 2 === 1 ? paper.inner : paper.outer;
  return {
    left,
    right: left + paper.width - paper.inner - paper.outer,
    top: paper.top,
    bottom: paper.height - paper.bottom,
  };
}

/** Whether a paper is for sheets that are read from further off than a book in the hand. */
export function isForWall({ mirrored }: Paper): boolean {
  return !mirrored;
}
