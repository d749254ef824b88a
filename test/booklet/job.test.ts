import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type JobOptions, jobSheetPdf } from "../../booklet/index.ts";
import {
  type Caution,
  defineHead,
  type Head,
  indexDivisions,
  parseAngle,
  planJob,
  type Revolutions,
  readyHeads,
  revolutions,
  type Way,
} from "../../src/index.ts";
import { arcUpTo } from "../../src/words/index.ts";
import { turnsOf } from "../support/bench.ts";
import { ready } from "../support/ready.ts";
import { headSpec, secondHand } from "./heads.ts";
import { type PrintedSheet, readSheet, said } from "./printed-sheet.ts";
import { type OnTheBench, wrongOn } from "./sheet-on-bench.ts";
import { arcSeconds, signedSecondsIn } from "./sheet-scales.ts";
import { type PrintedWay, wayOn } from "./sheet-setting.ts";

const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const faces = ready("ratio-40-faces-24-66");
const bare = ready("ratio-90-dial");
const withNose: Head = defineHead({ ...secondHand, ring: { marksPerTurn: 360 } });

/** A job with its sheet read back, ready to be followed by hand. */
interface Followed {
  readonly sheet: PrintedSheet;
  readonly way: PrintedWay;
  readonly bench: OnTheBench;
}

async function followed(head: Head, options: JobOptions): Promise<Followed> {
  const sheet = await readSheet(await jobSheetPdf(head, options));
  const step: Revolutions = "divisions" in options ? revolutions(1, options.divisions) : options.angle;
  const [, tooth = "", hole = "0"] = /^At tooth (\d+)(?:: pin in hole (\d+))?/.exec(said(sheet, "Start")) ?? [];
  const bench: OnTheBench = {
    head,
    step: turnsOf(step),
    startTooth: Number(tooth),
    startHole: Number(hole),
    startAngle: turnsOf(options.startAngle ?? "0"),
    side: /FALL/.test(said(sheet, "Start")) ? "minus" : "plus",
    made: options.after === undefined ? 0 : options.after - Number(tooth),
    key: "tooth",
  };
  return { sheet, way: wayOn(sheet, head, { spindlePerMove: step }), bench };
}

function teethOn({ places }: PrintedSheet): readonly number[] {
  return places.map(({ tooth }) => Number(tooth));
}

const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

/** One of each way, and of what can be asked of it. */
const jobs: readonly (readonly [string, Head, JobOptions])[] = [
  ["13, simple", geared, { divisions: 13 }],
  ["8, whole turns", geared, { divisions: 8 }],
  ["127, one pair of gears", geared, { divisions: 127 }],
  [
    "127 on a plate that is on, from hole 5, the ring falling",
    geared,
    { divisions: 127, mounted: "2", startHole: 5, startAngle: parseAngle("124°"), side: "minus" },
  ],
  ["383, several teeth a move", geared, { divisions: 383 }],
  ["53, faces and two pairs of gears", faces, { divisions: 53, mounted: "1" }],
  ["51, compound, both parts on", ungeared, { divisions: 51 }],
  ["69, compound, a part back", ungeared, { divisions: 69 }],
  ["97, near by a compound move", ungeared, { divisions: 97 }],
  ["97, near by the nearest holes, from hole 7", ungeared, { divisions: 97, by: "nearest-hole", startHole: 7 }],
  ["97 by the ring", ungeared, { divisions: 97, by: "ring", startAngle: parseAngle("10°") }],
  ["8, direct", withNose, { divisions: 8 }],
  ["64 by the dial, every place on a mark", bare, { divisions: 64 }],
  ["97 by the dial, from 12°", bare, { divisions: 97, startAngle: parseAngle("12°") }],
  ["9 by whole turns of the handwheel", bare, { divisions: 9 }],
  ["62, teeth 40, 1 and 17 alone", geared, { divisions: 62, teeth: [40, 1, 17], startTooth: 40 }],
  ["97, near, teeth 2 to 4 alone", ungeared, { divisions: 97, teeth: [2, 3, 4] }],
  ["86, what is left after tooth 80", geared, { divisions: 86, after: 80 }],
  ["2°54′", geared, { angle: parseAngle("2°54'") }],
  ["7° 12′", geared, { angle: parseAngle("7°12'") }],
  ["2°54′07″, near", ungeared, { angle: parseAngle("2°54'07\"") }],
  ["2°54′07.31″, finer than any list", ungeared, { angle: parseAngle("2°54'07.31\"") }],
];

