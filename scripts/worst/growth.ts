import type { HeadSpec } from "../../src/index.ts";
import type { Question, Terms } from "./question.ts";

/** One row of growth: a question that is made larger step by step. */
export interface Growth {
  readonly name: string;
  readonly sizes: readonly number[];
  question(size: number): Question;
}

/** Far from every count that a head does, so that all is tried; a prime. */
const far = 9_999_991;

const from = (first: number, count: number): number[] => Array.from({ length: count }, (_, index) => first + index);

/** So many plates of two faces, 60 circles each, all different within a face. */
const plates = (count: number): HeadSpec["plates"] =>
  from(1, count).map((plate) => ({
    name: String(plate),
    faces: [
      { name: "front", circles: from(100 + 7 * plate, 60) },
      { name: "back", circles: from(1000 + 61 * plate, 60) },
    ],
  }));

const isPrime = (value: number) =>
  value > 1 && from(2, Math.floor(Math.sqrt(value)) - 1).every((divisor) => value % divisor !== 0);
/** Small primes over and over: with more of them no common part would be coarse enough. */
const primes = from(2, 40).filter(isPrime).slice(0, 12);

const count = (head: HeadSpec, options = {}): Question => ({ head, ask: { kind: "count", divisions: far, options } });

/** The curves that are kept: what grows, and how far a head and a question may go. */
export const growths: readonly Growth[] = [
  {
    name: "the count, worm ratio 1/1000, one circle",
    sizes: [997, 9973, 99_991, 999_983, far],
    question: (size) => ({
      head: { wormRatio: "1/1000", plates: [{ name: "1", circles: [3] }] },
      ask: { kind: "count", divisions: size, options: {} },
    }),
  },
  {
    name: "unequal steps over twelve primes",
    sizes: [100, 200, 400, 800, 50_000],
    question: (size) => ({
      head: { wormRatio: 40, plates: plates(3) ?? [] },
      ask: { kind: "spacing", steps: from(0, size).map((index): Terms => [1, (primes[index % 12] ?? 2) * 7]) },
    }),
  },
  {
    name: "circles of a face, rear pin, worm ratio 99991",
    sizes: [10, 20, 60],
    question: (size) => count({ wormRatio: 99_991, rearPin: true, plates: [{ name: "1", circles: from(101, size) }] }),
  },
  {
    name: "plates of 120 circles, a small crank of twelve",
    sizes: [1, 4, 16, 50],
    question: (size) =>
      count({ wormRatio: 40, plates: plates(size) ?? [], smallCrank: { ratio: 1000, circles: from(9001, 12) } }),
  },
  {
    name: "change gears, 60 circles, plate ratio 100",
    sizes: [25, 100, 200],
    question: (size) =>
      count({
        wormRatio: 40,
        plates: [{ name: "1", circles: from(101, 60) }],
        gears: from(17, size),
        gearing: { greatestPlateRatio: 100 },
      }),
  },
  {
    name: "plates of 120 circles, rear pin",
    sizes: [1, 4, 16, 50],
    question: (size) => count({ wormRatio: 40, rearPin: true, plates: plates(size) ?? [] }),
  },
  {
    name: "holes of a circle, 0.9716 turns, eight gears",
    sizes: [200, 1000, 3000, 10_000],
    question: (size) => ({
      head: {
        wormRatio: 40,
        plates: [{ name: "1", circles: [size] }],
        gears: [24, 28, 32, 40, 44, 48, 56, 64],
        gearing: { greatestPlateRatio: 85 },
      },
      ask: { kind: "angle", angle: [2429, 2500], options: {} },
    }),
  },
  {
    name: "counts of a table, three plates, twelve gears",
    sizes: [1000, 10_000, 20_000],
    question: (size) => ({
      head: {
        wormRatio: 40,
        rearPin: true,
        plates: [
          { name: "1", circles: [15, 16, 17, 18, 19, 20] },
          { name: "2", circles: [21, 23, 27, 29, 31, 33] },
          { name: "3", circles: [37, 39, 41, 43, 47, 49] },
        ],
        gears: [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100],
      },
      ask: { kind: "table", range: { from: 1, to: size } },
    }),
  },
  {
    name: "places by dial and ring",
    sizes: [1000, 10_000, 50_000],
    question: (size) => ({
      head: { wormRatio: "81/2", ring: { marksPerTurn: 360, vernierLines: 12 }, dial: { marksPerTurn: 540, vernierLines: 6 } },
      ask: { kind: "readings", divisions: size },
    }),
  },
  {
    name: "places of a plan",
    sizes: [1000, 10_000, 50_000],
    question: (size) => ({
      head: { wormRatio: 40, rearPin: true, plates: plates(1) ?? [], ring: { marksPerTurn: 360 } },
      ask: { kind: "plan", divisions: size, options: {} },
    }),
  },
];
