import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, fromExact, parseAngle, type Revolutions, readyHeads, revolutions, unequalSpacing } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

const [head] = readyHeads;
if (!head) throw new Error("there is a ready head");
const wormRatio = 40n;
const circles = [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49];
const wholeTurn = 1_296_000n;

/** Steps in whole arc-seconds, as integers. */
const steps = fc.array(fc.integer({ min: 1, max: 400_000 }), { minLength: 1, maxLength: 12 });
const written = (seconds: number) => parseAngle(`${seconds}s`);

/** Whole arc-seconds times the circle, over one turn: how far a place is from the nearest hole, worked in big integers. */
function offInSeconds(seconds: bigint, circle: number): number {
  const parts = seconds * wormRatio * BigInt(circle);
  const rest = parts % wholeTurn;
  const nearest = rest * 2n < wholeTurn ? -rest : wholeTurn - rest;
  return Number(nearest) / Number(wormRatio * BigInt(circle));
}

describe("unequal spacing", () => {
  it("sets a reamer of six by 58, 62, 59, 61, 60 and 60 degrees on one circle, worked by hand: 9 degrees a turn", () => {
    const spacing = unequalSpacing(head, ["58", "62", "59", "61", "60", "60"].map(parseAngle));
    expect(spacing).toMatchObject({
      exact: true,
      closes: true,
      left: "0",
      worstArcSeconds: 0,
      circle: { plate: "1", holes: 18 },
    });
    // 58/9 = 6 4/9 = 6 turns and 8 of 18.
    expect(spacing.places.map(({ turns, hole }) => [turns, hole])).toEqual([
      [0, 0],
      [6, 8],
      [13, 6],
      [19, 16],
      [26, 12],
      [33, 6],
    ]);
  });

  it("takes the circle with the least worst error, and never one where another is exact", () => {
    fc.assert(
      fc.property(steps, (given) => {
        const places = [0n];
        for (const step of given) places.push((places.at(-1) ?? 0n) + BigInt(step));
        const worst = circles.map((circle) => Math.max(...places.map((place) => Math.abs(offInSeconds(place, circle)))));
        const spacing = unequalSpacing(head, given.map(written));
        expect(spacing.worstArcSeconds).toBeCloseTo(Math.min(...worst), 9);
        expect(spacing.exact).toBe(worst.includes(0));
      }),
    );
  });

  it("counts every place from the zero, and its moves add up to where it is", () => {
    fc.assert(
      fc.property(steps, (given) => {
        const { places, circle } = unequalSpacing(head, given.map(written));
        let spaces = 0;
        for (const { from, turns, hole, angle, errorArcSeconds } of places) {
          spaces += (from?.turns ?? 0) * (circle?.holes ?? 0) + (from?.spaces ?? 0);
          expect(spaces).toBe((turns ?? 0) * (circle?.holes ?? 0) + (hole ?? 0));
          const reached = fromExact(`${spaces}/${40 * (circle?.holes ?? 1)}`);
          expect(reached.sub(fromExact(angle)).mul(1_296_000).valueOf()).toBeCloseTo(errorArcSeconds ?? Number.NaN, 9);
        }
      }),
    );
  });

  it("says what is left of the turn where the spaces do not make it up", () => {
    const spacing = unequalSpacing(head, ["100", "100", "100"].map(parseAngle));
    expect(spacing).toMatchObject({ closes: false, left: "1/6" });
    expect(spacing.places).toHaveLength(4);
  });

  it("names no hole on a head without a plate, and reads its dial", () => {
    const table = defineHead({ wormRatio: 90, dial: { marksPerTurn: 240, vernierLines: 6, figures: "angle" } });
    const { circle, exact, worstArcSeconds, places } = unequalSpacing(table, ["58.1", "59"].map(parseAngle));
    expect({ circle, exact, worstArcSeconds }).toEqual({ circle: null, exact: false, worstArcSeconds: null });
    expect(places[1]).toMatchObject({ turns: null, hole: null, from: null, dial: { turns: 14, mark: 126, line: 0 } });
  });

  it.each([
    ["no steps", () => unequalSpacing(head, []), "steps: there are none; give the angle from each place to the next"],
    [
      "one angle and no list",
      () => unequalSpacing(head, "1/6" as never),
      'steps: "1/6" is not a list of angles; give each from a place to the next',
    ],
    [
      "a step of nothing",
      () => unequalSpacing(head, [revolutions(1, 6), revolutions(0)]),
      'steps[1]: "0" is no angle to move by; give one above 0',
    ],
    [
      "degrees for turns",
      () => unequalSpacing(head, ["58.1" as Revolutions]),
      'steps[0]: "58.1" is not an angle in revolutions; give text such as "29/3600", or parseAngle("58.1°") for degrees',
    ],
    [
      "a plate that is not there",
      () => unequalSpacing(head, [revolutions(1, 6)], { mounted: "9" }),
      'mounted: this head has no plate "9"; its plates are 1, 2, 3',
    ],
    [
      "a misspelt option",
      () => unequalSpacing(head, [revolutions(1, 6)], { Mounted: "1" } as object),
      'options: there is no key "Mounted"; the keys are mounted',
    ],
    [
      "more places than are listed",
      () => unequalSpacing(head, Array(50_001).fill("1/6")),
      "steps: 50,001 places are too many to list; give at most 50,000",
    ],
    [
      "steps that are parts of nothing in common",
      () =>
        unequalSpacing(
          head,
          [1_296_000, 127, 131, 137, 139, 149].map((parts) => revolutions(1, parts)),
        ),
      "steps[5]: has too fine a common part with those before it; give all in degrees, minutes and seconds",
    ],
  ])("refuses %s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});
