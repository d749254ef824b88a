import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import { fullTable, leftUntried, nearMoveWords, waysThere, withTable } from "./impossible-part.ts";
import { type Desk, notFound } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";

/** Counts of a head so large that not everything was tried for them: nobody may read them as impossible. */
export function unfoundPart(desk: Desk): Part | null {
  const counts = notFound(desk);
  if (counts.length === 0) return null;
  const ways = waysThere(counts);
  return {
    id: "unfound",
    title: "Counts that were not found",
    mark: sectionWords.unfound.running,
    rule: footRule(desk.head, { method: "simple", near: true }),
    warning:
      "No setting was found for these counts in the work allowed. It is not shown that there is none: look each up by itself, with fewer gears or circles, before it is given up.",
    alone: `${keyTo(["unfound"])}${nearMoveWords(desk.head, ways)}`,
    blocks: [...leftUntried(counts), fullTable(counts, ways, withTable(desk, counts))],
  };
}
