import { describe, expect, it } from "vitest";
import { followed, geared, ungeared } from "./followed-job.ts";
import { said } from "./printed-sheet.ts";

describe("what the error of a job is made of, on its sheet", () => {
  it("is there where it is asked, in the unit asked for, and nowhere else", async () => {
    const budget = { radius: 50.8, runOut: 0.0508, unit: "in" } as const;
    const { sheet } = await followed(ungeared, { divisions: 97, budget });
    expect(said(sheet, "Error")).toBe("What it is made of, at a radius of 2.0000 in.");
    expect(said(sheet, "Run-out")).toContain("(0.00100 in)");
    expect(said(sheet, "What matters")).toBe("Most is the run-out: set the work true first.");
    expect(said(sheet, "Not reckoned")).toBe("The holes of the plate and worm and wheel.");
    const { sheet: without } = await followed(ungeared, { divisions: 97 });
    expect(without.lines.join("\n")).not.toContain("Run-out");
  });

  it("is of the places listed alone", async () => {
    const all = await followed(ungeared, { divisions: 97, budget: { radius: 50 } });
    const two = await followed(ungeared, { divisions: 97, teeth: [1, 2], budget: { radius: 50 } });
    const setting = ({ sheet }: typeof all) => Number(/^([\d.]+)″/.exec(said(sheet, "Setting"))?.[1]);
    expect(setting(two)).toBeLessThan(setting(all) / 10);
  });

  it("says of an exact setting that it is", async () => {
    const { sheet } = await followed(geared, { divisions: 97, budget: { radius: 50, runOut: 0.04 } });
    expect(said(sheet, "Setting")).toBe("Nothing: it is exact.");
  });
});
