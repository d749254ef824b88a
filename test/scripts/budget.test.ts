import { describe, expect, it } from "vitest";
import { budgetAsked } from "../../scripts/budget-asked.ts";
import { defineHead, indexDivisions } from "../../src/index.ts";
import { runHere } from "../support/command.ts";

const ungeared = "ratio-40-plates-15-49-ungeared";

async function words(...asked: string[]): Promise<string> {
  return (await runHere(asked)).stdout.replace(/\s+/g, " ");
}

describe("what an error is made of", () => {
  it("says that gears would not cure what the run-out spoils", async () => {
    const text = await words("97", "--head", ungeared, "--radius", "50", "--budget", "--run-out", "0.04");
    expect(text).toContain("Run-out 82.6″ (0.0200 mm): the axis is off by half of what the indicator shows");
    expect(text).toContain("Setting 15.9″ (0.0039 mm)");
    expect(text).toContain("What matters most is the run-out: set the work true first");
    expect(text).toContain("Set exactly it would still be 82.6″ (0.0200 mm) off: 16 per cent of it is the setting");
    expect(text).toContain("give what is known with --hole-error and --worm-error");
  });

  it("says that they would where the setting is most of it, and whether the grade is another then", async () => {
    const text = await words(
      "97",
      "--head",
      ungeared,
      "--by",
      "ring",
      "--teeth",
      "all",
      "--radius",
      "50",
      "--budget",
      "--run-out",
      "0.01",
    );
    expect(text).toContain("What matters most is the setting itself");
    expect(text).toMatch(
      /Grade tooth to tooth worse than 12, all round worse than 12; set exactly, tooth to tooth [\dw].*, all round/,
    );
    const true12 = await words("12", "--radius", "50", "--budget", "--run-out", "0.01");
    expect(true12).toContain("Setting nothing: it is exact");
    expect(true12).toMatch(/Grade tooth to tooth \d+, all round \d+ Not reckoned/);
    const small = await words("97", "--head", ungeared, "--radius", "50", "--budget", "--run-out", "1", "--worm-error", "0°1'");
    expect(small).toContain("an exact setting would not change that");
  });

  it("weighs nothing where nothing but the setting is known", async () => {
    const text = await words("97", "--head", ungeared, "--radius", "50", "--budget");
    expect(text).not.toContain("What matters");
    expect(text).toContain("Not reckoned what the work runs out, the holes of the plate and worm and wheel");
  });

  it("is of the places that are listed, by their way, in the unit of the radius", async () => {
    const asked = ["97", "--head", "ratio-90-dial", "--teeth", "1,2", "--by", "dial", "--radius", "2in", "--budget"];
    const { budget, plan } = JSON.parse((await runHere([...asked, "--json"])).stdout);
    const setting = budget.items.find(({ code }: { code: string }) => code === "setting");
    expect([setting.arcSeconds, budget.radius]).toEqual([plan.worstArcSeconds, 50.8]);
    const text = await words(...asked);
    expect(text).toContain("at a radius of 2.0000 in");
    expect(text).toContain("as near as the scale is read");
  });

  it("says nothing where the head can do it in no way", async () => {
    const head = defineHead({ wormRatio: 40, directPlates: [{ name: "24", holes: 24 }] });
    const told = budgetAsked(indexDivisions(head, 7), head, { mm: 50, unit: "mm" }, {}, undefined);
    expect(told).toEqual({ data: {}, lines: [] });
    expect(() => budgetAsked(indexDivisions(head, 7), head, null, {}, undefined)).toThrow("add --radius 50");
  });

  it("takes the circle by the head's file, and all else that is said", async () => {
    const more = ["--hole-error", "0.1", "--circle-diameter", "120", "--worm-error", "0°0'20\"", "--run-out", "0"];
    const text = await words("97", "--radius", "50", "--budget", ...more);
    expect(text).toContain("Holes 8.6″ (0.0021 mm)");
    expect(text).toContain("Worm 20.0″ (0.0049 mm)");
    expect(text).toContain("What matters most is the worm and its wheel");
    expect(text).not.toContain("Not reckoned");
  });
});

it.each([
  [["97", "--budget"], "--budget: has no effect without --radius"],
  [["97", "--radius", "50", "--run-out", "0.1"], "--run-out: has no effect without --budget"],
  [["97", "--radius", "2in", "--budget", "--run-out", "9in"], "--run-out: 9 in is not a run-out; give 0 in to 4 in"],
  [
    ["97", "--radius", "50", "--budget", "--hole-error", "0.1"],
    "--hole-error: needs the diameter of the circle of 15, which the head does not state",
  ],
  [
    ["20", "--radius", "50", "--budget", "--hole-error", "0.1"],
    "--hole-error: has no effect on a setting that goes from hole to hole",
  ],
  [["booklet", "--job", "97", "--budget"], "--budget: needs the radius of the work; add --radius 50"],
  [["booklet", "--job", "97", "--radius", "50"], "--radius: has no effect without --budget"],
  [
    ["booklet", "--job", "97", "--budget", "--radius", "2in", "--run-out", "9in", "--out", "-"],
    "--run-out: 9 in is not a run-out",
  ],
  [["booklet", "--job", "97", "--as", "drawings", "--budget", "--radius", "50"], "--budget: has no effect on drawings"],
])("refuses %j", async (asked, why) => {
  const { code, stderr } = await runHere(asked);
  expect([code, stderr.includes(why) || stderr]).toEqual([2, true]);
});
