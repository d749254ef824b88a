import { type Head, type NearMove, wormRatioOf } from "../../src/index.ts";
import { everyTrain } from "./brute-force.ts";

/*
 * Finds the nearest settings by trying every move there is, with no solver and in plain integers.
 */

/** A part of a turn, not always in lowest terms; `d` is above 0. */
export interface Part {
  readonly n: number;
  readonly d: number;
}

/** The nearest that a kind comes with so many teeth per move. */
export interface Nearest {
  readonly kind: NearMove["kind"];
  readonly teeth: number;
  /** Closing error in turns of the work, without sign. */
  readonly closing: Part;
}

type Kind = NearMove["kind"];

/** What must be bettered: kinds of less work. */
const lessWork: Readonly<Record<Kind, readonly Kind[]>> = {
  simple: ["simple"],
  "wide-range": ["simple", "wide-range"],
  "one-pair": ["simple", "one-pair"],
  "two-pair": ["simple", "one-pair", "two-pair"],
  compound: ["simple", "compound"],
  "may-foul": ["simple", "one-pair", "two-pair", "may-foul"],
};

/** Teeth of room beside a gear, as the library states it. */
const room = 15;

/** Everything that a head can do, count by count, no nearer than it should be listed. */
export function nearestByTrial(head: Head): (divisions: number, teethTo: number) => readonly Nearest[] {
  const ratios = plateRatios(head);
  return (divisions, teethTo) => nearestOf(head, ratios, divisions, teethTo);
}

type Ratios = Readonly<Record<Kind, readonly Part[]>>;

function nearestOf(head: Head, ratios: Ratios, divisions: number, teethTo: number): readonly Nearest[] {
  if (head.directPlates.some(({ holes }) => holes % divisions === 0)) return [];
  const listed: Nearest[] = [];
  const least = new Map<Kind, Part>();
  for (let teeth = 1; teeth <= Math.max(1, Math.min(teethTo, divisions - 1)); teeth += 1) {
    if (greatestDivisor(teeth, divisions) > 1) continue;
    for (const kind of ["simple", "one-pair", "two-pair", "compound", "may-foul"] as const) {
      const bar = lessWork[kind]
        .map((each) => least.get(each))
        .reduce<Part>((low, each) => (each && isLess(each, low) ? each : low), { n: 1, d: 2 * divisions });
      const closing = smallest(
        kind === "compound" ? compounds(head, divisions, teeth) : pinMoves(head, ratios[kind], divisions, teeth),
      );
      if (closing === null || !isLess(closing, bar)) continue;
      least.set(kind, closing);
      if (closing.n > 0) listed.push({ kind, teeth, closing });
    }
  }
  return listed;
}

function* pinMoves(head: Head, ratios: readonly Part[], divisions: number, teeth: number): Generator<Part> {
  const worm = ratioOf(wormRatioOf(head));
  for (const { n, d } of ratios) {
    const net = { n: worm.n * d - n * worm.d, d: worm.d * d };
    if (net.n <= 0) continue;
    for (const circle of head.plates.flatMap(({ faces }) => faces.flatMap(({ circles }) => circles))) {
      const most = (circle * net.n * teeth) / (net.d * divisions) + 2;
      for (let holes = 1; holes <= most; holes += 1) {
        yield { n: Math.abs(divisions * holes * net.d - teeth * circle * net.n), d: circle * net.n };
      }
    }
  }
}

function* compounds(head: Head, divisions: number, teeth: number): Generator<Part> {
  if (!head.rearPin) return;
  const worm = ratioOf(wormRatioOf(head));
  for (const { circles } of head.plates.flatMap(({ faces }) => faces)) {
    for (const first of circles) {
      for (const second of circles) {
        if (first === second) continue;
        const most = (first * worm.n * teeth) / (worm.d * divisions) + first + 1;
        for (let holes = 1; holes <= most; holes += 1) {
          for (let spaces = 1 - second; spaces < second; spaces += 1) {
            const crank = holes * second + spaces * first;
            if (holes % first === 0 || spaces === 0 || crank <= 0) continue;
            yield {
              n: Math.abs(divisions * crank * worm.d - teeth * first * second * worm.n),
              d: first * second * worm.n,
            };
          }
        }
      }
    }
  }
}

function plateRatios(head: Head): Ratios {
  const sorted = {
    "one-pair": new Map<number, Part>(),
    "two-pair": new Map<number, Part>(),
    "may-foul": new Map<number, Part>(),
  };
  for (const { drivers, driven, plate } of everyTrain(head)) {
    const kind = drivers.length === 1 ? "one-pair" : goesTogether(drivers, driven) ? "two-pair" : "may-foul";
    sorted[kind].set(plate.n / plate.d, plate);
  }
  const [onePair, twoPair, mayFoul] = [sorted["one-pair"], sorted["two-pair"], sorted["may-foul"]].map((map) => [
    ...map.values(),
  ]);
  return {
    simple: [{ n: 0, d: 1 }],
    // Of heads with one crank alone: see `test/near/near-both-cranks.test.ts`.
    "wide-range": [],
    "one-pair": onePair ?? [],
    "two-pair": twoPair ?? [],
    "may-foul": mayFoul ?? [],
    compound: [],
  };
}

function goesTogether([a = 0, b = 0]: readonly number[], [c = 0, d = 0]: readonly number[]): boolean {
  const clears = (spindle: number, studDriven: number, studDriver: number, worm: number) =>
    spindle + studDriven >= studDriver + room && studDriver + worm >= studDriven + room;
  return clears(a, c, b, d) || clears(a, d, b, c) || clears(b, c, a, d) || clears(b, d, a, c);
}

function smallest(parts: Iterable<Part>): Part | null {
  let least: Part | null = null;
  for (const part of parts) if (least === null || isLess(part, least)) least = part;
  return least;
}

function isLess(a: Part, b: Part): boolean {
  return a.n * b.d < b.n * a.d;
}

function ratioOf(text: string): Part {
  const [n = "", d = "1"] = text.split("/");
  return { n: Number(n), d: Number(d) };
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}
