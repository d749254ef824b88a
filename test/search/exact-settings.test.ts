import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  exactSettings,
  fromExact,
  type Head,
  type HeadSpec,
  indexAngle,
  indexDivisions,
  type Method,
  prove,
  revolutions,
  type SearchOptions,
  type Setting,
  type Target,
  wormRatioOf,
} from "../../src/index.ts";
import { counts, headSpecs, heads, small, teethPerMove } from "../support/arbitraries.ts";
import { closesOnBench } from "../support/mechanism.ts";
import { secondOf } from "../support/parts.ts";
import { settingKey } from "../support/setting-key.ts";
import { runs } from "../support/sweep.ts";
import { take } from "../support/take.ts";

const settingsOf = (head: Head, target: Target, options: SearchOptions) => take(300, head, target, options);
const keysOf = (...of: Parameters<typeof settingsOf>): string[] => settingsOf(...of).map(settingKey);
const fewCounts = fc.integer({ min: 1, max: 120 });

describe("every setting", () => {
  it("closes when all its moves are made, and carries that proof", () => {
    fc.assert(
      fc.property(heads(), fewCounts, teethPerMove, (head, divisions, teeth) => {
        for (const setting of settingsOf(head, { divisions }, { teethPerMove: teeth }).slice(0, 20)) {
          expect(setting.proof).toEqual(prove(setting));
          expect(prove(setting, { walkOn: head })).toEqual({ ...setting.proof, closes: true, shownBy: "walk" });
          expect(closesOnBench(setting, head)).toBe(true);
          expect(setting).toMatchObject({ exact: true, closingArcSeconds: 0, worstArcSeconds: 0 });
        }
      }),
    );
  });

  it("reaches every division once", () => {
    fc.assert(
      fc.property(heads(), fewCounts, teethPerMove, (head, divisions, teeth) => {
        for (const setting of settingsOf(head, { divisions }, { teethPerMove: teeth })) {
          const reached = new Set(Array.from({ length: divisions }, (_, move) => (move * setting.teethPerMove) % divisions));
          expect(reached.size).toBe(divisions);
          expect(fromExact(setting.spindlePerMove).mul(divisions).equals(setting.teethPerMove)).toBe(true);
        }
      }),
    );
  });

  it("says what is set in one way only: fewer spaces than the circle has, arms round one hole more", () => {
    fc.assert(
      fc.property(heads(), fewCounts, teethPerMove, (head, divisions, teeth) => {
        for (const setting of settingsOf(head, { divisions }, { teethPerMove: teeth })) {
          expect(setting.turns).toBeGreaterThanOrEqual(0);
          expect(setting.spaces).toBeGreaterThanOrEqual(0);
          // One division is a whole turn of the plate on the spindle; all other spaces are part of a turn.
          if (divisions > 1) expect(setting.spaces).toBeLessThan(setting.circle ?? 1);
          expect(shapeOf(setting)).toEqual(shapes[setting.method](setting));
          const second = secondOf(setting);
          if (second) expect(second.spaces > 0 && second.spaces < second.circle).toBe(true);
        }
      }),
    );
  });
});

/** What a setting says besides its numbers. */
const shapeOf = (setting: Setting) => ({
  onPlate: setting.plate !== null,
  arms: setting.armsEnclose,
  stopPin: setting.plateStopPin,
  second: "second" in setting,
  gears: "gears" in setting,
});
const ofCrank = ({ spaces }: Setting) => ({
  onPlate: spaces > 0,
  arms: spaces > 0 ? spaces + 1 : null,
  second: false,
  gears: false,
});

const shapes: Readonly<Record<Method, (setting: Setting) => ReturnType<typeof shapeOf>>> = {
  direct: () => ({ onPlate: true, arms: null, stopPin: null, second: false, gears: false }),
  dial: () => ({ onPlate: false, arms: null, stopPin: null, second: false, gears: false }),
  simple: (setting) => ({ ...ofCrank(setting), stopPin: "in" }),
  "wide-range": (setting) => ({ ...ofCrank(setting), stopPin: "in" }),
  compound: (setting) => ({ ...ofCrank(setting), stopPin: "out", second: true }),
  differential: (setting) => ({ ...ofCrank(setting), stopPin: "out", gears: true }),
};

describe("a wider kit never loses an answer", () => {
  const exact = (spec: HeadSpec, divisions: number, teeth = 3): boolean =>
    !exactSettings(defineHead(spec), { divisions }, { teethPerMove: teeth }).next().done;
  const kept = (widen: (spec: HeadSpec) => HeadSpec) =>
    fc.assert(
      fc.property(headSpecs(), counts, (spec, divisions) => {
        fc.pre(exact(spec, divisions));
        expect(exact(widen(spec), divisions)).toBe(true);
      }),
    );

  it("with a plate more", () => {
    kept((spec) => ({ ...spec, plates: [...(spec.plates ?? []), { name: "new", circles: [21, 37, 49] }] }));
  });
  it("with a circle more", () => {
    kept((spec) => {
      const { plates } = defineHead(spec);
      const faces = (face: Head["plates"][number]["faces"][number]) => ({ ...face, circles: [...face.circles, 97] });
      return { ...spec, plates: plates.map((plate) => ({ ...plate, faces: plate.faces.map(faces) })) };
    });
  });
  it("with gears more", () => {
    kept((spec) => ({ ...spec, gears: [...(spec.gears ?? []), 24, 40, 56] }));
  });
  it("with a direct plate and a rear pin more", () => {
    kept((spec) => ({ ...spec, rearPin: true, directPlates: [...(spec.directPlates ?? []), { name: "new", holes: 24 }] }));
  });
  it("with a greater plate ratio", () => {
    kept((spec) => ({ ...spec, gearing: { ...spec.gearing, greatestPlateRatio: 15 } }));
  });
  it("with more teeth per move, nor any setting", () => {
    fc.assert(
      fc.property(heads(small), fewCounts, teethPerMove, (head, divisions, teeth) => {
        const wider = new Set(keysOf(head, { divisions }, { teethPerMove: teeth + 1 }));
        expect(keysOf(head, { divisions }, { teethPerMove: teeth }).filter((key) => !wider.has(key))).toEqual([]);
      }),
    );
  });
  it("nor any setting of a whole worm ratio with a circle and a gear more", () => {
    fc.assert(
      fc.property(headSpecs(small), fc.integer({ min: 1, max: 9 }), fewCounts, (given, wormRatio, divisions) => {
        const spec = { ...given, wormRatio };
        const wider = defineHead({
          ...spec,
          plates: [...(spec.plates ?? []), { name: "new", circles: [19] }],
          gears: [...(spec.gears ?? []), 31],
        });
        const before = keysOf(defineHead(spec), { divisions }, { teethPerMove: 2 });
        const after = new Set(exactKeys(wider, divisions));
        expect(before.filter((key) => !after.has(key))).toEqual([]);
      }),
    );
  });
  const exactKeys = (head: Head, divisions: number) =>
    [...exactSettings(head, { divisions }, { teethPerMove: 2 })].map(settingKey);
});

