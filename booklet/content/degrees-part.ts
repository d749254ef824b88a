import { type DialPosition, dialReadings, formatAngle, type Head, type Reading, type Scale } from "../../src/index.ts";
import type { Block, Cell, Column, Part, Row } from "./blocks.ts";
import { type Desk, inSection } from "./parts.ts";
import { anchorOf, readingOf, seconds } from "./words.ts";

/** Every position of chosen counts from one zero, by dial and ring. */
export function degreesPart(desk: Desk): Part | null {
  const { head } = desk;
  const degreeTables = tablesOf(desk);
  if (degreeTables.length === 0 || (head.dial === null && head.ring === null)) return null;
  return {
    id: "degrees",
    title: "Degree tables",
    blocks: [
      {
        kind: "paragraph",
        text: "Every position is from one zero: set dial and ring to 0 at position 1 and never set them back. Only the reading is rounded, so no error adds to the next; the last column says how far the reading leaves the work from its true place, + too far.",
      },
      ...degreeTables.flatMap((divisions) => degreeTable(head, divisions)),
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
  return inSection(desk, "impossible")
    .map(({ divisions }) => divisions)
    .filter((divisions) => divisions <= usualTablesTo);
}

/** Every position of one count from one zero. */
export function degreeTable(head: Head, divisions: number, ticks = false): Block[] {
  const table = dialReadings(head, divisions);
  const worst = table.worstDial ?? table.worstRing;
  const by = table.worstDial ? "dial" : "ring";
  return [
    {
      kind: "table",
      title: {
        anchor: anchorOf("degrees", divisions),
        text: `${divisions} divisions: worst reading by the ${by} ${signed(worst?.arcSeconds ?? 0)}`,
      },
      folds: true,
      summary: `Positions of ${divisions} divisions`,
      columns: [
        ...(ticks ? [{ head: "", align: "center" } as const] : []),
        { head: "position", align: "right", strong: true },
        { head: "angle", align: "right" },
        ...(head.dial ? dialColumns(head.dial) : []),
        ...(head.ring ? [{ head: "ring", align: "right", strong: true } as const] : []),
        { head: `error by\nthe ${by}`, align: "right" },
      ],
      rows: table.positions.map((position) => degreeRow(head, position, ticks)),
    },
  ];
}

function dialColumns({ figures, vernierLines }: Scale): readonly Column[] {
  const columns: Column[] = [{ head: "turns", group: "DIAL", align: "right", strong: true }];
  if (figures === "angle") return [...columns, { head: "reads", group: "DIAL", align: "right", strong: true }];
  columns.push({ head: "mark", group: "DIAL", align: "right", strong: true });
  return vernierLines > 1 ? [...columns, { head: "vernier", group: "DIAL", align: "right", strong: true }] : columns;
}

function degreeRow(head: Head, { tooth, angle, dial, ring }: DialPosition, ticks: boolean): Row {
  return {
    cells: [
      ...(ticks ? [{ text: "", box: true }] : []),
      { text: String(tooth) },
      { text: formatAngle(angle) },
      ...(dial && head.dial ? dialCells(dial, head.dial) : []),
      ...(ring && head.ring ? [{ text: readingOf(ring, head.ring) }] : []),
      { text: signed((dial ?? ring)?.errorArcSeconds ?? 0) },
    ],
  };
}

function dialCells({ turns, mark, line, figure }: Reading, { figures, vernierLines }: Scale): Cell[] {
  const cells = [{ text: String(turns) }];
  if (figures === "angle") return [...cells, { text: formatAngle(figure ?? "0") }];
  cells.push({ text: String(mark) });
  return vernierLines > 1 ? [...cells, { text: String(line) }] : cells;
}

function signed(error: number): string {
  if (error === 0) return "0″";
  return `${error > 0 ? "+" : "−"}${seconds(error)}`;
}
