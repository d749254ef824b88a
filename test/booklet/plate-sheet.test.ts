import { describe, expect, it } from "vitest";
import { type PaperName, plateSheetPdf } from "../../booklet/index.ts";
import { type DrilledPlate, type DrillOptions, drillPlate, type Head, revolutions } from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { bare, geared, ungeared, withNose } from "./followed-job.ts";
import { longNamed } from "./heads.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { readSheet, said } from "./printed-sheet.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { wayOn } from "./sheet-setting.ts";

function drilled(head: Head, holes: number, options: DrillOptions): DrilledPlate {
  const plate = drillPlate(head, holes, options);
  return plate.planned ? plate : expect.fail("it cannot be made");
}

async function linesOfSheet(plate: DrilledPlate, head: Head, inches = false, paper: PaperName = "a4") {
  return (await piecesOf(await plateSheetPdf({ plate, head, inches, paper }))).flatMap(linesOf);
}

describe("the sheet of an index plate, followed by hand from the print alone", () => {
  it.each([
    ["24 holes by simple indexing", geared, 24, {}],
    ["59 holes with gears on a plate of a long name", longNamed, 59, {}],
    ["97 holes by a near compound move", ungeared, 97, {}],
    ["61 holes by the nearest holes", ungeared, 61, { by: "nearest-hole" }],
    ["53 holes by the dial of a bare table", bare, 53, {}],
    ["24 holes by the direct plate", withNose, 24, {}],
    [
      "50 holes from a hole and an angle, the figures falling",
      geared,
      50,
      { startHole: 2, startAngle: revolutions(1, 4), side: "minus" },
    ],
  ] as const)("%s", async (_, head, holes, options) => {
    const paper = holes === 24 ? "half-letter" : "a4";
    const plate = drilled(head, holes, { diameter: 90, ...options });
    const sheet = await readSheet(await plateSheetPdf({ plate, head, inches: false, paper }), "drill");
    expect(sheet.places).toHaveLength(holes);
    const step = revolutions(1, holes);
    const printedHead = headAsPrinted(sheet.lines, head);
    const bench = {
      head: printedHead,
      step: turnsOf(step),
      startTooth: 0,
      startHole: "startHole" in options ? options.startHole : 0,
      startAngle: turnsOf("startAngle" in options ? options.startAngle : "0"),
      side: "side" in options ? options.side : ("plus" as const),
      made: 0,
      key: "drill" as const,
    };
    expect(wrongOn(sheet, wayOn(sheet, printedHead, { spindlePerMove: step }), bench)).toEqual([]);
  });
});

describe("what else the sheet says", () => {
  it("starts at hole 0, ends each place with the drill, and checks by the numbers of the new plate", async () => {
    const sheet = await readSheet(
      await plateSheetPdf({ plate: drilled(geared, 24, { diameter: 90 }), head: geared, inches: false }),
      "drill",
    );
    expect(said(sheet, "Start")).toContain("At hole 0 of the new plate: pin in hole 0");
    expect(said(sheet, "Each hole")).toContain("lock, drill.");
    expect(said(sheet, "Half")).toContain("After 12 moves in all, new hole 12");
    expect(said(sheet, "Off by")).toContain("Nothing: every hole is set exactly");
  });

  it("warns of what is near, and says what that is at the spindle", async () => {
    const lines = (await linesOfSheet(drilled(ungeared, 97, { diameter: 120 }), ungeared)).join("\n");
    expect(lines).toContain("Not exact: no hole over 0.0047 mm along its circle (15.9″ of the plate).");
    expect(lines).toContain("At the spindle|0.4″ on a worm ratio of 40:1");
    expect(lines).toContain("0 to 24: 84.163");
  });

  it("says where the circle is too large for its paper, and names no file that there is not", async () => {
    const lines = (await linesOfSheet(drilled(geared, 24, { diameter: 400 }), geared)).join(" ");
    expect(lines).toMatch(/At true size this face is drawn \d+ mm wide, too large for this paper: take a larger one\./);
  });

  it("has the coordinates of each hole where it is made by them, in the unit of the person", async () => {
    const plate = drilled(geared, 12, { diameter: 114.3, by: "coordinates", step: 0.0127 });
    const lines = await linesOfSheet(plate, geared, true);
    expect(lines).toContain("Coordinates in inches on a radius of 2.2500, from the centre; x to the right, y up:");
    expect(
      lines.filter((line) => /^\d+\|(−?[\d.]+\|){2}[+−]?[\d.]+/.test(line)).map((line) => line.split("|").slice(0, 3))[1],
    ).toEqual(["1", "1.9485", "1.1250"]);
    expect(lines.join("\n")).toContain("0 to 1: 1.1647");
  });
});
