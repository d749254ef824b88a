import { describe, expect, it } from "vitest";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import type { SpurGearSpec } from "../../../src/gear/spur-gear-spec.ts";
import { cutterItems } from "../../../src/words/gear/cutter-items.ts";
import { depthRuleWords } from "../../../src/words/gear/depth-rule.ts";
import { gearInShort, gearItems, pitchName } from "../../../src/words/gear/gear-items.ts";
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

describe("the measures line by line", () => {
  it("of 41 teeth of module 2: tip 86, pitch 82, root 77, base 82 · cos 20°", () => {
    const lines = text({ teeth: 41, module: 2 }, "mm").split("\n");
    // Span (k − ½)π + z inv 20° modules times cos 20°, over 5: 2 · 0.93969 · (14.13717 + 41 · 0.0149044).
    expect(lines).toEqual([
      "Pitch: module 2, 12.7 DP, circular pitch 6.283 mm",
      "Pressure angle: 20°",
      "Outside diameter: 86.000 mm over the tips",
      "Pitch diameter: 82.000 mm",
      "Root diameter: 77.000 mm",
      "Base diameter: 77.055 mm, base pitch 5.904 mm",
      "Whole depth: 4.500 mm, by the rule 2.25 m",
      "Tooth: 3.142 mm thick along the pitch circle; space 3.142 mm",
      "Across the tooth: 3.141 mm by the gear tooth caliper, its blade set to 2.030 mm",
      "Span: 27.718 mm over 5 teeth",
      expect.stringMatching(/^Over pins: 8\d\.\d{3} mm over two pins of 3\.500 mm, in spaces as nearly opposite as there are$/),
    ]);
  });

  it("pins stand in opposite spaces of an even count, and where none does there is no line", () => {
    expect(text({ teeth: 40, module: 2 }, "mm")).toMatch(/over two pins of 3\.500 mm, in opposite spaces$/);
    // A pin of 1.75 modules drops below tips that stand half a module higher.
    expect(text({ teeth: 40, module: 2, tipDiameter: 86 }, "mm")).not.toContain("Over pins");
  });

  it("what is thinned, shifted or fine is told so", () => {
    expect(text({ teeth: 40, module: 2, thinning: 0.1 }, "mm")).toContain(
      "thick along the pitch circle, 0.100 mm thinner than full;",
    );
    expect(text({ teeth: 40, module: 2, profileShift: 0.25 }, "mm")).toContain("Pressure angle: 20°, profile shift +0.25");
    expect(text({ teeth: 40, module: 2, profileShift: 0.75 }, "mm")).toContain("20°, profile shift +0.75");
    // 25.4/14 is 1.81429, 25.4/1.1234 is 22.60993.
    expect(text({ teeth: 40, diametralPitch: 14 }, "mm")).toContain("Pitch: module 1.8143, 14 DP");
    expect(text({ teeth: 40, module: 1.12341 }, "mm")).toContain("Pitch: module 1.1234, 22.6097 DP");
    expect(pitchName(spurGear({ teeth: 40, module: 1.12341 }))).toBe("1.1234 module");
    expect(pitchName(spurGear({ teeth: 40, diametralPitch: 12.00004 }))).toBe("12 DP");
    expect(pitchName(spurGear({ teeth: 40, diametralPitch: 12.00016 }))).toBe("12.0002 DP");
  });

  it("tips on the pitch circle have a chord, below it there is none; teeth on which no jaws rest have no span", () => {
    const none = "Across the tooth: no chord to measure: the tips are below the pitch circle";
    expect(text({ teeth: 40, module: 2, tipDiameter: 79 }, "mm")).toContain(none);
    expect(text({ teeth: 40, module: 2, tipDiameter: 81 }, "mm")).not.toContain(none);
    const spanless = { teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" } as const;
    expect(text(spanless, "mm")).not.toContain("Span");
  });
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
    // Number 2 of both sets begins at 55, that with half numbers ends sooner.
    expect(halves({ teeth: 60, diametralPitch: 6 })).toEqual([
      "or with half numbers, for 55 to 79 teeth: number 2 (if 1 is the rack) or 7 (if 8 is)",
    ]);
    expect(halves({ teeth: 45, diametralPitch: 12 })).toEqual([]);
    expect(halves({ teeth: 45, module: 0.5 })).toEqual([]);
    expect(halves({ teeth: 200, diametralPitch: 6 })).toEqual([]);
  });

  it("names both numberings and the range, up to a rack", () => {
    expect(said({ teeth: 200, module: 2 })[0]).toBe(
      "2 module, 20°, for 135 teeth to a rack: number 1 (if 1 is the rack) or 8 (if 8 is)",
    );
    expect(said({ teeth: 13, diametralPitch: 6 }).slice(0, 2)).toEqual([
      "6 DP, 20°, for 12 to 13 teeth: number 8 (if 1 is the rack) or 1 (if 8 is)",
      "or with half numbers, for 13 teeth: number 7 1/2 (if 1 is the rack) or 1 1/2 (if 8 is)",
    ]);
    expect(said({ teeth: 9, module: 2 })[0]).toMatch(/^none is made for so few teeth/);
  });
});
