import type { Head, RepairOnHead } from "../../src/index.ts";
import {
  betweenWords,
  blankItems,
  cautionItems,
  checkItems,
  cutterItems,
  cuttingCautions,
  errorAtPitch,
  gearInShort,
  heatCautions,
  type LengthWords,
  lengthsIn,
  noPlaces,
  noteWords,
  numbering,
  provingWords,
  purposeWords,
  sawItems,
  startWords,
  teethInRuns,
  thinItems,
  withTheMate,
} from "../../src/words/index.ts";
import type { Desk, View } from "./desk.ts";
import { type Child, el, fill } from "./el.ts";
import { type GearTyped, newJob } from "./job.ts";
import { linkOf } from "./link.ts";
import { itemList, kindLine, part, refusalOf } from "./pieces.ts";
import { stepWords } from "./place-panel.ts";
import { repairForm } from "./repair-form.ts";
import { teethDrawing } from "./teeth-drawing.ts";
import { repairPlanned } from "./walk.ts";
import { wayPanel } from "./way-panel.ts";

/** Plans the repair of a gear, in the order of the work. */
export function repairView(desk: Desk): View {
  const answer = el("div", { class: "answer" });
  const form = repairForm(() => {
    tell();
    history.replaceState(null, "", `#${form.said()}`);
  });

  function tell() {
    // Should anything fail, no plan of another gear may be left standing.
    fill(answer);
    try {
      const gear = form.gear();
      fill(answer, gear === null ? null : repairPanel(repairPlanned(desk.head(), gear), gear, desk));
    } catch (error) {
      fill(answer, el("p", { class: "refused", role: "alert" }, refusalOf(error)));
    }
  }

  return {
    node: el("div", {}, el("h2", {}, "REPAIR A GEAR"), form.node, answer),
    show(said) {
      // Without a gear in the address, what was typed stays.
      if (said.get("repair") !== "") form.fill(said);
      tell();
    },
  };
}

function repairPanel(repaired: RepairOnHead, typed: GearTyped, desk: Desk): Child {
  const { gear, repair } = repaired;
  const { head } = desk.head();
  const length = lengthsIn(typed.system === "dp" ? "in" : "mm");
  return [
    el("h3", {}, `${teethInRuns(repair.plan.damaged)} of ${gearInShort(gear)}`),
    teethDrawing(repair.plan),
    el("p", { class: "note" }, numbering),
    settingPart(repaired, typed, length, head, desk),
    part("Before any heat", itemList(heatCautions)),
    part(
      "Blank, saw and cutter",
      itemList([...blankItems(repair, length), ...sawItems(repair, length, false), ...cutterItems(gear)]),
    ),
    part("Check each rebuilt tooth", itemList([...checkItems(gear, repair, length), ...thinItems(repair, length), withTheMate])),
    repair.warnings.length > 0 && itemList(repair.warnings.map((note) => ({ term: "Take care", text: noteWords(note, length) }))),
  ];
}

function settingPart(repaired: RepairOnHead, typed: GearTyped, length: LengthWords, head: Head, desk: Desk): Child {
  const { job, gear, moves, repair } = repaired;
  if (!job.planned) return el("p", { class: "kind not" }, noPlaces.possible);
  const { way, exact, worstArcSeconds } = job;
  const worst = { term: "Off by", text: `no space to cut over ${errorAtPitch(worstArcSeconds, gear, length)}` };
  const places = moves.map(({ toothSpace, purpose, position }) =>
    el(
      "li",
      {},
      el("b", {}, `${purposeWords[purpose]} ${betweenWords(toothSpace, repair.plan)}`),
      ` · ${stepWords({ place: position }, job, head).join(" · ")}`,
    ),
  );
  return [
    kindLine(way),
    wayPanel(way, head, exact ? [] : [worst], () => {
      location.hash = linkOf(newJob(head, { kind: "repair", gear: typed }, null), desk.known);
    }),
    part("The places", el("ol", { class: "ticks" }, places), el("p", {}, startWords(way)), el("p", {}, provingWords)),
    el(
      "div",
      { class: "mind" },
      itemList([...cautionItems(job.cautions.filter(({ code }) => code === "one-way")), ...cuttingCautions]),
    ),
  ];
}
