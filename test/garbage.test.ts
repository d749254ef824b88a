import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as library from "../src/index.ts";
import { InputError } from "../src/index.ts";
import { threePlates } from "./support/ready.ts";
import { runs } from "./support/sweep.ts";

const { indexDivisions, ratio, revolutions } = library;
const [setting] = indexDivisions(threePlates, 127).settings;
const move = { wormRatio: ratio(40), turns: 1, spaces: 7, circle: 39, second: { spaces: 29, circle: 41, direction: "with" } };
const gear = library.spurGear({ teeth: 86, module: 2 });
const ring = { marksPerTurn: 360, vernierLines: 12, figures: "angle" };

/** Rightly asked, one list of arguments a function; of each, one argument or one part of it is spoilt. */
const asked: Readonly<Record<string, readonly unknown[]>> = {
  indexDivisions: [
    threePlates,
    127,
    { methods: ["simple"], prefer: ["compound"], teethPerMove: 3, mounted: "1", all: true, near: true, limit: 9 },
  ],
  indexAngle: [threePlates, revolutions(1, 7), { methods: ["simple"] }],
  indexTable: [threePlates, { from: 2, to: 4, methods: ["simple"] }],
  indexRows: [threePlates, { from: 2, to: 4, methods: ["simple"] }],
  coverage: [
    threePlates,
    { from: 2, to: 9, want: [5, 61], circleSizes: [15, 61], gearSizes: [24, 28], methods: ["simple"], teethPerMove: 2 },
  ],
  exactSettings: [threePlates, { divisions: 12 }, { teethPerMove: 2 }],
  nearSettings: [threePlates, { angle: revolutions(1, 7) }, { teethPerMove: 2 }],
  planJob: [
    threePlates,
    { divisions: 97 },
    {
      by: "moves",
      teeth: [3, 4],
      order: "given",
      matters: [3],
      startTooth: 2,
      startHole: 3,
      startAngle: revolutions(1, 3),
      side: "minus",
      direction: "nearer",
    },
  ],
  "planJob, by a setting": [threePlates, { divisions: 127 }, { setting }],
  prepare: [threePlates],
  defineHead: [{ ...threePlates }],
  checkHead: [{ ...threePlates }],
  ownedCircles: [threePlates],
  dialReadings: [threePlates, 12, { startAngle: revolutions(1, 3), side: "minus" }],
  leastCountArcSeconds: [ring, ratio(40)],
  stepsAddedUp: [ring, 53, ratio(40)],
  toothAt: [
    { spindlePerMove: revolutions(1, 12), teethPerMove: 1 },
    revolutions(1, 12),
    { startAngle: revolutions(1, 3), side: "minus", ring },
  ],
  unequalSpacing: [threePlates, [revolutions(1, 3), revolutions(1, 4)], { mounted: "1" }],
  proposeSpacing: [threePlates, 6, { uneven: revolutions(1, 180), opposite: true, mounted: "1" }],
  coordinates: [12, { radius: 40, startAngle: revolutions(1, 8), sense: "clockwise", origin: "tangents" }],
  "coordinates, from a zero of one's own": [12, { radius: 40, origin: { x: 50, y: 60 } }],
  chord: [12, 40, 2],
  checkChords: [12, 40],
  flats: [{ sides: 6, acrossFlats: 17, blank: 20 }],
  plateChords: [threePlates],
  drillPlate: [threePlates, 24, { diameter: 120, servesRatio: 40, drill: 3, drillWithin: 0.1, startHole: 2, side: "minus" }],
  "drillPlate, by coordinates": [
    threePlates,
    24,
    { diameter: 120, by: "coordinates", step: 0.01, sense: "clockwise", origin: "tangents", startAngle: revolutions(1, 8) },
  ],
  checkPlate: [24, [{ from: 3, spaces: 5, length: 60.2 }], { diameter: 100, servesRatio: 40 }],
  plateFromChords: [[{ spaces: 5, length: 60.2 }], { diameter: 100, within: 0.1 }],
  graduate: [
    threePlates,
    { divisions: 100, long: 10, medium: 5, figureEvery: 10, figureFrom: 5, perLine: "1/2" },
    { side: "minus" },
  ],
  "graduate, the vernier": [threePlates, { divisions: 360, vernier: { spaces: 12, over: 23, twoSided: true } }],
  "graduate, by a screw": [
    { lead: "127/20", marks: 250 },
    { space: "127/200", spaces: 40 },
  ],
  "graduate, by a head on a screw": [
    { lead: 5, head: threePlates, turnsPerSpindle: "2/3" },
    { space: 1, vernier: { spaces: 10 } },
  ],
  vernier: [{ spaces: 12, over: 23, twoSided: true }],
  cuttingOrder: [127, 19],
  roundsOfOrder: [[1, 4, 7, 2], 8],
  ratioFromTrial: [{ crankTurns: 10, degrees: 90, within: 1 }],
  idlersFromTrial: [{ pairs: 1, idlers: 0, plateTurned: "against" }],
  readyHead: ["ratio-90-dial"],
  countsFromAngle: [revolutions(29, 3600), revolutions(1, 7200), 1],
  whatMoveGives: [move, 5],
  "whatMoveGives, of a setting": [setting, 1],
  checkOwned: [setting, threePlates],
  gearsForgotten: [setting],
  spindleTurnsPerMove: [move],
  parseAngle: ["2°54'"],
  formatAngle: [revolutions(1, 7), 2],
  arcSeconds: [revolutions(1, 7)],
  ratio: [81, 2],
  revolutions: [1, 7],
  toNumber: [ratio(81, 2)],
  toDegrees: [revolutions(1, 7)],
  fromExact: ["1/7"],
  errorAtRadius: [60, 50],
  errorBudget: [
    {
      radius: 50,
      divisions: 97,
      setting: { worstArcSeconds: 16, pitchArcSeconds: 1, moves: "equal" },
      runOut: 0.04,
      holes: { error: 0.1, circleDiameters: [120, 90], wormRatio: ratio(40) },
      wormErrorArcSeconds: 20,
      readingArcSeconds: 5,
    },
  ],
  settingBudget: [threePlates, { divisions: 127 }, setting, { radius: 50, runOut: 0.04, holeError: 0.1, circleDiameter: 90 }],
  singlePitchDeviation: [{ module: 2, diameterMm: 172 }, 7],
  finestGrade: [{ module: 2, diameterMm: 172 }, 10],
  totalPitchDeviation: [{ module: 2, diameterMm: 172 }, 7],
  finestTotalGrade: [{ module: 2, diameterMm: 172 }, 40],
  spurGear: [{ teeth: 40, module: 2, pressureAngle: 20, profileShift: 0.1, thinning: 0.1 }],
  identifyGear: [{ teeth: 40, tipDiameter: 84, spans: [{ teeth: 5, length: 27.7 }] }, { limit: 3 }],
  "identifyGear, of a piece": [
    { fragment: { chord: 80.4, pitches: 8, height: 12.7 }, mateTeeth: 20, centreDistance: 99, wholeDepth: 7 },
    { limit: 3 },
  ],
  countsFromMarks: [{ mateTeeth: 24, turns: 8, mateTurns: 5 }],
  recutPlan: [40, { damaged: [7, 8], startSpace: 3 }],
  formCutters: [{ teeth: 40, module: 2 }],
  prove: [setting, { walkOn: threePlates }],
  overPins: [gear, 3.5],
  pinRange: [gear],
  spanOver: [gear, 10],
  thinningFromSpan: [gear, { teeth: 10, length: 58.4 }],
  toothThicknessAt: [gear, 172],
  spaceWidthAt: [gear, 172],
  chordAt: [gear, 172],
  lookAlikes: [library.standardPitches[0]],
  flankDisplacement: [gear, { arcSeconds: 30, offCentre: 0.02 }],
  slittingSaw: [gear, { width: 1, leave: 0.2 }],
  thicknessCheck: [gear, { backlash: 0.2, mateThinning: 0.1 }],
  toothRepair: [gear, { damaged: [31, 32], startSpace: 29, backlash: 0.2, saw: { width: 1 } }],
  repairOnHead: [
    threePlates,
    gear,
    { damaged: [31, 32], backlash: 0.2, settingError: { arcSeconds: 30 }, places: { startHole: 3, side: "minus" } },
  ],
};

