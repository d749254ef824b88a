import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  fromExact,
  indexAngle,
  indexDivisions,
  nearSettings,
  prove,
  revolutions,
  spindleTurnsPerMove,
} from "../../src/index.ts";
import { counts, headSpecs, small } from "../support/arbitraries.ts";
import { turnsText } from "../support/bench.ts";
import { canBeSetUp, closesOnBench, workPerMove } from "../support/mechanism.ts";
import { expectErrors, isMove, withScales } from "../support/near-errors.ts";
import { nearestByTrial } from "../support/near-oracle.ts";
import { ready } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");

describe("near settings of one move made over and over", () => {
  it("are those that trying every move finds", () => {
    fc.assert(
      fc.property(headSpecs(small).map(defineHead), fc.integer({ min: 1, max: 4 }), (head, teethPerMove) => {
        const nearest = nearestByTrial(head);
        for (let divisions = 1; divisions <= 40; divisions += 1) {
          const found = nearSettings(head, { divisions }, { teethPerMove }).filter(isMove);
          const key = (kind: string, teeth: number, closing: string) => `${kind}, ${teeth} a move, ${closing}`;
          expect(
            found.map((near) => key(near.kind, near.teethPerMove, fromExact(near.error.closing).abs().toFraction())).sort(),
          ).toEqual(
            nearest(divisions, teethPerMove)
              .map(({ kind, teeth, closing: { n, d } }) => key(kind, teeth, fromExact(`${n}/${d}`).toFraction()))
              .sort(),
          );
        }
      }),
      runs(150),
    );
  });

  it("miss by what the bench misses when all their moves are made", () => {
    fc.assert(
      fc.property(withScales(), counts, fc.integer({ min: 1, max: 5 }), (spec, divisions, teethPerMove) => {
        const head = defineHead(spec);
        for (const near of nearSettings(head, { divisions }, { teethPerMove }).filter(isMove)) {
          // Made by hand on the bench, with the holes and gears of the head.
          expect(canBeSetUp(near, head)).toBe(true);
          const made = workPerMove(near, head);
          expect(made && turnsText(made)).toBe(near.spindleTurned);
          const perMove = fromExact(near.spindleTurned);
          const errors = new Map<number, ReturnType<typeof fromExact>>();
          let place = fromExact("0");
          for (let move = 0; move < divisions; move += 1) {
            const wanted = fromExact(`${move * near.teethPerMove}/${divisions}`);
            errors.set(((move * near.teethPerMove) % divisions) + 1, place.sub(wanted));
            place = place.add(perMove);
          }
          expect(errors.size).toBe(divisions);
          expectErrors(near, errors, place.sub(near.teethPerMove).toFraction());
        }
      }),
      runs(120),
    );
  });

  it("are never exact, and the mechanism says so", () => {
    fc.assert(
      fc.property(withScales(), counts, (spec, divisions) => {
        const head = defineHead(spec);
        const answer = indexDivisions(head, divisions, { near: true });
        for (const near of answer.near) {
          expect(near.exact).toBe(false);
          expect(near).not.toHaveProperty("proof");
          // A ring may have a mark for every place; what it is off by then is how it is read.
          if (near.kind !== "ring") expect(near.worstArcSeconds + near.closingArcSeconds).toBeGreaterThan(0);
          if (!isMove(near)) continue;
          expect([prove(near).closes, prove(near, { walkOn: head }).closes, closesOnBench(near, head)]).toEqual([
            false,
            false,
            false,
          ]);
        }
      }),
    );
  });
});

describe("near settings of an angle", () => {
  it("miss by the error of the one move", () => {
    const { exact, near } = indexAngle(ungeared, revolutions("29/3601"));
    expect(exact).toBe(false);
    for (const each of near.filter(isMove)) {
      const error = fromExact(spindleTurnsPerMove(each)).sub(fromExact("29/3601"));
      expect(each.teethPerMove).toBe(1);
      expect(each.error).toEqual({
        closing: error.toFraction(),
        worst: error.toFraction(),
        worstTooth: 2,
        pitch: error.abs().toFraction(),
      });
    }
    expect(near.map(({ kind }) => kind)).toContain("compound");
  });
});
