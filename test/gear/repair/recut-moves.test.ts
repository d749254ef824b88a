import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexDivisions } from "../../../src/answer.ts";
import { recutPlan } from "../../../src/gear/repair/damaged-teeth.ts";
import { recutHoles, recutMoves } from "../../../src/gear/repair/recut-moves.ts";
import type { Head } from "../../../src/head/head.ts";
import { readyHeads } from "../../../src/head/ready-heads.ts";
import { fromExact, rational } from "../../../src/number/ratio.ts";
import type { Setting } from "../../../src/setting/setting.ts";

const headNamed = (id: string): Head => {
  const head = readyHeads.find((other) => other.id === id);
  if (head === undefined) throw new Error(`no head ${id}`);
  return head;
};
const geared = headNamed("ratio-40-plates-15-49");
const plain = headNamed("ratio-40-plates-15-49-ungeared");
const settingFor = (head: Head, teeth: number): Setting | undefined => indexDivisions(head, teeth).settings[0];

describe("exact moves", () => {
  it("57 teeth with 12 and 13 gone: every place from the start space, by the setting's own moves", () => {
    const plan = recutPlan(57, { damaged: [12, 13] });
    const setting = settingFor(geared, 57);
    if (setting === undefined) throw new Error("57 is not reached");
    const moves = recutMoves(setting, plan);
    expect(moves.map(({ toothSpace, purpose }) => `${toothSpace} ${purpose}`)).toEqual([
      "10 set the cutter",
      "11 recut",
      "12 recut",
      "13 recut",
      "14 prove the count",
    ]);
    expect(moves.map(({ position }) => position.from.moves)).toEqual([0, 1, 1, 1, 1]);
  });

  it("bring the work to each space's own angle, with one tooth a move or several", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(20, 57, 86, 96, 127, 383),
        fc.uniqueArray(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 }),
        (teeth, damaged) => {
          const plan = recutPlan(teeth, { damaged });
          const setting = settingFor(geared, teeth);
          fc.pre(setting !== undefined);
          const moves = recutMoves(setting, plan);
          const angles = new Map(plan.spaces.map(({ toothSpace, angleFromStart }) => [toothSpace, angleFromStart]));
          const cut = moves.filter(({ purpose }) => purpose === "recut");
          expect(new Set(cut.map(({ toothSpace }) => toothSpace))).toEqual(new Set(angles.keys()));
          for (const { toothSpace, position } of cut) {
            expect(
              fromExact(position.angle)
                .mod(1)
                .equals(fromExact(angles.get(toothSpace) ?? "0")),
            ).toBe(true);
          }
          expect(moves.at(-1)).toMatchObject({ toothSpace: plan.proofSpace.toothSpace, purpose: "prove the count" });
          // Forward all the way to the last cut, without a second round.
          const last = cut.at(-1)?.position.move ?? 0;
          expect(last).toBeLessThan(teeth);
        },
      ),
    );
  });

  it("refuses a setting for another count", () => {
    const setting = settingFor(geared, 60);
    if (setting === undefined) throw new Error("60 is not reached");
    expect(() => recutMoves(setting, recutPlan(57, { damaged: [12] }))).toThrow(
      /it divides the work into 60 and the gear has 57 teeth; give a setting for 57/,
    );
  });
});

describe("near moves", () => {
  it("each from the start space to the nearest hole: no error is more than half a space", () => {
    const plan = recutPlan(127, { damaged: [3, 4] });
    const holes = recutHoles(plain, plan, 49);
    expect(holes.map(({ toothSpace }) => toothSpace)).toEqual([1, 2, 3, 4, 5]);
    const halfSpace = 1_296_000 / (2 * 40 * 49);
    for (const [index, { position }] of holes.entries()) {
      expect(position.tooth).toBe(index + 1);
      const turned = rational(position.turns * 49 + position.hole, 40 * 49);
      const error = turned.sub(rational(index, 127)).mul(1_296_000).valueOf();
      expect(position.errorArcSeconds).toBeCloseTo(error, 6);
      expect(Math.abs(error)).toBeLessThanOrEqual(halfSpace);
    }
    expect(holes[0]?.position.errorArcSeconds).toBe(0);
  });

  it("where there is one sound space only, the start proves the count", () => {
    const plan = recutPlan(20, { damaged: Array.from({ length: 18 }, (_, index) => index + 2) });
    expect(plan).toMatchObject({ startSpace: 20, proofSpace: { toothSpace: 20, teethFromStart: 20 } });
    expect(recutHoles(plain, plan, 20).at(-1)).toMatchObject({
      toothSpace: 20,
      purpose: "prove the count",
      position: { tooth: 1 },
    });
  });
});
