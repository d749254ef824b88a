import { expect, it } from "vitest";
import { errorBudget } from "../../src/index.ts";
import { budgetItems, budgetTitle, untoldItems } from "../../src/words/index.ts";

/** What is said of each term. */
function said(...sources: Parameters<typeof errorBudget>): Readonly<Record<string, string>> {
  return Object.fromEntries(budgetItems(errorBudget(...sources), "mm").map(({ term, text }) => [term, text]));
}

const holes = { error: 0.2, circleDiameters: [80], wormRatio: 5 };

it.each([
  ["the run-out: set the work true first", { runOut: 1, holes, wormErrorArcSeconds: 5 }],
  ["the holes of the plate", { runOut: 0.01, holes, wormErrorArcSeconds: 5 }],
  ["the worm and its wheel", { runOut: 0.01, wormErrorArcSeconds: 500 }],
  ["the reading of the scale", { runOut: 0.01, readingArcSeconds: 500 }],
  ["the setting itself", { runOut: 0.01, setting: { worstArcSeconds: 500 } }],
])("what matters most is %s", (what, sources) => {
  expect(said({ radius: 50, ...sources })["What matters"]).toBe(`most is ${what}`);
});

it("a setting that is not reckoned with is not weighed", () => {
  expect(said({ radius: 50, runOut: 1, wormErrorArcSeconds: 5 })).not.toHaveProperty("Set exactly");
});

it("nothing at all is weighed no further, and is not called an error", () => {
  const none = said({ radius: 50, divisions: 50, runOut: 0, setting: { worstArcSeconds: 0 } });
  expect(none["Run-out"]).toMatch(/^nothing/);
  expect(none).not.toHaveProperty("What matters");
  expect(none.Grade).toBe("tooth to tooth 0, all round 0");
});

it("is rounded upwards, so that nothing is further off, in the unit asked for", () => {
  const budget = errorBudget({ radius: 50.8, wormErrorArcSeconds: 20.01 });
  const [worm] = budgetItems(budget, "in");
  // 20.01″ at 2 in is 0.000194 in.
  expect(worm?.text).toContain("20.1″ (0.00020 in)");
  expect(budgetTitle(budget, "in")).toBe("WHAT THE ERROR IS MADE OF, at a radius of 2.0000 in");
});

it("a part of under one per cent is called one", () => {
  const small = said({ radius: 50, runOut: 1, setting: { worstArcSeconds: 0.1 } });
  expect(small["Set exactly"]).toContain(": 1 per cent of it is the setting");
});

it("what was not told is listed, and nothing where all was", () => {
  expect(untoldItems(["run-out", "holes", "reading", "setting"])).toEqual([
    { term: "Not reckoned", text: "what the work runs out, the holes of the plate, the reading of a scale and the setting" },
  ]);
  expect(untoldItems([])).toEqual([]);
});
