import { describe, expect, it } from "vitest";
import type { RepairNote } from "../../../src/gear/repair/repair-notes.ts";
import { type RepairOptions, toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";

describe("the whole repair", () => {
  const gear = spurGear({ teeth: 86, module: 2 });

  it("goes from the broken wheel to the checks", () => {
    const repair = toothRepair(gear, { damaged: [31, 32], backlash: 0.1 });
    expect(repair).toMatchObject({
      plan: { startSpace: 29 },
      blankDiameter: 176,
      depth: 4.5,
      saw: { depth: 4 },
      cutters: { inch: { number: "2", from: 55, to: 134 }, reversed: { number: "7", from: 55, to: 134 } },
      displacement: { together: 0 },
      warnings: [],
    });
    expect(repair.check?.mayLose).toBeCloseTo(0.05, 12);
    expect(JSON.parse(JSON.stringify(repair))).toEqual(repair);
  });

  it("has no pins to check where neither opposite space is sound, and takes the sound one of two", () => {
    const odd = spurGear({ teeth: 21, module: 3, profileShift: 0.1 });
    const pinsOf = (damaged: readonly number[]) =>
      toothRepair(odd, { damaged })
        .checks.flatMap((check) => (check.code === "over-pins" ? check.places : []))
        .map(({ toothSpace, opposite }) => [toothSpace, opposite]);
    // Space 4 is before tooth 5 and space 5 after it; ten spaces over the tooth lie 14 and 16.
    expect(pinsOf([5])).toEqual([
      [4, 14],
      [5, 16],
    ]);
    // Tooth 14 takes space 14: from space 4 the other one, 15. Tooth 15 takes both.
    expect(pinsOf([5, 14])).toContainEqual([4, 15]);
    expect(pinsOf([5, 15]).map(([space]) => space)).not.toContain(4);
    expect(pinsOf([5, 15])).toContainEqual([5, 16]);
  });

  it("measures each rebuilt flank against a sound one, never against another rebuilt one", () => {
    const over = gear.span?.teeth ?? 0;
    expect(over).toBe(10);
    const { spansToCheck } = toothRepair(gear, { damaged: [1, 10, 40] });
    expect(spansToCheck).toEqual([
      { fromTooth: 78, toTooth: 1, rebuiltTooth: 1 },
      { fromTooth: 10, toTooth: 19, rebuiltTooth: 10 },
      { fromTooth: 31, toTooth: 40, rebuiltTooth: 40 },
      { fromTooth: 40, toTooth: 49, rebuiltTooth: 40 },
    ]);
  });

  it("leaves on each flank what the errors of setting come to", () => {
    const settingError = { arcSeconds: 60, offCentre: 0.05 };
    const { saw, displacement } = toothRepair(gear, { damaged: [31], settingError });
    expect(displacement.together).toBeGreaterThan(0.07);
    expect(saw.leftOnFlank.atBottom).toBeCloseTo(displacement.together, 12);
  });

  it.each([
    [
      { backlash: 0.1, settingError: { arcSeconds: 120 } },
      { code: "errors-over-loss", mayLose: 0.05 },
    ],
    [
      { saw: { leave: 0 }, settingError: { offCentre: 0.2 } },
      { code: "errors-over-saw", leftOnFlank: 0 },
    ],
  ] as [Partial<RepairOptions>, Partial<RepairNote>][])("warns of %j", (options, note) => {
    const { warnings, displacement } = toothRepair(gear, { damaged: [31], ...options });
    expect(warnings).toContainEqual(expect.objectContaining({ ...note, together: displacement.together }));
  });

  it("warns where the sound teeth have lost more than a rebuilt one may", () => {
    const worn = spurGear({ teeth: 86, module: 2, thinning: 0.06 });
    const codes = (backlash: number) => toothRepair(worn, { damaged: [31], backlash }).warnings.map(({ code }) => code);
    expect(codes(0.1)).toEqual(["sound-teeth-thin"]);
    expect(codes(0.12)).toEqual([]);
  });

  it("leaves out the spans that this gear does not have", () => {
    const spanless = spurGear({ teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" });
    const { spansToCheck, checks, check, saw } = toothRepair(spanless, { damaged: [1], backlash: 0.1 });
    expect(spansToCheck).toEqual([]);
    expect(checks.filter(({ code }) => code === "span")).toEqual([]);
    expect([check?.full.span, check?.least.span]).toEqual([null, null]);
    expect(saw.depth).toBeLessThanOrEqual(spanless.wholeDepth);
  });

  it("says so where no form cutter fits", () => {
    const small = toothRepair(spurGear({ teeth: 10, module: 2, profileShift: 0.4 }), { damaged: [3] });
    expect(small.cutters).toBeNull();
    expect(small.warnings).toContainEqual({ code: "no-form-cutter", teeth: 10, fewestTeeth: 12 });
    const shifted = toothRepair(spurGear({ teeth: 20, module: 2, profileShift: 0.4 }), { damaged: [3] });
    expect(shifted.warnings).toContainEqual({ code: "form-cutters-unshifted" });
  });

  it.each([
    [{ damaged: [31], backlash: 0.1, mateThinning: 0.2 }, /the mate's teeth alone/],
    [{ damaged: [31], startSpace: 31 }, /space 31 is beside a damaged tooth/],
    [{ damaged: [31], mateThinning: 0.05 }, /mateThinning: is of no use without the backlash/],
    [{ damaged: [31], sawWidth: 2 }, /no key "sawWidth"/],
    [{}, /no tooth is named/],
    [null, /null is not an object/],
  ] as unknown as [RepairOptions, RegExp][])("refuses %j", (options, sentence) => {
    expect(() => toothRepair(gear, options)).toThrow(sentence);
  });
});
