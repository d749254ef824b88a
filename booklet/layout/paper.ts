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
  /** Size of running text. */
  readonly text: number;
  /** Size of figures in tables, and the least that a crowded table may shrink to. */
  readonly table: number;
  readonly leastTable: number;
  /** Size of notes; nothing is set smaller, figures in drawings apart. */
  readonly note: number;
}

/** The papers a book can be set for; each is set natively, none is another one shrunk. */
export type PaperName = "a4" | "a5" | "letter" | "half-letter";

const pointsPerMillimetre = 72 / 25.4;

/** Points in a length given in millimetres. */
export function mm(millimetres: number): number {
  return millimetres * pointsPerMillimetre;
}

/** ISO 838: holes 12 mm from the edge need 20 mm or more at the binding side. */
const fullSheet = { inner: mm(20), outer: mm(11), top: mm(10), bottom: mm(10), text: 11, table: 11, leastTable: 9, note: 8.5 };
const halfSheet = { inner: mm(14), outer: mm(8), top: mm(8), bottom: mm(8), text: 9.5, table: 9.4, leastTable: 6.5, note: 8 };

const papers: Readonly<Record<PaperName, Paper>> = {
  a4: { name: "a4", width: mm(210), height: mm(297), ...fullSheet },
  // Half an A4 sheet is 148.5 mm wide, half a millimetre over A5: so it folds to the edge.
  a5: { name: "a5", width: mm(148.5), height: mm(210), ...halfSheet },
  letter: { name: "letter", width: 612, height: 792, ...fullSheet },
  "half-letter": { name: "half-letter", width: 396, height: 612, ...halfSheet },
};

/** The names of the papers. */
export const paperNames: readonly PaperName[] = Object.freeze(Object.keys(papers) as PaperName[]);

/** Finds a paper by its name. */
export function paperNamed(name: string): Paper {
  const paper = papers[name.toLowerCase() as PaperName];
  if (paper !== undefined && paperNames.includes(paper.name)) return paper;
  throw new InputError([
    { place: "paper", problem: `there is no paper ${JSON.stringify(name)}; the papers are ${paperNames.join(", ")}` },
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
  const left = pageNumber % 2 === 1 ? paper.inner : paper.outer;
  return {
    left,
    right: left + paper.width - paper.inner - paper.outer,
    top: paper.top,
    bottom: paper.height - paper.bottom,
  };
}
