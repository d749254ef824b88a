import { describe, expect, it } from "vitest";
import { defineHead } from "../../src/index.ts";
import { runHere } from "../support/command.ts";

describe("the ratio of a head", () => {
  it("is told where it is one, with what its file is to state", async () => {
    const { code, stdout } = await runHere(["ratio", "--turns", "20", "--turned", "1 rev", "--within", "3°"]);
    expect(code).toBe(0);
    expect(stdout).toContain("20:1, as heads are made");
    expect(stdout).toContain('"wormRatio": 20');
  });

  it("is several where they fit, the common one first, and how to tell them apart", async () => {
    const { code, stdout } = await runHere(["ratio", "--turns", "10", "--turned", "90°", "--within", "5°"]);
    expect(code).toBe(1);
    expect(stdout).toContain("40:1, as heads are made");
    expect(stdout).toContain("41:1 or 39:1 or 42:1 or 38:1 fits as well");
    expect(stdout.replace(/\s+/g, " ")).toContain("turn the crank on to 48 turns in all, read it as closely, and ask again");
  });

  it("is none where the count cannot be right, and so many where it was read too coarsely", async () => {
    const none = await runHere(["ratio", "--turns", "10", "--turned", "83.3°", "--within", "0.1°"]);
    expect([none.code, none.stdout.includes("none that is whole lies between 43.17 and 43.27")]).toEqual([1, true]);
    const many = await runHere(["ratio", "--turns", "1", "--turned", "4°", "--within", "0.5°"]);
    expect(many.stdout).toContain("19 other whole ratios between 80 and 102.86 fit as well");
  });

  it("is stated in no head file before it is one, and not where no common one fits", async () => {
    for (const asked of [
      ["10", "90°", "5°"],
      ["1", "4°", "0.5°"],
      ["10", "4°", "1°"],
    ] as const) {
      const [turns, turned, within] = asked;
      const { stdout } = await runHere(["ratio", "--turns", turns, "--turned", turned, "--within", within]);
      expect(stdout).toMatch(/^ {2}Worm ratio /);
      expect(stdout).not.toContain("In a head file");
    }
  });

  it("is data with --json, by the library", async () => {
    const { ratio } = JSON.parse((await runHere(["ratio", "--turns", "10", "--turned", "4°", "--json"])).stdout);
    expect(ratio.candidates).toEqual([]);
    expect(ratio.unlisted).toBeGreaterThan(0);
  });
});

describe("the idlers of a head", () => {
  it("are told as its file states them", async () => {
    const { code, stdout } = await runHere(["ratio", "--pairs", "1", "--idlers", "0", "--plate", "against"]);
    const [, gearing = ""] = /"gearing": (.*)$/m.exec(stdout) ?? [];
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15] }], gearing: JSON.parse(gearing) });
    expect([code, head.gearing?.idlersWithCrank]).toEqual([0, { onePair: 1, twoPairs: 0 }]);
  });
});

it.each([
  [["--turns", "10"], "--turned: is needed: how far the spindle came round, such as 90°"],
  [["--turned", "90°"], "--turns: is needed: the crank's turns, such as 10"],
  [["--turns", "x", "--turned", "90°"], '--turns: "x" is not an exact number'],
  [["--turns", "10", "--turned", "0.5°"], "--within: it is as large as the reading itself"],
  [["--turns", "10", "--pairs", "1"], "--pairs: is of another trial than --turns"],
  [["--pairs", "1", "--idlers", "0"], "--plate: is needed"],
  [["--pairs", "3", "--idlers", "0", "--plate", "with"], "--pairs: 3 is not a number of pairs of gears; give 1 or 2"],
  [["40"], '"40" stands by itself'],
  [["--bogus"], "ratio --help lists the options"],
])("refuses %j in one sentence", async (words, said) => {
  const { code, stdout, stderr } = await runHere(["ratio", ...words]);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toContain(said);
});
