import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boltCircleBookOf } from "../../booklet/content/bolt-circle-sheet.ts";
import { type BoltCircleSheet, boltCircleSheetPdf, type PaperName } from "../../booklet/index.ts";
import { flattened, type Page } from "../../booklet/layout/marks.ts";
import { mm } from "../../booklet/layout/paper.ts";
import { paperNamed, paperNames } from "../../booklet/layout/papers.ts";
import { revolutions } from "../../src/index.ts";
import { runs } from "../support/sweep.ts";
import { faultsIn } from "./page-faults.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { scaleOn } from "./scale-on-page.ts";
import { edition, pagesOn } from "./set-pages.ts";

function setOn(paper: PaperName, sheet: BoltCircleSheet): readonly Page[] {
  return pagesOn(paperNamed(paper), boltCircleBookOf(sheet, edition));
}

async function pagesOf(sheet: BoltCircleSheet, paper: PaperName = "a4") {
  return (await piecesOf(await boltCircleSheetPdf({ ...sheet, paper }))).map(linesOf);
}

interface PrintedHole {
  readonly hole: number;
  readonly centre: readonly [number, number];
  readonly zero: readonly [number, number];
}

/** Every row of the table of holes: its number and four figures. */
function holesOn(lines: readonly string[]): readonly PrintedHole[] {
  const rows = lines.flatMap((line) => line.match(/(?<=^|\|)\d+(?:\|−?\d+\.\d{3,4}){4}(?=\||$)/g) ?? []);
  const number = (text = "") => Number(text.replace("−", "-"));
  return rows
    .map((row) => {
      const [hole, x, y, fromX, fromY] = row.split("|");
      return { hole: number(hole), centre: [number(x), number(y)], zero: [number(fromX), number(fromY)] } as const;
    })
    .sort((one, other) => one.hole - other.hole);
}

const cases: readonly (readonly [string, BoltCircleSheet])[] = [
  ["six from the right", { holes: 6, diameter: 80, inches: false }],
  ["seven from the top, clockwise", { holes: 7, diameter: 80, startAngle: revolutions(1, 4), sense: "clockwise", inches: false }],
  ["40 from a corner", { holes: 40, diameter: 203.2, startAngle: revolutions(1, 16), centre: { x: 127, y: -10 }, inches: false }],
  ["five in inches", { holes: 5, diameter: 82.55, startAngle: revolutions(1, 10), inches: true }],
  ["one hole", { holes: 1, diameter: 50, inches: false }],
  ["two holes", { holes: 2, diameter: 50, inches: false }],
];

describe("the holes of a bolt circle as printed", () => {
  it.each(cases)("%s: each lies on its circle at its angle, from the centre and from zero", async (_, sheet) => {
    const { holes, diameter, sense, centre, inches } = sheet;
    const lines = (await pagesOf(sheet)).flat();
    const printed = holesOn(lines);
    expect(printed.map(({ hole }) => hole)).toEqual(Array.from({ length: holes }, (_, index) => index + 1));
    const unit = inches ? 25.4 : 1;
    const within = (inches ? 0.0000501 : 0.000501) * Math.SQRT2;
    const radius = diameter / 2 / unit;
    const start = { "1/4": 90, "1/16": 22.5, "1/10": 36 }[String(sheet.startAngle)] ?? 0;
    const zero = centre === undefined ? { x: radius, y: radius } : { x: centre.x / unit, y: centre.y / unit };
    for (const { hole, centre: at, zero: from } of printed) {
      // The length and the direction of what is printed, not another list of the same coordinates.
      expect(Math.abs(Math.hypot(...at) - radius), `hole ${hole}`).toBeLessThan(within);
      const degrees = start + ((sense === "clockwise" ? -1 : 1) * (hole - 1) * 360) / holes;
      const off = ((((Math.atan2(at[1], at[0]) * 180) / Math.PI - degrees + 540) % 360) + 360) % 360;
      expect(Math.abs(off - 180) * (Math.PI / 180) * radius, `hole ${hole}`).toBeLessThan(within);
      expect(Math.hypot(from[0] - at[0] - zero.x, from[1] - at[1] - zero.y), `hole ${hole}`).toBeLessThan(2 * within);
      if (centre === undefined) expect(Math.min(...from)).toBeGreaterThanOrEqual(0);
    }
  });

  it.each(cases)("%s: the chords are as far apart as the holes printed", async (_, sheet) => {
    const lines = (await pagesOf(sheet)).flat();
    const holes = new Map(holesOn(lines).map(({ hole, centre }) => [hole, centre]));
    const chords = lines.flatMap((line) => [...line.matchAll(/(?<=^|\|)(\d+) to (\d+): ([\d.]+)/g)]);
    expect(chords).toHaveLength(sheet.holes > 3 ? 4 : Math.max(0, sheet.holes - 1));
    for (const [, from, to, length] of chords) {
      const [one = [0, 0], other = [0, 0]] = [holes.get(Number(from)), holes.get(Number(to))];
      expect(Math.abs(Math.hypot(one[0] - other[0], one[1] - other[1]) - Number(length))).toBeLessThan(0.002);
    }
  });
});

