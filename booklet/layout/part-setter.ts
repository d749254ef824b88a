import type { Part } from "../content/blocks.ts";
import type { Ground, Sheet } from "./filling-page.ts";
import { titleGalley } from "./galleys.ts";
import { type Grown, grownToFill, ungrown } from "./growing.ts";
import type { Measure } from "./measure.ts";
import { runIntoPages } from "./page-run.ts";
import { type Closeness, closer, frameOf, type Paper } from "./paper.ts";
import { insideFurniture } from "./running.ts";
import { figuresOnce, galleysOnce, type PageNumbers } from "./set-once.ts";
import type { Galley } from "./slugs.ts";

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

/** Sets parts on a paper; where sheets stand alone, each with title and warning of its part. */
export function partSetter(sheetsStandAlone: boolean, usual: Paper, measure: Measure): PartSetter {
  const width = usual.width - usual.inner - usual.outer;
  const galleyFor = galleysOnce(width, usual, measure);
  const figureFor = figuresOnce(width, measure);
  // Once, since what is set on one is kept by its closeness.
  const closerPapers = closer.map((each): Paper => ({ ...usual, closeness: closerOf(usual.closeness, each) }));
  const galleysOf = (part: Part, { paper, grown }: PartSize, known: PageNumbers): readonly Galley[] =>
    part.blocks.map((block) => {
      const larger = grown.get(block);
      return larger !== undefined && block.kind === "figure" ? figureFor(block, paper, larger) : galleyFor(block, paper, known);
    });
  const run = (part: Part, galleys: readonly Galley[], paper: Paper, ground: Pick<Ground, "first" | "anchors" | "sketch">) => {
    const opening = titleGalley(sheetsStandAlone ? part : inRunningText(part), width, paper, measure);
    const frameFor = (page: number) => insideFurniture(frameOf(paper, page), paper);
    const all = sheetsStandAlone ? galleys : [opening, ...galleys];
    return runIntoPages(all, part, { ...ground, frameFor, onEach: sheetsStandAlone ? opening.slugs : [] });
  };
  const sketchWith = (part: Part, galleys: readonly Galley[], paper: Paper, first: number): PartSketch => {
    const anchors = new Map<string, number>();
    return { sheets: [...run(part, galleys, paper, { first, anchors, sketch: true })], anchors, paper };
  };
  const sketchOf = (size: PartSize, part: Part, first: number, known: PageNumbers): PartSketch =>
    sketchWith(part, galleysOf(part, size, known), size.paper, first);
  const sketched = sketchesOnce();
  return {
    sketch(part, first, known) {
      const galleys = galleysOf(part, { paper: usual, grown: ungrown }, known);
      return sketched(part, galleys, first, () => {
        const sketch = sketchWith(part, galleys, usual, first);
        const setOn = (paper: Paper) => sketchOf({ paper, grown: ungrown }, part, first, known);
        return (isWasteful(sketch) ? closeAsNeeded(sketch, closerPapers, setOn) : undefined) ?? sketch;
      });
    },
    grown: (part, sketch, first, known) =>
      grownToFill(part, sketch, (grown) => sketchOf({ paper: sketch.paper, grown }, part, first, known)),
    sheets: (part, size, first, known) =>
      run(part, galleysOf(part, size, known), size.paper, { first, anchors: new Map(), sketch: false }),
  };
}

function isWasteful({ sheets }: PartSketch): boolean {
  return sheets.length > 1 && sheets.some(({ filled }) => filled < worthSaving);
}

/** No closer than saves a page, of papers that are ever closer; undefined where even the closest saves none. */
function closeAsNeeded(
  { sheets }: PartSketch,
  papers: readonly Paper[],
  setOn: (paper: Paper) => PartSketch,
): PartSketch | undefined {
  const saves = (sketch: PartSketch) => sketch.sheets.length < sheets.length;
  const closest = papers.at(-1);
  const last = closest && setOn(closest);
  if (last === undefined || !saves(last)) return undefined;
  for (const paper of papers.slice(0, -1)) {
    const sketch = setOn(paper);
    if (saves(sketch)) return sketch;
  }
  return last;
}

/** In everything the closer of two: a sheet that is close by itself is never opened. */
function closerOf(one: Closeness, other: Closeness): Closeness {
  return {
    line: Math.min(one.line, other.line),
    row: Math.min(one.row, other.row),
    gap: Math.min(one.gap, other.gap),
    drawing: Math.min(one.drawing, other.drawing),
  };
}

/** A part as it was sketched last, and of what. */
interface Sketched {
  readonly galleys: readonly Galley[];
  readonly first: number;
  readonly sketch: PartSketch;
}

/** Sketches parts anew only where something in them has changed; where one only begins on another page, it is moved there. */
function sketchesOnce() {
  const known = new Map<Part, Sketched>();
  return (part: Part, galleys: readonly Galley[], first: number, sketchNow: () => PartSketch): PartSketch => {
    const last = known.get(part);
    if (last?.galleys.every((galley, index) => galley === galleys[index])) return moved(last.sketch, first - last.first);
    const sketch = sketchNow();
    known.set(part, { galleys, first, sketch });
    return sketch;
  };
}

function moved(sketch: PartSketch, by: number): PartSketch {
  if (by === 0) return sketch;
  return { ...sketch, anchors: new Map(Array.from(sketch.anchors, ([name, page]) => [name, page + by])) };
}

/** A part whose book says in running text what a sheet alone would say under its title. */
function inRunningText({ alone: _, ...part }: Part): Omit<Part, "alone"> {
  return part;
}
