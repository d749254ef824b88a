import { describe, expect, it } from "vitest";
import type { JobOptions } from "../../booklet/index.ts";
import { type Caution, planJob, type Revolutions } from "../../src/index.ts";
import { arcUpTo } from "../../src/words/index.ts";
import { bare, followed, jobs, ungeared, withNose } from "./followed-job.ts";
import { said } from "./printed-sheet.ts";
import { signedSecondsIn } from "./sheet-scales.ts";

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
  "places-differ": /go on to the place of each line/i,
  "moves-differ": /Go on by the turns and spaces of each line: they differ/,
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
    const own = sheet.lines.filter((line) => !/^(?:Plates |Or\||The nearest|Compound|Simple)|\|page \d+ of \d+$/.test(line));
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
