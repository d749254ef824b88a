import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JobOptions } from "../../booklet/index.ts";
import { cuttingOrder, defineHead, type Head, parseAngle, planJob, readyHeads, revolutions, type Way } from "../../src/index.ts";
import { runs } from "../support/sweep.ts";
import { bare, followed, geared, jobs, ungeared, withNose } from "./followed-job.ts";
import { headSpec } from "./heads.ts";
import { type PrintedSheet, said } from "./printed-sheet.ts";
import { wrongOn } from "./sheet-on-bench.ts";
import { wayOn } from "./sheet-setting.ts";

function teethOn({ places }: PrintedSheet): readonly number[] {
  return places.map(({ tooth }) => Number(tooth));
}

const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

describe("a job sheet, followed by hand from the print alone", () => {
  it.each(jobs)("%s: every line leads where it says, with what the head has", async (_, head, options) => {
    const { sheet, way, bench } = await followed(head, options);
    expect(sheet.places.length).toBeGreaterThan(1);
    expect(wrongOn(sheet, way, bench)).toEqual([]);
  });

  it("97 by sevens: says how far its own places are off, which is more than a round of the same move leaves", async () => {
    const { sheet } = await followed(ungeared, { divisions: 97, by: "moves", teeth: cuttingOrder(97, 7) });
    const [, minutes = "0"] = /Not exact: no place listed is off by over ([\d.]+)′/.exec(sheet.lines.join("\n")) ?? [];
    const worst = Math.max(...sheet.places.map((place) => Number(/([\d.]+)″/.exec(place["off by"] ?? "")?.[1] ?? 0)));
    // One move is 0.189″ short; the last of the list is 96 sevens on.
    expect([Number(minutes), worst]).toEqual([2.2, 127.3]);
    expect(said(sheet, "In this order")).toContain("The work goes round 7 times: 280 turns of the crank, not 40");
    // The figures at the head of the sheet are those of one place on.
    expect(said(sheet, "In this order")).toContain("Go on by what each line says, not by the move of one place above");
  });

  it("any job of any head, by any way there is", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.constantFrom(...readyHeads), headSpec.map(plainlyRead)),
        fc.integer({ min: 2, max: 60 }),
        fc.constantFrom<Way["by"] | undefined>(undefined, "moves", "nearest-hole", "dial", "ring"),
        async (head, divisions, by) => {
          fc.pre(canSet(head, divisions, by));
          const { sheet, way, bench } = await followed(head, { divisions, by });
          expect(teethOn(sheet).toSorted((a, b) => a - b)).toEqual(upTo(divisions));
          expect(wrongOn(sheet, way, bench)).toEqual([]);
        },
      ),
      runs(25),
    );
  });

  it.each([
    ["simple", geared, { divisions: 13 }],
    ["with gears", geared, { divisions: 127 }],
    ["compound", ungeared, { divisions: 69 }],
    ["direct", withNose, { divisions: 8 }],
    ["by the dial", bare, { divisions: 97 }],
    ["several teeth a move", geared, { divisions: 383 }],
  ] as const)("%s: every tooth is there once", async (_, head, options) => {
    const { sheet } = await followed(head, options);
    expect(teethOn(sheet).toSorted((a, b) => a - b)).toEqual(upTo(options.divisions));
  });

  it("lists the teeth that were named, in their order", async () => {
    const { sheet } = await followed(geared, { divisions: 62, teeth: [40, 1, 17] });
    expect(teethOn(sheet)).toEqual([40, 1, 17]);
  });

  it("lists an angle that comes back late to one turn of the work", async () => {
    const { sheet } = await followed(geared, { angle: parseAngle("2°54'") });
    // 124 × 2.9° = 359.6°.
    expect(teethOn(sheet)).toEqual(upTo(125));
  });

  it("tells the checks on the way where the moves lead", async () => {
    for (const [, head, options] of jobs.slice(0, 9)) {
      const { sheet, way, bench } = await followed(head, options);
      const byTooth = new Map(sheet.places.map((place) => [place.tooth, place]));
      for (const term of ["A quarter", "Half", "Three quarters"]) {
        const [, tooth = "", hole] = /, tooth (\d+)(?:, hole (\d+))?/.exec(said(sheet, term)) ?? [];
        const place = byTooth.get(tooth);
        if (way.by !== "moves" || place === undefined) throw new Error(`${term} is at no tooth of the list`);
        expect(place[`hole of ${way.setting.circle}`]).toBe(hole);
        expect(said(sheet, term)).toContain(`ring ${place.ring}`);
        expect(said(sheet, term)).toContain(place["true angle"] ?? "°");
      }
      expect(bench.side).toBe(options.side ?? "plus");
    }
  });
});

