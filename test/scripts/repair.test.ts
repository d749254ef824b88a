import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseAngle, repairOnHead, spurGear } from "../../src/index.ts";
import { repairWithTexts } from "../../src/words/index.ts";
import { linesOf, piecesOf } from "../booklet/read-pdf.ts";
import { run } from "../support/command.ts";
import { ready } from "../support/ready.ts";

const plain = (value: unknown) => JSON.parse(JSON.stringify(value));

describe("the words of a repair", () => {
  it.each([
    {
      asked: "three teeth of 86, exact",
      words: [
        "86",
        "--module",
        "2",
        "--damaged",
        "31,32,33",
        "--backlash",
        "0.2",
        "--saw",
        "1.5",
        "--setting-error",
        '30"',
        "--off-centre",
        "0.02",
      ],
      code: 0,
    },
    { asked: "two places of 127, with gears", words: ["127", "--module", "1.25", "--damaged", "5-6,90"], code: 0 },
    {
      asked: "three teeth of 97 without gears, near, in inches",
      words: ["97", "--dp", "12", "--damaged", "31-33", "--backlash", "0.006in", "--head", "ratio-40-plates-15-49-ungeared"],
      code: 1,
    },
    {
      asked: "97 by the dial of a bare table",
      words: ["97", "--module", "2", "--damaged", "12,13", "--head", "ratio-90-dial"],
      code: 1,
    },
    {
      asked: "51 by compound indexing",
      words: ["51", "--module", "2", "--damaged", "3", "--method", "compound", "--start-hole", "4"],
      code: 0,
    },
    {
      asked: "97 on a table with plates and dial, simple indexing alone",
      words: [
        "97",
        "--module",
        "2",
        "--damaged",
        "12",
        "--head",
        "ratio-60-table-15-49",
        "--method",
        "simple",
        "--start-space",
        "5",
      ],
      code: 1,
    },
  ])("$asked", async ({ words, code }) => {
    const said = await run(["repair", ...words]);
    expect([said.code, said.stderr]).toEqual([code, ""]);
    expect(said.stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
    expect(said.stdout).toMatchSnapshot();
  });

  it("a span from a rebuilt tooth to a worn one is limited by what both have lost", async () => {
    const words = ["40", "--module", "3", "--damaged", "7,8", "--backlash", "0.3", "--span", "41.3 over 5"];
    const { stdout } = await run(["repair", ...words]);
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "Span over 5 teeth, from a rebuilt tooth to a sound one: 41.347 mm to 41.417 mm (teeth 3–7, 7–11, 4–8, 8–12)",
    );
  });

  it("who works in inches gets inches alone, in refusals too", async () => {
    const gear = ["40", "--dp", "8", "--damaged", "7,8"];
    const said = await run(["repair", ...gear, "--backlash", "0.01in", "--off-centre", "0.002in", "--saw", "0.05in"]);
    expect(said.code).toBe(0);
    expect(said.stdout).not.toMatch(/\bmm\b/);
    for (const [option, length, sentence] of [
      ["--saw", "0.5in", "--saw: 0.5 in would cut into the flanks; give at most 0."],
      ["--saw-depth", "1in", "--saw-depth: 1 in is deeper than the tooth; give at most the whole depth, 0.2812 in"],
      ["--off-centre", "9in", "--off-centre: 9 in is not a distance off centre; give 0 in to 2.5 in"],
      ["--backlash", "1in", "--backlash: 1 in leaves nothing of a tooth 0.1963 in thick"],
    ] as const) {
      const { stderr } = await run(["repair", ...gear, option, length]);
      expect(stderr).toContain(sentence);
      expect(stderr).not.toMatch(/\bmm\b/);
    }
  });

  it("repair --help", async () => {
    const { code, stdout } = await run(["repair", "--help"]);
    expect(code).toBe(0);
    expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });
});

