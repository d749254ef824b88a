import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allMethods, coverage, defineHead, type Head, indexDivisions, indexTable, kindOf, prepare } from "../../src/index.ts";
import { usualGears } from "../../src/instead/usual-gears.ts";
import { tallyCircles } from "../../src/kit/circles-to-add.ts";
import { addCount, anyOf, countsIn, noCounts } from "../../src/kit/count-set.ts";
import { kitEfforts, untriedOfKit } from "../../src/kit/efforts.ts";
import { tallyGears } from "../../src/kit/gear-tally.ts";
import { bestGears } from "../../src/kit/gears-to-buy.ts";
import { doneBy, type Lacking } from "../../src/kit/lacking.ts";
import { smallestSet } from "../../src/kit/smallest-set.ts";
import { effortOf, isCut } from "../../src/number/effort.ts";
import { searchOn } from "../../src/search/exact-settings.ts";
import { reach } from "../published/practical-treatise.ts";
import { headSpecs, heads, small } from "../support/arbitraries.ts";
import { ready, threePlates } from "../support/ready.ts";
import { refusalKinds, refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";
import { doneOn, withGears, withoutPlate, withPlate } from "./on-widened-head.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");
const span = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Few teeth per move, so that every widened head can be asked from the beginning. */
const asked = {
  from: 2,
  to: 32,
  teethPerMove: 2,
  circleSizes: span(2, 16),
  gearSizes: [8, 9, 10, 12, 14, 20],
} as const;
const search = { teethPerMove: asked.teethPerMove };

/** Longest first. */
const byLength = (lists: readonly (readonly number[])[]) => lists.map(({ length }) => length).sort((a, b) => b - a);

/** Heads that may gear their plate, and what they have for it. */
const gearable = headSpecs(small)
  .filter(({ gearing }) => gearing !== undefined)
  .map((spec) => defineHead(spec));

describe("what a head does", () => {
  it("is every count of the range once, by the method that is preferred for it or as missing", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 60 }), (head, from) => {
        const range = { from, to: from + 40, teethPerMove: 2 };
        const { byMethod, missing, counts } = coverage(head, { ...range, circleSizes: [], gearSizes: [] });
        const done = allMethods.flatMap((method) => byMethod[method]);
        expect([...done, ...missing].sort((a, b) => a - b)).toEqual(span(range.from, range.to));
        expect(counts).toEqual(
          indexTable(head, range).map(({ divisions, setting }) => ({ divisions, kind: setting && kindOf(setting) })),
        );
        for (const method of allMethods) expect(byMethod[method].every((each) => !missing.includes(each))).toBe(true);
      }),
      runs(24),
    );
  });

  it(`is by plates alone what is published: ${reach.plain.statement}`, () => {
    const { allTo, evenTo, except } = reach.plain;
    const { missing, byMethod } = coverage(threePlates, { from: 2, to: evenTo, methods: ["simple"] });
    expect(missing.filter((each) => each <= allTo || each % 2 === 0)).toEqual(except);
    expect(byMethod.simple.length).toBe(evenTo - 1 - missing.length);
  });

  it(`is with gears what is published: ${reach.geared.statement}`, () => {
    const { missing } = coverage(threePlates, { from: 2, to: reach.geared.allTo + 1, teethPerMove: 1 });
    expect(missing).toEqual([383]);
  });

  it("is the same of a head that was prepared, and comes through JSON unchanged", () => {
    const range = { from: 50, to: 70, want: [61, 127] };
    const answer = coverage(ungeared, range);
    expect(coverage(prepare(ungeared), range)).toEqual(answer);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });

  it("is never less once a circle, a plate or gears are added", () => {
    fc.assert(
      fc.property(
        gearable,
        fc.integer({ min: 2, max: 24 }),
        fc.array(fc.integer({ min: 8, max: 24 }), { maxLength: 2 }),
        (head, circle, gears) => {
          const { missing } = coverage(head, { ...asked, circleSizes: [], gearSizes: [] });
          const more = coverage(withGears(withPlate(head, [circle]), gears), { ...asked, circleSizes: [], gearSizes: [] });
          expect(missing).toEqual(expect.arrayContaining([...more.missing]));
        },
      ),
      runs(36),
    );
  });
});

