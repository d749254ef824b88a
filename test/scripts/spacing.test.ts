import { describe, expect, it } from "vitest";
import { said } from "../../scripts/command.ts";
import { headFiles } from "../support/head-file.ts";

const headFile = headFiles();

const words = async (...asked: string[]) => (await said(["spacing", ...asked])).text;
const json = async (...asked: string[]) => JSON.parse(await words(...asked, "--json"));
const seconds = (arc: string) => {
  const [degrees = 0, minutes = 0, rest = 0] = (arc.match(/[\d.]+/g) ?? []).map(Number);
  return degrees * 3600 + minutes * 60 + rest;
};
/** `−70.4″` or `+4.0′` in seconds; 0 where nothing is printed. */
const signed = (error: string) =>
  (error.startsWith("−") ? -1 : 1) * Number(error.replace(/[^\d.]/g, "")) * (error.endsWith("′") ? 60 : 1);
/** Half of what the last figure printed stands for, in seconds. */
const half = (error: string) => (error.endsWith("′") ? 3 : 0.05);

/** The rows of the table by their heads; in the order in which they are to be done. */
function rowsOf(text: string): readonly Readonly<Record<string, string>>[] {
  const lines = text.split("\n");
  const at = lines.findIndex((line) => /^ *place {2}/.test(line));
  const cells = (line: string) => line.trim().split(/ {2,}/);
  const heads = cells(lines[at] ?? "");
  const rows = lines.slice(
    at + 1,
    lines.findIndex((line, index) => index > at && /^ {2}Turn the /.test(line)),
  );
  return rows
    .filter((line) => line.trim() !== "")
    .map((line) => Object.fromEntries(cells(line).map((cell, index) => [heads[index], cell])));
}

/** What the steps come to, in seconds from the zero. */
function sums(steps: readonly string[]): readonly number[] {
  let sum = 0;
  return [0, ...steps.map((step) => (sum += Number(step) * 3600))];
}

describe("unequal spaces, done by hand as they are printed on a 40:1 head", () => {
  it.each([
    ["exact on 18", ["58", "62", "59", "61", "60", "60"]],
    ["exact, and left open", ["30", "60", "90"]],
    ["near", ["50.15", "61", "59"]],
    ["near, and more than a turn of the crank apart", ["0.7", "100.31", "7.77", "13.13"]],
  ])("%s", async (_, steps) => {
    const text = await words(steps.join(","));
    const [, circle = ""] = /circle of (\d+) holes, for every place/.exec(text) ?? [];
    const holes = Number(circle);
    const asked = sums(steps);
    const rows = rowsOf(text);
    expect(rows).toHaveLength(asked.at(-1) === 1_296_000 ? steps.length : steps.length + 1);
    let pin = 0;
    for (const [index, row] of rows.entries()) {
      const [turns = 0, spaces = 0, of = holes] = (row["go on by"]?.match(/\d+/g) ?? []).map(Number);
      expect(of).toBe(holes);
      pin += turns * holes + spaces;
      expect([row.place, row.turns, row.hole]).toEqual([String(index + 1), String(Math.floor(pin / holes)), String(pin % holes)]);
      expect(seconds(row.angle ?? "")).toBeCloseTo(asked[index] ?? Number.NaN, 1);
      const off = (pin / holes / 40) * 1_296_000 - (asked[index] ?? 0);
      const printed = row["off by"] ?? "0";
      expect(Math.abs(off - signed(printed))).toBeLessThanOrEqual(half(printed) + 1e-6);
    }
    expect(text).toContain("Plate stop pin   in");
  });

  it("says that every place is on a hole only where it is, and what is left of the turn", async () => {
    const exact = await words("58,62,59,61,60,60");
    expect(exact).toMatch(/^6 PLACES, UNEQUAL SPACES\n/);
    expect(exact).toContain("Exact            every place is on a hole");
    expect(exact).toContain("Round            the spaces make up whole turns of the work");
    expect(exact).not.toContain("off by");
    const near = await words("50.15,61,59");
    expect(near).toContain("NEAR, NOT EXACT  no place over 4.1′ off, each from one zero");
    // 360° less 170.15°.
    expect(near).toContain("Round            the spaces leave 189° 51′ 00.0″ of the turn");
    expect(near).not.toContain("Exact");
  });

  it("takes the smallest circle that is exact, and on the plate that is on the head", async () => {
    // 9° are a turn: 58° wants a multiple of 9, which 18 (plate 1) and 27 (plate 2) are.
    expect(await words("58,62,59,61,60,60")).toContain("Plate            1, circle of 18 holes");
    expect(await words("58,62,59,61,60,60", "--mounted", "2")).toContain("Plate            2, circle of 27 holes");
  });

  it("turns the crank one way, up to a hole", async () => {
    const told = (await words("58,62,59,61,60,60")).replace(/\s+/g, " ");
    expect(told).toContain("Turn the crank one way only. Past the hole: go back half a turn or more and come up to it again.");
    expect(told).toContain("Unlock the spindle to move, lock it before every cut.");
  });
});

