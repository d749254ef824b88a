import { describe, expect, it } from "vitest";
import { type Head, type PlannedJob, type PlanOptions, parseAngle } from "../../src/index.ts";
import { backWords, holesUsedWords, legendWords, secondRoundWords } from "../../src/words/index.ts";
import { ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { secondHand } from "../support/settings.ts";
import { compoundJob, dialJob, directJob, holesJob, planOf, ringJob, simpleJob, wholeJob } from "../support/told-jobs.ts";

describe("what the columns of a list mean", () => {
  const said = (given: PlannedJob, head: Head, more: Partial<Parameters<typeof legendWords>[1]> = {}) =>
    legendWords(given, { after: null, side: "plus", head, ...more });
  const offBy = '"Off by" is how far the work stands from its true angle: + too far, − short of it.';

  it("by the crank on a circle, from hole 0 or from another", () => {
    const goOn = '"Go on by" is turns + spaces from the line before';
    const stands = '; "turns" and "hole" are where the pin then stands, counted from the start.';
    expect(said(simpleJob, threePlates)).toBe(
      `${goOn}${stands} Holes are numbered from 0, where the pin starts, the way the crank goes.`,
    );
    expect(said(planOf(threePlates, 86, { startHole: 7 }), threePlates)).toBe(
      `${goOn}${stands} Holes are numbered the way the crank goes; the pin starts in hole 7.`,
    );
    expect(said(simpleJob, threePlates, { after: 12 })).toContain(`${goOn}; the first goes on from tooth 12; "turns"`);
    expect(said(wholeJob, threePlates)).toBe(`${goOn}.`);
  });

  it("by the spindle's own plate", () => {
    const ways = "Holes are numbered from 0, where the pin starts, the way the work goes.";
    expect(said(directJob, secondHand)).toBe(`"Go on by" is spaces from the line before. ${ways}`);
    expect(said(directJob, secondHand, { after: 3 })).toBe(
      `"Go on by" is spaces from the line before; the first goes on from tooth 3. ${ways}`,
    );
  });

  it("by two pins, by the nearest holes, and by marks", () => {
    const { second } = compoundJob.way.setting as { second: { circle: number } };
    expect(said(compoundJob, threePlates)).toContain(`"Rear" is the hole of ${second.circle} at the rear pin, likewise.`);
    expect(said(simpleJob, threePlates)).not.toContain("Rear");
    expect(said(holesJob, ungeared).endsWith(offBy)).toBe(true);
    expect([said(ringJob, ungeared), said(dialJob, ready("ratio-60-dial"))]).toEqual([offBy, ""]);
  });

  it("where the scales begin and which way they go, unless it is as usual", () => {
    const on = (options: PlanOptions) => planOf(ungeared, 97, { by: "ring", ...options });
    const startAngle = parseAngle("30°");
    expect(said(on({ startAngle }), ungeared)).toBe(`${offBy} The scales stand at 30° at tooth 1 and rise from there.`);
    expect(said(on({ startAngle, side: "minus" }), ungeared, { side: "minus" })).toBe(
      `${offBy} The scales stand at 30° at tooth 1 and fall from there.`,
    );
    expect(said(on({ side: "minus" }), ungeared, { side: "minus" })).toMatch(/ The scales stand at 0° at tooth 1 and fall/);
  });

  it("a list that goes back says how play is taken up", () => {
    const goesBack = planOf(threePlates, 36, { teeth: [3, 2], direction: "nearer" });
    expect(backWords(goesBack.places)).toBe("BACK: go half a turn or more past the hole, and come up to it onward.");
    expect([backWords(simpleJob.places), backWords(ringJob.places)]).toEqual(["", ""]);
  });

  it("a second time round the pins start from other holes", () => {
    expect(secondRoundWords({ hole: 7 })).toBe(
      "A second time round the holes are others, as the pin then starts from hole 7; the angles stay.",
    );
    expect(secondRoundWords({ hole: 7, rearHole: 3 })).toContain("from hole 7, the rear pin from hole 3; the angles stay.");
  });

  it("the holes of a direct plate are named one by one", () => {
    expect(holesUsedWords(directJob.places, directJob.way)).toBe(
      "0, 3, 6, 9, 12, 15, 18, 21; 0 is the hole that the pin starts in",
    );
    expect(holesUsedWords([...directJob.places.slice(0, 2), ...wholeJob.places, ...ringJob.places], directJob.way)).toMatch(
      /^0, 3; 0 is/,
    );
  });
});
