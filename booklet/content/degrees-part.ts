import { type Head, type NearBy, planJob } from "../../src/index.ts";
import { arcUpTo, cautionItem, lengthOf, lengthsIn, type PlaceColumn, placeColumns } from "../../src/words/index.ts";
import type { Part } from "./blocks.ts";
import { commonestCounts } from "./commonest-counts.ts";
import { footRule } from "./foot-rule.ts";
import type { Desk } from "./parts.ts";
import { type Positions, positionTables } from "./position-tables.ts";
import { readColumns, toKnowOfReadings } from "./read-columns.ts";
import { type ReadCount, toldAtMm, usualScale } from "./readings.ts";
import type { SeriesBlock, SeriesTable } from "./series-block.ts";
import type { Cell, Column } from "./table-block.ts";
import { anchorOf, plateOf } from "./words.ts";

/** Every position of chosen counts: by the scales of the head, or by its nearest holes where those come nearer. */
export function degreesPart(desk: Desk): Part | null {
  const { head } = desk;
  const tables = positionTables(desk);
  if (tables.length === 0) return null;
  const read = tables.flatMap((table) => (table.by === "scales" ? [table.read] : []));
  const holes = tables.filter((table) => table.by === "holes");
  return {
    id: "degrees",
    title: "Every position, count by count",
    ...(desk.degreeTables === null || desk.degreeTables.some((count) => !commonestCounts.includes(count))
      ? {}
      : { warning: asChosen }),
    rule: footRule(head, { method: "simple", near: true }),
    blocks: [...(read.length === 0 ? [] : [readSeries(head, read)]), ...(holes.length === 0 ? [] : [holeSeries(desk, holes)])],
  };
}

const asChosen = "The counts that shops use most, chosen by common practice. For any other print its job sheet.";

const position: Column = { head: "no.", align: "right" };

function readSeries(head: Head, counts: readonly ReadCount[]): SeriesBlock {
  const all = counts.map((count) => ({ count, places: count.places() }));
  const hasWholeTurns = all.some(({ places }) => places.some(({ wholeTurns }) => wholeTurns !== null));
  const columns = readColumns(head, usualScale(head), hasWholeTurns);
  return {
    kind: "series",
    summary: "Every position by dial and ring",
    toKnow: toKnowOfReadings(head),
    columns: [position, ...columns.map(({ column }) => column)],
    tables: all.map(({ count, places }) => ({
      ...headed(count.divisions, readNotes(count, head)),
      rows: places.map((place) => ({ cells: [{ text: String(place.tooth) }, ...columns.map(({ cell }) => cell(place))] })),
    })),
  };
}

/** How far off the worst place is; and what is unusual about the way. */
function readNotes({ by, worstArcSeconds, teethPerMove }: ReadCount, head: Head): readonly string[] {
  const off = worstArcSeconds === 0 ? "exact" : offAtMost(worstArcSeconds);
  return [
    ...(by === usualScale(head) ? [off] : [`${off}, set by the ${by}`]),
    ...(teethPerMove === 1 ? [] : [`in this order, ${teethPerMove} times round`]),
  ];
}

function offAtMost(arcSeconds: number): string {
  return `within ${arcUpTo(arcSeconds)}, ${lengthOf(arcSeconds, toldAtMm, lengthsIn("mm"))} at ${toldAtMm} mm`;
}

function headed(divisions: number, notes: readonly string[]): Pick<SeriesTable, "title" | "anchor" | "headword" | "notes"> {
  return { title: `${divisions} divisions`, anchor: anchorOf("degrees", divisions), headword: String(divisions), notes };
}

/** Of the places by holes: how to go on from the one before, and where that stands. */
const holeKeys: readonly PlaceColumn["key"][] = ["go-turns", "go-spaces", "hole", "dial-turns", "dial", "dial-line", "ring"];

type ByHoles = Extract<Positions, { readonly by: "holes" }>;

function holeSeries({ head, on }: Desk, tables: readonly ByHoles[]): SeriesBlock {
  const all = tables.map(({ divisions, setting }) => {
    const plan = planJob(on, { divisions }, { setting });
    if (!plan.planned) throw new Error(`turns-and-holes is at fault, please report it: ${divisions} has holes and no places`);
    const columns = placeColumns(plan, head).filter(({ key }) => holeKeys.includes(key));
    const rows = plan.places.map((place) => ({
      cells: [{ text: String(place.tooth) }, ...columns.map(({ cell }): Cell => ({ text: cell(place) }))],
    }));
    return { columns, table: { ...headed(divisions, holeNotes(head, setting)), rows } };
  });
  return {
    kind: "series",
    summary: "Every position by the nearest holes",
    toKnow: toKnowOfHoles,
    columns: [position, ...(all[0]?.columns ?? []).map(onAnyCircle)],
    tables: all.map(({ table }) => table),
  };
}

/** The circle is named over each table and not over its columns. */
function onAnyCircle(column: PlaceColumn): Column {
  const { key, head, group, sets } = column;
  const strong = sets || key === "hole";
  return {
    head: head.replace(/ of \d+$/, ""),
    ...(group === undefined ? {} : { group }),
    align: "right",
    strong,
    ...(!strong ? { size: "fine" as const } : {}),
  };
}

function holeNotes(head: Head, setting: NearBy<"nearest-hole">): readonly string[] {
  return [`circle of ${setting.circle}, plate ${plateOf(head, setting)}`, offAtMost(setting.worstArcSeconds)];
}

const toKnowOfHoles = `At position no. 1 the pin stands in hole 0 of the circle named; holes are numbered the way the crank goes. ${[
  cautionItem({ code: "moves-differ" }),
  cautionItem({ code: "stop-pin", stands: "in" }),
  cautionItem({ code: "one-way", hand: "crank", to: "hole" }),
  cautionItem({ code: "lock-spindle" }),
]
  .map(({ text }) => text)
  .join(" ")}`;
