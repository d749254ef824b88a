import type { Head, NearFromZero, NearSetting } from "../../src/index.ts";
import { listed, nearHow, untriedWords } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { CountNotPossible } from "./head-counts.ts";
import { gridExplained, impossibleGrid, mostImpossible, worstOf } from "./impossible-grid.ts";
import { type Desk, notPossible } from "./parts.ts";
import { positionTables } from "./position-tables.ts";
import { fallsOnRing } from "./readings.ts";
import { keyTo, sectionWords } from "./sections.ts";
import { countColumns, nothing, stepCell, stepColumn } from "./setting-cells.ts";
import type { Cell, Column, Row, TableBlock } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Counts that cannot be done with what the head has: printed, with what comes nearest and what would help. */
export function impossiblePart(desk: Desk): Part | null {
  const counts = notPossible(desk);
  if (counts.length === 0) return null;
  const inGrid = mostImpossible(desk);
  const told = inGrid ? counts.map(byItsBest) : counts;
  const ways = waysThere(told);
  return {
    id: "impossible",
    title: "Counts this head cannot do",
    mark: sectionWords.impossible.running,
    rule: footRule(desk.head, { method: "simple", near: true }),
    warning: warningOf(
      ways,
      told.some(({ answer }) => fallsOnRing(answer.near)),
    ),
    alone: `${keyTo(["impossible"])}${nearMoveWords(desk.head, ways)}`,
    blocks: [
      { kind: "paragraph", text: inGrid ? gridExplained(counts) : routes(desk.head, ways) },
      ...leftUntried(counts),
      ...(inGrid ? impossibleGrid(counts) : [fullTable(counts, ways, withTable(desk, counts))]),
    ],
  };
}

/** A count as the grid tells it: by the nearest of its ways alone. */
function byItsBest(count: CountNotPossible): CountNotPossible {
  return { ...count, answer: { ...count.answer, near: count.answer.near.slice(0, 1) } };
}

/** That there may be nearer ways than those printed, where not everything was tried. */
export function leftUntried(counts: readonly CountNotPossible[]): readonly Block[] {
  const cut = new Set(counts.flatMap(({ answer }) => answer.untried.map(({ code }) => code)));
  return cut.size === 0 ? [] : [{ kind: "paragraph", text: untriedWords([...cut].map((code) => ({ code }))) }];
}

/** The counts that have a table of their positions. */
export function withTable(desk: Desk, counts: readonly CountNotPossible[]): ReadonlySet<number> {
  const here = new Set(counts.map(({ divisions }) => divisions));
  return new Set(positionTables(desk).flatMap(({ divisions }) => (here.has(divisions) ? [divisions] : [])));
}

/** Each count in a row of its own with all that nearly does it, and what would do it. */
export function fullTable(
  counts: readonly CountNotPossible[],
  ways: readonly NearColumn[],
  tables: ReadonlySet<number>,
): TableBlock {
  // On a head that no crank turns none would.
  const drilled = counts.some(({ answer }) => answer.head.wormRatio !== null);
  return {
    kind: "table",
    headwords: true,
    summary: sectionWords[counts[0]?.section ?? "impossible"].done,
    columns: [
      ...countColumns,
      stepColumn,
      { head: "nearest counts\nthat can be done", align: "left" },
      ...ways.map(({ head }): Column => ({ head, group: "WORST POSITION OFF, BY", align: "right" })),
      ...(tables.size === 0 ? [] : [{ head: "positions", align: "right" } as const]),
      ...(drilled ? [{ head: "a circle of these holes\nwould do it, if drilled", align: "left", wraps: true } as const] : []),
    ],
    rows: counts.map((count) => impossibleRow(count, ways, tables, drilled)),
  };
}

/** A way to come near that some count of the book has. */
export interface NearColumn {
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
  fromZero("both-cranks", "both\ncranks"),
  fromZero("nearest-direct", "nearest\nplace"),
  fromZero("dial", "dial"),
  fromZero("ring", "ring"),
];

/** The ways that any of some counts has. */
export function waysThere(counts: readonly CountNotPossible[]): readonly NearColumn[] {
  return allWays.filter((way) => counts.some(({ answer }) => way.find(answer.near) !== undefined));
}

function warningOf(ways: readonly NearColumn[], onRing: boolean): string {
  const ring = " Where the ring is exact, set each position to its mark of the ring.";
  const none = onRing
    ? `No move of this head does any of these counts exactly.${ring}`
    : "None of these counts can be done exactly with what this head has.";
  if (ways.length === 0) return none;
  const move = ways.some(({ isMove }) => isMove) ? "by one near move, counted from the start only, or " : "";
  return `${none} The errors are those of the worst position: ${move}each set by itself from one zero.`;
}

/** What a near move means. */
export function nearMoveWords({ rearPin, gears }: Head, ways: readonly NearColumn[]): string {
  if (!ways.some(({ isMove }) => isMove)) return "";
  const both = rearPin ? " A second circle (+ on, − back) is crank and plate together by the rear pin, stop pin OUT." : "";
  const train = gears.length === 0 ? "" : " With gears: stop pin OUT.";
  return ` Near move: turns + spaces of a circle by the crank, stop pin IN.${both}${train}`;
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

function impossibleRow(
  { divisions, section, answer }: CountNotPossible,
  ways: readonly NearColumn[],
  tables: ReadonlySet<number>,
  drilled: boolean,
): Row {
  const { near, nearestCounts, circlesThatWouldDo } = answer;
  const [best] = near;
  return {
    anchor: anchorOf(section, divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords[section].mark, reversed: true },
      stepCell(divisions),
      { text: nearestCounts.length === 0 ? nothing : listed(nearestCounts) },
      ...ways.map((way) => ({ text: worstOf(way.find(near)) })),
      ...(tables.size === 0 ? [] : [tableCell(divisions, tables)]),
      ...(drilled ? [{ text: circlesThatWouldDo.length === 0 ? nothing : circlesThatWouldDo.join(", ") }] : []),
    ],
    ...(best?.moves === "equal" ? { lines: [`near move ${nearHow(best)}`] } : {}),
  };
}

function tableCell(divisions: number, tables: ReadonlySet<number>): Cell {
  const anchor = anchorOf("degrees", divisions);
  return tables.has(divisions) ? { text: `page {page:${anchor}}`, link: anchor } : { text: nothing };
}
