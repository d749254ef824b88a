import type { Scale } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { anyBlock, countColumns, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import type { Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Counts where every position falls on a mark of the handwheel's dial or a line of its vernier. */
export function dialPart(desk: Desk): Part | null {
  const { dial } = desk.head;
  const counts = doneBy(desk, "dial");
  if (dial === null || counts.length === 0 || isReadHead(desk.head)) return null;
  const block = anyBlock(counts.map(({ setting }) => setting));
  return {
    id: "dial",
    title: "Counts by the dial",
    mark: sectionWords.dial.running,
    rule: footRule(desk.head, { method: "dial", several: block }),
    alone: `${keyTo(["dial"])} Each move: the whole turns, the marks, the lines of the vernier. Read on from the mark you stand on; never bring the dial back to zero between moves.`,
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
          stepColumn,
        ],
        rows: counts.map((count) => dialRow(dial, count, block)),
      },
    ],
  };
}

function dialRow(dial: Scale, { divisions, setting }: CountBy<"dial">, block: boolean): Row {
  const { turns, spaces } = setting;
  return {
    anchor: anchorOf("dial", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.dial.mark, reversed: true },
      ...(block ? [{ text: String(setting.teethPerMove) }] : []),
      { text: String(turns) },
      { text: String(Math.floor(spaces / dial.vernierLines)) },
      { text: String(spaces % dial.vernierLines) },
      { text: String(dial.marksPerTurn) },
      { text: String(dial.vernierLines) },
      stepCell(divisions),
    ],
  };
}