describe("unequal spaces without an index plate", () => {
  const bare = { id: "bare", name: "a plate on the spindle alone", wormRatio: "90", directPlates: [{ name: "nose", holes: 24 }] };

  it("are set by the dial, each reading worked by hand: 90:1 is 4° a turn", async () => {
    const steps = ["58.001", "62", "59", "61", "60"];
    const asked = sums(steps);
    const text = await words(steps.join(","), "--head", "ratio-90-dial");
    const rows = rowsOf(text);
    expect(rows).toHaveLength(6);
    for (const [index, { dial = "", "off by": off = "", angle = "" }] of rows.entries()) {
      const [, turns, reading = ""] = /^(\d+) t \+ (.*)$/.exec(dial) ?? [];
      const shown = Number(turns) * 14_400 + seconds(reading);
      // It shows every 10″.
      expect(shown).toBe(Math.round((asked[index] ?? 0) / 10) * 10);
      expect(shown - (asked[index] ?? 0)).toBeCloseTo(signed(off), 1);
      expect(seconds(angle)).toBeCloseTo(asked[index] ?? Number.NaN, 1);
    }
    expect(text).not.toMatch(/\bhole|\bcrank|\bPlate/);
    expect(text.replace(/\s+/g, " ")).toContain("Turn the handwheel one way only. Past the mark: go back");
  });

  it("are set by the ring where that is all there is", async () => {
    const head = headFile({ ...bare, ring: { marksPerTurn: 720, figures: "angle" } });
    const text = await words("58.3,62", "--head", head);
    // To the half degree: 58.3° is 12′ before 58° 30′, and so is 120.3° past 120° 30′.
    expect(text).toContain("By the ring      no place over 12.0′ off, each from one zero");
    expect(rowsOf(text).map(({ "off by": off }) => off)).toEqual(["0", "+12.0′", "+12.0′"]);
    expect(await words("58.5,62", "--head", head)).toContain("By the ring      every place is on a mark");
  });

  it("say nothing of errors where there is no scale either", async () => {
    const { spacing } = await json("58,62", "--head", headFile({ ...bare, ring: null }));
    expect(spacing).toMatchObject({ circle: null, exact: false, worstArcSeconds: null });
    for (const place of spacing.places) expect(place).toMatchObject({ turns: null, hole: null, from: null, dial: null });
  });
});

it("no angle is no question", async () => {
  await expect(said(["spacing", ""])).rejects.toThrow(/no angles were given; list those from each place to the next/);
  await expect(said(["spacing", "58,,60"])).rejects.toThrow();
});

describe("unequal spaces proposed", () => {
  it("are told with their setting, and in what they differ", async () => {
    const text = (await words("--propose", "6", "--uneven", "3°")).replace(/\s+/g, " ");
    expect(text).toContain("6 PLACES, UNEQUAL SPACES");
    expect(text).toContain("and once more: every flute has another opposite");
    expect(text).toContain("No two of the half are alike; they come to one turn exactly.");
    expect(text).toContain("every place is on a hole");
  });

  it("without pairs are so many, all different where there is room", async () => {
    const { proposed, spacing } = await json("--propose", "6", "--unpaired");
    expect([proposed.angles.length, new Set(proposed.angles).size, spacing.exact]).toEqual([6, 6, true]);
    expect(await words("--propose", "7")).toContain("No two are alike");
    const some = await words("--propose", "20", "--uneven", "0.4°");
    expect(some.replace(/\s+/g, " ")).toContain("No two neighbours are alike");
  });

  it.each([
    [["58,62", "--propose", "6"], "--propose: is given beside angles"],
    [["--propose", "six"], "--propose: "],
    [["--propose", "6", "--uneven", "0.01°"], "--uneven: no circle of this head has 6 spaces within 0° 00′ 36.0″ of even ones"],
    [["--propose", "6", "--uneven", "x"], "x"],
    [["58,62", "--uneven", "1°"], "--uneven: has no effect without --propose"],
    [["--propose", "6", "--head", "ratio-90-dial"], "--head: it has no index plate"],
  ])("refuses %j", async (asked, why) => {
    await expect(said(["spacing", ...asked])).rejects.toThrow(why);
  });
});
