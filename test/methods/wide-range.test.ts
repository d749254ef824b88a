import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  exactSettings,
  type Head,
  indexDivisions,
  indexRows,
  nearSettings,
  planJob,
  prove,
  ratio,
  revolutions,
  whatMoveGives,
} from "../../src/index.ts";
import { wideHead } from "../support/known-jobs.ts";
import { refusalLines } from "../support/refusal.ts";

/*
 * By trial: every move of both cranks on small circles, in whole parts of a turn of the work.
 */
function doneByTrial({ circles, small, ratio, worm }: Spec, divisions: number, teeth: number): boolean {
  for (const large of circles) {
    for (const holes of small) {
      // The work turns a/(large·worm) + b/(holes·ratio·worm).
      const perTurn = large * holes * ratio * worm;
      if ((perTurn * teeth) % divisions !== 0) continue;
      const wanted = (perTurn * teeth) / divisions;
      for (let a = 0; a * holes * ratio <= wanted; a += 1) if ((wanted - a * holes * ratio) % large === 0) return true;
    }
  }
  return false;
}

interface Spec {
  readonly worm: number;
  readonly ratio: number;
  readonly circles: readonly number[];
  readonly small: readonly number[];
}

const circlesOf = (most: number) => fc.uniqueArray(fc.integer({ min: 2, max: 12 }), { minLength: 1, maxLength: most });
const specs: fc.Arbitrary<Spec> = fc.record({
  worm: fc.integer({ min: 1, max: 9 }),
  ratio: fc.integer({ min: 2, max: 9 }),
  circles: circlesOf(3),
  small: circlesOf(2),
});
const headOf = ({ worm, ratio, circles, small }: Spec): Head =>
  defineHead({ wormRatio: worm, plates: [{ name: "1", circles }], smallCrank: { ratio, circles: small } });

/** A count that some circles close: a divisor of what all of them make. */
function oneThatCloses({ worm, ratio, circles, small }: Spec, pick: number): number {
  const whole = worm * ratio * (circles[0] ?? 1) * (small[0] ?? 1);
  const divisors = Array.from({ length: whole - 1 }, (_, index) => index + 2).filter((count) => whole % count === 0);
  return divisors[pick % divisors.length] ?? whole;
}

