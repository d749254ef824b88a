import { describe, expect, it } from "vitest";
import { runHere } from "../support/command.ts";

type Row = Readonly<Record<string, string>>;

/** The rows of a table in CSV, without quotes in it. */
async function rowsOf(...asked: readonly string[]): Promise<readonly Row[]> {
  const { stdout } = await runHere([...asked, "--csv"]);
  expect(stdout.endsWith("\r\n")).toBe(true);
  const [heads = "", ...lines] = stdout.trimEnd().split("\r\n");
  return lines.map((line) => Object.fromEntries(heads.split(",").map((head, at) => [head, line.split(",")[at] ?? ""])));
}

const figure = (row: Row, head: string) => Number(row[head]);

describe("an index plate for a spreadsheet", () => {
  it("of a head has every hole with the crank that comes to it, and how far it is off", async () => {
    const rows = await rowsOf(
      "plate",
      "97",
      "--diameter",
      "120",
      "--head",
      "ratio-40-plates-15-49-ungeared",
      "--by",
      "nearest-hole",
    );
    expect(rows.map((row) => figure(row, "drill"))).toEqual(Array.from({ length: 97 }, (_, hole) => hole));
    const circle = 49;
    let counted = 0;
    for (const row of rows) {
      counted += figure(row, "go on turns") * circle + figure(row, "go on spaces");
      expect([figure(row, "turns"), figure(row, "hole")]).toEqual([Math.floor(counted / circle), counted % circle]);
      const off = counted / circle / 40 - figure(row, "drill") / 97;
      expect(Math.abs(off * 1_296_000 - figure(row, "off by seconds"))).toBeLessThan(0.0001);
      expect(Math.abs(off * Math.PI * 120 - figure(row, "off along (mm)"))).toBeLessThan(0.000001);
      expect(figure(row, "degrees")).toBeCloseTo((360 * figure(row, "drill")) / 97, 9);
    }
  });

  it("by coordinates has x and y in the unit of the person, and what they are off", async () => {
    const rows = await rowsOf("plate", "30", "--diameter", "4.5in", "--by", "coordinates", "--clockwise");
    expect(rows).toHaveLength(30);
    for (const row of rows) {
      const [x, y] = [figure(row, "x (in)"), figure(row, "y (in)")];
      expect(Math.abs(Math.hypot(x, y) - 2.25 - figure(row, "off outwards (in)"))).toBeLessThan(0.000002);
      const turns = ((Math.atan2(-y, x) / (2 * Math.PI)) % 1) - figure(row, "drill") / 30;
      expect(Math.abs((turns - Math.round(turns)) * 2 * Math.PI * 2.25 - figure(row, "off along (in)"))).toBeLessThan(0.000002);
    }
  });

  it("keeps the status of its words", async () => {
    const ask = ["plate", "97", "--diameter", "120", "--head", "ratio-40-plates-15-49-ungeared"];
    expect((await runHere([...ask, "--csv"])).code).toBe((await runHere(ask)).code);
    expect((await runHere(["plate", "24", "--diameter", "120", "--markdown"])).stdout).toMatch(/^\| drill \| go on turns \|/);
  });
});

describe("a scale for a spreadsheet", () => {
  it("of a head has every line with its length, its figure and the crank that comes to it", async () => {
    const rows = await rowsOf("graduate", "360", "--spaces", "40", "--figure-from=-20");
    let counted = 0;
    const circle = 18;
    for (const [index, row] of rows.entries()) {
      counted += figure(row, "go on turns") * circle + figure(row, "go on spaces");
      expect(figure(row, "line")).toBe(index);
      expect(counted * 360).toBe(index * circle * 40);
      expect(row.length).toBe(index % 10 === 0 ? "long" : index % 5 === 0 ? "medium" : "short");
      expect(row.figure).toBe(index % 10 === 0 ? String(index - 20) : "");
    }
    expect(rows).toHaveLength(41);
  });

  it.each([
    ["the screw's dial", ["--lead", "0.2in", "--marks", "125"], "marks", "mark", 125, 0.2],
    ["a head geared to the screw", ["--lead", "0.25in", "--geared", "1"], "spaces", "hole", 16, 0.25 / 40],
  ] as const)("by %s has where that stands, and the travel", async (_, by, spaces, mark, places, lead) => {
    const rows = await rowsOf("graduate", "--space", "1/40in", "--spaces", "40", ...by);
    let counted = 0;
    for (const [index, row] of rows.entries()) {
      counted += figure(row, "go on turns") * places + figure(row, `go on ${spaces}`);
      expect([figure(row, "turns"), figure(row, mark)]).toEqual([Math.floor(counted / places), counted % places]);
      expect(figure(row, "travel (in)")).toBeCloseTo(index / 40, 6);
      expect(Math.abs((counted / places) * lead - index / 40 - figure(row, "off by (in)"))).toBeLessThan(0.000001);
    }
    expect(rows).toHaveLength(41);
  });
});

it.each([
  [["plate", "24", "--diameter", "80", "--csv", "--markdown"], "--csv: is given beside --markdown; give one of the two"],
  [["graduate", "100", "--markdown", "--sheet", "-"], "--sheet: and --markdown cannot both go to the output"],
  [["plate", "24", "--chords", "1 over 1", "--csv"], "--csv: has no effect on a plate that is measured"],
])("refuses %j", async (asked, why) => {
  const { code, stderr } = await runHere(asked);
  expect([code, stderr]).toEqual([2, expect.stringContaining(why)]);
});
