import { counted, listed, runsOf } from "../../src/words/index.ts";
import type { Block, GridBlock, Part } from "./blocks.ts";
import type { HeadCount } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { type BookSection, bookSections, type SectionWords, sectionWords } from "./sections.ts";
import { anchorOf } from "./words.ts";

/** What the head can do at a glance, and where it lets one down. */
export function reachPart(desk: Desk): Part {
  const { head, counts } = desk;
  return {
    id: "reach",
    title: "What this head can do",
    blocks: [...(isReadHead(head) || head.wormRatio === null ? [] : traps(counts)), reachGrid(desk)],
  };
}

/** Every count to one named, or of the book, in a look that tells how it is done. */
export function reachGrid(
  { head, counts: all, included }: Desk,
  { upTo, small }: { readonly upTo?: number; readonly small?: boolean } = {},
): GridBlock {
  const counts = upTo === undefined ? all : all.filter(({ divisions }) => divisions <= upTo);
  const said = isReadHead(head) ? readWords : sectionWords;
  const sections = bookSections.filter((section) => counts.some((count) => count.section === section));
  return {
    kind: "grid",
    summary: `Every count from ${counts[0]?.divisions} to ${counts.at(-1)?.divisions} by how it is done. ${sections.map((section) => readOut(counts, section, said)).join(" ")}`,
    key: sections.map((section) => ({ look: said[section].look, text: keyLine(counts, section, said) })),
    cells: counts.map(({ divisions, section }) => ({
      text: String(divisions),
      look: said[section].look,
      ...(included.has(section) ? { link: anchorOf(section, divisions) } : {}),
    })),
    ...(small ? { small } : {}),
  };
}

/** What is said of a section beside the grid. */
type Said = Readonly<Record<BookSection, Pick<SectionWords, "look" | "done">>>;

/** On a head that is set by readings what stands out is what falls on marks. */
const readWords: Said = {
  ...sectionWords,
  simple: { look: "reversed", done: "in whole turns of the handwheel" },
  dial: { look: "framed", done: "from mark to mark of the dial" },
  readings: { look: "plain", done: sectionWords.readings.done },
};

function keyLine(counts: readonly HeadCount[], section: BookSection, said: Said): string {
  const found = counts.filter((count) => count.section === section).length;
  return `${counted(found, "count")} of ${counts.length} ${said[section].done}`;
}

/** The counts of a section one after the other, as they are read to someone who cannot see the grid. */
function readOut(counts: readonly HeadCount[], section: BookSection, said: Said): string {
  const runs = runsOf(counts.filter((count) => count.section === section).map(({ divisions }) => divisions));
  const inWords = runs.map(([first, last]) => (first === last ? String(first) : `${first} to ${last}`));
  return `${keyLine(counts, section, said)}: ${inWords.join(", ")}.`;
}

/** How far even counts are looked at for one that is missing among those that are done. */
const evenTo = 100;
const mostTraps = 12;

/** Where the run of counts ends, and the counts that one would think are done. */
function traps(counts: readonly HeadCount[]): Block[] {
  const missed = counts.filter(({ simple }) => simple.length === 0).map(({ divisions }) => divisions);
  const [first] = missed;
  if (first === undefined) return [{ kind: "paragraph", style: "strong", text: "Every count here is done by simple indexing." }];
  const last = counts.at(-1)?.divisions ?? first;
  const evens = missed.filter((count) => count % 2 === 0 && count <= Math.min(evenTo, last) && count > first);
  const run =
    first > 3
      ? `Simple indexing does every count to ${first - 1}; the first it misses is ${first}.`
      : `The first count that simple indexing misses is ${first}.`;
  const even =
    evens.length === 0 || evens.length > mostTraps
      ? ""
      : ` Of the even counts to ${Math.min(evenTo, last)} it misses ${listed(evens)}: look for the mark before you set up.`;
  return [{ kind: "paragraph", style: "strong", text: `${run}${even}` }];
}
