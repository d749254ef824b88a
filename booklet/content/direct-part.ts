import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { countColumns, stepCell, stepColumn } from "./setting-cells.ts";
import { spindleNouns } from "./spindle-nouns.ts";
import type { Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Counts by the plate on the spindle itself, worm out of mesh, with the holes to use. */
export function directPart(desk: Desk): Part | null {
  const counts = doneBy(desk, "direct");
  if (counts.length === 0) return null;
  const { what, places } = spindleNouns(desk.head);
  const byRow = counts.some(({ setting }) => setting.vernierHoles !== undefined);
  return {
    id: "direct",
    title: "Counts by direct indexing",
    mark: sectionWords.direct.running,
    rule: footRule(desk.head, { method: "direct" }),
    warning: desk.head.wormRatio === null ? onSpindleAlone : outOfMesh,
    alone: keyTo(["direct"], desk.head),
    blocks: [
      {
        kind: "table",
        headwords: true,
        summary: "Counts by direct indexing",
        columns: [
          ...countColumns,
          { head: what, group: "SET UP", align: "left", strong: true, wraps: true },
          { head: places, group: "SET UP", align: "right", strong: true },
          { head: "spaces", group: "SPINDLE", align: "right", strong: true },
          ...(byRow ? [{ head: "+ of\nthe row", group: "SPINDLE", align: "right", strong: true } as const] : []),
          stepColumn,
          { head: places === "holes" ? "stop in holes" : "stop at", group: "CHECK", align: "left", wraps: true },
        ],
        rows: counts.map((count) => directRow(count, byRow)),
      },
    ],
  };
}

const outOfMesh =
  "The worm is out of mesh: these spaces are on the direct plate, not on an index plate. Lock the spindle before every cut.";
const onSpindleAlone = "Nothing but the pin and the lock holds the spindle: lock it before every cut.";

function directRow({ divisions, setting }: CountBy<"direct">, byRow: boolean): Row {
  const { spaces, circle, plate, vernierHoles: row = 1 } = setting;
  const stops = Array.from({ length: divisions }, (_, move) => (move * spaces) % circle);
  return {
    anchor: anchorOf("direct", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.direct.mark },
      { text: plate },
      { text: String(circle / row) },
      { text: String(Math.floor(spaces / row)) },
      ...(byRow ? [{ text: String(spaces % row) }] : []),
      stepCell(divisions),
      { text: row === 1 ? stops.join(" ") : stops.map((place) => `${Math.floor(place / row)}+${place % row}`).join(", ") },
    ],
  };
}
