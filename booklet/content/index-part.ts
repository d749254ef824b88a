import type { Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { sectionWords } from "./sections.ts";
import { anchorOf } from "./words.ts";

/** Where each count is. */
export function indexPart({ head, counts, included }: Desk): Part | null {
  // Its counts stand in order, each with its readings in one row.
  if (isReadHead(head)) return null;
  return {
    id: "index",
    title: "Index",
    joins: true,
    blocks: [
      {
        kind: "columns",
        title: "By count: method and page",
        items: counts
          .filter(({ section }) => included.has(section))
          .map(({ divisions, section }) => ({
            parts: [String(divisions), sectionWords[section].mark, `{page:${anchorOf(section, divisions)}}`],
            link: anchorOf(section, divisions),
          })),
      },
    ],
  };
}
