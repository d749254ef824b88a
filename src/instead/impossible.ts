import type { Kind } from "../methods/preference.ts";
import { groupDigits } from "../number/ratio.ts";
import type { Search } from "../search/exact-settings.ts";
import type { Method } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import { neededDivisors } from "./missing-circles.ts";

/** Why one method cannot do a target on a head. */
export interface Reason {
  readonly method: Method;
  /** The condition that is missing, in plain words. */
  readonly why: string;
}

/** That a target cannot be done exactly with what a head has: shown, not merely not found. */
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
 * train of one and two pairs and every allowed number of teeth per move has been tried.
 */
export function whyImpossible(search: Search, target: Target): Impossible {
  return {
    teethPerMoveTried: "angle" in target ? 1 : search.teethPerMove,
    reasons: search.methods.map((method) => ({ method, why: reasons[method](search, target) })),
  };
}

/** Why the ungeared methods that are preferred to the kind of setting found cannot do a target. */
export function whyPassedOver(search: Search, target: Target, found: Kind): readonly Reason[] {
  const before = search.order.slice(0, search.order.indexOf(found));
  return ungeared
    .filter((method) => search.methods.includes(method) && before.includes(method))
    .map((method) => ({ method, why: reasons[method](search, target) }));
}

const ungeared = ["direct", "simple", "compound"] as const;

const reasons: Readonly<Record<Method, (search: Search, target: Target) => string>> = {
  direct({ bench: { head } }, target) {
    if (head.directPlates.length === 0) return "the head has no direct plate";
    return `needs a direct plate whose holes are a multiple of ${groupDigits(parts(target))}; yours: ${head.directPlates.map(({ holes }) => holes).join(", ")}`;
  },
  simple(search, target) {
    if (search.bench.circles.length === 0) return "the head has no index plate";
    return `needs a circle whose holes are a multiple of ${needed(search, target)}; no circle of yours is`;
  },
  compound(search, target) {
    if (!search.bench.head.rearPin) return "the head has no rear pin to hold the plate by a second circle";
    const multiple = needed(search, target);
    return `needs two circles on one face whose least common multiple is a multiple of ${multiple}; no two of yours are`;
  },
  dial(search, target) {
    if (search.bench.head.dial === null) return "the head has no dial";
    return `needs a dial whose marks and vernier lines in a turn are a multiple of ${needed(search, target)}; yours is not`;
  },
  differential({ bench: { head }, teethPerMove }, target) {
    if (head.gearing === null) return "the plate of this head cannot be geared to its spindle";
    if (head.gears.length < 2) return "no change gears are listed for this head";
    const most = "angle" in target || teethPerMove === 1 ? "" : ` and 1 to ${teethPerMove} teeth per move`;
    return `every circle, every train of one and two pairs${most} was tried, the plate turning at most ${head.gearing.greatestPlateRatio} times for one spindle turn; none closes`;
  },
};

function needed(search: Search, target: Target): string {
  return neededDivisors(search, target).map(groupDigits).join(" or ");
}

function parts(target: Target): number {
  return "angle" in target ? Number(target.angle.split("/")[1] ?? 1) : target.divisions;
}
