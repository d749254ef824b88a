import { describe, expect, it } from "vitest";
import { defineHead, formatAngle, fromExact, indexDivisions, parseAngle, revolutions } from "../../src/index.ts";
import { rational } from "../../src/number/ratio.ts";
import { threePlates, twoFaces } from "../support/ready.ts";
import { fourteen, moves, plate } from "./army-od1644.ts";
import { ratchetPlates, spindleGear } from "./practical-treatise.ts";
import { wideRange } from "./wide-range.ts";

describe("US Army, OD1644, simple indexing", () => {
  const circles = [...new Set(moves.flatMap(({ circle }) => circle ?? []))];
  const head = defineHead({ wormRatio: plate.wormRatio, plates: [{ name: "of the examples", circles }] });

  it.each(moves)("40/$divisions = $turns + $spaces/$circle", ({ divisions, turns, spaces, circle }) => {
    expect(indexDivisions(head, divisions).settings).toContainEqual(expect.objectContaining({ turns, spaces, circle }));
  });

  it("40/14 = 2 6/7, on every circle of the plate listed that is a multiple of 7", () => {
    const { settings } = indexDivisions(twoFaces, fourteen.divisions);
    expect(settings.map(({ circle }) => circle).sort()).toEqual([...plate.first, ...plate.second].filter((c) => c % 7 === 0));
    for (const { turns, spaces, circle } of settings) {
      expect(turns).toBe(fourteen.turns);
      expect(rational(spaces, circle ?? 1).equals(fromExact(fourteen.fraction))).toBe(true);
    }
  });

  it("lists the circles of the two-faced ready head", () => {
    expect(twoFaces.plates.flatMap(({ faces }) => faces.map(({ circles }) => circles))).toEqual([plate.first, plate.second]);
    expect(twoFaces.wormRatio).toBe(String(plate.wormRatio));
  });
});

describe("Practical Treatise, direct indexing", () => {
  it("rings of 24, 20 and 14 holes (our reading) give exactly the counts listed", () => {
    const rings = [24, 20, 14].map((holes) => ({ name: String(holes), holes }));
    const head = defineHead({ wormRatio: 40, directPlates: rings });
    const direct = Array.from({ length: 60 }, (_, index) => index + 1).filter(
      (divisions) => indexDivisions(head, divisions, { methods: ["direct"] }).exact,
    );
    expect(direct).toEqual([1, ...ratchetPlates.divisions]);
  });

  it("p. 63: a spindle gear of 72 gives 9 divisions by 8 teeth", () => {
    const { teeth, divisions, advance } = spindleGear;
    const head = defineHead({ wormRatio: 40, directPlates: [{ name: "spindle gear", holes: teeth }] });
    expect(indexDivisions(head, divisions).settings).toEqual([
      expect.objectContaining({ method: "direct", circle: teeth, turns: 0, spaces: advance }),
    ]);
  });
});

describe("US Navy, wide range divider", () => {
  const { smallCrankRatio, smallPlate, arcPerTurn, mostDivisions } = wideRange;
  const head = defineHead({ wormRatio: smallCrankRatio, plates: [{ name: "small", circles: [...smallPlate] }] });

  it("one turn of the small crank is 5′ 24″ of the work", () => {
    expect(parseAngle(arcPerTurn)).toBe(`1/${smallCrankRatio}`);
    expect(formatAngle(revolutions(`1/${smallCrankRatio}`))).toBe("0° 05′ 24″");
  });

  it("400,000 divisions are one space of its 100", () => {
    expect(indexDivisions(head, mostDivisions).settings).toEqual([
      expect.objectContaining({ method: "simple", turns: 0, spaces: 1, circle: 100 }),
    ]);
  });
});

describe("what the three plates cannot do by simple indexing", () => {
  it("96 needs a circle that is a multiple of 12 (5/12 of a turn)", () => {
    const answer = indexDivisions(threePlates, 96, { methods: ["simple"] });
    expect(answer.exact).toBe(false);
    expect(answer.impossible?.reasons).toEqual([
      { method: "simple", code: "no-multiple", of: "circle", multiplesOf: [12], owned: [] },
    ]);
    expect(answer.circlesThatWouldDo.slice(0, 3)).toEqual([12, 24, 36]);
  });
});
