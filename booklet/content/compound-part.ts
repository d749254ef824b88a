import type { Head } from "../../src/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import { sumOfTurns } from "./geared-part.ts";
import type { CountBy } from "./head-counts.ts";
import { type Desk, doneBy } from "./parts.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { anyBlock, countColumns, crankCells, crankColumns, stepCell, stepColumn, teethColumn } from "./setting-cells.ts";
import type { Column, Row } from "./table-block.ts";
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
    rule: footRule(head, { method: "compound" }),
    warning:
      "Plate stop pin OUT: the rear pin holds the plate. Every division here takes two moves; one alone gives a wrong count.",
    alone: `${keyTo(["compound"])} Crank: over the plate that the rear pin holds. Both: index pin in its hole, rear pin drawn, crank and plate turned together by the spaces of the rear circle; rear pin in again.`,
    blocks: [
      {
        kind: "paragraph",
        text: "The crank alone: the rear pin holds the plate; turn by the turns and spaces, always forward. Crank and plate together: the index pin stays in its hole; draw the rear pin, turn both by its spaces on its own circle, and let it in again. Always in the order printed over the table. Check: both parts add up to the crank turns seen from the bench, over all moves.",
      },
      ...orders.flatMap((order) => tableOf(head, counts, order, block)),
    ],
  };
}

/** The two orders of work: a part that goes back is made first, so that the worm is last moved forward. */
const orders = [
  {
    direction: "with",
    said: "First the crank, then both on the same way.",
    crank: "FIRST: CRANK",
    both: "THEN: BOTH, ON",
  },
  {
    direction: "against",
    said: "First both BACK by the rear pin, then the crank forward: that takes up the slack of the worm.",
    crank: "THEN: CRANK",
    both: "FIRST: BOTH, BACK",
  },
] as const;

/** The counts whose parts are made in one order, in a table that says it; nothing where there are none. */
function tableOf(
  head: Head,
  counts: readonly CountBy<"compound">[],
  { direction, said, crank, both }: (typeof orders)[number],
  block: boolean,
): readonly Block[] {
  const rows = counts.filter(({ setting }) => setting.second.direction === direction);
  if (rows.length === 0) return [];
  return [
    { kind: "heading", text: said },
    {
      kind: "table",
      headwords: true,
      summary: `Counts by compound indexing: ${said}`,
      columns: [
        ...countColumns,
        ...(block ? [teethColumn] : []),
        ...setUpColumns,
        ...inOrder<Column>(
          direction,
          moveColumns.map((column) => ({ ...column, group: crank })),
          [
            { head: "direction", group: both, align: "left", strong: true },
            { head: "spaces", group: both, align: "right", strong: true },
            { head: "rear circle", group: both, align: "right", strong: true },
          ],
        ),
        stepColumn,
        { head: "crank ± both = in all", group: "CHECK", align: "right", aside: "check {}" },
      ],
      rows: rows.map((count) => compoundRow(head, count, block)),
    },
  ];
}

/** Plate and circle; turns, spaces and arms. */
const [setUpColumns, moveColumns] = [crankColumns.slice(0, 2), crankColumns.slice(2)];

/** What the crank does alone and what both do together, in the order of work. */
function inOrder<T>(direction: "with" | "against", crank: readonly T[], both: readonly T[]): readonly T[] {
  return direction === "with" ? [...crank, ...both] : [...both, ...crank];
}

function compoundRow(head: Head, { divisions, setting }: CountBy<"compound">, block: boolean): Row {
  const { second } = setting;
  const crank = crankCells(head, setting);
  const both = [{ text: second.direction }, { text: String(second.spaces) }, { text: String(second.circle) }];
  return {
    anchor: anchorOf("compound", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.compound.mark, reversed: true },
      ...(block ? [{ text: String(setting.teethPerMove) }] : []),
      ...crank.slice(0, setUpColumns.length),
      ...inOrder(second.direction, crank.slice(setUpColumns.length), both),
      stepCell(divisions),
      { text: sumOfTurns(setting) },
    ],
  };
}
