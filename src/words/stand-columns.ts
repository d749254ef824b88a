import type { PlannedJob } from "../machine/plan.ts";
import type { Way } from "../machine/way.ts";
import { cranksColumns } from "./crank-columns.ts";
import { whole } from "./numbers.ts";
import { ofCircle, type PlaceColumn, type Stands, stands } from "./place-column.ts";
import type { GoesBy } from "./place-words.ts";
import { directNouns } from "./plates.ts";

/** Where the pins then stand; nothing where any hole serves. */
export function standColumns(
  { way: { setting }, places }: Pick<PlannedJob, "way" | "places">,
  by: GoesBy,
): readonly PlaceColumn[] {
  if ("small" in setting) return cranksColumns(setting, places, by);
  if (setting.circle === null) return [];
  const sets = by === "spindle-row";
  const group = sets ? "GO ON TO" : "THEN AT";
  const turns: PlaceColumn = { key: "turns", head: "turns", group, sets: false, cell: stands((place) => whole(place.turns)) };
  const hole: PlaceColumn = {
    key: "hole",
    head: `${directNouns(setting).place}${ofCircle({ circle: setting.circle / rowOf(setting) })}`,
    group,
    sets,
    cell: stands((place) => String(place.hole)),
  };
  if (sets) {
    const row = `of the row${ofCircle({ circle: rowOf(setting) })}`;
    return [hole, { key: "row-hole", head: row, group, sets, cell: stands(rowWords) }];
  }
  const there = by === "index-holes" ? [turns, hole] : [hole];
  if (!("second" in setting)) return there;
  return [...there, { key: "rear-hole", head: `rear${ofCircle(setting.second)}`, group, sets: false, cell: stands(rearWords) }];
}

/** Holes of the row beside a direct plate; 1 where there is none. */
function rowOf(setting: Way["setting"]): number {
  return "vernierHoles" in setting ? (setting.vernierHoles ?? 1) : 1;
}

function rearWords(place: Stands): string {
  return place.by === "moves" ? String(place.rearHole ?? "") : "";
}

function rowWords(place: Stands): string {
  return "vernierHole" in place ? String(place.vernierHole ?? "") : "";
}
