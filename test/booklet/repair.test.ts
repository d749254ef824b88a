import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { repairBookOf } from "../../booklet/content/repair-sheet.ts";
import { type PaperName, paperNames, type RepairSheet, repairSheetPdf } from "../../booklet/index.ts";
import { boxOf, flattened, type Page, type TextMark } from "../../booklet/layout/marks.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import {
  defineHead,
  type Head,
  type HeadSpec,
  type RepairOnHead,
  type RepairOnHeadOptions,
  readyHeads,
  repairOnHead,
  revolutions,
  type SpurGearSpec,
  spurGear,
} from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { runs } from "../support/sweep.ts";
import { bare as dialOnly, geared, ungeared, withNose } from "./followed-job.ts";
import { headSpec, longNamed } from "./heads.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { readSheet } from "./printed-sheet.ts";
import { linesOf, openPdf, piecesOf } from "./read-pdf.ts";
import { edition, pagesOn } from "./set-pages.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { wayOn } from "./sheet-setting.ts";

const oneCircle = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [49] }] });

function sheetOf(head: Head, spec: SpurGearSpec, options: RepairOnHeadOptions): RepairSheet {
  return { job: repairOnHead(head, spurGear(spec), options), head, inches: spec.module === undefined, sawGiven: false };
}

async function linesOfSheet(sheet: RepairSheet, paper: PaperName = "a4"): Promise<readonly string[]> {
  return (await piecesOf(await repairSheetPdf({ ...sheet, paper }))).flatMap(linesOf);
}

/** What is done at each space, and of its flanks which are sound. */
function rowsOf(lines: readonly string[]): readonly (readonly string[])[] {
  return lines.flatMap((line) => {
    const [, space = "", purpose = "", flanks = ""] = /^(\d+)\|(START|cut|PROVE)\|(\w+ \| \w+)\|/.exec(line) ?? [];
    return space === "" ? [] : [[space, purpose, flanks]];
  });
}

/** What is wrong with any line of a repair's sheet, followed by hand from the print alone. */
async function wrongOnSheet(sheet: RepairSheet, paper: PaperName = "a4"): Promise<readonly string[]> {
  const { gear, repair } = sheet.job;
  const printed = await readSheet(await repairSheetPdf({ ...sheet, paper }), "space");
  expect(printed.places.length).toBe(repair.plan.spaces.length + 2);
  const step = revolutions(1, gear.teeth);
  const head = headAsPrinted(printed.lines, sheet.head);
  return wrongOn(printed, wayOn(printed, head, { spindlePerMove: step }), {
    head,
    step: turnsOf(step),
    startTooth: Number(printed.places[0]?.space),
    startHole: 0,
    startAngle: turnsOf("0"),
    side: "plus",
    made: 0,
    key: "space",
  });
}

