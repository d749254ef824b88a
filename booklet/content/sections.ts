import type { Head } from "../../src/index.ts";
import { kindWords, notFoundWords, type Section } from "../../src/words/index.ts";
import type { Look } from "./blocks.ts";

/** Where a count stands in the book: among those done in the same way, or among those that nothing closes. */
export type BookSection = Section | "readings" | "impossible" | "unfound";

/** What a book says of a section wherever it speaks of it. */
export interface SectionWords {
  /** The letter before its rows. */
  readonly mark: string;
  /** What the mark means. */
  readonly meaning: string;
  /** What the mark means, in the few words that a sheet for the wall has room for. */
  readonly meaningInShort: string;
  /** How its counts look among all counts. */
  readonly look: Look;
  /** How its counts are done, after how many they are. */
  readonly done: string;
  /** Stands in the main table in the place of its counts. */
  readonly pointer: string;
  /** Set large at the head of each of its pages, so that no row is read as one of another; null where none would be. */
  readonly running: string | null;
}

/** Said of indexing by a plate on the spindle where there is a worm. */
export const wormOut = ", worm out of mesh";

/** What is said of each section, in the order of the book. */
export const sectionWords: Readonly<Record<BookSection, SectionWords>> = {
  simple: {
    mark: markOf("simple"),
    meaning: "simple (also called plain): crank over a plate held by its stop pin",
    meaningInShort: "the crank over a still plate, stop pin IN, no gears",
    look: "plain",
    done: "by simple indexing: plate and crank alone",
    pointer: "",
    running: null,
  },
  "wide-range": {
    mark: markOf("wide-range"),
    meaning: "both cranks: the large one as in simple indexing, then the small one over its own plate",
    meaningInShort: "the large crank, then the small one, stop pin IN",
    look: "underlined",
    done: "with both cranks",
    pointer: "by both cranks",
    running: "BOTH CRANKS",
  },
  direct: {
    mark: markOf("direct"),
    meaning: `direct: the plate on the spindle itself${wormOut}`,
    meaningInShort: `the direct plate${wormOut}`,
    look: "underlined",
    done: "by the direct plate",
    pointer: "by the direct plate",
    running: "DIRECT",
  },
  dial: {
    mark: markOf("dial"),
    meaning: "handwheel: by the marks of the dial",
    meaningInShort: "by the marks of the dial",
    look: "underlined",
    done: "by the marks of the dial",
    pointer: "by the dial",
    running: "DIAL",
  },
  geared: {
    mark: markOf("geared"),
    meaning: "gears: differential indexing; stop pin out, change gears on",
    meaningInShort: "gears on, stop pin OUT",
    look: "reversed",
    done: "with gears only",
    pointer: "needs gears",
    running: "GEARS",
  },
  compound: {
    mark: markOf("compound"),
    meaning: "compound: two moves on two circles for each division",
    meaningInShort: "two moves on two circles, stop pin OUT",
    look: "framed",
    done: "with two moves on two circles only",
    pointer: "needs two circles",
    running: "TWO MOVES",
  },
  readings: {
    mark: "R",
    meaning: "readings: each position by itself from one zero, as near as the scale shows it",
    meaningInShort: "each position by itself from one zero, by the reading",
    look: "framed",
    done: "by readings, each position by itself from one zero",
    pointer: "by readings",
    running: null,
  },
  impossible: {
    mark: "×",
    meaning: "cannot be done exactly with what this head has",
    meaningInShort: "cannot be done exactly",
    look: "struck",
    done: "cannot be done exactly with what this head has",
    pointer: "cannot be done exactly",
    running: "NOT POSSIBLE",
  },
  unfound: {
    mark: "?",
    meaning: `${notFoundWords} for this book: there may be a setting; look the count up by itself`,
    meaningInShort: `${notFoundWords}; there may be a setting`,
    look: "queried",
    done: `${notFoundWords}: there may be a setting`,
    pointer: notFoundWords,
    running: "NOT FOUND",
  },
};

/** All sections, in the order of the book. */
export const bookSections = Object.keys(sectionWords) as readonly BookSection[];

/** The marks of some sections with what each means, in a line: `S: … G: …`. */
export function keyTo(sections: readonly BookSection[], head?: Pick<Head, "wormRatio">): string {
  const used = bookSections.filter((section) => sections.includes(section));
  return used.map((section) => `${sectionWords[section].mark}: ${onHead(sectionWords[section].meaningInShort, head)}.`).join(" ");
}

/** Where there is no worm, none is out of mesh. */
export function onHead(meaning: string, head?: Pick<Head, "wormRatio">): string {
  return head?.wormRatio === null ? meaning.replace(wormOut, "") : meaning;
}

/** The letter of a section, which is that of its kinds. */
function markOf(section: Section): string {
  return Object.values(kindWords).find((words) => words.section === section)?.mark ?? "";
}
