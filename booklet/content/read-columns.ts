import type { Head } from "../../src/index.ts";
import { cautionItem, handOf, type ScaleColumn, scaleColumns, whole } from "../../src/words/index.ts";
import type { ReadPlace, ScaleName } from "./readings.ts";
import { nothing } from "./setting-cells.ts";
import type { Cell, Column } from "./table-block.ts";

/** A column of places that are read off scales. */
export interface ReadColumn {
  readonly column: Column;
  cell(place: ReadPlace): Cell;
}

/**
 * The columns of what dial and ring show, in the order in which they are read; where a head without a
 * dial is set by whole turns of its handwheel, those stand before its ring.
 */
export function readColumns(head: Head, by: ScaleName, hasWholeTurns: boolean): readonly ReadColumn[] {
  const scales = scaleColumns(head, by).map(
    (scale): ReadColumn => ({ column: readColumn(scale), cell: (place) => ({ text: scale.cell(place) }) }),
  );
  return head.dial === null && hasWholeTurns ? [wholeTurns, ...scales] : scales;
}

/**
 * Without a head over several columns: turns and reading stand well apart, so that 12 and 3° are not
 * read as 123°. The ring tells the turns, and is never spared.
 */
function readColumn({ key, head, sets }: ScaleColumn): Column {
  return {
    head: key === "dial" && head === "reads" ? "dial" : head,
    align: "right",
    strong: sets,
    ...(!sets ? { size: "fine" as const } : {}),
  };
}

const wholeTurns: ReadColumn = {
  column: { head: "whole\nturns", align: "right", strong: true },
  cell: ({ wholeTurns: turns }) => ({ text: turns === null ? nothing : whole(turns) }),
};

/** What must be known to set any place by a scale: the zero, the way to turn, what spoils the work. */
export function toKnowOfReadings(head: Head): string {
  const { dial, ring } = head;
  const scales = [...(dial ? ["dial"] : []), ...(ring ? ["ring"] : [])].join(" and ");
  const said = [
    cautionItem({ code: "never-add-steps" }),
    cautionItem({ code: "one-way", hand: handOf(head), to: "mark" }),
    cautionItem({ code: "lock-spindle" }),
  ];
  return `At position no. 1 set ${scales} to 0; ${dial && ring ? "their" : "its"} figures rise from there. ${said.map(({ text }) => text).join(" ")}`;
}