describe("the counts that one would expect", () => {
  it("are small, round, or the teeth of a usual gear, and it says which", () => {
    const table = defineHead({ ...ready("ratio-72-table-15-49"), dial: null });
    const { expected } = coverage(table, { from: 2, to: 400 });
    const why = new Map(expected.map(({ divisions, because }) => [divisions, because]));
    // 72:1 with three plates does neither 25, 50 nor 100, nor 125: a crank turn is 5°.
    expect([25, 35, 55, 100, 125].map((each) => why.get(each))).toEqual([
      ["small", "round", "gear"],
      ["small", "gear"],
      ["gear"],
      ["round", "gear"],
      ["round"],
    ]);
    expect([53, 61, 128, 243, 256].some((each) => why.has(each))).toBe(false);
  });

  it("are the one even count to 100 that the three plates miss", () => {
    expect(coverage(ungeared, { from: 2, to: 100, methods: ["simple"] }).expected).toContainEqual({
      divisions: 96,
      because: ["round"],
    });
  });
});

describe("without a plate", () => {
  it("is lost what a head without it does not do, and nothing else", () => {
    fc.assert(
      fc.property(heads(small), (head) => {
        const { counts, withoutPlate: lost } = coverage(head, { ...asked, circleSizes: [], gearSizes: [] });
        const done = counts.filter(({ kind }) => kind !== null).map(({ divisions }) => divisions);
        expect(lost).toEqual(
          head.plates.map(({ name }) => {
            const left = withoutPlate(head, name);
            const still = left === null ? [] : doneOn(left, done, search);
            return { plate: name, lost: done.filter((each) => !still.includes(each)) };
          }),
        );
      }),
      runs(60),
    );
  });

  it("by hand: without the plate of 37 to 49 goes what needs one of its circles, as 13 and 26 do the 39", () => {
    const { withoutPlate: lost } = coverage(ungeared, { from: 2, to: 52, methods: ["simple"] });
    expect(lost.find(({ plate }) => plate === "3")?.lost).toEqual([13, 26, 37, 39, 41, 43, 47, 49, 52]);
  });
});

describe("one circle more", () => {
  it("unlocks what the head with it does, and nothing that it does is left out", () => {
    fc.assert(
      fc.property(heads(small), (head) => {
        const { missing, bestCircles } = coverage(head, { ...asked, gearSizes: [] });
        const owned = new Set(head.plates.flatMap(({ faces }) => faces.flatMap(({ circles }) => circles)));
        const tried = asked.circleSizes
          .filter((circle) => !owned.has(circle))
          .map((circle) => ({ circle, unlocks: doneOn(withPlate(head, [circle]), missing, search) }))
          .filter(({ unlocks }) => unlocks.length > 0)
          .sort((a, b) => b.unlocks.length - a.unlocks.length || a.circle - b.circle);
        const firsts = tried.filter(
          ({ unlocks }, at) => !tried.slice(0, at).some((each) => each.unlocks.join() === unlocks.join()),
        );
        expect(bestCircles.map(({ circle, unlocks }) => ({ circle, unlocks }))).toEqual(firsts.slice(0, 6));
        for (const { circle, alike, unlocks } of bestCircles)
          expect(alike).toEqual(
            tried.filter((each) => each.circle !== circle && each.unlocks.join() === unlocks.join()).map((each) => each.circle),
          );
      }),
      runs(36),
    );
  });

  it("is a multiple of 61 for 61, and of 7 for what a dial does not do", () => {
    expect(coverage(ungeared, { from: 61, to: 61 }).bestCircles).toEqual([
      { circle: 61, alike: [122, 183], unlocks: [61], wanted: [], mayFoul: [] },
    ]);
    for (const { circle } of coverage(ready("ratio-90-dial"), { from: 7, to: 7 }).bestCircles) expect(circle % 7).toBe(0);
  });

  it("is by gears too, where no simple move over it does the count", () => {
    const few = defineHead({ ...ungeared, id: "few", gears: [24, 28, 40, 44, 48] });
    const { missing, bestCircles } = coverage(few, { from: 300, to: 400, gearSizes: [] });
    const geared = bestCircles.filter(({ circle, unlocks }) => unlocks.some((each) => (40 * circle) % each !== 0));
    expect(geared.length).toBeGreaterThan(0);
    for (const { circle, unlocks } of bestCircles) expect(doneOn(withPlate(few, [circle]), missing)).toEqual(unlocks);
  });
});

