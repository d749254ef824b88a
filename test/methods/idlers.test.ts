import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkOwned, defineHead, exactSettings, type HeadSpec, nearSettings } from "../../src/index.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";

/** 127 by 56 to 24 turns the plate against the crank: two idlers on a head of the usual kind. */
const twoGears: HeadSpec = {
  wormRatio: 40,
  plates: [{ name: "3", circles: [37, 39, 41, 43, 47, 49] }],
  gears: [24, 56],
};

const of127 = (spec: HeadSpec) => [...exactSettings(defineHead(spec), { divisions: 127 }, { teethPerMove: 1 })];

describe("idlers are gears besides those of the train", () => {
  it("not said, they are taken to be at hand", () => {
    expect(of127(twoGears)[0]).toMatchObject({ gears: { drivers: [56], driven: [24], idlers: 2 } });
  });

  it("said to be none, a train that needs them is none", () => {
    expect(of127({ ...twoGears, idlers: [] })).toEqual([]);
    expect(of127({ ...twoGears, idlers: [30] })).toEqual([]);
  });

  it("two kept for it will do, and so will change gears that the train leaves over", () => {
    expect(of127({ ...twoGears, idlers: [30, 36] })).toHaveLength(1);
    expect(of127({ ...twoGears, idlers: [30], gears: [24, 56, 100] })).not.toEqual([]);
    expect(of127({ ...twoGears, idlers: [], gears: [24, 56, 86, 100] })).not.toEqual([]);
  });

  it("a setting whose idlers a head has not is not owned", () => {
    const [setting] = of127(twoGears);
    const without = defineHead({ ...twoGears, idlers: [] });
    expect(setting && refusalLines(() => checkOwned(setting, without))).toEqual(["setting: needs 2 idlers"]);
  });

  it("every setting found, exact or near, leaves idlers enough", () => {
    const gears = fc.uniqueArray(fc.constantFrom(24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(
        gears,
        fc.array(fc.integer({ min: 20, max: 60 }), { maxLength: 2 }),
        fc.integer({ min: 50, max: 400 }),
        (owned, kept, divisions) => {
          const head = defineHead({ ...threePlates, id: "mine", gears: owned, idlers: kept });
          const exact = [...exactSettings(head, { divisions }, { teethPerMove: 3 })];
          const near = nearSettings(head, { divisions }, { teethPerMove: 3 });
          for (const setting of [...exact, ...near]) {
            if (!("gears" in setting)) continue;
            const { drivers, driven, idlers } = setting.gears;
            expect(kept.length + owned.length - drivers.length - driven.length).toBeGreaterThanOrEqual(idlers);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it("more idlers never lose an answer", () => {
    for (let divisions = 50; divisions <= 400; divisions += 7) {
      const counts = [[], [30], [30, 36], null].map(
        (idlers) =>
          [...exactSettings(defineHead({ ...threePlates, id: "mine", gears: [24, 40, 56, 64], idlers }), { divisions })].length,
      );
      expect(counts).toEqual([...counts].sort((a, b) => a - b));
    }
  });
});
