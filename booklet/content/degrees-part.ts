import { dialReadings, formatAngle, type Head } from "../../src/index.ts";
import { arcUpTo, scaleColumns, signedSeconds } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import { type Desk, notPossible } from "./parts.ts";
import { columnOf } from "./place-table.ts";
import { anchorOf } from "./words.ts";

/** Every position of chosen counts from one zero, by dial and ring. */
export function degreesPart(desk: Desk): Part | null {
  const { head } = desk;
  const degreeTables = tablesOf(desk);
  if (degreeTables.length === 0 || (head.dial === null && head.ring === null)) return null;
  return {
    id: "degrees",
    title: "Degree tables",
    rule: footRule(head, { method: "simple", near: true }),
    blocks: [
      {
        kind: "paragraph",
        text: "Every position is from one zero: set dial and ring to 0 at position 1 and never set them back. Only the reading is rounded, so no error adds to the next; the last column says how far the reading leaves the work from its true place, + too far.",
      },
      ...degreeTables.map((divisions) => degreeTable(head, divisions)),
    ],
  };
}

/** The counts that have a table where none were named: on a head without plates those that nothing closes. */
const usualTablesTo = 60;

/** The counts that have a degree table in this book. */
export function tablesOf(desk: Desk): readonly number[] {
  const { head, degreeTables, included } = desk;
  if (!included.has("degrees") || (head.dial === null && head.ring === null)) return [];
  if (degreeTables !== null) return degreeTables;
  if (head.plates.length > 0) return [];
  return notPossible(desk)
    .map(({ divisions }) => divisions)
    .filter((divisions) => divisions <= usualTablesTo);
}

/** Every position of one count from one zero. */
function degreeTable(head: Head, divisions: number): Block {
  const table = dialReadings(head, divisions);
  const by = table.worstDial ? "dial" : "ring";
  const scales = scaleColumns(head, by);
  const worst = Math.abs((table.worstDial ?? table.worstRing)?.arcSeconds ?? 0);
  const off = worst === 0 ? "exact" : `no position over ${arcUpTo(worst)} off`;
  return {
    kind: "table",
    title: { anchor: anchorOf("degrees", divisions), text: `${divisions} divisions by the ${by}: ${off}` },
    folds: true,
    summary: `Positions of ${divisions} divisions`,
    columns: [
      { head: "position", align: "right", strong: true },
      { head: "angle", align: "right" },
      ...scales.map(columnOf),
      { head: `error by\nthe ${by}`, align: "right" },
    ],
    rows: table.positions.map(({ tooth, angle, ...shown }) => ({
      cells: [
        { text: String(tooth) },
        { text: formatAngle(angle) },
        ...scales.map(({ cell }) => ({ text: cell(shown) })),
        { text: signedSeconds(shown[by]?.errorArcSeconds ?? 0) },
      ],
    })),
  };
}
