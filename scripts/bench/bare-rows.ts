import { createWriteStream, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import PDFDocument from "pdfkit";
import type { PlainTable } from "./count-rows.ts";

// A program of its own, so that a whole process is timed: tables as JSON in, a PDF out, every cell by
// a call to draw text, in columns of one width, with nothing measured, banded, repeated or linked.
const [tables = "", out = ""] = process.argv.slice(2);
const font = createRequire(import.meta.url).resolve(
  "@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf",
);
const [margin, line] = [36, 14];
const document = new PDFDocument({ size: "A4", margin, font });
document.fontSize(9);
document.pipe(createWriteStream(out));
const { width, height } = document.page;
let y = margin;
for (const { heads, rows } of JSON.parse(readFileSync(tables, "utf8")) as readonly PlainTable[]) {
  const column = (width - 2 * margin) / heads.length;
  for (const row of [heads, ...rows]) {
    if (y > height - margin - line) {
      document.addPage();
      y = margin;
    }
    const cells = typeof row === "string" ? ["", row] : row;
    for (const [index, cell] of cells.entries()) document.text(cell, margin + index * column, y, { lineBreak: false });
    y += line;
  }
}
document.end();
