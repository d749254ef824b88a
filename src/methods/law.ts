import type { Head } from "../head/head.ts";
import type { Effort } from "../number/effort.ts";
import type { KindOf } from "../setting/kind.ts";
import type { Move } from "../setting/move.ts";
import type { Method, SettingBy, UnprovedSetting } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import type { GearedMove } from "./crank-moves.ts";
import type { HeadLayout } from "./layout.ts";
import type { WhyNot } from "./why-not.ts";

/** The work that a trial is let to be, by the methods that can be much of it. */
export interface TrialEffort {
  readonly compound: Effort;
  readonly wideRange: Effort;
  readonly differential: Effort;
}

/** The moves that are tried for one target, worked out when first asked for: most targets need only the first. */
export interface Trial {
  readonly target: Target;
  /** The most teeth per move that may be tried. */
  readonly teethPerMove: number;
  readonly effort: TrialEffort;
  /** Whether any setting will do, and not only the best. */
  readonly isAnyGood: boolean;
  /** The move with the fewest teeth. */
  readonly first: Move;
  moves(): readonly Move[];
  /** The geared moves of a move with so many pairs, in order of handling. */
  geared(move: Move, pairs: 1 | 2): readonly GearedMove[];
}

/**
 * All that one method is to the search: how its settings are found, what a head must have for one,
 * why there is none, and where its kinds stand in the order of preference. A method knows nothing
 * of the mechanism, which proves what it finds.
 */
export interface Law<M extends Method> {
  /** The kinds it gives, each with its place in the order of preference: the lower, the sooner preferred. */
  readonly places: Readonly<Record<KindOf<M>, number>>;
  /** The settings of one of its kinds, best first, each found only when asked for. */
  find(kind: KindOf<M>, layout: HeadLayout, trial: Trial): Iterable<UnprovedSetting>;
  /** What a head lacks to make a setting, as a part of a sentence: `needs a rear pin`; null where it lacks nothing. */
  lacks(setting: SettingBy<M>, head: Head): string | null;
  /** Why it has no setting for a target, once none was found. */
  whyNot(layout: HeadLayout, target: Target, teethPerMove: number): WhyNot;
  /** Whether it goes without change gears, so that a head that can is expected to do it this way first. */
  readonly plain: boolean;
}
