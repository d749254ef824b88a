import { type Effort, effortOf, isCut } from "../number/effort.ts";

/** The most steps that each part of an answer about a kit may take. */
const allowed = {
  /** What is lost with each plate. */
  plates: 5_000_000,
  /** What each circle would add. */
  circles: 10_000_000,
  /** What plates would add. */
  "plates-to-add": 5_000_000,
  /** What each gear would add, and each two. */
  gears: 30_000_000,
  /** The smallest set that does a list. */
  set: 10_000_000,
} as const;

/** What is worked out of a kit, beside the counts themselves. */
export type PartOfKit = keyof typeof allowed;

/** What each part may still take. */
export type KitEfforts = Readonly<Record<PartOfKit, Effort>>;

/** Starts one answer. */
export function kitEfforts(): KitEfforts {
  return Object.fromEntries(Object.entries(allowed).map(([part, most]) => [part, effortOf(most)])) as unknown as KitEfforts;
}

/** What was not worked out to its end, on a head or for a range so large that it would take too long. */
export interface UntriedOfKit {
  readonly code: "settings" | PartOfKit;
}

/** What was cut short. */
export function untriedOfKit(efforts: KitEfforts, allSettings: boolean): readonly UntriedOfKit[] {
  const cut = (Object.keys(allowed) as PartOfKit[]).filter((part) => isCut(efforts[part]));
  return [...(allSettings ? [] : ["settings" as const]), ...cut].map((code) => ({ code }));
}
