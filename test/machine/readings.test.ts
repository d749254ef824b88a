import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DialTable,
  defineHead,
  dialReadings,
  type Head,
  leastCountArcSeconds,
  type Reading,
  type Revolutions,
  ratio,
  readyHeads,
  revolutions,
  type Scale,
  type ScaleSpec,
  type Side,
  stepsAddedUp,
} from "../../src/index.ts";
import { wormRatios } from "../support/arbitraries.ts";
import { type Turns, turnsOf, turnsText } from "../support/bench.ts";
import { handScale } from "../support/hand-scale.ts";
import { refusalLines } from "../support/refusal.ts";
import { head40, zeros } from "../support/settings.ts";
import { runs } from "../support/sweep.ts";

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

describe("degrees of 360/N to the second (our arithmetic)", () => {
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
    const [first] = dialsOf(dialReadings(dial90, 1, { startAngle: revolutions("33/360") }));
    expect(first).toMatchObject({ turns: 8, mark: 60, line: 0, figure: "1/360", errorArcSeconds: 0 });
  });

  it("a dial that counts marks has no figure in degrees: 40:1 with 50 marks, tooth 2 of 64", () => {
    // 40/64 of a turn is 31.25 marks; a mark is 1,296,000/2,000 = 648″.
    const [, second] = dialsOf(dialReadings(defineHead({ wormRatio: 40, dial: { marksPerTurn: 50 } }), 64));
    expect(second).toEqual({ turns: 0, mark: 31, line: 0, side: "plus", figure: null, errorArcSeconds: -0.25 * 648 });
  });

  it("turned to the minus side from its zero, the dial is read downwards: 33° is 8 turns back and to 3°", () => {
    const back33 = dialsOf(dialReadings(dial90, 120, { side: "minus" }))[11];
    expect(back33).toMatchObject({ turns: 8, mark: 180, line: 0, figure: "1/120", side: "minus" });
    const [zero] = dialsOf(dialReadings(dial90, 1, { side: "minus" }));
    expect(zero).toMatchObject({ turns: 0, mark: 0, line: 0, side: "minus" });
  });

  it("a ring at 124° at tooth 1 of 90 reads 124, 120, 116 on the minus side and 124, 128, 132 on the plus side", () => {
    const rings = (side: Side) =>
      dialReadings(head40, 90, { startAngle: revolutions("124/360"), side }).positions.map(({ ring }) => ring?.mark);
    expect(rings("minus").slice(0, 3)).toEqual([124, 120, 116]);
    expect(rings("plus").slice(0, 3)).toEqual([124, 128, 132]);
    expect(rings("minus").slice(30, 34)).toEqual([4, 0, 356, 352]);
  });

  it("tooth 2 of 7 from 124° back is at 72° 34′: at 73° the work has turned too little", () => {
    const { positions } = dialReadings(head40, 7, { startAngle: revolutions("124/360"), side: "minus" });
    expect(positions[1]?.ring).toMatchObject({ mark: 73, side: "minus" });
    expect(positions[1]?.ring?.errorArcSeconds).toBeCloseTo(51 * 3600 - 1_296_000 / 7, 6);
    expect(positions[1]?.angle).toBe("127/630");
  });

  it("on the minus side a dial's turns are the zeros since tooth 1: from 1° on a turn of 4°, 33° back are 9 and to 0", () => {
    const { positions } = dialReadings(dial90, 120, { startAngle: revolutions("1/360"), side: "minus" });
    expect([0, 1, 11].map((index) => positions[index]?.dial)).toMatchObject([
      { turns: 0, figure: "1/360" },
      { turns: 1, figure: "1/180" },
      { turns: 9, figure: "0" },
    ]);
  });

  it("half-way between two marks it is the one further on", () => {
    const [, second] = dialsOf(dialReadings(defineHead({ wormRatio: 1, dial: { marksPerTurn: 3 } }), 2));
    expect(second).toMatchObject({ mark: 2, errorArcSeconds: 216_000 });
  });

  it("the ring shows no turns: after one round it is at its zero again", () => {
    const head = defineHead({ wormRatio: 90, ring: { marksPerTurn: 360, vernierLines: 12 }, dial: { marksPerTurn: 240 } });
    const { positions } = dialReadings(head, 8, { startAngle: revolutions("15/16") });
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
    expect(leastCountArcSeconds(dial90.dial as Scale, ratio("90"))).toBe(10);
    expect(leastCountArcSeconds({ marksPerTurn: 360, vernierLines: 12, figures: "angle" })).toBe(300);
  });
});