describe("one plate more", () => {
  it("unlocks what the head with it does, circles of a face in pairs among it", () => {
    for (const head of [ungeared, ready("ratio-72-table-15-49"), ready("ratio-90-dial")]) {
      const { missing, bestPlates } = coverage(head, { from: 2, to: 150 });
      expect(bestPlates.map(({ made }) => made)).toEqual(expect.arrayContaining(["usual", "own"]));
      for (const { faces, unlocks } of bestPlates) expect(doneOn(withPlate(head, ...faces), missing)).toEqual(unlocks);
      const lengths = bestPlates.map(({ unlocks }) => unlocks.length);
      expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    }
  });

  it("of one's own has six circles, which do at least what the best circle does", () => {
    const { bestPlates, bestCircles } = coverage(ungeared, { from: 2, to: 400 });
    const own = bestPlates.find(({ made }) => made === "own");
    expect(own?.faces[0]).toHaveLength(6);
    expect(own?.unlocks.length).toBeGreaterThan(bestCircles[0]?.unlocks.length ?? 0);
  });
});

describe("one gear more, or two", () => {
  it("unlock what the head with them does, and nothing that they do is left out", () => {
    fc.assert(
      fc.property(gearable, (head) => {
        const { missing, bestGears } = coverage(head, { ...asked, circleSizes: [] });
        for (const { gears, alike, unlocks } of bestGears)
          for (const each of [gears, ...alike]) expect(doneOn(withGears(head, each), missing, search)).toEqual(unlocks);
        const ones = asked.gearSizes.map((teeth) => ({
          gears: [teeth],
          does: doneOn(withGears(head, [teeth]), missing, search),
        }));
        const doneByOne = (teeth: number) => ones.find(({ gears }) => gears[0] === teeth)?.does.length ?? 0;
        const twos = asked.gearSizes
          .flatMap((first, index) => asked.gearSizes.slice(index).map((second) => [first, second] as const))
          .map(([first, second]) => ({ gears: [first, second], does: doneOn(withGears(head, [first, second]), missing, search) }))
          .filter(({ gears: [first = 0, second = 0], does }) => does.length > Math.max(doneByOne(first), doneByOne(second)));
        const told = (many: number) =>
          byLength(bestGears.filter(({ gears }) => gears.length === many).map((each) => each.unlocks));
        const best = (tried: readonly { readonly does: readonly number[] }[]) =>
          byLength([...new Map(tried.map(({ does }) => [does.join(), does])).values()])
            .filter((length) => length > 0)
            .slice(0, 3);
        expect(told(1)).toEqual(best(ones));
        expect(told(2)).toEqual(best(twos));
      }),
      runs(24),
    );
  });

  it("are none where the plate cannot be geared, or no gears are asked for", () => {
    expect(coverage(ready("ratio-90-table-15-49"), { from: 2, to: 100 }).bestGears).toEqual([]);
    expect(coverage(ungeared, { from: 2, to: 100, methods: ["simple"] }).bestGears).toEqual([]);
  });

  it("are any gear at all where what is missing is an idler, and two gears where it is two", () => {
    const spec = { wormRatio: 40, plates: [{ name: "1", circles: [15, 16] }], gears: [24, 48], idlers: [], rearPin: false };
    for (const onePair of [0, 1, 2]) {
      const head = defineHead({ ...spec, gearing: { idlersWithCrank: { onePair, twoPairs: 0 } } });
      const { missing, bestGears } = coverage(head, { from: 41, to: 90, teethPerMove: 1, gearSizes: [23, 29], circleSizes: [] });
      expect(bestGears.length).toBeGreaterThan(0);
      for (const { gears, alike, unlocks } of bestGears)
        for (const each of [gears, ...alike])
          expect(doneOn(withGears(head, each), missing, { teethPerMove: 1 })).toEqual(unlocks);
    }
  });

  it("say which counts only a train does that may foul", () => {
    // Small gears leave no room beside the shafts of a train of two pairs.
    const tight = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 16] }], gears: [8, 42, 10] });
    const { missing, bestGears } = coverage(tight, {
      from: 41,
      to: 100,
      teethPerMove: 1,
      circleSizes: [],
      gearSizes: [9, 13, 47],
    });
    expect(bestGears.some(({ mayFoul }) => mayFoul.length > 0)).toBe(true);
    for (const { gears, unlocks, mayFoul } of bestGears) {
      const widened = withGears(tight, gears);
      const foul = unlocks.filter((each) => {
        const [setting] = indexDivisions(widened, each, { teethPerMove: 1 }).settings;
        return setting !== undefined && kindOf(setting) === "may-foul";
      });
      expect(mayFoul).toEqual(foul);
      expect(missing).toEqual(expect.arrayContaining([...mayFoul]));
    }
  });
});

