import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overPins } from "../../../src/gear/over-pins.ts";
import { flankDisplacement } from "../../../src/gear/repair/flank-displacement.ts";
import type { RepairNote } from "../../../src/gear/repair/repair-notes.ts";
import { type SawOptions, slittingSaw } from "../../../src/gear/repair/slitting-saw.ts";
import { thicknessCheck } from "../../../src/gear/repair/thickness-check.ts";
import { type RepairOptions, toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { drawnSpan, flankPoint, type Point, rightFlank, rollAt, turn, zeroOf } from "../../support/drawn-tooth.ts";

const gears = fc
  .record({
    teeth: fc.integer({ min: 12, max: 200 }),
    hundredths: fc.integer({ min: 50, max: 800 }),
    pressureAngle: fc.constantFrom(14.5, 20, 25),
    shift: fc.integer({ min: 0, max: 30 }),
  })
  .map(({ teeth, hundredths, pressureAngle, shift }) =>
    spurGear({ teeth, module: hundredths / 100, pressureAngle, profileShift: shift / 100 }),
  );
const part = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000);

describe("slitting saw", () => {
  it("just touches the drawn flanks at the bottom of the cut, and nowhere else", () => {
    fc.assert(
      fc.property(gears, part, (gear, share) => {
        const depth = gear.wholeDepth * share;
        const bottom = gear.tipDiameter / 2 - depth;
        const { greatestWidth, leftOnFlank } = slittingSaw(gear, { depth });
        const flank = rightFlank(gear);
        const tip = rollAt(gear, gear.tipDiameter / 2);
        const wall = (roll: number): Point => turn(flank(roll), Math.PI / gear.teeth);
        const start = wall(0);
        const touch =
          start.y >= bottom
            ? { x: (start.x * bottom) / start.y, y: bottom }
            : wall(zeroOf((roll) => wall(roll).y - bottom, 0, tip));
        expect(greatestWidth / 2).toBeCloseTo(-touch.x, 7);
        for (let step = 0; step <= 50; step += 1) {
          const point = wall((tip * step) / 50);
          if (point.y >= bottom) expect(-point.x).toBeGreaterThanOrEqual(greatestWidth / 2 - 1e-7);
        }
        expect(leftOnFlank.atBottom).toBeCloseTo(0, 9);
        expect(leftOnFlank.atTip).toBeCloseTo(-wall(tip).x - greatestWidth / 2, 7);
      }),
    );
  });

  it("leaves the fillets alone unless told to go deeper", () => {
    const gear = spurGear({ teeth: 40, module: 2 });
    const cut = slittingSaw(gear);
    expect(cut).toMatchObject({ depth: 4, warnings: [] });
    expect(cut.leftAtRoot).toBeCloseTo(0.5, 12);
    expect(slittingSaw(gear, { depth: 4.5 }).warnings).toEqual([{ code: "saw-in-fillets" }]);
  });

  it("shares what is asked, and reckons the saw at hand", () => {
    const gear = spurGear({ teeth: 40, module: 2 });
    const all = slittingSaw(gear);
    expect(slittingSaw(gear, { leave: 0.2 }).greatestWidth).toBeCloseTo(all.greatestWidth - 0.4, 12);
    const thin = slittingSaw(gear, { width: 1 });
    expect(thin.greatestWidth).toBe(all.greatestWidth);
    expect(thin.leftOnFlank.atBottom).toBeCloseTo((all.greatestWidth - 1) / 2, 12);
    expect(thin.leftOnFlank.atTip).toBeGreaterThan(thin.leftOnFlank.atReference);
    expect(thin.leftOnFlank.atReference).toBeGreaterThan(thin.leftOnFlank.atBottom);
  });

  it.each([
    [{ depth: 5 }, /saw.depth: 5 mm is deeper than the tooth; give at most the whole depth, 4.5 mm/],
    [{ width: 3 }, /saw.width: 3 mm would cut into the flanks; give at most [\d.]+ mm/],
    [{ leave: 2 }, /saw.leave: 2 mm on each flank is more than half the space; give less than [\d.]+ mm/],
    [{ width: Number.NaN }, /NaN is not a saw width/],
    [{ kerf: 1 }, /no key "kerf"/],
  ] as [SawOptions, RegExp][])("refuses %j", (options, sentence) => {
    expect(() => slittingSaw(spurGear({ teeth: 40, module: 2 }), options)).toThrow(sentence);
  });
});

