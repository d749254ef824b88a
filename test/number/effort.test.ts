import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effortOf, isCut, take } from "../../src/number/effort.ts";

describe("effort", () => {
  it("gives steps as long as their sum is within what it has, and nothing after the first it refuses", () => {
    fc.assert(
      fc.property(fc.nat(100), fc.array(fc.nat(30)), (most, asked) => {
        const effort = effortOf(most);
        const given = asked.map((steps) => take(effort, steps));
        const sums = asked.map((_, index) => asked.slice(0, index + 1).reduce((sum, steps) => sum + steps, 0));
        expect(given).toEqual(sums.map((sum) => sum <= most));
        expect(isCut(effort)).toBe(given.includes(false));
      }),
    );
  });
});
