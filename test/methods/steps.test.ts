import { describe, expect, it } from "vitest";
import { gearBox } from "../../src/index.ts";
import { pairsOn } from "../../src/methods/circle-pairs.ts";
import { type CrankOn, gearedMovesOn, lookUpSteps } from "../../src/methods/crank-moves.ts";
import { layOutProducts, windowSteps } from "../../src/methods/gear-products.ts";
import { type Effort, effortOf } from "../../src/number/effort.ts";

const plenty = 1_000_000;
/** How many steps something takes. */
const stepsOf = (work: (effort: Effort) => unknown) => {
  const effort = effortOf(plenty);
  work(effort);
  return plenty - effort.left;
};

/** That with fewer steps it stops where they are spent, and asks for no more than so many in vain. */
function stopsInTime(work: (effort: Effort) => unknown, inAll: number, inVain: number): void {
  for (let most = 0; most < inAll; most += 1) {
    const effort = effortOf(most);
    work(effort);
    expect([most, effort.left < 0, effort.left >= -inVain]).toEqual([most, true, true]);
  }
}

// What a step costs is our own choice; how often it is taken is counted here by hand.
describe("the pairs of circles of a face", () => {
  // 40/51 of a turn. Of 15, 17, 20 and 21 those pairs serve whose common multiple is one of 51: 15 and 17, 17 and 21,
  // either way round, each by one pair of moves, as they have no divisor in common.
  const face = { name: null, circles: [15, 17, 20, 21] };
  const work = (circles: readonly number[]) => (effort: Effort) => [
    ...pairsOn({ ...face, circles }, { turns: 0, part: 40, parts: 51 }, effort),
  ];

  it("are looked at once each, twice over for each circle to begin with, and what is found is kept", () => {
    expect(stepsOf(work(face.circles))).toBe(4 + 4 * 2 * 4 + 4 * 20);
    // A third of a turn on 15 and 18 is 5 of 15 or 6 of 18 alone: neither is a first circle, so there is no pair.
    expect(stepsOf((effort) => [...pairsOn({ name: null, circles: [15, 18] }, { turns: 0, part: 1, parts: 3 }, effort)])).toBe(2);
    // 1/36 on 12 and 18: they have 6 in common, so there are six pairs of moves either way round.
    expect(stepsOf((effort) => [...pairsOn({ name: null, circles: [12, 18] }, { turns: 0, part: 1, parts: 36 }, effort)])).toBe(
      2 + 2 * 2 * 2 + 2 * 6 * 20,
    );
  });

  it("cost one look where no product of them has what is wanted", () => {
    expect(stepsOf(work([15, 20, 21, 22, 24]))).toBe(5);
  });

  it("are left where the steps are spent", () => {
    // A circle is gone through with both that it serves with, and the next is not begun.
    stopsInTime(work(face.circles), 4 + 32 + 80, 2 * 20 + 8);
  });
});

describe("the crank moves with their trains", () => {
  // 39 on 40:1 with 20 holes, the plate turning once at most: 800 − 39 · spaces is from −20 to 20 at 20 and 21 spaces.
  const head = (worm: CrankOn["worm"], holes: readonly number[] = [20]): CrankOn => ({
    worm,
    plateTurns: { n: 1, d: 1 },
    circles: holes.map((each) => ({ plate: "1", face: null, holes: each })),
  });
  const work =
    (on: CrankOn, gears: readonly number[], divisions = 39) =>
    (effort: Effort) =>
      gearedMovesOn(on, gearBox(gears))({ divisions, teeth: 1 }, 1, effort);
  const by40 = { n: 40, d: 1 };

  it("take four steps a circle and one a move, where no gear could be of any use", () => {
    // 38: of 800 − 38 · spaces 2 alone is within 20, a tenth of a turn, and 10 divides neither gear.
    expect(stepsOf(work(head(by40), [24, 25], 38))).toBe(4 + 1);
    // 10 holes: neither 400 − 38 · 10 nor 400 − 38 · 11 is within 10.
    expect(stepsOf(work(head(by40, [20, 10]), [24, 25], 38))).toBe(2 * 4 + 1);
  });

  it("and thirty where the terms of a ratio are there, with one for each train of it: 20 spaces want 1 : 1", () => {
    expect(stepsOf(work(head(by40), [24, 40]))).toBe(4 + 2 + 30);
    expect(stepsOf(work(head(by40), [24, 40, 40]))).toBe(4 + 2 + 30 + 1);
    // No gear has the 5 of 20 holes in it: every fifth space alone is tried.
    expect(stepsOf(work(head(by40), [24, 24]))).toBe(4 + 1 + 30 + 1);
  });

  it("and as many as the products are sixteen times over, to look the trains up", () => {
    const sixteen = Array.from({ length: 16 }, (_, index) => 24 + index);
    const box = gearBox([...sixteen, 24]);
    expect([lookUpSteps(box, 1), lookUpSteps(gearBox(sixteen.slice(1)), 1)]).toEqual([1, 0]);
    expect(stepsOf(work(head(by40), [...sixteen, 24]))).toBe(4 + 2 + 1 + 1 + 30);
  });

  it("a move takes up to ten steps where the numbers are large", () => {
    // (40 + 1/d) · 20 is just over 800: 21 spaces alone are within one turn of the plate.
    const by = (d: number) => stepsOf(work(head({ n: 40 * d + 1, d }), [24, 40])) - 4;
    // 20 d over 2^23 is 0.1, 1.25, 2.5 and 160.
    expect([2 ** 15, 2 ** 19, 2 ** 20, 2 ** 26].map(by)).toEqual([1, 2, 3, 10]);
  });

  it("are left where the steps are spent", () => {
    stopsInTime(work(head(by40, [20, 20, 20]), [24, 24]), 3 * (4 + 1 + 31), 31);
  });
});

describe("a window of quotients", () => {
  it("is seen in four steps, and takes a sixteenth of the products more where they are too many to lay out", () => {
    const products = (count: number) => layOutProducts(Array.from({ length: count }, (_, index) => index + 1));
    expect([1, 200, 201, 320].map((count) => windowSteps(products(count)))).toEqual([4, 4, 16, 24]);
  });
});
