import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  fromExact,
  type Head,
  type HeadSpec,
  indexAngle,
  indexDivisions,
  type NearFromZero,
  type NearMove,
  type NearSetting,
  nearSettings,
  prove,
  ratio,
  readyHeads,
  revolutions,
  spindleTurnsPerMove,
} from "../../src/index.ts";
import { counts, headSpecs, small } from "../support/arbitraries.ts";
import { nearestByTrial } from "../support/near-oracle.ts";

const ready = (id: string): Head => readyHeads.find((head) => head.id === id) ?? defineHead({ wormRatio: 1 });
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const geared = ready("ratio-40-plates-15-49");
const turn = 1_296_000;

const isMove = (near: NearSetting): near is NearMove => near.moves === "equal";
const isFromZero = (near: NearSetting): near is NearFromZero => near.moves === "from-zero";

const scales = fc.record(
  {
    ring: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 360 }) }),
    dial: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 100 }), vernierLines: fc.integer({ min: 1, max: 12 }) }),
  },
  { requiredKeys: [] },
);
/** Heads of every sort, with or without scales. */
const withScales = (size?: typeof small) =>
  fc.tuple(headSpecs(size), scales).map(([spec, more]): HeadSpec => ({ ...spec, ...more }));

/** The least worst error with which a head does a count, in arc-seconds; infinite where it cannot at all. */
function leastError(head: Head, divisions: number, teethPerMove: number): number {
  const { exact, near } = indexDivisions(head, divisions, { teethPerMove, limit: 1 });
  return exact ? 0 : (near[0]?.worstArcSeconds ?? Number.POSITIVE_INFINITY);
}

describe("near settings of one move made over and over", () => {
  it("are those that trying every move finds", () => {
    fc.assert(
      fc.property(headSpecs(small).map(defineHead), fc.integer({ min: 1, max: 4 }), (head, teethPerMove) => {
        for (let divisions = 1; divisions <= 40; divisions += 1) {
          const found = nearSettings(head, { divisions }, { teethPerMove }).filter(isMove);
          const key = (kind: string, teeth: number, closing: string) => `${kind}, ${teeth} a move, ${closing}`;
          expect(
            found.map((near) => key(near.kind, near.teethPerMove, fromExact(near.error.closing).abs().toFraction())).sort(),
          ).toEqual(
            nearestByTrial(head, divisions, teethPerMove)
              .map(({ kind, teeth, closing: { n, d } }) => key(kind, teeth, fromExact(`${n}/${d}`).toFraction()))
              .sort(),
          );
        }
      }),
      { numRuns: 150 },
    );
  });

  it("miss by what the mechanism misses when it is walked through all its moves", () => {
    fc.assert(
      fc.property(withScales(), counts, fc.integer({ min: 1, max: 5 }), (spec, divisions, teethPerMove) => {
        for (const near of nearSettings(defineHead(spec), { divisions }, { teethPerMove }).filter(isMove)) {
          const perMove = fromExact(spindleTurnsPerMove(near));
          const errors = new Map<number, ReturnType<typeof fromExact>>();
          let place = fromExact("0");
          for (let move = 0; move < divisions; move += 1) {
            const wanted = fromExact(`${move * near.teethPerMove}/${divisions}`);
            errors.set(((move * near.teethPerMove) % divisions) + 1, place.sub(wanted));
            place = place.add(perMove);
          }
          expect(errors.size).toBe(divisions);
          expectErrors(near, errors, place.sub(near.teethPerMove).toFraction());
        }
      }),
      { numRuns: 120 },
    );
  });

  it("are never exact, and the mechanism says so", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const answer = indexDivisions(defineHead(spec), divisions, { near: true });
        for (const near of answer.near) {
          expect(near.exact).toBe(false);
          expect(near).not.toHaveProperty("proof");
          expect(near.worstArcSeconds + near.closingArcSeconds).toBeGreaterThan(0);
          if (isMove(near)) expect(prove(near).closes).toBe(false);
        }
      }),
    );
  });
});

/** The errors of all teeth, found one by one, against those that a setting states. */
function expectErrors(near: NearSetting, errors: ReadonlyMap<number, ReturnType<typeof fromExact>>, closing: string): void {
  const at = (tooth: number) => errors.get(tooth) ?? fromExact("0");
  const largest = (list: readonly ReturnType<typeof fromExact>[]) =>
    list.map((each) => each.abs()).reduce((a, b) => (a.gt(b) ? a : b));
  const teeth = errors.size;
  const steps = Array.from({ length: teeth }, (_, index) => at(((index + 1) % teeth) + 1).sub(at(index + 1)));
  expect(near.error.closing).toBe(closing);
  expect(at(near.error.worstTooth).toFraction()).toBe(near.error.worst);
  expect(fromExact(near.error.worst).abs().toFraction()).toBe(largest([...errors.values()]).toFraction());
  expect(near.error.pitch).toBe(largest(steps).toFraction());
  expect(near.closingArcSeconds).toBeCloseTo(Math.abs(fromExact(closing).valueOf()) * turn, 6);
  expect(near.worstArcSeconds).toBeCloseTo(Math.abs(fromExact(near.error.worst).valueOf()) * turn, 6);
  expect(near.pitchArcSeconds).toBeCloseTo(fromExact(near.error.pitch).valueOf() * turn, 6);
}

