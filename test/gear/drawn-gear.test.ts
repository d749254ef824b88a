import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overPins, pinFits, pinRange } from "../../src/gear/over-pins.ts";
import { spanOver } from "../../src/gear/span.ts";
import { type SpurGear, spurGear } from "../../src/gear/spur-gear.ts";
import { chordAt, spaceWidthAt, toothThicknessAt } from "../../src/gear/tooth-thickness.ts";
import { InputError } from "../../src/number/errors.ts";
import { drawnOverPins, drawnSpan, drawnThickness, flankPoint, rackPoint } from "../support/drawn-tooth.ts";
import { runs } from "../support/sweep.ts";

/** Gears over the range of the trade, from whole numbers; those that cannot be cut are left out. */
const gears = fc
  .record({
    teeth: fc.integer({ min: 5, max: 300 }),
    hundredths: fc.integer({ min: 20, max: 1200 }),
    halfDegrees: fc.integer({ min: 29, max: 60 }),
    shift: fc.integer({ min: -60, max: 90 }),
  })
  .map(({ teeth, hundredths, halfDegrees, shift }) => {
    try {
      return spurGear({ teeth, module: hundredths / 100, pressureAngle: halfDegrees / 2, profileShift: shift / 100 });
    } catch (error) {
      if (error instanceof InputError) return null;
      throw error;
    }
  })
  .filter((gear): gear is SpurGear => gear !== null);

const part = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
const between = (from: number, to: number, share: number) => from + (to - from) * share;
const flankStart = (gear: SpurGear) => Math.max(gear.baseDiameter, gear.rootDiameter);
const near = (value: number, drawn: number, gear: SpurGear, parts = 1e-9) =>
  expect(Math.abs(value - drawn)).toBeLessThan(parts * gear.referenceDiameter);

