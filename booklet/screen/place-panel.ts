import type { Check, Head, Place } from "../../src/index.ts";
import {
  checkItem,
  eachPlaceItem,
  type Figure,
  goOnWords,
  holeStands,
  type PlaceColumn,
  placeColumns,
  provingWords,
  purposeWords,
  scalesStand,
  startItem,
  startWords,
} from "../../src/words/index.ts";
import { type Child, el } from "./el.ts";
import { itemList, tiles } from "./pieces.ts";
import type { Step, Walk } from "./walk.ts";

/** The place that a walk has come to, in figures to be read from the machine; at the end, that it is done. */
export function placePanel(walk: Walk): Child {
  const { steps, job } = walk;
  const step = steps[job.done];
  const count = `${job.done} of ${steps.length} done`;
  const purpose = step?.repair ? `${purposeWords[step.repair.purpose]} ` : "";
  const at = step === undefined ? "ALL DONE" : `${purpose}${walk.noun} ${step.place.tooth}`.toUpperCase();
  return [
    el("div", { class: "at" }, el("h3", {}, at), el("span", { class: "note" }, count)),
    el("progress", { max: steps.length, value: job.done, "aria-label": count }),
    step === undefined ? checkCard(walk.close, "Go on once more", walk) : stepPanel(step, walk),
  ];
}

function stepPanel(step: Step, walk: Walk): Child {
  const { job, plan } = walk;
  const columns = placeColumns(plan, job.head);
  const go = figuresOf(
    columns.filter(({ sets }) => sets),
    step.place,
  );
  return [
    step.repair && el("p", {}, `Between teeth ${step.repair.between}`),
    checkCard(step.check, "Look", walk),
    // The first place is the start itself: there is no going on to it.
    go.some(({ figure }) => figure !== "–") && el("div", { class: "go" }, tiles(go)),
    el(
      "div",
      { class: "stands" },
      tiles(
        figuresOf(
          columns.filter(({ sets }) => !sets),
          step.place,
        ),
      ),
    ),
    job.done === 0 && itemList([startItem(plan, job.head), eachPlaceItem(plan.way, job.head)]),
    step.repair?.purpose === "set the cutter" && el("p", {}, startWords(plan.way)),
    step.repair?.purpose === "prove the count" && el("p", {}, provingWords),
  ];
}

function figuresOf(columns: readonly PlaceColumn[], place: Place): readonly Figure[] {
  return columns.map(({ group = "", head, cell }) => ({
    head: `${group} ${head}`.trim().toUpperCase(),
    figure: cell(place),
    under: "",
  }));
}

/** A check that is due when the work stands here. */
function checkCard(check: Check | null, first: string, { plan, job, noun }: Walk): Child {
  if (check === null) return null;
  const { term, text } = checkItem(check, plan.way, { noun, head: job.head });
  return el("p", { class: "check" }, el("b", {}, `CHECK: ${term}. `), `${first}; the work must stand so: ${text}.`);
}

/** The place in a line, to be read aloud. */
export function aloudAt({ steps, job, plan, noun }: Walk): string {
  const step = steps[job.done];
  if (step === undefined) return "All done";
  return [`${noun} ${step.place.tooth}`, ...stepWords(step, plan, job.head), ...(step.check === null ? [] : ["check due"])].join(
    "; ",
  );
}

/** How to get to a place, and what stands where then. */
export function stepWords({ place }: Pick<Step, "place">, { way }: Walk["plan"], head: Head): readonly string[] {
  return [goOnWords(place, way), holeStands(place, way), ...scalesStand(place, head)].filter((each) => each !== "");
}
