import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, type FaultCode, type PlanOptions, planJob, revolutions } from "../../src/index.ts";
import { planKeys } from "../../src/machine/plan-options.ts";
import { jobsByMoves, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { refusal } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const anything = (value: unknown) => value as never;
const fine = defineHead({ wormRatio: 50_000, plates: [{ name: "1", circles: [8] }] });

const refusedFor =
  (head: typeof ungeared, divisions: number) =>
  (options: unknown): readonly [FaultCode, string][] =>
    refusal(() => planJob(head, { divisions }, anything(options))).map(({ code, place, problem }) => [
      code,
      `${place}: ${problem}`,
    ]);
const refused = refusedFor(threePlates, 86);

describe("an option that is none, or has no effect, is refused", () => {
  it.each([
    ["a misspelt key", { metods: ["simple"] }, "unknown-key", /^options: there is no key "metods"; the keys are methods, /],
    ["a key of another question", { limit: 3 }, "unknown-key", /there is no key "limit"/],
    ["a method that is none", { methods: ["plain"] }, "unknown-word", /^methods: there is no method "plain"/],
    ["no method", { methods: [] }, "missing", /^methods: /],
    ["a side in capitals", { side: "Plus" }, "unknown-word", /^side: "Plus" is neither "plus" nor "minus"$/],
    ["a side that is none", { side: "left" }, "unknown-word", /^side: /],
    [
      "a direction in capitals",
      { direction: "Forward" },
      "unknown-word",
      /^direction: "Forward" is neither "forward" nor "nearer"$/,
    ],
    ["an order that is none", { order: "random" }, "unknown-word", /^order: "random" is neither "given" nor "moves"$/],
    [
      "a way that is none",
      { by: "hole" },
      "unknown-word",
      /^by: "hole" is none of moves, nearest-hole, dial, ring, both-cranks, nearest-direct$/,
    ],
    ["a way that the head has not", { by: "dial" }, "not-owned", /^by: this head has no setting by "dial" that comes near/],
    ["a tooth that is not there", { teeth: [1, 87] }, "out-of-range", /^teeth\[1\]: 87 is not a tooth of 86; give 1 to 86$/],
    ["a tooth of 0", { after: 0 }, "out-of-range", /^after: 0 is not a tooth of 86; give 1 to 86$/],
    ["a tooth and a half", { teeth: [1.5] }, "unreadable", /^teeth\[0\]: 1.5 is not a tooth of 86; give 1 to 86$/],
    ["a tooth in words", { teeth: ["1"] }, "unreadable", /^teeth\[0\]: "1" is not a tooth of 86/],
    ["no teeth", { teeth: [] }, "missing", /^teeth: the list names none; /],
    ["teeth that are no list", { teeth: "1,2" }, "unreadable", /^teeth: "1,2" is not a list of teeth; /],
    ["a list with gaps", { teeth: new Array(2) }, "unreadable", /^teeth\[0\]: undefined is not a tooth/],
    ["teeth beside after", { teeth: [1], after: 3 }, "conflict", /^after: is given beside teeth; /],
    ["a start that is no tooth", { startTooth: 87 }, "out-of-range", /^startTooth: 87 is not a tooth of 86/],
    ["a hole that is not there", { startHole: 43 }, "out-of-range", /^startHole: 43 is not a hole of the circle; give 0 to 42$/],
    ["a hole below 0", { startHole: -1 }, "out-of-range", /^startHole: -1 is not a hole; give a whole number from 0$/],
    ["half a hole", { startHole: 0.5 }, "unreadable", /^startHole: 0.5 is not a hole/],
    [
      "a start below zero",
      { startAngle: "-1/4" },
      "out-of-range",
      /^startAngle: "-1\/4" is not an angle from 0 to 1,000 revolutions$/,
    ],
    ["a start in degrees", { startAngle: "2.9" }, "unreadable", /^startAngle: "2.9" /],
    [
      "what matters and is not gone to",
      { teeth: [1, 2], matters: [2, 3] },
      "conflict",
      /^matters\[1\]: tooth 3 is not among the teeth named; add it there$/,
    ],
    [
      "what matters first and is not gone to",
      { teeth: [1, 2], matters: [3, 1] },
      "conflict",
      /^matters\[0\]: tooth 3 is not among the teeth named; add it there$/,
    ],
    ["what matters of all teeth", { matters: [2] }, "no-effect", /^matters: says nothing without teeth; /],
    ["nothing that matters", { teeth: [1], matters: [] }, "missing", /^matters: the list names none/],
    ["an error below 0", { goodEnough: -1 }, "unreadable", /^goodEnough: -1 is not an error in arc-seconds; give 0 or more$/],
    ["no error at all", { goodEnough: Number.NaN }, "unreadable", /^goodEnough: NaN /],
    ["a plate that is not there", { mounted: "9" }, "not-owned", /^mounted: /],
  ] as const)("%s", (_, options, code, told) => {
    const lines = refused(options);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.[0]).toBe(code);
    expect(lines[0]?.[1]).toMatch(told);
  });

  it("all misspelt keys are told at once", () => {
    expect(refused({ metods: 1, tooth: 2 })).toHaveLength(2);
  });

  it("a hole to start from where none is counted: whole turns, a dial, a ring", () => {
    const told = [["no-effect", "startHole: has no effect on a way that goes by no circle of holes; leave it out"]];
    expect(refusedFor(threePlates, 8)({ startHole: 3 })).toEqual(told);
    expect(refusedFor(ready("ratio-60-dial"), 48)({ startHole: 3 })).toEqual(told);
    expect(refusedFor(ungeared, 97)({ startHole: 3, by: "ring" })).toEqual(told);
    expect(refusedFor(ungeared, 97)({ startHole: 3, by: "nearest-hole" })).toEqual([]);
  });

  it("a count and an angle at once", () => {
    const target = { divisions: 86, angle: revolutions(1, 86) };
    expect(refusal(() => planJob(threePlates, target)).map(({ code }) => code)).toEqual(["conflict"]);
  });

  it("what is left out, and what is given as undefined, is the same", () => {
    const none = Object.fromEntries(planKeys.map((key) => [key, undefined])) as PlanOptions;
    for (const { head, target } of jobsByMoves) expect(planJob(head, target, none)).toEqual(planJob(head, target));
  });
});

