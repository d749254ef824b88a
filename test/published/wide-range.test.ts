import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, exactSettings, type Head, indexDivisions, nearSettings, prove } from "../../src/index.ts";
import { wideRange } from "./wide-range.ts";

const { mostDivisions, smallPlate, largeFaces, planetary } = wideRange;

const head: Head = defineHead({
  wormRatio: 40,
  plates: [{ name: "large", faces: largeFaces.map((circles, index) => ({ name: `side ${index + 1}`, circles: [...circles] })) }],
  smallCrank: { ratio: planetary, circles: [...smallPlate] },
});

/** Whether a count can be set: exactly, or each place nearer to its own than to the next. */
const canBeSet = (divisions: number) =>
  !exactSettings(head, { divisions }).next().done || nearSettings(head, { divisions }).some(({ moves }) => moves === "from-zero");

describe("US Navy, wide range divider: both cranks", () => {
  it("2 and 400,000 are done, and the most is one space of the small crank's 100", () => {
    expect(indexDivisions(head, 2).exact).toBe(true);
    expect(indexDivisions(head, mostDivisions).settings[0]).toMatchObject({
      method: "wide-range",
      turns: 0,
      circle: null,
      small: { turns: 0, spaces: 1, circle: 100, ratio: planetary },
    });
  });

  it("every count between them can be set", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: mostDivisions }), (divisions) => {
        expect(canBeSet(divisions)).toBe(true);
      }),
    );
    for (const divisions of [399_989, 399_998, 399_999]) expect(canBeSet(divisions)).toBe(true);
  });

  it("and none beyond, but where all places fall on holes", () => {
    for (const divisions of [400_001, 400_009, 450_001]) expect(canBeSet(divisions)).toBe(false);
    const [beyond] = indexDivisions(head, 600_000).settings;
    expect(beyond === undefined || prove(beyond).closes).toBe(true);
  });

  it("no place is further off than half of 3.24″", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: mostDivisions }), (divisions) => {
        const both = nearSettings(head, { divisions }).find(({ kind }) => kind === "both-cranks");
        expect(both?.worstArcSeconds ?? 0).toBeLessThanOrEqual(1_296_000 / mostDivisions / 2);
      }),
    );
  });
});