describe("flank displacement", () => {
  it("is what the drawn flank moves along the reference circle, for a cutter off centre", () => {
    fc.assert(
      fc.property(gears, (gear) => {
        const offCentre = 1e-4 * gear.module;
        const flank = rightFlank(gear);
        const shifted = (roll: number): Point => {
          const { x, y } = turn(flank(roll), Math.PI / gear.teeth);
          return { x: x + offCentre, y };
        };
        const radius = gear.referenceDiameter / 2;
        const crossing = shifted(zeroOf((roll) => Math.hypot(shifted(roll).x, shifted(roll).y) - radius, 0, 3));
        const before = turn(flankPoint(gear, gear.referenceDiameter), Math.PI / gear.teeth);
        const moved = radius * (Math.atan2(crossing.x, crossing.y) - Math.atan2(before.x, before.y));
        const { byCentring } = flankDisplacement(gear, { offCentre });
        expect(byCentring / offCentre).toBeCloseTo(moved / offCentre, 3);
      }),
    );
  });

  it("1′ at 50 mm radius is 0.0145 mm (reckoned: 50 π/10,800)", () => {
    const gear = spurGear({ teeth: 50, module: 2 });
    const { byAngle, byCentring, together } = flankDisplacement(gear, { arcSeconds: 60 });
    expect(byAngle).toBeCloseTo((50 * Math.PI) / 10_800, 12);
    expect(byAngle.toFixed(4)).toBe("0.0145");
    expect([byCentring, together]).toEqual([0, byAngle]);
  });

  it("adds both, and refuses what is no error", () => {
    const gear = spurGear({ teeth: 50, module: 2 });
    const { byAngle, byCentring, together } = flankDisplacement(gear, { arcSeconds: 30, offCentre: 0.05 });
    expect(together).toBe(byAngle + byCentring);
    expect(byCentring).toBeLessThan(0.05);
    expect(() => flankDisplacement(gear, { arcSeconds: -1, offCentre: 60 })).toThrow(
      /arcSeconds: -1 is not.*offCentre: 60 mm is not/,
    );
  });
});

describe("thickness to check", () => {
  it("runs from full to full less the tooth's share of the backlash, in every measure", () => {
    fc.assert(
      fc.property(gears, part, (gear, share) => {
        const backlash = 0.2 * share * gear.module;
        const { full, least, mayLose } = thicknessCheck(gear, { backlash });
        expect(mayLose).toBeCloseTo(backlash / 2, 12);
        const thin = spurGear({
          teeth: gear.teeth,
          module: gear.module,
          pressureAngle: gear.pressureAngle,
          profileShift: gear.profileShift,
          thinning: backlash / 2,
        });
        expect(full.toothThickness).toBe(gear.toothThickness);
        expect(least.toothThickness).toBeCloseTo(thin.toothThickness, 12);
        expect(least.chordalThickness).toBeCloseTo(thin.chordalThickness, 12);
        expect(least.chordalAddendum).toBeCloseTo(thin.chordalAddendum, 12);
        if (gear.span && full.span) expect(full.span.length).toBeCloseTo(drawnSpan(gear, gear.span.teeth).length, 6);
        if (full.overPins) expect(full.overPins.length).toBeCloseTo(overPins(gear, full.overPins.pinDiameter), 10);
      }),
    );
  });

  it("takes the mate's thinning as given, and a thinned gear from its full thickness", () => {
    const gear = spurGear({ teeth: 40, module: 2 });
    const thinned = spurGear({ teeth: 40, module: 2, thinning: 0.08 });
    expect(thicknessCheck(gear, { backlash: 0.2, mateThinning: 0 }).mayLose).toBeCloseTo(0.2, 12);
    expect(thicknessCheck(thinned, { backlash: 0.2 }).least.toothThickness).toBeCloseTo(gear.toothThickness - 0.1, 12);
  });

  it("says nothing of pins that cannot be used", () => {
    const stub = spurGear({ teeth: 40, module: 2, tipDiameter: 86.5 });
    expect(thicknessCheck(stub, { backlash: 0.1 }).full.overPins).toBeNull();
  });

  it.each([
    [{ backlash: 0.1, mateThinning: 0.2 }, /the mate's teeth alone give 0.2 mm of backlash, over the 0.1 mm allowed/],
    [{ backlash: 8 }, /8 mm leaves nothing of a tooth 3.142 mm thick/],
    [{}, /backlash: undefined is not a backlash; give 0 mm to 1000 mm/],
  ] as unknown as [{ backlash: number }, RegExp][])("refuses %j", (options, sentence) => {
    expect(() => thicknessCheck(spurGear({ teeth: 40, module: 2 }), options)).toThrow(sentence);
  });
});

it("each part refuses options that are none", () => {
  const gear = spurGear({ teeth: 40, module: 2 });
  for (const part of [slittingSaw, flankDisplacement, thicknessCheck]) {
    expect(() => part(gear, null as never)).toThrow(/null is not an object/);
  }
});

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
