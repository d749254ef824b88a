import { describe, expect, it } from "vitest";
import { kindOf } from "../../src/index.ts";
import { handWorked } from "../support/hand-worked.ts";

const { simple, wholeTurns, block, direct, dial, compoundWith, onePairWith, twoPairsAgainst } = handWorked;

describe("the kind of a setting", () => {
  it("is its method, where the method has one kind", () => {
    expect([simple, wholeTurns, block, direct, dial, compoundWith].map(({ setting }) => kindOf(setting))).toEqual([
      "simple",
      "simple",
      "simple",
      "direct",
      "dial",
      "compound",
    ]);
  });

  it("is told of differential indexing by its train", () => {
    expect([kindOf(onePairWith.setting), kindOf(twoPairsAgainst.setting)]).toEqual(["one-pair", "two-pair"]);
  });

  it("is block where a geared move advances more than one tooth, of one pair or two", () => {
    for (const { setting } of [onePairWith, twoPairsAgainst]) expect(kindOf({ ...setting, teethPerMove: 2 })).toBe("block");
  });

  it("is may-foul before all else where a train may not go together", () => {
    const mayFoul = { code: "stud-driver-at-spindle", gear: 98, meshing: [100, 8], room: 15 } as const;
    const { setting } = twoPairsAgainst;
    const fouls = { ...setting, gears: { ...setting.gears, mayFoul } };
    expect([kindOf(fouls), kindOf({ ...fouls, teethPerMove: 2 })]).toEqual(["may-foul", "may-foul"]);
  });
});
