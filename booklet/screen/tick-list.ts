import { purposeWords } from "../../src/words/index.ts";
import { el, fill } from "./el.ts";
import { disclosure } from "./pieces.ts";
import { stepWords } from "./place-panel.ts";
import type { Step, Walk } from "./walk.ts";

/** The most places that are listed at once, before and after the one that is next. */
const mostListed = 400;

/** Every place of a walk with a box to tick; made when it is opened, or printed. */
export function tickList(begun: Walk, jump: (done: number) => void): { readonly node: HTMLElement; show(walk: Walk): void } {
  let walk = begun;
  const list = el("ol", { class: "ticks" });
  const node = disclosure("All places", list);
  node.addEventListener("toggle", draw);
  addEventListener("beforeprint", () => {
    if (!node.isConnected) return;
    node.open = true;
    draw();
  });

  function draw() {
    if (!node.open) return;
    const first = Math.max(0, Math.min(walk.job.done - mostListed / 2, walk.steps.length - mostListed));
    const shown = walk.steps.slice(first, first + mostListed);
    fill(
      list,
      shown.map((step, index) => row(step, first + index)),
      shown.length < walk.steps.length && el("li", {}, `Places ${first + 1} to ${first + shown.length} of ${walk.steps.length}.`),
    );
  }

  function row(step: Step, index: number): HTMLElement {
    const { place, repair } = step;
    const box = el("input", { type: "checkbox", onchange: () => jump(box.checked ? index + 1 : index) });
    box.checked = index < walk.job.done;
    const name = `${repair === null ? "" : `${purposeWords[repair.purpose]} `}${walk.noun} ${place.tooth}`;
    return el(
      "li",
      { class: index === walk.job.done ? "next" : "" },
      el("label", {}, box, el("b", {}, name), ` ${stepWords(step, walk.plan, walk.job.head).join(" · ")}`),
    );
  }

  return {
    node,
    show(now) {
      walk = now;
      draw();
    },
  };
}
