import { describe, expect, it } from "vitest";
import { runHere } from "../support/command.ts";

async function words(...asked: string[]): Promise<string> {
  return (await runHere(["gear", ...asked])).stdout.replace(/\s+/g, " ");
}

describe("a gear that has lost its tips", () => {
  it("by its mate: the pitch in three ways, and the circular pitch in mm and in inches", async () => {
    const text = await words("86", "--mate", "43", "--centres", "129");
    expect(text).toContain(
      "module 2, 12.7 DP, circular pitch 6.283 mm (0.2474 in), by the centre distance, if neither gear is shifted",
    );
    expect(text).toContain("1 2 module 2.000 12.70 6.283 0.00 close");
    expect(text).toContain("Nothing was measured over the tips: stub teeth would read the same.");
  });

  it("by two spans, at either pressure angle, and what shift they show", async () => {
    // 3.25 module, 53 teeth, 20°: 64.77 over 7 as drawn; 0.3 of shift makes it 65.44.
    const text = await words("53", "--span", "64.771 over 7, 74.366 over 8");
    expect(text).toMatch(
      /module 3\.25, 7\.8\d+ DP, circular pitch 10\.21\d mm \(0\.4020 in\), by the base pitch from the spans over 7 and 8 teeth, if the pressure angle is 20°/,
    );
    expect(text).toContain("if the pressure angle is 14.5°");
    expect(text).toContain("1 3.25 module");
    expect(await words("53", "--span", "65.438 over 7, 75.033 over 8")).toContain(
      "The spans show a profile shift of about 0.30, if it is this pitch: an enlarged gear.",
    );
    expect(await words("53", "--span", "64.104 over 7, 73.699 over 8")).toContain(
      "of about −0.30, if it is this pitch: a reduced gear.",
    );
  });

  it("by a piece of it, the count among what is told", async () => {
    const text = await words("--chord", "80.39 over 8", "--height", "12.71");
    expect(text).toContain("WHAT GEAR IS IT? As measured");
    expect(text).toContain("by the chord of the tips, 8 teeth on, if the teeth are full depth and the tips unworn");
    expect(text).toContain("1 41 3.25 module 3.250 7.82 10.210 −0.011 close");
    expect(text).toContain("height over that chord 12.710 mm: off by −0.010 mm");
    const { stdout } = await runHere(["gear", "--chord", "80.39 over 8", "--height", "12.71"]);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(await words("41", "--chord", "80.39 over 8")).toContain("WHAT GEAR IS IT? 41 TEETH");
  });

  it("as data, in mm", async () => {
    const { stdout } = await runHere(["gear", "86", "--mate", "43", "--centres", "5.079in", "--json"]);
    const { identification } = JSON.parse(stdout);
    expect(identification.byMeasure[0]).toMatchObject({ measure: { code: "centre-distance", text: "centre distance" } });
    expect(identification.candidates[0]).toMatchObject({ teeth: 86, name: "2 module" });
  });
});

it.each([
  [["--damaged", "3"], "or where the tips are lost with two of --span, or with --mate and --centres"],
  [
    ["--damaged", "3", "--outside", "176"],
    "it is likeliest 2 module: add --module 2 once gear 86, asked with the same measures, leaves no doubt",
  ],
  [["--damaged", "3", "--span", "61.9 over 10, 68.15 over 11", "--depth", "4.566"], "it is likeliest 12 DP: add --dp 12 once"],
])("a repair without a pitch guesses none, and says how it is found: %j", async (asked, why) => {
  const { code, stderr } = await runHere(["repair", "86", ...asked]);
  expect([code, stderr.includes(why) || stderr]).toEqual([2, true]);
});

it.each([
  [["86"], "where the tips are lost --mate 43 --centres 129, two of --span, or --chord"],
  [["86", "--height", "3"], "--height: is over a chord, which is not given"],
  [["86", "--span", "58.4 over 10"], "--outside: nothing given tells the pitch"],
  [["--chord", "60"], '--chord: "60" is not a chord; give its length and the teeth on, such as "63.1 over 8"'],
  [["--chord", "60 over 8"], "how many is not known; give the count, or a fragment with its height"],
  [["--chord", "2in over 8", "--height", "2in"], "--height: 2 in is not a height over that chord"],
  [["12", "--chord", "60 over 8"], "--chord: 8 are over half of 12 teeth; measure over fewer"],
  [["86", "--module", "2", "--chord", "60 over 8"], "--chord: helps to find a pitch, which is given"],
  [["86", "--centres", "129"], "--centres: tells nothing without the mate's teeth"],
  [["--height", "3"], "how many teeth? Begin with the count"],
])("refuses gear %j", async (asked, why) => {
  const { code, stderr } = await runHere(["gear", ...asked]);
  expect([code, stderr.includes(why) || stderr]).toEqual([2, true]);
});