describe("near settings from one zero", () => {
  it("miss by what setting every position to its nearest place misses", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const head = defineHead(spec);
        for (const near of nearSettings(head, { divisions }).filter(isFromZero)) {
          const perSpindle = fromExact(near.kind === "ring" ? "1" : head.wormRatio).mul(near.placesPerTurn);
          const errorOf = (steps: number) => {
            const wanted = fromExact(`${steps}/${divisions}`);
            const nearest = wanted.mul(perSpindle).add(fromExact("1/2")).floor();
            return nearest.div(perSpindle).sub(wanted);
          };
          const errors = new Map(Array.from({ length: divisions }, (_, steps) => [steps + 1, errorOf(steps)]));
          expectErrors(near, errors, errorOf(divisions).toFraction());
        }
      }),
    );
  });

  it("take the circle with the least worst error of all", () => {
    fc.assert(
      fc.property(headSpecs(), counts, (spec, divisions) => {
        const head = defineHead(spec);
        const [near] = nearSettings(head, { divisions }).filter(({ kind }) => kind === "nearest-hole");
        if (near === undefined) return;
        for (const plate of head.plates) {
          const alone = { ...spec, plates: [plate], gears: [], rearPin: false };
          for (const { worstArcSeconds } of nearSettings(defineHead(alone), { divisions }).filter(
            ({ kind }) => kind === "nearest-hole",
          )) {
            expect(worstArcSeconds).toBeGreaterThanOrEqual(near.worstArcSeconds);
          }
        }
      }),
    );
  });

  it("come back to the start on a whole worm ratio, and are never half a space off", () => {
    for (let divisions = 2; divisions <= 1000; divisions += 1) {
      const hole = nearSettings(ungeared, { divisions }, { teethPerMove: 1 }).find(({ kind }) => kind === "nearest-hole");
      if (hole === undefined) continue;
      expect(hole.closingArcSeconds).toBe(0);
      expect(hole.worstArcSeconds).toBeLessThanOrEqual(turn / (2 * 40 * 49) + 1e-9);
    }
  });

  it("name no turns and spaces, as the moves between positions differ", () => {
    const [hole] = nearSettings(ungeared, { divisions: 787 }).filter(({ kind }) => kind === "nearest-hole");
    expect(hole).toMatchObject({
      moves: "from-zero",
      circle: 49,
      turns: null,
      spaces: null,
      armsEnclose: null,
      plateStopPin: "in",
    });
  });

  it("read a dial to half its least count", () => {
    const table = ready("ratio-90-dial");
    const near = nearSettings(table, { divisions: 97 });
    expect(near.map(({ kind }) => kind)).toEqual(["dial", "ring"]);
    expect(near[0]?.closingArcSeconds).toBe(0);
    expect(near[0]?.worstArcSeconds).toBeLessThanOrEqual(5);
    expect(near[1]?.worstArcSeconds).toBeLessThanOrEqual(1800);
  });

  it("has no step to a neighbour where there is one position only, on a fractional worm ratio", () => {
    const head = defineHead({ wormRatio: "5/2", plates: [{ name: "1", circles: [3] }], dial: { marksPerTurn: 5 } });
    const near = nearSettings(head, { divisions: 1 });
    expect(near.map(({ kind }) => kind)).toEqual(["dial", "simple", "nearest-hole"]);
    expect(near.map(({ pitchArcSeconds }) => pitchArcSeconds)).toEqual([0, 0, 0]);
    expect(near.map(({ worstArcSeconds }) => worstArcSeconds)).toEqual([0, 0, 0]);
    expect(near.every(({ closingArcSeconds }) => closingArcSeconds > 0)).toBe(true);
  });
});

