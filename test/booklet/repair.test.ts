import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { repairBookOf } from "../../booklet/content/repair-sheet.ts";
import { openPrintShop, type PrintShop } from "../../booklet/draw/print-shop.ts";
import { type PaperName, paperNames, type RepairSheet, repairSheetPdf } from "../../booklet/index.ts";
import { boxOf, flattened, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { setInPages } from "../../booklet/layout/pages.ts";
import { paperNamed } from "../../booklet/layout/paper.ts";
import {
  defineHead,
  fromExact,
  type Head,
  type RepairOnHead,
  type RepairOnHeadOptions,
  readyHeads,
  repairOnHead,
  type SetMove,
  type SpurGearSpec,
  spindleTurnsPerMove,
  spurGear,
} from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { headSpec } from "./heads.ts";
import { linesOf, openPdf, piecesOf } from "./read-pdf.ts";

const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const dialOnly = ready("ratio-90-dial");
const edition = { version: "0.0.0", digest: "000000000000" };

function sheetOf(head: Head, spec: SpurGearSpec, options: RepairOnHeadOptions): RepairSheet {
  return { job: repairOnHead(head, spurGear(spec), options), head, inches: spec.module === undefined, sawGiven: false };
}

async function linesOfSheet(sheet: RepairSheet, paper: PaperName = "a4"): Promise<readonly string[]> {
  return (await piecesOf(await repairSheetPdf({ ...sheet, paper }))).flatMap(linesOf);
}

/** Rows of the table of moves: space, what is done, flanks, and the rest as it stands. */
function rowsOf(lines: readonly string[]) {
  return lines.flatMap((line) => {
    const [, space, purpose, flanks, rest] = /^(\d+)\|(START|cut|PROVE)\|(\w+ \| \w+)\|(.*)$/.exec(line) ?? [];
    return space === undefined ? [] : [{ space: Number(space), purpose, flanks, cells: (rest ?? "").split("|") }];
  });
}

/** The circle of the crank's spaces, from the head of their column. */
function circleOf(lines: readonly string[]): number {
  return Number(lines.map((line) => /\|of (\d+)\|of \1\|/.exec(line)?.[1]).find((circle) => circle !== undefined));
}

/** How far the place of a space is from the start space, in parts of the gear. */
function partsOn(rows: readonly { space: number }[], teeth: number) {
  return (space: number) => (space - (rows[0]?.space ?? 0) + teeth) % teeth;
}

/** Turns of the spindle for all the moves so far, as the mechanism makes them. */
function turned(move: Omit<SetMove, "turns" | "spaces">, turns: number, spaces: number): number {
  if (turns + spaces === 0) return 0;
  return fromExact(spindleTurnsPerMove({ ...move, turns, spaces })).valueOf();
}

describe("the sheet of a repair, read back", () => {
  it("86 teeth by simple indexing: from what is printed alone, every move lands on its space", async () => {
    const lines = await linesOfSheet(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33] }));
    const rows = rowsOf(lines);
    expect(rows.map(({ space, purpose, flanks }) => [space, purpose, flanks])).toEqual([
      [29, "START", "sound | sound"],
      [30, "cut", "sound | new"],
      [31, "cut", "new | new"],
      [32, "cut", "new | new"],
      [33, "cut", "new | sound"],
      [34, "PROVE", "sound | sound"],
    ]);
    const circle = circleOf(lines);
    const on = partsOn(rows, 86);
    let [turns, spaces] = [0, 0];
    for (const { space, cells } of rows.slice(1)) {
      turns += Number(cells[0]);
      spaces += Number(cells[1]);
      expect(turned({ wormRatio: "40", circle }, turns, spaces)).toBeCloseTo(on(space) / 86, 12);
      expect(Number(cells[2])).toBe(spaces % circle);
      expect(Math.abs(Number.parseInt(cells[3] ?? "", 10) - (on(space) * 360) / 86)).toBeLessThanOrEqual(0.5);
    }
  });

  it("127 teeth with gears, two places of damage: the printed gears and moves land on every space", async () => {
    const lines = await linesOfSheet(sheetOf(geared, { teeth: 127, module: 1.25 }, { damaged: [5, 6, 90, 91] }));
    const text = lines.join(" ");
    const [, spindle, worm] = /spindle (\d+), no stud gears, worm shaft (\d+)/.exec(text) ?? [];
    const direction = /turns against the crank/.test(text) ? "against" : "with";
    const circle = circleOf(lines);
    const gears = { drivers: [Number(spindle)], driven: [Number(worm)], direction } as const;
    const rows = rowsOf(lines);
    const on = partsOn(rows, 127);
    expect(rows.map(({ space }) => space)).toEqual([88, 89, 90, 91, 4, 5, 6, 7]);
    let [turns, spaces] = [0, 0];
    for (const { space, cells } of rows.slice(1)) {
      turns += Number(cells[0]);
      spaces += Number(cells[1]);
      expect(turned({ wormRatio: "40", circle, gears }, turns, spaces)).toBeCloseTo(on(space) / 127, 12);
    }
  });

  it("97 teeth on an ungeared head: the compound move is off by what is printed beside it, and no more", async () => {
    const lines = await linesOfSheet(sheetOf(ungeared, { teeth: 97, module: 2 }, { damaged: [31, 32, 33] }));
    const text = lines.join(" ");
    const rear = Number(/(\d+) spaces on the (\d+) circle at the rear pin/.exec(text)?.[2]);
    const circle = ungeared.plates
      .flatMap(({ faces }) => faces.flatMap(({ circles }) => circles))
      .find((holes) => text.includes(`of ${holes}|of ${rear}`));
    const rows = rowsOf(lines);
    const on = partsOn(rows, 97);
    let crank = 0;
    for (const { space, cells } of rows.slice(1)) {
      const [turns = "", spaces = "", both = ""] = cells;
      const [, way, more] = /^(on|back) (\d+)$/.exec(both) ?? [];
      crank += Number(turns) + Number(spaces) / Number(circle) + ((way === "on" ? 1 : -1) * Number(more)) / rear;
      const off = (crank / 40 - on(space) / 97) * 1_296_000;
      const printed = Number((cells.at(-1) ?? "").replace("−", "-").replace("″", ""));
      expect(off).toBeCloseTo(printed, 1 - 0.3);
    }
    expect(text).toMatch(
      /Not exact: no space to be cut is off by over 0\.8″, 0\.0004 mm at the pitch circle\. Count from START only/,
    );
  });

  it("97 teeth by the dial of a bare table: every printed reading leaves the error printed beside it", async () => {
    const rows = rowsOf(await linesOfSheet(sheetOf(dialOnly, { teeth: 97, diametralPitch: 12 }, { damaged: [5, 6, 40] }), "a5"));
    const on = partsOn(rows, 97);
    expect(rows.map(({ space }) => space)).toEqual([3, 4, 5, 6, 39, 40, 41]);
    for (const { space, cells } of rows) {
      const [turns, reads = "", , error = ""] = cells;
      const [degrees = 0, minutes = 0, seconds = 0] = reads.match(/\d+/g)?.map(Number) ?? [];
      const set = Number(turns) * 4 * 3600 + degrees * 3600 + minutes * 60 + seconds;
      const off = set - (on(space) * 1_296_000) / 97;
      expect(off).toBeCloseTo(Number(error.replace("−", "-").replace("″", "")), 1 - 0.3);
      expect(Math.abs(off)).toBeLessThanOrEqual(5);
    }
  });

  it("has a box for every move, a blank for every measure, and the cautions", async () => {
    const lines = await linesOfSheet(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33], backlash: 0.2 }));
    const text = lines.join(" ");
    for (const label of ["tooth 31", "tooth 33", "22–31", "33–42", "space 30", "space 33"]) expect(text).toContain(label);
    expect(text).toContain("3.041 mm to 3.141 mm");
    for (const caution of [
      /zinc, cadmium/i,
      /does not agree on heat/,
      /slitting saw grabs/,
      /unlocked spindle/,
      /lifts, carries or guards people/,
      /local codes/,
    ])
      expect(text).toMatch(caution);
  });

  it("teeth lost in three places still end on two pages of a full sheet, notes and all", async () => {
    const sheet = sheetOf(geared, { teeth: 97, module: 2 }, { damaged: [12, 13, 14, 55, 56, 90], backlash: 0.15 });
    for (const paper of ["a4", "letter"] as const) {
      const document = await openPdf(await repairSheetPdf({ ...sheet, paper }));
      expect(document.numPages).toBe(2);
      await document.destroy();
    }
  });

  it("the same job gives the same bytes, on two pages of a full sheet", async () => {
    const sheet = sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33], backlash: 0.2 });
    const [first, second] = [await repairSheetPdf(sheet), await repairSheetPdf(sheet)];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    const document = await openPdf(first);
    expect(document.numPages).toBe(2);
    await document.destroy();
  });
});

