import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CircleLayout, chord, coordinates, revolutions } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const radii = fc.integer({ min: 1, max: 2_000_000 }).map((thousandths) => thousandths / 1000);
const counts = fc.integer({ min: 1, max: 200 });
const starts = fc
  .tuple(fc.integer({ min: 0, max: 1439 }), fc.constant(1440))
  .map(([n, d]) => ({ text: `${n}/${d}`, turns: n / d }));
const layouts = fc.record({
  sense: fc.constantFrom("clockwise" as const, "counter-clockwise" as const),
  origin: fc.constantFrom("centre" as const, "tangents" as const),
});

const distance = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

describe("bolt circles that can be worked in the head (our own arithmetic)", () => {
  it("4 on a radius of 10, exactly on the axes", () => {
    expect(coordinates(4, { radius: 10 })).toEqual([
      { tooth: 1, x: 10, y: 0 },
      { tooth: 2, x: 0, y: 10 },
      { tooth: 3, x: -10, y: 0 },
      { tooth: 4, x: 0, y: -10 },
    ]);
  });

  it("4 on a radius of 10 from the left and bottom tangents, clockwise from the top", () => {
    expect(coordinates(4, { radius: 10, startAngle: revolutions("1/4"), sense: "clockwise", origin: "tangents" })).toEqual([
      { tooth: 1, x: 10, y: 20 },
      { tooth: 2, x: 20, y: 10 },
      { tooth: 3, x: 10, y: 0 },
      { tooth: 4, x: 0, y: 10 },
    ]);
  });

  it("6 on a radius of 40: half the radius and its root-three-halves", () => {
    const [, second] = coordinates(6, { radius: 40 });
    expect(second?.x).toBeCloseTo(20, 12);
    expect(second?.y).toBeCloseTo(40 * Math.sqrt(0.75), 12);
  });

  it("chords of 6 are the radius, √3 radii and the diameter", () => {
    expect(chord(6, 40)).toBeCloseTo(40, 12);
    expect(chord(6, 40, 2)).toBeCloseTo(40 * Math.sqrt(3), 12);
    expect(chord(6, 40, 3)).toBeCloseTo(80, 12);
  });

  it("12 on a radius of 40: neighbours are 20.706 apart", () => {
    expect(chord(12, 40).toFixed(3)).toBe("20.706");
  });
});

describe("laws of coordinates", () => {
  it("lie where plain trigonometry puts them", () => {
    fc.assert(
      fc.property(counts, radii, starts, layouts, (divisions, radius, start, { sense, origin }) => {
        const list = coordinates(divisions, { radius, startAngle: revolutions(start.text), sense, origin });
        expect(list.map(({ tooth }) => tooth)).toEqual(Array.from({ length: divisions }, (_, index) => index + 1));
        for (const { tooth, x, y } of list) {
          const turns = start.turns + ((sense === "clockwise" ? -1 : 1) * (tooth - 1)) / divisions;
          const shift = origin === "tangents" ? radius : 0;
          expect(Math.abs(x - shift - radius * Math.cos(2 * Math.PI * turns))).toBeLessThan(radius * 1e-12);
          expect(Math.abs(y - shift - radius * Math.sin(2 * Math.PI * turns))).toBeLessThan(radius * 1e-12);
        }
      }),
    );
  });

  it("keep the radius, and every chord is the one stated", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 120 }),
        radii,
        starts,
        layouts,
        fc.nat(),
        (divisions, radius, start, layout, pick) => {
          const list = coordinates(divisions, { radius, startAngle: revolutions(start.text), ...layout });
          const shift = layout.origin === "tangents" ? radius : 0;
          const apart = 1 + (pick % (divisions - 1));
          for (const [index, at] of list.entries()) {
            expect(Math.abs(distance(at, { x: shift, y: shift }) - radius)).toBeLessThan(radius * 1e-12);
            const other = list[(index + apart) % divisions] ?? at;
            expect(Math.abs(distance(at, other) - chord(divisions, radius, apart))).toBeLessThan(radius * 1e-12);
          }
        },
      ),
      runs(60),
    );
  });

  it("from the tangents nothing is below 0 or over the diameter", () => {
    fc.assert(
      fc.property(counts, radii, starts, (divisions, radius, start) => {
        for (const { x, y } of coordinates(divisions, { radius, startAngle: revolutions(start.text), origin: "tangents" })) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
          expect(Math.max(x, y)).toBeLessThanOrEqual(2 * radius);
        }
      }),
    );
  });

  it("clockwise is the same circle the other way round", () => {
    fc.assert(
      fc.property(counts, radii, (divisions, radius) => {
        const onward = coordinates(divisions, { radius });
        const back = coordinates(divisions, { radius, sense: "clockwise" });
        for (const { tooth, x, y } of back) {
          const mirrored = onward[tooth - 1];
          expect(x).toBeCloseTo(mirrored?.x ?? Number.NaN, 9);
          expect(y).toBeCloseTo(-(mirrored?.y ?? Number.NaN), 9);
        }
      }),
      runs(30),
    );
  });
});

describe("refusals of coordinates", () => {
  const layout = (part: Partial<CircleLayout>) => ({ radius: 10, ...part });
  it.each([
    ["a radius of 0", () => coordinates(12, layout({ radius: 0 })), "radius: 0 is not a radius; give one above 0"],
    ["a radius of NaN", () => coordinates(12, layout({ radius: Number.NaN })), "radius: NaN is not a radius; give one above 0"],
    [
      "an endless radius",
      () => coordinates(12, layout({ radius: Number.POSITIVE_INFINITY })),
      "radius: Infinity is not a radius; give one above 0",
    ],
    [
      "a count of 0",
      () => coordinates(0, layout({})),
      "divisions: 0 is not a count of divisions; give a whole number from 1 to 10,000,000",
    ],
    ["too many", () => coordinates(50_001, layout({})), "divisions: 50,001 places are too many to list; give at most 50,000"],
    [
      "a start below 0",
      () => coordinates(12, layout({ startAngle: revolutions("-1/8") })),
      'startAngle: "-1/8" is not an angle from 0 to 1,000 revolutions',
    ],
    ["a chord to itself", () => chord(12, 10, 0), "apart: 0 is not a number of divisions between two of 12; give 1 to 11"],
    ["a chord past the round", () => chord(12, 10, 12), "apart: 12 is not a number of divisions between two of 12; give 1 to 11"],
    ["a chord of one division", () => chord(1, 10), "apart: there is no chord with 1 division; give a count of 2 or more"],
    ["a chord on no radius", () => chord(12, -1), "radius: -1 is not a radius; give one above 0"],
  ])("%s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});
