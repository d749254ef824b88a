import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ErrorSources, errorAtRadius, errorBudget, indexDivisions, ratio } from "../../src/index.ts";
import { offCentre } from "../published/off-centre.ts";
import { cited } from "../published/source.ts";
import { ready } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";

/** What one source alone leaves. */
const one = (sources: Omit<ErrorSources, "radius"> & { readonly radius?: number }) => {
  const [item] = errorBudget({ radius: 50, ...sources }).items;
  if (item === undefined) throw new Error("no item");
  return item;
};

/** Where a work really stands that turns about an axis off its own: its middle is e aside at some angle. */
function seen(turned: number, e: number, radius: number): number {
  return Math.atan2(radius * Math.sin(turned), radius * Math.cos(turned) + e);
}

describe("what a work off its axis is out by", () => {
  it.each(offCentre.rows)(`$micrometres µm at a diameter of $diameterMm: $arcSeconds″ (${cited(offCentre.source)})`, (row) => {
    const { arcSeconds } = one({ radius: row.diameterMm / 2, runOut: (2 * row.micrometres) / 1000 });
    // One value is rounded down, as a plain cut.
    expect(Math.abs(arcSeconds - row.arcSeconds)).toBeLessThan(0.6);
  });

  it("is half of what an indicator shows, along the arc just that, at any radius", () => {
    expect(one({ radius: 50, runOut: 0.04 })).toMatchObject({ code: "run-out", mm: 0.02 });
    expect(one({ radius: 7, runOut: 0.04 }).mm).toBe(0.02);
    // The work of the brief example: 0.02 mm off centre at 50 mm, worked by hand: 206,264.8 · 0.02/50.
    expect(one({ runOut: 0.04 }).arcSeconds).toBeCloseTo(82.506, 3);
  });

  it("is what a gear drawn off its axis is seen to be out by: of a tooth, of any two, of neighbours", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 200 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 10, max: 300 }),
        (count, e, r) => {
          const off = Array.from({ length: count }, (_, tooth) => {
            const turned = (2 * Math.PI * tooth) / count;
            const error = turned - seen(turned, e / 1000, r);
            return error - 2 * Math.PI * Math.round(error / (2 * Math.PI));
          });
          const found = one({ radius: r, divisions: count, runOut: (2 * e) / 1000 });
          const seconds = (radians: number) => (radians * 648_000) / Math.PI;
          const bound = (most: number) => most * 1.011;
          const [least, most] = [Math.min(...off), Math.max(...off)];
          expect(seconds(Math.max(-least, most))).toBeLessThanOrEqual(bound(found.arcSeconds));
          expect(seconds(most - least)).toBeLessThanOrEqual(bound(found.anyTwoArcSeconds));
          const steps = off.map((error, tooth) => Math.abs((off[(tooth + 1) % count] ?? 0) - error));
          const worst = seconds(Math.max(...steps));
          expect(worst).toBeLessThanOrEqual(bound(found.pitchArcSeconds ?? 0));
          // It is no idle bound: of many teeth some stand where it is worst.
          if (count > 20) expect(worst).toBeGreaterThan((found.pitchArcSeconds ?? 0) * 0.95);
        },
      ),
    );
  });
});

describe("what the rest leaves", () => {
  it("holes are divided by the worm ratio: 0.1 mm at a radius of 60 on 40:1 is 8.6″ (our arithmetic)", () => {
    const { arcSeconds, mm } = one({ holes: { error: 0.1, circleDiameters: [120], wormRatio: ratio(40) } });
    expect(arcSeconds).toBeCloseTo(8.594, 3);
    expect(mm).toBeCloseTo((0.1 * 50) / 60 / 40, 12);
  });

  it("each pin of a compound move adds its own, and a plate on the spindle is divided by nothing", () => {
    const of = (circleDiameters: readonly number[], wormRatio: number | string) =>
      one({ holes: { error: 0.05, circleDiameters, wormRatio: wormRatio as number } }).arcSeconds;
    expect(of([120, 90], 40)).toBeCloseTo(of([120], 40) + of([90], 40), 9);
    expect(of([120], 1)).toBeCloseTo(40 * of([120], 40), 9);
    expect(of([120], "81/2")).toBeCloseTo(of([120], 1) / 40.5, 9);
  });

  it("worm and wheel as stated; a reading either way, so that two may be twice that apart", () => {
    expect(one({ divisions: 12, wormErrorArcSeconds: 20 })).toMatchObject({
      code: "worm",
      anyTwoArcSeconds: 20,
      pitchArcSeconds: 20,
    });
    expect(one({ divisions: 12, readingArcSeconds: 5 })).toMatchObject({
      code: "reading",
      anyTwoArcSeconds: 10,
      pitchArcSeconds: 10,
    });
    expect(one({ wormErrorArcSeconds: 20 }).pitchArcSeconds).toBeNull();
  });

  it("a setting as it says of itself, whichever it is", () => {
    const { near } = indexDivisions(ready("ratio-40-plates-15-49-ungeared"), 97, { near: true });
    for (const setting of near) {
      const found = one({ divisions: 97, setting });
      expect(found.arcSeconds).toBe(setting.worstArcSeconds);
      expect(found.pitchArcSeconds).toBe(setting.pitchArcSeconds);
      expect(found.anyTwoArcSeconds).toBe(setting.worstArcSeconds * (setting.moves === "equal" ? 1 : 2));
      expect(found.mm).toBeCloseTo(errorAtRadius(setting.worstArcSeconds, 50).mm, 12);
    }
    expect(one({ setting: { worstArcSeconds: 16, pitchArcSeconds: 1 } }).pitchArcSeconds).toBeNull();
  });
});

