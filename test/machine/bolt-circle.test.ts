import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CircleLayout, checkChords, coordinates, revolutions } from "../../src/index.ts";
import { chordFactors } from "../published/chord-factors.ts";
import { cited } from "../published/source.ts";
import { refusalLines } from "../support/refusal.ts";

const circles = fc.record({
  holes: fc.integer({ min: 2, max: 60 }),
  radius: fc.integer({ min: 1, max: 500 }),
  x: fc.integer({ min: -900, max: 900 }),
  y: fc.integer({ min: -900, max: 900 }),
  start: fc.integer({ min: 0, max: 359 }),
});

describe("a bolt circle", () => {
  it("from a zero of its own is the signed one, moved to where its centre lies", () => {
    fc.assert(
      fc.property(circles, ({ holes, radius, x, y, start }) => {
        const layout: CircleLayout = { radius, startAngle: revolutions(start, 360) };
        const own = coordinates(holes, { ...layout, origin: { x, y } });
        for (const [index, hole] of coordinates(holes, layout).entries()) {
          expect(own[index]?.x).toBeCloseTo(hole.x + x, 9);
          expect(own[index]?.y).toBeCloseTo(hole.y + y, 9);
        }
        expect(coordinates(holes, { ...layout, origin: { x: radius, y: radius } })).toEqual(
          coordinates(holes, { ...layout, origin: "tangents" }),
        );
      }),
    );
  });

  it("has chords to check that are the distances of its holes, of one none", () => {
    fc.assert(
      fc.property(circles, ({ holes, radius, x, y }) => {
        const list = coordinates(holes, { radius, origin: { x, y } });
        for (const { apart, length } of checkChords(holes, radius)) {
          const [one, other] = [list[0], list[apart]];
          expect(Math.hypot((one?.x ?? 0) - (other?.x ?? 0), (one?.y ?? 0) - (other?.y ?? 0))).toBeCloseTo(length, 8);
        }
      }),
    );
    expect(checkChords(1, 40)).toEqual([]);
    expect(checkChords(2, 40).map(({ apart }) => apart)).toEqual([1]);
  });

  it.each(chordFactors.rows)(
    `$holes holes: $factor of the diameter to the next (${cited(chordFactors.source)})`,
    ({ holes, factor }) => {
      const [next] = checkChords(holes, 0.5);
      expect(Math.abs((next?.length ?? 0) - Number(factor))).toBeLessThan(0.000051);
    },
  );

  it("of 15 holes it is .2079, where one table prints .2070", () => {
    expect(checkChords(15, 0.5)[0]?.length.toFixed(4)).toBe("0.2079");
  });

  it.each<[unknown, string]>([
    [{ x: 1 }, "origin.y: undefined is not where a centre lies"],
    [{ x: Number.NaN, y: 0 }, "origin.x: NaN is not where a centre lies"],
    [{ x: 1, y: 1, z: 1 }, 'there is no key "z"'],
    ["corner", "origin"],
    [null, "origin"],
  ])("refuses an origin of %j", (origin, why) => {
    expect(refusalLines(() => coordinates(4, { radius: 9, origin } as CircleLayout)).join("\n")).toContain(why);
  });
});
