import type { Head } from "../../src/index.ts";
import type { Edition } from "../edition.ts";
import type { Book, Part } from "./blocks.ts";
import { type Contents, deskOf, runningOf } from "./book.ts";
import { commonestTable, keysOfCommonest } from "./commonest-table.ts";
import type { HeadCount } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { keyLine } from "./plate-keys.ts";
import { reachGrid } from "./reach-part.ts";
import { ratioOrNone } from "./words.ts";

/** The sheets hold the same counts whatever the book would. */
export const posterContents: Contents = { from: 2, to: 100, parts: [], degreeTables: null };

/** Writes the poster of a head. */
export function posterOf(head: Head, edition: Edition, counts: readonly HeadCount[]): Book {
  const desk = deskOf(head, posterContents, counts);
  return sheetOf("Poster", [posterPart(desk)], desk, edition);
}

/** Writes the card of a head. */
export function cardOf(head: Head, edition: Edition, counts: readonly HeadCount[]): Book {
  const desk = deskOf(head, posterContents, counts);
  return sheetOf("Pocket card", cardParts(desk), desk, edition);
}

function sheetOf(what: string, parts: readonly Part[], desk: Desk, edition: Edition): Book {
  const { head } = desk;
  return {
    title: head.name,
    fileTitle: `${what}: ${head.name}`,
    subject: `The counts that shops use most on ${ratioOrNone(head)}`,
    digest: edition.digest,
    running: runningOf(desk, edition),
    parts,
    sheetsStandAlone: true,
  };
}

/** One sheet for the wall over the machine: the counts that shops use most, and all that the head does to 100. */
function posterPart(desk: Desk): Part {
  return {
    id: "poster",
    title: "The counts that shops use most",
    alone: inLine(
      "No gears, plate stop pin IN. Turns, then spaces; the arms enclose one hole more than the spaces, the pin’s own.",
      keyLine(keysOfCommonest(desk)),
    ),
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

function inLine(...texts: readonly (string | undefined)[]): string {
  return texts.filter((text) => text !== undefined).join(" ");
}

/** Letters of a line on the plates that a card has room for over its table. */
const mostOnFront = 200;

/** A card for the pocket, its two sides: the counts that shops use most, and what the head can do. */
function cardParts(desk: Desk): readonly Part[] {
  const key = keyLine(keysOfCommonest(desk));
  const overleaf = key !== undefined && key.length > mostOnFront;
  return [
    {
      id: "front",
      title: "Turns, then spaces",
      alone: inLine(
        "No gears, plate stop pin IN. The arms enclose one hole more than the spaces.",
        overleaf ? "The letters of the plates: overleaf." : key,
      ),
      blocks: [commonestTable(desk, { arms: false, countsFromAfar: false })],
    },
    {
      id: "back",
      title: "What this head can do",
      blocks: [
        reachGrid(desk, { upTo: 100, small: true }),
        ...(overleaf ? [{ kind: "paragraph", style: "small", text: key } as const] : []),
        {
          kind: "paragraph",
          style: "small",
          text: "One way only; past the hole, back half a turn and up again. Unlock to move, lock to cut, cutter stopped before you reach near it. The machine’s manual comes first.",
        },
      ],
    },
  ];
}
