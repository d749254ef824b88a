import { describe, expect, it } from "vitest";
import { indexDivisions, prove, ratio, revolutions, whatMoveGives } from "../../src/index.ts";
import { threePlates } from "../support/ready.ts";
import { nearRow, wrongRows } from "./wrong-rows.ts";

describe("rows that are wrong are rejected", () => {
  it.each(wrongRows)("$move.spaces/$move.circle is not $meant but $gives", ({ meant, teeth, move, gives }) => {
    const given = whatMoveGives({ wormRatio: ratio("40"), ...move }, teeth);
    expect(given).toMatchObject({ divisions: gives, exact: true });
    const unproved = {
      method: "simple",
      teethPerMove: teeth,
      wormRatio: ratio(40),
      plate: null,
      face: null,
      armsEnclose: null,
      plateStopPin: "in",
      ...move,
    } as const;
    expect(prove({ ...unproved, spindlePerMove: revolutions(`${teeth}/${meant}`) }).closes).toBe(false);
    expect(prove({ ...unproved, spindlePerMove: revolutions(`${teeth}/${meant}`) }, { walk: true }).closes).toBe(false);
    expect(prove({ ...unproved, spindlePerMove: revolutions(`${teeth}/${gives}`) }, { walk: true }).closes).toBe(true);
  });

  it("106 by 1 + 7/39 + 29/41 is five teeth a move and 40.5″ out at the close", () => {
    const given = whatMoveGives({ wormRatio: ratio("40"), ...nearRow.move }, nearRow.teeth);
    expect(given).toMatchObject({ divisions: nearRow.meant, exact: false });
    expect(Math.abs(given.closingArcSeconds)).toBeCloseTo(nearRow.closingArcSeconds, 1);
    expect(indexDivisions(threePlates, nearRow.meant, { methods: ["compound"] }).exact).toBe(false);
  });
});
