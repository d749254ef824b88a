import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { countColumns, stepCell, stepColumn } from "./setting-cells.ts";
import type { Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Counts by the plate on the spindle itself, worm out of mesh, with the holes to use. */
export function directPart(desk: Desk): Part | null {
  const counts = doneBy(desk, "direct");
  if (counts.length === 0) return null;
  return {
    id: "direct",
    title: "Counts by direct indexing",
    mark: sectionWords.direct.running,
    rule: footRule(desk.head, { method: "direct" }),
    warning:
      "The worm is out of mesh: these spaces are on the direct plate, not on an index plate. Lock the spindle before every cut.",
    alone: keyTo(["direct"]),
    blocks: [
      {
        kind: "table",
        headwords: true,
        summary: "Counts by direct indexing",
        columns: [
          ...countColumns,
          { head: "direct plate", group: "SET UP", align: "left", strong: true, wraps: true },
          { head: "holes", group: "SET UP", align: "right", strong: true },
          { head: "spaces", group: "SPINDLE", align: "right", strong: true },
          stepColumn,
          { head: "stop in holes", group: "CHECK", align: "left", wraps: true },
        ],
        rows: counts.map(directRow),
      },
    ],
  };
}

function directRow({ divisions, setting: { spaces, circle, plate } }: CountBy<"direct">): Row {
  return {
    anchor: anchorOf("direct", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.direct.mark },
      { text: plate },
      { text: String(circle) },
      { text: String(spaces) },
      stepCell(divisions),
      { text: Array.from({ length: divisions }, (_, move) => (move * spaces) % circle).join(" ") },
    ],
  };
}
