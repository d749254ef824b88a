import { withPlates } from "../methods/layout.ts";
import { type Effort, take } from "../number/effort.ts";
import { sharedBy } from "../search/efforts.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import type { TableRow } from "../table.ts";

/** What is lost with one plate. */
export interface WithoutPlate {
  readonly plate: string;
  /** The counts that are done with it and not without it. */
  readonly lost: readonly number[];
}

/**
 * What is lost with each plate taken away. A count whose preferred setting is on another plate is not;
 * of the others another setting is looked for on the plates that are left.
 */
export function withoutEachPlate(search: Search, rows: readonly TableRow[], effort: Effort): readonly WithoutPlate[] {
  const { plates } = search.layout.head;
  return plates.map(({ name }) => {
    const left = plates.filter((plate) => plate.name !== name);
    const any: Search = { ...search, isAnyGood: true, layout: withPlates(search.layout, left) };
    const isLost = ({ divisions, setting }: TableRow) => {
      if (setting === null || setting.method === "direct" || (setting.plate !== name && left.length > 0)) return false;
      return take(effort, 1) && firstSetting(any, { divisions }, sharedBy(effort)) === null;
    };
    return { plate: name, lost: rows.filter(isLost).map(({ divisions }) => divisions) };
  });
}
