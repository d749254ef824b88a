import type { Part } from "./blocks.ts";
import { commonestTable } from "./commonest-table.ts";
import type { Desk } from "./parts.ts";
import { reachGrid } from "./reach-part.ts";
import { keyTo } from "./sections.ts";

/** One sheet for the wall over the machine: the counts that shops use most, and all that the head does to 100. */
export function posterPart(desk: Desk): Part {
  return {
    id: "poster",
    title: "The counts that shops use most",
    alone: `${keyTo(desk.counts.map(({ section }) => section))} Turns, then spaces; the arms enclose one hole more than the spaces, the pin’s own.`,
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
export function cardParts(desk: Desk): readonly Part[] {
  return [
    {
      id: "front",
      title: "Turns, then spaces",
      alone: "The arms enclose one hole more than the spaces.",
      blocks: [commonestTable(desk, { arms: false, countsFromAfar: false })],
    },
    {
      id: "back",
      title: "What this head can do",
      blocks: [
        reachGrid(desk, { upTo: 200, small: true }),
        {
          kind: "paragraph",
          style: "small",
          text: "One way only; past the hole, back half a turn and up again. Unlock to move, lock to cut, cutter stopped before you reach near it. The machine’s manual comes first.",
        },
      ],
    },
  ];
}
