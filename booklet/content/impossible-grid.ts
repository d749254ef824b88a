import { type Way, wayOf } from "../../src/index.ts";
import { arcUpTo } from "../../src/words/index.ts";
import type { CountNotPossible } from "./head-counts.ts";
import { type Desk, notPossible } from "./parts.ts";
import { sectionWords } from "./sections.ts";
import type { SeriesBlock } from "./series-block.ts";
import { countColumns, nothing } from "./setting-cells.ts";
import type { Row } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Fewer than this make a page or two in full. */
const fewestInGrid = 80;

/** Whether most counts of a book are not possible: they are then told in few words, many to a page. */
export function mostImpossible(desk: Desk): boolean {
  const many = notPossible(desk).length;
  return many >= fewestInGrid && 2 * many > desk.counts.length;
}

/** What the columns of the grid mean. */
export function gridExplained(byMoves: boolean): string {
  const best = byMoves
    ? "the best way there is, be it a move made over and over, whose error grows, or each position by itself by the nearest hole or mark"
    : "the best way there is, each position by itself from one zero";
  return `Nearest done: the counts before and after it that can be done. Off by, and by what: the worst position by ${best}. The job sheet of a count prints every position with its error.`;
}

/** Counts that are not possible close together: what is near each of them that is, and the best of what nearly does it. */
export function impossibleGrid(counts: readonly CountNotPossible[], onRing: ReadonlySet<number>): SeriesBlock {
  return {
    kind: "series",
    summary: "Counts that cannot be done",
    toKnow: "",
    columns: [
      ...countColumns,
      { head: "nearest\ndone", align: "right", size: "fine" },
      { head: "off by", align: "right", size: "fine" },
      { head: "by", align: "right", size: "fine" },
    ],
    tables: [{ rows: counts.map((count) => gridRow(count, onRing.has(count.divisions))), headwords: true }],
  };
}

/** The best way in a word: a move made over and over, or each place set by itself. */
const ways: Readonly<Record<Way["by"], string>> = { moves: "move", "nearest-hole": "hole", dial: "dial", ring: "ring" };

function gridRow({ divisions, answer: { near, nearestCounts } }: CountNotPossible, isOnRing: boolean): Row {
  const [best] = near;
  const off = best === undefined ? [nothing, nothing] : [arcUpTo(best.worstArcSeconds), ways[wayOf(best).by]];
  const [size, by] = isOnRing ? ["exact", ways.ring] : off;
  return {
    anchor: anchorOf("impossible", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.impossible.mark, reversed: true },
      { text: nearestCounts.length === 0 ? nothing : nearestCounts.join(", ") },
      { text: size ?? nothing },
      { text: by ?? nothing },
    ],
  };
}
