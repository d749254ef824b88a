import type { Block, Part } from "../content/blocks.ts";
import type { FigureBlock } from "../content/figure-blocks.ts";
import { figureGalley } from "./figures.ts";
import type { Sheet } from "./filling-page.ts";
import { galleyOf, titleGalley } from "./galleys.ts";
import { type Grown, grownToFill, ungrown } from "./growing.ts";
import { withRowsJoined } from "./joined-rows.ts";
import type { Measure } from "./measure.ts";
import { runIntoPages } from "./page-run.ts";
import { type Closeness, closer, frameOf, type Paper } from "./paper.ts";
import { insideFurniture } from "./running.ts";
import type { Galley } from "./slugs.ts";

/** Anchor → number of its page, from 1. */
export type PageNumbers = ReadonlyMap<string, number>;

/** Sets the parts of a book, each from a page of its own. */
export interface PartSetter {
  /** Tells where everything comes to stand, set as closely as saves a page with hardly anything on it. */
  sketch(part: Part, first: number, known: PageNumbers): PartSketch;
  /** By how much its drawings can grow where everything stands. */
  grown(part: Part, sketch: PartSketch, first: number, known: PageNumbers): Grown;
  /** Sets a part page by page. */
  sheets(part: Part, size: PartSize, first: number, known: PageNumbers): Generator<Sheet>;
}

/** How closely a part is set, and how large its drawings are. */
export interface PartSize {
  readonly paper: Paper;
  readonly grown: Grown;
}

/** A part without its marks, its drawings no larger than they need be. */
export interface PartSketch extends Pick<PartSize, "paper"> {
  readonly sheets: readonly Sheet[];
  readonly anchors: PageNumbers;
}

/** A page filled less than this is worth saving by setting the part closer. */
const worthSaving = 0.45;

/** Stands for a page until its number is known. */
const unknownPage = 88;

/** Sets parts on a paper; where sheets stand alone, each with title and warning of its part. */
export function partSetter(sheetsStandAlone: boolean, usual: Paper, measure: Measure): PartSetter {
  const width = usual.width - usual.inner - usual.outer;
  const galleyFor = galleysOnce(width, usual, measure);
  const figureFor = figuresOnce(width, measure);
  const run = (
    part: Part,
    { paper, grown }: PartSize,
    first: number,
    known: PageNumbers,
    anchors: Map<string, number>,
    sketch: boolean,
  ) => {
    const opening = titleGalley(sheetsStandAlone ? part : inRunningText(part), width, paper, measure);
    const galleys = part.blocks.map((block) => {
      const larger = grown.get(block);
      return larger !== undefined && block.kind === "figure" ? figureFor(block, paper, larger) : galleyFor(block, paper, known);
    });
    const frameFor = (page: number) => insideFurniture(frameOf(paper, page), paper);
    const all = sheetsStandAlone ? galleys : [opening, ...galleys];
    return runIntoPages(all, part, { first, frameFor, anchors, onEach: sheetsStandAlone ? opening.slugs : [], sketch });
  };
  const sketchOf = (size: PartSize, part: Part, first: number, known: PageNumbers): PartSketch => {
    const anchors = new Map<string, number>();
    return { sheets: [...run(part, size, first, known, anchors, true)], anchors, paper: size.paper };
  };
  const asCloseAsNeeded = (part: Part, first: number, known: PageNumbers): PartSketch => {
    const sketch = sketchOf({ paper: usual, grown: ungrown }, part, first, known);
    const wasteful = sketch.sheets.length > 1 && sketch.sheets.some(({ filled }) => filled < worthSaving);
    for (const closeness of wasteful ? closer : []) {
      const closerSketch = sketchOf({ paper: { ...usual, closeness }, grown: ungrown }, part, first, known);
      if (closerSketch.sheets.length < sketch.sheets.length) return closerSketch;
    }
    return sketch;
  };
  return {
    sketch: asCloseAsNeeded,
    grown: (part, sketch, first, known) =>
      grownToFill(part, sketch, (grown) => sketchOf({ paper: sketch.paper, grown }, part, first, known)),
    sheets: (part, size, first, known) => run(part, size, first, known, new Map(), false),
  };
}

/** A part whose book says in running text what a sheet alone would say under its title. */
function inRunningText({ alone: _, ...part }: Part): Omit<Part, "alone"> {
  return part;
}

/** A block as it was set last. */
interface SetBlock {
  /** The block with the numbers of pages that it names; null where it names none. */
  readonly text: string | null;
  readonly galley: Galley;
}

/** Sets blocks with the numbers of pages that they name; each is set anew only where those have changed. */
function galleysOnce(width: number, usual: Paper, measure: Measure) {
  const known = new Map<Closeness, Map<Block, SetBlock>>();
  return (block: Block, paper: Paper, pages: PageNumbers): Galley => {
    // Long tables run on whatever is done; to measure them again would take long.
    const on = block.kind === "table" && block.title === undefined ? usual : paper;
    const there = known.get(on.closeness) ?? new Map<Block, SetBlock>();
    known.set(on.closeness, there);
    const last = there.get(block);
    if (last?.text === null) return last.galley;
    const written = JSON.stringify(block);
    const text = written.includes("{page:") ? withPageNumbers(written, pages) : null;
    if (last !== undefined && last.text === text) return last.galley;
    const galley = galleyOf(withRowsJoined(text === null ? block : (JSON.parse(text) as Block)), width, on, measure);
    there.set(block, { text, galley });
    return galley;
  };
}

/** Sets drawings that have grown; each is set once in a size. */
function figuresOnce(width: number, measure: Measure) {
  const known = new Map<Closeness, Map<string, Galley>>();
  const numbers = new Map<FigureBlock, number>();
  return (block: FigureBlock, paper: Paper, grown: number): Galley => {
    const number = numbers.get(block) ?? numbers.size;
    numbers.set(block, number);
    const there = known.get(paper.closeness) ?? new Map<string, Galley>();
    known.set(paper.closeness, there);
    const name = `${number} ${grown}`;
    const galley = there.get(name) ?? figureGalley(block, width, paper, measure, grown);
    there.set(name, galley);
    return galley;
  };
}

/** Puts in the numbers of pages that are named; before they are known, as wide a number. */
function withPageNumbers(text: string, known: PageNumbers): string {
  return text.replace(/\{page:([a-z]+\d*)\}/g, (_, anchor: string) => String(known.get(anchor) ?? unknownPage));
}
