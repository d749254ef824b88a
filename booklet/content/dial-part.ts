import type { Head } from "../../src/index.ts";
import type { Part, Row } from "./blocks.ts";
import type { HeadCount } from "./head-counts.ts";
import { type Desk, inSection } from "./parts.ts";
import { anyBlock, countColumns, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import { anchorOf } from "./words.ts";

/** Counts where every position falls on a mark of the handwheel's dial or a line of its vernier. */
export function dialPart(desk: Desk): Part | null {
  const counts = inSection(desk, "dial");
  if (counts.length === 0) return null;
  const block = anyBlock(counts.flatMap(({ setting }) => setting ?? []));
  return {
    id: "dial",
    title: "Counts by the dial",
    mark: "DIAL",
    blocks: [
      {
        kind: "paragraph",
        text: "Every position of these counts falls exactly on a mark of the dial or a line of its vernier. Each move turns the handwheel by the whole turns, the marks and the vernier lines. Read on from the mark you stand on; never bring the dial back to zero by hand between moves. Come to every mark in the same direction.",
      },
      {
        kind: "table",
        headwords: true,
        summary: "Counts by the dial",
        columns: [
          ...countColumns,
          ...(block ? [teethColumn] : []),
          { head: "turns", group: "HANDWHEEL", align: "right", strong: true },
          { head: "marks", group: "HANDWHEEL", align: "right", strong: true },
          { head: "vernier\nlines", group: "HANDWHEEL", align: "right", strong: true },
          { head: "marks\na turn", group: "DIAL", align: "right" },
          { head: "lines\na mark", group: "DIAL", align: "right" },
          { head: "gears", align: "left", aside: "gears {}" },
          stepColumn,
        ],
        rows: counts.map((count) => dialRow(desk.head, count, block)),
      },
    ],
  };
}

function dialRow({ dial }: Head, { divisions, setting }: HeadCount, block: boolean): Row {
  if (!setting || !dial) throw new Error(`turns-and-holes is at fault, please report it: ${divisions} has no dial`);
  const { turns, spaces } = setting;
  return {
    anchor: anchorOf("dial", divisions),
    cells: [
      { text: String(divisions) },
      { text: "H", reversed: true },
      ...(block ? [{ text: String(setting.teethPerMove) }] : []),
      { text: String(turns) },
      { text: String(Math.floor(spaces / dial.vernierLines)) },
      { text: String(spaces % dial.vernierLines) },
      { text: String(dial.marksPerTurn) },
      { text: String(dial.vernierLines) },
      { text: "none" },
      stepCell(divisions),
    ],
  };
}