describe("both cranks", () => {
  it("do a count just where some move of both turns the work by it, of as many teeth as are tried", () => {
    fc.assert(
      fc.property(specs, fc.integer({ min: 2, max: 400 }), fc.integer({ min: 1, max: 5 }), (spec, divisions, most) => {
        const methods = ["simple", "wide-range"] as const;
        const found = !exactSettings(headOf(spec), { divisions }, { methods, teethPerMove: most }).next().done;
        const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
        const teeth = Array.from({ length: Math.min(most, Math.max(1, divisions - 1)) }, (_, index) => index + 1);
        expect(found).toBe(teeth.some((each) => gcd(each, divisions) === 1 && doneByTrial(spec, divisions, each)));
      }),
    );
  });

  it("make on each pair of circles the move with the fewest spaces of the small one, and are put in order by handling", () => {
    fc.assert(
      fc.property(specs, fc.nat(), fc.boolean(), (spec, pick, onPlate) => {
        const divisions = oneThatCloses(spec, pick);
        const head = { ...headOf(spec), mounted: onPlate ? "1" : null };
        const found = [...exactSettings(head, { divisions }, { methods: ["wide-range"], teethPerMove: 1 })].map((setting) => {
          if (setting.method !== "wide-range") throw new Error("not by both cranks");
          expect(prove(setting, { walkOn: head }).closes).toBe(true);
          const { small, turns, spaces, circle, plate, armsEnclose } = setting;
          expect([small.armsEnclose, small.ratio]).toEqual([small.spaces + 1, spec.ratio]);
          expect([plate, armsEnclose]).toEqual(circle === null ? [null, null] : ["1", spaces + 1]);
          expect(small.spaces).toBeLessThan(small.circle);
          if (circle !== null) expect(spaces).toBeLessThan(circle);
          return {
            circle,
            large: turns * (circle ?? 1) + spaces,
            small: small.turns * small.circle + small.spaces,
            of: small.circle,
          };
        });
        const wanted = new Map<string, (typeof found)[number]>();
        for (const large of spec.circles) {
          for (const of of spec.small) {
            const all = (large * of * spec.ratio * spec.worm) / divisions;
            for (let small = 0; small * large <= all; small += 1) {
              const rest = all - small * large;
              if (!Number.isInteger(rest) || rest % (of * spec.ratio) !== 0) continue;
              const spaces = rest / (of * spec.ratio);
              const isWhole = spaces % large === 0;
              const move = { circle: isWhole ? null : large, large: isWhole ? spaces / large : spaces, small, of };
              if (small > 0) wanted.set(JSON.stringify(move), move);
              break;
            }
          }
        }
        const inOrder = (each: (typeof found)[number]) => [
          each.circle === null || head.mounted === "1" ? 0 : 1,
          each.small / each.of,
          (each.circle === null ? 0 : each.large % each.circle) + (each.small % each.of),
          each.circle === null ? each.large : Math.floor(each.large / each.circle),
        ];
        const compare = (a: readonly number[], b: readonly number[]) => {
          const at = a.findIndex((value, index) => value !== b[index]);
          return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
        };
        expect(found.map((each) => JSON.stringify(each)).sort()).toEqual([...wanted.keys()].sort());
        expect(found.map(inOrder)).toEqual(found.map(inOrder).toSorted(compare));
      }),
    );
  });

  it("are tried where a head has a small crank, and never come before the large one alone", () => {
    expect(indexDivisions(wideHead, 100).settings[0]?.method).toBe("simple");
    const [first] = indexDivisions(wideHead, 126).settings;
    expect(first).toMatchObject({
      method: "wide-range",
      circle: 42,
      turns: 0,
      spaces: 11,
      small: { circle: 54, turns: 5, spaces: 30 },
    });
    const { smallCrank: _, ...one } = wideHead;
    expect(indexDivisions(one, 126).exact).toBe(false);
    expect(indexDivisions(one, 126, { methods: ["wide-range"] }).impossible?.reasons).toEqual([
      { method: "wide-range", code: "without", part: "small-crank" },
    ]);
  });

  it("try more teeth per move where of one the large crank would have to go back", () => {
    const [setting] = indexDivisions(wideHead, 123).settings;
    expect(setting).toMatchObject({ method: "wide-range", teethPerMove: 2 });
    expect(indexDivisions(wideHead, 123, { teethPerMove: 1 }).exact).toBe(false);
  });

  it("lose no count to a wider kit, and every nearest count is done", () => {
    const wider = { ...wideHead, smallCrank: { ratio: 100, circles: [49, 54, 100] } };
    const done = (head: Head) =>
      [...indexRows(head, { from: 2, to: 300 })].flatMap(({ divisions, setting }) => (setting ? divisions : []));
    expect(done(wider)).toEqual(expect.arrayContaining(done(wideHead)));
    for (const divisions of [127, 1009, 5003]) {
      const { nearestCounts } = indexDivisions(wideHead, divisions);
      expect(nearestCounts).toHaveLength(2);
      for (const count of nearestCounts) expect(indexDivisions(wideHead, count).exact).toBe(true);
    }
  });

  it.each<[string, object, string]>([
    ["another ratio", { small: { ratio: 60, circle: 54, turns: 5, spaces: 30, armsEnclose: 31 } }, "setting: turns the work by"],
    [
      "a circle that the small crank has not",
      { small: { ratio: 100, circle: 108, turns: 5, spaces: 60, armsEnclose: 61 } },
      "setting: needs a circle of 108 for the small crank",
    ],
    [
      "no move of the small crank",
      { small: undefined },
      'setting: a move by the method "wide-range" needs a move of the small crank',
    ],
  ])("a setting with %s is refused", (_, changed, line) => {
    const [setting] = indexDivisions(wideHead, 126).settings;
    const asked = () => planJob(wideHead, { divisions: 126 }, { setting: { ...setting, ...changed } as never });
    expect(refusalLines(asked)[0]).toMatch(new RegExp(`^${line}`));
  });

  it("a setting for another small crank is refused by a head, and by the walk", () => {
    const [setting] = indexDivisions(wideHead, 126).settings;
    if (setting === undefined) throw new Error("126 is not found");
    const other = { ...wideHead, smallCrank: { ratio: 60, circles: [54, 100] } };
    expect(prove(setting, { walkOn: other }).closes).toBe(false);
    expect(refusalLines(() => planJob(other, { divisions: 126 }, { setting }))).toEqual([
      "setting: needs a small crank of 100 turns for one of the large",
    ]);
  });
});

describe("a move of both cranks, as it is set", () => {
  const move = {
    wormRatio: ratio(40),
    turns: 0,
    spaces: 11,
    circle: 42,
    small: { ratio: 100, turns: 5, spaces: 30, circle: 54 },
  };

  it("turns the work by the large crank and a hundredth of the small one", () => {
    expect(whatMoveGives(move).divisions).toBe(126);
    expect(whatMoveGives({ ...move, spaces: 0, circle: null }).spindlePerMove).toBe("1/720");
  });

  it.each<[string, object, string]>([
    [
      "no move of the small crank",
      { small: { ...move.small, turns: 0, spaces: 0 } },
      "setting.small: turns and spaces of 0 are no move; give a move above 0",
    ],
    [
      "no ratio",
      { small: { ...move.small, ratio: 0 } },
      'setting.small.ratio: "0" is not an exact number above 0, such as "40" or "81/2"',
    ],
    [
      "a second part besides",
      { second: { spaces: 1, circle: 20, direction: "with" } },
      "setting: a move of the small crank is neither compound nor geared",
    ],
    [
      "gears besides",
      { gears: { drivers: [24], driven: [48], direction: "with" } },
      "setting: a move of the small crank is neither compound nor geared",
    ],
    [
      "a method that has none",
      { method: "simple" },
      'setting: a move by the method "simple" has no move of the small crank; give one that fits its method',
    ],
    [
      "a key that is none",
      { small: { ...move.small, holes: 3 } },
      'move.small: there is no key "holes"; the keys are ratio, turns, spaces, circle, armsEnclose',
    ],
  ])("with %s is refused", (_, changed, line) => {
    expect(refusalLines(() => whatMoveGives({ ...move, ...changed } as never))).toEqual([line]);
  });
});

