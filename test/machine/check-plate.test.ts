import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlate, coordinates, type MeasuredChord } from "../../src/index.ts";
import { chordFactors } from "../published/chord-factors.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

describe("a plate that was measured", () => {
  it.each(chordFactors.rows)("is true where its chords are the published ones: $holes holes, $factor", ({ holes, factor }) => {
    const { chords } = checkPlate(holes, [{ spaces: 1, length: 100 * Number(factor) }], { diameter: 100 });
    // The factors are printed to four places.
    expect(Math.abs(chords[0]?.offMm ?? 1)).toBeLessThan(0.006);
  });

  it("finds a hole that is moved along its circle, by a chord to it, and what it does at the spindle", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 200 }),
        fc.integer({ min: 40, max: 300 }),
        fc.integer({ min: -50, max: 50 }),
        fc.nat(),
        fc.nat(),
        (holes, diameter, thousandths, pickFrom, pickSpaces) => {
          const from = pickFrom % holes;
          const spaces = 1 + (pickSpaces % Math.floor(holes / 3));
          const moved = thousandths / 1000;
          const at = coordinates(holes, { radius: diameter / 2 });
          const [one, other] = [at[from], at[(from + spaces) % holes]];
          if (!one || !other) return;
          const turn = (2 * moved) / diameter;
          const x = other.x * Math.cos(turn) - other.y * Math.sin(turn);
          const y = other.x * Math.sin(turn) + other.y * Math.cos(turn);
          const length = Math.hypot(x - one.x, y - one.y);
          const check = checkPlate(holes, [{ from, spaces, length }], { diameter, servesRatio: 60 });
          expect(check.chords[0]).toMatchObject({ from, to: (from + spaces) % holes });
          // To first order; the curve of the circle over 0.05 mm is beyond what is measured.
          expect(check.chords[0]?.alongMm).toBeCloseTo(moved, 3);
          expect(check.worstAlongMm).toBeCloseTo(Math.abs(moved), 3);
          expect(check.atSpindleArcSeconds).toBeCloseTo(
            (Math.abs(check.worstAlongMm ?? 0) / (diameter / 2)) * (648_000 / Math.PI / 60),
            6,
          );
        },
      ),
      runs(100),
    );
  });

  it("has the diameter by which its chords fit, where none is given", () => {
    const chords: readonly MeasuredChord[] = [1, 5, 12].map((spaces) => ({
      spaces,
      length: 84 * Math.sin((Math.PI * spaces) / 36),
    }));
    const check = checkPlate(36, chords);
    expect([check.diameter.toFixed(6), check.diameterGiven, check.servesRatio]).toEqual(["84.000000", false, "40"]);
    expect(Math.max(...check.chords.map(({ offMm }) => Math.abs(offMm)))).toBeLessThan(1e-12);
  });

  it("is not told by a chord across, which tells the diameter", () => {
    const check = checkPlate(40, [{ spaces: 20, length: 80.1 }], { diameter: 80 });
    expect(check).toMatchObject({ worstAlongMm: null, atSpindleArcSeconds: null });
    expect(check.chords[0]).toMatchObject({ to: 20, alongMm: null });
    expect(check.chords[0]?.offMm).toBeCloseTo(0.1, 9);
  });

  it("more than half way round a hole too far on makes the chord shorter", () => {
    expect(checkPlate(12, [{ spaces: 10, length: 49.9 }], { diameter: 100 }).chords[0]?.alongMm).toBeGreaterThan(0);
  });

  it.each([
    [() => checkPlate(36, []), "measured: no chords were measured; give each with its spaces"],
    [() => checkPlate(36, null as never), "measured: no chords were measured"],
    [() => checkPlate(36, Array(1001).fill({ spaces: 1, length: 3 })), "measured: 1001 chords are too many; give at most 1,000"],
    [() => checkPlate(36, [{ spaces: 1, length: 7 }]), "measured: one chord tells the diameter and nothing of its holes"],
    [
      () => checkPlate(36, [{ spaces: 36, length: 7 }]),
      "measured[0].spaces: 36 is not a number of spaces between two holes; give 1 to 35",
    ],
    [
      () => checkPlate(36, [{ from: 36, spaces: 1, length: 7 }]),
      "measured[0].from: 36 is not a hole of the circle; give 0 to 35",
    ],
    [() => checkPlate(36, [{ spaces: 1, length: 0 }]), "measured[0].length: 0 is not a length; give millimetres above 0"],
    [() => checkPlate(1, [{ spaces: 1, length: 7 }]), "holes: 1 is not a number of holes"],
  ])("refuses %#", (act, why) => {
    expect(refusalLines(act).join("\n")).toContain(why);
  });
});
