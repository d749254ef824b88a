import type { Head, NearFromZero, NearSetting } from "../../src/index.ts";
import { arcUpTo, listed, nearHow } from "../../src/words/index.ts";
import type { Cell, Column, Part, Row } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountNotPossible } from "./head-counts.ts";
import { type Desk, notPossible } from "./parts.ts";
import { positionTables } from "./position-tables.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { countColumns, nothing, stepCell, stepColumn } from "./setting-cells.ts";
import { anchorOf } from "./words.ts";

/** Counts that cannot be done with what the head has: printed, with what comes nearest and what would help. */
export function impossiblePart(desk: Desk): Part | null {
  const counts = notPossible(desk);
  if (counts.length === 0) return null;
  const tables = new Set(positionTables(desk).map(({ divisions }) => divisions));
  const ways = waysThere(counts);
  return {
    id: "impossible",
    title: "Counts this head cannot do",
    mark: sectionWords.impossible.running,
    rule: footRule(desk.head, { method: "simple", near: true }),
    warning: warningOf(ways),
    alone: aloneOf(desk.head, ways),
    blocks: [
      { kind: "paragraph", text: routes(desk.head, ways) },
      {
        kind: "table",
        headwords: true,
        summary: "Counts that cannot be done",
        columns: [
          ...countColumns,
          stepColumn,
          { head: "nearest counts\nthat can be done", align: "left" },
          ...ways.map(({ head }): Column => ({ head, group: "WORST POSITION OFF, BY", align: "right" })),
          ...(tables.size === 0 ? [] : [{ head: "degree\ntable", align: "right" } as const]),
          { head: "a circle of these holes\nwould do it, if drilled", align: "left", wraps: true },
        ],
        rows: counts.map((count) => impossibleRow(count, ways, tables)),
      },
    ],
  };
}

/** A way to come near that some count of the book has. */
interface NearColumn {
  readonly head: string;
  readonly isMove: boolean;
  /** The best setting of this way among those of a count. */
  find(near: readonly NearSetting[]): NearSetting | undefined;
}

const byMove: NearColumn = { head: "a near\nmove", isMove: true, find: (near) => near.find(({ moves }) => moves === "equal") };

function fromZero(kind: NearFromZero["kind"], head: string): NearColumn {
  return { head, isMove: false, find: (near) => near.find((each) => each.kind === kind) };
}

/** The ways to come near: one move made over and over, or every position from one zero by what the head has to set it by. */
const allWays: readonly NearColumn[] = [
  byMove,
  fromZero("nearest-hole", "nearest\nhole"),
  fromZero("dial", "dial"),
  fromZero("ring", "ring"),
];

function waysThere(counts: readonly CountNotPossible[]): readonly NearColumn[] {
  return allWays.filter(({ find }) => counts.some(({ answer }) => find(answer.near) !== undefined));
}

function warningOf(ways: readonly NearColumn[]): string {
  const none = "None of these counts can be done exactly with what this head has.";
  if (ways.length === 0) return none;
  const move = ways.some(({ isMove }) => isMove) ? "by one near move, counted from the start only, or " : "";
  return `${none} The errors are those of the worst position: ${move}each set by itself from one zero.`;
}

/** What the mark and a near move mean. */
function aloneOf({ rearPin, gears }: Head, ways: readonly NearColumn[]): string {
  const key = keyTo(["impossible"]);
  if (!ways.some(({ isMove }) => isMove)) return key;
  const both = rearPin ? " A second circle (+ on, − back) is crank and plate together by the rear pin, stop pin OUT." : "";
  const train = gears.length === 0 ? "" : " With gears: stop pin OUT.";
  return `${key} Near move: turns + spaces of a circle by the crank, stop pin IN.${both}${train}`;
}

/** What remains, in order of effort. */
function routes(head: Head, ways: readonly NearColumn[]): string {
  const remain = [
    ...(head.gearing === null || head.gears.length >= 2 ? [] : ["change gears: the plate of this head can be geared"]),
    ...(head.plates.length === 0 ? [] : ["a circle that is a multiple of the one named, drilled on a plate of your own"]),
    ...(ways.length === 0 ? [] : ["the way with the least error printed, if that is one the work can bear"]),
  ];
  const move = ways.some(({ isMove }) => isMove)
    ? " The near move stands under its count where it is the best; its error grows with every move, and the job sheet of the count prints that of each position."
    : "";
  return `${remain.length === 0 ? "" : `Routes that remain: ${remain.join("; ")}.`}${move}`;
}

function impossibleRow({ divisions, answer }: CountNotPossible, ways: readonly NearColumn[], tables: ReadonlySet<number>): Row {
  const { near, nearestCounts, circlesThatWouldDo } = answer;
  const [best] = near;
  return {
    anchor: anchorOf("impossible", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.impossible.mark, reversed: true },
      stepCell(divisions),
      { text: nearestCounts.length === 0 ? nothing : listed(nearestCounts) },
      ...ways.map(({ find }) => ({ text: worstOf(find(near)) })),
      ...(tables.size === 0 ? [] : [tableCell(divisions, tables)]),
      { text: circlesThatWouldDo.length === 0 ? nothing : circlesThatWouldDo.join(", ") },
    ],
    ...(best?.moves === "equal" ? { lines: [`near move ${nearHow(best)}`] } : {}),
  };
}

/** The worst error of a near setting; nothing where a position would be nearer to its neighbour's place. */
function worstOf(near: NearSetting | undefined): string {
  return near === undefined ? nothing : arcUpTo(near.worstArcSeconds);
}

function tableCell(divisions: number, tables: ReadonlySet<number>): Cell {
  const anchor = anchorOf("degrees", divisions);
  return tables.has(divisions) ? { text: `page {page:${anchor}}`, link: anchor } : { text: nothing };
}
