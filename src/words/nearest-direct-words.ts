import type { NearBy } from "../setting/near-setting.ts";
import { directNouns } from "./direct-nouns.ts";
import { circleFigure, type Figure } from "./figures.ts";
import type { Item } from "./item.ts";

/** The places that are set by: `of 24 on the direct plate A`, `of 36 with a row of 10 on the direct plate B`. */
export function onDirect(setting: NearBy<"nearest-direct">): string {
  const { circle, plate, vernierHoles = 1 } = setting;
  const row = vernierHoles === 1 ? "" : ` with a row of ${vernierHoles}`;
  return `of ${circle / vernierHoles}${row} on the ${directNouns(setting).what} ${plate}`;
}

/** Every place by the nearest of a direct plate, as a title. */
export function directTitle(setting: NearBy<"nearest-direct">): string {
  return `THE NEAREST ${directNouns(setting).places.toUpperCase()}`;
}

/** What the hand sets on it, in figures. */
export function nearestDirectFigures(setting: NearBy<"nearest-direct">): readonly Figure[] {
  const { circle, vernierHoles = 1 } = setting;
  const on = circleFigure({ ...setting, circle: circle / vernierHoles });
  return [{ ...on, under: `${on.under}: nearest ${directNouns(setting).places}` }];
}

/** How it is set up. */
export function nearestDirectItems(setting: NearBy<"nearest-direct">): readonly Item[] {
  const { what, place } = directNouns(setting);
  return [
    { term: "Plate", text: onDirect(setting).slice("of ".length), inFigures: true },
    { term: "Set", text: `every place to the nearest ${place} of the ${what}; no error adds to the next` },
  ];
}
