import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as library from "../../src/index.ts";
import { ready } from "../support/ready.ts";

const geared = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const bare = ready("ratio-90-dial");

const gear = library.spurGear({ teeth: 86, module: 2 });
const warned = library.spurGear({ teeth: 9, diametralPitch: 12, tipDiameter: 24, wholeDepth: 4, thinning: 0.1 });
const worn = library.spurGear({ teeth: 40, module: 3, thinning: 0.25 });
const prime = library.spurGear({ teeth: 97, module: 2 });
const plan = library.recutPlan(86, { damaged: [1, 31] });
const repair = { damaged: [7, 8], backlash: 0.3, settingError: { arcSeconds: 400 } };
const planned = () => {
  const job = library.repairPlan(geared, plan, 86);
  if (!job.planned) throw new Error("86 is exact on this head");
  return job;
};

/** Results of each public function and list of the gear rooms. */
const results: Readonly<Record<string, () => readonly unknown[]>> = {
  depthRules: () => library.depthRules.slice(),
  standardPitches: () => library.standardPitches.slice(),
  spurGear: () => [gear, warned, worn],
  lookAlikes: () => library.standardPitches.map((pitch) => library.lookAlikes(pitch)),
  formCutters: () => [gear, warned, worn].map((each) => library.formCutters(each)),
  pinRange: () => [gear, warned, worn].map((each) => library.pinRange(each)),
  overPins: () => [library.overPins(gear, 3.5)],
  spanOver: () => [library.spanOver(gear, 9)],
  thinningFromSpan: () => [library.thinningFromSpan(gear, { teeth: 10, length: 58.4 })],
  chordAt: () => [library.chordAt(gear, 172)],
  toothThicknessAt: () => [library.toothThicknessAt(gear, 172)],
  spaceWidthAt: () => [library.spaceWidthAt(gear, 172)],
  singlePitchDeviation: () => [library.singlePitchDeviation({ module: 2, diameterMm: 172 }, 7)],
  totalPitchDeviation: () => [library.totalPitchDeviation({ module: 2, diameterMm: 172 }, 7)],
  finestTotalGrade: () => [library.finestTotalGrade({ module: 2, diameterMm: 172 }, 40)],
  errorBudget: () => [library.errorBudget({ radius: 50, divisions: 97, runOut: 0.04, setting: { worstArcSeconds: 16 } })],
  settingBudget: () =>
    library
      .nearSettings(ungeared, { divisions: 97 })
      .map((setting) => library.settingBudget(ungeared, { divisions: 97 }, setting, { radius: 50, runOut: 0.04 })),
  finestGrade: () => [library.finestGrade({ module: 2, diameterMm: 172 }, 10)],
  identifyGear: () => [
    library.identifyGear({ teeth: 40, tipDiameter: 83.1, spans: [{ teeth: 5, length: 27.6 }] }),
    library.identifyGear({ teeth: 41, tipDiameter: 9000, wholeDepth: 3 }),
  ],
  countsFromMarks: () => [library.countsFromMarks({ mateTeeth: 24, turns: 12 })],
  recutPlan: () => [plan],
  repairPlan: () => [planned(), library.repairPlan(ungeared, library.recutPlan(97, { damaged: repair.damaged }), 97)],
  repairPlaces: () => [library.repairPlaces(planned())],
  flankDisplacement: () => [library.flankDisplacement(gear, { arcSeconds: 30, offCentre: 0.1 })],
  slittingSaw: () => [library.slittingSaw(gear), library.slittingSaw(gear, { depth: gear.wholeDepth })],
  thicknessCheck: () => [library.thicknessCheck(gear, { backlash: 0.1 }), library.thicknessCheck(worn, { backlash: 0.3 })],
  toothRepair: () => [
    library.toothRepair(gear, { damaged: [31, 32] }),
    library.toothRepair(worn, repair),
    library.toothRepair(warned, { damaged: [3], backlash: 0.1, settingError: { offCentre: 0.3 }, saw: { leave: 0 } }),
  ],
  repairOnHead: () => [
    library.repairOnHead(geared, worn, repair),
    library.repairOnHead(ungeared, prime, repair),
    library.repairOnHead(bare, prime, repair),
  ],
};

describe("what the gear rooms return is plain data: a clone and JSON are the same to the last key", () => {
  it.each(Object.keys(results))("%s", (name) => {
    for (const result of results[name]?.() ?? []) {
      expect(structuredClone(result)).toStrictEqual(result);
      expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
    }
  });

  it("holds for everything that the one door lets out of them", () => {
    const exported = [...readFileSync("src/index.ts", "utf8").matchAll(/export \{([^}]*)\} from "\.\/gear\//g)].flatMap(
      ([, names = ""]) => names.split(",").map((name) => name.trim()),
    );
    const values = exported.filter((name) => /^[a-z]\w*$/.test(name));
    expect(Object.keys(results).sort()).toEqual(values.sort());
  });
});
