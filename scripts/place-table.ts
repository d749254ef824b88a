import type { Head, Place, PlannedJob } from "../src/index.ts";
import { goesBy, goOnWords, type PlaceColumn, placeColumns, placeNoun, readingWords } from "../src/words/index.ts";
import { type Column, table, tableWidth } from "./table.ts";

/** How wide a list may be. */
const mostWide = 80;

type Key = PlaceColumn["key"];

interface KeyedColumn extends Column {
  readonly key: Key;
}

/** A column that tells the places; a spare one is told by the others too. */
export interface LeadColumn extends Column {
  readonly isSpare?: boolean;
}

/**
 * The places of a job as a table, one line a place.
 *
 * @param lead - The columns that tell the places; left out, their numbers.
 */
export function placeTable(plan: PlannedJob, head: Head, lead: readonly LeadColumn[] = [numbersOf(plan)]): string[] {
  const columns = columnsOf(plan, head);
  // Where a scale is read beside it, the true angle is what can be missed most easily, then the turns since the start.
  const spareKeys: readonly Key[] = head.ring !== null || head.dial !== null ? ["angle", "turns"] : [];
  const spare: readonly Column[] = [
    ...spareKeys.flatMap((key) => columns.filter((column) => column.key === key)),
    ...lead.filter(({ isSpare }) => isSpare),
  ];
  const without = (most: number) => [...lead, ...columns].filter((column) => !spare.slice(0, most).includes(column));
  const fewest = spare.findIndex((_, most) => tableWidth(without(most)) <= mostWide);
  return table(without(fewest < 0 ? spare.length : fewest));
}

function numbersOf({ places, target }: PlannedJob): Column {
  return { head: placeNoun(target), cells: places.map(({ tooth }) => String(tooth)) };
}

/** A column as it is told here; null where another tells it too. */
type Told = ((plan: PlannedJob, head: Head) => { readonly head?: string; readonly cell?: (place: Place) => string }) | null;

const asOnPaper: Told = () => ({});

/** On paper a move and a dial have two or three columns each; here they are written out in one, and heads are narrower. */
const told: Readonly<Record<Key, Told>> = {
  "go-turns": null,
  "go-spaces": ({ way }) => ({ head: "go on by", cell: (place) => goOnWords(place, way) }),
  "go-both": null,
  turns: asOnPaper,
  hole: () => ({ head: "hole" }),
  "go-small": null,
  "small-turns": () => ({ head: "small turns" }),
  "small-hole": () => ({ head: "small" }),
  "row-hole": () => ({ head: "of row" }),
  "rear-hole": () => ({ head: "rear" }),
  error: asOnPaper,
  "dial-turns": (_, { dial, wormRatio }) => ({
    head: "dial",
    cell: (place) => (place.dial && dial ? readingWords(place.dial, dial, wormRatio) : ""),
  }),
  dial: null,
  "dial-line": null,
  ring: asOnPaper,
  angle: asOnPaper,
};

function columnsOf(plan: PlannedJob, head: Head): readonly KeyedColumn[] {
  const columns = placeColumns(plan, head).flatMap((each): readonly KeyedColumn[] => {
    const tell = told[each.key];
    if (tell === null) return [];
    const { head: name = each.head, cell = each.cell } = tell(plan, head);
    return [{ key: each.key, head: name, cells: plan.places.map(cell) }];
  });
  if (goesBy(plan.way) !== "marks") return columns;
  // What is set stands before how far it is off.
  const set = plan.way.by === "ring" ? "ring" : "dial-turns";
  const rank = ({ key }: KeyedColumn) => (key === set ? 0 : key === "error" ? 1 : 2);
  return columns.toSorted((a, b) => rank(a) - rank(b));
}
