import { describe, expect, it } from "vitest";
import { type JobOptions, jobSheetPdf } from "../../booklet/index.ts";
import { defineHead, indexDivisions, revolutions } from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { followed, geared, ungeared } from "./followed-job.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { arcSeconds } from "./sheet-scales.ts";

describe("a job that is chosen", () => {
  it("follows the setting that was chosen", async () => {
    const settings = indexDivisions(geared, 60, { all: true }).settings;
    const setting = settings.at(-1);
    if (setting === undefined) throw new Error("60 can be done");
    const { sheet, way, bench } = await followed(geared, { divisions: 60, setting });
    expect(way.by === "moves" && { method: way.setting.method, circle: way.setting.circle }).toEqual({
      method: setting.method,
      circle: setting.circle,
    });
    expect(wrongOn(sheet, way, bench)).toEqual([]);
  });

  it("is refused where the setting is another head's, another count's, or does not turn the work as it says", async () => {
    const [setting] = indexDivisions(geared, 127).settings;
    if (setting === undefined) throw new Error("127 can be done");
    await expect(jobSheetPdf(ungeared, { divisions: 127, setting })).rejects.toThrow(/setting: /);
    await expect(jobSheetPdf(geared, { divisions: 63, setting })).rejects.toThrow(/for another count/);
    const spoilt = { ...setting, spaces: setting.spaces + 1 } as typeof setting;
    await expect(jobSheetPdf(geared, { divisions: 127, setting: spoilt })).rejects.toThrow(/setting: turns the work by/);
  });

  it.each([
    ["one too long for a sheet", geared, { divisions: 2000 }, /too many for a job sheet/],
    ["a tooth beyond the count", geared, { divisions: 62, teeth: [63] }, /63/],
    ["a count and an angle at once", geared, { divisions: 62, angle: revolutions(1, 62) }, /both given/],
    ["a start hole that is not on the circle", geared, { divisions: 13, startHole: 39 }, /not a hole of the circle/],
    ["a way that the head has not", geared, { divisions: 97, by: "dial" }, /no setting by "dial"/],
    ["an option there is none of", geared, { divisions: 13, tooth: [1] }, /tooth/],
    ["neither a count nor an angle", geared, {}, /angle/],
    [
      "what can be set in no way",
      defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }] }),
      { divisions: 400 },
      /not even nearly/,
    ],
  ])("%s is refused", async (_, head, options, message) => {
    await expect(jobSheetPdf(head, options as unknown as JobOptions)).rejects.toThrow(message);
  });

  it("is the same error in seconds, whichever way it is counted", () => {
    expect(arcSeconds(turnsOf("1/1296000"))).toBe(1);
  });
});
