import type { Block, Book, Part } from "./blocks.ts";

/** As many ruled lines as the rest of a page holds. */
const mostLines = 30;

/** Room for what the owner finds out, as much as a page leaves. */
export const notes: Block = {
  kind: "ruled",
  text: "Notes and date: what was found out at this head, gears that fit, jobs done",
  lines: mostLines,
  least: 2,
};

const letters = "abcdefghijklmnopqrstuvwxyz";

/** A book with so many pages more to write on: those that folding would leave blank, the back cover last. */
export function withNotes(book: Book, pages: number): Book {
  const more = Array.from(
    { length: pages },
    (_, index): Part => ({ id: `notes${letters[index]}`, title: "Notes", blocks: [notes] }),
  );
  return { ...book, parts: [...book.parts, ...more] };
}
