import { plainMethods, whyNotBy } from "../methods/registry.ts";
import type { WhyNot } from "../methods/why-not.ts";
import { cutMethods } from "../search/efforts.ts";
import type { SearchOnce } from "../search/exact-settings.ts";
import type { Kind } from "../setting/kind.ts";
import type { Method } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";

/** Why one method cannot do a target on a head: the condition that is missing. */
export type Reason = { readonly method: Method } & WhyNot;

/**
 * That a target cannot be done exactly with what a head has: shown, and not merely not found, unless
 * a method was not tried to its end.
 */
export interface Impossible {
  /** The most teeth per move that was tried. */
  readonly teethPerMoveTried: number;
  /** A reason for each method that was asked for. */
  readonly reasons: readonly Reason[];
}

/**
 * Says why a target is impossible, once every setting has been tried in vain.
 *
 * For direct, simple and compound indexing the condition named is necessary and sufficient. For
 * differential indexing every owned circle, every move within the greatest plate ratio, every
 * train of one and two pairs and every allowed number of teeth per move has been tried. Of a method
 * whose effort was cut nothing is claimed.
 */
export function whyImpossible(search: SearchOnce, target: Target): Impossible {
  return {
    teethPerMoveTried: "angle" in target || search.layout.head.wormRatio === null ? 1 : search.teethPerMove,
    reasons: search.methods.map((method) => reasonOf(method, search, target)),
  };
}

/** Why the methods without gears that are preferred to the kind of setting found cannot do a target. */
export function whyPassedOver(search: SearchOnce, target: Target, found: Kind): readonly Reason[] {
  const before: readonly string[] = search.order.slice(0, search.order.indexOf(found));
  return plainMethods
    .filter((method) => search.methods.includes(method) && before.includes(method))
    .map((method) => reasonOf(method, search, target));
}

function reasonOf(method: Method, { layout, teethPerMove, efforts }: SearchOnce, target: Target): Reason {
  if (cutMethods(efforts).includes(method)) return { method, code: "not-all-tried" };
  return { method, ...whyNotBy(method, layout, target, teethPerMove) };
}
