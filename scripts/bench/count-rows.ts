import { bookOf } from "../../booklet/content/book.ts";
import type { PartId } from "../../booklet/content/parts.ts";
import type { Row, TableBlock } from "../../booklet/content/table-block.ts";
import { editionOf } from "../../booklet/edition.ts";
import type { Head } from "../../src/index.ts";

/** The parts of a book with a row for each count. */
export const countParts: readonly PartId[] = ["simple", "geared", "compound", "impossible"];

/** A table of text alone. */
export interface PlainTable {
  readonly heads: readonly string[];
  /** A row with a cell for each head, or one line of small text under the row before. */
  readonly rows: readonly (readonly string[] | string)[];
}

/** What the book says of counts 2 to 400, as text to be set by others. */
export function countTables(head: Head): readonly PlainTable[] {
  const contents = { from: 2, to: 400, parts: countParts, degreeTables: null };
  return bookOf(head, editionOf(head, contents), contents)
    .parts.flatMap(({ blocks }) => blocks.filter((block): block is TableBlock => block.kind === "table"))
    .map(({ columns, rows }) => ({
      heads: columns.map((column) => column.head.replace("\n", " ")),
      rows: rows.flatMap((row) => [cellsOf(row, columns.length), ...(row.notes ?? [])]),
    }));
}

function cellsOf({ cells, rest }: Row, columns: number): readonly string[] {
  const texts = [...cells, ...(rest ? [rest] : [])].map(({ text }) => text.replace(/\{page:\w+\}/, "00"));
  return [...texts, ...Array<string>(columns - texts.length).fill("")];
}

/** As a LaTeX document: a longtable for each. */
export function inLatex(tables: readonly PlainTable[]): string {
  const set = tables.map(({ heads, rows }) =>
    [
      `\\begin{longtable}{${"r".repeat(heads.length)}}`,
      `\\toprule ${latexRow(heads)} \\midrule \\endhead`,
      ...rows.map((row) =>
        typeof row === "string" ? `&\\multicolumn{${heads.length - 1}}{l}{${latex(row)}}\\\\` : latexRow(row),
      ),
      "\\bottomrule\n\\end{longtable}",
    ].join("\n"),
  );
  return [
    "\\documentclass[a4paper]{article}",
    "\\usepackage[landscape,margin=12mm]{geometry}",
    "\\usepackage{longtable,booktabs,textcomp}",
    "\\setlength{\\tabcolsep}{3pt}",
    "\\begin{document}\\scriptsize",
    ...set,
    "\\end{document}\n",
  ].join("\n");
}

const latexSigns: Readonly<Record<string, string>> = {
  ...{ "°": "\\textdegree{}", "′": "$'$", "″": "$''$", "≈": "$\\approx$", "−": "$-$", "×": "$\\times$" },
  ...{ "–": "--", "·": "\\textperiodcentered{}", "±": "$\\pm$", "’": "'" },
};

function latex(text: string): string {
  return text.replace(/[°′″≈−×–·±’]/g, (sign) => latexSigns[sign] ?? sign);
}

function latexRow(cells: readonly string[]): string {
  return `${cells.map(latex).join("&")}\\\\`;
}

/** As values parted by commas, with the mark that says that it is UTF-8. */
export function inCsv(tables: readonly PlainTable[]): string {
  const rows = tables.flatMap(({ heads, rows }) => [heads, ...rows.map((row) => (typeof row === "string" ? ["", row] : row))]);
  return `\uFEFF${rows.map((row) => row.map((cell) => JSON.stringify(cell)).join(",")).join("\n")}\n`;
}

/** As tables of HTML, their heads repeated on each page. */
export function inHtml(tables: readonly PlainTable[]): string {
  const set = tables.map(({ heads, rows }) => {
    const lines = rows.map((row) =>
      typeof row === "string"
        ? `<tr><td></td><td colspan="${heads.length - 1}">${row}</td></tr>`
        : `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`,
    );
    return `<table><thead><tr>${heads.map((head) => `<th>${head}</th>`).join("")}</tr></thead><tbody>${lines.join("\n")}</tbody></table>`;
  });
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Counts</title></head><body>${set.join("\n")}</body></html>\n`;
}
