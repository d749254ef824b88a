import type { Head, Way } from "../../src/index.ts";
import { type Figure, type Item, wayFigures, wayItems } from "../../src/words/index.ts";
import { el } from "./el.ts";
import { button, itemList, tiles } from "./pieces.ts";
import { plateDrawing } from "./plate-drawing.ts";
import { trainDrawing } from "./train-drawing.ts";

/**
 * A way set up: what the hand sets in figures and the rest item by item, beside the drawings where there is room.
 *
 * @param more - What else is to be said of it.
 * @param work - Begins to work through it; null where that is not offered.
 */
export function wayPanel(way: Way, head: Head, more: readonly Item[], work: (() => void) | null): HTMLElement {
  const { figures, items } = setUp(way, head);
  return el(
    "div",
    { class: "beside" },
    el("div", {}, tiles(figures), work !== null && button("Work through it", work, "main"), itemList([...items, ...more])),
    el("div", { class: "drawings" }, plateDrawing(way, head), "gears" in way.setting && trainDrawing(way.setting.gears)),
  );
}

/** The stop pin stands among the figures: it is what is forgotten. */
function setUp(way: Way, head: Head): { readonly figures: readonly Figure[]; readonly items: readonly Item[] } {
  const items = wayItems(way, head).filter(({ inFigures }) => !inFigures);
  const pin = items.find(({ term }) => term === "Plate stop pin");
  const [, stands = "", why = ""] = /^(IN|OUT)[:,]?\s*(.*)$/.exec(pin?.text ?? "") ?? [];
  const figures = wayFigures(way, head);
  return stands === ""
    ? { figures, items }
    : { figures: [...figures, { head: "STOP PIN", figure: stands, under: why }], items: items.filter((item) => item !== pin) };
}
