import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

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

/** The text of each page, piece by piece. */
export async function piecesOf(bytes: Uint8Array): Promise<readonly (readonly Piece[])[]> {
  const document = await openPdf(bytes);
  const pages: Piece[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent({ disableNormalization: true });
    pages.push(
      items.flatMap((item) => {
        if (!("str" in item) || item.str.trim() === "") return [];
        const [left, up] = [item.transform[4] as number, item.transform[5] as number];
        // Fractions are set with a slash of their own.
        return [{ left, right: left + item.width, y: height - up, text: item.str.replaceAll("⁄", "/") }];
      }),
    );
  }
  await document.destroy();
  return pages;
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
