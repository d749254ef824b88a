import { describe, expect, it } from "vitest";
import {
  type Answer,
  defineHead,
  indexAngle,
  indexDivisions,
  type NearSetting,
  nearSettings,
  parseAngle,
  type Reason,
  type Route,
  type Setting,
} from "../../src/index.ts";
import {
  headLine,
  passedOverItems,
  placeNoun,
  reasonItems,
  routeItems,
  targetWords,
  triedWords,
  whyNotWords,
} from "../../src/words/index.ts";
import { ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";

describe("what was asked for", () => {
  it("a count in capitals, one alone without its s; an angle with two decimals of a second", () => {
    expect([targetWords({ divisions: 127 }), targetWords({ divisions: 1 })]).toEqual(["127 DIVISIONS", "1 DIVISION"]);
    // 360°/97 is 3° 42′ 40.8247″.
    expect(targetWords({ angle: parseAngle("1/97 rev") })).toBe("ANGLE ≈ 3° 42′ 40.82″");
  });

  it("has teeth for places, an angle has places", () => {
    expect([placeNoun({ divisions: 127 }), placeNoun({ angle: parseAngle("3°") })]).toEqual(["tooth", "place"]);
  });
});

it("a head is named with its ratio once", () => {
  const spec = { wormRatio: 40, plates: [{ name: "1", circles: [20] }] };
  expect(headLine(defineHead({ ...spec, name: "The old one" }))).toBe("The old one (40:1)");
  expect(headLine(defineHead({ ...spec, name: "The old 40:1" }))).toBe("The old 40:1");
});

describe("what was tried", () => {
  it("is told where a count allows several numbers of teeth to a move", () => {
    expect(triedWords(indexDivisions(threePlates, 787, { teethPerMove: 2 }))).toBe("Moves of 1 to 2 teeth were tried.");
    expect(triedWords(indexDivisions(threePlates, 787, { teethPerMove: 1 }))).toBe("");
    expect(triedWords(indexAngle(ungeared, parseAngle("1/787 rev")))).toBe("");
    expect(triedWords(indexDivisions(threePlates, 127))).toBe("");
  });
});

describe("why not", () => {
  it.each([
    [{ code: "without", part: "direct-plate" }, "the head has no direct plate"],
    [{ code: "without", part: "gearing" }, "the plate of this head cannot be geared to its spindle"],
    [
      { code: "no-multiple", of: "direct-plate", multiplesOf: [7], owned: [24, 30] },
      "needs a direct plate whose holes are a multiple of 7; yours: 24, 30",
    ],
    [
      { code: "no-multiple", of: "circle", multiplesOf: [97, 1000], owned: [] },
      "needs a circle whose holes are a multiple of 97 or 1,000; no circle of yours is",
    ],
    [
      { code: "no-train", teethPerMove: 1, greatestPlateRatio: "5/2" },
      "every circle, every train of one and two pairs was tried, the plate turning at most 5/2 times for one spindle turn; none closes",
    ],
    [
      { code: "no-train", teethPerMove: 4, greatestPlateRatio: "6" },
      "every circle, every train of one and two pairs and 1 to 4 teeth per move was tried, the plate turning at most 6 times for one spindle turn; none closes",
    ],
  ] as const)("%j", (why, words) => {
    expect(whyNotWords(why as Parameters<typeof whyNotWords>[0])).toBe(words);
  });

  const reasons: readonly Reason[] = [
    { method: "direct", code: "without", part: "direct-plate" },
    { method: "simple", code: "no-multiple", of: "circle", multiplesOf: [97], owned: [] },
    { method: "dial", code: "without", part: "dial" },
  ];

  it("nobody asks why a head does not do by a direct plate or a dial that it has not", () => {
    expect(reasonItems(reasons, threePlates).map(({ term }) => term)).toEqual(["Simple"]);
    expect(reasonItems(reasons, ready("ratio-90-dial")).map(({ term }) => term)).toEqual(["Simple", "Dial"]);
    const nose = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    expect(reasonItems(reasons, nose).map(({ term }) => term)).toEqual(["Direct", "Simple"]);
  });

  it("a method passed over is named as one that is not", () => {
    const passedOver = { passedOver: reasons } as unknown as Answer;
    expect(passedOverItems(passedOver, threePlates)).toEqual([
      { term: "Not simple", text: "needs a circle whose holes are a multiple of 97; no circle of yours is" },
    ]);
  });
});

describe("the ways on", () => {
  // 40/8 is five whole turns; 40/20 two of them.
  const [eight, twenty] = [8, 20].map((count) => indexDivisions(ungeared, count).settings[0] as Setting);
  const near = nearSettings(ungeared, { divisions: 97 });
  const ring = near.find(({ kind }) => kind === "ring") as NearSetting;
  const told = (...routes: readonly Route[]) => routeItems({ routes } as unknown as Answer).map(({ term, text }) => [term, text]);
  const onCircle = { ...eight, circle: 97, plate: "x", turns: 0, spaces: 40, armsEnclose: 41 } as Setting;

  it("each in its words, and its kind once", () => {
    expect(
      told(
        { kind: "method", setting: eight as Setting },
        { kind: "method", setting: twenty as Setting },
        { kind: "gears", add: [46], setting: eight as Setting },
        { kind: "gears", add: [46, 52], setting: eight as Setting },
        { kind: "count", divisions: 20, setting: twenty as Setting },
      ),
    ).toEqual([
      ["Another way", "5 turns + 0"],
      ["", "2 turns + 0"],
      ["Add gears", "46 teeth: then 5 turns + 0"],
      ["", "46 and 52 teeth: then 5 turns + 0"],
      ["Another count", "20 can be done: 2 turns + 0"],
    ]);
  });

  it("a circle to drill, and the others that would do", () => {
    expect(told({ kind: "circle", circles: [97], setting: onCircle })).toEqual([
      ["Drill a circle", "of 97 holes: then 0 + 40 of 97"],
    ]);
    expect(told({ kind: "circle", circles: [97, 194], setting: onCircle })[0]?.[1]).toBe(
      "of 97 holes, or 194: then 0 + 40 of 97",
    );
    expect(told({ kind: "circle", circles: [97, 194, 291], setting: onCircle })).toEqual([
      ["Drill a circle", "of 97 holes, or 194, 291: then 0 + 40 of 97"],
    ]);
  });

  it("the best near setting says how far off it is, or that it is read by eye", () => {
    expect(told({ kind: "near", setting: { ...ring, worstArcSeconds: 18.19 } })).toEqual([
      ["Near settings", "the best is 18.2″ off at its worst; see below"],
    ]);
    expect(told({ kind: "near", setting: { ...ring, worstArcSeconds: 0 } })).toEqual([
      ["Near settings", "the best is the ring, read by eye; see below"],
    ]);
  });

  it("no more than four of a kind, whatever stands between them", () => {
    const count = (divisions: number): Route => ({ kind: "count", divisions, setting: twenty as Setting });
    const method: Route = { kind: "method", setting: eight as Setting };
    const named = told(method, count(1), count(2), method, count(3), count(4), count(5), method).map(([term, text]) => [
      term,
      text?.replace(/ can.*/, ""),
    ]);
    expect(named).toEqual([
      ["Another way", "5 turns + 0"],
      ["Another count", "1"],
      ["", "2"],
      ["", "5 turns + 0"],
      ["", "3"],
      ["", "4"],
      ["", "5 turns + 0"],
    ]);
  });
});
