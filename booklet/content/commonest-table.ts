import type { Head } from "../../src/index.ts";
import { commonestCounts } from "./commonest-counts.ts";
import type { HeadCount } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import type { PlateKey } from "./plate-keys.ts";
import { sectionWords } from "./sections.ts";
import { countColumns, crankCells, crankColumns } from "./setting-cells.ts";
import type { Cell, Column, Row, TableBlock } from "./table-block.ts";

/** The counts that shops use most, each with its move over a still plate, or with what it needs instead. */
export function commonestTable({ head, counts }: Desk, { arms, countsFromAfar }: CommonestTable): TableBlock {
  const [count] = countColumns;
  const columns: readonly Column[] = [
    ...(count ? [countsFromAfar ? { ...count, size: "huge" as const } : count] : []),
    ...crankColumns.slice(0, arms ? undefined : -1),
  ];
  return {
    kind: "table",
    folds: true,
    summary: "The counts that shops use most",
    columns,
    rows: counts.filter(({ divisions }) => commonestCounts.includes(divisions)).map((each) => rowOf(head, each, columns.length)),
  };
}

/** The letters that stand for plates in such a table. */
export function keysOfCommonest({ keys, counts }: Desk): readonly PlateKey[] {
  const used = counts.filter(({ divisions }) => commonestCounts.includes(divisions)).map(({ simple }) => bestOf(simple)?.plate);
  return keys.filter(({ key }) => used.includes(key));
}

/** What a table of the commonest counts is to have. */
export interface CommonestTable {
  readonly arms: boolean;
  /** Whether the counts are to be found from across the shop. */
  readonly countsFromAfar: boolean;
}

function bestOf(simple: HeadCount["simple"]): HeadCount["simple"][number] | undefined {
  return simple.find(({ teethPerMove }) => teethPerMove === 1);
}

function rowOf(head: Head, { divisions, simple, section }: HeadCount, columns: number): Row {
  const count: Cell = { text: String(divisions) };
  const best = bestOf(simple);
  if (best) return { cells: [count, ...crankCells(head, best)].slice(0, columns) };
  return { cells: [count], rest: { text: sectionWords[section].pointer } };
}
