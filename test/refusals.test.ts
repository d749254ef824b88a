import { describe, expect, it } from "vitest";
import {
  checkOwned,
  checkPlate,
  chord,
  coordinates,
  countsFromMarks,
  coverage,
  defineHead,
  dialReadings,
  drillPlate,
  errorBudget,
  exactSettings,
  type FaultCode,
  flankDisplacement,
  flats,
  graduate,
  type Head,
  type HeadSpec,
  identifyGear,
  indexAngle,
  indexDivisions,
  indexRows,
  indexTable,
  nearSettings,
  ownedCircles,
  parseAngle,
  planJob,
  plateFromChords,
  prepare,
  proposeSpacing,
  prove,
  recutPlan,
  repairOnHead,
  revolutions,
  type Setting,
  slittingSaw,
  spurGear,
  thicknessCheck,
  toothAt,
  toothRepair,
  unequalSpacing,
  vernier,
  whatMoveGives,
} from "../src/index.ts";
import { threePlates } from "./support/ready.ts";
import { refusal, refusalLines } from "./support/refusal.ts";

const head = threePlates;
const anything = (value: unknown) => value as never;
const define = (spec: object) => defineHead(spec as HeadSpec);
const plates = [{ name: "1", circles: [15] }];
const gear = spurGear({ teeth: 40, module: 2 });
const setting = (divisions: number) => indexDivisions(head, divisions).settings[0] as Setting;

/** What is refused with each code, by more than one function where more than one gives it. */
const refused: Readonly<Record<FaultCode, readonly (() => unknown)[]>> = {
  missing: [
    () => flats({ sides: 6 }),
    () => identifyGear({ teeth: 40 }),
    () => define({ plates }),
    () => define({ wormRatio: 40 }),
  ],
  unreadable: [
    () => define({ wormRatio: "forty", plates }),
    () => parseAngle("a quarter"),
    () => indexDivisions(head, 2.5),
    () => chord(anything("12"), 40),
    () => coordinates(12, { radius: anything("40") }),
  ],
  "out-of-range": [
    () => define({ wormRatio: 0, plates }),
    () => errorBudget({ radius: 50, runOut: -1 }),
    () => parseAngle("1001 rev"),
    () => indexDivisions(head, 0),
    () => coordinates(12, { radius: -1 }),
    () => define({ wormRatio: 40, plates: [{ name: "1", circles: [1] }] }),
  ],
  "unknown-key": [
    () => define({ wormRatio: 40, plates, colour: "grey" }),
    () => indexDivisions(head, 12, anything({ metods: [] })),
  ],
  "unknown-word": [
    () => indexDivisions(head, 12, { methods: [anything("plain")] }),
    () => indexDivisions(head, 12, { prefer: [anything("plain")] }),
    () => define({ wormRatio: 40, plates, ring: { marksPerTurn: 360, figures: "degrees" } }),
  ],
  twice: [() => define({ wormRatio: 40, plates: [...plates, ...plates] })],
  conflict: [() => spurGear({ teeth: 40, module: 2, diametralPitch: 12 }), () => coverage(head, { from: 9, to: 2 })],
  "not-owned": [() => planJob(head, { divisions: 12 }, { by: "dial" }), () => indexDivisions(head, 12, { mounted: "9" })],
  "too-many": [() => define({ wormRatio: 40, plates: Array(51).fill(plates[0]) }), () => coordinates(100_001, { radius: 1 })],
  "cannot-be-made": [
    () => proposeSpacing(head, 200),
    () => spurGear({ teeth: 8, module: 2, profileShift: 1.5 }),
    () => prove(anything({ ...indexDivisions(head, 127).settings[0], wormRatio: "1", gears: jamming })),
  ],
  "no-effect": [() => toothRepair(spurGear({ teeth: 40, module: 2 }), { damaged: [7], mateThinning: 0.1 })],
};

const jamming = { drivers: [48], driven: [24], direction: "with" };

describe("a refusal says what kind of fault it is", () => {
  for (const [code, acts] of Object.entries(refused)) {
    it.each(acts.map((act) => [act]))(`${code}, case %#`, (act) => {
      expect(refusal(act).map((fault) => fault.code)).toEqual([code]);
    });
  }
});