describe("a rounded step added up over the whole work", () => {
  const minutes: Scale = { marksPerTurn: 240, vernierLines: 1, figures: "angle" };

  // 360° is 21,600′. 53 · 408′ = 21,624′; 97 · 223′ = 21,631′; 127 · 170′ = 21,590′; 64 · 337.5′ is read as 338′.
  it.each([
    [53, 24],
    [97, 31],
    [127, -10],
    [64, 32],
    [60, 0],
  ])("%i, in whole minutes, ends %i′ past the start", (divisions, left) => {
    expect(stepsAddedUp(minutes, divisions, ratio(90))).toBe(left * 60);
  });

  // 53 · 24,450″ is 150″ short of 1,296,000″.
  it("53, in steps of 10″, ends 2′ 30″ short of it", () => {
    expect(stepsAddedUp(dial90.dial as Scale, 53, ratio(90))).toBe(-150);
  });

  it("on a ring in degrees 7 ends 3° short, and of 1,000 no step is shown at all", () => {
    expect(stepsAddedUp({ ...minutes, marksPerTurn: 360 }, 7)).toBe(-3 * 3600);
    expect(stepsAddedUp({ ...minutes, marksPerTurn: 360 }, 1000)).toBe(-360 * 3600);
  });

  it("is where a scale turned by hand by the same step over and over comes to stand", () => {
    fc.assert(
      fc.property(
        wormRatios(12),
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 60 }),
        (wormRatio, marksPerTurn, vernierLines, count) => {
          const [perSpindle, steps] = [turnsOf(wormRatio), BigInt(marksPerTurn * vernierLines)];
          const first = handScale(steps, perSpindle, turnsOf("0"), "plus").turnTo({ n: 1n, d: BigInt(count) });
          let at = 0n;
          for (let made = 0; made < count; made += 1) at += first.zeros * steps + first.step;
          // The steps of a whole turn of the work are perSpindle · steps.
          const left = Number((at * perSpindle.d - perSpindle.n * steps) * 1_296_000n) / Number(perSpindle.n * steps);
          const scale = { marksPerTurn, vernierLines, figures: "marks" } as const;
          expect(stepsAddedUp(scale, count, ratio(wormRatio))).toBeCloseTo(left, 9);
        },
      ),
    );
  });
});

describe("laws of readings", () => {
  const within2Turns = fc.tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 60, max: 120 }));
  const small = fc.record({ marksPerTurn: fc.integer({ min: 2, max: 40 }), vernierLines: fc.integer({ min: 1, max: 4 }) });

  it("both scales read, on either side and from any start, as when they are turned by hand step by step", () => {
    fc.assert(
      fc.property(
        wormRatios(12),
        small,
        small,
        fc.integer({ min: 1, max: 40 }),
        within2Turns,
        fc.constantFrom("plus" as const, "minus" as const),
        (wormRatio, dial, ring, count, [n, d], side) => {
          const start = turnsOf(`${n}/${d}`);
          const inHand = (scale: ScaleSpec, perSpindle: Turns) => ({
            perSpindle,
            lines: BigInt(scale.vernierLines ?? 1),
            steps: BigInt(scale.marksPerTurn * (scale.vernierLines ?? 1)),
          });
          const scales = { dial: inHand(dial, turnsOf(wormRatio)), ring: inHand(ring, turnsOf("1")) };
          const hands = {
            dial: handScale(scales.dial.steps, scales.dial.perSpindle, start, side),
            ring: handScale(scales.ring.steps, scales.ring.perSpindle, start, side),
          };
          const head = defineHead({ wormRatio, dial, ring });
          for (const at of dialReadings(head, count, { startAngle: revolutions(turnsText(start)), side }).positions) {
            for (const name of ["dial", "ring"] as const) {
              const { perSpindle, lines, steps } = scales[name];
              const { zeros: passed, step, tooFar } = hands[name].turnTo({ n: BigInt(at.tooth - 1), d: BigInt(count) });
              const { errorArcSeconds, figure, ...reading } = at[name] as Reading;
              expect(reading).toEqual({
                turns: name === "ring" ? 0 : Number(passed),
                mark: Number(step / lines),
                line: Number(step % lines),
                side,
              });
              const off = turnsOf(`${tooFar.n * perSpindle.d}/${tooFar.d * steps * perSpindle.n}`);
              expect(errorArcSeconds).toBeCloseTo((Number(off.n) / Number(off.d)) * 1_296_000, 6);
              const inTurns = turnsText(turnsOf(`${step * perSpindle.d}/${steps * perSpindle.n}`));
              expect(figure).toBe(name === "ring" ? inTurns : null);
            }
          }
        },
      ),
      runs(100),
    );
  });

  it("goes through JSON unchanged", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), zeros, (count, zero) => {
        const table = dialReadings(dial90, count, zero);
        expect(JSON.parse(JSON.stringify(table))).toEqual(table);
      }),
      runs(30),
    );
  });
});

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
      () => dialReadings(dial90, 50_001),
      "divisions: 50,001 places are too many to list; give at most 50,000",
    ],
    [
      "a start that is no angle",
      () => dialReadings(dial90, 12, { startAngle: "2.9" as Revolutions }),
      'startAngle: "2.9" is not an angle in revolutions; give text such as "29/3600", or parseAngle("2.9°") for degrees',
    ],
  ])("%s", (_, act, told) => {
    expect(refusalLines(act)).toEqual([told]);
  });
});
