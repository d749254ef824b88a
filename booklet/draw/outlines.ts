import type { Style, Weight } from "../layout/marks.ts";
import type { TypeFiles } from "./type.ts";

/** The shapes of a line of text as SVG path data, from its left edge on the baseline. */
export type Outlines = (text: string, style: Pick<Style, "weight" | "size">) => string;

/** The part of pdfkit and of its fonts in use that published types lack. */
interface Untyped {
  _font: { readonly font: Font };
}

interface Font {
  readonly unitsPerEm: number;
  layout(text: string): {
    readonly glyphs: readonly { readonly path: Path }[];
    readonly positions: readonly { readonly xAdvance: number }[];
  };
}

interface Path {
  scale(x: number, y: number): Path;
  translate(x: number, y: number): Path;
  toSVG(): string;
}

/**
 * Draws letters as shapes, with the fonts of a document that is never written, and that sets no words: a shape is put
 * together from those of other letters by their numbers alone, and a font that has met a letter so knows no more what it
 * says, so that a text set with it could not be read from the file.
 *
 * @param open - Opens the document, when the first letter is drawn.
 */
export function outlinesWith(open: () => PDFKit.PDFDocument, paths: TypeFiles): Outlines {
  let scratch: PDFKit.PDFDocument | undefined;
  const fontOf = (weight: Weight) => {
    scratch ??= open();
    return (scratch.font(paths[weight]) as unknown as Untyped)._font.font;
  };
  return (text, { weight, size }) => {
    const font = fontOf(weight);
    const scale = size / font.unitsPerEm;
    const { glyphs, positions } = font.layout(text);
    let x = 0;
    return glyphs
      .map(({ path }, index) => {
        const shape = path.scale(scale, -scale).translate(x, 0).toSVG();
        x += (positions[index]?.xAdvance ?? 0) * scale;
        return shape;
      })
      .join("");
  };
}