describe("the same head given otherwise gives the same answer", () => {
  it("the worm ratio over a common factor, circles and gears in another order, the head through JSON", () => {
    fc.assert(
      fc.property(headSpecs(), fc.integer({ min: 2, max: 7 }), counts, (spec, factor, divisions) => {
        const head = defineHead(spec);
        const worm = fromExact(wormRatioOf(head));
        const otherwise = defineHead({
          ...spec,
          wormRatio: ` ${worm.n * BigInt(factor)} / ${worm.d * BigInt(factor)} `,
          plates: head.plates.map((plate) => ({
            ...plate,
            faces: plate.faces.map((face) => ({ ...face, circles: face.circles.toReversed() })),
          })),
          gears: head.gears.toReversed(),
        });
        const options = { all: true, limit: 50, teethPerMove: 3 };
        const answer = indexDivisions(head, divisions, options);
        expect(indexDivisions(otherwise, divisions, options)).toEqual(answer);
        expect(indexDivisions(defineHead(JSON.parse(JSON.stringify(head))), divisions, options)).toEqual(answer);
      }),
      runs(40),
    );
  });

  it("plates in another order: the same settings, and as good a first", () => {
    fc.assert(
      fc.property(headSpecs(small), fewCounts, (spec, divisions) => {
        const [here, there] = [spec, { ...spec, plates: spec.plates?.toReversed() ?? [] }].map((each) => [
          ...exactSettings(defineHead(each), { divisions }, { teethPerMove: 2 }),
        ]);
        expect(there?.map(settingKey).sort()).toEqual(here?.map(settingKey).sort());
        const work = ({ method, teethPerMove: k, turns, spaces, circle }: Setting) => ({ method, k, turns, spaces, circle });
        expect(there?.slice(0, 1).map(work)).toEqual(here?.slice(0, 1).map(work));
      }),
    );
  });

  it("a worm ratio and a count both doubled: the same simple and compound settings", () => {
    fc.assert(
      fc.property(headSpecs(small), fc.integer({ min: 1, max: 30 }), fewCounts, (spec, wormRatio, divisions) => {
        const options: SearchOptions = { methods: ["simple", "compound"], teethPerMove: 1 };
        const once = keysOf(defineHead({ ...spec, wormRatio }), { divisions }, options);
        const twice = keysOf(defineHead({ ...spec, wormRatio: 2 * wormRatio }), { divisions: 2 * divisions }, options);
        expect(twice).toEqual(once);
      }),
    );
  });
});

describe("angles", () => {
  const angles = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 720 })).map(([n, d]) => revolutions(n, d));

  it("a part 1/N of a turn has the settings of N divisions at one tooth per move", () => {
    fc.assert(
      fc.property(heads(), counts, (head, divisions) => {
        const options = { all: true, limit: 50, teethPerMove: 1 };
        const asAngle = indexAngle(head, revolutions(divisions === 1 ? "1" : `1/${divisions}`), options);
        expect(asAngle.settings).toEqual(indexDivisions(head, divisions, options).settings);
      }),
    );
  });

  it("any angle: each setting turns the work by it", () => {
    fc.assert(
      fc.property(heads(), angles, (head, angle) => {
        for (const setting of settingsOf(head, { angle }, {}).slice(0, 30)) {
          expect(setting.spindlePerMove).toBe(angle);
          expect(setting.teethPerMove).toBe(1);
          expect(prove(setting, { walkOn: head }).closes).toBe(true);
          expect(closesOnBench(setting, head)).toBe(true);
        }
      }),
    );
  });
});

describe("a head with a fractional worm ratio", () => {
  const head = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [17, 20] }], rearPin: true });

  it("17 closes by two teeth per move, 81/17 = 4 + 13/17, as one tooth would need 34", () => {
    expect(keysOf(head, { divisions: 17 }, { methods: ["simple"] })).toEqual(["simple, 2 per move, 1/null, 4 + 13/17"]);
    expect(keysOf(head, { divisions: 17 }, { methods: ["simple"], teethPerMove: 1 })).toEqual([]);
  });

  it("by compound where no circle alone serves: 85 by 17 and 20", () => {
    const keys = keysOf(head, { divisions: 85 }, { methods: ["simple", "compound"] });
    expect(keys.length).toBeGreaterThan(0);
    expect(keys.filter((key) => !key.startsWith("compound, 1 per move"))).toEqual([]);
  });
});
