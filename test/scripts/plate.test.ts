import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { drillPlate } from "../../src/index.ts";
import { drilledWithWhys } from "../../src/words/index.ts";
import { runHere } from "../support/command.ts";
import { ready } from "../support/ready.ts";

const ungeared = "ratio-40-plates-15-49-ungeared";

async function words(...asked: readonly string[]): Promise<string> {
  const { stdout } = await runHere(["plate", ...asked]);
  expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
  return stdout.replace(/\s+/g, " ");
}

describe("a plate to drill", () => {
  it("says how good it is, and how good one made through it", async () => {
    const said = await words("97", "--diameter", "120", "--drill", "3", "--head", ungeared);
    for (const each of [
      "INDEX PLATE: 97 holes on a circle of 120.00 mm",
      "NEAR ONLY, NOT EXACT",
      "no hole over 0.0047 mm along its circle (15.9″ of the plate)",
      "0.4″ on a worm ratio of 40:1, which divides it; from any hole to any other no more than 0.4″",
      "a second plate of as many holes, drilled through this one there: no hole over 0.0002 mm, 0.1″ at its spindle",
      "whose own error no plate lessens",
      "0.88 mm is left",
      "0 to 24: 84.163 mm",
      "after 24 moves in all, new hole 23",
      "Before metal is cut make a light mark at every position",
    ])
      expect(said).toContain(each);
  });

  it("is exact where the head divides it, and says so with its code", async () => {
    const { code, stdout } = await runHere(["plate", "24", "--diameter", "80"]);
    expect(code).toBe(0);
    expect(stdout).toContain("nothing: every hole is set exactly");
    expect(stdout).not.toContain("At the spindle");
    expect((await runHere(["plate", "97", "--diameter", "80", "--head", ungeared])).code).toBe(1);
  });

  it("names the better way, where there is one and none was named", async () => {
    const asked = ["97", "--diameter", "4.5in", "--head", ungeared, "--method", "simple"];
    expect(await words(...asked)).toContain("Or by coordinates to 0.0005 in: no hole over 0.00029 in simple");
    expect(await words(...asked, "--by", "nearest-hole")).not.toContain("by coordinates");
    expect(await words("24", "--diameter", "120")).not.toContain("by coordinates");
    // The compound move is better.
    expect(await words("97", "--diameter", "120", "--head", ungeared)).not.toContain("by coordinates");
  });

  it("is by the dial of a table, for a head of another ratio, with what the drill wanders", async () => {
    const said = await words("97", "--diameter", "120", "--head", "ratio-90-dial", "--serves", "40", "--within", "0.02");
    expect(said).toContain("BY THE DIAL");
    expect(said).toContain("(73.8″ of the plate, 0.020 mm for the drill among it)");
    expect(said).toContain("1.9″ on a worm ratio of 40:1");
  });

  it("is by coordinates in inches alone, where it is asked for in inches", async () => {
    const said = await words("12", "--diameter", "4.5in", "--by", "coordinates", "--clockwise", "--tangents");
    expect(said).toContain("on a radius of 2.2500, from the left and bottom tangents");
    expect(said).toContain("1 4.1985 1.1250 ");
    expect(said).toContain("Come to each figure from the same side");
    expect(said).not.toMatch(/\bmm\b/);
    const stepped = await words("12", "--diameter", "4.5in", "--by", "coordinates", "--step", "0.02in");
    expect(stepped).toContain("1 1.9400 1.1200 ");
  });

  it("is none where the head comes nowhere near", async () => {
    const nose = JSON.stringify({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    const folder = mkdtempSync(join(tmpdir(), "plate-"));
    try {
      const file = join(folder, "head.json");
      writeFileSync(file, nose);
      const { code, stdout } = await runHere(["plate", "97", "--diameter", "80", "--head", file]);
      expect([code, stdout.includes("not even nearly")]).toEqual([1, true]);
      const { plate } = JSON.parse((await runHere(["plate", "97", "--diameter", "80", "--head", file, "--json"])).stdout);
      expect(plate.planned).toBe(false);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("is with --json what the library returns, and starts where it is said", async () => {
    const asked = ["97", "--diameter", "120", "--head", ungeared, "--start-hole", "3", "--start-angle", "90°", "--minus"];
    const { stdout } = await runHere(["plate", ...asked, "--by", "moves", "--json"]);
    const plate = drillPlate(ready(ungeared), 97, {
      diameter: 120,
      by: "moves",
      startHole: 3,
      startAngle: "1/4" as never,
      side: "minus",
    });
    expect(JSON.parse(stdout).plate).toEqual(JSON.parse(JSON.stringify(drilledWithWhys(plate))));
  });

  it("is printed on a sheet", async () => {
    const folder = mkdtempSync(join(tmpdir(), "plate-"));
    try {
      const file = join(folder, "plate.pdf");
      const { stdout } = await runHere(["plate", "24", "--diameter", "80", "--sheet", file, "--paper", "letter"]);
      expect(stdout).toContain("Sheet");
      expect(readFileSync(file).subarray(0, 5).toString()).toBe("%PDF-");
      const { bytes } = await runHere(["plate", "24", "--diameter", "80", "--sheet", "-"]);
      expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe("a plate that is there", () => {
  it("is checked by its chords", async () => {
    const said = await words(
      "97",
      "--chords",
      "3.89 over 1, 84.16 over 24, 3.88 from 96 over 1, 119.98 over 48",
      "--diameter",
      "120",
    );
    expect(said).toContain("0 to 1 3.890 3.886 +0.004 +0.004 +0.4″");
    expect(said).toContain("96 to 0 3.880 3.886 −0.006 −0.006 −0.5″");
    expect(said).toContain("0 to 48 119.980 119.984 −0.004 – –");
    expect(said).toContain("0.006 mm along the circle, 0.6″ at the spindle of a worm ratio of 40:1");
    expect(await words("40", "--chords", "80 over 20", "--diameter", "80")).toContain("not told: chords nearly across tell");
    expect(await words("97", "--chords", "3.89 over 1, 84.16 over 24", "--serves", "60")).toContain(
      "by which the chords fit best",
    );
  });

  it("is found out by its chords", async () => {
    const one = await runHere(["plate", "--chords", "60.2 over 10", "--diameter", "150", "--within", "0.1"]);
    expect([one.code, one.stdout.includes("76 on 150.")]).toEqual([0, true]);
    const several = await runHere(["plate", "--chords", "3.886 over 1, 84.16 over 24"]);
    expect([several.code, several.stdout.replace(/\s+/g, " ")]).toEqual([
      1,
      expect.stringContaining("measure over 35 spaces as well"),
    ]);
    expect(await words("--chords", "3.9 over 1, 23.2 over 6", "--within", "0.1")).toMatch(/and \d+ other counts that fit/);
    expect(await words("--chords", "60.6 over 10", "--diameter", "150", "--within", "0.01")).toContain(
      "none that fits all the measures; the nearest is 76 on 150",
    );
  });
});

it("a circle to be drilled leads to it", async () => {
  const { stdout } = await runHere(["97", "--head", ungeared]);
  expect(stdout.replace(/\s+/g, " ")).toContain("plate 97 --diameter LENGTH tells how such a circle is drilled");
  expect((await runHere(["97", "--head", "ratio-90-dial"])).stdout).not.toContain("--diameter");
});

it("a sheet and data do not both go to the output", async () => {
  const { error } = JSON.parse((await runHere(["plate", "97", "--diameter", "120", "--sheet", "-", "--json"])).stdout);
  expect(error.message).toContain("--sheet: and --json cannot both go to the output");
});

it("--help and --version", async () => {
  expect((await runHere(["plate", "--help"])).stdout).toContain("--diameter LENGTH");
  expect((await runHere(["plate", "--version"])).stdout).toMatch(/^\d/);
});

it.each([
  [[], "how many holes? Begin with the count, such as plate 97 --diameter 120, or give --chords"],
  [["97"], "--diameter: is needed"],
  [["97", "98"], '"98" was not expected'],
  [["x", "--diameter", "120"], '"x" is not'],
  [["1", "--diameter", "120"], "1 is not a number of holes for a circle; give 2 to 10,000"],
  [
    ["97", "--diameter", "120", "--by", "eye"],
    '--by: there is no way "eye"; the ways are moves, nearest-hole, dial, ring, both-cranks, nearest-direct, coordinates',
  ],
  [["97", "--diameter", "120", "--step", "0.01"], "--step: has no effect but by coordinates"],
  [["97", "--diameter", "120", "--clockwise"], "--clockwise: has no effect but by coordinates"],
  [["97", "--diameter", "120", "--by", "coordinates", "--minus"], "--minus: goes with a way of the head"],
  [["97", "--diameter", "4.5in", "--drill", "0.2in"], "--drill: 0.2 in runs into the next hole, 0.1457 in on"],
  [["97", "--diameter", "120", "--paper", "a4"], "--paper: goes with --sheet, the file to print to"],
  [["1001", "--diameter", "1000", "--sheet", "-"], "1001 holes are too many for a sheet; give at most 1000"],
  [["97", "--chords", "3.89"], '--chords: "3.89" is not a chord; write its length and its spaces'],
  [["97", "--chords", "3.89 over 1"], "--chords: one chord tells the diameter and nothing of its holes"],
  [["97", "--chords", "3.89 over 1", "--drill", "3"], "--drill: has no effect on a plate that is measured"],
  [["--chords", "3.89 over 1", "--serves", "40"], "--serves: has no effect on an unknown plate"],
  [["--chords", "3.89 over 1"], "--chords: chords over one number of spaces fit any count"],
  [["--bogus"], "plate --help lists the options"],
])("refuses %j in one sentence", async (asked, said) => {
  const { code, stdout, stderr } = await runHere(["plate", ...asked]);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toContain(said);
});
