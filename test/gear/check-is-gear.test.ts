import { describe, expect, it } from "vitest";
import { checkIsGear, checkIsInvolute, checkIsTooth } from "../../src/gear/check-is-gear.ts";
import { overPins, pinRange } from "../../src/gear/over-pins.ts";
import { flankDisplacement } from "../../src/gear/repair/flank-displacement.ts";
import { slittingSaw } from "../../src/gear/repair/slitting-saw.ts";
import { thicknessCheck } from "../../src/gear/repair/thickness-check.ts";
import { toothRepair } from "../../src/gear/repair/tooth-repair.ts";
import { spanOver, thinningFromSpan } from "../../src/gear/span.ts";
import { type SpurGear, spurGear } from "../../src/gear/spur-gear.ts";
import { chordAt, spaceWidthAt, toothThicknessAt } from "../../src/gear/tooth-thickness.ts";
import { refusal } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

const gear = spurGear({ teeth: 40, module: 2 });
const how = "; spurGear makes a gear of its teeth and pitch";
const flank = ["teeth", "pressureAngle", "referenceDiameter", "baseDiameter", "toothThickness"];
const tooth = [...flank, "tipDiameter", "rootDiameter"];
const whole = [...tooth, "module", "profileShift", "addendum", "wholeDepth", "thinning"];

describe("what is taken for a gear", () => {
  const checks = [
    ["a flank", checkIsInvolute, flank],
    ["a tooth", checkIsTooth, tooth],
    ["a gear", checkIsGear, whole],
  ] as const;

  it.each(checks)("%s: one that was made, and what is left of it in JSON", (_, check) => {
    for (const each of [gear, JSON.parse(JSON.stringify(gear))]) expect(refusal(() => check(each))).toEqual([]);
  });

  it.each(checks)("%s needs each of its measures, as a number", (_, check, names) => {
    for (const name of whole) {
      for (const value of [undefined, null, "2", Number.NaN, Number.POSITIVE_INFINITY]) {
        const fault = { code: "unreadable", place: "gear", problem: `its ${name} is missing or no number${how}` };
        expect(refusal(() => check({ ...gear, [name]: value }))).toEqual(names.includes(name) ? [fault] : []);
      }
    }
  });

  it.each(checks)("%s is no number, no word and not nothing", (_, check) => {
    const said = (given: unknown) => refusal(() => check(given)).map(({ code, problem }) => `${code}: ${problem}`);
    expect(said(undefined)).toEqual([`missing: undefined is not a gear${how}`]);
    expect(said(null)).toEqual([`unreadable: null is not a gear${how}`]);
    expect(said(40)).toEqual([`unreadable: 40 is not a gear${how}`]);
    expect(said("40")).toEqual([`unreadable: "40" is not a gear${how}`]);
  });

  it("the first of its measures that is missing is named", () => {
    const said = [{}, { teeth: 40, module: 2 }].map((given) => refusal(() => checkIsGear(given))[0]?.problem);
    expect(said).toEqual([`its teeth is missing or no number${how}`, `its pressureAngle is missing or no number${how}`]);
  });

  it.each([
    ["pinRange", (given) => pinRange(given)],
    ["overPins", (given) => overPins(given, 3.5)],
    ["spanOver", (given) => spanOver(given, 5)],
    ["thinningFromSpan", (given) => thinningFromSpan(given, { teeth: 5, length: 27.6 })],
    ["toothThicknessAt", (given) => toothThicknessAt(given, 80)],
    ["spaceWidthAt", (given) => spaceWidthAt(given, 80)],
    ["chordAt", (given) => chordAt(given, 80)],
    ["flankDisplacement", (given) => flankDisplacement(given, { arcSeconds: 30 })],
    ["slittingSaw", (given) => slittingSaw(given)],
    ["thicknessCheck", (given) => thicknessCheck(given, { backlash: 0.1 })],
    ["toothRepair", (given) => toothRepair(given, { damaged: [3] })],
  ] as [string, (given: SpurGear) => unknown][])("%s says so too", (_, measure) => {
    expect(refusal(() => measure(gear))).toEqual([]);
    expect(refusal(() => measure(wrong(null)))).toEqual([
      { code: "unreadable", place: "gear", problem: `null is not a gear${how}` },
    ]);
    expect(refusal(() => measure({ ...gear, teeth: Number.NaN }))[0]?.problem).toMatch(/^its teeth is missing or no number/);
  });

  it("a gear that is none is named before a span that is none", () => {
    expect(refusal(() => thinningFromSpan(wrong(null), wrong(null)))[0]?.problem).toBe(`null is not a gear${how}`);
  });

  it("a gear whose warnings are no list is none", () => {
    for (const warnings of [undefined, null, "none", {}]) {
      expect(refusal(() => checkIsGear({ ...gear, warnings }))).toEqual([
        { code: "unreadable", place: "gear", problem: `its warnings are missing or no list${how}` },
      ]);
    }
  });
});
