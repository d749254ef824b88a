import type { Head, PlannedJob, RecutPlan, RepairPlace, RepairPurpose } from "../../src/index.ts";
import { placeColumns } from "../../src/words/index.ts";
import type { Block } from "./blocks.ts";
import { columnOf, placeCells } from "./place-table.ts";
import type { Cell } from "./table-block.ts";

/** The moves of a repair, each with a box to tick. */
export function repairMoves(job: PlannedJob, moves: readonly RepairPlace[], plan: RecutPlan, head: Head): Block {
  const columns = placeColumns(job, head);
  return {
    kind: "table",
    folds: moves.length > mostInOneColumn,
    summary: "Moves of the repair",
    columns: [
      { head: "", align: "center" },
      { head: "space", align: "right", strong: true },
      { head: "do", align: "center" },
      { head: "flanks", align: "left" },
      ...columns.map(columnOf),
    ],
    rows: moves.map((move) => ({
      cells: [{ text: "", box: true }, ...spaceCells(move, plan), ...placeCells(columns, move.position)],
    })),
  };
}

const mostInOneColumn = 16;

const purposes: Readonly<Record<RepairPurpose, Cell>> = {
  "set the cutter": { text: "START", reversed: true },
  recut: { text: "cut" },
  "prove the count": { text: "PROVE", reversed: true },
};

/** Space, what is done there, and of its two flanks which are sound. */
function spaceCells({ toothSpace, purpose }: RepairPlace, { spaces }: RecutPlan): readonly Cell[] {
  const cut = purpose === "recut" ? spaces.find((each) => each.toothSpace === toothSpace) : undefined;
  const flanks = cut?.flanks.map(({ state }) => (state === "sound" ? "sound" : "new")) ?? ["sound", "sound"];
  return [{ text: String(toothSpace) }, purposes[purpose], { text: flanks.join(" | ") }];
}
