import { placesOf } from "../head/direct-plate.ts";
import type { Head } from "../head/head.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { type Effort, effortOf } from "../number/effort.ts";
import { checkSearchOptions, type Search, type SearchOptions, searchOn } from "../search/exact-settings.ts";
import type { PreparedHead } from "../search/prepare.ts";
import type { Move } from "../setting/move.ts";
import type { NearFromZero, NearMove, NearSetting, UnprovedNearMove } from "../setting/near-setting.ts";
import type { Method } from "../setting/setting.ts";
import { checkTarget, firstMove, movesFor, type Target } from "../setting/target.ts";
import { nearestByBoth, nearWideRange } from "./near-both-cranks.ts";
import { nearestDirect } from "./near-direct.ts";
import { measure, nearMove } from "./near-errors.ts";
import { asReadByEye, byDial, byRing, nearestHole } from "./near-from-zero.ts";
import { nearGearing } from "./near-gearing.ts";
import { nearCompound, nearSimple, pairMultiples } from "./near-plate.ts";

type MoveKind = NearMove["kind"];

/** For each kind of move, the least work first, those it must come nearer than: they are less work. Compound does without gears. */
const easier: Readonly<Record<MoveKind, readonly MoveKind[]>> = {
  simple: [],
  "wide-range": ["simple"],
  "one-pair": ["simple"],
  "two-pair": ["simple", "one-pair"],
  compound: ["simple"],
  "may-foul": ["simple", "one-pair", "two-pair"],
};

const methodOf: Readonly<Record<MoveKind, Method>> = {
  simple: "simple",
  "wide-range": "wide-range",
  "one-pair": "differential",
  "two-pair": "differential",
  compound: "compound",
  "may-foul": "differential",
};

const moveKinds = Object.keys(easier) as MoveKind[];

/**
 * The near settings of a head for a target, the smallest worst error first; ties by least work. A ring's
 * counts as no less than half of what the ring shows.
 *
 * Of each kind there is the nearest with one tooth per move, and one with more teeth only where it
 * comes nearer than all with fewer; and nothing that an easier kind betters or does exactly, with
 * no more teeth. Setting each position from one zero is always there: nearest hole, dial, ring.
 * A setting that leaves any position half a step or more from its place is left out, for the
 * tooth would then be as near to its neighbour's place.
 *
 * Every error is measured on the mechanism.
 *
 * @param head - The head, or one that was prepared.
 * @throws {@link InputError} when the target or an option is not allowed.
 *
 * @example
 * ```ts
 * nearSettings(readyHeads[1], { divisions: 97 })[0].method; // "compound"
 * ```
 */
export function nearSettings(head: Head | PreparedHead, target: Target, options: SearchOptions = {}): readonly NearSetting[] {
  checkSearchOptions(options);
  return nearOn(searchOn(head, options))(checkTarget(target));
}

/** {@link nearSettings} laid out once, to be put to many targets; where the effort is cut, the nearest of what was tried. */
export function nearOn(search: Search): (target: Target, effort?: Effort) => readonly NearSetting[] {
  const find = finders(search);
  return (target, effort = effortOf(search.allowed.near)) => {
    const first = firstMove(target);
    const isDirect =
      search.methods.includes("direct") &&
      search.layout.head.directPlates.some((plate) => placesOf(plate) % first.divisions === 0);
    const moves = isDirect || search.layout.head.wormRatio === null ? [] : equalMoves(search, find, target, effort);
    return [...moves, ...eachFromZero(search, target, first)].sort(byError);
  };
}

/** The error that a near setting is ranked by. */
function rankedError(setting: NearSetting): number {
  return setting.kind === "ring" ? asReadByEye(setting, setting.worstArcSeconds) : setting.worstArcSeconds;
}

/** Of equal ones that with the least work stays first, as it was found first. */
function byError(a: NearSetting, b: NearSetting): number {
  return rankedError(a) - rankedError(b) || a.worstArcSeconds - b.worstArcSeconds || a.closingArcSeconds - b.closingArcSeconds;
}

function equalMoves(search: Search, find: Finders, target: Target, effort: Effort): NearSetting[] {
  const asked = moveKinds.filter((kind) => search.methods.includes(methodOf[kind]));
  // The least closing error so far, in turns of the work: half a step to begin with.
  const least: Partial<Record<MoveKind, number>> = {};
  const found: NearSetting[] = [];
  for (const move of movesFor(target, search.teethPerMove)) {
    const halfStep = ("angle" in target ? move.teeth : 1 / move.divisions) / 2;
    for (const kind of asked) {
      // With more teeth it would come nearer by what no head holds, and the small crank would go round hundreds of times.
      if (kind === "wide-range" && "divisions" in target && move.teeth > 1) continue;
      const bar = Math.min(least[kind] ?? halfStep, ...easier[kind].map((each) => least[each] ?? halfStep));
      const setting = bar > 0 ? find[kind](move, bar, effort) : null;
      if (setting === null) continue;
      const measured = measure(setting, target);
      const closing = measured.errors.closing.abs();
      least[kind] = "angle" in target ? closing.mul(move.divisions).valueOf() : closing.valueOf();
      if (closing.n !== 0n) found.push(nearMove(measured, target));
    }
  }
  return found;
}

/** A solver for each kind: the nearest setting for a move whose closing error betters the bar. */
type Finders = Readonly<Record<MoveKind, (move: Move, bar: number, effort: Effort) => UnprovedNearMove | null>>;

function finders({ layout }: Search): Finders {
  const multiples = pairMultiples(layout);
  // Those that may foul have no higher a bar: they are looked for only where some were met before.
  let met: Move | null = null;
  return {
    simple: (move, bar, effort) => nearSimple(layout, move, bar, effort),
    "wide-range": (move, bar, effort) => nearWideRange(layout, move, bar, effort),
    compound: (move, bar, effort) => nearCompound(layout, multiples, move, bar, effort),
    "one-pair": (move, bar, effort) => nearGearing(layout, move, { pairs: 1, fits: true, bar, effort }).setting,
    "two-pair": (move, bar, effort) => {
      const { setting, othersMet } = nearGearing(layout, move, { pairs: 2, fits: true, bar, effort });
      met = othersMet ? move : null;
      return setting;
    },
    "may-foul": (move, bar, effort) =>
      move === met ? nearGearing(layout, move, { pairs: 2, fits: false, bar, effort }).setting : null,
  };
}

function eachFromZero({ layout, methods }: Search, target: Target, first: Move): NearSetting[] {
  const isAngle = "angle" in target;
  const wanted = { move: first, isAngle };
  const byCrank = layout.head.wormRatio !== null;
  // For one angle the nearest hole is near simple indexing.
  const hole = methods.includes("simple") && !isAngle ? nearestHole(layout, wanted) : null;
  const direct = methods.includes("direct") && !byCrank ? nearestDirect(layout, wanted) : null;
  const halfStep = ((arcSecondsPerTurn / 2) * first.teeth) / first.divisions;
  const both = methods.includes("wide-range") ? nearestByBoth(layout, wanted) : null;
  const dial = methods.includes("dial") ? byDial(layout, wanted) : null;
  return [hole, both, direct, dial, byRing(layout, wanted)].filter(
    (setting): setting is NearFromZero => setting !== null && setting.worstArcSeconds < halfStep,
  );
}
