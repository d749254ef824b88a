import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Job, Work } from "../../booklet/screen/job.ts";
import { jobOf, linkOf } from "../../booklet/screen/link.ts";
import { walkOf } from "../../booklet/screen/walk.ts";
import { defineHead, type HeadSpec, parseAngle, readyHeads, revolutions } from "../../src/index.ts";
import { headSpec } from "../booklet/heads.ts";
import { refusalLines } from "../support/refusal.ts";

const count = fc.integer({ min: 2, max: 400 });
const teeth = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 6 });
const work: fc.Arbitrary<Work> = fc.oneof(
  fc.record({
    kind: fc.constant("divide" as const),
    target: fc.oneof(
      count.map((divisions) => ({ divisions })),
      count.map((parts) => ({ angle: revolutions(3, 3 * parts + 1) })),
    ),
    teeth: fc.option(
      fc.oneof(
        teeth,
        count.map((step) => ({ step })),
      ),
    ),
  }),
  fc.record({
    kind: fc.constant("repair" as const),
    gear: fc.record({
      teeth: count,
      pitch: fc.integer({ min: 1, max: 4000 }).map((size) => size / 80),
      system: fc.constantFrom("module" as const, "dp" as const),
      pressureAngle: fc.constantFrom(14.5, 20),
      damaged: teeth,
      backlash: fc.option(fc.integer({ min: 0, max: 99 }).map((size) => size / 100)),
    }),
  }),
);
const job: fc.Arbitrary<Job> = fc.record({
  head: fc.oneof(
    fc.constantFrom(...readyHeads),
    headSpec.map((spec) => defineHead(spec as HeadSpec)),
  ),
  work,
  way: fc.option(fc.string({ unit: "grapheme", maxLength: 60 })),
  startHole: fc.integer({ min: 0, max: 60 }),
  startAngle: fc.oneof(
    fc.constant(revolutions(0)),
    count.map((parts) => revolutions(1, parts)),
  ),
  side: fc.constantFrom("plus" as const, "minus" as const),
  done: fc.integer({ min: 0, max: 400 }),
});

const read = (link: string) => jobOf(new URLSearchParams(link.slice(1)), readyHeads);

describe("the link of a job", () => {
  it("says the whole job", () => {
    fc.assert(
      fc.property(job, (each) => {
        expect(read(linkOf(each, readyHeads))).toEqual(each);
      }),
    );
  });

  it("ends with the place, so that links of one job differ in nothing else", () => {
    fc.assert(
      fc.property(job, (each) => {
        const [start, later] = [linkOf({ ...each, done: 0 }, readyHeads), linkOf({ ...each, done: 31 }, readyHeads)];
        expect(start.replace(/&done=0$/, "&done=31")).toBe(later);
      }),
    );
  });

  it("is short for a head that every page has, and is never taken for another head of its name", () => {
    const [usual, other] = readyHeads;
    const begun: Job = {
      head: { ...(usual as Job["head"]) },
      work: { kind: "divide", target: { divisions: 127 }, teeth: null },
      way: null,
      startHole: 0,
      startAngle: revolutions(0),
      side: "plus",
      done: 0,
    };
    const link = linkOf(begun, readyHeads);
    expect(link.length).toBeLessThan(120);
    const namesake = { ...(other as Job["head"]), id: begun.head.id };
    expect(refusalLines(() => jobOf(new URLSearchParams(link.slice(1)), [namesake]))[0]).toContain("is not in this page");
  });

  it.each([
    ["#job=&done=0", /names no job/],
    ["#job=&divisions=127&angle=1/7&done=0", /or more than one/],
    ["#job=&divisions=127&done=1&done=2", /has "done" where no job has it/],
    ["#job=&divisions=many", /not a whole number/],
    ["#job=&divisions=127&side=left", /is no side/],
    ["#job=&repair=97&module=two", /not a number/],
    ["#job=&divisions=127&teeth=every x", /every: " x" is not a whole number/],
  ])("refuses %s in a sentence", (link, sentence) => {
    const [usual] = readyHeads;
    expect(refusalLines(() => read(`${link}&spec=${encodeURIComponent(JSON.stringify(usual))}`)).join()).toMatch(sentence);
  });
});

describe("a walk", () => {
  const [usual] = readyHeads as readonly [Job["head"]];
  const begun: Job = {
    head: usual,
    work: { kind: "divide", target: { divisions: 127 }, teeth: null },
    way: null,
    startHole: 0,
    startAngle: parseAngle("124°"),
    side: "minus",
    done: 0,
  };

  it("names its way, and planned again by that name it is the same", () => {
    const first = walkOf(begun);
    expect(walkOf(first.job).plan).toEqual({ ...first.plan, others: [] });
  });

  it("goes in an order of its own, every so many-th tooth first, as the sheet of that job does", () => {
    const spread = { ...begun, work: { kind: "divide", target: { divisions: 127 }, teeth: { step: 19 } } } as const;
    const { steps } = walkOf(spread);
    const places = steps.map(({ place }) => place.tooth);
    // 1 and on by 19: 7 · 19 is 133, which is 6 beyond the round.
    expect(places.slice(0, 9)).toEqual([1, 20, 39, 58, 77, 96, 115, 7, 26]);
    expect([...places].sort((a, b) => a - b)).toEqual(Array.from({ length: 127 }, (_, index) => index + 1));
    expect(refusalLines(() => walkOf({ ...spread, work: { ...spread.work, teeth: { step: 127 } } }))).toEqual([
      "step: 127 is not a step from tooth to tooth; give 1 to 126",
    ]);
    const angle = { kind: "divide", target: { angle: parseAngle("7°") }, teeth: { step: 19 } } as const;
    expect(refusalLines(() => walkOf({ ...spread, work: angle }))).toEqual(["every: needs a count"]);
  });

  it("has its checks at the places of the plan", () => {
    const { steps, plan } = walkOf(begun);
    const due = steps.flatMap(({ check }) => (check === null ? [] : [check]));
    expect(due).toEqual(plan.checks.filter(({ at }) => at !== "close"));
  });
});
