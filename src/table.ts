import type { Head } from "./head/head.ts";
import { checkKeys, keysOf } from "./number/check-options.ts";
import { effortOf, isCut } from "./number/effort.ts";
import { quoted, refuse } from "./number/errors.ts";
import { groupDigits } from "./number/ratio.ts";
import { sharedBy } from "./search/efforts.ts";
import { firstSetting, type Search, type SearchOptions, searchKeys, searchOn } from "./search/exact-settings.ts";
import type { PreparedHead } from "./search/prepare.ts";
import type { Setting } from "./setting/setting.ts";
import { checkDivisions } from "./setting/target.ts";

/** One count of a table with its preferred setting, or null where nothing closes. */
export interface TableRow {
  readonly divisions: number;
  readonly setting: Setting | null;
  /**
   * False where the head has so many circles or gears that not everything was tried for this count:
   * there may be a better setting, or one where there is none here. A look-up tries more.
   */
  readonly complete: boolean;
}

/** Which counts a table holds. */
export interface TableOptions extends SearchOptions {
  readonly from: number;
  readonly to: number;
}

/** What tells long work to stop, as an `AbortSignal` does. */
export interface Stop {
  /** Throws where the work is to stop. */
  throwIfAborted(): void;
}

/** How a table is watched and stopped while it is made. */
export interface TableWatch {
  /** Looked at before every count: an `AbortSignal`, or whatever throws in order to stop. */
  readonly signal?: Stop | undefined;
  /** Called after every count, with how many of them are done. */
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

const tableKeys = keysOf<TableOptions>({ ...searchKeys, from: true, to: true });
const watchedKeys = [...tableKeys, ...keysOf<TableWatch>({ signal: true, onProgress: true })];
/** A second's work; more are for whoever goes through them one by one, and may stop. */
const mostRows = 20_000;

/**
 * The preferred setting of every count in a range; a count that cannot be done is there too.
 *
 * @param head - The head, or one that was prepared.
 * @throws {@link InputError} when the range is upside down, over 20,000 counts, or not of counts.
 *
 * @example
 * ```ts
 * indexTable(readyHeads[0], { from: 95, to: 97 }).map(({ setting }) => setting.spaces); // [8,11,6]
 * ```
 */
export function indexTable(head: Head | PreparedHead, options: TableOptions & TableWatch): readonly TableRow[] {
  checkKeys(options, watchedKeys, "options");
  const { signal, onProgress, ...range } = options;
  checkWatch(signal, onProgress);
  const found = indexRows(head, range);
  const total = range.to - range.from + 1;
  if (total > mostRows)
    refuse(
      "too-many",
      "to",
      `${groupDigits(total)} counts are too many for one table; give at most ${groupDigits(mostRows)} at a time`,
    );
  const rows: TableRow[] = [];
  signal?.throwIfAborted();
  for (const row of found) {
    rows.push(row);
    onProgress?.(rows.length, total);
    signal?.throwIfAborted();
  }
  return rows;
}

function checkWatch(signal: unknown, onProgress: unknown): void {
  if (signal !== undefined && !isSignal(signal))
    refuse("unreadable", "signal", `${quoted(signal)} is no signal to stop by; give the signal of an AbortController`);
  if (onProgress !== undefined && typeof onProgress !== "function")
    refuse(
      "unreadable",
      "onProgress",
      `${quoted(onProgress)} is not a function; give one that takes how many are done, and of how many`,
    );
}

function isSignal(signal: unknown): boolean {
  return (
    typeof signal === "object" && signal !== null && "throwIfAborted" in signal && typeof signal.throwIfAborted === "function"
  );
}

/**
 * The rows of {@link indexTable} one by one, each worked out when it is asked for: whoever goes through
 * them may stop, wait or do other work between any two.
 *
 * @throws {@link InputError} at once, when the range is upside down or not of counts.
 *
 * @example
 * ```ts
 * indexRows(readyHeads[0], { from: 2, to: 100_000 }).next().value.divisions; // 2
 * ```
 */
export function indexRows(head: Head | PreparedHead, range: TableOptions): Generator<TableRow, undefined> {
  checkKeys(range, tableKeys, "options");
  const { from, to, ...options } = range;
  checkDivisions(from, "from");
  checkDivisions(to, "to");
  if (to < from) refuse("conflict", "to", `${to} is below ${from}; give the smaller count first`);
  return rowsOf(searchOn(head, options), from, to);
}

function* rowsOf(search: Search, from: number, to: number): Generator<TableRow, undefined> {
  const share = shareOf(search);
  let left = oneMore + share * (to - from);
  for (let divisions = from; divisions <= to; divisions += 1) {
    // What the counts before have left over is there for this one, and of its own it has a share.
    const most = Math.min(oneMore, left) + share;
    const effort = effortOf(most);
    const setting = firstSetting(search, { divisions }, sharedBy(effort));
    left -= most - Math.max(0, effort.left);
    yield { divisions, setting, complete: !isCut(effort) };
  }
}

/** Steps of work that a count may take beyond its share, as long as the others leave it that. */
const oneMore = 3_000_000;

/** Steps of work for each count, so that the time for a table grows with its counts and no faster. */
function shareOf({ teethPerMove }: Search): number {
  return 4000 + 20 * teethPerMove;
}
