import { describe, expect, it } from "vitest";
import { jobOf } from "../../booklet/content/job.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { indexTable, type PlanOptions, planJob } from "../../src/index.ts";
import { wideHead } from "../support/known-jobs.ts";
import { edition, linesIn, pagesOn, wholeBook } from "./set-pages.ts";

const paper = paperNamed("a4");
const lines = pagesOn(paper, wholeBook(wideHead, { from: 2, to: 200 })).flatMap(linesIn);

describe("the book of a head with two cranks", () => {
  it("has every count that takes both, each row by the law once more", () => {
    const wanted = indexTable(wideHead, { from: 2, to: 200 }).filter(({ setting }) => setting?.method === "wide-range");
    const rows = lines.map((line) => line.split("|")).filter((cells) => cells[1] === "W" && /^(?:L |–)/.test(cells[3] ?? ""));
    expect(rows.map(([count]) => Number(count))).toEqual(wanted.map(({ divisions }) => divisions));
    for (const [count, , teeth, plate, ...figures] of rows) {
      const [circle, turns, spaces, smallCircle, smallTurns, smallSpaces] = figures.map((text) =>
        text === "–" ? 0 : Number(text),
      );
      const face = wideHead.plates[0]?.faces.find(({ name }) => plate === `L ${name}`);
      if (circle !== 0) expect(face?.circles).toContain(circle);
      expect(wideHead.smallCrank?.circles).toContain(smallCircle);
      // In spaces of both circles and of the small crank's hundred turns: N moves are 40 turns for each round.
      const [large, small] = [circle || 1, smallCircle ?? 1];
      const moved =
        ((turns ?? 0) * large + (spaces ?? 0)) * small * 100 + ((smallTurns ?? 0) * small + (smallSpaces ?? 0)) * large;
      expect(Number(count) * moved).toBe(40 * Number(teeth) * large * small * 100);
    }
  });

  it("points to their page from the main table, and to no page that is not there", () => {
    const pointers = lines.filter((line) => line.includes("by both cranks: "));
    expect(pointers.length).toBeGreaterThan(10);
    expect(pointers.filter((line) => !/page \d+/.test(line))).toEqual([]);
    expect(lines.filter((line) => line.includes("{page:"))).toEqual([]);
  });

  it.each<[number, PlanOptions, string]>([
    [126, {}, "Large crank turns + small crank turns ÷ 100 = 40 ÷ count"],
    [127, { by: "both-cranks" }, "True large crank turns of one division = 40 ÷ count"],
  ])("the sheet of %i lists where both cranks stand at every place", (divisions, options, rule) => {
    const sheet = pagesOn(paper, jobOf(wideHead, edition, { divisions, ...options }))
      .flatMap(linesIn)
      .join("\n");
    expect(sheet).toContain(`\n${rule}|`);
    const plan = planJob(wideHead, { divisions }, options);
    if (!plan.planned) throw new Error(`${divisions} is not planned`);
    for (const place of plan.places) {
      if (!("smallHole" in place)) throw new Error("not by both cranks");
      expect(sheet).toContain(`${place.tooth}|${place.turns}|${place.hole}|${place.smallHole}|`);
    }
  });
});
