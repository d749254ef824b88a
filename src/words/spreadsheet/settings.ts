import type { Setting } from "../../setting/setting.ts";
import type { TableRow } from "../../table.ts";
import { type Cells, type TextColumn, told } from "./columns.ts";

const gearsOf = (setting: Setting | null) => (setting?.method === "differential" ? setting.gears : null);
const secondOf = (setting: Setting | null) => (setting?.method === "compound" ? setting.second : null);
const smallOf = (setting: Setting | null) => (setting?.method === "wide-range" ? setting.small : null);

const ofSetting: Cells<TableRow> = {
  divisions: ({ divisions }) => divisions,
  method: ({ setting }) => setting?.method,
  plate: ({ setting }) => setting?.plate,
  face: ({ setting }) => setting?.face,
  circle: ({ setting }) => setting?.circle,
  turns: ({ setting }) => setting?.turns,
  spaces: ({ setting }) => setting?.spaces,
  "arms enclose": ({ setting }) => setting?.armsEnclose,
  "second circle": ({ setting }) => secondOf(setting)?.circle,
  "second spaces": ({ setting }) => secondOf(setting)?.spaces,
  "second part": ({ setting }) => secondOf(setting)?.direction,
  "small circle": ({ setting }) => smallOf(setting)?.circle,
  "small turns": ({ setting }) => smallOf(setting)?.turns,
  "small spaces": ({ setting }) => smallOf(setting)?.spaces,
  drivers: ({ setting }) => gearsOf(setting)?.drivers.join(" × "),
  driven: ({ setting }) => gearsOf(setting)?.driven.join(" × "),
  idlers: ({ setting }) => gearsOf(setting)?.idlers,
  "plate turns": ({ setting }) => gearsOf(setting)?.direction,
  "may foul": ({ setting }) => (gearsOf(setting)?.mayFoul ? "yes" : null),
  "teeth per move": ({ setting }) => setting?.teethPerMove,
  "not all tried": ({ complete }) => (complete ? null : "yes"),
};

/**
 * The rows of a table as columns with one value a cell, for a spreadsheet: a count that nothing closes
 * has no method. A column that would be empty is not there.
 */
export function tableColumns(rows: readonly TableRow[]): readonly TextColumn[] {
  return told(rows, ofSetting);
}
