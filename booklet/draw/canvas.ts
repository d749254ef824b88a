import type { BandMark, DotsMark, GroupMark, LinkMark, RuleMark, ShapeMark, Style, TextMark } from "../layout/marks.ts";
import { bytesOf } from "./bytes.ts";
import { showOn } from "./show.ts";
import type { Structure } from "./structure.ts";
import type { TypeFiles, Words } from "./type.ts";

/** An entry in the outline that viewers show. */
export interface Bookmark {
  readonly title: string;
  /** From 1. */
  readonly page: number;
  readonly within?: readonly Bookmark[];
}

/** A PDF being drawn. */
export interface Canvas {
  page(width: number, height: number): void;
  /** Draws with everything shifted, and nothing outside the size given. */
  shifted(x: number, y: number, width: number, height: number, draw: () => void): void;
  text(mark: TextMark): void;
  rule(mark: RuleMark): void;
  band(mark: BandMark): void;
  shape(mark: ShapeMark): void;
  dots(mark: DotsMark): void;
  anchor(name: string, y: number): void;
  link(mark: LinkMark): void;
  /** Draws what is one thing for a reader; in an untagged file, just draws it. */
  group(mark: GroupMark, draw: () => void): void;
  /** Draws what a reader need not be told of. */
  decoration(draw: () => void): void;
  bookmarks(entries: readonly Bookmark[]): void;
  labels(labels: readonly string[]): void;
  /** Asks the printer to leave the size as it is. */
  printTrue(): void;
  /** Asks the printer for both sides, turned over the short edge, at true size. */
  printFolded(): void;
  end(): Promise<Uint8Array>;
}

/** The parts of pdfkit in use that its published types lack. */
interface Untyped {
  _root: { data: Record<string, unknown> };
  ref(data: unknown): { end(): void };
}

/** A canvas on a document of pdfkit. */
export function canvasOn(document: PDFKit.PDFDocument, paths: TypeFiles, words: Words, structure: Structure | null): Canvas {
  const written = bytesOf(document);
  const show = showOn(document, paths, words);
  // Ink stays what it is until a page begins, or what was shifted ends: most is black, and need not be said again.
  let [filling, drawing]: [number | null, number | null] = [null, null];
  const forgetInk = () => {
    filling = null;
    drawing = null;
  };
  const fillWith = (value: number) => {
    if (value === filling) return;
    document.addContent(`${rounded(value)} g`);
    filling = value;
  };
  const drawWith = (value: number) => {
    if (value === drawing) return;
    document.addContent(`${rounded(value)} G`);
    drawing = value;
  };
  const printWith = (wishes: Readonly<Record<string, string>>) => {
    const { _root } = document as unknown as Untyped;
    const preferences = _root.data.ViewerPreferences as { data: Record<string, unknown> };
    Object.assign(preferences.data, wishes);
  };
  return {
    page(width, height) {
      document.addPage({ size: [width, height], margin: 0 });
      forgetInk();
    },
    shifted(x, y, width, height, draw) {
      document.save().translate(rounded(x), rounded(y)).rect(0, 0, width, height).clip();
      draw();
      document.restore();
      forgetInk();
    },
    text({ x, y, text, weight, size, grey: shade = 0 }: TextMark & Style) {
      fillWith(shade);
      show({ x: rounded(x), y: rounded(y), size, weight }, structure?.said(text) ?? text);
    },
    rule({ from, to, width, grey: shade = 0 }) {
      drawWith(shade);
      const [left, top, right, bottom] = [...from, ...to].map(rounded);
      document.addContent(`${rounded(width)} w ${left} ${top} m ${right} ${bottom} l S`);
    },
    band({ x, y, width, height, grey: shade }) {
      fillWith(shade);
      document.addContent(`${rounded(x)} ${rounded(y)} ${rounded(width)} ${rounded(height)} re f`);
    },
    shape({ path, fill, stroke }) {
      if (fill !== undefined) fillWith(fill);
      if (stroke) {
        drawWith(stroke.grey);
        document.lineWidth(stroke.width);
      }
      document.path(path);
      if (fill !== undefined && stroke) document.fillAndStroke();
      else if (fill !== undefined) document.fill();
      else document.stroke();
    },
    // A stroke of no length with round ends is a disc: a seventh of the bytes of as many drawn circles.
    dots({ at, diameter, grey: shade }) {
      drawWith(shade);
      const discs = at.map(([x, y]) => `${rounded(x)} ${rounded(y)} m ${rounded(x)} ${rounded(y)} l`).join(" ");
      document.addContent(`1 J ${rounded(diameter)} w ${discs} S 0 J`);
    },
    anchor: (name, y) => void document.addNamedDestination(name, "XYZ", null, rounded(y), null),
    link: ({ x, y, width, height, to, says }) => {
      const place = [rounded(x), rounded(y), rounded(width), rounded(height)] as const;
      if (structure === null) document.annotate(...place, linkTo(to));
      else structure.link((options) => document.annotate(...place, { ...linkTo(to), ...options }), says);
    },
    group(mark, draw) {
      if (structure === null) draw();
      else structure.group(mark, draw);
    },
    decoration(draw) {
      if (structure === null) draw();
      else structure.artifact(draw);
    },
    bookmarks(entries) {
      for (const { title, page, within = [] } of entries) {
        const item = document.outline.addItem(title, place(page));
        for (const inner of within) item.addItem(inner.title, place(inner.page));
      }
    },
    labels(labels) {
      const { _root, ref } = document as unknown as Untyped;
      const tree = ref.call(document, { Nums: labels.flatMap((label, index) => [index, { P: new String(label) }]) });
      _root.data.PageLabels = tree;
      tree.end();
    },
    printTrue: () => printWith({ PrintScaling: "None" }),
    printFolded: () => printWith({ PrintScaling: "None", Duplex: "DuplexFlipShortEdge" }),
    end() {
      structure?.end();
      document.end();
      return written;
    },
  };
}

/** A link by its destination alone: pdfkit's own makes an object more for each. */
function linkTo(name: string): PDFKit.Mixins.AnnotationOption {
  return { Subtype: "Link", Dest: name } as PDFKit.Mixins.AnnotationOption;
}

/** pdfkit takes the whole page into view only when told so. */
function place(page: number): object {
  return { expanded: false, fit: true, pageNumber: page - 1 };
}

/** Three decimals of a point: the last bits of sines differ between engines and must not reach the file. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
