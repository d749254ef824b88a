import { cautionItemsBesides, offByItems, orderItems } from "../../src/words/index.ts";
import { el } from "./el.ts";
import { disclosure, itemList, kindLine } from "./pieces.ts";
import type { Walk } from "./walk.ts";
import { wayPanel } from "./way-panel.ts";

/** How the way of a job is set up, and what to mind. */
export function setUpPanel({ plan, job }: Walk): HTMLElement {
  return disclosure(
    "Set up, and what to mind",
    kindLine(plan.way),
    wayPanel(plan.way, job.head, [...offByItems(plan), ...orderItems(plan, job.head)], null),
    el("div", { class: "mind" }, itemList(cautionItemsBesides(plan.cautions))),
  );
}
