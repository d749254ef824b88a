import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  allMethods,
  checkOwned,
  defineHead,
  exactSettings,
  InputError,
  type Kind,
  kindOf,
  type Method,
  orderOfPreference,
  ratio,
  type UnprovedSetting,
} from "../../src/index.ts";
import type { Law } from "../../src/methods/law.ts";
import { type HeadLayout, layOut } from "../../src/methods/layout.ts";
import { lackOf, methodOf, plainMethods, whyNotBy } from "../../src/methods/registry.ts";
import { heads, small, teethPerMove } from "../support/arbitraries.ts";
import { handWorked, oneOfAll } from "../support/hand-worked.ts";
import { canBeSetUp } from "../support/mechanism.ts";
import { otherHeads } from "../support/other-heads.ts";
import { ready, threePlates, twoFaces } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";
import { takeOfEach } from "../support/take.ts";
import { wrong } from "../support/wrong.ts";

const head = oneOfAll;
const { simple, wholeTurns, fractional, direct, dial, compoundWith, compoundAgainst, onePairAgainst, twoPairsWith } = handWorked;

/** Every method and every kind by name: the compiler asks for a new one here. */
const methods: Readonly<Record<Method, true>> = {
  direct: true,
  simple: true,
  "wide-range": true,
  differential: true,
  compound: true,
  dial: true,
};
const kinds: Readonly<Record<Kind, Method>> = {
  direct: "direct",
  simple: "simple",
  "wide-range": "wide-range",
  "one-pair": "differential",
  "two-pair": "differential",
  compound: "compound",
  block: "differential",
  dial: "dial",
  "may-foul": "differential",
};

describe("every method", () => {
  it("is in the registry", () => {
    expect([...allMethods].sort()).toEqual(Object.keys(methods).sort());
  });

  it("has its law in a file of its own name, with a place of its own for each of its kinds", async () => {
    const places: number[] = [];
    for (const method of allMethods) {
      const file: Readonly<Record<string, Law<Method>>> = await import(`../../src/methods/${method}.ts`);
      const law = file[method.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())];
      expect(Object.keys(law?.places ?? {}).sort()).toEqual(orderOfPreference.filter((kind) => methodOf(kind) === method).sort());
      places.push(...Object.values(law?.places ?? {}));
    }
    expect(new Set(places).size).toBe(orderOfPreference.length);
    expect(places).toHaveLength(orderOfPreference.length);
  });

  it("says why it has no setting on a head that has nothing for it", () => {
    const bare = layOut(defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] }));
    const { directPlates: _, ...plateless } = ready("ratio-90-dial");
    const why = (method: Method) =>
      whyNotBy(method, method === "direct" ? layOut(defineHead(plateless)) : bare, { divisions: 97 }, 12);
    expect(allMethods.map((method) => [method, why(method)])).toEqual([
      ["direct", { code: "without", part: "direct-plate" }],
      ["simple", { code: "without", part: "index-plate" }],
      ["wide-range", { code: "without", part: "small-crank" }],
      ["differential", { code: "without", part: "gearing" }],
      ["compound", { code: "without", part: "rear-pin" }],
      ["dial", { code: "without", part: "dial" }],
    ]);
  });

  it("that goes without change gears is one whose absence is to be explained: direct, simple, both cranks, compound", () => {
    expect(plainMethods).toEqual(["direct", "simple", "wide-range", "compound"]);
  });
});

describe("the order of preference", () => {
  it("is the documented one, with every kind once", () => {
    const documented = ["direct", "simple", "wide-range", "one-pair", "two-pair", "compound", "block", "dial", "may-foul"];
    expect(orderOfPreference).toEqual(documented);
    expect([...orderOfPreference].sort()).toEqual(Object.keys(kinds).sort());
  });

  it("knows the method of each kind", () => {
    expect(Object.fromEntries(orderOfPreference.map((kind) => [kind, methodOf(kind)]))).toEqual(kinds);
  });

  it("of every setting, its method is that of its kind", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 90 }), teethPerMove, (any, divisions, teeth) => {
        for (const setting of takeOfEach(3, any, { divisions }, teeth)) expect(methodOf(kindOf(setting))).toBe(setting.method);
      }),
    );
  });

  it("cannot be changed by those who read it", () => {
    expect([Object.isFrozen(orderOfPreference), Object.isFrozen(allMethods)]).toEqual([true, true]);
  });
});

