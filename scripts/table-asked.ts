import { type Head, indexTable, type TableOptions, type TableRow } from "../src/index.ts";
import { shortSetting, tableColumns, tableWithWhys } from "../src/words/index.ts";
import { optionNames } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { progress } from "./progress.ts";
import { rangeAsked } from "./range-asked.ts";
import { withOptionNames } from "./read-options.ts";
import { searchAsked } from "./shared-options.ts";
import { line } from "./words.ts";

/** `table 2-100`: every count in a range with its preferred setting. */
export function tableAsked(words: string, head: Head, options: Options): More {
  const range = { ...rangeAsked(words, "table 2-100"), ...searchAsked(options) };
  const rows = withOptionNames({ ...optionNames, from: "", to: "" }, () => rowsOf(head, range));
  return { data: { table: tableWithWhys(rows) }, table: tableColumns(rows), lines: rows.map(rowLine) };
}

function rowsOf(head: Head, range: TableOptions): readonly TableRow[] {
  const { tell, end } = progress();
  try {
    return indexTable(head, { ...range, onProgress: (done, total) => tell("count", done, total) });
  } finally {
    end();
  }
}

function rowLine({ divisions, setting, complete }: TableRow): string {
  const said = setting === null ? (complete ? "not possible exactly" : "none found") : shortSetting(setting);
  return line(String(divisions), complete ? said : `${said}; not everything was tried`);
}
