import { cellsOf, type PrintedColumn, type PrintedPlace } from "./printed-sheet.ts";
import type { Piece } from "./read-pdf.ts";

/** One of several tables that run through columns side by side, as it stands on the pages. */
export interface PrintedTable {
  /** `53 divisions`; empty where the table has no heading. */
  readonly title: string;
  /** All that is said beside the heading and under it. */
  readonly notes: string;
  readonly rows: readonly PrintedPlace[];
}

/**
 * Reads tables that run through columns, from the pages alone; what goes on in another column is put
 * to what it goes on from.
 *
 * @param key - The head of the first column.
 */
export function printedSeries(pages: readonly (readonly Piece[])[], key: string): readonly PrintedTable[] {
  const tables: { title: string; notes: string; rows: PrintedPlace[] }[] = [];
  for (const part of pages.flatMap((page) => columnsOn(page, key))) {
    for (const { cells, text } of part) {
      const [title] = /^\d+ divisions/.exec(text) ?? [];
      if (title !== undefined) {
        const notes = text.slice(title.length).trim();
        if (notes !== "continued") tables.push({ title, notes, rows: [] });
        else if (tables.at(-1)?.title !== title) throw new Error(`${title} goes on where it was not begun`);
      } else if (/^\d+$/.test(cells[key] ?? "") && !text.startsWith("off by")) {
        if (tables.length === 0) tables.push({ title: "", notes: "", rows: [] });
        tables.at(-1)?.rows.push(cells);
      } else {
        const last = tables.at(-1);
        if (last) last.notes = `${last.notes} ${text}`.trim();
      }
    }
  }
  return tables;
}

interface Line {
  readonly cells: PrintedPlace;
  readonly text: string;
}

/** The lines of each column of a page, from the left column to the right. */
function columnsOn(page: readonly Piece[], key: string): readonly (readonly Line[])[] {
  const firsts = page.filter(({ text }) => text === key).sort((a, b) => a.left - b.left);
  const [top] = firsts;
  if (top === undefined) return [];
  const heads = page.filter(({ y }) => Math.abs(y - top.y) < 1).sort((a, b) => a.left - b.left);
  const foot = Math.max(...page.filter(({ text }) => /^page \d+ of \d+$/.test(text)).map(({ y }) => y)) - 25;
  return firsts.map((first, index) => {
    const right = firsts[index + 1] === undefined ? Number.POSITIVE_INFINITY : (firsts[index + 1] as Piece).left - 2;
    const own = heads.filter((head) => head.left >= first.left - 1 && head.right <= right);
    const columns = own.map((head): PrintedColumn => ({ right: head.right, name: nameOf(head, page) }));
    const inside = page.filter(
      ({ left, right: edge, y }) => left >= first.left - 8 && edge <= right + 8 && y > first.y + 1 && y < foot,
    );
    return linesIn(inside, columns);
  });
}

/** With the lines of the head above its last one. */
function nameOf(head: Piece, page: readonly Piece[]): string {
  const above = page.filter(({ right, y }) => Math.abs(right - head.right) < 1 && y < head.y - 1 && y > head.y - 14);
  return [...above.map(({ text }) => text), head.text].join(" ");
}

function linesIn(pieces: readonly Piece[], columns: readonly PrintedColumn[]): readonly Line[] {
  const lines = new Map<number, Piece[]>();
  for (const piece of pieces) {
    const y = Math.round(piece.y * 2);
    lines.set(y, [...(lines.get(y) ?? []), piece]);
  }
  return [...lines]
    .sort(([a], [b]) => a - b)
    .map(([, line]) => {
      const ordered = line.sort((a, b) => a.left - b.left);
      return { cells: cellsOf(ordered, columns), text: ordered.map(({ text }) => text).join(" ") };
    });
}
