import type { Place } from "../../src/index.ts";
import {
  checkItem,
  eachPlaceItem,
  goOnWords,
  holeStands,
  type PlaceColumn,
  placeColumns,
  provingWords,
  purposeWords,
  startItem,
  startWords,
} from "../../src/words/index.ts";
import { type Child, el } from "./el.ts";
import { itemList, tiles } from "./pieces.ts";
import type { Step, Walk } from "./walk.ts";

/** The place that a walk has come to, in figures to be read from the machine; at the end, that it is done. */
export function placePanel(walk: Walk): Child {
  const { steps, job, plan } = walk;
  const step = steps[job.done];
  const count = `${job.done} of ${steps.length} done`;
  const progress = el("progress", { max: steps.length, value: job.done, "aria-label": count });
  if (step === undefined) return [el("h3", { class: "at" }, "ALL DONE"), progress, el("p", {}, count), closeCard(walk)];
  const columns = placeColumns(plan, job.head);
  return [
    el("h3", { class: "at" }, step.repair ? `${purposeWords[step.repair.purpose]} ` : "", `${walk.noun} ${step.place.tooth}`.toUpperCase()),
    progress,
    el("p", { class: "count" }, count, step.repair && `; between teeth ${step.repair.between}`),
    job.done === 0 && itemList([startItem(plan, job.head), eachPlaceItem(plan.way, job.head)]),
    checkCard(step, walk),
    el("div", { class: "go" }, tiles(figuresOf(columns.filter(({ sets }) => sets), step.place))),
    el("div", { class: "stands" }, tiles(figuresOf(columns.filter(({ sets }) => !sets), step.place))),
    step.repair?.purpose === "set the cutter" && el("p", {}, startWords(plan.way)),
    step.repair?.purpose === "prove the count" && el("p", {}, provingWords),
  ];
}

function figuresOf(columns: readonly PlaceColumn[], place: Place) {
  return columns.map(({ group = "", head, cell }) => ({ head: `${group} ${head}`.trim().toUpperCase(), figure: cell(place), under: "" }));
}

/** A check that is due when the work stands here. */
function checkCard({ check }: Step, walk: Walk): Child {
  if (check === null) return null;
  const { term, text } = checkItem(check, walk.plan.way, { noun: walk.noun, head: walk.job.head });
  return el("p", { class: "check" }, el("b", {}, `CHECK: ${term}. `), `The work must stand so: ${text}.`);
}

function closeCard({ close, plan, job, noun }: Walk): Child {
  if (close === null) return null;
  const { term, text } = checkItem(close, plan.way, { noun, head: job.head });
  return el("p", { class: "check" }, el("b", {}, `CHECK: ${term}. `), `Go on once more; the work must stand so: ${text}.`);
}

/** The place in a line, to be read aloud. */
export function aloudAt({ steps, job, plan, noun }: Walk): string {
  const step = steps[job.done];
  if (step === undefined) return "All done";
  const parts = [goOnWords(step.place, plan.way), holeStands(step.place, plan.way)].filter((each) => each !== "");
  return `${noun} ${step.place.tooth}: ${parts.join("; ")}${step.check === null ? "" : "; check due"}`;
}
