import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FlatsSpec, flats } from "../../src/index.ts";
import { acrossCorners, hexagonBySide, octagonFromSquare } from "../published/flats.ts";
import { cited } from "../published/source.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

describe("published factors", () => {
  it.each(acrossCorners.rows)(`$sides sides: $factor across corners (${cited(acrossCorners.source)})`, ({ sides, factor }) => {
    expect(flats({ sides, acrossFlats: 1 }).acrossCorners?.toFixed(factor.length - 2)).toBe(factor);
  });

  it(`a hexagon is 1.732 of its sides across (${cited(hexagonBySide.source)})`, () => {
    expect(1 / flats({ sides: 6, acrossFlats: 1 }).flatWidth).toBeCloseTo(hexagonBySide.factor, 3);
  });

  it(`an octagon takes 1/(2 + √2) off each corner of its square, not what is printed (${cited(octagonFromSquare.source)})`, () => {
    const { flatWidth } = flats({ sides: 8, acrossFlats: 1 });
    const off = (1 - flatWidth) / 2;
    expect(1 / off).toBeCloseTo(2 + Math.SQRT2, 12);
    expect(Math.abs(1 / off - octagonFromSquare.printed)).toBeGreaterThan(0.2);
  });
});

/** The work as points of its outline: round, and cut straight by every flat. */
function outline({ sides, acrossFlats, blank }: ReturnType<typeof flats>, steps = 3600) {
  return Array.from({ length: steps }, (_, step) => {
    const angle = (2 * Math.PI * step) / steps;
    const reach = Array.from({ length: sides }, (_, side) => {
      const cosine = Math.cos(angle - (2 * Math.PI * side) / sides);
      return cosine > 0 ? acrossFlats / 2 / cosine : Number.POSITIVE_INFINITY;
    });
    return { angle, radius: Math.min(blank / 2, ...reach), onRound: Math.min(...reach) > blank / 2 + 1e-9 };
  });
}

const specs = fc.record({
  sides: fc.integer({ min: 2, max: 16 }),
  acrossFlats: fc.integer({ min: 5, max: 80 }),
  more: fc.integer({ min: 1, max: 60 }),
});

describe("flats cut on round stock", () => {
  it("are as the outline of the work, drawn point by point", () => {
    fc.assert(
      fc.property(specs, ({ sides, acrossFlats, more }) => {
        const blank = acrossFlats * (1 + more / 100);
        const cut = flats({ sides, acrossFlats, blank });
        const points = outline(cut);
        const widest = Math.max(...points.map(({ radius }) => radius));
        expect(points.some(({ onRound }) => onRound)).toBe(!cut.cornersSharp);
        expect(cut.depth).toBeCloseTo(blank / 2 - Math.min(...points.map(({ radius }) => radius)), 4);
        const corner = Math.min(blank, cut.acrossCorners ?? blank) / 2;
        expect(Math.abs(widest - corner)).toBeLessThan(corner * 0.001);
        // As wide as what one flat takes of the outline about it.
        const mine = points.filter(({ angle, radius }) => Math.abs(radius * Math.cos(angle) - acrossFlats / 2) < 1e-9);
        const rises = mine.map(({ angle, radius }) => radius * Math.sin(angle));
        expect(Math.abs(Math.max(...rises) - Math.min(...rises) - cut.flatWidth)).toBeLessThan(0.02 * blank);
        expect(cut.flatToRound).toBeCloseTo(blank / 2 + acrossFlats / 2, 9);
      }),
      runs(60),
    );
  });

  it("either length gives the other: the least blank, or the largest flats", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 360 }), fc.integer({ min: 1, max: 5000 }), (sides, acrossFlats) => {
        const { blank, cornersSharp } = flats({ sides, acrossFlats });
        const back = flats({ sides, blank });
        expect([cornersSharp, back.cornersSharp]).toEqual([true, true]);
        expect(back.acrossFlats / acrossFlats).toBeCloseTo(1, 12);
        expect(back.acrossCorners).toBeCloseTo(blank, 6);
      }),
    );
  });

  it("by hand: a hexagon of 17, two flats for a spanner of 22, three of a triangle", () => {
    const hexagon = flats({ sides: 6, acrossFlats: 17 });
    expect(hexagon.blank).toBeCloseTo(19.63, 3);
    expect(hexagon.depth).toBeCloseTo(1.315, 3);
    expect(hexagon).toMatchObject({ cornersSharp: true, flatToCorner: null });
    // √(25² − 22²) = √141.
    expect(flats({ sides: 2, acrossFlats: 22, blank: 25 })).toMatchObject({
      acrossCorners: null,
      cornersSharp: false,
      depth: 1.5,
      flatToRound: 23.5,
      flatWidth: Math.sqrt(141),
    });
    // 10 from the axis, the corners 20: 30 from flat to corner.
    expect(flats({ sides: 3, acrossFlats: 20 }).flatToCorner).toBeCloseTo(30, 12);
    expect(flats({ sides: 3, acrossFlats: 20, blank: 36 }).flatToCorner).toBeCloseTo(28, 12);
  });
});

it.each<[object, string]>([
  [{ sides: 6 }, "acrossFlats: neither length is given"],
  [{ sides: 1, acrossFlats: 10 }, "sides: 1 is not a whole number from 2 to 360"],
  [{ sides: 6, acrossFlats: 0 }, "acrossFlats: 0 is not a length above 0"],
  [{ sides: 6, blank: "20" }, 'blank: "20" is not a length above 0'],
  [{ sides: 6, acrossFlats: 20, blank: 20 }, "blank: is no larger than the flats are across"],
  [{ sides: 2, acrossFlats: 20 }, "blank: is needed: two flats have no corners"],
  [{ sides: 2, blank: 20 }, "acrossFlats: is needed: two flats have no corners"],
  [{ sides: 6, across: 20 }, 'there is no key "across"'],
])("refuses %j", (spec, why) => {
  expect(refusalLines(() => flats(spec as FlatsSpec)).join("\n")).toContain(why);
});