/** Scales in degrees that show whole seconds only, so that what is read is what is shown. */
function plainlyRead(spec: Parameters<typeof defineHead>[0]): Head {
  const plain = (scale: typeof spec.ring) => (scale ? { ...scale, figures: "marks" as const } : null);
  return defineHead({ ...spec, ring: plain(spec.ring), dial: plain(spec.dial) });
}

function canSet(head: Head, divisions: number, by: Way["by"] | undefined): boolean {
  try {
    return planJob(head, { divisions }, { by }).planned;
  } catch {
    return false;
  }
}

describe("the hand that follows a sheet is not led by it", () => {
  const alter = (text: string): string =>
    /\d/.test(text) ? text.replace(/\d/, (figure) => String((Number(figure) + 1) % 10)) : `${text}1`;

  it.each([
    ["a compound job", ungeared, { divisions: 97, teeth: [1, 5, 60] }],
    ["a part back", ungeared, { divisions: 69, teeth: [1, 5, 60] }],
    ["a geared job", geared, { divisions: 127 }],
    ["a direct job", withNose, { divisions: 8, teeth: [1, 4, 2] }],
    ["the nearest holes", ungeared, { divisions: 97, by: "nearest-hole" }],
    ["the dial", bare, { divisions: 97 }],
  ] as const)("%s: any one figure altered in any column is found", async (_, head, options) => {
    const { sheet, way, bench } = await followed(head, options as JobOptions);
    const last = sheet.places.length - 1;
    const columns = Object.keys(sheet.places[last] ?? {}).filter((name) => name !== "tooth");
    expect(columns.length).toBeGreaterThan(2);
    for (const name of columns) {
      const places = sheet.places.map((place, index) =>
        index === last ? { ...place, [name]: alter(place[name] ?? "") } : place,
      );
      expect(wrongOn({ places }, way, bench), name).not.toEqual([]);
    }
  });

  it.each([
    ["a compound job of a few teeth", ungeared, { divisions: 69, teeth: [1, 5, 60] }],
    ["a geared job of several teeth a move", geared, { divisions: 383, teeth: [1, 5, 60] }],
    ["a direct job", withNose, { divisions: 8 }],
    ["an exact job by the dial", bare, { divisions: 64 }],
  ] as const)("%s: any one of the large figures altered is found", async (_, head, options) => {
    const { sheet, bench } = await followed(head, options as JobOptions);
    for (const { head: name } of sheet.figures) {
      const figures = sheet.figures.map((each) => (each.head === name ? { ...each, figure: alter(each.figure) } : each));
      const way = wayOn({ ...sheet, figures }, head, { spindlePerMove: revolutions(1, options.divisions) });
      expect(wrongOn(sheet, way, bench), name).not.toEqual([]);
    }
  });

  it.each([
    ["the circle of another plate", geared, { divisions: 13 }, (text: string) => text.replace("plate 3", "plate 1")],
    ["a gear that is not owned", geared, { divisions: 127 }, (text: string) => text.replace("56 teeth", "57 teeth")],
    ["the plate turned the other way", geared, { divisions: 127 }, (text: string) => text.replace("AGAINST", "WITH")],
    ["an idler less", geared, { divisions: 127 }, (text: string) => text.replace("2 idlers", "1 idler")],
    [
      "a rear circle of another face",
      ungeared,
      { divisions: 69 },
      (text: string) => text.replace("spaces of 23", "spaces of 47"),
    ],
  ])("%s is found", async (_, head, options, change) => {
    const { sheet, bench } = await followed(head, options);
    const lines = sheet.lines.map(change);
    const figures = sheet.figures.map((each) => ({ ...each, under: change(each.under) }));
    const altered = { ...sheet, lines, figures };
    expect(altered).not.toEqual(sheet);
    const way = wayOn(altered, head, { spindlePerMove: revolutions(1, options.divisions) });
    expect(wrongOn(altered, way, bench)).not.toEqual([]);
  });
});
