import { type NearBy, type NearSetting, nearSettings } from "../../src/index.ts";
import type { HeadCount } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { isReadHead, type ReadCount, readCount } from "./readings.ts";

/** A count whose every position is printed: as scales show it, or by the nearest holes of one circle. */
export type Positions =
  | { readonly by: "scales"; readonly divisions: number; readonly read: ReadCount }
  | { readonly by: "holes"; readonly divisions: number; readonly setting: NearBy<"nearest-hole"> };

/** Where none are named: on a head of readings every count so far, on others those that nothing closes. */
const usualTablesTo = 60;

/** On a head with plates more than this would fill the book with what it is not for; those wanted are named. */
const mostOnPlates = 24;

/** The counts of this book that have a table of their positions, in the order named. */
export function positionTables(desk: Desk): readonly Positions[] {
  const { counts, degreeTables, included } = desk;
  if (!included.has("degrees")) return [];
  const known = new Map(counts.map((count) => [count.divisions, count]));
  const usual = counts.filter((count) => isWanted(desk, count)).map(({ divisions }) => divisions);
  const wanted = degreeTables ?? (isReadHead(desk.head) || usual.length <= mostOnPlates ? usual : []);
  return wanted.flatMap((divisions) => positionsOf(desk, divisions, known.get(divisions)) ?? []);
}

function isWanted({ head }: Desk, { divisions, section, read }: HeadCount): boolean {
  return divisions <= usualTablesTo && (isReadHead(head) ? read !== null : section === "impossible" || section === "unfound");
}

function positionsOf({ on }: Desk, divisions: number, count: HeadCount | undefined): Positions | null {
  const near = count?.setting === null ? count.answer.near : nearSettings(on, { divisions });
  const hole = nearestOf(near);
  if (hole !== null) return { by: "holes", divisions, setting: hole };
  const read = count?.read ?? readCount(on, divisions, near);
  return read === null ? null : { by: "scales", divisions, read };
}

/** The nearest holes, where no scale sets the positions nearer: near settings come with the least error first. */
function nearestOf(near: readonly NearSetting[]): NearBy<"nearest-hole"> | null {
  const best = near.find(({ moves }) => moves === "from-zero");
  return best?.kind === "nearest-hole" ? best : null;
}
