import { describe, expect, it } from "vitest";
import { checkScale } from "../../src/head/scale.ts";
import { leastCountArcSeconds, ratio, type Scale, stepsAddedUp } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

const degrees: Scale = { marksPerTurn: 360, vernierLines: 1, figures: "angle" };

it("a scale of a head is one by itself", () => {
  expect(checkScale(degrees, "scale")).toEqual(degrees);
});

describe("what is no scale is refused", () => {
  it.each([
    [null, ["scale: null is not an object; its keys may be marksPerTurn, vernierLines, figures"]],
    [{ ...degrees, marksPerTurn: 1 }, ["scale.marksPerTurn: 1 is not a whole number from 2 to 100,000"]],
    [
      { marks: 360, vernierLines: 0 },
      [
        'scale: there is no key "marks"; the keys are marksPerTurn, vernierLines, figures',
        "scale.marksPerTurn: undefined is not a whole number from 2 to 100,000",
        "scale.vernierLines: 0 is not a whole number from 1 to 120",
      ],
    ],
  ])("%j", (given, told) => {
    expect(refusalLines(() => checkScale(given, "scale"))).toEqual(told);
    expect(refusalLines(() => leastCountArcSeconds(given as Scale))).toEqual(told);
    expect(refusalLines(() => stepsAddedUp(given as Scale, 53))).toEqual(told);
  });

  it("nor turns that are none", () => {
    const told = ['turnsPerSpindle: "0" is not above 0; give the worm ratio for a dial'];
    expect(refusalLines(() => leastCountArcSeconds(degrees, ratio(0)))).toEqual(told);
    expect(refusalLines(() => stepsAddedUp(degrees, 53, ratio(0)))).toEqual(told);
  });
});
