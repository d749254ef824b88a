import type { MoveBetween } from "../machine/place.ts";
import type { PlannedJob } from "../machine/plan.ts";
import { smallColumn } from "./crank-columns.ts";
import { ofCircle, type PlaceColumn } from "./place-column.ts";

/** How to go on from the place before; a part that goes back is made first, so that the worm is last moved forward. */
export function goColumns(
  { way: { setting }, places }: Pick<PlannedJob, "way" | "places">,
  byCrank: boolean,
): readonly PlaceColumn[] {
  const second = "second" in setting ? setting.second : null;
  const bothFirst = second?.direction === "against";
  const group = bothFirst ? "THEN GO ON BY" : "GO ON BY";
  const turns: PlaceColumn = { key: "go-turns", head: "turns", group, sets: true, cell: goes((on) => back(on, on.turns)) };
  const spaces: PlaceColumn = {
    key: "go-spaces",
    head: `spaces${ofCircle(setting)}`,
    group,
    sets: true,
    cell: goes((on) => (byCrank ? String(on.spaces) : back(on, on.spaces))),
  };
  const alone = byCrank ? [turns, spaces] : [spaces];
  if ("small" in setting) return [...alone, smallColumn(setting.small, goes)];
  if (second === null) return alone;
  const hasTurns = places.some((place) => place.by === "moves" && (place.from.second?.turns ?? 0) > 0);
  const both: PlaceColumn = {
    key: "go-both",
    head: `${hasTurns ? "turns + " : ""}spaces${ofCircle(second)}`,
    group: bothFirst ? "FIRST BOTH" : "THEN BOTH",
    sets: true,
    cell: goes(bothWords),
  };
  return bothFirst ? [both, ...alone] : [...alone, both];
}

function goes(cell: (from: GoOn) => string): PlaceColumn["cell"] {
  return (place) => ("from" in place ? (isStill(place.from) ? "–" : cell(place.from)) : "");
}

type GoOn = Pick<MoveBetween, "direction" | "turns" | "spaces"> & Partial<Pick<MoveBetween, "second" | "small">>;

function isStill({ turns, spaces, second, small }: GoOn): boolean {
  const other = second ?? small;
  return turns === 0 && spaces === 0 && (other === undefined || other.spaces + other.turns === 0);
}

/** What is read first says that it goes back. */
function back({ direction }: GoOn, count: number): string {
  return direction === "back" ? `BACK ${count}` : String(count);
}

function bothWords({ direction, second }: GoOn): string {
  if (second === undefined) return "";
  const goesOn = (second.direction === "with") === (direction === "forward");
  return `${goesOn ? "on" : "back"} ${second.turns > 0 ? `${second.turns} + ` : ""}${second.spaces}`;
}
