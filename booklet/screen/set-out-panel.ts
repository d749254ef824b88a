import { shortAngle } from "../../src/words/index.ts";
import type { Desk } from "./desk.ts";
import { el } from "./el.ts";
import type { Job } from "./job.ts";
import { linkOf } from "./link.ts";
import { angleTyped, teethText, teethTyped, wholeTyped } from "./numbers-typed.ts";
import { choice, disclosure, field, form } from "./pieces.ts";
import { type Walk, walkOf } from "./walk.ts";

/** Sets a job out otherwise: some teeth, another hole to start in, another zero of the scales. It begins anew. */
export function setOutPanel({ job, plan }: Walk, desk: Desk): HTMLElement {
  const { work } = job;
  const typed = (value: string) => {
    const input = el("input", { autocomplete: "off", size: 9 });
    input.value = value;
    return input;
  };
  const teeth = typed(work.kind === "divide" ? teethText(work.teeth) : "");
  const hole = typed(String(job.startHole));
  const at = typed(shortAngle(job.startAngle));
  const side = choice(
    [
      ["plus", "rise"],
      ["minus", "fall"],
    ],
    job.side,
    () => {},
  );

  function begin() {
    const asked: Job = {
      ...job,
      // Of near ways another may be the best for the teeth named.
      way: plan.exact ? job.way : null,
      work: work.kind === "divide" ? { ...work, teeth: teethTyped(teeth.value) } : work,
      startHole: wholeTyped(hole.value, "start hole"),
      startAngle: angleTyped(at.value, "scales"),
      side: side.value === "minus" ? "minus" : "plus",
      done: 0,
    };
    location.hash = linkOf(walkOf(asked).job, desk.known);
  }

  return disclosure(
    "Set out otherwise",
    form(
      "Begin anew, so set out",
      begin,
      work.kind === "divide" && field("Only these, in this order, or “every 19”; empty for all", teeth),
      el("div", { class: "row" }, field("Pin starts in hole", hole), field("Scales stand at", at), field("and from there", side)),
    ),
  );
}
