import { describe, expect, it } from "vitest";
import { defineHead, type HeadSpec, indexAngle, revolutions } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

const plates = [{ name: "1", circles: [10_000] }];

describe("an angle with terms of seven figures, on the largest circle", () => {
  const told = "angle: it has too large terms for this head; give a coarser or a smaller angle";
  const lines = (spec: Omit<HeadSpec, "plates">, angle: string) =>
    refusalLines(() => indexAngle(defineHead({ ...spec, plates }), revolutions(angle), { methods: ["simple"] }));

  // 2⁵³ is 9,007,199,254,740,992: a ratio of 100,000 and 10,000 holes leave room for 9,007,199.
  it.each([
    ["the greatest worm ratio", { wormRatio: 100_000 }],
    ["a plate that is geared to turn as fast as it may, on a worm of a thousandth", { wormRatio: "1/1000", fast: true }],
  ])("is taken as long as all stays whole, and refused from there on: %s", (_, { wormRatio, ...more }) => {
    const spec = "fast" in more ? { wormRatio, gears: [24, 48], gearing: { greatestPlateRatio: 100 } } : { wormRatio };
    expect(lines(spec, "9007199/9007201")).toEqual([]);
    expect(lines(spec, "9007200/9007201")).toEqual([told]);
  });
});
