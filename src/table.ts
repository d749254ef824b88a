import type { Head } from "./head/head.ts";
import { checkKeys, keysOf } from "./number/check-options.ts";
import { refuse } from "./number/errors.ts";
import { groupDigits } from "./number/ratio.ts";
import { firstSetting, type SearchOptions, searchKeys, searchOn } from "./search/exact-settings.ts";
import type { PreparedHead } from "./search/prepare.ts";
import type { Setting } from "./setting/setting.ts";
import { checkDivisions } from "./setting/target.ts";

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

const tableKeys = keysOf<TableOptions>({ ...searchKeys, from: true, to: true });
const mostRows = 100_000;

/**
 * The preferred setting of every count in a range; a count that cannot be done is there too.
 *
 * @param head - The head, or one that was prepared.
 * @throws {@link InputError} when the range is upside down, over 100,000 counts, or not of counts.
 *
 * @example
 * ```ts
 * indexTable(readyHeads[0], { from: 95, to: 97 }).map(({ setting }) => setting.spaces); // [8,11,6]
 * ```
 */
export function indexTable(head: Head | PreparedHead, range: TableOptions): readonly TableRow[] {
  checkKeys(range, tableKeys, "options");
  const { from, to, ...options } = range;
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
    rows.push({ divisions, setting: firstSetting(search, { divisions }) });
  }
  return rows;
}
