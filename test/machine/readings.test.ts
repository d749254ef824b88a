import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DialTable,
  defineHead,
  dialReadings,
  type Head,
  leastCountArcSeconds,
  type Reading,
  readyHeads,
  type Scale,
} from "../../src/index.ts";
import { wormRatios } from "../support/arbitraries.ts";
import { turnsOf, withinTurn } from "../support/bench.ts";
import { refusalLines } from "../support/refusal.ts";
import { zeros } from "../support/settings.ts";

const ready = (id: string) => readyHeads.find((head) => head.id === id) as Head;
const dial90 = ready("ratio-90-dial");
const minuteDial90 = defineHead({ wormRatio: 90, dial: { marksPerTurn: 240, figures: "angle" } });

/** Steps of the scale that its user counts off: whole turns, marks and vernier lines. */
const stepsOf = ({ turns, mark, line }: Reading, marksPerTurn: number, vernierLines: number) =>
  BigInt(turns) * BigInt(marksPerTurn * vernierLines) + BigInt(mark * vernierLines + line);

const dialsOf = ({ positions }: DialTable) => positions.map(({ dial }) => dial as Reading);

describe("every position of every count to 1,000 on a 90:1 table with a dial to 10″", () => {
  // Worked apart from the library, in whole numbers: a step is 10″ of the 1,296,000″ of the turn.
  const [turn, step] = [1_296_000n, 10n];
  const tables = Array.from({ length: 1000 }, (_, index) => dialReadings(dial90, index + 1));

  it("reads what lies nearest: no position is over 5″ out, and each error is the one stated", () => {
    const wrong: unknown[] = [];
    for (const { divisions, positions } of tables) {
      for (const { tooth, dial } of positions) {
        if (dial === null) throw new Error("the table has a dial");
        // The error times the count, exact.
        const over = stepsOf(dial, 240, 6) * step * BigInt(divisions) - turn * BigInt(tooth - 1);
        const stated = Math.abs(dial.errorArcSeconds - Number(over) / divisions) < 1e-9;
        if (!stated || 2n * (over < 0n ? -over : over) > step * BigInt(divisions)) wrong.push({ divisions, tooth, dial });
        if (dial.mark >= 240 || dial.line >= 6) wrong.push({ divisions, tooth, dial });
      }
    }
    expect(wrong).toEqual([]);
  });

  it("does not drift: a position as far from the end is as far out as the one so far from the start", () => {
    const drifted = tables.flatMap(({ divisions, positions }) =>
      positions
        .slice(1)
        .filter(({ dial }, index) => {
          const mirrored = positions[divisions - 1 - index]?.dial;
          return Math.abs(Math.abs(dial?.errorArcSeconds ?? 0) - Math.abs(mirrored?.errorArcSeconds ?? 0)) > 1e-9;
        })
        .map(({ tooth }) => ({ divisions, tooth })),
    );
    expect(drifted).toEqual([]);
  });

  it("states the worst error and the first place of it", () => {
    for (const { positions, worstDial } of tables) {
      const errors = positions.map(({ dial }) => Math.abs(dial?.errorArcSeconds ?? 0));
      expect(Math.abs(worstDial?.arcSeconds ?? Number.NaN)).toBe(Math.max(...errors));
      expect(positions[(worstDial?.tooth ?? 0) - 1]?.dial?.errorArcSeconds).toBe(worstDial?.arcSeconds);
      expect(worstDial?.tooth).toBe(1 + errors.indexOf(Math.max(...errors)));
    }
  });
});

describe("a step rounded to 1′ and added up (our own arithmetic)", () => {
  it.each([
    { divisions: 53, steps: 408, out: 24 },
    { divisions: 97, steps: 223, out: 31 },
    { divisions: 127, steps: 170, out: -10 },
  ])("closes $out′ out at $divisions; from one zero no position is over half a minute out", ({ divisions, steps, out }) => {
    expect(Math.round(21_600 / divisions)).toBe(steps);
    expect(steps * divisions - 21_600).toBe(out);

    const table = dialReadings(minuteDial90, divisions);
    for (const reading of dialsOf(table)) expect(Math.abs(reading.errorArcSeconds)).toBeLessThanOrEqual(30);
    const last = dialsOf(table).at(-1) as Reading;
    const minutes = Number(stepsOf(last, 240, 1));
    expect(Math.abs(21_600 - minutes - 21_600 / divisions)).toBeLessThanOrEqual(0.5);
  });
});

