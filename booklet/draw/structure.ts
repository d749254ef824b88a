import { boxOf, flattened, type GroupMark, type Role } from "../layout/marks.ts";

/** The order of reading in a tagged file: pdfkit's structure elements, opened and ended in step with the drawing. */
export interface Structure {
  /** Draws a group as an element, or as more of the element before it. */
  group(mark: GroupMark, draw: () => void): void;
  artifact(draw: () => void): void;
  /** Text as it is to be drawn: within one thing a space parts it from what is read next. */
  said(text: string): string;
  /** Puts a link where it is read. */
  link(place: (options: object) => void, says: string): void;
  end(): void;
}

interface Element {
  add(child: unknown): void;
  end(): void;
  readonly dictionary: { readonly data: Record<string, unknown> };
}

/** The structure of pdfkit, which its published types know only in part. */
interface Untyped {
  struct(role: string, options?: object, children?: unknown): Element;
  addStructure(element: Element): void;
  markStructureContent(role: string): unknown;
  markContent(tag: string, options: object): void;
  endMarkedContent(): void;
}

const containers: readonly Role[] = ["Table", "TR"];

/** Starts the structure of a document. */
export function structureOf(pdf: PDFKit.PDFDocument): Structure {
  const document = pdf as unknown as Untyped;
  const root = document.struct("Document");
  document.addStructure(root);
  const parents: Element[] = [root];
  // A paragraph stays open, as its next line may be on the next page.
  let last: Element | null = null;
  let inLeaf = false;

  const settle = () => {
    last?.end();
    last = null;
  };
  const container = (mark: GroupMark, draw: () => void) => {
    settle();
    const element = document.struct(mark.role);
    parents.at(-1)?.add(element);
    parents.push(element);
    draw();
    settle();
    parents.pop();
    element.end();
  };
  const leaf = (mark: GroupMark, draw: () => void) => {
    const content = document.markStructureContent(mark.role);
    inLeaf = true;
    draw();
    inLeaf = false;
    document.endMarkedContent();
    if (mark.continues !== true || last === null) {
      settle();
      last = document.struct(mark.role, optionsOf(mark));
      if (mark.columns !== undefined && mark.columns > 1)
        last.dictionary.data.A = {
          O: "Table",
          ColSpan: mark.columns,
          ...(mark.scope === undefined ? {} : { Scope: mark.scope }),
        };
      parents.at(-1)?.add(last);
    }
    last.add(content);
  };

  return {
    group(mark, draw) {
      if (inLeaf) draw();
      else if (containers.includes(mark.role)) container(mark, draw);
      else leaf(mark, draw);
    },
    artifact(draw) {
      if (inLeaf) {
        draw();
        return;
      }
      document.markContent("Artifact", { type: "Layout" });
      draw();
      document.endMarkedContent();
    },
    said: (text) => (inLeaf ? `${text} ` : text),
    link(place, says) {
      const element = document.struct("Link");
      // The reference to the page is taken when the element ends, so it must end on this page.
      (last ?? parents.at(-1))?.add(element);
      place({ structParent: element, Contents: new String(says) });
      element.end();
    },
    end() {
      settle();
      root.end();
    },
  };
}

function optionsOf(mark: GroupMark): object {
  if (mark.role === "Figure") return { alt: mark.alt ?? "", bbox: boxAround(mark), placement: "Block" };
  return mark.scope === undefined ? {} : { scope: mark.scope };
}

function boxAround({ marks }: GroupMark): readonly number[] {
  const boxes = [...flattened(marks)].flatMap((mark) => {
    const box = boxOf(mark);
    return box === null ? [] : [box];
  });
  const side = (at: 0 | 1 | 2 | 3, pick: (...values: number[]) => number) =>
    Math.round(pick(...boxes.map((box) => box[at])) * 1000) / 1000;
  return [side(0, Math.min), side(1, Math.min), side(2, Math.max), side(3, Math.max)];
}
