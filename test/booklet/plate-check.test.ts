import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { shaftsOf } from "../../booklet/layout/train-shafts.ts";
import { defineHead, type Head, indexTable, readyHeads } from "../../src/index.ts";
import { readBack } from "./read-back.ts";
import { linesOf, openPdf } from "./read-pdf.ts";

const measured = defineHead({
  name: "Measured plates",
  wormRatio: 40,
  plates: [
    { name: "1", circles: [20, 15, 18], diameters: [104.5, 62, 87.5] },
    { name: "2", circles: [7, 24] },
  ],
});

/** The rows of the part as they are printed: circle, diameter, and holes with the chord between them. */
async function rowsOf(head: Head, options: { inches?: boolean } = {}) {
  const pages = await readBack(head, { parts: ["chords"], to: 4, ...options });
  return pages.slice(1).flatMap((page) =>
    linesOf(page).flatMap((line) => {
      const cells = line.split("|").map((cell) => cell.trim());
      const [, circle, known, from, chord, quarterAt, quarter, halfAt, half] =
        /^(\d+)\|(?:([\d.]+)\|)?(0 to 1, \d+ to 0)\|([\d.]+)\|(0 to \d+|–)\|([\d.]+|–)\|(0 to \d+|–)\|([\d.]+|–)$/.exec(
          cells.join("|"),
        ) ?? [];
      return circle === undefined ? [] : [{ circle: Number(circle), known, from, chord, quarterAt, quarter, halfAt, half }];
    }),
  );
}

/** What stands for a chord over so many spaces, by plain trigonometry. */
function chordOf(circle: number, spaces: number, diameter: number, places: number): string {
  return spaces < 2 && spaces !== 1 ? "–" : (diameter * Math.sin((Math.PI * spaces) / circle)).toFixed(places);
}

describe("the chords to check plates by, read back from the page", () => {
  it("are in mm where the head states diameters, else in diameters of the circle", async () => {
    const diameters: Readonly<Record<number, number>> = { 15: 62, 18: 87.5, 20: 104.5 };
    const rows = await rowsOf(measured);
    expect(rows.map(({ circle }) => circle)).toEqual([15, 18, 20, 7, 24]);
    for (const { circle, known, from, chord, quarterAt, quarter, halfAt, half } of rows) {
      const diameter = diameters[circle];
      expect(known).toBe(diameter?.toFixed(2));
      expect(from).toBe(`0 to 1, ${circle - 1} to 0`);
      const places = diameter === undefined ? 5 : 2;
      expect(chord).toBe(chordOf(circle, 1, diameter ?? 1, places));
      const [q, h] = [Math.floor(circle / 4), Math.floor(circle / 2)];
      expect([quarterAt, quarter]).toEqual(q < 2 ? ["–", "–"] : [`0 to ${q}`, chordOf(circle, q, diameter ?? 1, places)]);
      expect([halfAt, half]).toEqual([`0 to ${h}`, chordOf(circle, h, diameter ?? 1, places)]);
    }
  });

  it("and in inches where they are asked for", async () => {
    const [first] = await rowsOf(measured, { inches: true });
    expect([first?.known, first?.chord]).toEqual([(62 / 25.4).toFixed(4), chordOf(15, 1, 62 / 25.4, 4)]);
  });

  it("every circle of every ready head has its row", async () => {
    for (const head of readyHeads.filter(({ plates }) => plates.length > 0))
      expect((await rowsOf(head)).map(({ circle }) => circle)).toEqual(
        head.plates.flatMap(({ faces }) => faces.flatMap(({ circles }) => circles)),
      );
  });
});

describe("a plate at true size", () => {
  const scaling = async (head: Head) => {
    const document = await openPdf(await bookletPdf(head, { parts: ["chords"], to: 4 }));
    const preferences = (await document.getViewerPreferences()) as { PrintScaling?: string } | null;
    await document.destroy();
    return preferences?.PrintScaling;
  };

  it("asks the printer to leave the size as it is, and a book without one does not", async () => {
    expect([await scaling(measured), await scaling(readyHeads[0] as Head)]).toEqual(["None", undefined]);
  });

  it("is printed where the paper holds it; else it is said where it can be had", async () => {
    const large = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 16], diameters: [250, 260] }] });
    const words = async (head: Head, paper: "a4" | "a5") =>
      (await readBack(head, { parts: ["chords"], to: 4, paper })).flatMap(linesOf).join(" ");
    expect(await words(measured, "a4")).toMatch(/50 mm.*2 in.*Plate 1 at true size/);
    expect(await words(measured, "a5")).toMatch(/50 mm.*2 in.*Plate 1 at true size/);
    expect(await words(large, "a4")).toMatch(/At true size this face is drawn \d+ mm wide, too large for this paper/);
    expect(await words(large, "a4")).not.toContain("50 mm");
  });
});

describe("trains from the side", () => {
  it("wheels that mesh stand in one plane as far apart as their teeth need, and a stud carries one in each", () => {
    const trains = readyHeads.flatMap((head) =>
      indexTable(head, { from: 2, to: 400, methods: ["differential"] }).flatMap(({ setting }) =>
        setting?.method === "differential" ? [setting.gears] : [],
      ),
    );
    expect(trains.length).toBeGreaterThan(100);
    for (const { drivers, driven, idlers } of trains) {
      const shafts = shaftsOf({ type: "train", drivers, driven, idlers });
      expect(shafts.flatMap(({ wheels }) => wheels).length).toBe(drivers.length + driven.length + idlers);
      for (const [index, shaft] of shafts.entries()) {
        const [before, first] = [shafts[index - 1]?.wheels.at(-1), shaft.wheels[0]];
        if (before) {
          expect(first?.plane).toBe(before.plane);
          expect(shaft.at - (shafts[index - 1]?.at ?? 0)).toBe((before.teeth + (first?.teeth ?? 0)) / 2);
        }
        expect(new Set(shaft.wheels.map(({ plane }) => plane)).size).toBe(shaft.name === "stud" ? 2 : 1);
      }
    }
  });
});
