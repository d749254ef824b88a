import type { Head } from "../../src/index.ts";
import { facesPrinted } from "./plate-named.ts";
import { linesOf, type Piece } from "./read-pdf.ts";

/** The lines of a page, one for each row, with all that stands under it at its end. */
export function rowLines(page: readonly Piece[], head: Head): readonly string[] {
  return withWholeNotes(withLineUnder(linesOf(page).flatMap(sideBySide)), head);
}

/** Counts that are not possible may stand several on a line, each with its mark. */
function sideBySide(line: string): readonly string[] {
  return line.split(/\|(?=\d+\|×\|)/);
}

/** Puts the small line under a row at its end. */
function withLineUnder(lines: readonly string[]): readonly string[] {
  const found: string[] = [];
  for (const line of lines) {
    if (/^(?:one division|plate turns|start hole|without the gears|check) /.test(line))
      found.push(`${found.pop()}|${line.replace(/\s+·(?:\s+|$)/g, " · ")}`);
    // What does not fit the line goes on below, at one of the points between its parts.
    else if (/\|one division /.test(found.at(-1) ?? "") && /^(?:turns|ring) /.test(line))
      found.push(`${found.pop()?.trimEnd()} · ${line}`);
    else found.push(line);
  }
  return found;
}

/** Puts together a note that goes on to another line: it ends with the name of a plate and nothing after it. */
function withWholeNotes(lines: readonly string[], head: Head): readonly string[] {
  const faces = facesPrinted(head);
  const isWhole = (note: string) => faces.some(({ printed }) => note.endsWith(` on plate ${printed}`));
  const found: string[] = [];
  for (const line of lines) {
    const last = found.at(-1) ?? "";
    if (last.startsWith("spaces also ") && !isWhole(last) && !line.includes("|")) found[found.length - 1] = `${last} ${line}`;
    else found.push(line);
  }
  return found;
}
