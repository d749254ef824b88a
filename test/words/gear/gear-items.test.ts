import { describe, expect, it } from "vitest";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import type { SpurGearSpec } from "../../../src/gear/spur-gear-spec.ts";
import { cutterItems } from "../../../src/words/gear/cutter-items.ts";
import { depthRuleWords } from "../../../src/words/gear/depth-rule.ts";
import { gearInShort, gearItems } from "../../../src/words/gear/gear-items.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";

const text = (spec: SpurGearSpec, unit: "mm" | "in") =>
  gearItems(spurGear(spec), lengthsIn(unit))
    .map((item) => `${item.term}: ${item.text}`)
    .join("\n");

it("the measures stand in one unit alone", () => {
  const spec = { teeth: 40, diametralPitch: 12, pressureAngle: 14.5, thinning: 0.1 } as const;
  expect(text(spec, "in")).not.toMatch(/mm/);
  expect(text(spec, "mm")).not.toMatch(/ in\b(?! )/);
  expect(text(spec, "in")).toContain("Outside diameter: 3.5000 in over the tips");
  expect(text(spec, "mm")).toContain("Outside diameter: 88.900 mm over the tips");
});

describe("the rule of a depth in the person's system", () => {
  it.each([
    ["2.2+0.002in", "diametral pitch", "2.2/DP + 0.002 in"],
    ["1.8-stub", "diametral pitch", "1.8/DP, stub"],
    ["2.4", "module", "2.4 m"],
    ["2.157", "diametral pitch", "2.157/DP"],
  ] as const)("%s in %s", (rule, system, words) => {
    expect(depthRuleWords({ code: "depth-by-rule", rule, system })).toBe(words);
  });

  it("a measured depth is as given", () => {
    expect(text({ teeth: 40, module: 2, wholeDepth: 4.4 }, "mm")).toContain("Whole depth: 4.400 mm, as given");
  });
});

it("a gear in short names its shift with its sign", () => {
  expect(gearInShort(spurGear({ teeth: 40, module: 2, profileShift: -0.25 }))).toBe(
    "40 teeth, 2 module, 20°, profile shift −0.25",
  );
  expect(gearInShort(spurGear({ teeth: 40, diametralPitch: 12 }))).toBe("40 teeth, 12 DP, 20°");
});

describe("form cutters", () => {
  const said = (spec: SpurGearSpec) => cutterItems(spurGear(spec)).map((item) => item.text);

  it("half numbers where they are made and differ, and there alone", () => {
    const halves = (spec: SpurGearSpec) => said(spec).filter((each) => each.startsWith("or with half numbers"));
    expect(halves({ teeth: 45, diametralPitch: 6 })).toEqual([
      "or with half numbers, for 42 to 54 teeth: number 2 1/2 (if 1 is the rack) or 6 1/2 (if 8 is)",
    ]);
    expect(halves({ teeth: 45, diametralPitch: 12 })).toEqual([]);
    expect(halves({ teeth: 45, module: 0.5 })).toEqual([]);
    expect(halves({ teeth: 200, diametralPitch: 6 })).toEqual([]);
  });

  it("names both numberings and the range, up to a rack", () => {
    expect(said({ teeth: 200, module: 2 })[0]).toBe(
      "2 module, 20°, for 135 teeth to a rack: number 1 (if 1 is the rack) or 8 (if 8 is)",
    );
    expect(said({ teeth: 9, module: 2 })[0]).toMatch(/^none is made for so few teeth/);
  });
});
