import type { Head, Method, PreparedHead } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import type { CountBy, CountNotPossible, HeadCount } from "./head-counts.ts";
import type { KeyedHead } from "./plate-keys.ts";

/** The parts a book can have, in their order. */
export const partIds = [
  "reading",
  "reach",
  "simple",
  "circles",
  "wide-range",
  "angles",
  "direct",
  "dial",
  "readings",
  "geared",
  "compound",
  "impossible",
  "unfound",
  "degrees",
  "drawings",
  "chords",
  "index",
  "cautions",
  "glossary",
] as const;

/** The name of a part. */
export type PartId = (typeof partIds)[number];

/** What the parts are written from. */
export interface Desk {
  /** Its plates named as print names them. */
  readonly head: Head;
  /** What plates that have a letter for a name are called. */
  readonly keys: KeyedHead["keys"];
  /** The same head laid out, to be asked. */
  readonly on: PreparedHead;
  readonly counts: readonly HeadCount[];
  /** The parts that the book will have; a part points only to those. */
  readonly included: ReadonlySet<string>;
  /** Counts that are to have a table of every position each; null where none were named. */
  readonly degreeTables: readonly number[] | null;
  /** Whether lengths stand in inches; left out, in millimetres. */
  readonly inches?: boolean;
}

/** The counts whose preferred setting is by one method. */
export function doneBy<M extends Method>({ counts }: Pick<Desk, "counts">, method: M): readonly CountBy<M>[] {
  return counts.filter((count): count is CountBy<M> => count.setting?.method === method);
}

/** The counts that nothing closes, and no scale sets place by place where the head is set so. */
export function notPossible({ counts }: Pick<Desk, "counts">): readonly CountNotPossible[] {
  return counts.filter((count): count is CountNotPossible => count.setting === null && count.section === "impossible");
}

/** The counts for which nothing was found where not everything could be tried: they may be possible. */
export function notFound({ counts }: Pick<Desk, "counts">): readonly CountNotPossible[] {
  return counts.filter((count): count is CountNotPossible => count.setting === null && count.section === "unfound");
}

/** Writes one part, or nothing where this head has nothing for it. */
export type PartWriter = (desk: Desk) => Part | null;
