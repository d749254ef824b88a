import { type Head, indexTable, type TableOptions, type TableRow } from "../src/index.ts";
import { shortSetting, tableColumns, tableWithWhys } from "../src/words/index.ts";
import { fault, optionNames, wholeNumber } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { progress } from "./progress.ts";
import { withOptionNames } from "./read-options.ts";
import { searchAsked } from "./shared-options.ts";
import { line } from "./words.ts";

/** `table 2-100`: every count in a range with its preferred setting. */
export function tableAsked(words: string, head: Head, options: Options): More {
  const range = { ...rangeAsked(words), ...searchAsked(options) };
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

function rangeAsked(words: string): Pick<TableOptions, "from" | "to"> {
  const [first = "", last = first, more] = words.split(/[-–]/);
  if (words.trim() === "" || more !== undefined)
    throw fault("missing", "", `"${words.slice(0, 40)}" is no range of counts; give one such as table 2-100`);
  return { from: wholeNumber(first, "table"), to: wholeNumber(last, "table") };
}

function rowLine({ divisions, setting, complete }: TableRow): string {
  const said = setting === null ? (complete ? "not possible exactly" : "none found") : shortSetting(setting);
  return line(String(divisions), complete ? said : `${said}; not everything was tried`);
}
