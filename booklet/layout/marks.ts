/**
 * What is put on a page, as plain data: everything is measured and placed before anything is drawn.
 *
 * Lengths are in points (1/72 inch), x to the right and y down from the top left corner of the
 * page. Greys run from 0 (black) to 1 (white).
 *
 * @packageDocumentation
 */

/** The weights of type in use. */
export type Weight = "regular" | "semibold" | "bold";

/** How a piece of text looks. */
export interface Style {
  readonly weight: Weight;
  /** In points. */
  readonly size: number;
  readonly grey?: number;
}

/** One piece of text on one line, from its left edge and on its baseline. */
export interface TextMark extends Style {
  readonly kind: "text";
  readonly x: number;
  readonly y: number;
  /** As measured; nothing may be drawn right of it. */
  readonly width: number;
  readonly text: string;
}

/** A straight line. */
export interface RuleMark {
  readonly kind: "rule";
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly width: number;
  readonly grey?: number;
}

/** A filled rectangle. */
export interface BandMark {
  readonly kind: "band";
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly grey: number;
}

/** A shape by its SVG path data. */
export interface ShapeMark {
  readonly kind: "shape";
  readonly path: string;
  readonly fill?: number;
  readonly stroke?: { readonly width: number; readonly grey: number };
  /** The box that holds it: left, top, right, bottom. */
  readonly box: readonly [number, number, number, number];
}

/** Round dots of one size, drawn together: a circle of holes. */
export interface DotsMark {
  readonly kind: "dots";
  readonly at: readonly (readonly [number, number])[];
  readonly diameter: number;
  readonly grey: number;
}

/** A place to go to. */
export interface AnchorMark {
  readonly kind: "anchor";
  /** Lower-case letters, then digits: the order of such names is the same however they are sorted. */
  readonly name: string;
  readonly y: number;
}

/** An area that leads to an anchor. */
export interface LinkMark {
  readonly kind: "link";
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly to: string;
  /** Where it leads, in words. */
  readonly says: string;
}

/** What a group of marks is in the order of reading. */
export type Role = "H1" | "H2" | "P" | "Table" | "TR" | "TH" | "TD" | "Figure";

/** Marks that are one thing for a reader; marks outside any group are decoration. */
export interface GroupMark {
  readonly kind: "group";
  readonly role: Role;
  /** What a head cell is the head of. */
  readonly scope?: "Column" | "Row";
  /** Columns that a cell reaches over; left out, one. */
  readonly columns?: number;
  /** A drawing in words. */
  readonly alt?: string;
  /** Whether it goes on with the group before: the next line of a paragraph. */
  readonly continues?: boolean;
  readonly marks: readonly Mark[];
}

/** Anything on a page. */
export type Mark = TextMark | RuleMark | BandMark | ShapeMark | DotsMark | AnchorMark | LinkMark | GroupMark;

/** One page, ready to draw. */
export interface Page {
  readonly width: number;
  readonly height: number;
  /** What viewers and the page itself call it. */
  readonly label: string;
  /** The rows on it, from first to last, where it holds counts: `51–96`. */
  readonly headwords: string;
  readonly marks: readonly Mark[];
}

/** All marks within marks, groups opened. */
export function* flattened(marks: readonly Mark[]): Generator<Exclude<Mark, GroupMark>> {
  for (const mark of marks) {
    if (mark.kind === "group") yield* flattened(mark.marks);
    else yield mark;
  }
}

/** The box that holds a mark: left, top, right, bottom; null for what is not seen. */
export function boxOf(mark: Exclude<Mark, GroupMark>): readonly [number, number, number, number] | null {
  switch (mark.kind) {
    case "text":
      return [mark.x, mark.y - mark.size * 0.7, mark.x + mark.width, mark.y + mark.size * 0.2];
    case "rule":
      return boxAround([mark.from, mark.to], 0);
    case "band":
      return [mark.x, mark.y, mark.x + mark.width, mark.y + mark.height];
    case "shape":
      return mark.box;
    case "dots":
      return mark.at.length === 0 ? null : boxAround(mark.at, mark.diameter / 2);
    default:
      return null;
  }
}

function boxAround(points: readonly (readonly [number, number])[], beyond: number): readonly [number, number, number, number] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs) - beyond, Math.min(...ys) - beyond, Math.max(...xs) + beyond, Math.max(...ys) + beyond];
}