describe("a list of one's own", () => {
  const want = [61, 67, 96, 127];
  const answer = coverage(ungeared, { from: 2, to: 100, want });

  it("is told apart: what is done, and what is missing, beyond the range too", () => {
    expect(answer.want?.done).toEqual([96]);
    expect(answer.want?.missing).toEqual([61, 67, 127]);
    expect(answer.missing).toContain(127);
    expect(answer.counts.at(-1)?.divisions).toBe(100);
  });

  it("ranks what does most of it first", () => {
    const [best] = answer.bestGears;
    expect(best?.wanted.length).toBeGreaterThanOrEqual(2);
    const most = coverage(ungeared, { from: 2, to: 100 }).bestGears[0]?.unlocks.length ?? 0;
    expect(best?.unlocks.length).toBeLessThanOrEqual(most);
  });

  it("is done whole by the smallest set", () => {
    const { circles = [], gears = [] } = answer.want?.set ?? {};
    const head = circles.reduce((each, circle) => withPlate(each, [circle]), withGears(ungeared, gears));
    expect(doneOn(head, want)).toEqual(want);
    expect(answer.want?.set.smallest).toBe(true);
  });

  it("and by no smaller one, each count by a circle or by one or two gears: every set tried on heads", () => {
    fc.assert(
      fc.property(gearable, fc.uniqueArray(fc.integer({ min: 5, max: 40 }), { minLength: 1, maxLength: 4 }), (head, list) => {
        const sizes = { circleSizes: [5, 6, 7, 11, 13, 14], gearSizes: [8, 9, 10, 12] };
        const told = coverage(head, { from: 2, to: 3, want: list, teethPerMove: 2, ...sizes }).want;
        if (told === null) throw new Error("a list was given");
        const pieces = [
          ...sizes.circleSizes.map((circle) => ({ circle, gear: null })),
          ...[...sizes.gearSizes, ...sizes.gearSizes].map((gear) => ({ circle: null, gear })),
        ];
        /** Each count by one circle with the gears owned, or by two gears at most over owned circles. */
        const does = (set: typeof pieces) => {
          const bought = set.flatMap(({ gear }) => gear ?? []);
          const pairs = bought.length < 2 ? [bought] : bought.flatMap((one, at) => bought.slice(at + 1).map((two) => [one, two]));
          const widened = [
            ...set.flatMap(({ circle }) => (circle === null ? [] : [withPlate(head, [circle])])),
            ...pairs.map((gears) => withGears(head, gears)),
          ];
          return list.filter((each) => widened.some((one) => doneOn(one, [each], search).length > 0));
        };
        const chosen = [
          ...told.set.circles.map((circle) => ({ circle, gear: null })),
          ...told.set.gears.map((gear) => ({ circle: null, gear })),
        ];
        expect([...does(chosen)].sort((a, b) => a - b)).toEqual([...told.done, ...told.missing].sort((a, b) => a - b));
        expect(told.set.smallest).toBe(true);
        // All sets of one fewer, where they are few enough to be tried.
        const smaller = chosen.length - 1;
        if (smaller < 0 || smaller > 2) return;
        for (const set of setsOf(pieces, smaller)) expect(does(set).length).toBeLessThan(told.done.length + told.missing.length);
      }),
      runs(24),
    );
  });

  it("of sets as small as each other takes the one that does the most besides", () => {
    const shop = defineHead({
      wormRatio: 60,
      plates: [{ name: "B", circles: [21, 23, 27, 29, 31, 33] }],
      gears: [30, 40, 45, 63],
    });
    const {
      want: told,
      bestGears: [best],
    } = coverage(shop, { from: 2, to: 120, want: [101] });
    expect(told?.set.circles).toEqual([]);
    const besides = doneOn(withGears(shop, told?.set.gears ?? []), span(2, 120)).length;
    // A circle of 101 does it as well, and next to nothing besides.
    expect(besides).toBeGreaterThan(doneOn(withPlate(shop, [101]), span(2, 120)).length);
    expect(best?.unlocks.length).toBeGreaterThan(1);
  });

  it("leaves what no circle and no gears of the sizes do, and says so", () => {
    const { want: told } = coverage(ready("ratio-90-dial"), { from: 2, to: 10, want: [7, 211, 8], gearSizes: [20] });
    expect(told).toEqual({ done: [8], missing: [7], left: [211], set: { circles: [7], gears: [], smallest: true } });
  });

  it("mixes circles and gears where that is the fewest: six primes by a circle of 127 and three gears", () => {
    const list = [53, 59, 61, 67, 71, 127];
    const { want: told } = coverage(ungeared, { from: 2, to: 3, want: list });
    expect(told?.set).toEqual({ circles: [127], gears: [24, 36, 100], smallest: true });
    expect(doneOn(withGears(withPlate(ungeared, [127]), [24, 36, 100]), list)).toEqual(list);
  });
});

