import {
  type Answer,
  exactSettings,
  type Head,
  indexDivisions,
  indexTable,
  type Kind,
  kindOf,
  prove,
  type Setting,
  type TableRow,
} from "../../src/index.ts";

/** Where a count stands in the book. */
export type Section = "direct" | "simple" | "dial" | "geared" | "compound" | "impossible";

/** All that the book knows of one count on a head. */
export interface HeadCount {
  readonly divisions: number;
  /** The part where the preferred setting is printed. */
  readonly section: Section;
  /** The preferred setting, or null where nothing closes. */
  readonly setting: Setting | null;
  /** Every simple setting, where there is one: all owned circles that close. */
  readonly simple: readonly Setting[];
  /** Why not and what would help, where nothing closes; else null. */
  readonly impossible: Answer | null;
}

/**
 * The counts of a book, each with its settings; every one is turned through all its moves on the
 * model of the mechanism before it may be printed.
 */
export function headCounts(head: Head, from: number, to: number, onProgress?: (done: number) => void): readonly HeadCount[] {
  return indexTable(head, { from, to }).map((row, index) => {
    onProgress?.(index);
    return headCount(head, row);
  });
}

function headCount(head: Head, { divisions, setting }: TableRow): HeadCount {
  const simple = [...exactSettings(head, { divisions }, { methods: ["simple"] })];
  for (const each of [...simple, ...(setting ? [setting] : [])]) walked(each);
  return {
    divisions,
    section: setting === null ? "impossible" : sectionOf[kindOf(setting)],
    setting,
    simple,
    impossible: setting === null ? indexDivisions(head, divisions) : null,
  };
}

const sectionOf: Readonly<Record<Kind, Section>> = {
  direct: "direct",
  simple: "simple",
  "one-pair": "geared",
  "two-pair": "geared",
  block: "geared",
  "may-foul": "geared",
  compound: "compound",
  dial: "dial",
};

function walked(setting: Setting): void {
  if (!prove(setting, { walk: true }).closes) {
    throw new Error(`turns-and-holes is at fault, please report it: ${JSON.stringify(setting)} does not close when walked`);
  }
}
