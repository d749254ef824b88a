import type { Head } from "../../src/index.ts";
import type { Part } from "./blocks.ts";
import type { HeadCount, Section } from "./head-counts.ts";

/** The parts a book can have, in their order. */
export const partIds = [
  "reading",
  "reach",
  "simple",
  "direct",
  "dial",
  "geared",
  "compound",
  "impossible",
  "angles",
  "degrees",
  "drawings",
  "index",
  "cautions",
  "glossary",
] as const;

/** The name of a part. */
export type PartId = (typeof partIds)[number];

/** What the parts are written from. */
export interface Desk {
  readonly head: Head;
  readonly counts: readonly HeadCount[];
  /** The parts that the book will have; a part points only to those. */
  readonly included: ReadonlySet<string>;
  /** Counts that are to have a degree table each; null where none were named. */
  readonly degreeTables: readonly number[] | null;
}

/** The counts whose preferred setting is printed in a section. */
export function inSection({ counts }: Desk, section: Section): readonly HeadCount[] {
  return counts.filter((count) => count.section === section);
}

/** Writes one part, or nothing where this head has nothing for it. */
export type PartWriter = (desk: Desk) => Part | null;
