import { describe, expect, it } from "vitest";
import { jobSheetPdf } from "../../booklet/index.ts";
import { defineHead, fromExact, type Head, indexDivisions, parseAngle, readyHeads } from "../../src/index.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";

const [geared, ungeared] = readyHeads as readonly [Head, Head];
const dialOnly = readyHeads.find(({ id }) => id === "ratio-60-dial") as Head;

async function linesOfSheet(head: Head, divisions: number, teeth?: readonly number[]): Promise<readonly string[]> {
  return (await piecesOf(await jobSheetPdf(head, { divisions, ...(teeth ? { teeth } : {}) }))).flatMap(linesOf);
}

/** Rows of tables that stand side by side, each by itself. */
function rowsIn(lines: readonly string[], pattern: RegExp): RegExpMatchArray[] {
  return lines.flatMap((line) => [...line.replaceAll("|", " ").matchAll(pattern)]);
}

/** The crank's place after a number of moves, worked out here with whole numbers alone. */
function placeAfter(moves: number, { turns, spaces, circle }: { turns: number; spaces: number; circle: number | null }) {
  const holes = moves * (turns * (circle ?? 1) + spaces);
  return { turns: Math.floor(holes / (circle ?? 1)), hole: holes % (circle ?? 1) };
}

describe("a job sheet, read back", () => {
  it.each([
    ["13 divisions without gears", geared, 13],
    ["127 divisions with gears", geared, 127],
  ] as const)("%s: every position is there, with the hole the crank comes to", async (_, head, divisions) => {
    const [setting] = indexDivisions(head, divisions, { limit: 1 }).settings;
    if (!setting) throw new Error("there is a setting");
    const rows = rowsIn(await linesOfSheet(head, divisions), /(?<= |^)(\d+) (\d+) (\d+) (?:≈ )?(\d+° \d\d′ \d\d″) (\d+)°/g);
    const read = rows.map(([, tooth, turns, hole, angle, ring]) => ({
      tooth: Number(tooth),
      turns: Number(turns),
      hole: Number(hole),
      angle,
      ring: Number(ring),
    }));
    expect(read.map(({ tooth }) => tooth).sort((a, b) => a - b)).toEqual(
      Array.from({ length: divisions }, (_, index) => index + 1),
    );
    for (const { tooth, turns, hole, angle, ring } of read) {
      expect({ turns, hole }).toEqual(placeAfter(tooth - 1, setting));
      const exact = ((tooth - 1) * 360) / divisions;
      expect(Math.abs(ring - exact)).toBeLessThanOrEqual(0.5);
      if (tooth > 1) expect(fromExact(parseAngle(angle ?? "")).valueOf() * 360).toBeCloseTo(exact, 3);
    }
  });

  it("lists only the teeth asked for, with the moves between them", async () => {
    const rows = rowsIn(
      await linesOfSheet(geared, 62, [1, 17, 40]),
      /(?<= |^)(\d+) (\d+) (\d+) (\d+) (\d+) (?:≈ )?\d+° \d\d′ \d\d″/g,
    );
    expect(rows.map(([, tooth, moves]) => [Number(tooth), Number(moves)])).toEqual([
      [1, 0],
      [17, 16],
      [40, 23],
    ]);
    const [setting] = indexDivisions(geared, 62, { limit: 1 }).settings;
    if (!setting) throw new Error("there is a setting");
    for (const [, , moves, turns, spaces] of rows) {
      const { turns: whole, hole } = placeAfter(Number(moves), setting);
      expect([Number(turns), Number(spaces)]).toEqual([whole, hole]);
    }
  });

  it("says both moves of a compound setting", async () => {
    const text = (await linesOfSheet(ungeared, 51)).join("\n");
    const [setting] = indexDivisions(ungeared, 51, { limit: 1 }).settings;
    expect(text).toContain("Two moves for each division");
    expect(text).toContain(`${setting?.second?.spaces} spaces on the ${setting?.second?.circle} circle at the rear pin`);
  });

  it("says for a geared setting what comes of it without the gears", async () => {
    expect((await linesOfSheet(geared, 127)).join(" ")).toContain("Without the gears this move gives 120");
  });

  it("reads every position of an impossible count from one zero, and says how far it may be off", async () => {
    const lines = await linesOfSheet(dialOnly, 127);
    expect(lines.join(" ")).toMatch(/no position is more than [\d.]+″ from its place/);
    const rows = rowsIn(lines, /(?<= |^)(\d+) (?:≈ )?\d+° \d\d′ \d\d″ (\d+) (\d+)° (\d\d)′ (\d\d)″ (\d+)° ([+−]?)([\d.]+)″/g);
    expect(rows).toHaveLength(127);
    for (const [, tooth, turns, degrees, minutes, seconds, , sign, error] of rows) {
      const read = Number(turns) * 6 * 3600 + Number(degrees) * 3600 + Number(minutes) * 60 + Number(seconds);
      const off = read - ((Number(tooth) - 1) * 1_296_000) / 127;
      expect(off).toBeCloseTo((sign === "−" ? -1 : 1) * Number(error), 1 - 0.5);
      expect(Math.abs(off)).toBeLessThanOrEqual(5);
    }
  });

  it("refuses a job that can be neither done nor read, and one too long for a sheet", async () => {
    const bare = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15] }] });
    await expect(jobSheetPdf(bare, { divisions: 127 })).rejects.toThrow(/neither ring nor dial/);
    await expect(jobSheetPdf(geared, { divisions: 2000 })).rejects.toThrow(/too many for a job sheet/);
    await expect(jobSheetPdf(geared, { divisions: 62, teeth: [63] })).rejects.toThrow(/63/);
  });
});