describe("the sheet of a repair, read back", () => {
  it.each([
    ["86 teeth by simple indexing", geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33] }],
    ["127 teeth with gears, two places of damage", geared, { teeth: 127, module: 1.25 }, { damaged: [5, 6, 90, 91] }],
    ["127 teeth with gears on a plate of a long name", longNamed, { teeth: 127, module: 1.25 }, { damaged: [5, 6] }],
    ["97 teeth by a near compound move", ungeared, { teeth: 97, module: 2 }, { damaged: [31, 32, 33] }],
    ["69 teeth by compound moves with a part back", ungeared, { teeth: 69, module: 2 }, { damaged: [4, 5, 40] }],
    ["97 teeth by the dial of a bare table", dialOnly, { teeth: 97, diametralPitch: 12 }, { damaged: [5, 6, 40] }],
    ["24 teeth by the direct plate", withNose, { teeth: 24, module: 2 }, { damaged: [7, 8] }],
    ["101 teeth where no move comes near", oneCircle, { teeth: 101, module: 2 }, { damaged: [7, 8, 90] }],
  ] as const)("%s: every move leads to its space, and is off by what is printed beside it", async (_, head, spec, options) => {
    expect(await wrongOnSheet(sheetOf(head, spec, options))).toEqual([]);
  });

  it("says what is done at each space, and which flanks are sound", async () => {
    const rows = rowsOf(await linesOfSheet(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33] })));
    expect(rows).toEqual([
      ["29", "START", "sound | sound"],
      ["30", "cut", "sound | new"],
      ["31", "cut", "new | new"],
      ["32", "cut", "new | new"],
      ["33", "cut", "new | sound"],
      ["34", "PROVE", "sound | sound"],
    ]);
  });

  it("goes round from the start space, place of damage by place of damage", async () => {
    const rows = rowsOf(await linesOfSheet(sheetOf(geared, { teeth: 127, module: 1.25 }, { damaged: [5, 6, 90, 91] })));
    expect(rows.map(([space]) => Number(space))).toEqual([88, 89, 90, 91, 4, 5, 6, 7]);
  });

  it("bounds the error of a near move, in seconds and at the pitch circle, and says that it grows", async () => {
    const text = (await linesOfSheet(sheetOf(ungeared, { teeth: 97, module: 2 }, { damaged: [31, 32, 33] }))).join(" ");
    expect(text).toMatch(
      /Not exact: no space to be cut is off by over 0\.8″, 0\.0004 mm at the pitch circle\. Go no further than PROVE/,
    );
    expect(text).toContain("count from the start only; the error grows with every move");
  });

  it("is refused on another head than the job's: another name, another ratio, other plates, another ring", async () => {
    const sheet = sheetOf(ungeared, { teeth: 97, module: 2 }, { damaged: [31, 32, 33] });
    const others: readonly (readonly [HeadSpec, RegExp])[] = [
      [geared, /head: is not the one that the repair was worked out for/],
      [{ ...ungeared, name: "Another" }, /is not the one/],
      [{ ...ungeared, wormRatio: 60 }, /is not the one/],
      [{ ...ungeared, plates: ungeared.plates.slice(0, 1) }, /setting: needs/],
      [{ ...ungeared, rearPin: false }, /setting: needs/],
      [{ ...ungeared, ring: { marksPerTurn: 180 } }, /has another ring or dial/],
      [{ ...ungeared, dial: { marksPerTurn: 100 } }, /has another ring or dial/],
    ];
    for (const [spec, message] of others) {
      await expect(repairSheetPdf({ ...sheet, head: defineHead(spec) }), JSON.stringify(message.source)).rejects.toThrow(message);
    }
    expect((await repairSheetPdf({ ...sheet, head: defineHead(JSON.parse(JSON.stringify(ungeared))) })).length).toBeGreaterThan(
      0,
    );
  });

  it("is refused where the head can do none of it", async () => {
    const none = defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }] });
    await expect(repairSheetPdf(sheetOf(none, { teeth: 97, module: 2 }, { damaged: [5] }))).rejects.toThrow(/not even nearly/);
  });

  it("has a box for every move, a blank for every measure, and the cautions", async () => {
    const lines = await linesOfSheet(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33], backlash: 0.2 }));
    const text = lines.join(" ");
    for (const label of ["tooth 31", "tooth 33", "22–31", "33–42", "space 30", "space 33"]) expect(text).toContain(label);
    expect(text).toContain("3.042 mm to 3.141 mm");
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

  it.each([
    ["three places", "a4", [12, 13, 14, 55, 56, 90]],
    ["two places", "letter", [12, 13, 14, 55, 56]],
  ] as const)("teeth lost in %s still end on three pages of %s, notes and all", async (_, paper, damaged) => {
    const sheet = sheetOf(geared, { teeth: 97, module: 2 }, { damaged, backlash: 0.15 });
    const document = await openPdf(await repairSheetPdf({ ...sheet, paper }));
    expect(document.numPages).toBeLessThan(4);
    await document.destroy();
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
  const pagesOf = (sheet: RepairSheet, paper: PaperName): readonly Page[] =>
    pagesOn(paperNamed(paper), repairBookOf(sheet, edition));

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
          fc.pre(job?.job.planned === true);
          const pages = pagesOf({ job, head, inches, sawGiven: false }, paper);
          expectInside(pages);
          const texts = pages
            .flatMap(({ marks }) => [...flattened(marks)])
            .filter((mark): mark is TextMark => mark.kind === "text");
          for (const { toothSpace } of job.repair.plan.spaces)
            expect(texts.some(({ text }) => text === String(toothSpace))).toBe(true);
        },
      ),
      runs(25),
    );
  });

  it("prints nothing smaller than a note", () => {
    const pages = pagesOf(sheetOf(geared, { teeth: 86, module: 2 }, { damaged: [31, 32, 33] }), "a4");
    const sizes = pages
      .flatMap(({ marks }) => [...flattened(marks)])
      .flatMap((mark) => (mark.kind === "text" ? [mark.size] : []));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8.5);
  });

  it.each(paperNames)("what proves the count stands clear of what is said under the drawing, on %s", (paper) => {
    const sheet = sheetOf(ungeared, { teeth: 127, module: 1.5 }, { damaged: [1, 2, 60] });
    const texts = pagesOf(sheet, paper)
      .flatMap(({ marks }) => [...flattened(marks)])
      .filter((mark): mark is TextMark => mark.kind === "text");
    const proof = texts.find(({ text }, index) => text === "61" && texts[index - 1]?.text === "PROVE");
    const caption = texts.find(({ text }) => text.startsWith("Seen from the side"));
    if (proof === undefined || caption === undefined) throw new Error("proof or caption is not there");
    expect(boxOf(caption)?.[1]).toBeGreaterThanOrEqual(boxOf(proof)?.[3] ?? 0);
  });

  it("a drawn gear shows start, proof and every built-up tooth without one number over another", () => {
    fc.assert(
      fc.property(damage, ({ teeth, damaged }) => {
        const job = jobOf(geared, { teeth, module: 2 }, damaged);
        fc.pre(job?.job.planned === true);
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
      runs(60),
    );
  });
});
