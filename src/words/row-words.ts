import type { Way } from "../machine/way.ts";
import type { SettingBy } from "../setting/setting.ts";
import { directNouns } from "./direct-nouns.ts";
import type { Figure } from "./figures.ts";
import type { Item } from "./item.ts";
import { counted } from "./numbers.ts";
import { ofCircle, type PlaceColumn, stands } from "./place-column.ts";

/*
 * What is said of a row of holes beside a direct plate, through which the pin drops.
 */

/** A move by the plate and its row. */
export function rowItems(setting: SettingBy<"direct">): readonly Item[] {
  const { spaces, vernierHoles = 1 } = setting;
  return [
    { term: "Row of holes", text: `${vernierHoles}, each 1/${vernierHoles} of a space on`, inFigures: true },
    {
      term: "Move",
      text: `${counted(Math.floor(spaces / vernierHoles), "space")} + ${spaces % vernierHoles} of the row`,
      inFigures: true,
    },
    {
      term: "Each place",
      text: `turn to its ${directNouns(setting).place}, then on until the pin drops through its hole of the row`,
    },
  ];
}

/** What of a move is counted on the row. */
export function rowFigure({ spaces, vernierHoles = 1 }: SettingBy<"direct">): Figure {
  return { head: "ROW", figure: String(spaces % vernierHoles), under: `of ${vernierHoles}` };
}

/** Which hole of the plate a place is set to, and which of the row. */
export function rowColumns(setting: Extract<Way["setting"], { readonly vernierHoles?: number }>): readonly PlaceColumn[] {
  const { circle, vernierHoles: row = 1 } = setting;
  const column = (key: "hole" | "row-hole", of: string, cell: PlaceColumn["cell"]): PlaceColumn => ({
    key,
    head: of,
    group: "GO ON TO",
    sets: true,
    cell,
  });
  return [
    column(
      "hole",
      `${directNouns(setting).place}${ofCircle({ circle: circle / row })}`,
      stands((place) => String(place.hole)),
    ),
    column(
      "row-hole",
      `of the row${ofCircle({ circle: row })}`,
      stands((place) => ("vernierHole" in place ? String(place.vernierHole ?? "") : "")),
    ),
  ];
}