describe("repair --json is what the library returns", () => {
  it.each([
    {
      words: [
        "86",
        "--module",
        "2",
        "--damaged",
        "31-33",
        "--backlash",
        "0.2",
        "--mate-thinning",
        "0.05",
        "--saw",
        "1.5",
        "--saw-depth",
        "4",
        "--leave",
        "0.1",
      ],
      gear: { teeth: 86, module: 2 },
      head: "ratio-40-plates-15-49",
      options: { damaged: [31, 32, 33], backlash: 0.2, mateThinning: 0.05, saw: { width: 1.5, depth: 4, leave: 0.1 } },
    },
    {
      words: [
        "97",
        "--dp",
        "12",
        "--damaged",
        "5,90",
        "--head",
        "ratio-40-plates-15-49-ungeared",
        "--mounted",
        "3",
        "--teeth-per-move",
        "2",
        "--start-angle",
        "10°",
        "--minus",
      ],
      gear: { teeth: 97, diametralPitch: 12 },
      head: "ratio-40-plates-15-49-ungeared",
      options: {
        damaged: [5, 90],

        places: { mounted: "3", teethPerMove: 2, startAngle: parseAngle("10°"), side: "minus" as const },
      },
    },
  ])("$words", async ({ words, gear, head, options }) => {
    const { stdout } = await run(["repair", ...words, "--json"]);
    expect(JSON.parse(stdout)).toEqual(plain(repairWithTexts(repairOnHead(ready(head), spurGear(gear), options))));
  });
});

describe("the sheet", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "repair-sheet-"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  const job = ["repair", "86", "--module", "2", "--damaged", "31-33"];

  it("is written beside the words, over an older sheet, but never over another file", async () => {
    const first = await run([...job, "--sheet", "sheet.pdf", "--paper", "letter"], folder);
    expect([first.code, first.stderr]).toEqual([0, ""]);
    expect(first.stdout).toContain("sheet.pdf");
    const text = (await piecesOf(readFileSync(join(folder, "sheet.pdf")))).flatMap(linesOf).join("\n");
    expect(text).toContain("Repair: teeth 31–33 of 86");
    expect((await run([...job, "--sheet", "sheet.pdf", "--json"], folder)).stdout).toContain('"sheet":"sheet.pdf"');
    writeFileSync(join(folder, "letter.txt"), "dear reader");
    const refused = await run([...job, "--sheet", "letter.txt"], folder);
    expect([refused.code, refused.stdout]).toEqual([3, ""]);
    expect(refused.stderr).toContain("is not a file of this program");
    expect(readFileSync(join(folder, "letter.txt"), "utf8")).toBe("dear reader");
    expect((await run([...job, "--sheet", "letter.txt", "--force"], folder)).code).toBe(0);
    expect(readFileSync(join(folder, "letter.txt"), "latin1").startsWith("%PDF-")).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["letter.txt", "sheet.pdf"]);
  });

  it("is printed for a near setting too", async () => {
    const { code } = await run(
      ["repair", "97", "--module", "2", "--damaged", "3", "--head", "ratio-90-dial", "--sheet", "near.pdf"],
      folder,
    );
    expect(code).toBe(1);
    expect(existsSync(join(folder, "near.pdf"))).toBe(true);
    rmSync(join(folder, "near.pdf"));
  });

  it.each([
    ["a paper there is not", ["--sheet", "new.pdf", "--paper", "a9"], "there is no paper", 2],
    ["no such directory", ["--sheet", "nowhere/new.pdf"], "there is no directory", 3],
    ["a paper without a sheet", ["--paper", "a4"], "--paper: goes with --sheet", 2],
    ["force without a sheet", ["--force"], "--force: goes with --sheet", 2],
  ] as const)("%s: refused, and nothing is written", async (_, more, said, status) => {
    const { code, stdout, stderr } = await run([...job, ...more], folder);
    expect([code, stdout]).toEqual([status, ""]);
    expect(stderr).toMatch(/^turns-and-holes: [^\n]+\n$/);
    expect(stderr).toContain(said);
    expect(readdirSync(folder).filter((name) => name.startsWith("new") || name.endsWith(".tmp"))).toEqual([]);
  });

  it("a head that cannot set the count at all is answered, but nothing is printed", async () => {
    writeFileSync(join(folder, "nose.json"), '{"wormRatio":40,"directPlates":[{"name":"nose","holes":24}]}');
    const words = ["repair", "97", "--module", "2", "--damaged", "3", "--head", "nose.json"];
    const answered = await run(words, folder);
    expect(answered.code).toBe(1);
    expect(answered.stdout).toContain("NOT POSSIBLE, not even nearly");
    const refused = await run([...words, "--sheet", "new.pdf"], folder);
    expect([refused.code, refused.stdout]).toEqual([2, ""]);
    expect(refused.stderr).toContain("--sheet: 97 teeth cannot be set on this head");
    expect(existsSync(join(folder, "new.pdf"))).toBe(false);
    rmSync(join(folder, "nose.json"));
  });
});

