import type { Head } from "../head/head.ts";
import type { Way } from "../machine/way.ts";
import { stopPinIn } from "./crank-items.ts";
import { circleFigure, type Figure } from "./figures.ts";
import type { Item } from "./item.ts";
import { nearNames, settingTitle } from "./kinds.ts";
import { methodWords } from "./methods.ts";
import { directTitle, nearestDirectFigures, nearestDirectItems, onDirect } from "./nearest-direct-words.ts";
import { plateName } from "./plates.ts";
import { settingFigures, settingItems, shortSetting } from "./setting-words.ts";
import { bothFigures, bothItems, bothTitle, onBoth } from "./wide-range-words.ts";

/** A way as a title: `COMPOUND INDEXING`, `THE NEAREST HOLES`. */
export function wayTitle(way: Way): string {
  switch (way.by) {
    case "moves":
      return settingTitle(way.setting);
    case "nearest-hole":
      return "THE NEAREST HOLES";
    case "both-cranks":
      return bothTitle;
    case "nearest-direct":
      return directTitle(way.setting);
    case "dial":
      return "BY THE DIAL";
    case "ring":
      return "BY THE RING";
  }
}

/** A way in one or two words, as in a list of others: `compound`, `nearest hole`. */
export function wayName(way: Way): string {
  const { setting } = way;
  return (setting.exact ? methodWords[setting.method].name : nearNames[setting.kind]).toLowerCase();
}

/** A way in few words, enough to set it by: `0 + 2 of 43 + 15 of 41 (plate 3)`, `the nearest holes of 49 (plate 3)`. */
export function wayShort(way: Way): string {
  switch (way.by) {
    case "moves":
      return `${wayName(way)} ${shortSetting(way.setting)}`;
    case "nearest-hole":
      return `the nearest holes of ${way.setting.circle} (plate ${plateName(way.setting)})`;
    case "both-cranks":
      return `the nearest holes of ${onBoth(way.setting)}`;
    case "nearest-direct":
      return `the nearest ${onDirect(way.setting)}`;
    case "dial":
    case "ring":
      return `the ${way.by}`;
  }
}

/** What the hand sets on a way, in figures to be read from the machine, in the order of work. */
export function wayFigures(way: Way, head: Head): readonly Figure[] {
  switch (way.by) {
    case "moves":
      return settingFigures(way.setting, head);
    case "nearest-hole": {
      const circle = circleFigure(way.setting);
      return [{ ...circle, under: `${circle.under}: nearest holes` }];
    }
    case "both-cranks":
      return bothFigures(way.setting);
    case "nearest-direct":
      return nearestDirectFigures(way.setting);
    case "dial":
    case "ring":
      return [{ head: "SET BY", figure: way.by, under: "from one zero" }];
  }
}

/** How a way is set up, item by item. */
export function wayItems(way: Way, head: Head): readonly Item[] {
  switch (way.by) {
    case "moves":
      return settingItems(way.setting, head);
    case "nearest-hole":
      return [
        { term: "Plate", text: `${plateName(way.setting)}, circle of ${way.setting.circle} holes`, inFigures: true },
        stopPinIn(head),
        {
          term: "Set",
          text: "every place to its own nearest hole; no error adds to the next",
        },
      ];
    case "both-cranks":
      return bothItems(way.setting, head);
    case "nearest-direct":
      return nearestDirectItems(way.setting);
    case "dial":
    case "ring":
      return [{ term: "Set", text: `every place by the ${way.by} from one zero; no error adds to the next` }];
  }
}
