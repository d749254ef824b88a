import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, fromExact, nearSettings, revolutions, wormRatioOf } from "../../src/index.ts";
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
          const perSpindle = fromExact(near.kind === "ring" ? "1" : wormRatioOf(head)).mul(near.placesPerTurn);
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
      teethPerMove: 1,
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

  it("name the first of the positions that are furthest off", () => {
    for (const divisions of [97, 98, 101, 350]) {
      const near = nearSettings(ungeared, { divisions }, { teethPerMove: 1 }).filter(isFromZero);
      for (const { kind, placesPerTurn, worstArcSeconds, error } of near) {
        const places = (kind === "ring" ? 1 : 40) * placesPerTurn;
        const off = (steps: number) => {
          const past = (steps * places) % divisions;
          return (Math.min(past, divisions - past) / (divisions * places)) * arcSecondsPerTurn;
        };
        const first = Array.from({ length: divisions }, (_, steps) => steps).find((steps) => off(steps) > worstArcSeconds - 1e-9);
        expect([kind, error.worstTooth]).toEqual([kind, 1 + Number(first)]);
      }
    }
  });

  it("of an angle are off by what its one place is, the second, by dial and ring alike", () => {
    // 29/3601 of a turn is 1043.68 of the dial's places of 10″ and 2.899 of the ring's degrees.
    const near = nearSettings(ready("ratio-90-dial"), { angle: revolutions("29/3601") }).filter(isFromZero);
    expect(near.map(({ kind }) => kind)).toEqual(["dial", "ring"]);
    for (const [index, perTurn] of [90 * 1440, 360].entries()) {
      const places = Math.round((29 * perTurn) / 3601);
      const error = revolutions(places * 3601 - 29 * perTurn, perTurn * 3601);
      expect(near[index]?.error).toEqual({ closing: error, worst: error, worstTooth: 2, pitch: error });
    }
    // 2/25 of a turn of 5/2:1 is a fifth of a turn of the crank: a mark of this dial.
    const head = defineHead({ wormRatio: "5/2", dial: { marksPerTurn: 5 } });
    expect(nearSettings(head, { angle: revolutions("2/25") })).toEqual([]);
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