/** A function by its name, and what is said besides of how it is asked. */
function callOf(name: string): (...args: readonly unknown[]) => unknown {
  return (
    (library as unknown as Record<string, (...args: readonly unknown[]) => unknown>)[name.split(",")[0] ?? ""] ??
    (() => expect.fail(`there is no ${name}`))
  );
}

/** The value with one part of it, at any depth, put in place of another. */
function spoilt(value: unknown, pick: () => number, by: unknown): unknown {
  const keys = typeof value === "object" && value !== null ? Object.keys(value) : [];
  if (keys.length === 0 || pick() % 4 === 0) return by;
  const key = keys[pick() % keys.length] ?? "";
  const part = spoilt((value as Record<string, unknown>)[key], pick, by);
  return Array.isArray(value)
    ? value.map((each, index) => (String(index) === key ? part : each))
    : { ...(value as object), [key]: part };
}

const anything = fc.oneof(
  fc.anything({ withBigInt: true, withDate: true, withSparseArray: true, withNullPrototype: true }),
  fc.constantFrom(-1, 0, 0.5, 1e9, Number.NaN, Number.POSITIVE_INFINITY, "", "0", "1/0", "2.9", [], {}, null, undefined),
);

describe("whatever is spoilt, nothing but an InputError is thrown", () => {
  it.each(Object.keys(asked))("%s", (name) => {
    const call = callOf(name);
    const given = asked[name] ?? [];
    fc.assert(
      fc.property(anything, fc.array(fc.nat(), { minLength: 12, maxLength: 12 }), (by, picks) => {
        let next = 0;
        const pick = () => picks[next++ % picks.length] ?? 0;
        const index = pick() % given.length;
        const args = given.map((each, at) => (at === index ? spoilt(each, pick, by) : each));
        try {
          const answer = call(...args);
          if (name === "exactSettings") (answer as Iterator<unknown>).next();
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          expect(error.faults.length).toBeGreaterThan(0);
        }
      }),
      runs(400),
    );
  });
});

/** What takes only what the library gave, as it gave it. */
const ofItsOwn = ["cautionsFor", "gearBox", "kindOf", "repairPlaces", "repairPlan", "wayOf", "wormRatioOf"];

it("is asked of every function that there is", () => {
  const all = Object.entries(library).flatMap(([name, it]) => (typeof it === "function" && /^[a-z]/.test(name) ? [name] : []));
  const named = new Set(Object.keys(asked).map((name) => name.split(",")[0]));
  expect(all.filter((name) => !named.has(name)).sort()).toEqual(ofItsOwn);
});

it("is rightly asked of each, before it is spoilt", () => {
  for (const [name, given] of Object.entries(asked)) expect(() => callOf(name)(...given), name).not.toThrow();
});
