import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatsBookOf } from "../../booklet/content/flats-sheet.ts";
import { type FlatsSheet, flatsSheetPdf, type PaperName } from "../../booklet/index.ts";
import { flattened, type Page } from "../../booklet/layout/marks.ts";
import { mm } from "../../booklet/layout/paper.ts";
import { paperNamed, paperNames } from "../../booklet/layout/papers.ts";
import { type FlatsSpec, flats, type Head, type PlannedJob, type PlanOptions, planJob, revolutions } from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { ready } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";
import { bare, geared, ungeared } from "./followed-job.ts";
import { longNamed } from "./heads.ts";
import { faultsIn } from "./page-faults.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { readSheet, said } from "./printed-sheet.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { scaleOn } from "./scale-on-page.ts";
import { edition, pagesOn } from "./set-pages.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { wayOn } from "./sheet-setting.ts";

function planned(head: Head, divisions: number, options?: PlanOptions): PlannedJob {
  const plan = planJob(head, { divisions }, options);
  return plan.planned ? plan : expect.fail("it cannot be done");
}

function sheetOf(spec: FlatsSpec, head: Head | null, options?: PlanOptions): FlatsSheet {
  const on = head && { head, plan: planned(head, spec.sides, options) };
  return { flats: flats(spec), on, inches: false };
}

function setOn(paper: PaperName, sheet: FlatsSheet): readonly Page[] {
  return pagesOn(paperNamed(paper), flatsBookOf(sheet, edition));
}

async function pagesOf(sheet: FlatsSheet, paper: PaperName = "a4") {
  return (await piecesOf(await flatsSheetPdf({ ...sheet, paper }))).map(linesOf);
}

describe("the sheet of flats, followed by hand from the print alone", () => {
  it.each([
    ["a hexagon by simple indexing", geared, 6, {}],
    ["59 flats with gears on a plate of a long name", longNamed, 59, {}],
    ["53 by a near compound move", ungeared, 53, {}],
    ["7 by the dial of a bare table", bare, 7, {}],
    ["an octagon in whole turns", geared, 8, {}],
    ["61 by the nearest holes", ungeared, 61, { by: "nearest-hole" }],
  ] as const)("%s", async (_, head, sides, options) => {
    const sheet = await readSheet(await flatsSheetPdf(sheetOf({ sides, acrossFlats: 30 }, head, options)), "flat");
    expect(sheet.places.map(({ flat }) => Number(flat)).sort((a, b) => a - b)).toEqual(
      Array.from({ length: sides }, (_, index) => index + 1),
    );
    const step = revolutions(1, sides);
    const printedHead = headAsPrinted(sheet.lines, head);
    const bench = {
      head: printedHead,
      step: turnsOf(step),
      startTooth: 1,
      startHole: 0,
      startAngle: turnsOf("0"),
      side: "plus",
      made: 0,
      key: "flat",
    } as const;
    expect(wrongOn(sheet, wayOn(sheet, printedHead, { spindlePerMove: step }), bench)).toEqual([]);
    expect(said(sheet, "Start")).toMatch(/^At flat 1/);
  });
});

/** The measures by the corner of the work, worked out from its outline: half of the angle of a flat, and what stands over it. */
function measuresOf({ sides, acrossFlats, blank }: { sides: number; acrossFlats: number; blank: number }) {
  const half = Math.min(Math.acos(acrossFlats / blank), Math.PI / sides);
  const corner = acrossFlats / 2 / Math.cos(half);
  return {
    depth: blank / 2 - acrossFlats / 2,
    flatWidth: 2 * corner * Math.sin(half),
    toRound: acrossFlats / 2 + blank / 2,
    opposite: acrossFlats / 2 + (sides % 2 === 0 ? acrossFlats / 2 : corner),
  };
}

describe("the measures on it", () => {
  it.each([
    [4, 20, 25],
    [6, 17, 22],
    [2, 22, 25],
    [7, 15, 25.4],
    [3, 10, 18],
    [40, 80, 81],
  ])("%i flats of %d on %d stand in figures, on the drawing and beside room to write", async (sides, acrossFlats, blank) => {
    const [page = []] = await pagesOf(sheetOf({ sides, acrossFlats, blank }, geared));
    const { depth, flatWidth, toRound, opposite } = measuresOf({ sides, acrossFlats, blank });
    const shown = (length: number) => length.toFixed(3);
    const even = sides % 2 === 0;
    const figures = page[page.findIndex((line) => line.startsWith("BLANK|")) + 1];
    expect(figures).toBe([shown(blank), shown(depth), shown(even ? acrossFlats : acrossFlats / 2), sides].join("|"));
    const all = (await pagesOf(sheetOf({ sides, acrossFlats, blank }, geared))).flat().flatMap((line) => line.split("|"));
    // On the drawing besides the large figures.
    for (const length of [blank, depth, flatWidth, toRound, opposite]) expect(all).toContain(shown(length));
    expect(all).toContain(`1 to round: ${shown(toRound)}`);
    expect(all).toContain(even ? `1 to ${1 + sides / 2}: ${shown(opposite)}` : `1 to corner: ${shown(opposite)}`);
  });

  it("of what is worked in inches stand in inches alone", async () => {
    const sheet = { ...sheetOf({ sides: 6, blank: 25.4 }, geared), inches: true };
    const text = (await pagesOf(sheet)).flat().join("\n");
    expect(text).toContain("1.0000|0.0670|0.8660|6");
    expect(text).not.toMatch(/\bmm\b/);
  });
});

