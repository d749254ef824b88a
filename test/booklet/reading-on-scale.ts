import { type Head, wormRatioOf } from "../../src/index.ts";
import { add, type Turns, times, turnsOf, withinTurn } from "../support/bench.ts";
import type { PrintedTable } from "./printed-series.ts";
import type { PrintedPlace } from "./printed-sheet.ts";
import { arcSeconds, degreesIn } from "./sheet-scales.ts";

/*
 * What a table of readings prints, set by hand on a head: fractions of the tests' own, from the print
 * alone. It shares nothing with src/ but the shape of a head.
 */

type ScaleName = "dial" | "ring";

const units: Readonly<Record<string, number>> = { "″": 1, "′": 60, "°": 3600 };

/** `4.8″`, `+2.5′`, `1.26°` in arc-seconds; NaN where it is none. */
export function arcIn(text: string): number {
  const [, sign, size, unit] = /^([+−])?(\d+(?:\.\d+)?)([″′°])$/.exec(text) ?? [];
  return (sign === "−" ? -1 : 1) * Number(size) * (units[unit ?? ""] ?? Number.NaN);
}

/** The last decimal that is printed of an arc, in arc-seconds. */
export function lastDecimalOf(text: string): number {
  const [, decimals = "", unit] = /(?:\.(\d+))?([″′°])$/.exec(text) ?? [];
  return (units[unit ?? ""] ?? Number.NaN) / 10 ** decimals.length;
}

/** A row as the hand on the bench reads it. */
function placeIn(row: PrintedPlace): PrintedPlace {
  return { ...row, "DIAL turns": row.turns ?? "0", reads: row.dial ?? "" };
}

/** Where a reading sets the work, in turns of it; null where it lies on no mark that the scale has. */
export function setTo(row: PrintedPlace, by: ScaleName, head: Head): Turns | null {
  const scale = head[by];
  if (scale === null) return null;
  const work = degreesIn(placeIn(row), by, head);
  const worm = by === "dial" ? turnsOf(wormRatioOf(head)) : turnsOf("1");
  const steps = { n: work.n * worm.n * BigInt(scale.marksPerTurn * scale.vernierLines), d: work.d * worm.d };
  const within = by === "dial" ? degreesIn(placeIn({ ...row, turns: "0" }), by, head) : work;
  const isOnScale = within.n * worm.n < within.d * worm.d && within.n >= 0n;
  return steps.n % steps.d === 0n && isOnScale ? work : null;
}

/** How far off the worst place of a count is when each is set to the nearest of so many in a turn of the work. */
export function worstOff(divisions: number, { n, d }: Turns): number {
  let worst = 0n;
  const all = BigInt(divisions) * d;
  for (let place = 0n; place < BigInt(divisions); place += 1n) {
    const past = (place * n) % all;
    const miss = past < all - past ? past : all - past;
    if (miss > worst) worst = miss;
  }
  return arcSeconds({ n: worst * d, d: all * n });
}

/** Places in a turn of the work that a scale can be set to. */
export function placesOn(head: Head, by: ScaleName): Turns {
  const scale = head[by];
  const worm = by === "dial" ? turnsOf(wormRatioOf(head)) : turnsOf("1");
  return times(BigInt((scale?.marksPerTurn ?? 0) * (scale?.vernierLines ?? 0)), worm);
}

/** What is wrong with a table of positions: a place that is not there, on no mark, or further off than the heading says. */
export function wrongPositions({ title, notes, rows }: PrintedTable, head: Head): readonly string[] {
  const by = /set by the (dial|ring)/.exec(notes)?.[1] ?? (head.dial === null ? "ring" : "dial");
  const scale = by as ScaleName;
  const divisions = Number.parseInt(title, 10);
  const bound = notes.includes("exact") ? 0 : arcIn(/within (\S+),/.exec(notes)?.[1] ?? "");
  const numbers = rows.map((row) => Number(row["no."])).sort((a, b) => a - b);
  const wanted = Array.from({ length: divisions }, (_, index) => index + 1);
  const faults = JSON.stringify(numbers) === JSON.stringify(wanted) ? [] : [`has the positions ${numbers.join(" ")}`];
  const offs = rows.map((row) => offAt(row, scale, divisions, head));
  const worst = Math.max(...offs);
  return [
    ...faults,
    ...(offs.some(Number.isNaN) ? ["a reading lies on no mark"] : []),
    ...(worst <= bound + 1e-9 ? [] : [`is ${worst}″ off, printed ${bound}″`]),
    ...(bound === 0 || worst > bound - lastDecimalOf(/within (\S+),/.exec(notes)?.[1] ?? "") - 1e-9
      ? []
      : ["the bound is too wide"]),
    ...(bound === 0 ? [] : wrongLength(notes, worst)),
    ...rows.flatMap((row) => wrongRing(row, scale, head)),
  ].map((fault) => `${title}: ${fault}`);
}

function offAt(row: PrintedPlace, by: ScaleName, divisions: number, head: Head): number {
  const set = setTo(row, by, head);
  if (set === null) return Number.NaN;
  const truly = turnsOf(`${Number(row["no."]) - 1}/${divisions}`);
  return Math.abs(arcSeconds(nearNothing(add(set, times(-1n, truly)))));
}

/** The length printed is no less than the error makes at 50 mm, and that rounded up to four decimals. */
function wrongLength(notes: string, worst: number): readonly string[] {
  const printed = Number(/within \S+, (\d+\.\d+) mm at 50 mm/.exec(notes)?.[1]);
  const length = (50 * 2 * Math.PI * worst) / 1_296_000;
  return printed >= length - 1e-9 && printed < length + 0.0001 ? [] : [`${length} mm, printed ${printed}`];
}

/** The ring beside a dial shows the mark that is nearest to where the dial sets the work. */
function wrongRing(row: PrintedPlace, by: ScaleName, head: Head): readonly string[] {
  const { ring } = head;
  if (ring === null || by === "ring") return [];
  const [shown, set] = [setTo(row, "ring", head), setTo(row, "dial", head)];
  if (shown === null || set === null) return [`position ${row["no."]}: the ring shows no mark of its own`];
  const off = nearNothing(add(shown, times(-1n, set)));
  const size = off.n < 0n ? -off.n : off.n;
  return 2n * size * BigInt(ring.marksPerTurn * ring.vernierLines) <= off.d
    ? []
    : [`position ${row["no."]}: the ring shows another mark`];
}

/** As near to nothing as whole turns bring it. */
export function nearNothing(turns: Turns): Turns {
  const within = withinTurn(turns);
  return 2n * within.n > within.d ? add(within, turnsOf("-1")) : within;
}
