import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  type Head,
  indexDivisions,
  type Place,
  type PlannedJob,
  type PlanOptions,
  type Setting,
} from "../../src/index.ts";
import { type PlaceColumn, placeColumns } from "../../src/words/index.ts";
import { teethOf } from "../support/hand-moves.ts";
import { oneOfAll } from "../support/hand-worked.ts";
import { chosen, laidOut, optionsOf, planned } from "../support/jobs.ts";
import { backwards69, bareTable, everyJob, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { secondHand } from "../support/settings.ts";

/** 51 by 10 of 15 and 2 of 17. */
const with51 = indexDivisions(oneOfAll, 51, { methods: ["compound"], all: true }).settings.find(
  (each) => each.method === "compound" && each.circle === 15 && each.spaces === 10 && each.second.circle === 17,
) as Setting;

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

  it("of two pins: how to go on by the crank, how by both, and where each pin then stands", () => {
    const cellsOf = (options: PlanOptions, teeth: readonly number[], divisions = 69) => {
      const plan = planned(threePlates, { divisions }, { ...options, teeth });
      const columns = placeColumns(plan, threePlates).filter(({ key }) => key !== "ring" && key !== "angle");
      const heads = columns.map(({ head, group }) => `${group}: ${head}`);
      return [heads, ...plan.places.map((place) => columns.map((column) => column.cell(place)))];
    };
    // 14/21 − 2/23 a move: 11 moves on are 7 + 7/21 and 22/23 back, 12 are 8 and 1 + 1/23 back.
    expect(cellsOf({ setting: backwards69 }, [1, 2, 13])).toEqual([
      [
        "FIRST BOTH: spaces of 23",
        "THEN GO ON BY: turns",
        "THEN GO ON BY: spaces of 21",
        "THEN AT: turns",
        "THEN AT: hole of 21",
        "THEN AT: rear of 23",
      ],
      ["–", "–", "–", "0", "0", "0"],
      ["back 2", "0", "14", "0", "14", "21"],
      ["back 22", "7", "7", "8", "0", "22"],
    ]);
    expect(cellsOf({ setting: backwards69 }, [1, 14])[2]?.slice(0, 3)).toEqual(["back 1 + 3", "8", "14"]);
    expect(cellsOf({ setting: backwards69, direction: "nearer" }, [3, 2])[2]?.slice(0, 3)).toEqual(["on 2", "BACK 0", "14"]);
    expect(cellsOf({ setting: backwards69 }, [1, 14])[0]?.[0]).toBe("FIRST BOTH: turns + spaces of 23");
  });

  it("of two pins that both go on: the crank first", () => {
    // 51 by 10/15 + 2/17, as it is worked by hand: two moves are 1 + 5/15 and 4/17.
    const plan = planned(oneOfAll, { divisions: 51 }, { setting: with51, teeth: [2, 4] });
    const columns = placeColumns(plan, oneOfAll);
    expect(columns.slice(0, 3).map(({ head, group }) => `${group}: ${head}`)).toEqual([
      "GO ON BY: turns",
      "GO ON BY: spaces of 15",
      "THEN BOTH: spaces of 17",
    ]);
    expect(plan.places.map((place) => columns.slice(0, 3).map((column) => column.cell(place)))).toEqual([
      ["0", "10", "on 2"],
      ["1", "5", "on 4"],
    ]);
    const near = planned(oneOfAll, { divisions: 51 }, { setting: with51, teeth: [3, 2], direction: "nearer" });
    expect(columns.slice(0, 3).map((column) => column.cell(near.places[1] as Place))).toEqual(["BACK 0", "10", "back 2"]);
  });

  it("of a dial: its marks, and the lines of its vernier where it has one", () => {
    const headed = (dial: { marksPerTurn: number; vernierLines?: number; figures?: "marks" | "angle" }) => {
      const head = defineHead({ wormRatio: 90, dial });
      const plan = planned(head, { divisions: 64 }, { teeth: [2] });
      const columns = placeColumns(plan, head).filter(({ group }) => group === "DIAL");
      return columns.map((column) => `${column.head} ${column.cell(plan.places[0] as Place)}`);
    };
    // 90/64 is 1 + 97.5/240.
    expect(headed({ marksPerTurn: 480, figures: "marks" })).toEqual(["turns 1", "mark 195"]);
    expect(headed({ marksPerTurn: 240, vernierLines: 6, figures: "marks" })).toEqual(["turns 1", "mark 97", "vernier 3"]);
    expect(headed({ marksPerTurn: 240, vernierLines: 2, figures: "marks" })).toEqual(["turns 1", "mark 97", "vernier 1"]);
    // 97.5 marks of a minute are 1° 37′ 30″.
    expect(headed({ marksPerTurn: 240, vernierLines: 6, figures: "angle" })).toEqual(["turns 1", "reads 1° 37′ 30″"]);
  });

  it("of whole turns name no circle, and a dial beside a plate is a check", () => {
    const whole = placeColumns(planned(threePlates, { divisions: 8 }), threePlates);
    expect(whole.slice(0, 2).map(({ head }) => head)).toEqual(["turns", "spaces"]);
    const both = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [21] }], dial: { marksPerTurn: 100 } });
    const keys = placeColumns(planned(both, { divisions: 7 }), both).map(({ key, sets }) => `${key}${sets ? "!" : ""}`);
    expect(keys).toEqual(["go-turns!", "go-spaces!", "turns", "hole", "dial-turns", "dial", "angle"]);
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