describe("one page", () => {
  const usual = [2, 3, 4, 6, 8];

  it.each(["ratio-40-plates-15-49", "ratio-90-dial", "ratio-60-table-15-49"])("holds the usual flats on %s", (id) => {
    for (const paper of ["a4", "letter"] as const)
      for (const sides of usual)
        expect(setOn(paper, sheetOf({ sides, acrossFlats: 30, blank: 36 }, ready(id))), `${sides}`).toHaveLength(1);
  });
});

/** The outline of the work as it is drawn: the corners of its flats in mm from the middle of the blank, y up. */
function outlineOn(page: Page) {
  const shapes = [...flattened(page.marks)].filter((mark) => mark.kind === "shape");
  const blank = shapes.find(({ fill }) => fill === 0.86) ?? expect.fail("no blank is drawn");
  const work = shapes[shapes.indexOf(blank) + 1] ?? expect.fail("no work is drawn");
  const [left, top, right, bottom] = blank.box;
  const size = mm(scaleOn(page));
  const corners = [...work.path.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => ({
    x: (Number(x) - (left + right) / 2) / size,
    y: ((top + bottom) / 2 - Number(y)) / size,
  }));
  // Its line is half a point wide.
  return { blank: (right - left - 0.5) / size, corners };
}

describe("the drawing", () => {
  const specs = fc.record({
    sides: fc.integer({ min: 2, max: 24 }),
    acrossFlats: fc.integer({ min: 2, max: 900 }),
    more: fc.integer({ min: 1, max: 50 }),
  });

  it("has every flat in its place and as wide as it is, in the scale that it names", () => {
    fc.assert(
      fc.property(specs, ({ sides, acrossFlats, more }) => {
        const blank = acrossFlats * (1 + more / 100);
        const [page = expect.fail("no page")] = setOn("a4", sheetOf({ sides, acrossFlats, blank }, null));
        const drawn = outlineOn(page);
        const { flatWidth } = measuresOf({ sides, acrossFlats, blank });
        expect(Math.abs(drawn.blank / blank - 1)).toBeLessThan(1e-4);
        // The first corner, then one for each end of a flat.
        const ends = drawn.corners;
        expect(ends).toHaveLength(sides + 1);
        const [from = { x: 0, y: 0 }, to = { x: 0, y: 0 }] = ends;
        expect(Math.abs(to.x - from.x - flatWidth)).toBeLessThan(blank / 500);
        for (const { y } of [from, to]) expect(Math.abs(y - acrossFlats / 2)).toBeLessThan(blank / 500);
        // Each flat ends a turn over their number on, clockwise.
        for (const [index, { x, y }] of ends.slice(1).entries()) {
          const turn = (2 * Math.PI * index) / sides;
          const [wantedX, wantedY] = [
            to.x * Math.cos(turn) + to.y * Math.sin(turn),
            to.y * Math.cos(turn) - to.x * Math.sin(turn),
          ];
          expect(Math.hypot(x - wantedX, y - wantedY)).toBeLessThan(blank / 500);
        }
      }),
      runs(20),
    );
  });

  it("lies within the margins and over nothing else, on any paper", () => {
    fc.assert(
      fc.property(specs, fc.constantFrom(...paperNames), fc.boolean(), ({ sides, acrossFlats, more }, paper, inches) => {
        const sheet = sheetOf({ sides, acrossFlats, blank: acrossFlats * (1 + more / 100) }, null);
        expect(faultsIn(setOn(paper, { ...sheet, inches }), paperNamed(paper))).toEqual([]);
      }),
      runs(20),
    );
  });
});

describe("without a head", () => {
  it("every flat is set by its degrees, with the cautions that a head's plan would give", async () => {
    const text = (await pagesOf(sheetOf({ sides: 7, acrossFlats: 30 }, null))).flat();
    const rows = text.join("|").match(/(?<=\|)\d+\|(?:≈ )?\d+° \d\d′ \d\d\.\d″/g) ?? [];
    expect(rows).toHaveLength(7);
    for (const row of rows) {
      const [, flat, degrees, minutes, seconds] = /^(\d+)\|(?:≈ )?(\d+)° (\d\d)′ (.+)″$/.exec(row) ?? [];
      const angle = Number(degrees) + Number(minutes) / 60 + Number(seconds) / 3600;
      expect(Math.abs(angle - ((Number(flat) - 1) * 360) / 7) * 3600).toBeLessThanOrEqual(0.05001);
    }
    expect(text.join("\n")).toContain("No hand near the cutter until it stands.");
    expect(text.join("\n")).not.toContain("40 : 1");
  });
});

describe("what is not exact", () => {
  it("is said before any row, of flats and not of teeth", async () => {
    const [page = []] = await pagesOf(sheetOf({ sides: 7, acrossFlats: 30 }, ready("ratio-90-dial")));
    expect(page.join("\n")).toContain("Not exact: no flat over 4.3″ off.");
    expect(page.join("\n")).toContain("NOT EXACT");
    const [ring = []] = await pagesOf(sheetOf({ sides: 6, acrossFlats: 30 }, ready("ratio-90-dial"), { by: "ring" }));
    expect(ring.join("\n")).toMatch(/Not exact: .*read/);
  });

  it("of a plan for another count nothing is printed", async () => {
    const sheet = { ...sheetOf({ sides: 6, acrossFlats: 30 }, null), on: { head: geared, plan: planned(geared, 8) } };
    await expect(flatsSheetPdf(sheet)).rejects.toThrow("is of 8 divisions, but there are 6 flats; plan the head for 6 divisions");
  });
});