/** Every public function that takes options, asked rightly with one key too many. */
const withOneKeyMore = (key: object): Readonly<Record<string, () => unknown>> => ({
  indexDivisions: () => indexDivisions(head, 12, key),
  indexAngle: () => indexAngle(head, revolutions(1, 7), key),
  indexTable: () => indexTable(head, { from: 2, to: 3, ...key }),
  indexRows: () => indexRows(head, { from: 2, to: 3, ...key }),
  exactSettings: () => exactSettings(head, { divisions: 12 }, key).next(),
  nearSettings: () => nearSettings(head, { divisions: 97 }, key),
  planJob: () => planJob(head, { divisions: 12 }, key),
  dialReadings: () => dialReadings(head, 12, key),
  toothAt: () => toothAt(setting(12), revolutions(1, 12), key),
  unequalSpacing: () => unequalSpacing(head, [revolutions(1, 6)], key),
  coordinates: () => coordinates(12, { radius: 40, ...key }),
  drillPlate: () => drillPlate(head, 24, { diameter: 120, ...key }),
  checkPlate: () => checkPlate(24, [{ spaces: 1, length: 13 }], { diameter: 100, ...key }),
  "checkPlate, of a chord": () => checkPlate(24, [{ spaces: 1, length: 13, ...key }], { diameter: 100 }),
  plateFromChords: () => plateFromChords([{ spaces: 1, length: 13 }], { diameter: 100, within: 0.1, ...key }),
  graduate: () => graduate(head, { divisions: 100 }, key),
  "graduate, of the scale": () => graduate(head, { divisions: 100, ...key }),
  "graduate, of a straight scale": () => graduate({ lead: 5, marks: 100 }, { space: 1, spaces: 10, ...key }),
  "graduate, of the screw": () => graduate({ lead: 5, marks: 100, ...key }, { space: 1, spaces: 10 }),
  "graduate, of a screw on a head": () => graduate({ lead: 5, head, ...key }, { space: 1, spaces: 10 }),
  vernier: () => vernier({ spaces: 10, ...key }),
  prove: () => prove(setting(12), key),
  whatMoveGives: () => whatMoveGives({ wormRatio: head.wormRatio, turns: 3, spaces: 0, circle: null, ...key }),
  defineHead: () => define({ wormRatio: 40, plates, ...key }),
  identifyGear: () => identifyGear({ teeth: 40, tipDiameter: 84 }, key),
  "identifyGear, of the measures": () => identifyGear({ teeth: 40, tipDiameter: 84, ...key }),
  recutPlan: () => recutPlan(40, { damaged: [7], ...key }),
  toothRepair: () => toothRepair(gear, { damaged: [7], ...key }),
  repairOnHead: () => repairOnHead(head, gear, { damaged: [7], ...key }),
  "repairOnHead, of the places": () => repairOnHead(head, gear, { damaged: [7], places: key }),
  slittingSaw: () => slittingSaw(gear, key),
  flankDisplacement: () => flankDisplacement(gear, { arcSeconds: 10, ...key }),
  thicknessCheck: () => thicknessCheck(gear, { backlash: 0.2, ...key }),
  countsFromMarks: () => countsFromMarks({ mateTeeth: 24, turns: 8, ...key }),
  spurGear: () => spurGear({ teeth: 40, module: 2, ...key }),
});

describe("a misspelt option is refused", () => {
  const right = withOneKeyMore({});
  const wrong = withOneKeyMore({ metods: ["simple"] });

  it.each(Object.keys(right))("by %s", (name) => {
    expect(right[name]).not.toThrow();
    expect(refusal(wrong[name] as () => unknown)).toMatchObject([
      { code: "unknown-key", problem: expect.stringMatching(/^there is no key "metods"; the keys are /) },
    ]);
  });

  it("and options that are none", () => {
    for (const none of [null, 12, "side", []]) {
      for (const act of [
        () => indexDivisions(head, 12, anything(none)),
        () => indexTable(head, anything(none)),
        () => planJob(head, { divisions: 12 }, anything(none)),
        () => dialReadings(head, 12, anything(none)),
        () => coordinates(12, anything(none)),
        () => recutPlan(40, anything(none)),
      ]) {
        expect(refusal(act).map(({ code }) => code)).toEqual(["unreadable"]);
      }
    }
  });
});

