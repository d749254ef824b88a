import type Fraction from "fraction.js";
import { type Head, type OwnedCircle, ownedCircles, wormRatioOf } from "../head/head.ts";
import { mostMarks } from "../head/scale.ts";
import { arcSecondsPerTurn } from "../number/angle.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { parseRational } from "../number/parse-rational.ts";
import { fromExact, groupDigits, isPositive, type Ratio, rational, toRatio } from "../number/ratio.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import type { ScaleLine } from "./scale-lines.ts";
import { holesReader, type Turned } from "./scale-reader.ts";

/** A table that is moved by its own screw and dial. */
export interface ScrewDial {
  /** Travel of the table for one turn of the screw, in mm, exact: `6`, `"6.35"`, `"127/20"`. */
  readonly lead: number | string;
  /** Marks of its dial. */
  readonly marks: number;
}

/** A table whose screw is turned by a dividing head, through gears. */
export interface ScrewGeared {
  readonly lead: number | string;
  /** The crank and index plates of this head are turned; its plate is held by the stop pin. */
  readonly head: Head | PreparedHead;
  /** Turns of the screw for one of the spindle, by the gears between them; left out, 1: equal gears. */
  readonly turnsPerSpindle?: number | string | undefined;
}

/** Whole turns, and marks of a dial or holes of a circle beyond them. */
export interface Counted {
  readonly turns: number;
  readonly marks: number;
}

/** A line of a straight scale: where screw or crank stands for it, counted from the first line. */
export interface StraightLine extends ScaleLine {
  /** From the first line, in mm, exact. */
  readonly travel: Ratio;
  readonly at: Counted;
  /** How to go on from the line before. */
  readonly from: Counted;
  /** How far the line so lies from its true place, in mm; + is too far. */
  readonly errorMm: number;
}

/** What is counted on: marks of the screw's dial, or holes of a circle at the crank. */
export type Counter = { readonly by: "dial"; readonly marks: number } | ({ readonly by: "crank" } & OwnedCircle);

/** The lines of a straight scale with what they are counted on. */
export interface StraightLines {
  readonly counter: Counter;
  /** Travel of the table for one turn of the dial or the crank, in mm, exact. */
  readonly travelPerTurn: Ratio;
  /** No line lies further from its place, in mm. */
  readonly worstMm: number;
  readonly lines: readonly StraightLine[];
}

const dialKeys = keysOf<ScrewDial>({ lead: true, marks: true });
const gearedKeys = keysOf<ScrewGeared>({ lead: true, head: true, turnsPerSpindle: true });

/**
 * Sets every line by itself from the first, to the nearest mark of the dial or hole of a circle. Of the circles of a head
 * that one which leaves the least error, and of those alike the smallest, on which the fewest spaces are counted.
 *
 * The law: a turn of the screw moves the table by its lead, and one of the crank by lead·g/R: spindle geared to screw 1 to
 * g on a worm ratio of R.
 *
 * @param space - From line to line, in mm.
 */
export function straightLines(on: ScrewDial | ScrewGeared, space: Fraction, lines: readonly ScaleLine[]): StraightLines {
  const { travelPerTurn, counters } = countersOf(on);
  const perLine = space.div(travelPerTurn);
  const counter = bestOf(counters, perLine, lines);
  const places = placesOf(counter);
  const reader = holesReader(places, one);
  const toMm = (arcSeconds: number) => (arcSeconds / arcSecondsPerTurn) * travelPerTurn.valueOf();
  let last = 0;
  const counted = lines.map((each): StraightLine => {
    const { turns, mark: marks, errorArcSeconds } = reader.read(turnedTo(each, perLine));
    const on = turns * places + marks - last;
    last += on;
    return {
      ...each,
      travel: toRatio(space.mul(each.line)),
      at: { turns, marks },
      from: { turns: Math.floor(on / places), marks: on % places },
      errorMm: toMm(errorArcSeconds),
    };
  });
  return {
    counter,
    travelPerTurn: toRatio(travelPerTurn),
    worstMm: counted.reduce((most, { errorMm }) => Math.max(most, Math.abs(errorMm)), 0),
    lines: counted,
  };
}

/** Of a long scale so many lines tell which circle leaves the least: a choice that is to take no longer for more. */
const linesTried = 100;

function bestOf(counters: readonly Counter[], perLine: Fraction, lines: readonly ScaleLine[]): Counter {
  const tried = lines.slice(0, linesTried);
  const [best] = counters
    .map((counter) => {
      const reader = holesReader(placesOf(counter), one);
      const off = tried.reduce((most, line) => Math.max(most, Math.abs(reader.error(turnedTo(line, perLine)))), 0);
      // In arc-seconds of screw or crank; what no count closes on is never taken for what does.
      return { counter, off: BigInt(placesOf(counter)) % perLine.d === 0n ? 0 : Math.max(off, Number.MIN_VALUE) };
    })
    .toSorted((one, other) => one.off - other.off || placesOf(one.counter) - placesOf(other.counter));
  return best?.counter ?? refuse("not-owned", "head", "has no index plate to count the crank's turns on; list its plates");
}

function placesOf(counter: Counter): number {
  return counter.by === "dial" ? counter.marks : counter.holes;
}

/** How far dial or crank is turned for a line. */
function turnedTo({ line }: ScaleLine, { n, d }: Fraction): Turned {
  return { n: n * BigInt(line), d };
}

const one = toRatio(rational(1));

function countersOf(on: ScrewDial | ScrewGeared): { readonly travelPerTurn: Fraction; readonly counters: readonly Counter[] } {
  if ("head" in on) {
    checkKeys(on, gearedKeys, "on");
    const head = headOf(on.head);
    const geared = length(on.turnsPerSpindle ?? 1, "turnsPerSpindle");
    return {
      travelPerTurn: length(on.lead, "lead")
        .mul(geared)
        .div(fromExact(wormRatioOf(head))),
      counters: ownedCircles(head).map((circle) => ({ by: "crank", ...circle })),
    };
  }
  checkKeys(on, dialKeys, "on");
  const { lead, marks } = on;
  if (!Number.isInteger(marks) || marks < 1 || marks > mostMarks)
    refuse(wholeNumberFault(marks), "marks", `${quoted(marks)} is not a number of marks; give 1 to ${groupDigits(mostMarks)}`);
  return { travelPerTurn: length(lead, "lead"), counters: [{ by: "dial", marks }] };
}

/** Reads a length or a ratio that is above 0, exact. */
export function length(value: unknown, place: string): Fraction {
  const read = parseRational(typeof value === "number" ? String(value) : value, place);
  if (isPositive(read)) return read;
  return refuse("out-of-range", place, `${quoted(value)} is not above 0`);
}
