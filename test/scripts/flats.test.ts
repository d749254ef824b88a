import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { linesOf, piecesOf } from "../booklet/read-pdf.ts";
import { runHere } from "../support/command.ts";

const folder = mkdtempSync(join(tmpdir(), "flats-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function words(...asked: string[]): Promise<string> {
  return (await runHere(asked)).stdout.replace(/\s+/g, " ");
}

describe("flats", () => {
  it("are told with the blank, the cut, what to measure, and the moves on the head", async () => {
    const text = await words("flats", "hexagon", "--across", "17");
    expect(text).toContain("HEXAGON, 17.000 mm across flats Blank a diameter of 19.630 mm, the least for sharp corners");
    expect(text).toContain("Depth of cut 1.315 mm on each flat, from the round Flat 9.815 mm wide");
    expect(text).toContain("over the first flat and the round opposite 18.315 mm then over two flats 17.000 mm");
    expect(text).toContain("straddle the work 17.000 mm apart need only 3 cuts, the same move between them");
    expect(text).toContain("6 DIVISIONS");
    expect(text).toContain("Crank 6 turns + 10 spaces");
  });

  it("come out with round corners of a small blank, with sharp ones of a large, and are none of two flats", async () => {
    expect(await words("flats", "square", "--across", "20", "--blank", "25")).toContain(
      "corners stay round, which would be sharp at 28.284 mm",
    );
    expect(await words("flats", "4", "--across", "20", "--blank", "30")).toContain("corners come out sharp, 28.284 mm across");
    const two = await words("flats", "2", "--across", "22", "--blank", "25");
    expect(two).toContain("2 FLATS, 22.000 mm across flats Blank a diameter of 25.000 mm Depth of cut 1.500 mm");
    expect(two).toContain("need only one cut");
  });

  it("of an odd number are measured to the corner opposite, in inches where they were asked so", async () => {
    const text = await words("flats", "7", "--blank", "1in");
    expect(text).toContain("7 FLATS, each flat 0.4505 in from the axis");
    expect(text).toContain("in the end over a flat and the corner opposite 0.9505 in");
    expect(text).not.toContain("straddle");
    expect(text).not.toMatch(/\bmm\b/);
  });

  it("end with 1 where the head has no exact move, and say what comes near", async () => {
    const { code, stdout } = await runHere(["flats", "53", "--across", "60", "--head", "ratio-90-dial"]);
    expect(code).toBe(1);
    expect(stdout).toContain("NEAR ONLY");
  });

  it("are told as data", async () => {
    const { flats, indexing } = JSON.parse((await runHere(["flats", "octagon", "--blank", "40", "--json"])).stdout);
    expect(flats).toMatchObject({ sides: 8, blank: 40, cornersSharp: true });
    expect(indexing).toMatchObject({ exact: true, target: { divisions: 8 } });
  });
});

describe("flats without a head", () => {
  it("are told by degrees, with what to mind, and as data without moves", async () => {
    const text = await words("flats", "octagon", "--across", "30", "--degrees");
    expect(text).toContain("flat set at 1 0° 00′ 00.0″ 2 45° 00′ 00.0″");
    expect(text).toContain("Set its angle from the one zero");
    expect(text).not.toContain("DIVISIONS");
    const { code, stdout } = await runHere(["flats", "7", "--across", "30", "--degrees", "--json"]);
    expect([code, JSON.parse(stdout).indexing]).toEqual([0, null]);
  });
});

describe("the sheets", () => {
  it.each([
    ["flats", ["hexagon", "--across", "17"], "Hexagon, 17.000 mm across flats"],
    ["flats", ["hexagon", "--across", "0.75in", "--degrees"], "Hexagon, 0.7500 in across flats"],
    ["bolt-circle", ["6", "--diameter", "80"], "Bolt circle: 6 holes on 80.000 mm"],
    ["bolt-circle", ["6", "--diameter", "80", "--csv"], "Bolt circle: 6 holes on 80.000 mm"],
  ] as const)("of %s %j says the same as the words", async (command, asked, title) => {
    const file = join(folder, "sheet.pdf");
    const { code, stdout } = await runHere([command, ...asked, "--sheet", file, "--paper", "letter", "--force"]);
    expect(code).toBe(0);
    const isTable = (asked as readonly string[]).includes("--csv");
    expect(stdout.includes("Sheet")).toBe(!isTable);
    const lines = (await piecesOf(readFileSync(file))).flatMap(linesOf);
    expect(lines).toContain(title);
  });

  it("tell their file as data, and are refused where the head can do nothing", async () => {
    const file = join(folder, "data.pdf");
    const asked = ["bolt-circle", "6", "--diameter", "80", "--sheet", file, "--json"];
    expect(JSON.parse((await runHere(asked)).stdout)).toMatchObject({ sheet: file, boltCircle: {} });
    const head = join(folder, "direct.json");
    writeFileSync(head, JSON.stringify({ id: "d", name: "d", wormRatio: "40", directPlates: [{ name: "n", holes: 24 }] }));
    const { code, stderr } = await runHere(["flats", "53", "--across", "9", "--head", head, "--sheet", join(folder, "none.pdf")]);
    expect([code, stderr]).toEqual([2, expect.stringContaining("add --degrees for a sheet by degrees")]);
  });
});

describe("a bolt circle", () => {
  it("needs no head: signed and all positive, with chords", async () => {
    const text = await words("bolt-circle", "6", "--diameter", "80");
    expect(text).not.toContain("head");
    expect(text).toContain("hole x y x from zero y from zero 1 40.000 0.000 80.000 40.000 2 20.000 34.641 60.000 74.641");
    expect(text).toContain("Chord to next 40.000 mm, 1 division apart Chord across 80.000 mm, 3 divisions apart");
    const { boltCircle } = JSON.parse((await runHere(["bolt-circle", "7", "--diameter", "80", "--json"])).stdout);
    const all: { x: number; y: number }[] = boltCircle.fromZero;
    expect(all.every(({ x, y }) => x >= 0 && y >= 0)).toBe(true);
  });

  it("in inches, from the top, clockwise", async () => {
    const text = await words("bolt-circle", "4", "--diameter", "2in", "--start-angle", "90°", "--clockwise");
    expect(text).toContain("In inches, on a diameter of 2.0000");
    expect(text).toContain("1 0.0000 1.0000 1.0000 2.0000 2 1.0000 0.0000 2.0000 1.0000");
  });

  it("of one hole is told as one", async () => {
    expect(await words("bolt-circle", "1", "--diameter", "80")).toMatch(/^BOLT CIRCLE OF 1 HOLE In millimetres/);
  });

  it("from a corner of the work", async () => {
    const text = await words("bolt-circle", "6", "--diameter", "80", "--centre", "75, 50");
    expect(text).toContain("from your own zero, the centre lying at x 75.000, y 50.000");
    expect(text).toContain("1 40.000 0.000 115.000 50.000");
  });

  it("as a table, one value a cell", async () => {
    const { stdout } = await runHere(["bolt-circle", "4", "--diameter", "80", "--csv"]);
    expect(stdout.trim().split(/\r?\n/)).toEqual([
      "hole,x from centre (mm),y from centre (mm),x from zero (mm),y from zero (mm)",
      "1,40,0,80,40",
      "2,0,40,40,80",
      "3,-40,0,0,40",
      "4,0,-40,40,0",
    ]);
    expect((await runHere(["bolt-circle", "4", "--diameter", "80", "--markdown"])).stdout).toMatch(/^\| *hole/);
  });
});

it.each([
  [["flats"], "how many flats? Begin with square, hexagon, octagon or a number"],
  [["flats", "six", "--across", "17"], '"six" is no number of flats'],
  [["flats", "6", "7"], '"7" was not expected'],
  [["flats", "6"], "--across: neither length is given"],
  [["flats", "1", "--across", "9"], "1 is not a whole number from 2 to 360"],
  [["flats", "6", "--across", "17", "--blank", "17"], "--blank: is no larger than the flats are across"],
  [["flats", "6", "--across", "17", "--mounted", "9"], "--mounted: this head has no plate"],
  [["flats", "6", "--across", "17", "--degrees", "--head", "ratio-90-dial"], "--head: has no effect with --degrees"],
  [["flats", "6", "--across", "17", "--paper", "a5"], "--paper: goes with --sheet"],
  [["flats", "6", "--across", "17", "--sheet", "-", "--json"], "--sheet: and --json cannot both go to the output"],
  [["bolt-circle", "6", "--diameter", "80", "--sheet", "-", "--csv"], "--sheet: and --csv cannot both go to the output"],
  [["bolt-circle", "1001", "--diameter", "80", "--sheet", "x.pdf"], "1001 holes are too many for a sheet"],
  [["bolt-circle"], "how many holes? Begin with the count"],
  [["bolt-circle", "x", "--diameter", "80"], '"x" is not a count of holes'],
  [["bolt-circle", "6", "8", "--diameter", "80"], '"8" was not expected'],
  [["bolt-circle", "6"], "--diameter: is needed"],
  [["bolt-circle", "0", "--diameter", "80"], "0 is not a count of divisions"],
  [["bolt-circle", "6", "--diameter", "80", "--centre", "75"], '--centre: "75" is not where a centre lies; give x and y'],
  [["bolt-circle", "6", "--diameter", "80", "--csv", "--json"], "is given beside"],
  [["bolt-circle", "6", "--bogus"], "bolt-circle --help lists the options"],
])("refuses %j", async (asked, why) => {
  const { code, stdout, stderr } = await runHere(asked);
  expect([code, `${stdout}${stderr}`.includes(why) || stderr]).toEqual([2, true]);
});

it.each(["flats", "bolt-circle"])("%s tells its options and its version when asked", async (command) => {
  expect((await runHere([command, "--help"])).stdout).toContain(`turns-and-holes ${command}`);
  expect((await runHere([command, "--version"])).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
});