describe("a word that is none of those allowed is refused, and they are named", () => {
  it.each([
    [
      "a side of readings",
      () => dialReadings(head, 12, { side: anything("Plus") }),
      'side: "Plus" is neither "plus" nor "minus"',
    ],
    [
      "a side of the ring",
      () => toothAt(setting(12), revolutions(0), { side: anything("MINUS") }),
      'side: "MINUS" is neither "plus" nor "minus"',
    ],
    [
      "a side of a job",
      () => planJob(head, { divisions: 12 }, { side: anything("left") }),
      'side: "left" is neither "plus" nor "minus"',
    ],
    [
      "a direction of a job",
      () => planJob(head, { divisions: 12 }, { direction: anything("back") }),
      'direction: "back" is neither "forward" nor "nearer"',
    ],
    [
      "a sense of coordinates",
      () => coordinates(12, { radius: 1, sense: anything("anticlockwise") }),
      'sense: "anticlockwise" is neither "clockwise" nor "counter-clockwise"',
    ],
    [
      "an origin of coordinates",
      () => coordinates(12, { radius: 1, origin: anything("corner") }),
      'origin: "corner" is neither "centre" nor "tangents"',
    ],
    [
      "a way of the gears",
      () =>
        whatMoveGives({
          wormRatio: head.wormRatio,
          turns: 0,
          spaces: 5,
          circle: 15,
          gears: { drivers: [56], driven: [24], direction: anything("forward") },
        }),
      'setting.gears.direction: "forward" is neither "with" nor "against"',
    ],
  ])("%s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
    expect(refusal(act).map(({ code }) => code)).toEqual(["unknown-word"]);
  });
});

describe("a description given as a head is refused", () => {
  const ask: Readonly<Record<string, (head: Head) => unknown>> = {
    indexDivisions: (given) => indexDivisions(given, 12),
    indexAngle: (given) => indexAngle(given, revolutions(1, 7)),
    indexTable: (given) => indexTable(given, { from: 2, to: 3 }),
    indexRows: (given) => indexRows(given, { from: 2, to: 3 }),
    exactSettings: (given) => exactSettings(given, { divisions: 12 }).next(),
    nearSettings: (given) => nearSettings(given, { divisions: 12 }),
    planJob: (given) => planJob(given, { divisions: 12 }),
    prepare: (given) => prepare(given),
    dialReadings: (given) => dialReadings(given, 12),
    unequalSpacing: (given) => unequalSpacing(given, [revolutions(1, 6)]),
    ownedCircles: (given) => ownedCircles(given),
    checkOwned: (given) => checkOwned(setting(12), given),
    repairOnHead: (given) => repairOnHead(given, gear, { damaged: [7] }),
  };

  it.each(Object.keys(ask))("by %s", (name) => {
    for (const given of [{ wormRatio: 40, plates }, { ...head, wormRatio: 40 }, undefined, null, "ratio-40-plates-15-49"]) {
      const [fault] = refusal(() => ask[name]?.(anything(given)));
      expect(fault).toMatchObject({ place: "head", problem: expect.stringContaining("defineHead makes") });
    }
    expect(() => ask[name]?.(head)).not.toThrow();
    expect(() => ask[name]?.(JSON.parse(JSON.stringify(head)))).not.toThrow();
  });
});

describe("a target that is not one count or one angle is refused", () => {
  const targets: readonly (readonly [string, unknown, FaultCode])[] = [
    ["both", { divisions: 7, angle: "1/7" }, "conflict"],
    ["neither", {}, "missing"],
    ["none", null, "unreadable"],
    ["a bare count", 7, "unreadable"],
    ["a misspelt one", { division: 7 }, "unknown-key"],
    ["an angle in degrees", { angle: "2.9" }, "unreadable"],
    ["no whole count", { divisions: 7.5 }, "unreadable"],
  ];

  it.each(targets)("%s", (_, target, code) => {
    for (const act of [
      () => exactSettings(head, anything(target)).next(),
      () => nearSettings(head, anything(target)),
      () => planJob(head, anything(target)),
    ]) {
      expect(refusal(act).map((fault) => fault.code)).toEqual([code]);
    }
  });
});
