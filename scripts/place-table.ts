import type { Head, Place, PlannedJob } from "../src/index.ts";
import { goesBy, goOnWords, type PlaceColumn, placeColumns, placeNoun, readingWords } from "../src/words/index.ts";
import { type Column, table, tableWidth } from "./table.ts";

/** How wide a list may be. */
const mostWide = 80;

type Key = PlaceColumn["key"];

interface KeyedColumn extends Column {
  readonly key: Key;
}

/** The places of a job as a table, one line a place; `first` names them, by their teeth where left out. */
export function placeTable(plan: PlannedJob, head: Head, first: readonly Column[] = [toothColumn(plan)]): string[] {
  const columns = columnsOf(plan, head);
  // Where a scale is read beside it, the true angle is what can be missed most easily.
  const isTooWide = tableWidth([...first, ...columns]) > mostWide && (head.ring !== null || head.dial !== null);
  return table([...first, ...columns.filter(({ key }) => !(isTooWide && key === "angle"))]);
}

function toothColumn({ places, target }: PlannedJob): Column {
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
