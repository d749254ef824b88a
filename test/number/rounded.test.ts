import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundedDown, roundedUp } from "../../src/number/rounded.ts";

/** A fraction of whole numbers, the second above 0. */
interface Exactly {
  readonly n: bigint;
  readonly d: bigint;
}

/** What a number is, to its last bit. */
function exactly(value: number): Exactly {
  let [n, d] = [value, 1n];
  while (!Number.isInteger(n)) [n, d] = [n * 2, d * 2n];
  return { n: BigInt(n), d };
}

/** What a text of digits says. */
function asWritten(text: string): Exactly {
  const [whole = "", decimals = ""] = text.split(".");
  return { n: BigInt(whole + decimals), d: 10n ** BigInt(decimals.length) };
}

const isLess = (a: Exactly, b: Exactly) => a.n * b.d < b.n * a.d;
const written = (value: number, places: number) => asWritten(value.toFixed(places));

/** A size, and how many decimals it is told with. */
const sizes = fc.tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 5 }));

describe("a bound", () => {
  it("from above is never under what it bounds, to the last decimal, and by less than one more over it", () => {
    fc.assert(
      fc.property(sizes, ([size, places]) => {
        const bound = roundedUp(size, places);
        expect(isLess(written(bound, places), lessLastBits(size, -1))).toBe(false);
        expect(isLess(lessLastBits(size + 10 ** -places, 1), written(bound, places))).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });

  it("from below is the same upside down", () => {
    fc.assert(
      fc.property(sizes, ([size, places]) => {
        expect(roundedDown(size, places)).toBe(0 - roundedUp(-size, places));
      }),
    );
  });

  it("of what has no more decimals is that itself, however it is held in a float", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.integer({ min: 0, max: 5 }), (units, places) => {
        const size = units / 10 ** places;
        expect([roundedUp(size, places), roundedDown(size, places)]).toEqual([size, size]);
        expect([roundedUp(-size, places), roundedDown(-size, places)]).toEqual([0 - size, 0 - size]);
      }),
    );
    expect([roundedUp(0.1 + 0.2, 1), roundedUp(4.9, 1), roundedUp(1.005, 3)]).toEqual([0.3, 4.9, 1.005]);
  });

  it("of what is over a decimal by however little is the next: 4.9 and a ten-thousand-millionth is not over 5.0", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: 1, max: 5 }),
        (units, places, over) => {
          const decimal = units / 10 ** places;
          const little = over * 10 ** -(places + 6);
          expect(roundedUp(decimal + little, places)).toBe((units + 1) / 10 ** places);
          expect(roundedDown(decimal - little, places)).toBe((units - 1) / 10 ** places);
        },
      ),
    );
    expect(roundedUp(4.9 + 1e-10, 1)).toBe(5);
    expect(roundedUp(1e-12, 4)).toBe(0.0001);
  });

  it("of no number, or of one without end, is that", () => {
    expect([roundedUp(Number.NaN, 2), roundedUp(Number.POSITIVE_INFINITY, 2), roundedUp(0, 3)]).toEqual([
      Number.NaN,
      Number.POSITIVE_INFINITY,
      0,
    ]);
  });
});

/** A number less what the last bits of a float that was worked out may be off by; more, with −1. */
function lessLastBits(value: number, way: 1 | -1): Exactly {
  const { n, d } = exactly(value);
  const size = n < 0n ? -n : n;
  return { n: n * 10n ** 13n + BigInt(way) * size, d: d * 10n ** 13n };
}
