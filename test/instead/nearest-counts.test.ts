import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, exactSettings, type Head, indexDivisions, type Method } from "../../src/index.ts";
import { heads, small } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";

const closes = (head: Head, divisions: number, methods: readonly Method[], teethPerMove: number): boolean =>
  exactSettings(head, { divisions }, { methods, teethPerMove }).next().done !== true;

describe("nearestCounts", () => {
  it("are the nearest below and above that close, and none between does", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 2 }), (head, divisions, teeth) => {
        const { exact, nearestCounts } = indexDivisions(head, divisions, { teethPerMove: teeth });
        if (exact) {
          expect(nearestCounts).toEqual([]);
          return;
        }
        const any: readonly Method[] = ["direct", "simple", "differential", "compound", "dial"];
        const below = nearestCounts.find((count) => count < divisions) ?? 0;
        const above = nearestCounts.find((count) => count > divisions) ?? divisions + 400;
        for (const count of nearestCounts) expect(closes(head, count, any, teeth)).toBe(true);
        for (let count = below + 1; count < Math.min(above, divisions + 400); count += 1) {
          expect(closes(head, count, any, teeth)).toBe(false);
        }
      }),
      runs(60),
    );
  });

  it("keep to the methods asked for, however far away", () => {
    const of = (divisions: number, ...methods: Method[]) => indexDivisions(threePlates, divisions, { methods }).nearestCounts;
    expect(of(96, "simple")).toEqual([95, 98]);
    expect(of(1961, "simple")).toEqual([1960]);
    expect(of(999_999, "simple")).toEqual([1960]);
    expect(indexDivisions(threePlates, 383, { teethPerMove: 1 }).nearestCounts).toEqual([382, 384]);
    expect(of(383, "direct")).toEqual([]);
    // Whole turns of a handwheel, by its own dial or without.
    expect(indexDivisions(ready("ratio-90-dial"), 70, { methods: ["simple"] }).nearestCounts).toEqual([45, 90]);
  });

  it("are the nearest of all circles and pairs, not of the first that has one: our arithmetic", () => {
    const of = (divisions: number, circles: number[], ...methods: Method[]) => {
      const head = defineHead({ wormRatio: 1, plates: [{ name: "1", circles }], rearPin: true });
      return indexDivisions(head, divisions, { methods }).nearestCounts;
    };
    // 50 by the circle of 50, but 49 by that of 98.
    expect(of(30, [50, 98], "simple")).toEqual([25, 49]);
    // 225 and 75 by 9 and 25, but 100 by 4 and 25.
    expect(of(85, [4, 9, 25], "compound")).toEqual([75, 100]);
  });
});
