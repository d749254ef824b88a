import { describe, expect, it } from "vitest";
import { type Caution, defineHead, type Head, type PlanOptions, planJob, type Target } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { byDegrees, byGears } from "../support/without-crank.ts";

function cautionsOf(head: Head, target: Target, options: PlanOptions = {}): readonly Caution[] {
  const job = planJob(head, target, options);
  if (!job.planned) throw new Error("the head can do this job");
  return job.cautions;
}

function codesOf(cautions: readonly Caution[]): readonly string[] {
  return cautions.map(({ code }) => code);
}

const bare = ready("ratio-90-dial");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const geared = ready("ratio-40-plates-15-49");
const withNose = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15] }],
  directPlates: [{ name: "nose", holes: 24 }],
  ring: { marksPerTurn: 360 },
});

describe("what to mind on a way", () => {
  it("by whole turns of a handwheel speaks of no stop pin, crank or hole", () => {
    const cautions = cautionsOf(bare, { divisions: 9 });
    expect(codesOf(cautions)).not.toContain("stop-pin");
    expect(cautions).toContainEqual({ code: "one-way", hand: "handwheel", to: "mark" });
  });

  it.each([
    ["simple", geared, { divisions: 13 }, {}, { hand: "crank", to: "hole" }],
    ["direct", withNose, { divisions: 8 }, {}, { hand: "spindle", to: "hole" }],
    ["direct by a gear", byGears, { divisions: 7 }, {}, { hand: "spindle", to: "place" }],
    ["by the nearest notches", byGears, { divisions: 11 }, {}, { hand: "spindle", to: "place" }],
    ["by a hole and one of a row", byDegrees, { divisions: 40 }, {}, { hand: "spindle", to: "hole" }],
    ["by the nearest hole", ungeared, { divisions: 97 }, { by: "nearest-hole" }, { hand: "crank", to: "hole" }],
    ["by the ring of a head with a crank", ungeared, { divisions: 97 }, { by: "ring" }, { hand: "crank", to: "mark" }],
    ["by the dial", bare, { divisions: 97 }, { by: "dial" }, { hand: "handwheel", to: "mark" }],
  ] as const)("%s names what the hand turns, and what it comes up to", (_, head, target, options, said) => {
    expect(cautionsOf(head, target, options)).toContainEqual({ code: "one-way", ...said });
  });

  it("from hole to hole says that each move is another, and not to set each place from zero", () => {
    const codes = codesOf(cautionsOf(ungeared, { divisions: 53 }, { by: "nearest-hole" }));
    expect(codes).toContain("moves-differ");
    expect(codes).not.toContain("never-add-steps");
  });

  const few = defineHead({ wormRatio: 4, plates: [{ name: "1", circles: [7] }], gears: [11, 27, 30, 32] });

  it.each([
    ["simple", withNose, { divisions: 15 }, {}, ["stop-pin", "one-way"]],
    ["direct", withNose, { divisions: 8 }, {}, ["worm-out-of-mesh", "one-way"]],
    ["geared", geared, { divisions: 127 }, {}, ["stop-pin", "gears-forgotten", "gears-limits", "one-way"]],
    [
      "geared, four teeth a move",
      geared,
      { divisions: 383 },
      {},
      ["stop-pin", "gears-forgotten", "gears-limits", "several-teeth", "one-way"],
    ],
    [
      "geared, near, with a train that may foul",
      few,
      { divisions: 22 },
      { by: "moves", teethPerMove: 1 },
      ["stop-pin", "gears-forgotten", "may-foul", "gears-limits", "error-grows", "one-way"],
    ],
    [
      "compound, near, five teeth a move",
      ungeared,
      { divisions: 97 },
      {},
      ["stop-pin", "two-parts", "several-teeth", "error-grows", "one-way"],
    ],
    ["by the nearest hole", ungeared, { divisions: 97 }, { by: "nearest-hole" }, ["stop-pin", "moves-differ", "one-way"]],
    ["by the ring", ungeared, { divisions: 97 }, { by: "ring" }, ["never-add-steps", "one-way"]],
  ] as const)("%s: all that is to be minded, the most needful first, and no more", (_, head, target, options, codes) => {
    expect(codesOf(cautionsOf(head, target, options))).toEqual([...codes, "lock-spindle", "stop-cutter", "manual-first"]);
  });

  it("says what the gears forgotten would give: 13 spaces of 39 alone are a third of a turn, 120 divisions", () => {
    expect(cautionsOf(geared, { divisions: 127 })).toContainEqual({
      code: "gears-forgotten",
      gives: expect.objectContaining({ divisions: 120, exact: true }),
    });
    expect(cautionsOf(geared, { divisions: 383 })).toContainEqual({ code: "several-teeth", teethPerMove: 4 });
  });

  it("tells the order of the two parts of a compound move: one that goes back comes first", () => {
    for (const divisions of [51, 69, 97, 118, 133]) {
      const job = planJob(ungeared, { divisions }, { methods: ["compound"] });
      if (!job.planned || job.way.by !== "moves" || job.way.setting.method !== "compound") throw new Error("compound");
      const first = job.way.setting.second.direction === "against" ? "both" : "crank";
      expect(job.cautions).toContainEqual({ code: "two-parts", first });
      expect(job.cautions).toContainEqual({ code: "stop-pin", stands: "out" });
    }
  });
});