/** The middles of what is drawn round: the circle itself first, then the holes; in mm from its middle, y up. */
function drawnOn(page: Page) {
  const round = [...flattened(page.marks)].flatMap((mark) => {
    if (mark.kind !== "shape" || !/^M[\d.-]+ [\d.-]+A/.test(mark.path) || !mark.path.endsWith("Z")) return [];
    const [left, top, right, bottom] = mark.box;
    return [{ x: (left + right) / 2, y: (top + bottom) / 2, across: right - left, black: mark.fill === 0 }];
  });
  const [circle = expect.fail("no circle is drawn"), ...holes] = round;
  const size = mm(scaleOn(page));
  return {
    across: circle.across / size,
    holes: holes.map(({ x, y, black }) => ({ x: (x - circle.x) / size, y: (circle.y - y) / size, black })),
  };
}

describe("the drawing", () => {
  it("has the circle and every hole in their place, in the scale that it names, the first black", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 2, max: 3000 }),
        fc.integer({ min: 0, max: 359 }),
        fc.constantFrom("clockwise", "counter-clockwise"),
        (holes, diameter, degrees, sense) => {
          const [page = expect.fail("no page")] = setOn("a4", {
            holes,
            diameter,
            startAngle: revolutions(degrees, 360),
            sense,
            inches: false,
          });
          const drawn = drawnOn(page);
          // The line is half a point wide.
          expect(Math.abs(drawn.across / diameter - 1)).toBeLessThan(0.02);
          expect(drawn.holes).toHaveLength(holes);
          for (const [index, { x, y, black }] of drawn.holes.entries()) {
            const angle = ((degrees + ((sense === "clockwise" ? -1 : 1) * 360 * index) / holes) * Math.PI) / 180;
            expect(Math.hypot(x - (diameter / 2) * Math.cos(angle), y - (diameter / 2) * Math.sin(angle))).toBeLessThan(
              diameter / 500,
            );
            expect(black).toBe(index === 0);
          }
        },
      ),
      runs(20),
    );
  });

  it("lies within the margins and over nothing else, on any paper", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...paperNames),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 0, max: 359 }),
        fc.boolean(),
        fc.boolean(),
        (paper, holes, diameter, degrees, clockwise, inches) => {
          const sense = clockwise ? "clockwise" : "counter-clockwise";
          const sheet = { holes, diameter, startAngle: revolutions(degrees, 360), sense, inches } as const;
          expect(faultsIn(setOn(paper, sheet), paperNamed(paper))).toEqual([]);
        },
      ),
      runs(20),
    );
  });
});

describe("what else the sheet says", () => {
  it("tells which way the holes follow, where the first lies, what zero is, and what to mind", async () => {
    const text = (await pagesOf({ holes: 7, diameter: 80, startAngle: revolutions(1, 4), sense: "clockwise", inches: false }))
      .flat()
      .join("\n")
      .replaceAll("left and\nbottom", "left and bottom");
    expect(text).toContain("HOLES|DIAMETER|HOLE 1 AT\n7|80.000|90°\nclockwise|mm, through the holes|from +x upwards");
    expect(text).toContain("from the left and bottom tangents of the circle, so that nothing is below 0");
    for (const said of ["Spot first|", "Clamp|", "One way|", "deburr both sides", "The machine's manual, local codes"])
      expect(text).toContain(said);
    const own = (await pagesOf({ holes: 4, diameter: 80, centre: { x: 75, y: 50 }, inches: false })).flat().join("\n");
    expect(own).toContain("the centre lies from it at x 75.000, y 50.000");
    expect(own).not.toContain("0, 0 is the zero");
  });

  it("draws every hole that has room with its number, the first always, and none twice", async () => {
    for (const holes of [1, 6, 24, 300]) {
      const [page = []] = await pagesOf({ holes, diameter: 300, inches: false });
      const drawn = page.slice(
        page.findIndex((line) => line.includes("+y")),
        page.findIndex((line) => line.startsWith("Hole 1 is black")),
      );
      const numbers = drawn
        .flatMap((line) => line.split("|"))
        .filter((text) => /^\d+$/.test(text))
        .map(Number);
      expect(numbers).toContain(1);
      expect(new Set(numbers).size).toBe(numbers.length);
      expect(Math.max(...numbers)).toBeLessThanOrEqual(holes);
      if (holes <= 6) expect(numbers).toHaveLength(holes);
    }
  });

  it("stands on one page where the holes are few", () => {
    for (const paper of ["a4", "letter"] as const)
      expect(setOn(paper, { holes: 12, diameter: 80, inches: false })).toHaveLength(1);
  });

  it("is refused where it would be too long, or is no circle", async () => {
    await expect(boltCircleSheetPdf({ holes: 1001, diameter: 80, inches: false })).rejects.toThrow(
      "1001 holes are too many for a sheet",
    );
    await expect(boltCircleSheetPdf({ holes: 6, diameter: -1, inches: false })).rejects.toThrow("is not a radius");
  });
});
