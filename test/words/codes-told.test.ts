import { describe, expect, it } from "vitest";
import { type Caution, indexDivisions, type NearKind, nearSettings, type Setting, type Way } from "../../src/index.ts";
import { cautionItem, kindWords, nearNames } from "../../src/words/index.ts";
import { allTold } from "../support/all-told.ts";
import { planned } from "../support/jobs.ts";
import { everyJob, jobsFromZero, type KnownJob, ungeared } from "../support/known-jobs.ts";
import { threePlates } from "../support/ready.ts";

const planOf = ({ head, target, options }: KnownJob) => planned(head, target, options);
const toldOf = (job: KnownJob) => allTold(planOf(job), job.head);

describe("a near way never passes for an exact one", () => {
  const near = everyJob.filter((job) => !planOf(job).exact);

  it.each(near)("$name: every place says how far it is off, and the greatest of them is the plan's", (each) => {
    const plan = planOf(each);
    const { legend, start, cautions } = toldOf(each);
    expect(legend).toContain("off by");
    expect(start.join("\n")).toContain("+ too far, − short of it");
    const traps = {
      moves: "the error grows with every move",
      "nearest-hole": "turns and spaces of each line: they differ",
      "both-cranks": "Go on to the place of each line",
      "nearest-direct": "Go on to the place of each line",
      dial: "never add one rounded step to the last",
      ring: "never add one rounded step to the last",
    };
    const grows = traps[plan.way.by];
    expect(cautions.join("\n")).toContain(grows);
  });

  it("an exact one has no column of errors", () => {
    for (const each of everyJob.filter((one) => !near.includes(one))) expect(toldOf(each).legend).not.toContain("off by");
  });
});

describe("what is said of each code", () => {
  const gives = indexDivisions(threePlates, 60).settings[0] as Setting;
  const samples = {
    "one-way": { code: "one-way", hand: "crank", to: "hole" },
    "lock-spindle": { code: "lock-spindle" },
    "stop-cutter": { code: "stop-cutter" },
    "manual-first": { code: "manual-first" },
    "worm-out-of-mesh": { code: "worm-out-of-mesh" },
    "stop-pin": { code: "stop-pin", stands: "out" },
    "two-parts": { code: "two-parts", first: "both" },
    "gears-forgotten": {
      code: "gears-forgotten",
      gives: { spindlePerMove: gives.spindlePerMove, divisions: 60, exact: true, closingArcSeconds: 0 },
    },
    "gears-limits": { code: "gears-limits" },
    "may-foul": { code: "may-foul", fouling: { code: "stud-driver-at-spindle", gear: 90, meshing: [90, 9], room: 15 } },
    "several-teeth": { code: "several-teeth", teethPerMove: 4 },
    "error-grows": { code: "error-grows" },
    "never-add-steps": { code: "never-add-steps" },
    "places-differ": { code: "places-differ" },
    "moves-differ": { code: "moves-differ" },
  } satisfies { readonly [Code in Caution["code"]]: Caution & { readonly code: Code } };

  it("every caution is a term and a whole sentence, and no two are alike", () => {
    const items = Object.values(samples).map((caution: Caution) => cautionItem(caution));
    for (const { term, text } of items)
      expect([term, text]).toEqual([expect.stringMatching(/^[A-Z]/), expect.stringMatching(/\.$/)]);
    expect(new Set(items.map(({ text }) => text)).size).toBe(items.length);
  });

  it("every kind has a name, a title, a mark and a section, and every near kind a name of its own", () => {
    for (const { name, title, mark, section } of Object.values(kindWords)) expect([name, title, mark, section]).not.toContain("");
    const kinds: readonly NearKind[] = nearSettings(ungeared, { divisions: 97 }).map(({ kind }) => kind);
    for (const kind of kinds) expect(nearNames[kind]).toMatch(/^[A-Z]/);
    expect(new Set(Object.values(nearNames)).size).toBe(Object.keys(nearNames).length);
  });

  it("every way has its own title", () => {
    const by: Readonly<Record<Way["by"], string>> = {
      moves: "COMPOUND INDEXING",
      "nearest-hole": "THE NEAREST HOLES",
      "both-cranks": "WIDE RANGE INDEXING, the nearest holes of both cranks",
      "nearest-direct": "THE NEAREST DETENTS",
      dial: "BY THE DIAL",
      ring: "BY THE RING",
    };
    for (const each of jobsFromZero) expect(toldOf(each).title[0]).toBe(by[each.way as Way["by"]]);
    expect(allTold(planned(threePlates, { divisions: 96 }, { methods: ["compound"] }), threePlates).title[0]).toBe(by.moves);
  });
});