describe("what both cranks come near", () => {
  it("one angle of several parts of a turn, by the nearest of all forward", () => {
    const head = headOf({ worm: 7, ratio: 5, circles: [6, 11], small: [9] });
    const near = nearSettings(head, { angle: revolutions(5, 17) }, { methods: ["wide-range"] }).find(
      ({ moves }) => moves === "equal",
    );
    let least = Number.POSITIVE_INFINITY;
    for (const large of [6, 11]) {
      for (let a = 0; a < 4 * large; a += 1) {
        for (let b = 1; b < 4 * 45; b += 1) least = Math.min(least, Math.abs((a / large + b / 45) / 7 - 5 / 17));
      }
    }
    expect((near?.worstArcSeconds ?? 0) / 1_296_000).toBeCloseTo(least, 12);
  });

  it("stands on the plate that is on the head, of circles with as many holes", () => {
    const two = [
      { name: "a", circles: [50] },
      { name: "b", circles: [50] },
    ];
    for (const mounted of ["a", "b"]) {
      const head = defineHead({ wormRatio: 40, plates: two, smallCrank: { ratio: 100, circles: [100] }, mounted });
      const both = nearSettings(head, { divisions: 127 }).find(({ kind }) => kind === "both-cranks");
      expect(both).toMatchObject({ plate: mounted, circle: 50 });
    }
  });

  it("by one move: the nearest of all forward, where it ends within half a step and none closes", () => {
    let seen = 0;
    fc.assert(
      fc.property(specs, fc.integer({ min: 5, max: 60 }), (spec, divisions) => {
        // Where the large crank does it alone nobody asks what the small one would add.
        fc.pre(!spec.circles.some((holes) => (spec.worm * holes) % divisions === 0));
        const near = nearSettings(headOf(spec), { divisions }, { methods: ["wide-range"], teethPerMove: 1 }).find(
          ({ moves }) => moves === "equal",
        );
        let least = Number.POSITIVE_INFINITY;
        for (const large of spec.circles) {
          for (const holes of spec.small) {
            const perTurn = large * holes * spec.ratio * spec.worm;
            for (let a = 0; a * divisions <= 2 * large * spec.worm; a += 1) {
              for (let b = 1; b * divisions <= 2 * holes * spec.ratio * spec.worm; b += 1) {
                least = Math.min(least, Math.abs(divisions * (a * holes * spec.ratio + b * large) - perTurn) / perTurn);
              }
            }
          }
        }
        if (least === 0 || least >= 1 / divisions / 2) {
          expect(near).toBeUndefined();
          return;
        }
        seen += 1;
        expect((near?.closingArcSeconds ?? 0) / 1_296_000).toBeCloseTo(least, 12);
      }),
      { numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(5);
  });

  it("each place by itself: the small crank's hole is the nearest, on the circle that is least off", () => {
    fc.assert(
      fc.property(specs, fc.integer({ min: 2, max: 200 }), (spec, divisions) => {
        const both = nearSettings(headOf(spec), { divisions }).find(({ kind }) => kind === "both-cranks");
        if (both?.kind !== "both-cranks") return;
        const worstOn = (places: number) =>
          Math.max(
            ...Array.from({ length: divisions }, (_, tooth) => {
              const past = (tooth * places) % divisions;
              return Math.min(past, divisions - past) / (divisions * places);
            }),
          );
        const all = spec.small.map((holes) => worstOn(holes * spec.ratio * spec.worm));
        expect(both.worstArcSeconds).toBeCloseTo(Math.min(...all) * 1_296_000, 6);
        // Of circles that are as near the one with the most holes, and for the large crank that which leaves the small one the least.
        const nearest = spec.small.filter((_, index) => (all[index] ?? 0) - Math.min(...all) < 1e-12);
        expect(both.small).toEqual({ ratio: spec.ratio, circle: Math.max(...nearest) });
        const stands = spec.circles.filter((holes) => (spec.ratio * both.small.circle) % holes === 0);
        expect(both.circle).toBe(stands.length === 0 ? null : Math.max(...stands));
      }),
    );
  });
});
