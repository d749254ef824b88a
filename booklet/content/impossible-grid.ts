import { type NearSetting, type Way, wayOf } from "../../src/index.ts";
import { arcUpTo } from "../../src/words/index.ts";
import type { Block } from "./blocks.ts";
import type { CountNotPossible } from "./head-counts.ts";
import { type Desk, notPossible } from "./parts.ts";
import { type Run, runsOf } from "./runs.ts";
import { sectionWords } from "./sections.ts";
import type { SeriesBlock } from "./series-block.ts";
import { countColumns, nothing } from "./setting-cells.ts";
import type { Column, Row, TableBlock } from "./table-block.ts";
import { anchorOf } from "./words.ts";

/** Fewer than this make a page or two in full. */
const fewestInGrid = 80;

/** Whether most counts of a book are not possible: they are then told in few words, many to a page. */
export function mostImpossible(desk: Desk): boolean {
  const many = notPossible(desk).length;
  return many >= fewestInGrid && 2 * many > desk.counts.length;
}

/** What the columns of the grid mean. */
export function gridExplained(counts: readonly CountNotPossible[]): string {
  const byMoves = counts.some(({ answer: { near } }) => near[0]?.moves === "equal");
  const best = byMoves
    ? "the best way there is, be it a move made over and over, whose error grows, or each position by itself by the nearest hole or mark"
    : "the best way there is, each position by itself from one zero";
  return `Nearest done: the counts before and after it that can be done. Off by, and by what: the worst position by ${best}. The job sheet of a count prints every position with its error.${counts.some(isBare) ? nothingNear : ""}`;
}

const nothingNear =
  " Under the rest stand the counts of which every way would leave some position nearer to the next place than to its own.";

/** Counts that are not possible close together; under those that something comes near, from first to last, those that nothing does. */
export function impossibleGrid(counts: readonly CountNotPossible[]): readonly Block[] {
  const near = counts.filter((count) => !isBare(count));
  const bare = counts.filter(isBare);
  return [...(near.length === 0 ? [] : [nearGrid(near)]), ...(bare.length === 0 ? [] : [bareTable(bare)])];
}

/** Whether nothing is to be said of a count but what is near it that can be done. */
function isBare({ answer: { near } }: CountNotPossible): boolean {
  return near.length === 0;
}

const nearestColumn: Column = { head: "nearest\ndone", align: "right", size: "fine" };

/** What is near each count that is possible, and the best of what nearly does it. */
function nearGrid(counts: readonly CountNotPossible[]): SeriesBlock {
  return {
    kind: "series",
    summary: "Counts that cannot be done",
    toKnow: "",
    columns: [
      ...countColumns,
      nearestColumn,
      { head: "off by", align: "right", size: "fine" },
      { head: "by", align: "right", size: "fine" },
    ],
    tables: [{ rows: counts.map(gridRow), headwords: true }],
  };
}

/** The best way in a word: a move made over and over, or each place set by itself. */
const ways: Readonly<Record<Way["by"], string>> = {
  moves: "move",
  "nearest-hole": "hole",
  "both-cranks": "cranks",
  "nearest-direct": "place",
  dial: "dial",
  ring: "ring",
};

function gridRow({ divisions, answer: { near, nearestCounts } }: CountNotPossible): Row {
  const [best] = near;
  return {
    anchor: anchorOf("impossible", divisions),
    cells: [
      { text: String(divisions) },
      { text: sectionWords.impossible.mark, reversed: true },
      { text: nearestDone(nearestCounts) },
      { text: worstOf(best) },
      { text: best === undefined ? nothing : ways[wayOf(best).by] },
    ],
  };
}

/** The worst error of a near setting; nothing where a position would be nearer to its neighbour's place. */
export function worstOf(near: NearSetting | undefined): string {
  if (near === undefined) return nothing;
  return near.worstArcSeconds === 0 ? "exact" : arcUpTo(near.worstArcSeconds);
}

function nearestDone(counts: readonly number[]): string {
  return counts.length === 0 ? nothing : counts.join(", ");
}

/** Counts that nothing comes near: those on end of which the same is to be said stand in one row. */
function bareTable(counts: readonly CountNotPossible[]): TableBlock {
  return {
    kind: "table",
    headwords: true,
    folds: true,
    title: { text: "Counts that nothing comes near", anchor: "nothingnear" },
    summary: "Counts that nothing comes near",
    columns: [...countColumns, nearestColumn],
    rows: runsOf(counts, goesOn).map(bareRow),
  };
}

/** Whether a count comes right after others of which the same is to be said. */
function goesOn([first, ...others]: Run<CountNotPossible>, next: CountNotPossible): boolean {
  const last = others.at(-1) ?? first;
  const [before, here] = [last, next].map(({ answer }) => nearestDone(answer.nearestCounts));
  return next.divisions === last.divisions + 1 && before === here;
}

function bareRow([{ divisions, answer }, ...others]: Run<CountNotPossible>): Row {
  const last = others.at(-1);
  return {
    anchor: anchorOf("impossible", divisions),
    also: others.map((other) => anchorOf("impossible", other.divisions)),
    cells: [
      { text: last === undefined ? String(divisions) : `${divisions}–${last.divisions}` },
      { text: sectionWords.impossible.mark, reversed: true },
      { text: nearestDone(answer.nearestCounts) },
    ],
  };
}