describe("what a head has for a setting", () => {
  const cases = fc.tuple(heads(small), fc.integer({ min: 1, max: 90 }), teethPerMove);

  it("is everything, for a setting of its own", () => {
    fc.assert(
      fc.property(cases, ([any, divisions, teeth]) => {
        for (const setting of takeOfEach(6, any, { divisions }, teeth)) {
          checkOwned(setting, any);
          expect(canBeSetUp(setting, any)).toBe(true);
        }
      }),
    );
  });

  it("is on any other head what laying the parts out on the bench shows", () => {
    let [has, lacks] = [0, 0];
    fc.assert(
      fc.property(cases, ([any, divisions, teeth]) => {
        for (const setting of takeOfEach(2, any, { divisions }, teeth)) {
          for (const other of otherHeads(any, setting)) {
            const there = canBeSetUp(setting, other);
            expect(lackOf(setting, other) === null).toBe(there);
            if (there) has += 1;
            else lacks += 1;
          }
        }
      }),
      runs(300),
    );
    expect(Math.min(has, lacks)).toBeGreaterThan(100);
  });
});

describe("checkOwned", () => {
  const owned = (setting: UnprovedSetting, on = head) => refusalLines(() => checkOwned(setting, on));

  it.each(Object.values(handWorked).map((each) => [each.name, each] as const))("lets %s pass", (_, { setting, head: its }) => {
    expect(owned(setting, its)).toEqual([]);
  });

  it("names a method that there is not, and what is no move", () => {
    expect(owned(wrong({ ...simple.setting, method: "plain" }))[0]).toMatch(/^setting\.method: "plain" is none of /);
    expect(owned(wrong({ ...simple.setting, turns: {} }))).toEqual(["move.turns: an object is neither a number nor a word"]);
  });

  it("names another worm ratio", () => {
    expect(owned(fractional.setting)).toEqual(["setting: is for a worm ratio of 81/2; the head has 40"]);
  });

  it("names a plate, a face or a circle that the head has not", () => {
    expect(owned({ ...simple.setting, circle: 20 })).toEqual(['setting: needs a circle of 20 on plate "1"']);
    expect(owned({ ...simple.setting, plate: "2" })).toEqual(['setting: needs a circle of 21 on plate "2"']);
    expect(owned(wrong({ ...simple.setting, plate: null }))).toEqual(["setting: needs a circle of 21 on plate null"]);
    const by54 = { ...simple.setting, circle: 54 };
    expect(owned({ ...by54, face: "front" }, twoFaces)).toEqual(['setting: needs a circle of 54 on plate "1", face "front"']);
    expect(owned({ ...by54, face: "back" }, twoFaces)).toEqual([]);
    expect(owned({ ...direct.setting, circle: 36 })).toEqual(['setting: needs a direct plate "nose" of 36 holes']);
    expect(owned({ ...direct.setting, plate: "ring" })).toEqual(['setting: needs a direct plate "ring" of 24 holes']);
    expect(owned(wholeTurns.setting, twoFaces)).toEqual([]);
  });

  it("names a dial that the head has not, by its places in a turn", () => {
    const table = ready("ratio-90-dial");
    expect(owned({ ...dial.setting, circle: 240 }, table)).toEqual(["setting: needs a dial with 240 places in a turn"]);
    expect(owned(dial.setting, defineHead({ ...head, wormRatio: 90 }))).toEqual([
      "setting: needs a dial with 1440 places in a turn",
    ]);
  });

  it("finds a setting from elsewhere that has no second move, or no gears", () => {
    expect(owned(wrong({ ...compoundWith.setting, second: undefined }))).toEqual(["setting: has no second move"]);
    expect(owned(wrong({ ...onePairAgainst.setting, gears: undefined }))).toEqual(["setting: has no gears"]);
  });

  it("names the second circle and the rear pin of compound indexing", () => {
    const { second } = compoundAgainst.setting;
    const by31 = { ...second, circle: 31 };
    expect(owned({ ...compoundAgainst.setting, second: by31 })).toEqual(['setting: needs a circle of 31 on plate "1"']);
    expect(owned(compoundWith.setting, defineHead({ ...head, rearPin: false }))).toEqual(["setting: needs a rear pin"]);
    // Of two that are missing the first that is set.
    expect(owned({ ...compoundAgainst.setting, circle: 22, second: by31 })).toEqual([
      'setting: needs a circle of 22 on plate "1"',
    ]);
  });

  it("counts gears that are used twice", () => {
    const { gears } = twoPairsWith.setting;
    const twice = { ...gears, drivers: [72, 72], driven: [24, 56] };
    expect(owned({ ...twoPairsWith.setting, gears: twice })).toEqual(["setting: needs the gears 72, 72, 24, 56"]);
    expect(owned(onePairAgainst.setting, defineHead({ ...head, gears: [24, 72] }))).toEqual(["setting: needs the gears 56, 24"]);
  });

  it("counts the idlers, those kept as such and gears that are left over", () => {
    const kept = (idlers: readonly number[], gears: readonly number[]) => defineHead({ ...head, idlers, gears });
    const { setting: oneIdler } = handWorked.onePairWith;
    expect(owned(oneIdler, kept([], [40, 72]))).toEqual(["setting: needs an idler"]);
    expect(owned(oneIdler, kept([30], [40, 72]))).toEqual([]);
    expect(owned(oneIdler, kept([], [40, 72, 56]))).toEqual([]);
    expect(owned(onePairAgainst.setting, kept([30], [24, 56]))).toEqual(["setting: needs 2 idlers"]);
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
    expect(owned({ ...onePairAgainst.setting, gears: { ...gears, platePerSpindle: ratio("7/3") } })).toEqual([
      "setting: turns its plate -7/3 times for one spindle turn, not 7/3",
    ]);
  });
});

