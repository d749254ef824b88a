import type { Method, UnprovedSetting } from "./setting.ts";

/**
 * The kinds of setting that one method gives: differential indexing is told apart by its train, and
 * `block` is differential indexing with more than one tooth per move. `may-foul` is any differential
 * setting whose two-pair train may not go together.
 */
export type KindOf<M extends Method> = M extends "differential" ? "one-pair" | "two-pair" | "block" | "may-foul" : M;

/** The kinds of setting, told apart as the order of preference does. */
export type Kind = KindOf<Method>;

/**
 * The kind of a setting.
 *
 * @example
 * ```ts
 * kindOf(indexDivisions(readyHeads[0], 36).settings[0]); // "simple"
 * ```
 */
export function kindOf(setting: UnprovedSetting): Kind {
  if (setting.method !== "differential") return setting.method;
  const { gears, teethPerMove } = setting;
  if (gears.mayFoul !== null) return "may-foul";
  if (teethPerMove > 1) return "block";
  return gears.drivers.length === 1 ? "one-pair" : "two-pair";
}
