import type { Head } from "./head/head.ts";
import { type Impossible, type Reason, whyImpossible, whyPassedOver } from "./instead/impossible.ts";
import { circlesThatWouldDo } from "./instead/missing-circles.ts";
import { nearestCounts } from "./instead/nearest-counts.ts";
import { type Route, routesFor } from "./instead/routes.ts";
import { kindOf } from "./methods/preference.ts";
import { nearOn } from "./near/near.ts";
import { checkAngle } from "./number/angle.ts";
import { quoted, refuse, wholeNumberFault } from "./number/errors.ts";
import { type Exact, groupDigits } from "./number/ratio.ts";
import { type Search, type SearchOptions, searchOn, settingsOf } from "./search/exact-settings.ts";
import type { NearSetting } from "./setting/near-setting.ts";
import type { Setting } from "./setting/setting.ts";
import { checkDivisions, type Target } from "./setting/target.ts";

/** What to answer with. */
export interface AnswerOptions extends SearchOptions {
  /** Every exact setting of every method, not only those of the kind that is preferred. */
  readonly all?: boolean;
  /** Near settings besides, where there are exact ones; where there are none they are always given. */
  readonly near?: boolean;
  /** The most settings to return, 1 to 100,000; left out, 24, or 500 with `all`. */
  readonly limit?: number;
}

/** The answer to one count or angle: plain data, through JSON unchanged. */
export interface Answer {
  readonly head: { readonly id: string; readonly name: string; readonly wormRatio: Exact };
  /** What was asked for; an angle is in revolutions. */
  readonly target: Target;
  /** Whether this head does it with no error. */
  readonly exact: boolean;
  /** Exact settings, the preferred first. */
  readonly settings: readonly Setting[];
  /** False where `limit` cut the list of settings short. */
  readonly complete: boolean;
  /** Settings that do not close, the smallest error first; none where an exact one was found and they were not asked for. */
  readonly near: readonly NearSetting[];
  /** Why the methods that would be preferred to the best setting cannot do it. */
  readonly passedOver: readonly Reason[];
  /** Why it cannot be done with what the head has, or null. */
  readonly impossible: Impossible | null;
  /** The nearest counts below and above that this head does, where the count asked for is impossible. */
  readonly nearestCounts: readonly number[];
  /** Circles that would do it by simple indexing if they were drilled, where none that is owned does. */
  readonly circlesThatWouldDo: readonly number[];
  /** The ways on where it is impossible, in order of effort. */
  readonly routes: readonly Route[];
}

const usualLimit = 24;
const usualLimitOfAll = 500;
const greatestLimit = 100_000;

/**
 * Answers one count of divisions.
 *
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
export function indexDivisions(head: Head, divisions: number, options: AnswerOptions = {}): Answer {
  return answer(head, { divisions: checkDivisions(divisions) }, options);
}

/**
 * Answers one angle: the move that turns the work by it.
 *
 * @param angle - In revolutions, exact, as {@link parseAngle} returns it: `"29/3600"`.
 * @throws {@link InputError} when the angle or an option is not allowed.
 */
export function indexAngle(head: Head, angle: Exact, options: AnswerOptions = {}): Answer {
  return answer(head, { angle: checkAngle(angle) }, options);
}

function answer(head: Head, target: Target, options: AnswerOptions): Answer {
  const search = searchOn(head, options);
  const { settings, complete } = gather(search, target, options);
  const exact = settings.length > 0;
  const found = {
    near: exact && options.near !== true ? [] : nearOn(search)(target),
    nearestCounts: exact || "angle" in target ? [] : nearestCounts(search, target.divisions),
    circlesThatWouldDo: circlesThatWouldDo(search, target),
  };
  return {
    head: { id: head.id, name: head.name, wormRatio: head.wormRatio },
    target,
    exact,
    settings,
    complete,
    passedOver: settings[0] ? whyPassedOver(search, target, kindOf(settings[0])) : [],
    impossible: exact ? null : whyImpossible(search, target),
    ...found,
    routes: exact ? [] : routesFor(search, target, found),
  };
}

function gather(
  search: Search,
  target: Target,
  { all = false, limit }: AnswerOptions,
): { settings: Setting[]; complete: boolean } {
  const most = checkLimit(limit ?? (all ? usualLimitOfAll : usualLimit));
  const settings: Setting[] = [];
  for (const setting of settingsOf(search, target)) {
    const first = settings[0];
    if (!all && first && (kindOf(setting) !== kindOf(first) || setting.teethPerMove !== first.teethPerMove)) break;
    if (settings.length === most) return { settings, complete: false };
    settings.push(setting);
  }
  return { settings, complete: true };
}

function checkLimit(limit: unknown): number {
  if (typeof limit === "number" && Number.isInteger(limit) && limit >= 1 && limit <= greatestLimit) return limit;
  return refuse(
    wholeNumberFault(limit),
    "limit",
    `${quoted(limit)} is not a number of settings; give a whole number from 1 to ${groupDigits(greatestLimit)}`,
  );
}

/** One count of a table with its preferred setting, or null where nothing closes. */
export interface TableRow {
  readonly divisions: number;
  readonly setting: Setting | null;
}

/** Which counts a table holds. */
export interface TableOptions extends SearchOptions {
  readonly from: number;
  readonly to: number;
}

const mostRows = 100_000;

/**
 * The preferred setting of every count in a range; a count that cannot be done is there too.
 *
 * @throws {@link InputError} when the range is upside down, over 100,000 counts, or not of counts.
 */
export function indexTable(head: Head, { from, to, ...options }: TableOptions): readonly TableRow[] {
  checkDivisions(from, "from");
  checkDivisions(to, "to");
  if (to < from) refuse("conflict", "to", `${to} is below ${from}; give the smaller count first`);
  if (to - from >= mostRows)
    refuse(
      "too-many",
      "to",
      `${groupDigits(to - from + 1)} counts are too many for one table; give at most ${groupDigits(mostRows)}`,
    );
  const search = searchOn(head, options);
  const rows: TableRow[] = [];
  for (let divisions = from; divisions <= to; divisions += 1) {
    const { value } = settingsOf(search, { divisions }).next();
    rows.push({ divisions, setting: value ?? null });
  }
  return rows;
}
