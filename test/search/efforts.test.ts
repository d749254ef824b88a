import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  exactSettings,
  type Head,
  indexDivisions,
  indexTable,
  planJob,
  readyHeads,
  type Setting,
} from "../../src/index.ts";
import { whyImpossible } from "../../src/instead/impossible.ts";
import { circlesThatWouldDo } from "../../src/instead/missing-circles.ts";
import { gearsThatWouldDo } from "../../src/instead/missing-gears.ts";
import { nearestCounts } from "../../src/instead/nearest-counts.ts";
import { nearOn } from "../../src/near/near.ts";
import { type Allowed, type Efforts, untriedOf, usuallyAllowed } from "../../src/search/efforts.ts";
import { once, type Search, searchOn, settingsOf } from "../../src/search/exact-settings.ts";
import { counts, heads, small } from "../support/arbitraries.ts";
import { wideHead } from "../support/known-jobs.ts";
import { runs } from "../support/sweep.ts";

const from = (first: number, count: number, step = 1) => Array.from({ length: count }, (_, index) => first + step * index);

/** Heads that defineHead takes and no shop has. */
const huge: Readonly<Record<string, Head>> = {
  "hundreds of circles and a rear pin": defineHead({
    wormRatio: "99991/840",
    rearPin: true,
    plates: from(1, 40).map((plate) => ({ name: String(plate), circles: from(60 * plate, 60, plate) })),
  }),
  "hundreds of gears and a fast plate": defineHead({
    wormRatio: 40,
    plates: from(1, 8).map((plate) => ({ name: String(plate), circles: from(100 * plate, 60) })),
    gears: from(17, 200),
    gearing: { greatestPlateRatio: 100 },
  }),
  "circles of many divisors": defineHead({
    wormRatio: "1/1000",
    rearPin: true,
    plates: from(1, 10).map((plate) => ({ name: String(plate), circles: from(120, 60, 120) })),
    gears: from(24, 60, 12),
    gearing: { greatestPlateRatio: 90 },
  }),
};

const usedOf = (efforts: Efforts, allowed: Allowed) =>
  Object.fromEntries(Object.entries(efforts).map(([part, { left }]) => [part, allowed[part as keyof Allowed] - left])) as Record<
    keyof Allowed,
    number
  >;

/** How often the gears of a head are asked for a train, whoever asks. */
function counting(search: Search): { readonly search: Search; readonly asked: () => number } {
  let asked = 0;
  const { box } = search.layout;
  const trains: typeof box.trains = (...ratio) => {
    asked += 1;
    return box.trains(...ratio);
  };
  return { search: { ...search, layout: { ...search.layout, box: { ...box, trains } } }, asked: () => asked };
}

describe("the work for an answer", () => {
  it.each(readyHeads.map((head) => [head.id, head] as const))("is a small part of what it may be on %s", (_, head) => {
    for (const divisions of [2, 7, 97, 383, 787, 877, 1009, 99_991, 9_999_991]) {
      const search = once(searchOn(head));
      const target = { divisions };
      const [first] = settingsOf(search, target, search.efforts);
      if (first === undefined) {
        nearOn(search)(target, search.efforts.near);
        nearestCounts(search, divisions);
        gearsThatWouldDo(search, target);
      }
      const used = usedOf(search.efforts, usuallyAllowed);
      expect(Math.max(used.compound, used.differential, used.near) * 50).toBeLessThan(usuallyAllowed.near);
      expect(Math.max(used.counts, used.gears) * 2).toBeLessThan(usuallyAllowed.counts);
    }
  });

  it("is never cut on heads of a few plates and gears, whatever they lack", () => {
    fc.assert(
      fc.property(heads(), counts, (head, divisions) => {
        expect(indexDivisions(head, divisions, { near: true }).untried).toEqual([]);
      }),
    );
  });

  it("to find gears to add is little where no train could have its idlers", () => {
    const head = defineHead({
      wormRatio: "266/3",
      plates: [
        { name: "1", circles: [21, 34, 35, 36, 43, 44, 45] },
        { name: "2", circles: [9, 19, 21, 35, 43] },
      ],
      gears: [],
      idlers: [],
      gearing: { greatestPlateRatio: 12, idlersWithCrank: { onePair: 2, twoPairs: 1 } },
    });
    const search = once(searchOn(head));
    expect(gearsThatWouldDo(search, { divisions: 5 })).toEqual([]);
    expect(usedOf(search.efforts, usuallyAllowed).gears).toBeLessThan(usuallyAllowed.gears / 4);
  });

  it.each(Object.entries(huge))("ends on a head of %s, and says what was not tried", (_, head) => {
    const cut = [720, 9_999_991].flatMap((divisions) => {
      const answer = indexDivisions(head, divisions, { methods: ["compound", "differential", "dial"], near: true });
      if (answer.untried.length > 0) expect(answer.complete).toBe(false);
      return answer.untried.map(({ code }) => code);
    });
    expect(cut).not.toEqual([]);
  });

  it.each(Object.entries(huge))("asks the gears of a head of %s no more often than it has steps", (_, head) => {
    for (const divisions of [3, 9_999_991]) {
      const { search, asked } = counting(searchOn(head));
      nearOn(search)({ divisions });
      expect(asked()).toBeLessThanOrEqual(usuallyAllowed.near);
    }
  });
});

