import { describe, expect, it } from "vitest";
import type { GearCandidate, Identification } from "../../../src/gear/identify/identify-gear.ts";
import { candidateItems, marksItems, measuredItems, pitchAndForm } from "../../../src/words/gear/identify-words.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";

const mm = lengthsIn("mm");
const plainOne: GearCandidate = {
  teeth: 40,
  name: "2 module",
  system: "module",
  preference: 1,
  module: 2,
  diametralPitch: 12.7,
  circularPitch: 2 * Math.PI,
  form: "full depth",
  pressureAngle: null,
  profileShift: 0,
  tip: "as drawn",
  fit: "close",
  residuals: [],
  lookAlikes: [],
  findings: [],
};
/** 2π mm, in inches too, since older gears are of either. */
const first = "Candidate 1: circular pitch 6.283 mm (0.2474 in)";
const said = (...candidates: readonly Partial<GearCandidate>[]) =>
  candidateItems(
    candidates.map((each) => ({ ...plainOne, ...each })),
    mm,
  ).map(({ term, text }) => `${term}: ${text}`);
const residual = (difference: number) => ({
  measure: { code: "whole-depth" } as const,
  measured: 4.5 + difference,
  expected: 4.5,
  difference,
  percent: (100 * difference) / 4.5,
});
const tip = { ...residual(0), measure: { code: "tip-diameter" } as const };

describe("a candidate", () => {
  it("is named short enough for a column, a stub as one", () => {
    expect(pitchAndForm({ ...plainOne, name: "3/8 in circular pitch" })).toBe("3/8 in circ.");
    expect(pitchAndForm({ ...plainOne, form: "stub" })).toBe("2 module, stub");
  });

  it("of which there is nothing to say is not told", () => {
    expect(said({}, { pressureAngle: 20 })).toEqual([first, "Candidate 2: pressure angle 20° by the span"]);
  });

  it("tells the first's other measures, each with how far off it is, and the tip's not again", () => {
    expect(said({ residuals: [tip, residual(0.1), residual(-0.1), residual(0)] })).toEqual([
      first,
      ": whole depth 4.600 mm: off by +0.100 mm, +2.22 per cent",
      ": whole depth 4.400 mm: off by −0.100 mm, −2.22 per cent",
      ": whole depth 4.500 mm: off by 0.000 mm, 0.00 per cent",
    ]);
    expect(said({}, { residuals: [tip, residual(0.1)] })).toEqual([first]);
  });

  it("tells what the first is easily taken for, coarser or finer, and nothing so of the others", () => {
    const lookAlikes = [
      { name: "1/4 in circular pitch", percent: 1.0612, tipDifference: 0.8914 },
      { name: "coarser", percent: 0.53, tipDifference: 0.2 },
      { name: "finer", percent: -1.56, tipDifference: -0.8 },
    ];
    expect(said({ lookAlikes })).toEqual([
      first,
      ": 1/4 in circular pitch looks alike: 1.1 per cent coarser, its tips 0.891 mm larger",
      ": coarser looks alike: 0.5 per cent coarser, its tips 0.200 mm larger",
      ": finer looks alike: 1.6 per cent finer, its tips 0.800 mm smaller",
    ]);
    expect(said({}, { lookAlikes })).toEqual([first]);
  });

  it("tells its findings, whichever it is", () => {
    const findings = [{ code: "tip-worn", difference: -0.5 }] as const;
    expect(said({}, { findings })).toEqual([
      first,
      "Candidate 2: The tip reads 0.500 mm small: worn or turned down, if it is this pitch.",
    ]);
  });
});

it("the pitch by the tip diameter alone, else by each other measure, with what must be so for it", () => {
  const pitch = { module: 2, diametralPitch: 12.7, circularPitch: 2 * Math.PI, teeth: 40, pressureAngle: null };
  const by = (code: "tip-diameter" | "centre-distance") => ({ ...pitch, measure: { code } });
  const told = (...byMeasure: Identification["byMeasure"]) =>
    measuredItems({ measured: pitch, byMeasure, candidates: [], warnings: [] }).map(({ term, text }) => `${term}: ${text}`);
  const figures = "module 2, 12.7 DP, circular pitch 6.283 mm (0.2474 in)";
  expect(told(by("tip-diameter"), by("centre-distance"))).toEqual([
    `As measured: ${figures}, by the tip diameter, if the teeth are full depth and the tips unworn`,
  ]);
  const basePitch = { ...pitch, pressureAngle: 14.5, measure: { code: "base-pitch", from: 4, to: 5 } } as const;
  expect(told(by("centre-distance"), basePitch)).toEqual([
    `As measured: ${figures}, by the centre distance, if neither gear is shifted`,
    `: ${figures}, by the base pitch from the spans over 4 and 5 teeth, if the pressure angle is 14.5°`,
  ]);
});

describe("marks that met again", () => {
  const counted = (counts: readonly number[], marks: Partial<Parameters<typeof marksItems>[1]>) =>
    marksItems(counts, { mateTeeth: 24, most: 400, ...marks }).map(({ term, text }) => `${term}: ${text}`);

  it("after turns of both mean one count", () => {
    expect(counted([86], { turns: 12, mateTurns: 43 })).toEqual([
      "Marks meet again: after 12 turns of the gear and 43 turns of the mate, the mate having 24 teeth",
      "It could have: 86 teeth",
    ]);
  });

  it("after turns of one leave a choice", () => {
    expect(counted([10, 14], { turns: 1 })).toEqual([
      "Marks meet again: after 1 turn of the gear, the mate having 24 teeth",
      "It could have: 10 or 14 teeth",
      "To tell apart: count the turns of both, to the first meeting",
    ]);
    expect(counted([48], { mateTurns: 2 })[0]).toBe("Marks meet again: after 2 turns of the mate, the mate having 24 teeth");
  });

  it("can be wrong", () => {
    expect(counted([], { turns: 7 })).toEqual([
      "Marks meet again: after 7 turns of the gear, the mate having 24 teeth",
      "It could have: no count up to 400: count the turns again, or the mate's teeth",
    ]);
  });

  it("twenty counts are named, and of more how many there are besides", () => {
    const many = (count: number) =>
      counted(
        [...Array(count).keys()].map((index) => index + 5),
        { turns: 24 },
      )[1];
    expect(many(20)).toMatch(/^It could have: 5 or 6 or .* or 23 or 24 teeth$/);
    expect(many(22)).toMatch(/^It could have: 5, 6, .*, 23, 24 and 2 more teeth$/);
  });
});
