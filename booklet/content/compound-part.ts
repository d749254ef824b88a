import type { Head } from "../../src/index.ts";
import type { Part, Row } from "./blocks.ts";
import { sumOfTurns } from "./geared-part.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { sectionWords } from "./sections.ts";
import { anyBlock, countColumns, crankCells, crankColumns, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import { anchorOf } from "./words.ts";

/** Counts by compound indexing: two moves on two circles of one face for each division. */
export function compoundPart(desk: Desk): Part | null {
  const { head } = desk;
  const counts = doneBy(desk, "compound");
  if (counts.length === 0) return null;
  const block = anyBlock(counts.map(({ setting }) => setting));
  return {
    id: "compound",
    title: "Counts that need two circles",
    mark: sectionWords.compound.running,
    warning: "Every division here takes two moves. One move alone gives a wrong count.",
    blocks: [
      {
        kind: "paragraph",
        text: "First move: the rear pin holds the plate; turn the crank by the turns and spaces. Second move: the index pin stays in its hole; draw the rear pin and turn crank and plate together by its spaces on its own circle, with the first move or back against it. Always in the same order. Check: both parts add up to the crank turns seen from the bench, over all moves.",
      },
      {
        kind: "table",
        headwords: true,
        summary: "Counts by compound indexing",
        columns: [
          ...countColumns,
          ...(block ? [teethColumn] : []),
          ...crankColumns.map((column) => ({ ...column, group: column.group === "SET UP" ? "SET UP" : "FIRST: CRANK" })),
          { head: "direction", group: "SECOND: CRANK AND PLATE", align: "left", strong: true },
          { head: "spaces", group: "SECOND: CRANK AND PLATE", align: "right", strong: true },
          { head: "rear circle", group: "SECOND: CRANK AND PLATE", align: "right", strong: true },
          { head: "gears", align: "left", aside: "gears {}" },
          stepColumn,
          { head: "first ± second = crank", group: "CHECK", align: "right", aside: "check {}" },
        ],
        rows: counts.map((count) => compoundRow(head, count, block)),
      },
    ],
  };
}

function compoundRow(head: Head, { divisions, setting }: CountBy<"compound">, block: boolean): Row {
  const { second } = setting;
  return {
    anchor: anchorOf("compound", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.compound.mark, reversed: true },
      ...(block ? [{ text: String(setting.teethPerMove) }] : []),
      ...crankCells(head, setting),
      { text: second.direction },
      { text: String(second.spaces) },
      { text: String(second.circle) },
      { text: "none" },
      stepCell(divisions),
      { text: sumOfTurns(setting) },
    ],
  };
}
