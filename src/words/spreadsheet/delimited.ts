import type { TextColumn } from "./columns.ts";

/** What a spreadsheet would work out instead of showing. */
const formula = /^[=+\-@\t\r]/;
const number = /^-?\d+(?:\.\d+)?$/;

/**
 * A table as CSV by RFC 4180: commas, lines that end in CR LF, quotes where a cell needs them, the heads
 * as its first line. A cell that a spreadsheet would take for a formula, such as the name `=1+1`, gets an
 * apostrophe before it.
 *
 * @example
 * ```ts
 * csvOf([{ head: "plate", cells: ["1", "=1+1"] }]); // "plate\r\n1\r\n'=1+1\r\n"
 * ```
 */
export function csvOf(columns: readonly TextColumn[]): string {
  return linesOf(columns)
    .map((cells) => `${cells.map(csvCell).join(",")}\r\n`)
    .join("");
}

function csvCell(cell: string): string {
  const text = formula.test(cell) && !number.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A table in Markdown, between upright strokes; columns of numbers stand to the right.
 *
 * @example
 * ```ts
 * markdownOf([{ head: "turns", cells: ["4"] }]); // "| turns |\n| ---: |\n| 4 |\n"
 * ```
 */
export function markdownOf(columns: readonly TextColumn[]): string {
  const [heads = [], ...rows] = linesOf(columns).map((cells) => cells.map(markdownCell));
  const ruled = columns.map(({ cells }) => (cells.every((cell) => cell === "" || number.test(cell)) ? "---:" : "---"));
  return [heads, ruled, ...rows].map((cells) => `| ${cells.join(" | ")} |\n`).join("");
}

function markdownCell(cell: string): string {
  return cell.replace(/[\\|<>*_`[\]]/g, "\\$&").replace(/\s+/g, " ");
}

/** Line by line, the heads first. */
function linesOf(columns: readonly TextColumn[]): readonly (readonly string[])[] {
  const length = columns.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const rows = Array.from({ length }, (_, at) => columns.map(({ cells }) => cells[at] ?? ""));
  return [columns.map(({ head }) => head), ...rows];
}
