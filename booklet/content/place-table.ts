import type { Head, Place, PlannedJob } from "../../src/index.ts";
import { type ColumnHead, type PlaceColumn, placeColumns } from "../../src/words/index.ts";
import type { Block } from "./blocks.ts";
import type { Cell, Column } from "./table-block.ts";

/** A column of places or readings as a table of the book has it: what the hand sets is strong. */
export function columnOf({ key, head, group, sets }: ColumnHead): Column {
  return {
    head: head.replace(" of ", "\nof "),
    ...(group === undefined ? {} : { group }),
    align: "right",
    strong: sets,
    ...(sets ? {} : { ...(key === "error" ? {} : { size: "fine" as const }), ...whereNarrow[key] }),
  };
}

/** What becomes of a column that only checks where room is short. */
const whereNarrow: Readonly<Partial<Record<ColumnHead["key"], Pick<Column, "aside" | "under" | "spare">>>> = {
  angle: { aside: "true angle {}", spare: true },
  ring: { aside: "ring {}" },
  error: { under: "off by {}" },
};

/** The cells of a place in the columns of a table. */
export function placeCells(columns: readonly PlaceColumn[], place: Place): readonly Cell[] {
  return columns.map(({ cell }) => ({ text: cell(place) }));
}

/**
 * Every place of a job, each with a box to tick.
 *
 * @param noun - What the places are; left out, teeth.
 */
export function positionsTable(job: PlannedJob, head: Head, noun = "tooth"): Block {
  const all = placeColumns(job, head);
  // Where each place is one move on from the last, the large figures say how to go on.
  const columns = isMoveByMove(job) ? all.filter(({ key }) => !goOn.has(key)).map(holesStrong) : all;
  return {
    kind: "table",
    title: { text: "Positions", anchor: "positions" },
    folds: true,
    summary: "Positions of the job",
    columns: [{ head: "", align: "center" }, { head: noun, align: "right", strong: true }, ...columns.map(columnOf)],
    rows: job.places.map((place) => ({
      cells: [{ text: "", box: true }, { text: String(place.tooth) }, ...placeCells(columns, place)],
    })),
  };
}

/** The hole is then what the hand comes to. */
function holesStrong(column: PlaceColumn): PlaceColumn {
  return ["hole", "rear-hole", "small-hole"].includes(column.key) ? { ...column, sets: true } : column;
}

const goOn: ReadonlySet<PlaceColumn["key"]> = new Set(["go-turns", "go-spaces", "go-both", "go-small"]);

function isMoveByMove({ places }: Pick<PlannedJob, "places">): boolean {
  return places.every((place, index) => {
    if (place.by !== "moves" || place.from.direction === "back") return false;
    return place.from.moves === 1 || (index === 0 && place.from.moves === 0);
  });
}