describe("the formulas against a tooth drawn point by point", () => {
  it("thickness and space at any diameter on the flank", () => {
    fc.assert(
      fc.property(gears, part, (gear, share) => {
        const diameter = between(flankStart(gear), gear.tipDiameter, share);
        const drawn = drawnThickness(gear, diameter);
        near(toothThicknessAt(gear, diameter), drawn, gear, 1e-7);
        near(spaceWidthAt(gear, diameter), (Math.PI * diameter) / gear.teeth - drawn, gear, 1e-7);
      }),
    );
  });

  it("the same flank as the rack makes, all along it", () => {
    fc.assert(
      fc.property(gears, fc.integer({ min: -1000, max: 1000 }), (gear, thousandths) => {
        const made = rackPoint(gear, (gear.module * thousandths) / 500);
        fc.pre(made !== null);
        const diameter = 2 * Math.hypot(made.x, made.y);
        fc.pre(diameter > flankStart(gear) && diameter < gear.tipDiameter);
        const half = Math.atan2(made.x, made.y);
        near(toothThicknessAt(gear, diameter), diameter * half, gear, 1e-8);
      }),
    );
  });

  it("chordal thickness and addendum, by dividers and a depth blade", () => {
    fc.assert(
      fc.property(gears, part, (gear, share) => {
        const diameter = between(flankStart(gear), gear.tipDiameter, share);
        const { x, y } = flankPoint(gear, diameter);
        const chord = chordAt(gear, diameter);
        near(chord.thickness, 2 * x, gear, 1e-7);
        near(chord.addendum, gear.tipDiameter / 2 - y, gear, 1e-7);
      }),
    );
  });

  it("the span over k teeth, by jaws", () => {
    fc.assert(
      fc.property(gears, (gear) => {
        if (gear.span === null) return;
        const drawn = drawnSpan(gear, gear.span.teeth);
        near(gear.span.length, drawn.length, gear);
        near(gear.span.contactDiameter, drawn.contactDiameter, gear, 1e-6);
        expect(drawn.contactDiameter).toBeGreaterThanOrEqual(flankStart(gear) * (1 - 1e-6));
        expect(drawn.contactDiameter).toBeLessThanOrEqual(gear.tipDiameter);
        const more = drawnSpan(gear, gear.span.teeth + 1);
        near(more.length - drawn.length, gear.basePitch, gear);
      }),
    );
  });

  it("one tooth more or less puts the jaws no nearer the middle of the flank", () => {
    fc.assert(
      fc.property(gears, (gear) => {
        if (gear.span === null) return;
        const middle = gear.referenceDiameter + 2 * gear.profileShift * gear.module;
        const off = Math.abs(gear.span.contactDiameter - middle);
        for (const teeth of [gear.span.teeth - 1, gear.span.teeth + 1]) {
          if (teeth < 2) continue;
          const { contactDiameter } = drawnSpan(gear, teeth);
          if (contactDiameter < flankStart(gear) || contactDiameter > gear.tipDiameter) continue;
          expect(Math.abs(contactDiameter - middle)).toBeGreaterThanOrEqual(off - 1e-6);
          near(spanOver(gear, teeth).contactDiameter, contactDiameter, gear, 1e-6);
        }
      }),
    );
  });

  it("over pins, by pins dropped in until they touch", () => {
    fc.assert(
      fc.property(gears, part, (gear, share) => {
        const range = pinRange(gear);
        fc.pre(range !== null);
        const pin = between(range.least, range.greatest, share);
        near(overPins(gear, pin), drawnOverPins(gear, pin, gear.tipDiameter), gear, 1e-7);
      }),
      runs(40),
    );
  });

  it("pins of the range stand above the tips and clear the root; others are refused", () => {
    fc.assert(
      fc.property(gears, (gear) => {
        const range = pinRange(gear);
        fc.pre(range !== null);
        expect(() => overPins(gear, range.least * 0.99)).toThrow(InputError);
        expect(() => overPins(gear, range.greatest * 1.01)).toThrow(InputError);
        if (gear.teeth % 2 !== 0) return;
        for (const pin of [range.least, range.greatest]) {
          expect(overPins(gear, pin)).toBeGreaterThan(gear.tipDiameter);
          expect(overPins(gear, pin) - 2 * pin).toBeGreaterThanOrEqual(gear.rootDiameter - 1e-9);
        }
      }),
    );
  });

  it("a pin fits where it is within the range, and nowhere else", () => {
    fc.assert(
      fc.property(gears, fc.integer({ min: 0, max: 400 }), (gear, hundredths) => {
        const range = pinRange(gear);
        const pin = (gear.module * hundredths) / 100;
        const within = range !== null && pin >= range.least && pin <= range.greatest;
        expect(pinFits(gear, pin)).toBe(within);
        if (range === null) return;
        expect([range.least, range.greatest].map((end) => pinFits(gear, end))).toEqual([true, true]);
      }),
    );
  });

  it("a shallow space lets no pin strike its root", () => {
    const shallow = spurGear({ teeth: 40, module: 2, wholeDepth: 2.2 });
    const range = pinRange(shallow);
    const bottomOf = (pin: number) => drawnOverPins(shallow, pin, shallow.tipDiameter) - 2 * pin;
    expect(bottomOf(range?.least ?? 0)).toBeCloseTo(shallow.rootDiameter, 6);
    expect(bottomOf(range?.greatest ?? 0)).toBeGreaterThan(shallow.rootDiameter);
  });

  it("every count of teeth whose span touches the flanks is allowed, and no other", () => {
    fc.assert(
      fc.property(gears, fc.integer({ min: 1, max: 40 }), (gear, teeth) => {
        fc.pre(teeth <= gear.teeth / 2);
        const { contactDiameter } = drawnSpan(gear, teeth);
        const margin = 1e-6 * gear.referenceDiameter;
        if (contactDiameter > flankStart(gear) + margin && contactDiameter < gear.tipDiameter - margin) {
          near(spanOver(gear, teeth).contactDiameter, contactDiameter, gear, 1e-6);
        } else if (contactDiameter < flankStart(gear) - margin || contactDiameter > gear.tipDiameter + margin) {
          expect(() => spanOver(gear, teeth)).toThrow(/do not rest on the flanks/);
        }
      }),
    );
  });
});
