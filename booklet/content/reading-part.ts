import { wormRatioOf } from "../../src/head/head.ts";
import { fromExact, type Head } from "../../src/index.ts";
import { handOf } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { bookSections, onHead, sectionWords } from "./sections.ts";
import { spindleNouns } from "./spindle-nouns.ts";
import { workedExample } from "./worked-example.ts";

/** How to read the book, with one example worked on this head's own ratio. */
export function readingPart(desk: Desk): Part {
  const { head } = desk;
  return {
    id: "reading",
    title: "How to read it",
    blocks: [
      ...workedExample(desk),
      ...habits(head),
      // Where every count is read off scales no row has a mark.
      ...(isReadHead(head) ? [] : marksUsed(desk)),
    ],
  };
}

/** What keeps a job right, whatever the count. */
function habits(head: Head): Block[] {
  const { ring } = head;
  const plates = head.plates.length > 0;
  const hand = handOf(head);
  return [
    { kind: "heading", text: "Every time" },
    {
      kind: "list",
      items: [
        {
          term: "One way",
          text: `Turn the ${hand} one way only, always forward. ${pastPlace(head)}`,
        },
        ...(plates ? [] : [{ term: "Lock", text: "Lock the spindle before every cut; unlock it before every move." }]),
        { term: "Mark first", text: "Go round once with light marks. The last must fall on the first." },
        {
          term: "Check",
          text: plates
            ? `Each row says when the pin is back in its start hole${ring === null ? "" : ", and what the ring then reads"}.`
            : ring === null
              ? "Count the cuts at a quarter and half way round."
              : "A quarter and half way round, look at the ring: it must read what the table prints.",
        },
        ...(head.wormRatio === null
          ? []
          : [{ term: "Ratio", text: `Not sure of the head? ${turnCount(head, hand)} If not, this book is for another head.` }]),
      ],
    },
  ];
}

/** Half a turn of a crank takes up the slack of its worm; a spindle that none turns has no such slack. */
function pastPlace(head: Head): string {
  if (head.wormRatio === null) {
    const place = head.directPlates.length === 0 ? "mark" : spindleNouns(head).place;
    return `Past the ${place}? Go well back, then come forward to it again.`;
  }
  const place = head.plates.length > 0 ? "hole" : "mark";
  return `Past the ${place}? Go back at least half a turn, then come forward to it again: that takes up the slack.`;
}

/** How to find the worm ratio out in a minute. */
function turnCount(head: Head, hand: string): string {
  const { n, d } = fromExact(wormRatioOf(head));
  const there = d === 1n ? "be back exactly where it was, once round" : `be back exactly where it was, ${d} times round`;
  return `Turn the ${hand} ${n} turns: the spindle must ${there}.`;
}

/** The marks that stand in this book. */
function marksUsed({ counts, head }: Desk): Block[] {
  const used = bookSections.filter((section) => counts.some((count) => count.section === section));
  return [
    { kind: "heading", text: "The marks" },
    {
      kind: "list",
      items: used.map((section) => ({ term: sectionWords[section].mark, text: onHead(sectionWords[section].meaning, head) })),
    },
  ];
}
