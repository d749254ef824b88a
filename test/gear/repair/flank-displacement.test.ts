import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flankDisplacement } from "../../../src/gear/repair/flank-displacement.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { flankPoint, type Point, rightFlank, turn, zeroOf } from "../../support/drawn-tooth.ts";
import { gears } from "../../support/gears.ts";
import { refusalLines } from "../../support/refusal.ts";

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

  it("takes errors up to half a turn and the radius, and none above", () => {
    const gear = spurGear({ teeth: 50, module: 2 });
    const lines = (error: object) => refusalLines(() => flankDisplacement(gear, error));
    expect(lines({ arcSeconds: 648_000, offCentre: 50 })).toEqual([]);
    expect(lines({ arcSeconds: 648_000.5 })).toHaveLength(1);
    expect(lines({ offCentre: 50.001 })).toHaveLength(1);
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

it("refuses options that are none", () => {
  expect(() => flankDisplacement(spurGear({ teeth: 40, module: 2 }), null as never)).toThrow(/null is not an object/);
});