/** Every set of so many pieces. */
function setsOf<Piece>(pieces: readonly Piece[], many: number): readonly Piece[][] {
  if (many === 0) return [[]];
  return pieces.flatMap((piece, index) => setsOf(pieces.slice(index + 1), many - 1).map((rest) => [piece, ...rest]));
}

describe("work is bounded, and what is cut short is said", () => {
  it("and is nothing on the ready heads", () => {
    for (const head of [threePlates, ungeared]) {
      const { complete, untried } = coverage(head, { from: 2, to: 400, want: [61, 67, 127] });
      expect([complete, untried]).toEqual([true, []]);
    }
  });

  it("leaves what was tallied so far, and says of which part it was", () => {
    const { lacking, sizes } = whatIsLacking(ungeared, span(50, 130));
    const whole = effortOf(1_000_000_000);
    const cut = effortOf(20_000);
    const [all, some] = [tallyGears(lacking, sizes, whole), tallyGears(lacking, sizes, cut)];
    expect([isCut(whole), isCut(cut)]).toEqual([false, true]);
    for (const teeth of sizes) {
      const both = all.two(teeth, 72);
      expect(anyOf(both, some.two(teeth, 72))).toEqual(both);
    }
    const circles = effortOf(200);
    const found = tallyCircles(lacking, span(50, 130), circles).length;
    expect([isCut(circles), found < tallyCircles(lacking, span(50, 130), whole).length]).toEqual([true, true]);
    expect(countsIn(doneBy(lacking, lacking.search, effortOf(0)))).toBe(0);
    const bestOfNone = bestGears(lacking, all, 3, effortOf(0));
    expect(bestOfNone.filter(({ gears }) => gears.length === 2)).toEqual([]);
    expect(untriedOfKit({ ...kitEfforts(), gears: cut, circles }, false)).toEqual([
      { code: "settings" },
      { code: "circles" },
      { code: "gears" },
    ]);
  });

  it("calls no set the smallest that it could not show to be, and it does the list all the same", () => {
    const { lacking, sizes } = whatIsLacking(ungeared, [53, 59, 61, 67, 71, 127]);
    const circles = tallyCircles(lacking, span(50, 130), effortOf(1e9));
    const gears = tallyGears(lacking, sizes, effortOf(1e9));
    for (const most of [0, 100, 2000]) {
      const set = smallestSet(lacking.wanted, lacking.counts.length, circles, gears, effortOf(most));
      const pairs = set.gears.flatMap((one, at) => set.gears.slice(at + 1).map((two) => gears.two(one, two)));
      const does = anyOf(
        lacking.wanted.map(() => 0),
        ...set.circles.map((each) => each.does),
        ...pairs,
      );
      expect(set.smallest).toBe(false);
      expect(countsIn(does)).toBe(lacking.counts.length);
    }
  });
});

