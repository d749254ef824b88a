import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overPins } from "../../../src/gear/over-pins.ts";
import { thicknessCheck } from "../../../src/gear/repair/thickness-check.ts";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { drawnSpan } from "../../support/drawn-tooth.ts";
import { gears, part } from "../../support/gears.ts";

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

  it("names span and pins with what they are over, and nothing of a span that there is not", () => {
    const gear = spurGear({ teeth: 40, module: 2 });
    const { full } = thicknessCheck(gear, { backlash: 0.1 });
    expect(full.span).toEqual({ teeth: 5, length: expect.closeTo(gear.span?.length ?? 0, 12) });
    expect(full.overPins).toEqual({ pinDiameter: 3.5, length: expect.closeTo(overPins(gear, 3.5), 10) });
    const spanless = spurGear({ teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" });
    expect(thicknessCheck(spanless, { backlash: 0.1 }).full.span).toBeNull();
  });

  it("says nothing of a span whose jaws would slip below shallow flanks once a tooth has lost all it may", () => {
    // 5 teeth of full thickness span 27.69 mm; 1.4 and 3 mm less of two teeth are 2.07 mm less, and the flanks begin at 26.17.
    const shallow = spurGear({ teeth: 40, module: 2, wholeDepth: 2.2, thinning: 1.4 });
    const { full, least } = thicknessCheck(shallow, { backlash: 6 });
    expect([full.span?.teeth, least.span]).toEqual([5, null]);
    const { checks } = toothRepair(shallow, { damaged: [3], backlash: 6 });
    expect(checks.map(({ code }) => code)).not.toContain("span");
    expect(toothRepair(shallow, { damaged: [3], backlash: 0.1 }).checks.map(({ code }) => code)).toContain("span");
  });

  it("may leave less than the sound teeth have, which are thin: of π, 1 lost already, 2 more may go", () => {
    const worn = spurGear({ teeth: 40, module: 2, thinning: 1 });
    expect(thicknessCheck(worn, { backlash: 4 }).least.toothThickness).toBeCloseTo(Math.PI - 2, 12);
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

it("refuses options that are none", () => {
  expect(() => thicknessCheck(spurGear({ teeth: 40, module: 2 }), null as never)).toThrow(/null is not an object/);
});
