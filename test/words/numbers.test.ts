import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseAngle, ratio } from "../../src/index.ts";
import {
  arcUpTo,
  counted,
  fixed,
  listed,
  mixed,
  plain,
  shortAngle,
  signedArc,
  signedSeconds,
  withPlus,
} from "../../src/words/index.ts";

const unitSeconds: Readonly<Record<string, number>> = { "″": 1, "′": 60, "°": 3600 };

/** What is told of an angle, in millionths of an arc-second, and one more of its last decimal. */
function told(text: string): { readonly micro: bigint; readonly last: bigint } {
  const [, whole = "", decimals = "", unit = ""] = /^([0-9]+)\.?([0-9]*)([″′°])$/.exec(text) ?? [];
  const micro = BigInt((unitSeconds[unit] ?? Number.NaN) * 1e6);
  const scale = 10n ** BigInt(decimals.length);
  return { micro: (BigInt(whole + decimals) * micro) / scale, last: micro / scale };
}

/** Errors of any size that a place can have, as whole millionths of an arc-second. */
const errors = fc.oneof(
  fc.integer({ min: 0, max: 200_000_000 }),
  fc.integer({ min: 100_000_000, max: 4_000_000_000 }),
  fc.integer({ min: 3_000_000_000, max: 1_296_000_000_000 }),
);

describe("an error that is not to be over", () => {
  it("is never told smaller than it is, and by less than one more of its last decimal larger", () => {
    fc.assert(
      fc.property(errors, fc.boolean(), (micro, isShort) => {
        const { micro: said, last } = told(arcUpTo(((isShort ? -1 : 1) * micro) / 1e6));
        expect(said >= BigInt(micro)).toBe(true);
        expect(said - BigInt(micro) < last).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  it.each([
    [0, "0.0″"],
    [1e-9, "0.1″"],
    [4.9, "4.9″"],
    [4.900_001, "5.0″"],
    [4.95, "5.0″"],
    [119.91, "120.0″"],
    [242.6, "4.1′"],
    [246, "4.1′"],
    [3599.9, "60.0′"],
    [3601, "1.01°"],
    [-18.19, "18.2″"],
    [120, "2.0′"],
    [150, "2.5′"],
    [3600, "1.00°"],
  ])("%d″ is %s", (arcSeconds, text) => {
    expect(arcUpTo(arcSeconds)).toBe(text);
  });
});

describe("an error with its sign", () => {
  it.each([
    [0, "0", "0"],
    [4.74, "+4.7″", "+4.7″"],
    [-4.76, "−4.8″", "−4.8″"],
    [-210, "−3.5′", "−210.0″"],
    [4536, "+1.26°", "+4536.0″"],
    [0.04, "under 0.1″", "+0.0″"],
    [-0.06, "−0.1″", "−0.1″"],
    [0.05, "+0.1″", "+0.1″"],
  ])("%d″ is %s, in a column %s", (arcSeconds, alone, inColumn) => {
    expect([signedArc(arcSeconds), signedSeconds(arcSeconds)]).toEqual([alone, inColumn]);
  });

  it("is the nearest that is shown, too far with + and short with −", () => {
    fc.assert(
      fc.property(errors, fc.boolean(), (micro, isShort) => {
        const text = signedArc(((isShort ? -1 : 1) * micro) / 1e6);
        if (micro === 0 || text === "under 0.1″") {
          expect(micro).toBeLessThan(50_001);
          return;
        }
        expect(text[0]).toBe(isShort ? "−" : "+");
        const { micro: said, last } = told(text.slice(1));
        const off = said - BigInt(micro);
        expect(2n * (off < 0n ? -off : off) <= last).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("numbers as a machinist writes them", () => {
  it("a mixed number is never read for a fraction: the whole stands apart", () => {
    expect([mixed(ratio("127/3"), " "), mixed(ratio("40")), mixed(ratio("-7/3"), " "), mixed(ratio("2/3"), " ")]).toEqual([
      "42 1/3",
      "40",
      "2 1/3",
      "2/3",
    ]);
    expect(mixed(ratio("7/3"))).toBe("2\u00a0\u00a01/3");
  });

  it("a count has its noun, a list its and", () => {
    expect([counted(1, "turn"), counted(0, "turn"), counted(2, "turn")]).toEqual(["1 turn", "0 turns", "2 turns"]);
    expect([listed([1, 2, 3]), listed([1, 2]), listed([7]), listed([])]).toEqual(["1, 2 and 3", "1 and 2", "7", "none"]);
  });

  it("a minus is a true one, and nothing is −0", () => {
    expect([fixed(-0.25, 3), fixed(-0.0004, 3), fixed(2, 1)]).toEqual(["−0.250", "0.000", "2.0"]);
    expect([fixed(0.0005, 3), fixed(0.00049, 3)]).toEqual(["0.001", "0.000"]);
    expect([withPlus("0.100 mm"), withPlus("−0.20"), withPlus("0.00")]).toEqual(["+0.100 mm", "−0.20", "0.00"]);
    expect([plain(12.7), plain(2), plain(3.6294)]).toEqual(["12.7", "2", "3.629"]);
  });

  it("an angle is as short as it can be said, and a rounded one says so", () => {
    const angles = ["9°", "4°30'", "3°42'40\""].map((text) => shortAngle(parseAngle(text)));
    expect(angles).toEqual(["9°", "4° 30′", "3° 42′ 40″"]);
    expect(shortAngle(parseAngle("1/97 rev"))).toBe("≈ 3° 42′ 41″");
  });
});
