import { wormRatioOf } from "../../src/head/head.ts";
import { type Head, stepsAddedUp } from "../../src/index.ts";
import { arcUpTo, lengthOf, lengthsIn, roundedUp } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { HeadCount } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { positionTables } from "./position-tables.ts";
import { type ReadColumn, readColumns, toKnowOfReadings } from "./read-columns.ts";
import { type ReadCount, type ScaleName, toldAtMm, usualScale } from "./readings.ts";
import { nothing, teethColumn } from "./setting-cells.ts";
import type { Cell, Column, Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** A count of a head that is set by readings. */
type Read = HeadCount & { readonly read: ReadCount };

/** One row for every count of a head without plates: one division as its scales show it, and how near that comes. */
export function readingsPart(desk: Desk): Part | null {
  const counts = desk.counts.filter((count): count is Read => count.read !== null);
  if (counts.length === 0) return null;
  const { head } = desk;
  const tables = new Set(positionTables(desk).map(({ divisions }) => divisions));
  return {
    id: "readings",
    title: "Counts by readings",
    rule: footRule(head, { method: "simple", near: true }),
    blocks: [
      { kind: "paragraph", text: howToRead(head, counts, tables) },
      ...trap(head, counts).map((text): Block => ({ kind: "paragraph", text })),
      {
        kind: "series",
        summary: "Counts by readings from one zero",
        toKnow: toKnowOfReadings(head),
        ...tableOf(head, counts, tables),
      },
    ],
  };
}

function tableOf(head: Head, counts: readonly Read[], tables: ReadonlySet<number>) {
  const usual = usualScale(head);
  const firsts = counts.map(({ read }) => read.first());
  const read = readColumns(
    head,
    usual,
    firsts.some((place) => place?.wholeTurns !== null),
  );
  const block = counts.some((count) => count.read.teethPerMove > 1);
  const columns: readonly Column[] = [
    { head: "Count", align: "right", strong: true },
    ...(block ? [teethColumn] : []),
    ...read.map(({ column }) => column),
    { head: "off by", align: "right", size: "fine" },
    { head: "added\nup", align: "right", size: "fine" },
  ];
  const rows = counts.map((count, index): Row => {
    const place = firsts[index] ?? null;
    return {
      anchor: anchorOf(count.section === "direct" ? "readings" : count.section, count.divisions),
      cells: [
        countCell(count.divisions, tables),
        ...(block ? [{ text: String(count.read.teethPerMove) }] : []),
        ...read.map((column) => readCell(column, place)),
        ...errorCells(head, count.read, usual),
      ],
    };
  });
  return { columns, tables: [{ rows, headwords: true }] };
}

function countCell(divisions: number, tables: ReadonlySet<number>): Cell {
  const text = String(divisions);
  return tables.has(divisions) ? { text, link: anchorOf("degrees", divisions) } : { text };
}

function readCell({ cell }: ReadColumn, place: ReturnType<ReadCount["first"]>): Cell {
  return place === null ? { text: nothing } : cell(place);
}

/** How far off the worst place is, and what is left at the end of steps added up. */
function errorCells(head: Head, { divisions, by, worstArcSeconds }: ReadCount, usual: ScaleName): readonly Cell[] {
  const scale = by === usual ? "" : `${by} `;
  if (worstArcSeconds === 0) return [{ text: `${scale}exact` }, { text: nothing }];
  return [{ text: `${scale}${arcUpTo(worstArcSeconds)}` }, { text: signedUpTo(addedUp(head, divisions, by)) }];
}

function addedUp(head: Head, divisions: number, by: ScaleName, wholeMarks = false): number {
  const scale = head[by];
  if (scale === null) return 0;
  const read = wholeMarks ? { ...scale, vernierLines: 1 } : scale;
  return by === "dial" ? stepsAddedUp(read, divisions, wormRatioOf(head)) : stepsAddedUp(read, divisions);
}

/** From here on in minutes, as bounds on errors are told. */
const mostInSeconds = 120;

/** An error with its sign, its size rounded up: of a sum of whole steps tenths of a second say nothing. */
function signedUpTo(arcSeconds: number): string {
  if (arcSeconds === 0) return "0";
  const size = Math.abs(arcSeconds);
  const shown = size < mostInSeconds ? `${roundedUp(size, 0)}″` : arcUpTo(size);
  return `${arcSeconds > 0 ? "+" : "−"}${shown}`;
}

function howToRead({ dial, ring }: Head, counts: readonly Read[], tables: ReadonlySet<number>): string {
  const worst = Math.max(...counts.map(({ read }) => read.worstArcSeconds));
  const length = lengthOf(worst, toldAtMm, lengthsIn("mm"));
  const most = worst === 0 ? "" : `, at most ${arcUpTo(worst)}, which is ${length} at ${toldAtMm} mm from the centre`;
  const shown =
    dial === null
      ? "One division as the ring shows it."
      : `One division as the dial shows it: whole turns of the handwheel, then the reading${ring === null ? "." : "; the ring shows which turn it is."}`;
  const every = tables.size === 0 ? "" : ` Every position of the counts to ${Math.max(...tables)} is in the part after this.`;
  return `${shown} Exact: every position falls on a mark. Else set each position by itself from the one zero: none is then off by more than stands here${most}.${every}`;
}

/** What spoils the work on such a table, told on a count that is not exact. */
function trap(head: Head, counts: readonly Read[]): readonly string[] {
  const inexact = counts.filter(({ read }) => read.worstArcSeconds > 0);
  const example = inexact.find(({ divisions }) => divisions === 53) ?? inexact[0];
  if (example === undefined) return [];
  const { divisions, by } = example.read;
  const lines = head[by]?.vernierLines ?? 1;
  const left = (wholeMarks: boolean) => arcUpTo(addedUp(head, divisions, by, wholeMarks));
  const marks = lines === 1 ? "" : `, and in whole marks of the ${by}, without its vernier, ${left(true)} out`;
  return [
    `Added up: what is left at the end where the rounded reading is added step to step instead, + too far, − short. ${divisions} would end ${left(false)} out${marks}.`,
  ];
}
