import { describe, expect, it } from "vitest";
import { type Head, parseAngle, type RepairPlaceOptions, recutPlan, repairPlaces, repairPlan } from "../../../src/index.ts";
import { ready } from "../../support/ready.ts";
import { refusalLines } from "../../support/refusal.ts";

const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const dialOnly = ready("ratio-90-dial");

function planned(head: Head, teeth: number, damaged: readonly number[], radius = 97, options: RepairPlaceOptions = {}) {
  const plan = recutPlan(teeth, { damaged });
  const job = repairPlan(head, plan, radius, options);
  if (!job.planned) throw new Error(`${teeth} cannot be done at all`);
  return { plan, job, places: repairPlaces(job) };
}

describe("where the only sound space is the start, the proof is a whole turn on", () => {
  const damaged = Array.from({ length: 95 }, (_, index) => index + 2);
  const proofOf = (head: Head, options: RepairPlaceOptions) => {
    const { plan, places } = planned(head, 97, damaged, 97, options);
    expect(plan.proofSpace).toEqual({ toothSpace: plan.startSpace, teethFromStart: 97 });
    return places.at(-1)?.position;
  };

  it("by moves: as many as there are teeth", () => {
    expect(proofOf(geared, {})).toMatchObject({ by: "moves", move: 97, from: { direction: "forward", moves: 1 }, angle: "0" });
  });

  it("by the nearest holes: forward, and the crank has made the whole worm ratio", () => {
    const proof = proofOf(ungeared, { by: "nearest-hole" });
    expect(proof).toMatchObject({ by: "nearest-hole", turns: 40, hole: 0, errorArcSeconds: 0, from: { direction: "forward" } });
  });

  it("by the dial: the handwheel goes on to as many turns", () => {
    expect(proofOf(dialOnly, { by: "dial" })).toMatchObject({ by: "dial", dial: { turns: 90, mark: 0, line: 0 } });
    expect(proofOf(dialOnly, { by: "ring" })).toMatchObject({
      by: "ring",
      ring: { turns: 0, mark: 0 },
      dial: { turns: 90, mark: 0 },
    });
  });
});

describe("how a repair is laid out", () => {
  const plan = recutPlan(97, { damaged: [31] });
  const near = planned(ungeared, 97, [31]).job;
  const lines = (options: object, teeth = 97) =>
    refusalLines(() => repairPlan(ungeared, recutPlan(teeth, { damaged: [31] }), 97, options as RepairPlaceOptions));

  it("by a setting that is chosen, or a way", () => {
    for (const { setting, by } of near.others) {
      expect(repairPlan(ungeared, plan, 97, { setting })).toMatchObject({ way: { by, setting } });
    }
    expect(planned(ungeared, 97, [31], 97, { by: "ring" }).job.way.by).toBe("ring");
  });

  it("from any hole and angle, on either side", () => {
    const options: RepairPlaceOptions = { startHole: 3, startAngle: parseAngle("124°"), side: "minus" };
    const [first] = planned(geared, 60, [31], 60, options).places;
    expect(first?.position).toMatchObject({ hole: 3, turns: 0, ring: { mark: 124, side: "minus" } });
  });

  it("from another hole the pin stands in another everywhere, and the work in none", () => {
    for (const [head, teeth, options] of [
      [geared, 60, {}],
      [geared, 127, {}],
      [ungeared, 97, { by: "nearest-hole" }],
      [ungeared, 97, { by: "moves" }],
    ] as const) {
      const usual = planned(head, teeth, [31, 40], teeth, options);
      const { job, places } = planned(head, teeth, [31, 40], teeth, { ...options, startHole: 3 });
      if (!("circle" in job.way.setting)) throw new Error("a way that goes by no holes");
      const circle = job.way.setting.circle ?? 0;
      for (const [index, { position }] of places.entries()) {
        const was = usual.places[index]?.position;
        if (!("from" in position) || was === undefined || !("from" in was)) throw new Error("a place without a hole");
        expect(position.hole).toBe(((was.hole ?? 0) + 3) % circle);
        expect([position.angle, position.errorArcSeconds, position.from]).toEqual([was.angle, was.errorArcSeconds, was.from]);
      }
    }
  });

  it("from a hole that the circle has: the last of 15, not one more, none below the first", () => {
    const startAt = (startHole: unknown) =>
      refusalLines(() => repairPlan(geared, recutPlan(60, { damaged: [31] }), 60, { startHole } as RepairPlaceOptions));
    const { job } = planned(geared, 60, [31], 60);
    const circle = "circle" in job.way.setting ? (job.way.setting.circle ?? 0) : 0;
    expect(startAt(0)).toEqual([]);
    expect(startAt(circle - 1)).toEqual([]);
    expect(startAt(circle)).toEqual([`startHole: ${circle} is not a hole of the circle; give 0 to ${circle - 1}`]);
    for (const none of [-1, 1.5, "3", Number.NaN])
      expect(startAt(none)).toEqual([expect.stringMatching(/^startHole: .* is not a hole; give a whole number from 0$/)]);
  });

  it("which spaces are gone to, and from where, is for the repair to say", () => {
    for (const options of [
      { teeth: [1] },
      { after: 3 },
      { startTooth: 4 },
      { order: "given" },
      { matters: [1] },
      { goodEnough: 1 },
    ]) {
      const [key] = Object.keys(options);
      expect(lines(options)).toEqual([expect.stringMatching(new RegExp(`^options: there is no key "${key}"; `))]);
    }
  });

  it("a setting for another count is refused", () => {
    expect(lines({ setting: near.way.setting }, 96)).toEqual([
      "setting: is for another count or angle than the job's; take one from its own answer",
    ]);
  });
});
