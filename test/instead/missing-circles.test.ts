import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, exactSettings, indexDivisions } from "../../src/index.ts";
import { heads, small } from "../support/arbitraries.ts";
import { threePlates } from "../support/ready.ts";

describe("circlesThatWouldDo", () => {
  it("each does it when it is drilled, and the smallest is the smallest that does", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 4 }), (head, divisions, teeth) => {
        const options = { methods: ["simple"], teethPerMove: teeth } as const;
        const { exact, circlesThatWouldDo } = indexDivisions(head, divisions, options);
        const does = (holes: number) => {
          const plates = [{ name: "new", circles: [holes] }];
          const drilled = defineHead({ wormRatio: head.wormRatio, plates });
          return exactSettings(drilled, { divisions }, options).next().done !== true;
        };
        if (exact) expect(circlesThatWouldDo).toEqual([]);
        else expect(circlesThatWouldDo.length).toBeGreaterThan(0);
        for (const circle of circlesThatWouldDo) expect(does(circle)).toBe(true);
        for (let holes = 2; holes < (circlesThatWouldDo[0] ?? 0); holes += 1) expect(does(holes)).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  it("is empty where an owned circle serves by several teeth per move", () => {
    const head = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [17] }] });
    expect(indexDivisions(head, 17).settings[0]).toMatchObject({ method: "simple", teethPerMove: 2, circle: 17 });
    expect(indexDivisions(head, 17).circlesThatWouldDo).toEqual([]);
    expect(indexDivisions(head, 19).circlesThatWouldDo).toEqual([19, 38, 57, 76, 95, 114]);
  });

  it("names those of every number of teeth per move, in order: 35 on 121/6:1 by two or three", () => {
    const head = defineHead({ wormRatio: "121/6", plates: [{ name: "1", circles: [20] }] });
    expect(indexDivisions(head, 35, { methods: ["simple"], teethPerMove: 3 }).circlesThatWouldDo).toEqual([70, 105, 140]);
  });

  it("names six at most, none over 200 but the smallest, and none over 10,000", () => {
    const of = (divisions: number) => indexDivisions(threePlates, divisions, { methods: ["simple"] }).circlesThatWouldDo;
    expect(of(96)).toEqual([12, 24, 36, 48, 60, 72]);
    expect(of(67)).toEqual([67, 134]);
    expect(of(383)).toEqual([383]);
    expect(of(10_007)).toEqual([]);
    const by15 = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15] }] });
    expect(indexDivisions(by15, 80, { methods: ["simple"] }).circlesThatWouldDo).toEqual([2, 4, 6, 8, 10, 12]);
    // On 41:1 a circle must divide by the count itself.
    const by41 = defineHead({ wormRatio: 41, plates: [{ name: "1", circles: [15] }] });
    const on41 = (divisions: number) => indexDivisions(by41, divisions, { methods: ["simple"] });
    expect([100, 10_000, 10_001].map((divisions) => on41(divisions).circlesThatWouldDo)).toEqual([[100, 200], [10_000], []]);
    // One of 200 still fits a common plate, and is the first way on; one of 202 the last.
    expect([200, 202].map((divisions) => on41(divisions).routes.findIndex(({ kind }) => kind === "circle"))).toEqual([0, 3]);
  });
});
