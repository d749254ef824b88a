import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions, prove, ratio, revolutions, type UnprovedSetting, whatMoveGives } from "../../src/index.ts";
import { closesOnBench } from "../support/mechanism.ts";
import { threePlates } from "../support/ready.ts";
import { nearRow, wrongRows } from "./wrong-rows.ts";

describe("rows that are wrong are rejected", () => {
  it.each(wrongRows)("$move.spaces/$move.circle is not $meant but $gives", ({ meant, teeth, move, gives }) => {
    const given = whatMoveGives({ wormRatio: ratio("40"), ...move }, teeth);
    expect(given).toMatchObject({ divisions: gives, exact: true });
    const setting = (divisions: number): UnprovedSetting => ({
      ...move,
      method: "simple",
      teethPerMove: teeth,
      wormRatio: ratio(40),
      spindlePerMove: revolutions(teeth, divisions),
      plate: "of the row",
      face: null,
      armsEnclose: move.spaces + 1,
      plateStopPin: "in",
    });
    const walkOn = defineHead({ wormRatio: 40, plates: [{ name: "of the row", circles: [move.circle] }] });
    expect([prove(setting(meant)).closes, prove(setting(gives)).closes]).toEqual([false, true]);
    expect([prove(setting(meant), { walkOn }).closes, prove(setting(gives), { walkOn }).closes]).toEqual([false, true]);
    expect([closesOnBench(setting(meant), walkOn), closesOnBench(setting(gives), walkOn)]).toEqual([false, true]);
  });

  it(`106 by 1 + 7/39 + 29/41 is five teeth a move and 40.5″ too far at the close (${nearRow.source.place})`, () => {
    const given = whatMoveGives({ wormRatio: ratio("40"), ...nearRow.move }, nearRow.teeth);
    expect(given).toMatchObject({ divisions: nearRow.meant, exact: false });
    expect(given.closingArcSeconds).toBeCloseTo((nearRow.closing.turns / nearRow.closing.of) * 1_296_000, 9);
    expect(given.closingArcSeconds.toFixed(1)).toBe(nearRow.closing.printed);
    expect(indexDivisions(threePlates, nearRow.meant, { methods: ["compound"] }).exact).toBe(false);
    // Taken for one tooth a move it is nowhere near 106.
    expect(whatMoveGives({ wormRatio: ratio("40"), ...nearRow.move })).toMatchObject({ divisions: 21, exact: false });
  });
});
