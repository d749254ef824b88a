import { InputError } from "../../src/index.ts";
import { mm, open, type Paper, type PaperName } from "./paper.ts";

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
  closeness: { ...open, row: 1.33 },
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
  tabloid: { width: 792, height: 1224 },
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

/** Counts half as large again as the rest are 39 pt: 16 minutes of arc at two metres. */
const posterSheet = { ...wallSheet, text: 14, table: 26, leastTable: 24, note: 12, closeness: { ...open, row: 1.03, gap: 0.7 } };

const posterPapers: Readonly<Partial<Record<PaperName, Paper>>> = {
  a3: { name: "a3", ...sizes.a3, ...posterSheet },
  tabloid: { name: "tabloid", ...sizes.tabloid, ...posterSheet },
};

/** One side of a card that goes into a breast pocket; two of them stand on a sheet to be cut out and folded. */
const cardSide = {
  ...halfSheet,
  width: mm(100),
  height: mm(130),
  inner: mm(5),
  outer: mm(5),
  top: mm(4),
  bottom: mm(4),
  text: 8,
  table: 9.5,
  leastTable: 8.5,
  note: 6.5,
  closeness: { ...open, row: 1.6, gap: 0.5 },
};

const cardPapers: Readonly<Partial<Record<PaperName, Paper>>> = {
  a4: { name: "a4", ...cardSide },
  letter: { name: "letter", ...cardSide },
};

/** For eyes that read less well: what the hand sets is 14 pt and more. Only a full sheet has room for it. */
const largeType = { text: 13, table: 15, leastTable: 14, note: 10.5 };

const largePapers: Readonly<Partial<Record<PaperName, Paper>>> = {
  a4: { name: "a4", ...sizes.a4, ...fullSheet, ...largeType },
  letter: { name: "letter", ...sizes.letter, ...fullSheet, ...largeType },
};

/** The papers for a book. */
export const paperNames: readonly PaperName[] = Object.freeze(Object.keys(papers) as PaperName[]);
/** The papers for wall sheets. */
export const wallPaperNames: readonly PaperName[] = Object.freeze(Object.keys(wallPapers) as PaperName[]);

/** Finds a paper for a book by its name. */
export function paperNamed(name: string): Paper {
  return find(papers, name, "a book");
}

/** Finds a half sheet, to be folded from a full one, by its name. */
export function foldedPaperNamed(name: string): Paper {
  const paper = paperNamed(name);
  if (paper.width <= widestHalf) return paper;
  const problem = `${paper.name} is a full sheet; a booklet is folded from half sheets, a5 or half-letter`;
  throw new InputError([{ code: "conflict", place: "paper", problem }]);
}

/** In points. */
const widestHalf = 450;

/** Finds a paper for wall sheets by its name. */
export function wallPaperNamed(name: string): Paper {
  return find(wallPapers, name, "wall sheets");
}

/** The papers for a book in large type, for a poster, and to cut a card out of. */
export const largePaperNames: readonly PaperName[] = Object.freeze(Object.keys(largePapers) as PaperName[]);
export const posterPaperNames: readonly PaperName[] = Object.freeze(Object.keys(posterPapers) as PaperName[]);
export const cardPaperNames: readonly PaperName[] = Object.freeze(Object.keys(cardPapers) as PaperName[]);

/** Finds a paper for a book in large type by its name. */
export function largePaperNamed(name: string): Paper {
  return find(largePapers, name, "a book in large type");
}

/** Finds a paper for a poster by its name. */
export function posterPaperNamed(name: string): Paper {
  return find(posterPapers, name, "a poster");
}

/** Finds the side of a card by the name of the sheet that it is cut out of, and that sheet. */
export function cardPaperNamed(name: string): Paper {
  return find(cardPapers, name, "a card");
}

/** The size of a sheet by its name, in points. */
export function sheetSize(name: PaperName): { readonly width: number; readonly height: number } {
  return sizes[name];
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
