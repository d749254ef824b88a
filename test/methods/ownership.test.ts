import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkOwned, defineHead, exactSettings, type UnprovedSetting } from "../../src/index.ts";
import { counts, heads, teethPerMove } from "../support/arbitraries.ts";
import { handWorked } from "../support/hand-worked.ts";
import { ready, twoFaces } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";

const head = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 17, 18, 21, 23, 29, 33, 39, 49] }],
  directPlates: [{ name: "1", holes: 24 }],
  rearPin: true,
  gears: [24, 24, 40, 48, 56, 64, 72],
});
const owned = (setting: UnprovedSetting, on = head) => refusalLines(() => checkOwned(setting, on));
const { simple, wholeTurns, fractional, direct, dial, compoundWith, compoundAgainst, onePairAgainst, twoPairsWith } = handWorked;

describe("checkOwned", () => {
  it.each(Object.values(handWorked).filter(({ setting }) => setting.wormRatio === "40"))("lets $name pass", ({ setting }) => {
    expect(owned(setting)).toEqual([]);
  });

  it("lets every setting of a head pass on it", () => {
    fc.assert(
      fc.property(heads(), counts, teethPerMove, (any, divisions, teeth) => {
        for (const setting of exactSettings(any, { divisions }, { teethPerMove: teeth })) checkOwned(setting, any);
      }),
    );
  });

  it("names another worm ratio", () => {
    expect(owned(fractional.setting)).toEqual(["setting: is for a worm ratio of 81/2; the head has 40"]);
  });

  it("names a plate, a face or a circle that the head has not", () => {
    expect(owned({ ...simple.setting, circle: 20 })).toEqual(['setting: needs a circle of 20 on plate "1"']);
    expect(owned({ ...simple.setting, plate: "2" })).toEqual(['setting: needs a circle of 21 on plate "2"']);
    expect(owned({ ...simple.setting, plate: null })).toEqual(["setting: needs a circle of 21 on plate null"]);
    expect(owned({ ...simple.setting, circle: 54, face: "front" }, twoFaces)).toEqual([
      'setting: needs a circle of 54 on plate "1", face "front"',
    ]);
    expect(owned({ ...simple.setting, circle: 54, face: "back" }, twoFaces)).toEqual([]);
    expect(owned({ ...direct.setting, circle: 36 })).toEqual(['setting: needs a direct plate "1" of 36 holes']);
    expect(owned({ ...direct.setting, plate: "nose" })).toEqual(['setting: needs a direct plate "nose" of 24 holes']);
    expect(owned(wholeTurns.setting, twoFaces)).toEqual([]);
  });

  it("names a dial that the head has not, by its places in a turn", () => {
    const table = ready("ratio-90-dial");
    expect(owned(dial.setting, table)).toEqual([]);
    expect(owned({ ...dial.setting, circle: 240 }, table)).toEqual(["setting: needs a dial with 240 places in a turn"]);
    expect(owned(dial.setting, defineHead({ ...head, wormRatio: 90 }))).toEqual([
      "setting: needs a dial with 1440 places in a turn",
    ]);
  });

  it("names the second circle and the rear pin of compound indexing", () => {
    const { second } = compoundAgainst.setting;
    expect(owned({ ...compoundAgainst.setting, second: { ...second, circle: 31 } })).toEqual([
      'setting: needs a circle of 31 on plate "1"',
    ]);
    expect(owned({ ...compoundAgainst.setting, circle: null, spaces: 0, second: { ...second, circle: 31 } })).toEqual([
      'setting: needs a circle of 31 on plate "1"',
    ]);
    expect(owned(compoundWith.setting, defineHead({ ...head, rearPin: false }))).toEqual(["setting: needs a rear pin"]);
  });

  it("counts gears that are used twice", () => {
    const { gears } = twoPairsWith.setting;
    const twice = { ...gears, drivers: [72, 72], driven: [24, 56] };
    expect(owned({ ...twoPairsWith.setting, gears: twice })).toEqual(["setting: needs the gears 72, 72, 24, 56"]);
    expect(owned(onePairAgainst.setting, defineHead({ ...head, gears: [24, 72] }))).toEqual(["setting: needs the gears 56, 24"]);
  });

  it("needs a plate that can be geared", () => {
    expect(owned(onePairAgainst.setting, defineHead({ ...head, gearing: null }))).toEqual([
      "setting: needs a plate that can be geared",
    ]);
  });

  it("finds one idler less or more, which turns the plate the other way", () => {
    const { gears } = onePairAgainst.setting;
    expect(owned({ ...onePairAgainst.setting, gears: { ...gears, idlers: 1 } })).toEqual([
      "setting: turns its plate with the crank with 1 idler, not against it",
    ]);
    expect(owned({ ...twoPairsWith.setting, gears: { ...twoPairsWith.setting.gears, idlers: 1 } })).toEqual([
      "setting: turns its plate against the crank with 1 idler, not with it",
    ]);
    expect(owned({ ...onePairAgainst.setting, gears: { ...gears, idlers: 4 } })).toEqual([]);
    const other = defineHead({ ...head, gearing: { idlersWithCrank: { onePair: 0 } } });
    expect(owned(onePairAgainst.setting, other)).toEqual([
      "setting: turns its plate with the crank with 2 idlers, not against it",
    ]);
  });

  it("finds a plate ratio that is not that of the train", () => {
    const { gears } = onePairAgainst.setting;
    expect(owned({ ...onePairAgainst.setting, gears: { ...gears, platePerSpindle: "7/3" } })).toEqual([
      "setting: turns its plate -7/3 times for one spindle turn, not 7/3",
    ]);
  });
});
