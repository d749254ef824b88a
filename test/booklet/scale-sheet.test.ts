import { describe, expect, it } from "vitest";
import { scaleSheetPdf } from "../../booklet/index.ts";
import {
  type GraduatedRound,
  type GraduateOptions,
  graduate,
  type Head,
  type Revolutions,
  type RoundScale,
} from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { bare, geared, ungeared } from "./followed-job.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { readSheet, said } from "./printed-sheet.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { wayOn } from "./sheet-setting.ts";

function round(head: Head, scale: RoundScale, options?: GraduateOptions): GraduatedRound {
  const made = graduate(head, scale, options);
  return made.planned ? made : expect.fail("it cannot be cut");
}

describe("the sheet of a scale, followed by hand from the print alone", () => {
  it.each([
    ["a dial of 100 lines", geared, { divisions: 100 }, "1/100"],
    ["a vernier of 12 over 11, with gears", geared, { divisions: 360, vernier: { spaces: 12 }, perLine: 5 }, "11/4320"],
    ["a sector of 97, near", ungeared, { divisions: 97, spaces: 30 }, "1/97"],
    ["a dial of 53 by that of a bare table", bare, { divisions: 53 }, "1/53"],
  ] as const)("%s", async (_, head, scale, step) => {
    const made = round(head, scale);
    const sheet = await readSheet(await scaleSheetPdf({ scale: made, head, inches: false }), "line");
    expect(sheet.places).toHaveLength(made.lines.length);
    const printedHead = headAsPrinted(sheet.lines, head);
    const way = wayOn(sheet, printedHead, { spindlePerMove: step as Revolutions });
    expect(
      wrongOn(sheet, way, {
        head: printedHead,
        step: turnsOf(step),
        startTooth: 0,
        startHole: 0,
        startAngle: turnsOf("0"),
        side: "plus",
        made: 0,
        key: "line",
      }),
    ).toEqual([]);
    const figures = made.lines.flatMap(({ figure }) => figure ?? []);
    expect(sheet.places.flatMap((place) => place.figure ?? [])).toEqual(figures);
  });
});

describe("what else the sheet says", () => {
  it("says how long each line is, and how it is drawn", async () => {
    const made = round(geared, { divisions: 20 });
    const sheet = await readSheet(await scaleSheetPdf({ scale: made, head: geared, inches: false }), "line");
    const lengths = sheet.lines.flatMap((line) => line.match(/(?<=\|)(?:long|medium|short)(?=\|)/g) ?? []);
    expect(lengths.sort()).toEqual(made.lines.map(({ length }) => length).sort());
    expect(said(sheet, "Each line")).toContain("Set it, lock, and draw the tool to the stop of its length");
    expect(said(sheet, "Half")).toContain("After 10 moves in all, line 10");
  });

  it("of a rule by the screw's dial names no head, and warns of what is near", async () => {
    const scale = graduate({ lead: "127/25", marks: 125 }, { space: "127/200", spaces: 40, perLine: "0.025" });
    const lines = (await piecesOf(await scaleSheetPdf({ scale, head: geared, inches: true }))).flatMap(linesOf);
    const all = lines.join("\n");
    expect(all).toContain("Not exact: no line over 0.00080 in from its place, each by itself from the first.");
    expect(all).toContain("0.2000 in");
    expect(all).not.toContain("40 : 1");
    expect(all).toContain("10|long|0.25|0 + 15|1|31|0.2500|−0.00040");
  });

  it("of a rule by a head geared to the screw names its circle", async () => {
    const scale = graduate({ lead: 4, head: geared }, { space: "1/4", spaces: 4 });
    const lines = (await piecesOf(await scaleSheetPdf({ scale, head: geared, inches: false }))).flatMap(linesOf);
    expect(lines.join("\n")).toContain("circle of 16 holes");
    expect(lines.join("\n")).toContain("40 : 1");
  });

  it("is refused where it would have too many lines", async () => {
    const scale = graduate({ lead: 5, marks: 100 }, { space: 1, spaces: 1000 });
    await expect(scaleSheetPdf({ scale, head: geared, inches: false })).rejects.toThrow("1001 lines are too many for a sheet");
  });
});
