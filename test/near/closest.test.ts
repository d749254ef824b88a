import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closest } from "../../src/near/closest.ts";

/** What is left of a row of errors, offered one after the other where they are taken. */
function kept(bar: number, errors: readonly number[]): readonly number[] {
  const nearest = closest<number>(bar);
  for (const error of errors) if (nearest.takes(error)) nearest.offer(error, error);
  return nearest.candidates;
}

describe("the closest", () => {
  it("are all that share the least error below the bar, in the order in which they came", () => {
    const errors = fc.array(fc.integer({ min: 0, max: 9 }));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), errors, (bar, all) => {
        const least = Math.min(...all, bar);
        expect(kept(bar, all)).toEqual(least < bar ? all.filter((error) => error === least) : []);
      }),
    );
  });

  it("take errors that differ by rounding alone for the same", () => {
    expect(kept(1, [0.1 + 0.2, 0.3])).toEqual([0.1 + 0.2, 0.3]);
    expect(kept(1, [0.3, 0.1 + 0.2])).toEqual([0.3, 0.1 + 0.2]);
    expect(kept(0.3, [0.1 + 0.2])).toEqual([]);
  });

  it("say the greatest error that is still taken", () => {
    const nearest = closest<string>(1);
    expect(nearest.most()).toBeCloseTo(1, 9);
    nearest.offer(0.25, "a");
    expect(nearest.most()).toBeCloseTo(0.25, 9);
    expect([nearest.takes(0.25), nearest.takes(0.26)]).toEqual([true, false]);
  });
});
