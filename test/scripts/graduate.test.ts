import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { graduate, parseAngle } from "../../src/index.ts";
import { graduatedWithWhys } from "../../src/words/index.ts";
import { runHere } from "../support/command.ts";
import { threePlates } from "../support/ready.ts";

async function words(...asked: readonly string[]): Promise<string> {
  const { stdout } = await runHere(["graduate", ...asked]);
  expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
  return stdout.replace(/\s+/g, " ");
}

describe("a scale, line by line", () => {
  it("of a dial: length, figure and crank of each line, and what is minded", async () => {
    const { code, stdout } = await runHere(["graduate", "100"]);
    expect(code).toBe(0);
    expect(stdout).toContain("Dial of 100 lines");
    const said = stdout.replace(/\s+/g, " ");
    expect(said).toContain(" 5 medium 0 + 6/15 2 0 18°");
    expect(said).toContain(" 10 long 10 0 + 6/15 4 0 36°");
    expect(said).toContain("after 50 moves in all, line 50");
    expect(said).toContain("draw the tool to the stop of its length");
    expect(said).toContain("Before metal is cut make a light mark");
  });

  it("of a sector, near, in other figures", async () => {
    const ask = ["97", "--spaces", "12", "--head", "ratio-40-plates-15-49-ungeared", "--long", "4", "--medium", "2"];
    const said = await words(...ask, "--figure-every", "6", "--figure-from", "5", "--per-line", "0.5", "--by", "nearest-hole");
    expect(said).toContain("Sector of 12 spaces of ≈ 3° 42′ 41″");
    expect(said).toContain("NEAR ONLY, NOT EXACT");
    expect(said).toMatch(/no line over 4\.\d′ from its place/);
    expect(said).toContain(" 6 medium 8 ");
    expect(said).toContain(" 12 long 11 ");
    expect((await runHere(["graduate", ...ask])).code).toBe(1);
  });

  it("of a vernier by the dial of a table, and one that runs against its scale", async () => {
    const asked = ["360", "--vernier", "12", "--over", "23", "--two-sided", "--per-line", "5", "--head", "ratio-90-dial"];
    const said = await words(...asked);
    expect(said).toContain("Vernier of 12 spaces over 23, on both sides of its zero");
    expect(said).toContain("Line to line 1° 55′ 00.0″");
    expect(said).toContain("Reads to 0° 05′ 00.0″, a space of the main scale over 12");
    expect(said).toContain("that side is read whose figures rise with those of the main scale");
    expect(said).toContain(" 0 long 60 0 t + 0° 00′ 00″");
    expect(await words("360", "--vernier", "10", "--over", "11")).toContain("rise AGAINST those of the main scale");
  });

  it("of a rule by the screw's dial, in inches alone where it is asked for in inches", async () => {
    const said = await words("--space", "1/40in", "--spaces", "40", "--lead", "0.2in", "--marks", "125", "--per-line", "0.025");
    expect(said).toContain("Scale of 40 spaces of 0.02500 in");
    expect(said).toContain("no line over 0.00080 in from its place, each by itself from the first");
    expect(said).toContain(" 10 long 0.25 0 + 15 1 31 0.2500 −0.00040");
    expect(said).not.toMatch(/\bmm\b/);
    const exact = await words("--space", "1mm", "--spaces", "20", "--lead", "6", "--marks", "240");
    expect(exact).toContain(" 7 short 0 + 40 1 40 7.000 ");
    expect(exact.match(/off by/gi)).toHaveLength(1);
  });

  it("of a vernier by a head geared to the screw", async () => {
    const said = await words(
      "--space",
      ".5",
      "--vernier",
      "10",
      "--lead",
      "4",
      "--geared",
      "1",
      "--head",
      "ratio-40-plates-15-49",
    );
    expect(said).toContain("circle of 16 holes, stop pin in; a turn of the crank is 0.1000 mm");
    expect(said).toContain(" 1 short 4 + 8 4 8 0.450 ");
  });

  it("is none where the head comes nowhere near", async () => {
    const folder = mkdtempSync(join(tmpdir(), "scale-"));
    try {
      const file = join(folder, "head.json");
      writeFileSync(file, JSON.stringify({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] }));
      const { code, stdout } = await runHere(["graduate", "97", "--head", file]);
      expect([code, stdout.includes("not even nearly")]).toEqual([1, true]);
      expect(JSON.parse((await runHere(["graduate", "97", "--head", file, "--json"])).stdout).scale.planned).toBe(false);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("is with --json what the library returns", async () => {
    const asked = ["100", "--spaces", "30", "--start-hole", "3", "--start-angle", "90°", "--minus", "--medium", "0"];
    const made = graduate(
      threePlates,
      { divisions: 100, spaces: 30, medium: 0 },
      { startHole: 3, startAngle: parseAngle("90°"), side: "minus" },
    );
    const { scale } = JSON.parse((await runHere(["graduate", ...asked, "--json"])).stdout);
    expect(scale).toEqual(JSON.parse(JSON.stringify(graduatedWithWhys(made))));
    const straight = JSON.parse(
      (await runHere(["graduate", "--space", '0.1"', "--spaces", "3", "--lead", "5", "--marks", "100", "--json"])).stdout,
    );
    expect(straight.scale).toEqual(JSON.parse(JSON.stringify(graduate({ lead: 5, marks: 100 }, { space: "2.54", spaces: 3 }))));
  });

  it("is printed on a sheet", async () => {
    const folder = mkdtempSync(join(tmpdir(), "scale-"));
    try {
      const file = join(folder, "scale.pdf");
      const { stdout } = await runHere(["graduate", "24", "--sheet", file, "--paper", "a5"]);
      expect(stdout).toContain("Sheet");
      expect(readFileSync(file).subarray(0, 5).toString()).toBe("%PDF-");
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

it("--help and --version", async () => {
  expect((await runHere(["graduate", "--help"])).stdout).toContain("--vernier N");
  expect((await runHere(["graduate", "--version"])).stdout).toMatch(/^\d/);
});

const rod = ["--space", "1", "--spaces", "9"];

it.each([
  [[], "what scale? Begin with the divisions of a dial, such as graduate 100, or give --space"],
  [["100", "90"], '"90" was not expected'],
  [["x"], '"x" is not'],
  [["12", "--spaces", "13"], "--spaces: 14 lines go round the whole circle and more"],
  [["12", "--over", "11"], "--over: goes with --vernier, its spaces"],
  [["360", "--vernier", "12", "--over", "14"], "--over: 12 spaces over 14 are no vernier"],
  [["360", "--vernier", "1"], "--vernier: 1 is not a number of spaces for a vernier"],
  [["360", "--lead", "5"], "--lead: has no effect on a round scale"],
  [["360", "--per-line", "x"], '--per-line: "x" is not an exact number'],
  [["360", "--by", "eye"], '--by: there is no way "eye"'],
  [[...rod], "--lead: is needed: travel of the table for one turn of its screw, such as 5"],
  [[...rod, "--lead", "5"], "--marks: or --geared: give the marks"],
  [[...rod, "--lead", "5", "--marks", "100", "--geared", "1"], "--marks: or --geared"],
  [
    [...rod, "--lead", "5", "--marks", "100", "--head", "ratio-90-dial"],
    "--head: has no effect on a straight scale by the screw's dial",
  ],
  [[...rod, "--lead", "5", "--marks", "100", "--mounted", "1"], "--mounted: has no effect on a straight scale"],
  [[...rod, "--lead", "0", "--marks", "100"], "--lead:"],
  [[...rod, "--lead", "1/0", "--marks", "100"], '--lead: "1/0" is not a length'],
  [[...rod, "--lead", "1.5/2", "--marks", "100"], '--lead: "1.5/2" is not a length; give millimetres such as 0.5, or inches'],
  [[...rod, "--lead", "5", "--geared", "0"], "--geared:"],
  [["100", "--paper", "a4"], "--paper: goes with --sheet"],
  [["--bogus"], "graduate --help lists the options"],
])("refuses %j in one sentence", async (asked, said) => {
  const { code, stdout, stderr } = await runHere(["graduate", ...asked]);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toContain(said);
});