describe("a job sheet, followed by hand from the print alone", () => {
  it.each(jobs)("%s: every line leads where it says, with what the head has", async (_, head, options) => {
    const { sheet, way, bench } = await followed(head, options);
    expect(sheet.places.length).toBeGreaterThan(1);
    expect(wrongOn(sheet, way, bench)).toEqual([]);
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
      { numRuns: 25 },
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
        expect(said(sheet, term)).toContain(place["true angle"]);
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

/** What a sheet must say of each caution of its plan. */
const saying: Readonly<Record<Caution["code"], RegExp>> = {
  "one-way": /Turn the (?:crank|handwheel|spindle) one way only\. Past the (?:hole|mark): go/,
  "lock-spindle": /lock it before every cut/,
  "stop-cutter": /No hand near the cutter/,
  "manual-first": /manual, local codes and qualified practice come first/,
  "worm-out-of-mesh": /Worm\|Out of mesh/,
  "stop-pin": /Plate stop pin\|(?:IN|OUT)/,
  "two-parts": /always in the same order/,
  "gears-forgotten": /Gears forgotten\|.* (?:gives|comes nearest to) \d+/,
  "gears-limits": /tilted out of line with the gears/,
  "may-foul": /MAY FOUL\|/,
  "several-teeth": /go round the work \d+ times/,
  "error-grows": /the error grows with every move/,
  "never-add-steps": /never add one rounded step to the last/,
};

describe("the words of a job sheet", () => {
  it.each(jobs)("%s: say every caution of its plan", async (_, head, options) => {
    const { divisions, angle, ...asked } = options as JobOptions & { divisions: number; angle: Revolutions };
    const plan = planJob(head, divisions === undefined ? { angle } : { divisions }, {
      ...asked,
      teeth: asked.teeth ?? [1],
      after: undefined,
    });
    if (!plan.planned) throw new Error("the job can be done");
    const { sheet } = await followed(head, options);
    const text = sheet.lines.join("\n").replace(/\n(?![^|\n]*\|)/g, " ");
    for (const { code } of plan.cautions) expect(text, code).toMatch(saying[code]);
  });

  it.each([
    ["a direct job", withNose, { divisions: 8 }, /stop pin|arms|crank one way/i],
    ["a dial job", bare, { divisions: 64 }, /stop pin|arms|\bpin\b|\bholes?\b|crank one way/i],
    ["a job of whole turns of a handwheel", bare, { divisions: 9 }, /stop pin|arms|\bpin\b|\bholes?\b|crank one way/i],
    ["a job by the ring", ungeared, { divisions: 97, by: "ring" }, /arms round|pin home/i],
  ] as const)("%s speaks of nothing that it has not", async (_, head, options, wrong) => {
    const { sheet } = await followed(head, options as JobOptions);
    // The foot of a page names rule and edition, and other ways may go by holes.
    const own = sheet.lines.filter((line) => !/^(?:Plates |Crank turns |Or\||The nearest|Compound|Simple)/.test(line));
    expect(own.join("\n")).not.toMatch(wrong);
  });

  it("a compound job tells both moves in the order of work, the stop pin OUT", async () => {
    const back = (await followed(ungeared, { divisions: 69 })).sheet;
    expect(back.figures.map(({ head }) => head)).toEqual(["CIRCLE", "FIRST BOTH BACK", "THEN TURNS", "SPACES", "ARMS ENCLOSE"]);
    expect(said(back, "First, both")).toMatch(/together BACK the other way 2 spaces of 23/);
    expect(said(back, "Then the crank")).toMatch(/14 spaces of 21, forward/);
    expect(said(back, "Plate stop pin")).toMatch(/^OUT/);
    expect(said(back, "Each place")).toMatch(/both parts in their order, both pins home/);
    const on = (await followed(ungeared, { divisions: 51 })).sheet;
    expect(on.figures.map(({ head }) => head)).toEqual(["CIRCLE", "TURNS", "SPACES", "ARMS ENCLOSE", "THEN BOTH ON"]);
  });

  it("a count that nothing closes follows the best way, and names the others with their errors", async () => {
    const { sheet } = await followed(ungeared, { divisions: 97 });
    const plan = planJob(ungeared, { divisions: 97 });
    if (!plan.planned) throw new Error("97 can be done nearly");
    const worst = Math.max(...sheet.places.map((place) => Math.abs(signedSecondsIn(place["off by"] ?? ""))));
    expect(worst).toBeLessThan(18);
    expect(sheet.lines.join(" ")).toContain("NOT EXACT");
    for (const by of ["nearest holes", "ring"])
      expect(sheet.lines.join("\n")).toMatch(new RegExp(`The ${by}.*: no place over [\\d.]+[″′°] off`));
  });

  it("never says less than the worst that it lists", async () => {
    for (const [, head, options] of jobs) {
      const { sheet } = await followed(head, options);
      const warned = /Not exact: no (?:position over|place listed is off by over) (\S+)/.exec(sheet.lines.join(" "))?.[1];
      if (warned === undefined) continue;
      const worst = Math.max(...sheet.places.map((place) => Math.abs(signedSecondsIn(place["off by"] ?? "0"))));
      // To a tenth either way: what is listed is the nearest, the bound is rounded up.
      expect(boundOf(warned) + 0.0501).toBeGreaterThanOrEqual(worst);
    }
    expect(arcUpTo(4.947)).toBe("5.0″");
  });
});

function boundOf(text: string): number {
  const unit = text.includes("″") ? 1 : text.includes("′") ? 60 : 3600;
  return Number.parseFloat(text) * unit;
}

describe("a job that is chosen", () => {
  it("follows the setting that was chosen", async () => {
    const settings = indexDivisions(geared, 60, { all: true }).settings;
    const setting = settings.at(-1);
    if (setting === undefined) throw new Error("60 can be done");
    const { sheet, way, bench } = await followed(geared, { divisions: 60, setting });
    expect(way.by === "moves" && { method: way.setting.method, circle: way.setting.circle }).toEqual({
      method: setting.method,
      circle: setting.circle,
    });
    expect(wrongOn(sheet, way, bench)).toEqual([]);
  });

  it("is refused where the setting is another head's, another count's, or does not turn the work as it says", async () => {
    const [setting] = indexDivisions(geared, 127).settings;
    if (setting === undefined) throw new Error("127 can be done");
    await expect(jobSheetPdf(ungeared, { divisions: 127, setting })).rejects.toThrow(/setting: /);
    await expect(jobSheetPdf(geared, { divisions: 63, setting })).rejects.toThrow(/for another count/);
    const spoilt = { ...setting, spaces: setting.spaces + 1 } as typeof setting;
    await expect(jobSheetPdf(geared, { divisions: 127, setting: spoilt })).rejects.toThrow(/setting: turns the work by/);
  });

  it.each([
    ["one too long for a sheet", geared, { divisions: 2000 }, /too many for a job sheet/],
    ["a tooth beyond the count", geared, { divisions: 62, teeth: [63] }, /63/],
    ["a count and an angle at once", geared, { divisions: 62, angle: revolutions(1, 62) }, /both given/],
    ["a start hole that is not on the circle", geared, { divisions: 13, startHole: 39 }, /not a hole of the circle/],
    ["a way that the head has not", geared, { divisions: 97, by: "dial" }, /no setting by "dial"/],
    ["an option there is none of", geared, { divisions: 13, tooth: [1] }, /tooth/],
    ["neither a count nor an angle", geared, {}, /angle/],
    [
      "what can be set in no way",
      defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }] }),
      { divisions: 400 },
      /not even nearly/,
    ],
  ])("%s is refused", async (_, head, options, message) => {
    await expect(jobSheetPdf(head, options as unknown as JobOptions)).rejects.toThrow(message);
  });

  it("is the same error in seconds, whichever way it is counted", () => {
    expect(arcSeconds(turnsOf("1/1296000"))).toBe(1);
  });
});