describe("no more than 50,000 places are listed at once", () => {
  const many = (length: number) => Array.from({ length }, (_, index) => 1 + (index % 86));

  it("all of a count", () => {
    const told = "200,000 places are too many to list; give at most 50,000";
    expect(refusedFor(fine, 200_000)({})).toEqual([["too-many", `teeth: ${told}`]]);
    expect(refusedFor(fine, 200_000)({ after: 150_000 })).toEqual([]);
    expect(refusedFor(fine, 200_000)({ after: 149_999 })).toEqual([
      ["too-many", "after: 50,001 places are too many to list; give at most 50,000"],
    ]);
  });

  it("teeth that are named, however often each: the list itself is bounded", () => {
    expect(refused({ teeth: many(50_000) })).toEqual([]);
    expect(refused({ teeth: many(50_001) })[0]?.[0]).toBe("too-many");
    // Nothing is looked at before its length: no list of a length that no memory holds is gone through.
    expect(refused({ teeth: { length: 2 ** 32 - 1 } })[0]?.[0]).toBe("unreadable");
    expect(refused({ teeth: new Array(2 ** 32 - 1) })[0]?.[0]).toBe("too-many");
  });

  it("all places of an angle that comes back", () => {
    const angle = revolutions(1, 200_000);
    expect(refusal(() => planJob(fine, { angle })).map(({ code, place }) => [code, place])).toEqual([["too-many", "teeth"]]);
    expect(planJob(fine, { angle }, { teeth: [200_000] })).toMatchObject({ planned: true, exact: true });
  });
});

it("an option of the wrong kind is refused and never taken", () => {
  const wrong = fc.oneof(fc.constant(null), fc.string(), fc.object(), fc.double(), fc.boolean());
  const isSilent = (key: string, value: unknown) =>
    refusal(() => planJob(threePlates, { divisions: 86 }, anything({ [key]: value }))).length === 0;
  fc.assert(
    fc.property(fc.constantFrom(...planKeys), wrong, (key, value) => {
      if (!isSilent(key, value)) return;
      // What is taken is a number or a word that is allowed.
      expect(["number", "string"]).toContain(typeof value);
    }),
    runs(400),
  );
});
