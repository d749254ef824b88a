import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { identifyGear, standardPitches } from "../../../src/index.ts";

/** Tips of a gear as points, measured as a caliper and a straightedge would. */
function piece(module: number, teeth: number, pitches: number) {
  const radius = (module * (teeth + 2)) / 2;
  const tip = (index: number) => {
    const turned = (2 * Math.PI * index) / teeth;
    return { x: radius * Math.cos(turned), y: radius * Math.sin(turned) };
  };
  const [from, to] = [tip(0), tip(pitches)];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return { chord: Math.hypot(to.x - from.x, to.y - from.y), pitches, height: radius - Math.hypot(middle.x, middle.y) };
}

const pitches = standardPitches.filter(({ module, preference }) => module >= 1.5 && module <= 12 && preference === 1);

/** A pitch, a count, and a piece of a tenth of it to a half. */
const pieces = fc
  .tuple(fc.constantFrom(...pitches), fc.integer({ min: 14, max: 120 }), fc.double({ min: 0.12, max: 0.45, noNaN: true }))
  .map(([pitch, teeth, part]) => ({ pitch, teeth, over: Math.max(2, Math.round(teeth * part)) }));

describe("a piece of a gear", () => {
  it("tells its count and its pitch, measured true", () => {
    fc.assert(
      fc.property(pieces, ({ pitch, teeth, over }) => {
        const [found] = identifyGear({ fragment: piece(pitch.module, teeth, over) }).candidates;
        expect([found?.teeth, found?.name, found?.fit]).toEqual([teeth, pitch.name, "close"]);
        expect(found?.residuals.every(({ difference }) => Math.abs(difference) < 1e-9)).toBe(true);
      }),
    );
  });

  it("never leaves out the true count where the height was read a tenth of a millimetre off", () => {
    fc.assert(
      fc.property(pieces, fc.integer({ min: -100, max: 100 }), ({ pitch, teeth, over }, microns) => {
        const { height, ...measured } = piece(pitch.module, teeth, over);
        fc.pre(height > 2);
        const read = { ...measured, height: height + microns / 1000 };
        const { candidates } = identifyGear({ fragment: read }, { limit: 100 });
        expect(candidates.some((each) => each.teeth === teeth && each.name === pitch.name)).toBe(true);
      }),
    );
  });

  it("by hand: 41 teeth of module 3.25, over 8 of them", () => {
    // d = c²/4h + h = 139.75 = 3.25 · 43, and 8π/asin(c/d) = 41.
    const { candidates, byMeasure } = identifyGear({ fragment: { chord: 80.401, pitches: 8, height: 12.722 } });
    expect(candidates[0]).toMatchObject({ teeth: 41, name: "3.25 module", fit: "close" });
    expect(byMeasure).toHaveLength(1);
    expect(byMeasure[0]?.module).toBeCloseTo(3.25, 4);
  });

  it("needs no height where the count is known, and is off as its diameter is", () => {
    const { chord } = piece(2, 40, 8);
    const [found] = identifyGear({ teeth: 40, fragment: { chord: chord * (83.1 / 84), pitches: 8 } }).candidates;
    expect(found).toMatchObject({ name: "2 module", tip: "worn tip", findings: [{ code: "tip-worn" }] });
    // Nine tenths of a millimetre over the whole diameter, as by the caliper.
    const [worn] = found?.findings ?? [];
    expect(worn !== undefined && "difference" in worn && worn.difference).toBeCloseTo(-0.9, 9);
    const [whole] = identifyGear({ teeth: 40, tipDiameter: 83.1 }).candidates;
    expect(whole?.findings[0]).toMatchObject({ difference: expect.closeTo(-0.9, 9) });
  });

  it("is held against the diameter where both were measured", () => {
    const fragment = piece(2, 40, 8);
    expect(identifyGear({ teeth: 40, tipDiameter: 84, fragment }).candidates[0]).toMatchObject({
      name: "2 module",
      fit: "close",
    });
    const wrong = { ...fragment, chord: fragment.chord + 1 };
    const [found] = identifyGear({ teeth: 40, tipDiameter: 84, fragment: { chord: wrong.chord, pitches: 8 } }).candidates;
    expect(found?.fit).toBe("poor");
    expect(found?.findings[0]).toMatchObject({ code: "misfit", measure: { code: "chord", teeth: 8 } });
    expect(identifyGear({ teeth: 60, fragment }).candidates[0]?.findings.map((each) => each.code)).toContain("misfit");
  });

  it("is ranked with the centre distance and the spans, which settle what a flat piece leaves open", () => {
    const { height: _, ...chord } = piece(2.5, 61, 3);
    // 0.94 mm high, and read as 1: it could have from 50 to 67 teeth.
    const flat = { ...chord, height: 1 };
    const counts = identifyGear({ fragment: flat }, { limit: 100 }).candidates.map(({ teeth }) => teeth);
    expect(new Set(counts).size).toBeGreaterThan(8);
    const { candidates } = identifyGear({ fragment: flat, mateTeeth: 20, centreDistance: (2.5 * 81) / 2 });
    expect(candidates[0]).toMatchObject({ teeth: 61, name: "2.5 module", fit: "close" });
  });

  it("nearly flat or half a gear, it still leaves a count to try", () => {
    expect(identifyGear({ fragment: { chord: 10, pitches: 2, height: 0.001 } }).candidates.length).toBeGreaterThan(0);
    expect(identifyGear({ fragment: { chord: 10, pitches: 1, height: 5 } }).candidates[0]?.teeth).toBe(4);
  });
});
