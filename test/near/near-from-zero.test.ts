import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, fromExact, nearSettings } from "../../src/index.ts";
import { counts, headSpecs } from "../support/arbitraries.ts";
import { arcSecondsPerTurn, expectErrors, isFromZero, withScales } from "../support/near-errors.ts";
import { ready } from "../support/ready.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");

describe("near settings from one zero", () => {
  it("miss by what setting every position to its nearest place misses", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const head = defineHead(spec);
        for (const near of nearSettings(head, { divisions }).filter(isFromZero)) {
          const perSpindle = fromExact(near.kind === "ring" ? "1" : head.wormRatio).mul(near.placesPerTurn);
          const errorOf = (steps: number) => {
            const wanted = fromExact(`${steps}/${divisions}`);
            const nearest = wanted.mul(perSpindle).add(fromExact("1/2")).floor();
            return nearest.div(perSpindle).sub(wanted);
          };
          const errors = new Map(Array.from({ length: divisions }, (_, steps) => [steps + 1, errorOf(steps)]));
          expectErrors(near, errors, errorOf(divisions).toFraction());
        }
      }),
    );
  });

  it("take the circle with the least worst error of all", () => {
    fc.assert(
      fc.property(headSpecs(), counts, (spec, divisions) => {
        const head = defineHead(spec);
        const [near] = nearSettings(head, { divisions }).filter(({ kind }) => kind === "nearest-hole");
        if (near === undefined) return;
        for (const plate of head.plates) {
          const alone = { ...spec, plates: [plate], gears: [], rearPin: false };
          for (const { worstArcSeconds } of nearSettings(defineHead(alone), { divisions }).filter(
            ({ kind }) => kind === "nearest-hole",
          )) {
            expect(worstArcSeconds).toBeGreaterThanOrEqual(near.worstArcSeconds);
          }
        }
      }),
    );
  });

  it("come back to the start on a whole worm ratio, and are never half a space off", () => {
    for (let divisions = 2; divisions <= 1000; divisions += 1) {
      const hole = nearSettings(ungeared, { divisions }, { teethPerMove: 1 }).find(({ kind }) => kind === "nearest-hole");
      if (hole === undefined) continue;
      expect(hole.closingArcSeconds).toBe(0);
      expect(hole.worstArcSeconds).toBeLessThanOrEqual(arcSecondsPerTurn / (2 * 40 * 49) + 1e-9);
    }
  });

  it("name no turns and spaces, as the moves between positions differ", () => {
    const [hole] = nearSettings(ungeared, { divisions: 787 }).filter(({ kind }) => kind === "nearest-hole");
    expect(hole).toMatchObject({
      moves: "from-zero",
      circle: 49,
      turns: null,
      spaces: null,
      armsEnclose: null,
      plateStopPin: "in",
    });
  });

  it("read a dial to half its least count", () => {
    const table = ready("ratio-90-dial");
    const near = nearSettings(table, { divisions: 97 });
    expect(near.map(({ kind }) => kind)).toEqual(["dial", "ring"]);
    expect(near[0]?.closingArcSeconds).toBe(0);
    expect(near[0]?.worstArcSeconds).toBeLessThanOrEqual(5);
    expect(near[1]?.worstArcSeconds).toBeLessThanOrEqual(1800);
  });

  it("has no step to a neighbour where there is one position only, on a fractional worm ratio", () => {
    const head = defineHead({ wormRatio: "5/2", plates: [{ name: "1", circles: [3] }], dial: { marksPerTurn: 5 } });
    const near = nearSettings(head, { divisions: 1 });
    expect(near.map(({ kind }) => kind)).toEqual(["dial", "simple", "nearest-hole"]);
    expect(near.map(({ pitchArcSeconds }) => pitchArcSeconds)).toEqual([0, 0, 0]);
    expect(near.map(({ worstArcSeconds }) => worstArcSeconds)).toEqual([0, 0, 0]);
    expect(near.every(({ closingArcSeconds }) => closingArcSeconds > 0)).toBe(true);
  });
});
