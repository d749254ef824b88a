import { getDocument, OPS } from "./pdf-reader.ts";

/** A piece of text as it stands on a page: edges from the left, baseline from the top, in points. */
export interface Piece {
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly text: string;
}

/** Opens a PDF with a reader that shares no code with the writer. */
export async function openPdf(bytes: Uint8Array) {
  return getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
}

/** The text of each page, piece by piece as it was set: what stands close together stays apart. */
export async function piecesOf(bytes: Uint8Array): Promise<readonly (readonly Piece[])[]> {
  const document = await openPdf(bytes);
  const pages: (readonly Piece[])[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { height } = page.getViewport({ scale: 1 });
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push(piecesFrom(fnArray, argsArray, height));
    page.cleanup();
  }
  await document.destroy();
  return pages;
}

type Matrix = readonly [number, number, number, number, number, number];

interface Glyph {
  readonly unicode: string;
  /** In thousandths of the size. */
  readonly width: number;
}

/** Follows the operators of a page; each piece is what one showing of text puts there. */
function piecesFrom(codes: readonly number[], given: readonly (readonly unknown[] | null)[], height: number): readonly Piece[] {
  const pieces: Piece[] = [];
  const kept: Matrix[] = [];
  let drawn: Matrix = [1, 0, 0, 1, 0, 0];
  let text: Matrix = drawn;
  let size = 0;
  for (const [index, code] of codes.entries()) {
    const args = given[index] ?? [];
    if (code === OPS.save) kept.push(drawn);
    else if (code === OPS.restore) drawn = kept.pop() ?? drawn;
    else if (code === OPS.transform) drawn = times(drawn, args as unknown as Matrix);
    else if (code === OPS.setTextMatrix) text = matrixFrom(args[0] as ArrayLike<number>);
    else if (code === OPS.setFont) size = Number(args[1]);
    else if (code === OPS.showText) {
      const shown = args[0] as readonly (Glyph | number)[];
      const [, , , , left, up] = times(drawn, text);
      const glyphs = shown.filter((each): each is Glyph => typeof each !== "number");
      const drawnBack = shown.reduce((sum: number, each) => sum + (typeof each === "number" ? each : 0), 0);
      const width = ((glyphs.reduce((sum, each) => sum + each.width, 0) - drawnBack) * size) / 1000;
      // Fractions are set with a slash of their own.
      const said = glyphs
        .map(({ unicode }) => unicode)
        .join("")
        .replaceAll("⁄", "/");
      if (said.trim() !== "") pieces.push({ left, right: left + width, y: height - up, text: said });
    }
  }
  return pieces;
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}

function matrixFrom(values: ArrayLike<number>): Matrix {
  return [values[0] ?? 1, values[1] ?? 0, values[2] ?? 0, values[3] ?? 1, values[4] ?? 0, values[5] ?? 0];
}

/** Lines of a page, each from left to right, its pieces parted by `|`. */
export function linesOf(pieces: readonly Piece[]): readonly string[] {
  const lines = new Map<number, Piece[]>();
  for (const piece of pieces) {
    const y = Math.round(piece.y * 2);
    lines.set(y, [...(lines.get(y) ?? []), piece]);
  }
  return [...lines]
    .sort(([a], [b]) => a - b)
    .map(([, line]) =>
      line
        .sort((a, b) => a.left - b.left)
        .map(({ text }) => text)
        .join("|"),
    );
}

const names = new Map<number, string>(Object.entries(OPS).map(([name, code]) => [code as number, name]));

/** The names of drawing operators. */
export function operators(codes: readonly number[]): readonly string[] {
  return codes.map((code) => names.get(code) ?? "");
}
