import type { Block } from "../content/blocks.ts";
import type { FigureBlock } from "../content/figure-blocks.ts";
import { figureGalley } from "./figures.ts";
import { galleyOf } from "./galleys.ts";
import { withRowsJoined } from "./joined-rows.ts";
import type { Measure } from "./measure.ts";
import type { Closeness, Paper } from "./paper.ts";
import type { Galley } from "./slugs.ts";

/** Anchor → number of its page, from 1. */
export type PageNumbers = ReadonlyMap<string, number>;

/** Stands for a page until its number is known. */
const unknownPage = 88;

/** A block as it was set last. */
interface SetBlock {
  /** The numbers of pages that it was set with; null where it names none. */
  readonly pages: PageNumbers | null;
  /** It with these numbers, as text. */
  readonly text: string;
  readonly galley: Galley;
}

/** Sets blocks with the numbers of pages that they name; each is set anew only where those have changed. */
export function galleysOnce(width: number, usual: Paper, measure: Measure) {
  const set = new Map<Closeness, Map<Block, SetBlock>>();
  const asText = new Map<Block, string>();
  const writtenOf = (block: Block): string => {
    const written = asText.get(block) ?? JSON.stringify(block);
    asText.set(block, written);
    return written;
  };
  return (block: Block, paper: Paper, pages: PageNumbers): Galley => {
    // Long tables run on whatever is done; to measure them again would take long.
    const on = block.kind === "table" && block.title === undefined ? usual : paper;
    const there = set.get(on.closeness) ?? new Map<Block, SetBlock>();
    set.set(on.closeness, there);
    const last = there.get(block);
    if (last !== undefined && (last.pages === null || last.pages === pages)) return last.galley;
    const written = writtenOf(block);
    const names = written.includes("{page:");
    const text = names ? withPageNumbers(written, pages) : written;
    const galley =
      last?.text === text
        ? last.galley
        : galleyOf(withRowsJoined(names ? (JSON.parse(text) as Block) : block), width, on, measure);
    there.set(block, { pages: names ? pages : null, text, galley });
    return galley;
  };
}

/** Sets drawings that have grown; each is set once in a size. */
export function figuresOnce(width: number, measure: Measure) {
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
  return text.replace(/\{page:([a-z-]+\d*)\}/g, (_, anchor: string) => String(known.get(anchor) ?? unknownPage));
}
