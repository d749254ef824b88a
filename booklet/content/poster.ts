import type { Head } from "../../src/index.ts";
import type { Edition } from "../edition.ts";
import type { Book, Part } from "./blocks.ts";
import { type Contents, deskOf, runningOf } from "./book.ts";
import { commonestTable } from "./commonest-table.ts";
import type { Desk } from "./parts.ts";
import { reachGrid } from "./reach-part.ts";
import { ratioInWords } from "./words.ts";

/** The sheets hold the same counts whatever the book would. */
const contents: Contents = { from: 2, to: 100, parts: [], degreeTables: null };

/** Writes the poster of a head. */
export function posterOf(head: Head, edition: Edition, onProgress: (done: number) => void): Book {
  return sheetOf("Poster", [posterPart(deskOf(head, contents, onProgress))], head, edition);
}

/** Writes the card of a head. */
export function cardOf(head: Head, edition: Edition, onProgress: (done: number) => void): Book {
  return sheetOf("Pocket card", cardParts(deskOf(head, contents, onProgress)), head, edition);
}

function sheetOf(what: string, parts: readonly Part[], head: Head, edition: Edition): Book {
  return {
    title: head.name,
    fileTitle: `${what}: ${head.name}`,
    subject: `The counts that shops use most on a worm ratio of ${ratioInWords(head.wormRatio)}`,
    digest: edition.digest,
    running: runningOf(head, edition),
    parts,
    sheetsStandAlone: true,
  };
}

/** One sheet for the wall over the machine: the counts that shops use most, and all that the head does to 100. */
function posterPart(desk: Desk): Part {
  return {
    id: "poster",
    title: "The counts that shops use most",
    alone: "No gears, plate stop pin IN. Turns, then spaces; the arms enclose one hole more than the spaces, the pin’s own.",
    blocks: [
      commonestTable(desk, { arms: true, countsFromAfar: true }),
      { kind: "heading", text: "What this head can do" },
      reachGrid(desk, { upTo: 100, small: true }),
      {
        kind: "paragraph",
        style: "caution",
        text: "One way only; past the hole, back half a turn and up again. Unlock to move, lock to cut. Stop the cutter before reaching near it. The machine’s manual, local rules and qualified practice come first.",
      },
    ],
  };
}

/** A card for the pocket, its two sides: the counts that shops use most, and what the head can do. */
function cardParts(desk: Desk): readonly Part[] {
  return [
    {
      id: "front",
      title: "Turns, then spaces",
      alone: "No gears, plate stop pin IN. The arms enclose one hole more than the spaces.",
      blocks: [commonestTable(desk, { arms: false, countsFromAfar: false })],
    },
    {
      id: "back",
      title: "What this head can do",
      blocks: [
        reachGrid(desk, { upTo: 100, small: true }),
        {
          kind: "paragraph",
          style: "small",
          text: "One way only; past the hole, back half a turn and up again. Unlock to move, lock to cut, cutter stopped before you reach near it. The machine’s manual comes first.",
        },
      ],
    },
  ];
}
