import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Head, Place, PlannedJob, PlanOptions } from "../../src/index.ts";
import { type PlaceColumn, placeColumns } from "../../src/words/index.ts";
import { teethOf } from "../support/hand-moves.ts";
import { chosen, laidOut, optionsOf, planned } from "../support/jobs.ts";
import { backwards69, bareTable, everyJob, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { secondHand } from "../support/settings.ts";

const keysOf = (head: Head, divisions: number, options: PlanOptions = {}) =>
  placeColumns(planned(head, { divisions }, options), head).map(({ key, sets }) => (sets ? `${key}!` : key));
const cell = (columns: readonly PlaceColumn[], key: PlaceColumn["key"], place: Place) =>
  columns.find((column) => column.key === key)?.cell(place);
const number = (text: string | undefined) => Number(text?.replace("−", "-").replace("BACK ", ""));

describe("the columns that a way needs, what the hand sets being marked", () => {
  it.each([
    ["simple", threePlates, 86, {}, "go-turns! go-spaces! turns hole ring angle"],
    ["whole turns: no hole is counted", threePlates, 8, {}, "go-turns! go-spaces! ring angle"],
    [
      "compound, both on",
      threePlates,
      96,
      { methods: ["compound"] },
      "go-turns! go-spaces! go-both! turns hole rear-hole ring angle",
    ],
    [
      "compound, back first",
      threePlates,
      69,
      { setting: backwards69 },
      "go-both! go-turns! go-spaces! turns hole rear-hole ring angle",
    ],
    ["direct: spaces of its own plate alone", secondHand, 8, {}, "go-spaces! hole ring angle"],
    ["by the dial", ready("ratio-60-dial"), 48, {}, "dial-turns! dial! ring angle"],
    ["whole turns of a handwheel", bareTable, 12, {}, "dial-turns! dial! ring angle"],
    ["near, by the nearest hole", ungeared, 97, { by: "nearest-hole" }, "go-turns! go-spaces! turns hole error ring angle"],
    ["near, by the ring", ungeared, 97, { by: "ring" }, "error ring! angle"],
    ["near, by the dial", ready("ratio-90-dial"), 97, {}, "error dial-turns! dial! ring angle"],
  ] as const)("%s", (_, head, divisions, options, keys) => {
    expect(keysOf(head, divisions, options).join(" ")).toBe(keys);
  });
});

describe("what stands in them", () => {
  it("is what the place says, on every way", () => {
    fc.assert(
      fc.property(chosen, laidOut, (job, how) => {
        const plan = planned(job.head, job.target, optionsOf(job, how));
        const columns = placeColumns(plan, job.head);
        for (const place of plan.places) expectCells(columns, place, plan);
      }),
    );
  });

  it("a move back says BACK where it is read first, and a place before the start is below 0", () => {
    const plan = planned(threePlates, { divisions: 127 }, { teeth: [127], direction: "nearer" });
    const [place] = plan.places as readonly [Place];
    const columns = placeColumns(plan, threePlates);
    expect(columns.slice(0, 4).map((column) => column.cell(place))).toEqual(["BACK 0", "5", "−1", "10"]);
    const direct = planned(secondHand, { divisions: 8 }, { teeth: [8], direction: "nearer" });
    expect(placeColumns(direct, secondHand)[0]?.cell(direct.places[0] as Place)).toBe("BACK 3");
  });

  it("where nothing is to be done, a dash stands and no number", () => {
    for (const { head, target, options } of everyJob) {
      const plan = planned(head, target, { ...options, teeth: [1], order: "given" });
      const goes = placeColumns(plan, head).filter(({ key }) => key.startsWith("go-"));
      expect(goes.map((column) => column.cell(plan.places[0] as Place))).toEqual(goes.map(() => "–"));
    }
  });
});

/** That a table of a place says no more and no less than the place itself. */
function expectCells(columns: readonly PlaceColumn[], place: Place, { way, target }: PlannedJob): void {
  expect(columns.map(({ key }) => key).includes("error")).toBe(!way.setting.exact);
  if (!("from" in place)) return;
  const [turns, hole] = [cell(columns, "turns", place), cell(columns, "hole", place)];
  if (turns !== undefined) expect(number(turns)).toBe(place.turns);
  if (hole !== undefined) expect(number(hole)).toBe(place.hole);
  const spaces = cell(columns, "go-spaces", place);
  if (spaces === undefined || spaces === "–") return;
  expect(number(spaces)).toBe(place.from.spaces);
  const first = cell(columns, "go-turns", place) ?? spaces;
  expect(number(first)).toBe(first === spaces ? place.from.spaces : place.from.turns);
  expect(first.startsWith("BACK")).toBe(place.from.direction === "back");
  if (place.by === "moves") expect(place.from.moves).toBeLessThan(teethOf(target));
}
