import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allMethods, defineHead, indexAngle, indexDivisions, kindOf, prove, revolutions } from "../src/index.ts";
import { counts, heads, small } from "./support/arbitraries.ts";
import { ready, threePlates } from "./support/ready.ts";
import { refusalLines } from "./support/refusal.ts";
import { wrong } from "./support/wrong.ts";

/** Numbers, text, true, false, null, lists and plain objects only: what JSON can say. */
function isPlain(value: unknown): boolean {
  if (Array.isArray(value)) return value.every(isPlain);
  if (typeof value === "object" && value !== null) {
    return Object.getPrototypeOf(value) === Object.prototype && Object.values(value).every(isPlain);
  }
  return value === null || typeof value === "string" || typeof value === "boolean" || Number.isFinite(value);
}

describe("an answer", () => {
  it("is plain data that goes through JSON unchanged, and its settings still prove", () => {
    fc.assert(
      fc.property(heads(small), counts, fc.boolean(), (head, divisions, all) => {
        const answer = indexDivisions(head, divisions, { all, limit: 20 });
        const back: typeof answer = JSON.parse(JSON.stringify(answer));
        expect(isPlain(answer)).toBe(true);
        expect(back).toStrictEqual(answer);
        for (const setting of back.settings) expect(prove(setting)).toEqual(setting.proof);
      }),
      { numRuns: 50 },
    );
  });

  it("is found, or is not possible and says why: `exact` tells which, to the reader and to the compiler", () => {
    const seen = { found: 0, not: 0 };
    fc.assert(
      fc.property(heads(small), counts, fc.boolean(), (head, divisions, near) => {
        const answer = indexDivisions(head, divisions, { near });
        if (answer.exact) {
          const [first] = answer.settings;
          expect([first.exact, first.proof.closes, first.proof.moves]).toEqual([true, true, divisions]);
          expect([answer.impossible, answer.nearestCounts, answer.routes]).toEqual([null, [], []]);
          if (!near) expect(answer.near).toEqual([]);
          seen.found += 1;
        } else {
          expect(answer.impossible.reasons.map(({ method }) => method)).toEqual(
            allMethods.filter((method) => method !== "wide-range"),
          );
          expect([answer.settings, answer.passedOver]).toEqual([[], []]);
          seen.not += 1;
        }
      }),
      { numRuns: 60 },
    );
    expect(Math.min(seen.found, seen.not)).toBeGreaterThan(5);
  });

  it("says the head, what was asked, and the best setting of 127", () => {
    const answer = indexDivisions(threePlates, 127);
    expect(answer.head).toEqual({ id: threePlates.id, name: threePlates.name, wormRatio: "40" });
    expect(answer.target).toEqual({ divisions: 127 });
    expect([answer.exact, answer.impossible, answer.nearestCounts]).toEqual([true, null, []]);
    expect(answer.settings[0]).toMatchObject({
      method: "differential",
      teethPerMove: 1,
      turns: 0,
      spaces: 5,
      circle: 15,
      plate: "1",
      armsEnclose: 6,
      plateStopPin: "out",
      gears: { drivers: [56], driven: [24], idlers: 2, direction: "against", platePerSpindle: "-7/3", mayFoul: null },
    });
    expect(answer.circlesThatWouldDo).toEqual([127]);
  });

  it("returns the preferred kind only, all with `all`, and says when the limit cut it short", () => {
    const preferred = indexDivisions(threePlates, 9);
    expect(new Set(preferred.settings.map(kindOf))).toEqual(new Set(["simple"]));
    expect(preferred.settings.map(({ circle }) => circle)).toEqual([18, 27]);
    const all = indexDivisions(threePlates, 9, { all: true, teethPerMove: 1, limit: 5000 });
    expect(new Set(all.settings.map(kindOf))).toEqual(new Set(["simple", "one-pair", "two-pair"]));
    expect(all.settings.slice(0, 2)).toEqual(preferred.settings);
    expect([preferred.complete, all.complete]).toEqual([true, true]);
    const cut = indexDivisions(threePlates, 9, { all: true, limit: 3 });
    expect([cut.settings.length, cut.complete]).toEqual([3, false]);
    expect(indexDivisions(threePlates, 9, { limit: 2 }).complete).toBe(true);
    expect(indexDivisions(threePlates, 9, { limit: 1 }).complete).toBe(false);
  });

  it("keeps to the methods asked for", () => {
    for (const method of ["simple", "compound", "differential"] as const) {
      const { settings } = indexDivisions(threePlates, 51, { methods: [method] });
      expect(settings.every((setting) => setting.method === method)).toBe(true);
      expect(settings.length > 0).toBe(method !== "simple");
    }
  });

  it("takes one division as a whole turn of the work", () => {
    expect(indexDivisions(threePlates, 1).settings).toEqual([
      expect.objectContaining({ method: "simple", turns: 40, spaces: 0, circle: null, plate: null, armsEnclose: null }),
    ]);
    expect(indexAngle(threePlates, revolutions("2")).settings[0]).toMatchObject({ turns: 80, spaces: 0, spindlePerMove: "2" });
  });

  it("answers the greatest count", () => {
    const answer = indexDivisions(threePlates, 10_000_000, { methods: ["simple", "compound"] });
    expect(answer.exact).toBe(false);
    expect(answer.impossible?.reasons[0]).toMatchObject({ method: "simple", code: "no-multiple", multiplesOf: [250_000] });
    expect(answer.circlesThatWouldDo).toEqual([]);
    expect(answer.nearestCounts).toEqual([40 * 49 * 47]);
  });
});

