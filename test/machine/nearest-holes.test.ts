import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, fromExact, nearestHoles, ownedCircles } from "../../src/index.ts";
import { heads } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";

describe("nearestHoles", () => {
  it("is never off by more than half a space, for each position from the zero", () => {
    fc.assert(
      fc.property(heads(), fc.integer({ min: 1, max: 120 }), fc.nat(), (head, divisions, pick) => {
        const circles = ownedCircles(head);
        const circle = circles[pick % circles.length]?.holes ?? 0;
        const { n, d } = fromExact(head.wormRatio);
        const [p, q] = [Number(n), Number(d)];
        const positions = nearestHoles(head, divisions, circle);
        expect(positions.map(({ tooth }) => tooth)).toEqual(Array.from({ length: divisions }, (_, index) => index + 1));
        for (const { tooth, turns, hole, errorArcSeconds } of positions) {
          expect(hole >= 0 && hole < circle && turns >= 0).toBe(true);
          // Spaces wanted are p·j·C/(q·N); the holes reached are whole.
          const over = (turns * circle + hole) * q * divisions - p * (tooth - 1) * circle;
          expect(2 * Math.abs(over)).toBeLessThanOrEqual(q * divisions);
          expect(errorArcSeconds).toBeCloseTo((1_296_000 * over) / (divisions * circle * p), 6);
        }
      }),
    );
  });

  it("is exact where the circle serves: 7 on the 49", () => {
    const positions = nearestHoles(threePlates, 7, 49);
    expect(positions.map(({ turns, hole }) => [turns, hole])).toEqual([
      [0, 0],
      [5, 35],
      [11, 21],
      [17, 7],
      [22, 42],
      [28, 28],
      [34, 14],
    ]);
    expect(positions.every(({ errorArcSeconds }) => errorArcSeconds === 0)).toBe(true);
    expect(positions[3]?.angle).toBe("3/7");
  });

  it("refuses a count that is none, too many positions, and a circle that the head has not", () => {
    const refused = (divisions: number, circle: number, head = threePlates) =>
      refusalLines(() => nearestHoles(head, divisions, circle));
    expect(refused(0, 49)).toEqual(["divisions: 0 is not a count of divisions; give a whole number from 1 to 10,000,000"]);
    expect(refused(100_001, 49)).toEqual(["divisions: 100,001 positions are too many to list; give at most 100,000"]);
    expect(refused(53, 50)).toEqual(["circle: this head has no circle of 50; give one of its own"]);
    expect(refused(53, 49, ready("ratio-90-dial"))).toEqual(["circle: this head has no circle of 49; give one of its own"]);
    expect(refused(53, 24, defineHead({ ...threePlates, directPlates: [{ name: "nose", holes: 24 }] }))).toEqual([
      "circle: this head has no circle of 24; give one of its own",
    ]);
  });
});
