import * as library from "../../src/index.ts";
import { noCrank, twoCranks } from "./other-heads.ts";

const [head, other] = library.readyHeads as readonly [library.Head, library.Head];
const count = { divisions: 97 };
const answer = library.indexDivisions(head, 127);
const [setting] = answer.settings;
const gear = library.spurGear({ teeth: 86, module: 2 });

/** What the library can be called with, rightly: one part of it is spoilt each time. */
type Call = readonly [what: string, call: (...given: never[]) => unknown, given: readonly unknown[]];

/** Questions to heads and settings. */
export const libraryCalls: readonly Call[] = [
  ["defineHead", library.defineHead, [head]],
  ["checkHead", library.checkHead, [other]],
  [
    "indexDivisions",
    library.indexDivisions,
    [head, 97, { all: true, near: true, limit: 9, methods: ["simple"], teethPerMove: 3 }],
  ],
  ["indexAngle", library.indexAngle, [head, "29/3600", { near: true, mounted: "2" }]],
  ["indexDivisions", library.indexDivisions, [twoCranks, 126, { near: true, methods: ["wide-range"] }]],
  ["indexDivisions", library.indexDivisions, [noCrank, 7, { all: true }]],
  ["planJob", library.planJob, [twoCranks, { divisions: 127 }, { by: "both-cranks", teeth: [1, 2], startHole: 3 }]],
  ["planJob", library.planJob, [noCrank, { divisions: 40 }, { after: 3 }]],
  ["prove", library.prove, [library.indexDivisions(twoCranks, 126).settings[0], { walkOn: twoCranks }]],
  ["indexTable", library.indexTable, [head, { from: 2, to: 30, teethPerMove: 3, onProgress: () => {} }]],
  ["indexRows", library.indexRows, [head, { from: 2, to: 30 }]],
  ["exactSettings", library.exactSettings, [head, count, { methods: ["simple", "compound"] }]],
  ["prove", library.prove, [setting, { walkOn: head }]],
  ["planJob", library.planJob, [head, count, { teeth: [1, 2, 3], by: "ring", startHole: 2, startAngle: "1/9", side: "minus" }]],
  ["toothAt", library.toothAt, [setting, "1/7", { ring: head.ring, startAngle: "1/9", side: "plus" }]],
  ["unequalSpacing", library.unequalSpacing, [head, ["1/6", "1/6", "1/3"], { mounted: "1" }]],
  ["coordinates", library.coordinates, [12, { radius: 40, startAngle: "1/8", sense: "clockwise", origin: "tangents" }]],
  ["chord", library.chord, [12, 40, 2]],
  ["coverage", library.coverage, [head, { from: 2, to: 60, want: [61, 127], circleSizes: [61, 67], gearSizes: [24, 45] }]],
  ["drillPlate", library.drillPlate, [other, 97, { diameter: 120, drill: 3, drillWithin: 0.01, startHole: 2 }]],
  ["checkPlate", library.checkPlate, [6, [{ spaces: 1, length: 40.1 }], { diameter: 80 }]],
  ["plateFromChords", library.plateFromChords, [[{ spaces: 10, length: 60.2 }], { diameter: 150, within: 0.1 }]],
  ["graduate", library.graduate, [head, { divisions: 100 }]],
  [
    "graduate",
    library.graduate,
    [
      { lead: 5, marks: 250 },
      { space: 1, spaces: 20 },
    ],
  ],
  ["vernier", library.vernier, [{ spaces: 12, over: 23 }]],
  ["flats", library.flats, [{ sides: 6, acrossFlats: 17 }]],
  ["proposeSpacing", library.proposeSpacing, [head, 6, { uneven: "1/120", opposite: true }]],
  ["cuttingOrder", library.cuttingOrder, [127, 19]],
  ["roundsOfOrder", library.roundsOfOrder, [[1, 4, 7], 8]],
  ["ratioFromTrial", library.ratioFromTrial, [{ crankTurns: 10, degrees: 90, within: 1 }]],
  ["idlersFromTrial", library.idlersFromTrial, [{ pairs: 1, idlers: 0, plateTurned: "against" }]],
  ["settingBudget", library.settingBudget, [head, count, setting, { radius: 50, runOut: 0.04 }]],
  ["countsFromAngle", library.countsFromAngle, ["29/3600", "1/7200", 1]],
  ["whatMoveGives", library.whatMoveGives, [{ wormRatio: "40", turns: 0, spaces: 22, circle: 33 }, 1]],
  ["parseAngle", library.parseAngle, ["2°54'"]],
  ["formatAngle", library.formatAngle, ["29/3600", 1]],
];

const damage = { damaged: [31, 32], startSpace: 29, backlash: 0.2, saw: { width: 1, depth: 4, leave: 0.5 } };
const places = {
  places: { mounted: "1", startHole: 3, startAngle: "1/9", side: "plus" },
  settingError: { arcSeconds: 30, offCentre: 0.02 },
};

/** Questions to gears, whose options are nested. */
export const gearCalls: readonly Call[] = [
  [
    "spurGear",
    library.spurGear,
    [{ teeth: 86, module: 2, pressureAngle: 20, profileShift: 0.1, depthRule: "2.25", thinning: 0.05 }],
  ],
  [
    "identifyGear",
    library.identifyGear,
    [{ teeth: 86, tipDiameter: 176, wholeDepth: 4.5, spans: [{ length: 55.38, teeth: 10 }] }, { limit: 3 }],
  ],
  ["countsFromMarks", library.countsFromMarks, [{ mateTeeth: 24, turns: 12, mateTurns: 43, most: 200 }]],
  ["overPins", library.overPins, [gear, 3.5]],
  ["spanOver", library.spanOver, [gear, 10]],
  ["thinningFromSpan", library.thinningFromSpan, [gear, { length: 55, teeth: 10 }]],
  ["recutPlan", library.recutPlan, [86, damage.damaged, { startSpace: 29 }]],
  ["slittingSaw", library.slittingSaw, [gear, damage.saw]],
  ["thicknessCheck", library.thicknessCheck, [gear, { backlash: 0.2, mateThinning: 0.1 }]],
  ["flankDisplacement", library.flankDisplacement, [gear, places.settingError]],
  ["toothRepair", library.toothRepair, [gear, damage]],
  ["repairOnHead", library.repairOnHead, [head, gear, { ...damage, ...places }]],
  ["formCutters", library.formCutters, [gear]],
  ["lookAlikes", library.lookAlikes, [gear]],
  ["errorBudget", library.errorBudget, [{ radius: 50, runOut: 0.04, holeError: 0.02, setting: { worstArcSeconds: 16 } }]],
  ["identifyGear", library.identifyGear, [{ teeth: 28, mateTeeth: 72, centreDistance: 100 }]],
  ["identifyGear", library.identifyGear, [{ fragment: { chord: 63.1, pitches: 8, height: 6.5 } }]],
];
