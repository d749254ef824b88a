import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countsFromAngle, parseAngle, type Revolutions, revolutions } from "../../src/index.ts";
import { refusalLines } from "../support/refusal.ts";

const degrees = (text: string) => parseAngle(`${text}°`);
const divisionsOf = (angle: string, uncertainty: string) =>
  countsFromAngle(revolutions(angle), revolutions(uncertainty)).map(({ divisions }) => divisions);

/** Readings in millionths of a turn: an angle, and how far off it may be. */
const readings = fc
  .tuple(fc.integer({ min: 3000, max: 900_000 }), fc.integer({ min: 0, max: 400 }))
  .map(([read, either]) => ({ read, either: Math.min(either, Math.floor(read / 20)) }));
const millionths = (value: number) => `${value}/1000000`;

it("2.9° read to ± 0.05° means 123, 124, 125 or 126 (a trade fact, no source)", () => {
  expect(divisionsOf(degrees("2.9"), degrees("0.05"))).toEqual([123, 124, 125, 126]);
});

it("2.9° to ± 0.05° is told apart over 5 teeth", () => {
  // 2 · 0.05°/360° · 123 · 124 = 4.24 and · 125 · 126 = 4.38: both take 5.
  expect(countsFromAngle(degrees("2.9"), degrees("0.05")).map(({ teethToTellFromNext }) => teethToTellFromNext)).toEqual([
    5,
    5,
    5,
    null,
  ]);
  // The same teeth, 5 of them measured as carefully: 14.5° ± 0.05° over 5 is 2.9° ± 0.01°.
  expect(divisionsOf(degrees("2.9"), degrees("0.01"))).toEqual([124]);
});

it("a true angle is its count alone", () => {
  expect(countsFromAngle(revolutions("1/127"), revolutions("0"))).toEqual([{ divisions: 127, teethToTellFromNext: null }]);
});

it("the last teeth of a wheel may be what tells: 10 from 11 at 36° ± 14.7° by all ten", () => {
  // 2 · 9/220 · 10 · 11 = 9: over nine teeth they still meet.
  const [ten] = countsFromAngle(revolutions("1/10"), revolutions("9/220")).filter(({ divisions }) => divisions === 10);
  expect(ten).toEqual({ divisions: 10, teethToTellFromNext: 10 });
});

it("as many as 10,000 counts are listed, and no more: from 100 to 10,099", () => {
  const between = (least: number, most: number) =>
    [1, -1].map((sign) => revolutions(most + sign * least, 2 * least * most)) as [Revolutions, Revolutions];
  expect(countsFromAngle(...between(100, 10_099))).toHaveLength(10_000);
  expect(refusalLines(() => countsFromAngle(...between(100, 10_100)))).toEqual([
    "uncertainty: it lets over 10,000 counts fit; read the angle over more teeth",
  ]);
});

it("an angle that no count has is none", () => {
  expect(countsFromAngle(revolutions("2/5"), revolutions("0"))).toEqual([]);
});

it("where even the whole wheel would not tell, it says so", () => {
  expect(
    countsFromAngle(revolutions("3/10"), revolutions("2/10")).map(({ divisions, teethToTellFromNext }) => [
      divisions,
      teethToTellFromNext,
    ]),
  ).toEqual([
    [2, null],
    [3, null],
    [4, null],
    [5, null],
    [6, null],
    [7, null],
    [8, null],
    [9, null],
    [10, null],
  ]);
});

describe("laws", () => {
  it("the counts are those whose angle is within the reading, and no others", () => {
    fc.assert(
      fc.property(readings, ({ read, either }) => {
        const fits: number[] = [];
        // a − e ≤ 1,000,000/N ≤ a + e, every N tried.
        for (let count = 1; count <= 1000; count += 1) {
          if ((read - either) * count <= 1_000_000 && 1_000_000 <= (read + either) * count) fits.push(count);
        }
        expect(divisionsOf(millionths(read), millionths(either))).toEqual(fits);
      }),
    );
  });

  it("over the teeth named, the two counts read apart; over one tooth less they may not", () => {
    fc.assert(
      fc.property(readings, ({ read, either }) => {
        const counts = countsFromAngle(revolutions(millionths(read)), revolutions(millionths(either)));
        for (const [index, { divisions, teethToTellFromNext }] of counts.entries()) {
          const next = counts[index + 1]?.divisions;
          if (next === undefined) {
            expect(teethToTellFromNext).toBeNull();
            continue;
          }
          expect(next).toBe(divisions + 1);
          // Readings of m/N and of m/(N + 1), either way by e: apart when the gap is over 2e.
          const apart = (teeth: number) => teeth * 1_000_000 > 2 * either * divisions * next;
          if (teethToTellFromNext === null) expect(apart(divisions)).toBe(false);
          else {
            expect([apart(teethToTellFromNext), apart(teethToTellFromNext - 1)]).toEqual([true, false]);
          }
        }
      }),
    );
  });

  it("measured again over the teeth named, whatever the eye does within its reach, one of the counts is left", () => {
    const offs = fc.integer({ min: -2, max: 2 });
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 60 }), fc.integer({ min: 1, max: 20 }), offs, offs, (count, either, off, again) => {
        // Read to ± either/10,000 of a turn, and the eye is off by halves of that.
        const reading = `${20_000 + off * either * count}/${20_000 * count}`;
        const counts = countsFromAngle(revolutions(reading), revolutions(`${either}/10000`));
        expect(counts.map(({ divisions }) => divisions)).toContain(count);
        const teeth = counts.slice(0, -1).map(({ teethToTellFromNext }) => teethToTellFromNext ?? Number.POSITIVE_INFINITY);
        const most = Math.max(1, ...teeth);
        if (!Number.isFinite(most)) return;
        const over = `${20_000 * most + again * either * count}/${20_000 * count * most}`;
        const left = divisionsOf(over, `${either}/${10_000 * most}`);
        expect(counts.map(({ divisions }) => divisions).filter((divisions) => left.includes(divisions))).toEqual([count]);
      }),
    );
  });
});

describe("refusals", () => {
  it.each([
    ["an uncertainty as large as the angle", "1/100", "1/100"],
    ["an uncertainty larger than the angle", "1/100", "1/50"],
  ])("%s", (_, angle, uncertainty) => {
    expect(refusalLines(() => countsFromAngle(revolutions(angle), revolutions(uncertainty)))).toEqual([
      "uncertainty: it is as large as the angle itself, so any count would fit; read the angle over more teeth",
    ]);
  });

  it.each([
    ["an angle of 0", "0", "0", 'angle: "0" is no angle to move by; give one above 0'],
    ["an uncertainty below 0", "1/100", "-1/1000", 'uncertainty: "-1/1000" is not an angle from 0 to 1,000 revolutions'],
    [
      "counts past all measure",
      "2/100000",
      "1/100000",
      "uncertainty: it lets over 10,000 counts fit; read the angle over more teeth",
    ],
  ])("%s", (_, angle, uncertainty, told) => {
    expect(refusalLines(() => countsFromAngle(revolutions(angle), revolutions(uncertainty)))).toEqual([told]);
  });
});
