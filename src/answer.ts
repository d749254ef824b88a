import { type Head, type HeadInShort, inShort } from "./head/head.ts";
import { type Impossible, type Reason, whyImpossible, whyPassedOver } from "./instead/impossible.ts";
import { circlesThatWouldDo } from "./instead/missing-circles.ts";
import { nearestCounts } from "./instead/nearest-counts.ts";
import { type Route, routesFor } from "./instead/routes.ts";
import { nearOn } from "./near/near.ts";
import { checkAngle } from "./number/angle.ts";
import { checkKeys, keysOf } from "./number/check-options.ts";
import type { Revolutions } from "./number/ratio.ts";
import { checkLimit } from "./search/check-lists.ts";
import { type Untried, untriedOf } from "./search/efforts.ts";
import { once, type SearchOnce, type SearchOptions, searchKeys, searchOn, settingsOf } from "./search/exact-settings.ts";
import type { PreparedHead } from "./search/prepare.ts";
import { kindOf } from "./setting/kind.ts";
import type { NearSetting } from "./setting/near-setting.ts";
import type { Setting } from "./setting/setting.ts";
import { checkDivisions, type Target } from "./setting/target.ts";

/** What to answer with. */
export interface AnswerOptions extends SearchOptions {
  /** Every exact setting of every method, not only those of the kind that is preferred. */
  readonly all?: boolean | undefined;
  /** Near settings besides, where there are exact ones; where there are none they are always given. */
  readonly near?: boolean | undefined;
  /** The most settings to return, 1 to 100,000; left out, 24, or 500 with `all`. */
  readonly limit?: number | undefined;
}

/** What every answer says. */
export interface Answered {
  readonly head: HeadInShort;
  /** What was asked for; an angle is in revolutions. */
  readonly target: Target;
  /** False where `limit` cut the list of settings short, or something was left untried. */
  readonly complete: boolean;
  /**
   * What was not tried to its end, on a head with so many circles or gears that it would take too
   * long; empty on any that a usual shop has. What is there stands, but there may be better.
   */
  readonly untried: readonly Untried[];
  /** Settings that do not close, the smallest error first; none where an exact one was found and they were not asked for. */
  readonly near: readonly NearSetting[];
  /** Why the methods without gears that would be preferred to the best setting cannot do it. */
  readonly passedOver: readonly Reason[];
  /** Circles that would do it by simple indexing if they were drilled, where none that is owned does. */
  readonly circlesThatWouldDo: readonly number[];
}

/** The head does it with no error. */
export interface Found extends Answered {
  readonly exact: true;
  /**
   * Exact settings, the preferred first: all of its kind, and beside a direct plate's the crank's
   * own way.
   */
  readonly settings: readonly [Setting, ...Setting[]];
  readonly impossible: null;
  readonly nearestCounts: readonly [];
  readonly routes: readonly [];
}

/** The head cannot do it as it was asked: why not, and what would help. */
export interface NotPossible extends Answered {
  readonly exact: false;
  readonly settings: readonly [];
  readonly impossible: Impossible;
  /** The nearest counts below and above that this head does. */
  readonly nearestCounts: readonly number[];
  /** The ways on, in order of effort. */
  readonly routes: readonly Route[];
}

/** The answer to one count or angle: plain data, through JSON unchanged. `exact` tells which it is. */
export type Answer = Found | NotPossible;

const answerKeys = keysOf<AnswerOptions>({ ...searchKeys, all: true, near: true, limit: true });
const usualLimit = 24;
const usualLimitOfAll = 500;

/**
 * Answers one count of divisions.
 *
 * @param head - The head, or one that was prepared.
 * @param divisions - A whole number from 1 to 10,000,000.
 * @returns Every setting of the kind that is preferred, or of all kinds with `all`; where there is
 * none, why not and what would help.
 * @throws {@link InputError} when the count or an option is not allowed.
 *
 * @example
 * ```ts
 * indexDivisions(readyHeads[0], 127).settings[0].gears.drivers; // [56]
 * ```
 */
export function indexDivisions(head: Head | PreparedHead, divisions: number, options: AnswerOptions = {}): Answer {
  return answer(head, { divisions: checkDivisions(divisions) }, options);
}

/**
 * Answers one angle: the move that turns the work by it.
 *
 * @param head - The head, or one that was prepared.
 * @param angle - In revolutions, exact, as {@link parseAngle} returns it: `"29/3600"`.
 * @throws {@link InputError} when the angle or an option is not allowed.
 *
 * @example
 * ```ts
 * indexAngle(readyHeads[0], parseAngle("2°54'")).settings[0].circle; // 18
 * ```
 */
export function indexAngle(head: Head | PreparedHead, angle: Revolutions, options: AnswerOptions = {}): Answer {
  return answer(head, { angle: checkAngle(angle) }, options);
}

function answer(head: Head | PreparedHead, target: Target, options: AnswerOptions): Answer {
  checkKeys(options, answerKeys, "options");
  const search = once(searchOn(head, options));
  const { settings, complete } = gather(search, target, options);
  const [first, ...others] = settings;
  const asked: Asked = {
    head: inShort(search.layout.head),
    target,
    circlesThatWouldDo: circlesThatWouldDo(search, target),
  };
  const answered =
    first === undefined ? notPossible(search, asked) : possible(search, asked, [first, ...others], options.near === true);
  // Only now is it known what was cut short.
  const untried = untriedOf(search.efforts);
  return { ...answered, complete: complete && untried.length === 0, untried };
}

type Asked = Pick<Answered, "head" | "target" | "circlesThatWouldDo">;
type Untold = "complete" | "untried";

function possible(search: SearchOnce, asked: Asked, settings: Found["settings"], wantsNear: boolean): Omit<Found, Untold> {
  return {
    ...asked,
    exact: true,
    settings,
    near: wantsNear ? nearOn(search)(asked.target, search.efforts.near) : [],
    passedOver: whyPassedOver(search, asked.target, kindOf(settings[0])),
    impossible: null,
    nearestCounts: [],
    routes: [],
  };
}

function notPossible(search: SearchOnce, asked: Asked): Omit<NotPossible, Untold> {
  const { target, circlesThatWouldDo } = asked;
  const found = {
    near: nearOn(search)(target, search.efforts.near),
    nearestCounts: "angle" in target ? [] : nearestCounts(search, target.divisions),
  };
  return {
    ...asked,
    ...found,
    exact: false,
    settings: [],
    passedOver: [],
    impossible: whyImpossible(search, target),
    routes: routesFor(search, target, { ...found, circlesThatWouldDo }),
  };
}

function gather(
  search: SearchOnce,
  target: Target,
  { all = false, limit }: AnswerOptions,
): { settings: Setting[]; complete: boolean } {
  const most = checkLimit(limit ?? (all ? usualLimitOfAll : usualLimit));
  const settings: Setting[] = [];
  let group: Setting | null = null;
  for (const setting of settingsOf(search, target, search.efforts)) {
    if (!all && group !== null && !isAlike(setting, group)) {
      // The plate on the spindle is told beside the crank's way, which is the better known.
      if (group.method !== "direct") break;
    }
    if (settings.length === most) return { settings, complete: false };
    settings.push(setting);
    group = setting;
  }
  return { settings, complete: true };
}

function isAlike(a: Setting, b: Setting): boolean {
  return kindOf(a) === kindOf(b) && a.teethPerMove === b.teethPerMove;
}
