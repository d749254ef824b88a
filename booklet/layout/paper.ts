import { InputError } from "../../src/index.ts";

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
const open: Closeness = { line: 1.35, row: 1.42, gap: 1, drawing: 1 };

/** Ever closer, for what would otherwise run over to a page of a few lines; our own choice. */
export const closer: readonly Closeness[] = [
  { line: 1.35, row: 1.42, gap: 0.7, drawing: 0.92 },
  { line: 1.3, row: 1.4, gap: 0.6, drawing: 0.84 },
  { line: 1.26, row: 1.36, gap: 0.5, drawing: 0.76 },
  { line: 1.22, row: 1.32, gap: 0.4, drawing: 0.68 },
  { line: 1.2, row: 1.28, gap: 0.3, drawing: 0.6 },
];

/** The papers a book can be set for; each is set natively, none is another one shrunk. */
export type PaperName = "a3" | "a4" | "a5" | "letter" | "half-letter";

const pointsPerMillimetre = 72 / 25.4;

/** Points in a length given in millimetres. */
export function mm(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}

/** ISO 838: holes 12 mm from the edge need 20 mm or more at the binding side. */
const fullSheet = {
  mirrored: true,
  inner: mm(20),
  outer: mm(11),
  top: mm(10),
  bottom: mm(10),
  text: 11,
  table: 12,
  leastTable: 12,
  note: 8.5,
  closeness: open,
};
const halfSheet = {
  mirrored: true,
  inner: mm(14),
  outer: mm(8),
  top: mm(8),
  bottom: mm(8),
  text: 9.5,
  table: 10,
  leastTable: 10,
  note: 8,
  closeness: open,
};
/**
 * Read from further off, and laminated: 13.2 pt is 16 minutes of arc at 70 cm. Nothing within
 * 11 mm of the edge, where a pouch is sealed and its corners are rounded; 20 mm where it is punched.
 */
const wallSheet = {
  mirrored: false,
  inner: mm(20),
  outer: mm(11),
  top: mm(11),
  bottom: mm(11),
  text: 14,
  table: 15,
  leastTable: 14,
  note: 11,
  closeness: open,
};

const sizes = {
  a3: { width: mm(297), height: mm(420) },
  a4: { width: mm(210), height: mm(297) },
  // Half an A4 sheet is 148.5 mm wide, half a millimetre over A5: so it folds to the edge.
  a5: { width: mm(148.5), height: mm(210) },
  letter: { width: 612, height: 792 },
  "half-letter": { width: 396, height: 612 },
} as const;

const papers: Readonly<Partial<Record<PaperName, Paper>>> = {
  a4: { name: "a4", ...sizes.a4, ...fullSheet },
  a5: { name: "a5", ...sizes.a5, ...halfSheet },
  letter: { name: "letter", ...sizes.letter, ...fullSheet },
  "half-letter": { name: "half-letter", ...sizes["half-letter"], ...halfSheet },
};

const wallPapers: Readonly<Partial<Record<PaperName, Paper>>> = {
  a4: { name: "a4", ...sizes.a4, ...wallSheet },
  letter: { name: "letter", ...sizes.letter, ...wallSheet },
  a3: { name: "a3", ...sizes.a3, ...wallSheet, text: 19, table: 21, leastTable: 18, note: 14 },
};

/** The papers for a book. */
export const paperNames: readonly PaperName[] = Object.freeze(Object.keys(papers) as PaperName[]);
/** The papers for wall sheets. */
export const wallPaperNames: readonly PaperName[] = Object.freeze(Object.keys(wallPapers) as PaperName[]);

/** Finds a paper for a book by its name. */
export function paperNamed(name: string): Paper {
  return find(papers, name, "a book");
}

/** Finds a paper for wall sheets by its name. */
export function wallPaperNamed(name: string): Paper {
  return find(wallPapers, name, "wall sheets");
}

function find(from: Readonly<Partial<Record<PaperName, Paper>>>, name: string, what: string): Paper {
  const found = Object.values(from).find((paper) => paper.name === name.toLowerCase());
  if (found) return found;
  const names = Object.keys(from).join(", ");
  throw new InputError([
    {
      code: "unknown-word",
      place: "paper",
      problem: `there is no paper ${JSON.stringify(name)} for ${what}; the papers are ${names}`,
    },
  ]);
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
