import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SawOptions, slittingSaw } from "../../../src/gear/repair/slitting-saw.ts";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { type Point, rightFlank, rollAt, turn, zeroOf } from "../../support/drawn-tooth.ts";
import { gears, part } from "../../support/gears.ts";

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

  it("reaches twice the addendum without shift, and to the root where that is deeper or there is none", () => {
    const depthOf = (spec: object) => slittingSaw(spurGear({ teeth: 40, module: 2, ...spec })).depth;
    expect(depthOf({ profileShift: 0.3 })).toBeCloseTo(4, 12);
    expect(depthOf({ module: 0.4 })).toBeCloseTo(0.8, 12);
    expect(depthOf({ wholeDepth: 3.5 })).toBeCloseTo(3.5, 12);
    // Tips half a millimetre below the pitch circle: 4.5 less 2.5 mm are left.
    expect(depthOf({ tipDiameter: 79 })).toBeCloseTo(2, 12);
  });

  it("is a hundredth as wide in a gear of a hundredth the size", () => {
    const [large, small] = [5, 0.05].map((module) => slittingSaw(spurGear({ teeth: 20, module })));
    expect(100 * (small?.greatestWidth ?? 0)).toBeCloseTo(large?.greatestWidth ?? 0, 9);
  });

  it("leaves what the errors of setting come to, where the saw at hand leaves room for it", () => {
    const gear = spurGear({ teeth: 40, module: 2 });
    const all = slittingSaw(gear).greatestWidth;
    const repair = (width?: number) =>
      toothRepair(gear, { damaged: [3], settingError: { offCentre: 0.2 }, saw: width === undefined ? {} : { width } });
    const { together } = repair().displacement;
    const greatest = (width?: number) => repair(width).saw.greatestWidth;
    expect(greatest()).toBeCloseTo(all - 2 * together, 12);
    expect(greatest(all - 2 * together - 0.001)).toBeCloseTo(all - 2 * together, 12);
    expect(greatest(all - 2 * together + 0.001)).toBeCloseTo(all, 12);
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
    [{ leave: 1000 }, /saw.leave: 1000 mm on each flank is more than half the space/],
    [{ leave: 1000.5 }, /saw.leave: 1000.5 mm is not an amount to leave on the flank; give 0 mm to 1000 mm/],
    [{ kerf: 1 }, /no key "kerf"/],
  ] as [SawOptions, RegExp][])("refuses %j", (options, sentence) => {
    expect(() => slittingSaw(spurGear({ teeth: 40, module: 2 }), options)).toThrow(sentence);
  });
});

it("refuses options that are none", () => {
  expect(() => slittingSaw(spurGear({ teeth: 40, module: 2 }), null as never)).toThrow(/null is not an object/);
});

it("takes the whole depth and the greatest width as a refusal names them, and undefined as left out", () => {
  for (const module of [1.3, 2.9, 7]) {
    const gear = spurGear({ teeth: 41, module });
    const depth = Number((2.25 * module).toFixed(3));
    expect(slittingSaw(gear, { depth }).leftAtRoot).toBeCloseTo(0, 12);
    const { greatestWidth } = slittingSaw(gear);
    expect(slittingSaw(gear, { width: greatestWidth }).leftOnFlank.atBottom).toBeCloseTo(0, 12);
  }
  const gear = spurGear({ teeth: 40, module: 2 });
  expect(slittingSaw(gear, { depth: undefined, width: undefined, leave: undefined })).toEqual(slittingSaw(gear));
});
