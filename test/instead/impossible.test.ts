import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, exactSettings, type Head, indexAngle, indexDivisions, type Method, parseAngle } from "../../src/index.ts";
import { heads, small } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";

const closes = (head: Head, divisions: number, methods: readonly Method[], teethPerMove: number): boolean =>
  exactSettings(head, { divisions }, { methods, teethPerMove }).next().done !== true;
const reasonsOf = (answer: ReturnType<typeof indexDivisions>) =>
  Object.fromEntries((answer.impossible?.reasons ?? []).map(({ method, why }) => [method, why]));

describe("why a target is impossible", () => {
  it("gives a reason for each method asked for, with what is missing", () => {
    const head = defineHead({
      wormRatio: 40,
      plates: [{ name: "1", circles: [15, 16] }],
      directPlates: [{ name: "nose", holes: 24 }],
      rearPin: true,
      gears: [24, 40],
      dial: { marksPerTurn: 50 },
    });
    const answer = indexDivisions(head, 383, { teethPerMove: 5 });
    expect(answer.impossible?.teethPerMoveTried).toBe(5);
    expect(reasonsOf(answer)).toEqual({
      direct: "needs a direct plate whose holes are a multiple of 383; yours: 24",
      simple: "needs a circle whose holes are a multiple of 383; no circle of yours is",
      differential:
        "every circle, every train of one and two pairs and 1 to 5 teeth per move was tried, the plate turning at most 6 times for one spindle turn; none closes",
      compound: "needs two circles on one face whose least common multiple is a multiple of 383; no two of yours are",
      dial: "needs a dial whose marks and vernier lines in a turn are a multiple of 383; yours is not",
    });
  });

  it("names what the head has not", () => {
    const bare = ready("ratio-90-dial");
    expect(reasonsOf(indexDivisions(bare, 127))).toMatchObject({
      direct: "the head has no direct plate",
      simple: "the head has no index plate",
      differential: "the plate of this head cannot be geared to its spindle",
      compound: "the head has no rear pin to hold the plate by a second circle",
    });
    expect(reasonsOf(indexDivisions(ready("ratio-40-plates-15-49-ungeared"), 127))).toMatchObject({
      differential: "no change gears are listed for this head",
      dial: "the head has no dial",
    });
  });

  it("of an angle speaks of the one move that it is", () => {
    const head = defineHead({
      wormRatio: 40,
      plates: [{ name: "1", circles: [18] }],
      directPlates: [{ name: "d", holes: 24 }],
      gears: [24, 40],
    });
    const answer = indexAngle(head, parseAngle("2°54'"));
    expect(answer.impossible?.teethPerMoveTried).toBe(1);
    expect(reasonsOf(answer)).toMatchObject({
      direct: "needs a direct plate whose holes are a multiple of 3,600; yours: 24",
      simple: "needs a circle whose holes are a multiple of 90; no circle of yours is",
      differential:
        "every circle, every train of one and two pairs was tried, the plate turning at most 6 times for one spindle turn; none closes",
    });
    expect(answer.nearestCounts).toEqual([]);
    expect(reasonsOf(indexAngle(head, "7"))).toEqual({});
  });

  it("72:1 with three plates: 25, 50 and 100 are impossible, as is 125 (our arithmetic)", () => {
    const table = ready("ratio-72-table-15-49");
    for (const divisions of [25, 50, 100, 125]) {
      expect(indexDivisions(table, divisions, { methods: ["direct", "simple", "differential", "compound"] }).exact).toBe(false);
    }
  });

  it("names several circles on a fractional worm ratio, by the teeth per move that cancel", () => {
    const head = defineHead({ wormRatio: "121/6", plates: [{ name: "1", circles: [20] }] });
    const of = (teethPerMove: number) => reasonsOf(indexDivisions(head, 35, { teethPerMove })).simple;
    const needs = (what: string) => `needs a circle whose holes are a multiple of ${what}; no circle of yours is`;
    expect(of(1)).toBe(needs("210"));
    expect(of(2)).toBe(needs("105"));
    expect(of(3)).toBe(needs("70 or 105"));
    expect(of(6)).toBe(needs("35"));
  });
});

describe("circlesThatWouldDo", () => {
  it("each does it when it is drilled, and the smallest is the smallest that does", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 4 }), (head, divisions, teeth) => {
        const options = { methods: ["simple"], teethPerMove: teeth } as const;
        const { exact, circlesThatWouldDo } = indexDivisions(head, divisions, options);
        const does = (holes: number) => {
          const plates = [{ name: "new", circles: [holes] }];
          return closes(defineHead({ wormRatio: head.wormRatio, plates }), divisions, ["simple"], teeth);
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

  it("names six at most, none over 200 but the smallest, and none over 10,000", () => {
    const of = (divisions: number) => indexDivisions(threePlates, divisions, { methods: ["simple"] }).circlesThatWouldDo;
    expect(of(96)).toEqual([12, 24, 36, 48, 60, 72]);
    expect(of(67)).toEqual([67, 134]);
    expect(of(383)).toEqual([383]);
    expect(of(10_007)).toEqual([]);
  });
});

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
      { numRuns: 60 },
    );
  });

  it("keep to the methods asked for, however far away", () => {
    const of = (divisions: number, ...methods: Method[]) => indexDivisions(threePlates, divisions, { methods }).nearestCounts;
    expect(of(96, "simple")).toEqual([95, 98]);
    expect(of(1961, "simple")).toEqual([1960]);
    expect(of(999_999, "simple")).toEqual([1960]);
    expect(indexDivisions(threePlates, 383, { teethPerMove: 1 }).nearestCounts).toEqual([382, 384]);
    expect(of(383, "direct")).toEqual([]);
  });
});
