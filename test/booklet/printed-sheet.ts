import { linesOf, type Piece, piecesOf } from "./read-pdf.ts";

/** One row of the table of places: what is printed under each head, `THEN AT turns` or `hole of 15`. */
export type PrintedPlace = Readonly<Record<string, string>>;

/** A large figure with what stands above and under it. */
export interface PrintedFigure {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
}

/** A job or a repair as its sheet prints it, read from the pages alone. */
export interface PrintedSheet {
  readonly figures: readonly PrintedFigure[];
  /** All lines of text, those of a list with its term before `|`; and by themselves those of each page. */
  readonly lines: readonly string[];
  readonly pages: readonly (readonly string[])[];
  readonly places: readonly PrintedPlace[];
}

/** Reads the sheet of a job, or with `space` that of a repair. */
export async function readSheet(
  bytes: Uint8Array,
  key: "tooth" | "space" | "drill" | "line" | "flat" = "tooth",
): Promise<PrintedSheet> {
  const pages = await piecesOf(bytes);
  const byPage = pages.map(linesOf);
  const lines = byPage.flat();
  return { figures: figuresIn(lines), lines, pages: byPage, places: pages.flatMap((page) => placesOn(page, key)) };
}

/** What a list says of a term, its lines in one; empty where it says nothing. */
export function said({ lines }: Pick<PrintedSheet, "lines">, term: string): string {
  const first = lines.findIndex((line) => line.startsWith(`${term}|`));
  if (first < 0) return "";
  const more = lines.slice(first + 1);
  const end = more.findIndex((line) => line.includes("|") || /^(?:[A-Z]|\d+$)/.test(line));
  return [lines[first]?.slice(term.length + 1), ...more.slice(0, Math.max(end, 0))].join(" ");
}

function figuresIn(lines: readonly string[]): readonly PrintedFigure[] {
  const at = lines.findIndex((line) => /^(?:CIRCLE|TURNS|SET BY)(?:\||$)/.test(line));
  const [heads = [], figures = [], under = []] = lines.slice(at, at + 3).map((line) => line.split("|"));
  return heads.map((head, index) => ({ head, figure: figures[index] ?? "", under: under[index] ?? "" }));
}

/** A column by the right edge that its heads and cells are set to. */
export interface PrintedColumn {
  readonly name: string;
  readonly right: number;
}

/** At least: a box to tick with its margins, before the first text of a row. */
const boxWidth = 20;

/** The tables that stand side by side on a page, one after the other. */
function placesOn(page: readonly Piece[], key: string): readonly PrintedPlace[] {
  const keys = page
    .filter((piece) => piece.text === key && page.some((other) => other !== piece && Math.abs(other.y - piece.y) < 1))
    .sort((a, b) => a.left - b.left);
  return keys.flatMap((first, index) => {
    const left = first.left - boxWidth;
    const right = (keys[index + 1]?.left ?? Number.POSITIVE_INFINITY) - boxWidth;
    const inside = page.filter((piece) => piece.left >= left && piece.right <= right && piece.y > first.y - 40);
    return rowsUnder(inside, columnsOf(inside, first), first.y, key);
  });
}

/** Heads are set to the right edge of their column, their last lines level; what stands above several columns parts equal names. */
function columnsOf(pieces: readonly Piece[], { y }: Piece): readonly PrintedColumn[] {
  const near = (a: number, b: number) => Math.abs(a - b) < 1;
  const bottom = pieces.filter((piece) => near(piece.y, y)).sort((a, b) => a.right - b.right);
  const above = pieces.filter((piece) => piece.y < y - 1);
  const groups = above.filter(({ text }) => text === text.toUpperCase());
  return bottom.map(({ right, text }) => {
    const lines = above.filter((piece) => near(piece.right, right) && !groups.includes(piece)).sort((a, b) => a.y - b.y);
    const group = groups.filter((piece) => (piece.left + piece.right) / 2 > right - 12).sort((a, b) => a.left - b.left)[0];
    const head = [...lines.map((piece) => piece.text), text].join(" ");
    return { right, name: head === "turns" && group ? `${group.text} ${head}` : head };
  });
}

function rowsUnder(pieces: readonly Piece[], columns: readonly PrintedColumn[], top: number, key: string): PrintedPlace[] {
  const lines = new Map<number, Piece[]>();
  for (const piece of pieces) {
    if (piece.y <= top + 1) continue;
    const y = Math.round(piece.y * 2);
    lines.set(y, [...(lines.get(y) ?? []), piece]);
  }
  const rows: PrintedPlace[] = [];
  for (const [, line] of [...lines].sort(([a], [b]) => a - b)) {
    const row = cellsOf(line, columns);
    const last = rows.pop();
    if (last) rows.push(/^\d+$/.test(row[key] ?? "") ? last : { ...last, ...saidUnder(line) });
    if (/^\d+$/.test(row[key] ?? "")) rows.push(row);
  }
  return rows;
}

/** What has no column on narrow paper, said under the row: `true angle 3° 42′ 40.8″  ·  ring 4°`. */
function saidUnder(line: readonly Piece[]): PrintedPlace {
  const said = line
    .map(({ text }) => text)
    .join(" ")
    .split("·");
  return Object.fromEntries(
    said.flatMap((each) => {
      const found = /^(true angle|ring|off by) (.+)$/.exec(each.trim());
      return found ? [[found[1], found[2]]] : [];
    }),
  );
}

/** The cells of a line by their right edges. */
export function cellsOf(line: readonly Piece[], columns: readonly PrintedColumn[]): PrintedPlace {
  return Object.fromEntries(
    columns.flatMap(({ name, right }) => {
      const cell = line.find((piece) => Math.abs(piece.right - right) < 1);
      return cell === undefined ? [] : [[name, cell.text]];
    }),
  );
}