describe("what is refused", () => {
  const count = (given: unknown) => refusalLines(() => indexDivisions(threePlates, wrong(given)));
  const noCount = "is not a count of divisions; give a whole number from 1 to 10,000,000";

  it.each([
    [0, "0"],
    [-1, "-1"],
    [2.5, "2.5"],
    [Number.NaN, "NaN"],
    [Number.POSITIVE_INFINITY, "Infinity"],
    [10_000_001, "10000001"],
    ["12", '"12"'],
    ["", '""'],
    [null, "null"],
    [undefined, "undefined"],
    [[12], "a list"],
    [{}, "an object"],
  ])("a count of %s", (given, shown) => {
    expect(count(given)).toEqual([`divisions: ${shown} ${noCount}`]);
  });

  const exactText = (degrees: string) => `give text such as "29/3600", or parseAngle("${degrees}°") for degrees`;

  it.each([
    ["0", 'angle: "0" is no angle to move by; give one above 0'],
    ["-1/4", 'angle: "-1/4" is no angle to move by; give one above 0'],
    ["1/0", 'angle: "1/0" divides by zero; give a fraction such as 81/2'],
    ["1001", 'angle: "1001" is over 1,000 revolutions; give a smaller angle'],
    [0.25, `angle: 0.25 is not an angle in revolutions; ${exactText("0.25")}`],
    [3, `angle: 3 is not an angle in revolutions; ${exactText("3")}`],
    ["2.9", `angle: "2.9" is not an angle in revolutions; ${exactText("2.9")}`],
    ["2°54'", `angle: "2°54'" is not an angle in revolutions; ${exactText("2.9")}`],
  ])("an angle of %s", (given, line) => {
    expect(refusalLines(() => indexAngle(threePlates, wrong(given)))).toEqual([line]);
  });

  it("an angle whose terms are too large for the head, where a count never is", () => {
    const huge = defineHead({
      wormRatio: "99999999/1000",
      plates: [{ name: "1", circles: [10_000] }],
      gears: [24, 40],
      gearing: { greatestPlateRatio: "99999/1000" },
    });
    expect(refusalLines(() => indexAngle(huge, revolutions("129599999/129600000")))).toEqual([
      "angle: it has too large terms for this head; give a coarser or a smaller angle",
    ]);
    expect(indexDivisions(huge, 9_999_999, { methods: ["simple"] }).exact).toBe(false);
    expect(indexAngle(threePlates, revolutions("129599999/129600000"), { methods: ["simple"] }).exact).toBe(false);
  });

  const option = (options: object) => refusalLines(() => indexDivisions(threePlates, 12, wrong(options)));
  const teeth = (shown: string) =>
    `teethPerMove: ${shown} is not a number of teeth per move; give a whole number from 1 to 1,000`;
  const limit = (shown: string) => `limit: ${shown} is not a number of settings; give a whole number from 1 to 100,000`;

  it.each([
    [{ teethPerMove: 0 }, teeth("0")],
    [{ teethPerMove: 1.5 }, teeth("1.5")],
    [{ teethPerMove: 1001 }, teeth("1001")],
    [{ teethPerMove: "2" }, teeth('"2"')],
    [{ limit: 0 }, limit("0")],
    [{ limit: 100_001 }, limit("100001")],
    [{ limit: Number.NaN }, limit("NaN")],
    [
      { methods: ["plain"] },
      'methods: there is no method "plain"; the methods are direct, simple, wide-range, differential, compound, dial',
    ],
    [{ methods: [] }, "methods: the list names none; the methods are direct, simple, wide-range, differential, compound, dial"],
    [
      { prefer: ["compound", "geared"] },
      'prefer: there is no kind "geared"; the kinds are direct, simple, wide-range, one-pair, two-pair, compound, block, dial, may-foul',
    ],
    [{ mounted: "9" }, 'mounted: this head has no plate "9"; its plates are 1, 2, 3'],
  ])("options %j", (options, line) => {
    expect(option(options)).toEqual([line]);
  });

  it("a mounted plate on a head without plates", () => {
    expect(refusalLines(() => indexDivisions(ready("ratio-90-dial"), 12, { mounted: "1" }))).toEqual([
      'mounted: this head has no plate "1"; its plates are none',
    ]);
  });
});
