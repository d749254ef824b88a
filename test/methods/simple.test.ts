import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions } from "../../src/index.ts";
import { ready, threePlates } from "../support/ready.ts";

const settingsFor = (divisions: number) => indexDivisions(threePlates, divisions, { methods: ["simple"] }).settings;

describe("simple indexing", () => {
  it("uses every circle that is a multiple of the parts, the fewest spaces first: 9 is 4 turns + 4/9", () => {
    expect(settingsFor(9).map(({ turns, spaces, circle }) => [turns, spaces, circle])).toEqual([
      [4, 8, 18],
      [4, 12, 27],
    ]);
  });

  it("has the fewest spaces first, on whichever plate they are, but for a plate that is on", () => {
    const plates = [27, 18].map((holes, index) => ({ name: String(index + 1), circles: [holes] }));
    const on = (mounted?: string) =>
      indexDivisions(defineHead({ wormRatio: 40, plates }), 9, { methods: ["simple"], mounted }).settings.map(
        ({ circle }) => circle,
      );
    expect([on(), on("1")]).toEqual([
      [18, 27],
      [27, 18],
    ]);
  });

  it("names no circle for whole turns, which come back to the same hole of any", () => {
    expect(settingsFor(8)).toEqual([
      expect.objectContaining({ turns: 5, spaces: 0, circle: null, plate: null, armsEnclose: null }),
    ]);
  });

  it("counts whole turns by a dial where there is no plate", () => {
    expect(indexDivisions(ready("ratio-90-dial"), 45, { methods: ["simple"] }).settings).toEqual([
      expect.objectContaining({ method: "simple", turns: 2, spaces: 0, circle: null }),
    ]);
  });

  it("counts whole turns on a single circle as on many", () => {
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [17] }] });
    expect(indexDivisions(head, 8, { methods: ["simple"] }).settings).toEqual([
      expect.objectContaining({ turns: 5, spaces: 0, circle: null }),
    ]);
  });

  it("tells the arms to enclose one hole more than the spaces, the pin's own among them", () => {
    for (const { spaces, armsEnclose } of settingsFor(9)) expect(armsEnclose).toBe(spaces + 1);
  });
});
