import { ownedCircles } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { sectionWords } from "./sections.ts";
import { anchorOf, plateOf } from "./words.ts";

/** Where each count is, and which counts each circle does. */
export function indexPart({ head, counts, included }: Desk): Part | null {
  // Its counts stand in order, each with its readings in one row.
  if (isReadHead(head)) return null;
  const byCircle = ownedCircles(head).map((circle) => ({
    name: `${circle.holes}`,
    plate: plateOf(head, circle),
    counts: counts
      .filter(({ simple }) =>
        simple.some((each) => each.plate === circle.plate && each.face === circle.face && each.circle === circle.holes),
      )
      .map(({ divisions }) => divisions),
  }));
  return {
    id: "index",
    title: "Index",
    joins: true,
    blocks: [
      { kind: "heading", text: "By count: method and page" },
      {
        kind: "columns",
        items: counts
          .filter(({ section }) => included.has(section))
          .map(({ divisions, section }) => ({
            parts: [String(divisions), sectionWords[section].mark, `{page:${anchorOf(section, divisions)}}`],
            link: anchorOf(section, divisions),
          })),
      },
      ...(byCircle.length === 0 ? [] : [{ kind: "heading", text: "By circle: counts it does by simple indexing" } as const]),
      {
        kind: "list",
        items: byCircle.map(({ name, plate, counts: done }) => ({
          term: `${name} on ${plate}`,
          text: done.length === 0 ? "none" : done.join("  "),
        })),
      },
    ],
  };
}
