import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Answer,
  allMethods,
  defineHead,
  indexAngle,
  indexDivisions,
  kindOf,
  type Method,
  orderOfPreference,
  parseAngle,
  ratio,
  revolutions,
  type WhyNot,
} from "../../src/index.ts";
import { methodOf } from "../../src/methods/registry.ts";
import { counts, heads } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";

const reasonsOf = ({ impossible }: Answer): Partial<Record<Method, WhyNot>> =>
  Object.fromEntries((impossible?.reasons ?? []).map(({ method, ...why }) => [method, why]));
const noMultiple = (of: "direct-plate" | "circle" | "two-circles" | "dial", multiplesOf: number[], owned: number[] = []) => ({
  code: "no-multiple",
  of,
  multiplesOf,
  owned,
});

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
    expect(answer.impossible?.reasons.map(({ method }) => method)).toEqual(
      allMethods.filter((method) => method !== "wide-range"),
    );
    expect(reasonsOf(answer)).toEqual({
      direct: noMultiple("direct-plate", [383], [24]),
      simple: noMultiple("circle", [383]),
      differential: { code: "no-train", teethPerMove: 5, greatestPlateRatio: ratio(6) },
      compound: noMultiple("two-circles", [383]),
      dial: noMultiple("dial", [383]),
    });
  });

  it("names what the head has not", () => {
    expect(reasonsOf(indexDivisions(ready("ratio-90-dial"), 127))).toEqual({
      direct: { code: "without", part: "direct-plate" },
      simple: { code: "without", part: "index-plate" },
      differential: { code: "without", part: "gearing" },
      compound: { code: "without", part: "rear-pin" },
      dial: noMultiple("dial", [127]),
    });
    expect(reasonsOf(indexDivisions(ready("ratio-40-plates-15-49-ungeared"), 127))).toMatchObject({
      differential: { code: "without", part: "change-gears" },
      dial: { code: "without", part: "dial" },
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
      direct: noMultiple("direct-plate", [3600], [24]),
      simple: noMultiple("circle", [90]),
      differential: { code: "no-train", teethPerMove: 1, greatestPlateRatio: ratio(6) },
    });
    expect(answer.nearestCounts).toEqual([]);
    expect(indexAngle(head, revolutions("7")).impossible).toBeNull();
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
    expect(of(1)).toEqual(noMultiple("circle", [210]));
    expect(of(2)).toEqual(noMultiple("circle", [105]));
    expect(of(3)).toEqual(noMultiple("circle", [70, 105]));
    expect(of(6)).toEqual(noMultiple("circle", [35]));
  });

  it("has no reason for a method that was not asked for", () => {
    const { impossible } = indexDivisions(threePlates, 96, { methods: ["simple"] });
    expect(impossible?.reasons).toEqual([{ method: "simple", ...noMultiple("circle", [12]) }]);
  });
});

describe("why the plain methods were passed over", () => {
  it("is told of those that would be preferred to the setting found, and of no other", () => {
    fc.assert(
      fc.property(heads(), counts, fc.subarray([...allMethods], { minLength: 1 }), (head, divisions, methods) => {
        const answer = indexDivisions(head, divisions, { methods, limit: 1 });
        const before = answer.exact ? orderOfPreference.slice(0, orderOfPreference.indexOf(kindOf(answer.settings[0]))) : [];
        const plain = ["direct", "simple", "wide-range", "compound"].filter((method) =>
          before.some((kind) => methodOf(kind) === method),
        );
        expect(answer.passedOver.map(({ method }) => method)).toEqual(
          plain.filter((method) => methods.some((each) => each === method)),
        );
      }),
    );
  });

  it("says of 127 that no circle is a multiple of it, and of 9 nothing", () => {
    expect(indexDivisions(threePlates, 127).passedOver).toEqual([
      { method: "direct", code: "without", part: "direct-plate" },
      { method: "simple", ...noMultiple("circle", [127]) },
    ]);
    expect(indexDivisions(threePlates, 9, { methods: ["simple"] }).passedOver).toEqual([]);
    expect(indexDivisions(threePlates, 127, { methods: ["differential"] }).passedOver).toEqual([]);
  });
});
