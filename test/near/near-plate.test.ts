import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, nearSettings } from "../../src/index.ts";
import { nearestParts } from "../../src/near/near-plate.ts";

const size = (value: bigint) => (value < 0n ? -value : value);

it("a near move of whole turns names no circle, as any serves: 40 on 81/2:1 are a turn each, and half a turn left", () => {
  const head = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [15] }] });
  const [near] = nearSettings(head, { divisions: 40 }, { teethPerMove: 1 }).filter(({ kind }) => kind === "simple");
  expect(near).toMatchObject({ turns: 1, spaces: 0, circle: null, plate: null, armsEnclose: null });
});

describe("the nearest whole parts of a crank turn", () => {
  it("miss by no more than the parts beside them, also where the terms are no safe integers", () => {
    const terms = [100_000_000, 1000, 10_000_000, 1000, 100_000_000].map((max) => fc.integer({ min: 1, max }));
    let unsafe = 0;
    fc.assert(
      fc.property(fc.tuple(...terms), ([n = 1, d = 1, divisions = 1, teeth = 1, perTurn = 1]) => {
        // No head has so many parts in a move that they are no safe integer themselves.
        fc.pre((n * teeth * perTurn) / (divisions * d) < Number.MAX_SAFE_INTEGER / 2);
        const { parts, closing } = nearestParts({ worm: { n, d } }, { divisions, teeth }, perTurn);
        // In parts of 1/(n·perTurn) of a turn of the work.
        const missed = (count: bigint) => BigInt(divisions) * BigInt(d) * count - BigInt(n) * BigInt(teeth) * BigInt(perTurn);
        const here = size(missed(BigInt(parts)));
        for (const beside of [-1n, 1n]) expect(here).toBeLessThanOrEqual(size(missed(BigInt(parts) + beside)));
        expect(closing).toBeCloseTo(Number(here) / (n * perTurn), 12);
        if (!Number.isSafeInteger(n * teeth * perTurn)) unsafe += 1;
      }),
    );
    expect(unsafe).toBeGreaterThan(10);
  });

  it("miss by one part in 3 · 9·10¹⁸, and are not taken for exact there", () => {
    const [n, teeth, perTurn] = [94_906_267, 1001, 94_906_301];
    expect((BigInt(n) * BigInt(teeth) * BigInt(perTurn)) % 3n).toBe(1n);
    const { closing } = nearestParts({ worm: { n, d: 1 } }, { divisions: 3, teeth }, perTurn);
    expect(closing * n * perTurn).toBeCloseTo(1, 9);
  });
});
