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

  it("go forward, the small one as little as can be on its circles, and are proved on the head", () => {
    fc.assert(
      fc.property(specs, fc.integer({ min: 2, max: 400 }), (spec, divisions) => {
        const head = headOf(spec);
        for (const setting of exactSettings(head, { divisions }, { methods: ["wide-range"] })) {
          if (setting.method !== "wide-range") throw new Error("not by both cranks");
          const { small, turns, spaces, circle } = setting;
          expect(Math.min(small.turns, small.spaces, turns, spaces)).toBeGreaterThanOrEqual(0);
          expect(small.turns + small.spaces).toBeGreaterThan(0);
          expect(small.spaces).toBeLessThan(small.circle);
          expect(small.armsEnclose).toBe(small.spaces + 1);
          // One hole of the large circle less would take a whole number more of the small crank's.
          expect(small.turns * small.circle + small.spaces).toBeLessThan(small.ratio * small.circle);
          expect(spaces === 0 ? circle : circle !== null && spaces < circle).toBe(spaces === 0 ? null : true);
          expect(prove(setting, { walkOn: head }).closes).toBe(true);
        }
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

describe("what both cranks come near", () => {
  it("by one move: no multiple of what two circles make is nearer", () => {
    fc.assert(
      fc.property(specs, fc.integer({ min: 5, max: 60 }), (spec, divisions) => {
        const head = headOf(spec);
        const near = nearSettings(head, { divisions }, { methods: ["wide-range"] }).find(({ moves }) => moves === "equal");
        if (near === undefined) return;
        // Every move forward of both cranks that ends within half a step.
        let least = Number.POSITIVE_INFINITY;
        for (const large of spec.circles) {
          for (const holes of spec.small) {
            const perTurn = large * holes * spec.ratio * spec.worm;
            for (let a = 0; a * divisions <= 2 * large * spec.worm; a += 1) {
              for (let b = 1; b * divisions <= 2 * holes * spec.ratio * spec.worm; b += 1) {
                const turned = a * holes * spec.ratio + b * large;
                const off = Math.abs(divisions * turned - perTurn) / perTurn;
                if (off > 0) least = Math.min(least, off);
              }
            }
          }
        }
        expect(near.closingArcSeconds / 1_296_000).toBeLessThanOrEqual(least * (1 + 1e-9));
      }),
      { numRuns: 60 },
    );
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
        expect(both.circle === null || (spec.ratio * both.small.circle) % both.circle === 0).toBe(true);
      }),
    );
  });
});