describe("an answer cut short", () => {
  const short: Allowed = { compound: 60, wideRange: 60, differential: 100, near: 50, counts: 400, gears: 100 };
  const cutShort = (head: Head) => once({ ...searchOn(head), allowed: short });

  it("holds settings that are exact all the same, and claims of no method cut short that it cannot", () => {
    let cut = 0;
    fc.assert(
      fc.property(heads(small), counts, (head, divisions) => {
        const target = { divisions };
        const search = cutShort(head);
        const settings: Setting[] = [...settingsOf(search, target, search.efforts)];
        const all = new Set([...exactSettings(head, target)].map((each) => JSON.stringify(each)));
        for (const each of settings) expect(all).toContain(JSON.stringify(each));
        const { reasons } = whyImpossible(search, target);
        const cutMethods = reasons.flatMap(({ method, code }) => (code === "not-all-tried" ? [method] : []));
        if (cutMethods.length === 0) expect(settings.length).toBe(all.size);
        expect(cutMethods.length > 0).toBe(untriedOf(search.efforts).some(({ code }) => code === "settings"));
        cut += cutMethods.length;
      }),
    );
    expect(cut).toBeGreaterThan(5);
  });

  it("claims nothing of both cranks where not every number of teeth was tried, and is not cut on a usual head", () => {
    const search = cutShort(wideHead);
    expect([...settingsOf(search, { divisions: 127 }, search.efforts)]).toEqual([]);
    expect(whyImpossible(search, { divisions: 127 }).reasons).toContainEqual({ method: "wide-range", code: "not-all-tried" });
    expect(untriedOf(search.efforts)).toContainEqual({ code: "settings" });
    expect(indexDivisions(wideHead, 127).untried).toEqual([]);
    expect(indexDivisions(wideHead, 9_999_991).untried).toEqual([]);
  });

  it("names nearest counts that close, and says where there may be nearer ones", () => {
    fc.assert(
      fc.property(heads(), fc.integer({ min: 300, max: 9000 }), (head, divisions) => {
        const search = cutShort(head);
        const found = nearestCounts(search, divisions);
        for (const count of found) expect(exactSettings(head, { divisions: count }).next().done).toBe(false);
        const isCut = untriedOf(search.efforts).some(({ code }) => code === "nearest-counts");
        if (!isCut) expect(found).toEqual(nearestCounts(once(searchOn(head)), divisions));
      }),
      runs(40),
    );
  });

  it("is told of a plan, a table and the generator too", () => {
    const head = huge["hundreds of gears and a fast plate"] as Head;
    const options = { methods: ["differential"] as const };
    expect(planJob(head, { divisions: 3 }, { ...options, teeth: [1] }).untried).toContainEqual({ code: "settings" });
    const [row] = indexTable(head, { from: 3, to: 3, ...options });
    expect(row?.complete).toBe(false);
    expect(row?.setting?.method).toBe("differential");
    const last = (search: Search) => {
      const settings = settingsOf(search, { divisions: 97 });
      let next = settings.next();
      while (next.done !== true) next = settings.next();
      return next.value;
    };
    const usualHead = searchOn(readyHeads[0] as Head);
    expect([last(usualHead), last({ ...usualHead, allowed: short })]).toEqual([true, false]);
    const [usual] = indexTable(readyHeads[0] as Head, { from: 97, to: 97 });
    expect(usual?.complete).toBe(true);
  });

  it("of the circles that would do nothing is left untried", () => {
    for (const head of Object.values(huge)) {
      const search = cutShort(head);
      circlesThatWouldDo(search, { divisions: 9973 });
      expect(untriedOf(search.efforts)).toEqual([]);
    }
  });
});