const parts = fc.record(
  {
    setting: fc.record({ worstArcSeconds: fc.integer({ min: 0, max: 900 }) }),
    runOut: fc.integer({ min: 0, max: 20 }).map((n) => n / 100),
    holes: fc.record({
      error: fc.integer({ min: 0, max: 20 }).map((n) => n / 100),
      circleDiameters: fc.constantFrom([80], [80, 120]),
      wormRatio: fc.constantFrom(1, 5, 40, 90),
    }),
    wormErrorArcSeconds: fc.integer({ min: 0, max: 90 }),
    readingArcSeconds: fc.integer({ min: 0, max: 90 }),
  },
  { requiredKeys: [] },
);

describe("what they come to", () => {
  it("is the sum, the greatest first, and without the setting what all others leave", () => {
    fc.assert(
      fc.property(parts, fc.integer({ min: 2, max: 300 }), (told, divisions) => {
        const { items, together, withoutSetting, untold } = errorBudget({ radius: 50, divisions, ...told });
        const inOrder = items.map(({ arcSeconds }) => arcSeconds);
        expect(inOrder).toEqual(inOrder.toSorted((a, b) => b - a));
        expect(together.arcSeconds).toBeCloseTo(
          inOrder.reduce((sum, each) => sum + each, 0),
          9,
        );
        expect(together.mm).toBeCloseTo(errorAtRadius(together.arcSeconds, 50).mm, 9);
        expect(withoutSetting.arcSeconds).toBeCloseTo(together.arcSeconds - (told.setting?.worstArcSeconds ?? 0), 9);
        expect([...items.map(({ code }) => code), ...untold].sort()).toEqual(["holes", "reading", "run-out", "setting", "worm"]);
        expect(items.length).toBe(Object.keys(told).length);
      }),
    );
  });

  it("has the grades of a gear of that radius: run-out shows all round and hardly from tooth to tooth", () => {
    const { together, withoutSetting } = errorBudget({
      radius: 50,
      divisions: 50,
      runOut: 0.04,
      setting: { worstArcSeconds: 80, pitchArcSeconds: 80, moves: "equal" },
    });
    // 2·82.5·sin 3.6° = 10.4″, 2.5 µm; with the setting 21.9 µm. All round 40 µm, and 59.4 with it.
    expect(withoutSetting.grades).toEqual({ toothToTooth: 3, allRound: 7 });
    expect(together.grades).toEqual({ toothToTooth: 9, allRound: 9 });
  });

  it("has none of an angle, nor of a gear that the standard does not know", () => {
    expect(errorBudget({ radius: 50, runOut: 0.04 }).together.grades).toBeNull();
    expect(errorBudget({ radius: 2, divisions: 8, runOut: 0.04 }).together.grades).toBeNull();
    expect(errorBudget({ radius: 50, divisions: 400, runOut: 0.04 }).together.grades).toBeNull();
  });
});

it.each<[object, string]>([
  [{ radius: 0 }, "radius: 0 mm is not a radius"],
  [{}, "radius: undefined is not a radius"],
  [{ radius: 50, runOut: -0.1 }, "runOut: -0.1 mm is not a run-out; give 0 mm to 100 mm"],
  [{ radius: 50, runOut: 100.1 }, "runOut: 100.1 mm is not a run-out"],
  [{ radius: 50, setting: 16 }, "setting.worstArcSeconds: undefined is not an angle in arc-seconds"],
  [{ radius: 50, setting: null }, "setting.worstArcSeconds"],
  [{ radius: 50, setting: { worstArcSeconds: 1, moves: "some" } }, 'setting.moves: is neither "equal" nor "from-zero"'],
  [{ radius: 50, holes: { error: 0.1, circleDiameters: [], wormRatio: 40 } }, "holes.circleDiameters: there is none"],
  [{ radius: 50, holes: { error: 0.1, circleDiameters: [90, 90, 90], wormRatio: 40 } }, "3 entries are too many; give at most 2"],
  [{ radius: 50, holes: { error: 0.1, circleDiameters: [90], wormRatio: 0 } }, "holes.wormRatio: 0 is not above 0"],
  [{ radius: 50, wormErrorArcSeconds: "20" }, 'wormErrorArcSeconds: "20" is not an angle in arc-seconds'],
  [{ radius: 50, readingArcSeconds: -1 }, "readingArcSeconds: -1 is not an angle"],
  [{ radius: 50, divisions: 0 }, "divisions: 0 is not a whole number from 1"],
  [{ radius: 50, runout: 0.1 }, 'there is no key "runout"'],
])("refuses %j", (sources, why) => {
  expect(refusalLines(() => errorBudget(sources as ErrorSources)).join("\n")).toContain(why);
});