/*
 * What the laws find is wrong here because they are shown a head other than the one that the settings
 * are for: a layout that lies, as a law at fault would.
 */
describe("a setting of ours that its own head cannot make, or that does not close, is our fault and no refusal", () => {
  const first = (layout: HeadLayout, divisions: number, methods: readonly Method[] = allMethods) =>
    exactSettings({ head: layout.head, layout }, { divisions }, { methods }).next().value;
  const layout = layOut(threePlates);

  const fault = (act: () => unknown): string => {
    try {
      act();
    } catch (error) {
      expect(error).toBeInstanceOf(Error);
      expect(error).not.toBeInstanceOf(InputError);
      return String(error);
    }
    return "no fault";
  };
  const told = "Error: turns-and-holes is at fault, please report it: ";

  it("does not happen where the layout is the head's own", () => {
    expect(fault(() => first(layout, 7))).toBe("no fault");
  });

  it.each([
    ["a circle", { plates: [] }, 7, "simple", 'needs a circle of 21 on plate "2"'],
    ["a gear", { gears: [24, 28] }, 127, "differential", "needs the gears 56, 24"],
  ] as const)("%s that is not there", (_, changed, divisions, method, lack) => {
    const said = fault(() => first({ ...layout, head: { ...threePlates, ...changed } }, divisions, [method]));
    expect(said.startsWith(told)).toBe(true);
    expect(said.endsWith(lack)).toBe(true);
  });

  it("a move of another worm, which does not close", () => {
    const said = fault(() => first({ ...layout, worm: { n: 60, d: 1 } }, 7));
    expect(said.startsWith(told)).toBe(true);
    expect(said.endsWith("does not close")).toBe(true);
  });
});
