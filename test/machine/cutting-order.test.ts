import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cuttingOrder, defineHead, planJob, readyHead, roundsOfOrder } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

const cases = fc
  .integer({ min: 2, max: 600 })
  .chain((divisions) => fc.tuple(fc.constant(divisions), fc.integer({ min: 1, max: divisions - 1 })));

describe("an order of cutting", () => {
  it("visits every tooth once, from the first on", () => {
    fc.assert(
      fc.property(cases, ([divisions, step]) => {
        const order = cuttingOrder(divisions, step);
        expect(order[0]).toBe(1);
        expect(order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: divisions }, (_, index) => index + 1));
      }),
    );
  });

  it("goes on by the step, but where that comes back to a tooth that is cut", () => {
    fc.assert(
      fc.property(cases, ([divisions, step]) => {
        const cut = new Set<number>();
        let last: number | null = null;
        for (const tooth of cuttingOrder(divisions, step)) {
          const onward: number = last === null ? 1 : ((last - 1 + step) % divisions) + 1;
          if (tooth !== onward) expect(cut.has(onward)).toBe(true);
          cut.add(tooth);
          last = tooth;
        }
      }),
    );
  });

  it("takes as many rounds of the work as the places of its plan add up to", () => {
    const head = readyHead("ratio-40-plates-15-49");
    for (const [divisions, step] of [
      [60, 7],
      [36, 8],
      [12, 5],
      [127, 50],
    ] as const) {
      const order = cuttingOrder(divisions, step);
      const plan = planJob(head, { divisions }, { teeth: order });
      if (!plan.planned) throw new Error("no plan");
      expect(plan.places.map(({ tooth }) => tooth)).toEqual(order);
      const onward = order.map((tooth, index) => ((order[index + 1] ?? 1) - tooth + divisions) % divisions);
      const sum = onward.reduce((total, each) => total + each, 0);
      expect(roundsOfOrder(order, divisions)).toBe(sum / divisions);
    }
  });

  it("by hand: of 8, by threes in one row; of 12, by eights in four", () => {
    expect(cuttingOrder(8, 3)).toEqual([1, 4, 7, 2, 5, 8, 3, 6]);
    expect(cuttingOrder(12, 8)).toEqual([1, 9, 5, 2, 10, 6, 3, 11, 7, 4, 12, 8]);
    expect(roundsOfOrder(cuttingOrder(8, 3), 8)).toBe(3);
    // Each of four rows has two steps of 8; 9 lead to the next, thrice, and 5 back to the first: 96 in all.
    expect(roundsOfOrder(cuttingOrder(12, 8), 12)).toBe(8);
    expect(roundsOfOrder(cuttingOrder(9, 1), 9)).toBe(1);
  });

  it("leaves each tooth of a near way as far off as where it is gone to by itself", () => {
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [47, 49] }], ring: null });
    const plan = planJob(head, { divisions: 97 }, { by: "nearest-hole", teeth: cuttingOrder(97, 40) });
    const usual = planJob(head, { divisions: 97 }, { by: "nearest-hole" });
    if (!plan.planned || !usual.planned) throw new Error("no plan");
    const errors = new Map(usual.places.map(({ tooth, errorArcSeconds }) => [tooth, errorArcSeconds]));
    for (const { tooth, errorArcSeconds } of plan.places) expect(errorArcSeconds).toBeCloseTo(errors.get(tooth) ?? Number.NaN, 9);
  });

  it.each([
    [() => cuttingOrder(12, 0), "step: 0 is not a step from tooth to tooth; give 1 to 11"],
    [() => cuttingOrder(12, 12), "step: 12 is not a step from tooth to tooth; give 1 to 11"],
    [() => cuttingOrder(12, 2.5), "step: 2.5 is not a step"],
    [() => cuttingOrder(60_000, 7), "divisions"],
    [() => roundsOfOrder([1, 13], 12), "teeth[1]: 13 is not a tooth of 12; give 1 to 12"],
  ])("refuses what is none: %s", (ask, said) => {
    expect(refusalLines(ask).join("\n")).toContain(said);
  });
});
