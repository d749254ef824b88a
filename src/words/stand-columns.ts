import type { PlannedJob } from "../machine/plan.ts";
import { cranksColumns } from "./crank-columns.ts";
import { directNouns } from "./direct-nouns.ts";
import { whole } from "./numbers.ts";
import { ofCircle, type PlaceColumn, type Stands, stands } from "./place-column.ts";
import type { GoesBy } from "./place-words.ts";
import { rowColumns } from "./row-words.ts";

/** Where the pins then stand; nothing where any hole serves. */
export function standColumns(
  { way: { setting }, places }: Pick<PlannedJob, "way" | "places">,
  by: GoesBy,
): readonly PlaceColumn[] {
  if ("small" in setting) return cranksColumns(setting, places, by);
  if (setting.circle === null) return [];
  if ("vernierHoles" in setting) return rowColumns(setting);
  const group = "THEN AT";
  const turns: PlaceColumn = { key: "turns", head: "turns", group, sets: false, cell: stands((place) => whole(place.turns)) };
  const hole: PlaceColumn = {
    key: "hole",
    head: `${directNouns(setting).place}${ofCircle(setting)}`,
    group,
    sets: false,
    cell: stands((place) => String(place.hole)),
  };
  const there = by === "index-holes" ? [turns, hole] : [hole];
  if (!("second" in setting)) return there;
  return [...there, { key: "rear-hole", head: `rear${ofCircle(setting.second)}`, group, sets: false, cell: stands(rearWords) }];
}

function rearWords(place: Stands): string {
  return place.by === "moves" ? String(place.rearHole ?? "") : "";
}