describe("nothing on a sheet overflows", () => {
  let shop: PrintShop;
  beforeAll(async () => {
    shop = await openPrintShop();
  });

  const pagesOf = (sheet: RepairSheet, paper: PaperName): readonly Page[] => [
    ...setInPages(repairBookOf(sheet, edition), paperNamed(paper), shop.measure).pages(),
  ];

  function expectInside(pages: readonly Page[]): void {
    for (const { width, height, marks } of pages) {
      for (const mark of flattened(marks)) {
        const box = boxOf(mark);
        if (box === null) continue;
        const shown = JSON.stringify(mark).slice(0, 200);
        expect(box[0], shown).toBeGreaterThanOrEqual(10);
        expect(box[1], shown).toBeGreaterThanOrEqual(10);
        expect(box[2], shown).toBeLessThanOrEqual(width - 10);
        expect(box[3], shown).toBeLessThanOrEqual(height - 10);
      }
    }
  }

  const damage = fc.integer({ min: 8, max: 400 }).chain((teeth) =>
    fc.record({
      teeth: fc.constant(teeth),
      damaged: fc.oneof(
        fc.uniqueArray(fc.integer({ min: 1, max: teeth }), {
          minLength: 1,
          maxLength: Math.max(1, Math.min(40, Math.floor(teeth / 3) - 1)),
        }),
        fc
          .tuple(fc.integer({ min: 1, max: teeth }), fc.integer({ min: 1, max: Math.max(1, Math.min(40, teeth - 4)) }))
          .map(([first, run]) => Array.from({ length: run }, (_, index) => ((first + index - 1) % teeth) + 1)),
      ),
    }),
  );
  const pitch = fc.constantFrom<Partial<SpurGearSpec>>(
    { module: 0.3 },
    { module: 2 },
    { module: 12.5 },
    { diametralPitch: 12 },
    { diametralPitch: 3.5, pressureAngle: 14.5 },
  );

  /** A job, or null where no sound space is left to start from. */
  function jobOf(head: Head, spec: SpurGearSpec, damaged: readonly number[]): RepairOnHead | null {
    try {
      return repairOnHead(head, spurGear(spec), { damaged, backlash: 0.02, settingError: { arcSeconds: 20, offCentre: 0.01 } });
    } catch (error) {
      if (/no sound space is left/.test(String(error))) return null;
      throw error;
    }
  }

  it.each(paperNames)("for any gear and any head, on %s", (paper) => {
    fc.assert(
      fc.property(
        damage,
        pitch,
        fc.oneof(
          fc.constantFrom(...readyHeads),
          headSpec.map((spec) => defineHead(spec)),
        ),
        fc.boolean(),
        ({ teeth, damaged }, given, head, inches) => {
          const job = jobOf(head, { teeth, ...given }, damaged);
          fc.pre(job !== null && (job.exact || job.near.length > 0));
          const pages = pagesOf({ job, head, inches, sawGiven: false }, paper);
          expectInside(pages);
          const texts = pages
            .flatMap(({ marks }) => [...flattened(marks)])
            .filter((mark): mark is TextMark => mark.kind === "text");
          for (const { toothSpace } of job.repair.plan.spaces)
            expect(texts.some(({ text }) => text === String(toothSpace))).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });

  it("prints nothing smaller than a note", () => {
    const pages = pagesOf(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33] }), "a4");
    const sizes = pages
      .flatMap(({ marks }) => [...flattened(marks)])
      .flatMap((mark) => (mark.kind === "text" ? [mark.size] : []));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8.5);
  });

  it("a drawn gear shows start, proof and every built-up tooth without one number over another", () => {
    fc.assert(
      fc.property(damage, ({ teeth, damaged }) => {
        const job = jobOf(geared, { teeth, module: 2 }, damaged);
        fc.pre(job !== null && (job.exact || job.near.length > 0));
        const figures = pagesOf({ job, head: geared, inches: false, sawGiven: false }, "a4")
          .flatMap(({ marks }) => marks)
          .flatMap((mark) => (mark.kind === "group" && mark.role === "Figure" ? [mark.marks] : []));
        const texts = figures
          .flatMap((marks) => [...flattened(marks)])
          .filter((mark): mark is TextMark => mark.kind === "text" && mark.size > 8.5);
        expect(texts.some(({ text }) => text === "START")).toBe(true);
        for (const [index, one] of texts.entries()) {
          for (const other of texts.slice(index + 1)) {
            const [a, b] = [boxOf(one), boxOf(other)];
            if (!a || !b) continue;
            const overlap = Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > 1 && Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 2.5;
            expect(overlap, `${one.text} over ${other.text}, ${teeth} teeth`).toBe(false);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
