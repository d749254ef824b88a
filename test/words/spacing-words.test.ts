import { describe, expect, it } from "vitest";
import { defineHead, parseAngle, readyHeads, unequalSpacing } from "../../src/index.ts";
import { spacingItems, spacingScale, spacingTitle } from "../../src/words/index.ts";

const degrees = (...each: readonly number[]) => each.map((one) => parseAngle(`${one}°`));
const head40 = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [18] }] });
/** 4° of the work a turn and 240 marks: a mark is a minute. */
const table = defineHead({ wormRatio: 90, dial: { marksPerTurn: 240 } });
const ringed = defineHead({ wormRatio: 90, dial: null, directPlates: [{ name: "n", holes: 24 }], ring: { marksPerTurn: 360 } });
const said = (head: Parameters<typeof unequalSpacing>[0], steps: ReturnType<typeof degrees>) =>
  spacingItems(unequalSpacing(head, steps)).map(({ term, text }) => `${term}: ${text}`);

describe("unequal spaces", () => {
  it("on holes: 9° are a turn of 40:1, and 58°, 62°, 60° are 6 + 8/18, 6 + 16/18, 6 + 12/18", () => {
    expect(said(head40, degrees(58, 62, 60, 58, 62, 60))).toEqual([
      "Plate: 1, circle of 18 holes, for every place",
      "Plate stop pin: in",
      "Exact: every place is on a hole",
      "Round: the spaces make up whole turns of the work",
    ]);
  });

  it("between holes: 0.25° on a circle whose spaces are half a degree is a quarter of one off", () => {
    // 20.25° is on no hole, and a quarter of a degree from the nearest; 339.75° are left.
    expect(said(head40, degrees(20.25)).slice(2)).toEqual([
      "NEAR, NOT EXACT: no place over 15.0′ off, each from one zero",
      "Round: the spaces leave 339° 45′ 00.0″ of the turn",
    ]);
  });

  it("by the dial where there is no plate, on its marks or off them", () => {
    expect(said(table, degrees(45, 135))[0]).toBe("By the dial: every place is on a mark");
    // A quarter of a minute is 15″.
    expect(said(table, [parseAngle("45°00'15\""), parseAngle("20°")])[0]).toBe(
      "By the dial: no place over 15.0″ off, each from one zero",
    );
  });

  it("by the ring where there is no dial: 0.4° are 24′ from its mark", () => {
    const spacing = unequalSpacing(ringed, degrees(20.4, 10));
    expect(spacingScale(spacing.places)).toBe("ring");
    expect(said(ringed, degrees(20.4, 10))[0]).toBe("By the ring: no place over 24.0′ off, each from one zero");
  });

  it("the scale is the dial before the ring, and none where there is neither", () => {
    const [both] = readyHeads.filter(({ dial, ring, plates }) => dial && ring && plates.length === 0);
    if (both === undefined) throw new Error("no ready head has a dial, a ring and no plate");
    expect(spacingScale(unequalSpacing(both, degrees(45)).places)).toBe("dial");
    const none = defineHead({ wormRatio: 40, directPlates: [{ name: "n", holes: 24 }] });
    const spacing = unequalSpacing(none, degrees(45));
    expect(spacingScale(spacing.places)).toBeNull();
    expect(spacingScale([])).toBeNull();
    expect(spacingItems(spacing).map(({ term }) => term)).toEqual(["Round"]);
  });

  it("are counted in the title", () => {
    expect(spacingTitle(unequalSpacing(head40, degrees(20, 30)))).toBe("3 PLACES, UNEQUAL SPACES");
  });
});