describe("the list of near settings", () => {
  it("is in order of worst error", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const errors = nearSettings(defineHead(spec), { divisions }).map(({ worstArcSeconds }) => worstArcSeconds);
        expect(errors).toEqual(errors.toSorted((a, b) => a - b));
      }),
    );
  });

  it("leaves out what would put a tooth as near to its neighbour's place", () => {
    fc.assert(
      fc.property(withScales(), fc.integer({ min: 1, max: 5000 }), (spec, divisions) => {
        for (const near of nearSettings(defineHead(spec), { divisions })) {
          expect(near.worstArcSeconds).toBeLessThan(turn / (2 * divisions));
        }
      }),
    );
  });

  it("never gets worse with a wider kit or more teeth per move", () => {
    const gear = fc.integer({ min: 8, max: 48 });
    fc.assert(
      fc.property(withScales(), counts, fc.integer({ min: 1, max: 4 }), gear, (spec, divisions, teethPerMove, added) => {
        const head = defineHead(spec);
        const before = leastError(head, divisions, teethPerMove) + 1e-9;
        expect(leastError(head, divisions, teethPerMove + 3)).toBeLessThanOrEqual(before);
        const gears = [...(spec.gears ?? []), added];
        expect(
          leastError(defineHead({ ...spec, gearing: spec.gearing ?? {}, gears }), divisions, teethPerMove),
        ).toBeLessThanOrEqual(before);
        const plates = [...(spec.plates ?? []), { name: "another", circles: [added] }];
        expect(leastError(defineHead({ ...spec, plates }), divisions, teethPerMove)).toBeLessThanOrEqual(before);
      }),
    );
  });

  it("is empty where an exact setting was found, unless asked for", () => {
    expect(indexDivisions(geared, 127).near).toEqual([]);
    const near = indexDivisions(geared, 127, { near: true }).near;
    expect(near.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["compound", "nearest-hole"]));
    expect(near.map(({ kind }) => kind)).not.toContain("one-pair");
  });

  it("offers no move that an easier exact setting makes needless", () => {
    expect(indexDivisions(geared, 60, { near: true }).near.filter(isMove)).toEqual([]);
  });

  it("holds only what the methods asked for allow, and the scales", () => {
    const { near } = indexDivisions(geared, 787, { methods: ["differential"] });
    expect(near.filter(({ method }) => method !== "differential" && method !== "ring")).toEqual([]);
    expect(near.length).toBeGreaterThan(0);
  });
});

describe("near settings of an angle", () => {
  it("miss by the error of the one move", () => {
    const { exact, near } = indexAngle(ungeared, revolutions("29/3601"));
    expect(exact).toBe(false);
    for (const each of near.filter(isMove)) {
      const error = fromExact(spindleTurnsPerMove(each)).sub(fromExact("29/3601"));
      expect(each.teethPerMove).toBe(1);
      expect([each.error.closing, each.error.worst]).toEqual([error.toFraction(), error.toFraction()]);
    }
    expect(near.map(({ kind }) => kind)).toContain("compound");
  });
});

describe("what is not tried", () => {
  it("is gearing for an angle of over one turn of the work", () => {
    const kinds = indexAngle(geared, revolutions("100003/997")).near.map(({ kind }) => kind);
    expect(kinds).toContain("compound");
    expect(kinds).not.toContain("two-pair");
    expect(indexAngle(geared, revolutions("303/9973"), { near: true }).near.map(({ kind }) => kind)).toContain("two-pair");
  });

  it("is a move where the direct plate serves", () => {
    const head = defineHead({
      wormRatio: 5,
      plates: [{ name: "1", circles: [19] }],
      directPlates: [{ name: "nose", holes: 24 }],
    });
    expect(indexDivisions(head, 24, { near: true }).near.map(({ kind }) => kind)).toEqual(["nearest-hole"]);
    expect(nearSettings(head, { divisions: 24 }, { methods: ["simple"] }).filter(isMove).length).toBeGreaterThan(0);
  });
});

describe("how near a head comes", () => {
  // The figures to reach were found by an independent trial of every circle, pair and train.
  const closingErrors = (head: Head, teethPerMove: number) => {
    const errors: number[] = [];
    for (let divisions = 2; divisions <= 1000; divisions += 1) {
      const { exact, near } = indexDivisions(head, divisions, { teethPerMove, limit: 1 });
      errors.push(exact ? 0 : Math.min(...near.filter(isMove).map(({ closingArcSeconds }) => closingArcSeconds)));
    }
    return errors.sort((a, b) => a - b);
  };

  it("three plates, no gears, up to 12 teeth per move: half of all counts within 21″, all within 682″", () => {
    const errors = closingErrors(ungeared, 12);
    expect(errors.filter((error) => error === 0)).toHaveLength(337);
    expect(errors[499]).toBeCloseTo(21.36, 2);
    expect(errors.at(-1)).toBeCloseTo(682.11, 2);
  });

  it("three plates and twelve gears, one tooth per move: all within 53″", () => {
    expect(closingErrors(geared, 1).at(-1)).toBeCloseTo(53.0, 1);
  });

  it("two faces and nineteen gears, one tooth per move: all within 7.04″", () => {
    expect(closingErrors(ready("ratio-40-faces-24-66"), 1).at(-1)).toBeCloseTo(7.04, 2);
  });

  it("comes as near to 106 as the handbook's 1 + 7/39 + 29/41 for five teeth, which is 40.5″ out (our arithmetic)", () => {
    const handbook = {
      wormRatio: ratio(40),
      turns: 1,
      spaces: 7,
      circle: 39,
      second: { spaces: 29, circle: 41, direction: "with" },
    } as const;
    const closing = fromExact(spindleTurnsPerMove(handbook)).mul(106).sub(5).valueOf() * turn;
    expect(closing).toBeCloseTo(40.5, 1);
    const best = nearSettings(ungeared, { divisions: 106 }, { teethPerMove: 5 }).filter(isMove)[0];
    expect(best?.closingArcSeconds).toBeLessThanOrEqual(closing + 1e-9);
  });
});
