import { describe, expect, it } from "vitest";
import { jobOf } from "../../booklet/content/job.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { defineHead, type Head, planJob } from "../../src/index.ts";
import { byDegrees, byGears, byRing } from "../support/without-crank.ts";
import { edition, linesIn, pagesOn, wholeBook } from "./set-pages.ts";

const paper = paperNamed("a4");
const linesOf = (head: Head) => pagesOn(paper, wholeBook(head, { from: 2, to: 80 })).flatMap(linesIn);
const heads = [byDegrees, byGears, byRing] as const;

const doneBy = (head: Head, count: number) =>
  head.directPlates.some(({ holes, vernierHoles = 1 }) => (holes * vernierHoles) % count === 0);

/** What there is none of on such a head, but where a page says just that. */
const ofCranks = /\b(?:crank|worm|handwheel|index plate|stop pin|sector|arms?|change gears|turns \+)\b/i;
const saidOfNone = /^(?:no crank|NO CRANK)|No crank turns|Head|Table/;

describe("the book of a head without a crank", () => {
  it.each(heads.map((head) => [head.name, head] as const))("%s: speaks of nothing that it has not", (_, head) => {
    const lines = linesOf(head);
    expect(lines.length).toBeGreaterThan(60);
    expect(lines.filter((line) => ofCranks.test(line) && !saidOfNone.test(line))).toEqual([]);
  });

  it.each([byDegrees, byGears].map((head) => [head.name, head] as const))(
    "%s: every row of counts stops where the places are",
    (_, head) => {
      const lines = linesOf(head);
      const from = lines.findIndex((line) => line.startsWith("Counts by direct indexing"));
      const to = lines.findIndex((line, at) => at > from && /^(?:Index|Counts by readings)/.test(line));
      let rows = 0;
      for (const [at, line] of lines.entries()) {
        const cells = line.split("|");
        const count = Number(cells[0]);
        if (at < from || at > to || cells[1] !== "D") continue;
        const plate = head.directPlates.find(({ name }) => name === cells[2]);
        if (plate === undefined) throw new Error(`there is no plate ${cells[2]}`);
        expect(Number(cells[3])).toBe(plate.holes);
        const row = plate.vernierHoles ?? 1;
        const ofRow = plate.vernierHoles === undefined ? 0 : Number(cells[5]);
        // The law, once more: so many moves are one turn.
        expect(count * (Number(cells[4]) * row + ofRow)).toBe(plate.holes * row);
        rows += 1;
      }
      expect(rows).toBe(Array.from({ length: 79 }, (_, index) => index + 2).filter((count) => doneBy(head, count)).length);
      expect(rows).toBeGreaterThan(10);
    },
  );

  it("past a place one goes well back: half a turn is what takes up the slack of a worm", () => {
    for (const [head, place] of [
      [byDegrees, "hole"],
      [byGears, "place"],
      [byRing, "mark"],
    ] as const) {
      const said = linesOf(head).join(" ");
      expect(said).toContain(`Past the ${place}? Go well back, then come forward to it again.`);
      expect(said).not.toMatch(/half a turn/);
    }
  });

  it("at the foot of each page stands what its rows are counted by, nearly where they are near", () => {
    const rules = (lines: readonly string[]) => [...new Set(lines.flatMap((line) => /^([^|]*÷ count)\|/.exec(line)?.[1] ?? []))];
    expect(rules(linesOf(byRing))).toEqual(["Angle of one division = 360° ÷ count"]);
    expect(rules(linesOf(byGears))).toEqual(["Spaces of a move = places ÷ count", "Angle of one division = 360° ÷ count"]);
    const near = pagesOn(paper, jobOf(byGears, edition, { divisions: 11 })).flatMap(linesIn);
    expect(rules(near)).toEqual(["True spaces of one division = places ÷ count"]);
  });

  it.each([
    ["a plate of holes", [{ name: "A", holes: 24 }], "direct plate|holes|spaces|one division|stop in holes"],
    ["a gear", [{ name: "A", holes: 60, form: "gear" }], "gear|teeth|spaces|one division|stop at"],
    ["gears, a collar and detents", byGears.directPlates, "set by|places|spaces|one division|stop at"],
  ] as const)("by %s: the columns say what is counted", (_, directPlates, columns) => {
    const head = defineHead({ wormRatio: null, directPlates });
    const lines = linesOf(head);
    expect(lines.filter((line) => line.endsWith(columns))).toHaveLength(1);
    const holes = lines.filter((line) => /\bholes?\b/.test(line) && !/^(?:Holes|Circle|Spaces)\|/.test(line));
    if (head.directPlates.some(({ form }) => form !== undefined)) expect(holes).toEqual([]);
  });

  it("each place with one of the row stands apart from the next", () => {
    const lines = linesOf(byDegrees);
    expect(lines.filter((line) => line.endsWith("|72° 00′ 00″|0+0, 7+2, 14+4, 21+6, 28+8"))).toHaveLength(1);
  });

  it("a job sheet lists each place by its hole and that of the row", () => {
    const lines = pagesOn(paper, jobOf(byDegrees, edition, { divisions: 40 })).flatMap(linesIn);
    const plan = planJob(byDegrees, { divisions: 40 });
    if (!plan.planned) throw new Error("40 is not planned");
    for (const place of plan.places) {
      if (place.by !== "moves") throw new Error("40 is not by moves");
      expect(lines.join("\n")).toContain(`${place.tooth}|${place.hole}|${place.vernierHole}|`);
    }
    expect(lines.filter((line) => ofCranks.test(line) && !saidOfNone.test(line))).toEqual([]);
  });
});
