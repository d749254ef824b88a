import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  dialReadings,
  type Head,
  type PlanOptions,
  parseAngle,
  type Reading,
  ratio,
  revolutions,
  wormRatioOf,
} from "../../src/index.ts";
import { readingShort, readingWords, scaleColumns, scalesStand } from "../../src/words/index.ts";
import { planned } from "../support/jobs.ts";
import { oddDial } from "../support/known-jobs.ts";
import { ready } from "../support/ready.ts";

const dial90 = ready("ratio-90-dial");
const marks = defineHead({
  wormRatio: 90,
  dial: { marksPerTurn: 240, vernierLines: 6 },
  ring: { marksPerTurn: 360, vernierLines: 12, figures: "marks" },
});

const placesOf = (head: Head, divisions: number, options: PlanOptions = {}) => planned(head, { divisions }, options).places;
const standing = (head: Head, divisions: number, options: PlanOptions = {}) =>
  placesOf(head, divisions, options).map((place) => scalesStand(place, head));

describe("what ring and dial show", () => {
  it("figures in degrees: only the parts that the scale can show", () => {
    expect(standing(dial90, 97).slice(0, 3)).toEqual([
      ["ring 0°", "dial 0 t + 0° 00′ 00″"],
      ["ring 4°", "dial 0 t + 3° 42′ 40″"],
      ["ring 7°", "dial 1 t + 3° 25′ 20″"],
    ]);
  });

  it("figures that count marks: mark and vernier line", () => {
    expect(standing(marks, 97)[1]).toEqual(["ring mark 3 line 9", "dial 0 t + mark 222 line 4"]);
    const [, second] = placesOf(marks, 97);
    if (second?.dial == null || marks.dial === null) throw new Error("the dial is not read");
    expect(readingShort(second.dial, marks.dial)).toBe("222 + 4");
  });

  it("on the minus side the figures fall from where they start", () => {
    const options = { side: "minus", startAngle: parseAngle("124°") } as const;
    expect(standing(dial90, 90, options).slice(0, 2)).toEqual([
      ["ring 124°", "dial 0 t + 0° 00′ 00″"],
      ["ring 120°", "dial 1 t + 0° 00′ 00″"],
    ]);
  });

  it("gone back past the zero, turns are below 0, with a true minus: 45° short of it is 12 turns back and 3° on", () => {
    const options: PlanOptions = { teeth: [8], direction: "nearer" };
    expect(standing(dial90, 8, options)).toEqual([["ring 315°", "dial −12 t + 3° 00′ 00″"]]);
    const [turns] = scaleColumns(dial90, "dial");
    expect(placesOf(dial90, 8, options).map((place) => turns?.cell(place))).toEqual(["−12"]);
  });

  it("a hair below zero a reading is that of the mark before it, and of no turn that was not made", () => {
    // Eight teeth of the near move come 1/8 short of the start, a dial mark is coarser than that.
    const head = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [20] }], dial: { marksPerTurn: 100 } });
    const near = planned(head, { divisions: 19 }, { by: "moves", methods: ["simple"], teethPerMove: 1 });
    const close = near.checks.at(-1)?.place;
    if (close === undefined || close.dial === null) throw new Error("there is no close");
    // 19 moves of 2 2/20 turns are 39.9: the handwheel has not made its fortieth turn.
    expect([close.dial.turns, close.dial.mark, close.dial.errorArcSeconds]).toEqual([39, 90, 0]);
    expect(scalesStand(close, head)).toEqual(["dial 39 t + mark 90"]);
  });

  it("shows what its scale can show: whole degrees, minutes, seconds or tenths", () => {
    const at = (figure: string, more: Partial<Reading> = {}): Reading => ({
      turns: 3,
      mark: 17,
      line: 2,
      side: "plus",
      figure: revolutions(figure),
      errorArcSeconds: 0,
      ...more,
    });
    const inDegrees = (marksPerTurn: number, vernierLines = 1) => ({ marksPerTurn, vernierLines, figures: "angle" }) as const;
    // 1/8 of a turn is 45°; marks of 1°, 1′ and 90″, then 30 and 60 lines to 30″: 1″ and half of one.
    const said = (marks: number, lines?: number) => readingWords(at("1/8"), inDegrees(marks, lines), null);
    expect([said(360), said(21_600), said(14_400), said(43_200, 30), said(43_200, 60)]).toEqual([
      "45°",
      "45° 00′",
      "45° 00′ 00″",
      "45° 00′ 00″",
      "45° 00′ 00.0″",
    ]);
    expect(readingWords(at("1/8"), inDegrees(240), ratio(90))).toBe("3 t + 45° 00′");
  });

  it("counts marks and the lines of a vernier, where there are lines to count", () => {
    const at: Reading = { turns: 3, mark: 17, line: 1, side: "plus", figure: null, errorArcSeconds: 0 };
    const marked = (vernierLines: number) => ({ marksPerTurn: 240, vernierLines, figures: "marks" }) as const;
    expect([1, 2, 6].map((lines) => readingShort(at, marked(lines)))).toEqual(["17", "17 + 1", "17 + 1"]);
    expect([1, 2, 6].map((lines) => readingWords(at, marked(lines), null))).toEqual([
      "mark 17",
      "mark 17 line 1",
      "mark 17 line 1",
    ]);
    expect(readingWords({ ...at, turns: -3 }, marked(1), ratio(90))).toBe("−3 t + mark 17");
  });

  it("read back, turns and marks make the place that the reading is for, to half its finest step", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.constantFrom(dial90, marks, oddDial), (divisions, head) => {
        const { dial: scale, wormRatio } = head;
        if (scale === null) throw new Error("the head has a dial");
        const [n = 0, d = 1] = wormRatioOf({ wormRatio }).split("/").map(Number);
        const halfStep = 0.5 / (scale.marksPerTurn * scale.vernierLines);
        for (const { tooth, dial } of dialReadings(head, divisions).positions) {
          if (dial === null) throw new Error("the dial is read");
          const read = readBack(readingWords(dial, scale, wormRatio), scale);
          expect(Math.abs(read - ((tooth - 1) / divisions) * (n / d))).toBeLessThanOrEqual(halfStep + 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });
});

/** Turns of the handwheel that a reading in words comes to; its figures are degrees of the work on 90:1. */
function readBack(words: string, { marksPerTurn, vernierLines, figures }: NonNullable<Head["dial"]>): number {
  const [, turns = "", rest = ""] = /^(−?\d+) t \+ (.*)$/.exec(words) ?? [];
  const whole = Number(turns.replace("−", "-"));
  if (figures === "angle") {
    const [degrees = 0, minutes = 0, seconds = 0] = rest.split(/[°′″]/).map(Number);
    return whole + (degrees + minutes / 60 + seconds / 3600) / 4;
  }
  const [, mark = "", line = "0"] = /^mark (\d+)(?: line (\d+))?$/.exec(rest) ?? [];
  return whole + (Number(mark) + Number(line) / vernierLines) / marksPerTurn;
}
