import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexAngle, parseAngle, positions, type Setting, toothAt } from "../../src/index.ts";
import { add, turnsOf, turnsText, withinTurn } from "../support/bench.ts";
import { refusalLines } from "../support/refusal.ts";
import { best, head40, settings, zeros } from "../support/settings.ts";

describe("where the ring stands", () => {
  it("86 with the ring at 46.5°: past tooth 12 by 46.5° − 11·360°/86", () => {
    const { tooth, past, sure } = toothAt(best(86), parseAngle("46.5"));
    expect({ tooth, sure }).toEqual({ tooth: 12, sure: true });
    expect(turnsText(add(turnsOf(past), turnsOf("11/86")))).toBe(turnsText(turnsOf("465/3600")));
  });

  it("half-way between two teeth it is the later one, and is not sure", () => {
    expect(toothAt(best(8), "1/16")).toEqual({ tooth: 2, past: "-1/16", sure: false });
  });

  it("just short of the full turn it is tooth 1", () => {
    expect(toothAt(best(8), "99/100")).toEqual({ tooth: 1, past: "-1/100", sure: true });
  });

  it("an angle that does not divide the turn: the last position before the turn, or the start", () => {
    const setting = indexAngle(head40, "2/5").settings[0] as Setting;
    expect(toothAt(setting, "79/100")).toEqual({ tooth: 3, past: "-1/100", sure: true });
    expect(toothAt(setting, "97/100")).toEqual({ tooth: 1, past: "-3/100", sure: true });
    expect(toothAt(setting, "81/100")).toEqual({ tooth: 3, past: "1/100", sure: true });
  });
});

describe("laws", () => {
  it("the ring at a position says which tooth it is", () => {
    fc.assert(
      fc.property(settings, zeros, fc.nat(), (setting, { startAngle = "0", side = "plus" }, pick) => {
        const [at] = positions(setting, { teeth: [1 + (pick % setting.proof.moves)], startAngle, side });
        const { n, d } = turnsOf(at?.angle ?? "");
        const shown = side === "minus" ? turnsText(withinTurn({ n: -n, d })) : (at?.angle ?? "");
        expect(toothAt(setting, shown, { startAngle, side })).toEqual({ tooth: at?.tooth, past: "0", sure: true });
      }),
    );
  });

  it("a reading off a tooth is told by how much, and is sure within a quarter of a division", () => {
    fc.assert(
      fc.property(settings, fc.nat(), fc.integer({ min: -49, max: 49 }), (setting, pick, hundredths) => {
        const count = setting.proof.moves;
        const tooth = 1 + (pick % count);
        const reading = withinTurn({ n: BigInt((tooth - 1) * 100 + hundredths), d: BigInt(count * 100) });
        expect(toothAt(setting, turnsText(reading))).toEqual({
          tooth,
          past: turnsText(turnsOf(`${hundredths}/${count * 100}`)),
          sure: Math.abs(hundredths) <= 25,
        });
      }),
    );
  });
});

it("refuses a reading that is none", () => {
  expect(refusalLines(() => toothAt(best(86), "-1/4"))).toEqual(['angle: "-1/4" is not an angle from 0 to 1,000 revolutions']);
  expect(refusalLines(() => toothAt(best(86), "0", { startAngle: "1/0" }))).toEqual([
    'startAngle: "1/0" divides by zero; give a fraction such as 81/2',
  ]);
});
