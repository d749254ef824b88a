import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { firstInRange, furthestMultiple } from "../../src/number/first-in-range.ts";

const modulus = fc.integer({ min: 1, max: 400 });

describe("firstInRange", () => {
  it("finds what stepping finds", () => {
    fc.assert(
      fc.property(modulus, fc.nat(), fc.nat(), fc.nat(), (m, a, b, c) => {
        const step = a % m;
        const [least, most] = [b % m, c % m].sort((x, y) => x - y) as [number, number];
        const byStepping = Array.from({ length: m }, (_, j) => (j * step) % m).findIndex((at) => at >= least && at <= most);
        expect(Number(firstInRange(BigInt(step), BigInt(m), BigInt(least), BigInt(most)) ?? -1)).toBe(byStepping);
      }),
      { numRuns: 2000 },
    );
  });

  it("takes no longer for large numbers: 10 to the 17th", () => {
    const m = 10n ** 17n + 3n;
    const j = firstInRange(12_345_678_901_234_567n, m, m / 2n, m / 2n + 1000n);
    expect(j === null ? null : (j * 12_345_678_901_234_567n) % m >= m / 2n).toBe(true);
  });
});

describe("furthestMultiple", () => {
  it("lies as far from every multiple of the modulus as any of them does", () => {
    fc.assert(
      fc.property(modulus, fc.nat(), fc.integer({ min: 1, max: 500 }), (m, a, count) => {
        const step = a % m;
        const far = (j: number) => Math.min((j * step) % m, m - ((j * step) % m)) % m;
        const greatest = Math.max(...Array.from({ length: count }, (_, j) => far(j)));
        const { index, distance } = furthestMultiple(BigInt(step), BigInt(m), BigInt(count));
        expect(Number(distance)).toBe(greatest);
        expect(index < BigInt(count)).toBe(true);
        expect(far(Number(index))).toBe(greatest);
      }),
      { numRuns: 1000 },
    );
  });
});