describe("degrees of 360/N, as handbooks tabulate them (from memory)", () => {
  it.each([
    [7, 51, 25, 43],
    [9, 40, 0, 0],
    [11, 32, 43, 38],
    [13, 27, 41, 32],
    [17, 21, 10, 35],
    [19, 18, 56, 51],
    [23, 15, 39, 8],
    [48, 7, 30, 0],
    [96, 3, 45, 0],
    [127, 2, 50, 5],
  ])("%d divisions: tooth 2 is at %d° %d′ %d″", (divisions, degrees, minutes, seconds) => {
    const secondsDial = defineHead({ wormRatio: 90, dial: { marksPerTurn: 240, vernierLines: 60, figures: "angle" } });
    const [, second] = dialsOf(dialReadings(secondsDial, divisions));
    expect(Number(stepsOf(second as Reading, 240, 60))).toBe(degrees * 3600 + minutes * 60 + seconds);
  });
});

describe("the marks that the hand finds", () => {
  it("tooth 2 of 97 on 90:1: no whole turn, 222 marks of a minute and vernier line 4: 3° 42′ 40″", () => {
    const [, second] = dialsOf(dialReadings(dial90, 97));
    expect(second).toMatchObject({ turns: 0, mark: 222, line: 4, side: "plus", figure: "167/16200" });
    // 3° 42′ 40″ less 1,296,000″/97.
    expect(second?.errorArcSeconds).toBeCloseTo(13_360 - 1_296_000 / 97, 9);
  });

  it("the figure of a dial in degrees is within its turn: 33° on 90:1 is 8 turns and 1°", () => {
    const [first] = dialsOf(dialReadings(dial90, 1, { startAngle: "33/360" }));
    expect(first).toMatchObject({ turns: 8, mark: 60, line: 0, figure: "1/360", errorArcSeconds: 0 });
  });

  it("a dial that counts marks has no figure in degrees: 40:1 with 50 marks, tooth 2 of 64", () => {
    // 40/64 of a turn is 31.25 marks; a mark is 1,296,000/2,000 = 648″.
    const [, second] = dialsOf(dialReadings(defineHead({ wormRatio: 40, dial: { marksPerTurn: 50 } }), 64));
    expect(second).toEqual({ turns: 0, mark: 31, line: 0, side: "plus", figure: null, errorArcSeconds: -0.25 * 648 });
  });

  it("turned back from its zero, the dial is read downwards: 33° is 8 turns back and to 3°", () => {
    const [first] = dialsOf(dialReadings(dial90, 1, { startAngle: "33/360", side: "minus" }));
    expect(first).toMatchObject({ turns: 8, mark: 180, line: 0, figure: "1/120", side: "minus" });
    const [zero] = dialsOf(dialReadings(dial90, 1, { side: "minus" }));
    expect(zero).toMatchObject({ turns: 0, mark: 0, line: 0, side: "minus" });
  });

  it("half-way between two marks it is the one further on", () => {
    const [, second] = dialsOf(dialReadings(defineHead({ wormRatio: 1, dial: { marksPerTurn: 3 } }), 2));
    expect(second).toMatchObject({ mark: 2, errorArcSeconds: 216_000 });
  });

  it("the ring shows no turns: after one round it is at its zero again", () => {
    const head = defineHead({ wormRatio: 90, ring: { marksPerTurn: 360, vernierLines: 12 }, dial: { marksPerTurn: 240 } });
    const { positions } = dialReadings(head, 8, { startAngle: "15/16" });
    expect(positions.map(({ ring }) => [ring?.turns, ring?.mark, ring?.line])).toEqual([
      [0, 337, 6],
      [0, 22, 6],
      [0, 67, 6],
      [0, 112, 6],
      [0, 157, 6],
      [0, 202, 6],
      [0, 247, 6],
      [0, 292, 6],
    ]);
  });

  it("a least count is 10″ on the dial and 5′ on the ring", () => {
    expect(leastCountArcSeconds(dial90.dial as Scale, "90")).toBe(10);
    expect(leastCountArcSeconds({ marksPerTurn: 360, vernierLines: 12, figures: "angle" })).toBe(300);
  });
});