describe.concurrent("a repair that cannot be read", () => {
  const gear = ["86", "--module", "2"];
  it.each([
    ["no count", [], "how many teeth?"],
    ["no pitch", ["86", "--damaged", "3"], "the pitch is not given; add --module 2"],
    ["no damage", gear, "--damaged: is needed"],
    ["a tooth that is not there", [...gear, "--damaged", "87"], "--damaged: 87 is not a whole number from 1 to 86"],
    ["a tooth of 0", [...gear, "--damaged", "0"], "--damaged: 0 is not a whole number from 1 to 86"],
    ["a tooth twice", [...gear, "--damaged", "3,3"], "--damaged: tooth 3 is named twice"],
    ["a run backwards", [...gear, "--damaged", "33-31"], '--damaged: "33-31" is not a run of numbers'],
    ["an endless run", [...gear, "--damaged", "1-999999999"], "--damaged:"],
    ["a word for a tooth", [...gear, "--damaged", "some"], '--damaged: "some" is not a whole number'],
    ["every tooth", [...gear, "--damaged", "1-86"], "--damaged: no sound space is left"],
    [
      "a start beside the damage",
      [...gear, "--damaged", "31", "--start-space", "31"],
      "--start-space: space 31 is beside a damaged tooth",
    ],
    [
      "a start hole that is not there",
      [...gear, "--damaged", "31", "--start-hole", "43"],
      "--start-hole: 43 is not a hole of the circle",
    ],
    ["a saw too wide", [...gear, "--damaged", "31", "--saw", "2.5"], "--saw: 2.5 mm would cut into the flanks"],
    ["a saw too deep", [...gear, "--damaged", "31", "--saw-depth", "6"], "--saw-depth: 6 mm is deeper than the tooth"],
    [
      "a mate's thinning alone",
      [...gear, "--damaged", "31", "--mate-thinning", "0.1"],
      "--mate-thinning: is of no use without --backlash",
    ],
    [
      "a backlash as thick as the tooth",
      [...gear, "--damaged", "31", "--backlash", "8"],
      "--backlash: 8 mm leaves nothing of a tooth",
    ],
    [
      "a cutter far off centre",
      [...gear, "--damaged", "31", "--off-centre", "200"],
      "--off-centre: 200 mm is not a distance off centre",
    ],
    ["an error that is no angle", [...gear, "--damaged", "31", "--setting-error", "much"], "--setting-error:"],
    ["a head there is not", [...gear, "--damaged", "31", "--head", "none"], "there is no such ready head"],
    ["a method there is not", [...gear, "--damaged", "31", "--method", "magic"], "--method"],
    ["a plate there is not", [...gear, "--damaged", "31", "--mounted", "9"], "--mounted: this head has no plate"],
    ["an unknown option", [...gear, "--damaged", "31", "--colour", "red"], "repair --help lists the options"],
  ])("%s", async (_, words, said) => {
    const { code, stdout, stderr } = await run(["repair", ...words]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turns-and-holes: [^\n]+\n$/);
    expect(stderr.length).toBeLessThan(500);
    expect(stderr).toContain(said);
  });
});
