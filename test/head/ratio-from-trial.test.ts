import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RatioTrial, ratioFromTrial, readyHeads } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

/** A trial of a head as it would be read on a ring, off by so many thousandths of what it may be off. */
function trialOf(ratio: number, turns: number, within: number, off: number): RatioTrial {
  const thousandths = Math.round((360_000 * turns) / ratio + (within * off) / 1000);
  return { crankTurns: turns, degrees: `${thousandths}/1000`, within: `${within + 1}/1000` };
}

/** Near the most degrees that are read, 360 turns, a reading may be over them. */
const mostThousandths = 129_000_000;

const found = (trial: RatioTrial) => ratioFromTrial(trial).candidates.map(({ wormRatio }) => Number(wormRatio));

const trials = fc.record({
  ratio: fc.integer({ min: 1, max: 400 }),
  turns: fc.integer({ min: 1, max: 400 }),
  within: fc.integer({ min: 0, max: 3000 }),
  off: fc.integer({ min: -1000, max: 1000 }),
});

describe("the worm ratio from a trial", () => {
  it("is that of every ready head, from ten turns read to a degree on its ring", () => {
    for (const { wormRatio } of readyHeads) {
      const { candidates } = ratioFromTrial({ crankTurns: 10, degrees: Math.round(3600 / Number(wormRatio)), within: 1 });
      expect(candidates[0]).toMatchObject({ wormRatio, common: true });
    }
  });

  it("never leaves out the true one, listed or told of, however it was read within the error stated", () => {
    let listed = 0;
    fc.assert(
      fc.property(trials, ({ ratio, turns, within, off }) => {
        fc.pre((360_000 * turns) / ratio > 2 * within + 2 && (360_000 * turns) / ratio < mostThousandths);
        const trial = trialOf(ratio, turns, within, off);
        const { candidates, unlisted } = ratioFromTrial(trial);
        const isThere = candidates.some(({ wormRatio }) => wormRatio === String(ratio));
        if (isThere) listed += 1;
        expect(isThere || unlisted > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
    expect(listed).toBeGreaterThan(300);
  });

  it("is one alone once the crank was turned as far as it says, whichever of them it is", () => {
    let tried = 0;
    fc.assert(
      fc.property(trials, fc.integer({ min: -1000, max: 1000 }), ({ ratio, turns, within, off }, offThen) => {
        fc.pre((360_000 * turns) / ratio > 2 * within + 2 && (360_000 * turns) / ratio < mostThousandths);
        const first = trialOf(ratio, turns, within, off);
        const { candidates, unlisted, turnsToTellApart } = ratioFromTrial(first);
        if (turnsToTellApart === null || unlisted > 0) return;
        tried += 1;
        for (const { wormRatio } of candidates) {
          const then = found(trialOf(Number(wormRatio), Number(turnsToTellApart), within, offThen));
          const left = candidates.filter((each) => then.includes(Number(each.wormRatio)));
          expect(left.map((each) => each.wormRatio)).toEqual([wormRatio]);
        }
      }),
      { numRuns: 500 },
    );
    expect(tried).toBeGreaterThan(30);
  });

  it("by hand: a quarter turn in 10 turns, judged to 5°, is anything from 38 to 42", () => {
    // 3600/95 = 37.9 to 3600/85 = 42.4; 38 and 39 turn the work 360·n/38 − 360·n/39 apart, over 10° from n = 41.2 on,
    // 41 and 42 from 47.8 on.
    const { candidates, unlisted, turnsToTellApart } = ratioFromTrial({ crankTurns: 10, degrees: 90, within: 5 });
    expect(candidates.map(({ wormRatio }) => wormRatio)).toEqual(["40", "41", "39", "42", "38"]);
    expect(candidates.map(({ common }) => common)).toEqual([true, false, false, false, false]);
    expect([unlisted, turnsToTellApart]).toEqual([0, "48"]);
    expect(candidates[1]?.offDegrees).toBeCloseTo(3600 / 41 - 90, 12);
  });

  it("counts what are too many to list, and knows half turns", () => {
    expect(ratioFromTrial({ crankTurns: 1, degrees: 4, within: 0.5 })).toMatchObject({ unlisted: 19, turnsToTellApart: "7" });
    expect(found({ crankTurns: "9.5", degrees: 57, within: 0 })).toEqual([60]);
    expect(ratioFromTrial({ crankTurns: 10, degrees: "83.3", within: "0.1" })).toMatchObject({ candidates: [], unlisted: 0 });
  });

  it.each([
    [{ crankTurns: 0, degrees: 90, within: 1 }, "crankTurns: 0 is not above 0"],
    [{ crankTurns: 10, degrees: -90, within: 1 }, "degrees: -90 is not above 0"],
    [{ crankTurns: 10, degrees: 90, within: -1 }, "within: -1 is not 0 or above"],
    [{ crankTurns: 10, degrees: 1, within: 1 }, "within: it is as large as the reading itself"],
    [{ crankTurns: "ten", degrees: 90, within: 1 }, 'crankTurns: "ten" is not an exact number'],
    [{ crankTurns: Number.NaN, degrees: 90, within: 1 }, "crankTurns"],
    [{ crankTurns: 10, degrees: 90, within: 1, off: 2 }, "there is no key"],
  ])("refuses %j", (trial, why) => {
    expect(refusalLines(() => ratioFromTrial(trial)).join("\n")).toContain(why);
  });
});