describe("laws of readings", () => {
  const scale = fc.record({ marksPerTurn: fc.integer({ min: 2, max: 400 }), vernierLines: fc.integer({ min: 1, max: 12 }) });

  it("what is read is where the work is, to half of the least count, from either side of zero", () => {
    fc.assert(
      fc.property(wormRatios(100), scale, scale, fc.integer({ min: 1, max: 60 }), zeros, (wormRatio, dial, ring, count, zero) => {
        const head = defineHead({ wormRatio, dial, ring });
        const worm = turnsOf(wormRatio);
        const start = turnsOf(zero.startAngle ?? "0");
        for (const at of dialReadings(head, count, zero).positions) {
          for (const [reading, shown, perSpindle] of [
            [at.dial, dial, worm],
            [at.ring, ring, { n: 1n, d: 1n }],
          ] as const) {
            if (reading === null) throw new Error("the head has both");
            const perTurn = BigInt(shown.marksPerTurn * shown.vernierLines);
            const within = BigInt(reading.mark * shown.vernierLines + reading.line);
            const onward = zero.side === "minus" && within > 0n ? perTurn - within : within;
            const steps = BigInt(reading.turns) * perTurn + onward;
            // Steps over the true place, in parts of 1/(count·start.d·perSpindle.d).
            const whole = BigInt(count) * start.d;
            const place = { n: start.n * BigInt(count) + BigInt(at.tooth - 1) * start.d, d: whole };
            const wanted = place.n * perSpindle.n * perTurn;
            const parts = whole * perSpindle.d;
            const round = shown === ring ? perTurn * parts : null;
            const over = round === null ? steps * parts - wanted : nearestTurn(steps * parts - wanted, round);
            expect(2n * (over < 0n ? -over : over) <= parts).toBe(true);
            const arcSeconds =
              (Number(over) / Number(parts) / Number(perTurn) / Number(perSpindle.n)) * Number(perSpindle.d) * 1_296_000;
            expect(reading.errorArcSeconds).toBeCloseTo(arcSeconds, 6);
            expect(reading.side).toBe(zero.side ?? "plus");
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("goes through JSON unchanged", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), zeros, (count, zero) => {
        const table = dialReadings(dial90, count, zero);
        expect(JSON.parse(JSON.stringify(table))).toEqual(table);
      }),
      { numRuns: 30 },
    );
  });
});

/** The part of a round that is left over, taken the short way. */
function nearestTurn(over: bigint, round: bigint): bigint {
  const { n, d } = withinTurn({ n: over, d: round });
  const onward = (n * round) / d;
  return 2n * onward > round ? onward - round : onward;
}

describe("refusals of readings", () => {
  const bare = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15] }] });

  it.each([
    [
      "a head with nothing to read",
      () => dialReadings(bare, 12),
      "head: has neither dial nor ring to read; describe one in the head file",
    ],
    [
      "a count of 0",
      () => dialReadings(dial90, 0),
      "divisions: 0 is not a count of divisions; give a whole number from 1 to 10,000,000",
    ],
    [
      "more than can be listed",
      () => dialReadings(dial90, 100_001),
      "divisions: 100,001 positions are too many to list; give at most 100,000",
    ],
    [
      "a start that is no angle",
      () => dialReadings(dial90, 12, { startAngle: "x" }),
      'startAngle: "x" is not an exact number; give a whole number or a fraction in quotes, such as "81/2"',
    ],
  ])("%s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});
