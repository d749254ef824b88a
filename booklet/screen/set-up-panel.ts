import { cautionItemsBesides, offByItems } from "../../src/words/index.ts";
import { el } from "./el.ts";
import { disclosure, itemList, kindLine, setUp, tiles } from "./pieces.ts";
import { plateDrawing } from "./plate-drawing.ts";
import { trainDrawing } from "./train-drawing.ts";
import type { Walk } from "./walk.ts";

/** How the way of a job is set up, and what to mind. */
export function setUpPanel({ plan, job }: Walk): HTMLElement {
  const { figures, items } = setUp(plan.way, job.head);
  const { setting } = plan.way;
  return disclosure(
    "Set up, and what to mind",
    kindLine(plan.way),
    el(
      "div",
      { class: "beside" },
      el("div", {}, tiles(figures), itemList([...items, ...offByItems(plan)])),
      el("div", { class: "drawings" }, plateDrawing(plan.way, job.head), "gears" in setting && trainDrawing(setting.gears)),
    ),
    el("div", { class: "mind" }, itemList(cautionItemsBesides(plan.cautions))),
  );
}
