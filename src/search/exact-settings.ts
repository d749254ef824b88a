import type { Head } from "../head/head.ts";
import { proveByIdentity } from "../mechanism/identity.ts";
import type { GearedMove } from "../methods/crank-moves.ts";
import { byGearedHandling } from "../methods/handling.ts";
import type { Trial, TrialEffort } from "../methods/law.ts";
import { checkTerms, type HeadLayout } from "../methods/layout.ts";
import { lackOf, methodOf, settingsOfKind, usualMethods } from "../methods/registry.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { invariant } from "../number/errors.ts";
import type { Kind } from "../setting/kind.ts";
import type { Move } from "../setting/move.ts";
import type { Method, Proved, Setting, UnprovedSetting } from "../setting/setting.ts";
import { checkTarget, checkTeethPerMove, firstMove, movesFor, type Target, usualTeethPerMove } from "../setting/target.ts";
import { checkLists } from "./check-lists.ts";
import { type Allowed, cutMethods, type Efforts, effortsOf, usuallyAllowed } from "./efforts.ts";
import { preferenceFrom } from "./preference.ts";
import { layoutOf, type PreparedHead } from "./prepare.ts";

/** What to look for, and in what order. */
export interface SearchOptions {
  /** The methods to try; left out, all of them. */
  readonly methods?: readonly Method[] | undefined;
  /** The most teeth per move to try, 1 to 1,000; left out, 12. */
  readonly teethPerMove?: number | undefined;
  /** Kinds of setting to put before the others; the rest keep their usual order. */
  readonly prefer?: readonly Kind[] | undefined;
  /** The plate that is on the head now, where it is not the head's own `mounted`. */
  readonly mounted?: string | undefined;
}

/** The keys of {@link SearchOptions}, each named once so that the compiler misses none. */
export const searchKeys = { methods: true, teethPerMove: true, prefer: true, mounted: true } as const;

const searchOnly = keysOf<SearchOptions>(searchKeys);

/** Checks options that are those of a search alone. */
export function checkSearchOptions(options: SearchOptions): void {
  checkKeys(options, searchOnly, "options");
}

/** A search made ready for a head, to be put to many targets. */
export interface Search {
  readonly layout: HeadLayout;
  readonly methods: readonly Method[];
  readonly teethPerMove: number;
  readonly order: readonly Kind[];
  /** Whether any setting will do, and not only the best of a kind: where it is asked whether there is one. */
  readonly isAnyGood?: boolean;
  /** How much work each part of an answer may be. */
  readonly allowed: Allowed;
}

/** A search for one answer, with what each part of it may still take. */
export interface SearchOnce extends Search {
  readonly efforts: Efforts;
}

/** A search for one answer. */
export function once(search: Search): SearchOnce {
  return { ...search, efforts: effortsOf(search.allowed) };
}

/** Checks the options and lays out the head once. */
export function searchOn(head: Head | PreparedHead, options: SearchOptions = {}): Search {
  const layout = layoutOf(head, options.mounted);
  const { methods = usualMethods(layout.head), teethPerMove = usualTeethPerMove, prefer = [] } = options;
  checkLists(methods, prefer);
  return {
    layout,
    methods,
    teethPerMove: checkTeethPerMove(teethPerMove),
    order: preferenceFrom(prefer),
    allowed: usuallyAllowed,
  };
}

/**
 * Every exact setting of a head for a target, best first, each found and proved only when asked for.
 *
 * More than one tooth per move is tried where that can gain something: in differential indexing
 * always; in simple and compound indexing only on a fractional worm ratio, and there only until
 * one serves. Once the generator ends, every owned circle, train and number of teeth per move has
 * been tried, unless it ends with false: a head can have so many that it would take too long.
 *
 * @returns The settings one by one, and at the end whether all was tried.
 * @throws {@link InputError} when the target or an option is not allowed.
 *
 * @example
 * ```ts
 * exactSettings(readyHeads[0], { divisions: 36 }).next().value.circle; // 18
 * ```
 */
export function* exactSettings(
  head: Head | PreparedHead,
  target: Target,
  options: SearchOptions = {},
): Generator<Setting, boolean, undefined> {
  checkSearchOptions(options);
  return yield* settingsOf(searchOn(head, options), checkTarget(target));
}

/** {@link exactSettings} on a search made ready before, with the work that it may be. */
export function* settingsOf(
  search: Search,
  target: Target,
  effort: TrialEffort = effortsOf(search.allowed),
): Generator<Setting, boolean, undefined> {
  const { layout, order, methods } = search;
  const trial = trialOf(search, target, effort);
  if ("angle" in target) checkTerms(layout, trial.first);
  for (const kind of order) {
    if (!methods.includes(methodOf(kind))) continue;
    for (const unproved of settingsOfKind(kind, layout, trial)) yield proved(unproved, layout.head, target);
  }
  return cutMethods(effort).length === 0;
}

/** The preferred setting for a target, or null where there is none. */
export function firstSetting(search: Search, target: Target, effort?: TrialEffort): Setting | null {
  const { value } = settingsOf(search, target, effort).next();
  return typeof value === "object" ? value : null;
}

function trialOf({ layout, teethPerMove, isAnyGood = false }: Search, target: Target, effort: TrialEffort): Trial {
  let moves: readonly Move[] | undefined;
  let known: Map<number, readonly GearedMove[]> | undefined;
  return {
    target,
    teethPerMove,
    effort,
    isAnyGood,
    first: firstMove(target),
    moves() {
      moves ??= movesFor(target, teethPerMove);
      return moves;
    },
    geared(move, pairs) {
      if (layout.head.gears.length < 2) return [];
      const key = 2 * move.teeth + pairs;
      known ??= new Map();
      let found = known.get(key);
      if (found === undefined) {
        const unsorted = layout.gearedMoves(move, pairs, effort.differential);
        found = unsorted.length > 1 ? unsorted.sort(byGearedHandling(layout.mounted)) : unsorted;
        known.set(key, found);
      }
      return found;
    },
  };
}

/** A setting of ours that its own head cannot make, or that does not close, is our fault and nobody else's. */
function proved(unproved: UnprovedSetting, head: Head, target: Target): Setting {
  const lack = lackOf(unproved, head);
  invariant(lack === null, () => `${JSON.stringify(unproved)} ${lack}`);
  const proof = proveByIdentity(unproved);
  invariant(proof.closes, () => `${JSON.stringify(unproved)} does not close`);
  const closes: Proved & { readonly teethPerMove: number } = {
    teethPerMove: "angle" in target ? 1 : unproved.teethPerMove,
    exact: true,
    closingArcSeconds: 0,
    worstArcSeconds: 0,
    proof,
  };
  return Object.assign(unproved, closes);
}