/** What a head lacks of a list, all of which is wanted. */
function whatIsLacking(head: Head, list: readonly number[]): { readonly lacking: Lacking; readonly sizes: readonly number[] } {
  const counts = list.filter((each) => doneOn(head, [each]).length === 0);
  const wanted = noCounts(counts.length);
  for (const place of counts.keys()) addCount(wanted, place);
  return { lacking: { search: searchOn(head, {}), counts, wanted }, sizes: usualGears };
}

describe("refusals", () => {
  const wrong = (options: unknown) => () => coverage(threePlates, options as never);

  it.each([
    [{ from: 9, to: 2 }, "conflict to", "to: 2 is below 9; give the smaller count first"],
    [{ from: 2, to: 2002 }, "too-many to", "to: 2,001 counts are too many to go through; give at most 2,000 at a time"],
    [{ from: 0, to: 2 }, "out-of-range from", "from: 0 is not a count of divisions"],
    [{ from: 2, to: 9, want: 61 }, "unreadable want", "want: 61 is not a list; give counts in a list"],
    [{ from: 2, to: 9, want: [61, 0.5] }, "unreadable want[1]", "want[1]: 0.5 is not a count of divisions"],
    [{ from: 2, to: 9, want: span(2, 202) }, "too-many want", "want: it has 201 counts; give at most 200"],
    [
      { from: 2, to: 9, circleSizes: [1] },
      "out-of-range circleSizes[0]",
      "circleSizes[0]: 1 is not a number of holes in a circle; give 2 to 10,000",
    ],
    [
      { from: 2, to: 9, gearSizes: [7] },
      "out-of-range gearSizes[0]",
      "gearSizes[0]: 7 is not a number of teeth of a gear; give 8 to 1,000",
    ],
    [{ from: 2, to: 9, methods: ["plain"] }, "unknown-word methods", 'methods: there is no method "plain"'],
    [{ from: 2, to: 9, wants: [61] }, "unknown-key options", 'options: there is no key "wants"'],
  ])("%j", (options, kind, said) => {
    expect(refusalKinds(wrong(options))).toEqual([kind]);
    expect(refusalLines(wrong(options)).join("\n")).toContain(said);
  });
});
