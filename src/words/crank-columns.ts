import type { MoveBetween, Place } from "../machine/place.ts";
import type { Way } from "../machine/way.ts";
import { whole } from "./numbers.ts";
import { ofCircle, type PlaceColumn, stands } from "./place-column.ts";
import type { GoesBy } from "./place-words.ts";

/** The small crank, after the large one. */
export function smallColumn(
  { circle }: { readonly circle: number },
  goes: (cell: (from: Pick<MoveBetween, "small">) => string) => PlaceColumn["cell"],
): PlaceColumn {
  return {
    key: "go-small",
    head: `turns + spaces${ofCircle({ circle })}`,
    group: "THEN SMALL CRANK",
    sets: true,
    cell: goes(({ small }) => (small === undefined ? "" : `${small.turns} + ${small.spaces}`)),
  };
}

/** Where both cranks stand; those that are set each by itself are gone to by it. */
export function cranksColumns(
  setting: Extract<Way["setting"], { readonly small: object }>,
  places: readonly Place[],
  by: GoesBy,
): readonly PlaceColumn[] {
  const sets = by === "both-cranks";
  const group = sets ? "SET TO" : "THEN AT";
  const column = (key: PlaceColumn["key"], head: string, cell: PlaceColumn["cell"]): PlaceColumn => ({
    key,
    head,
    group,
    sets,
    cell,
  });
  const turned = places.some((place) => place.by === "both-cranks" && place.smallTurns > 0);
  return [
    column(
      "turns",
      "turns",
      stands((place) => whole(place.turns)),
    ),
    ...(setting.circle === null
      ? []
      : [
          column(
            "hole",
            `hole${ofCircle(setting)}`,
            stands((place) => String(place.hole)),
          ),
        ]),
    ...(turned
      ? [column("small-turns", "small turns", (place) => (place.by === "both-cranks" ? String(place.smallTurns) : ""))]
      : []),
    column("small-hole", `small${ofCircle(setting.small)}`, (place) =>
      "smallHole" in place ? String(place.smallHole ?? "") : "",
    ),
  ];
}
