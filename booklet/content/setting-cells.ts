import type Fraction from "fraction.js";
import {
  type Crank,
  formatAngle,
  fromExact,
  type Head,
  type OfCrankMove,
  type OfMove,
  type Revolutions,
  revolutions,
} from "../../src/index.ts";
import { rational, toRevolutions } from "../../src/number/ratio.ts";
import { shortAngle } from "../../src/words/index.ts";
import type { Cell, Column } from "./table-block.ts";
import { plateOf } from "./words.ts";

/** What is printed in a column where nothing is set. */
export const nothing = "–";

/** Columns that every table of counts begins with. */
export const countColumns: readonly Column[] = [
  { head: "Count", align: "right", strong: true },
  { head: "", align: "center" },
];

/** Columns of the plate and the crank, in the order of work. */
export const crankColumns: readonly Column[] = [
  { head: "plate", group: "SET UP", align: "left", strong: true, wraps: true },
  { head: "circle", group: "SET UP", align: "right", strong: true },
  { head: "turns", group: "CRANK", align: "right", strong: true },
  { head: "spaces", group: "CRANK", align: "right", strong: true },
  { head: "enclose\nholes", group: "ARMS", align: "right" },
];

/** The cells for {@link crankColumns}. */
export function crankCells(head: Head, setting: Crank): readonly Cell[] {
  const { turns, spaces, circle, armsEnclose } = setting;
  return [
    { text: plateOf(head, setting) },
    { text: circle === null ? (head.plates.length === 0 ? "none" : "any") : String(circle) },
    { text: String(turns) },
    { text: String(spaces) },
    { text: armsEnclose === null ? nothing : String(armsEnclose) },
  ];
}

/** The column of the angle between two divisions beside each other. */
export const stepColumn: Column = { head: "one division", align: "right", aside: "one division {}" };

/** The cell for {@link stepColumn}. */
export function stepCell(divisions: number): Cell {
  return { text: formatAngle(revolutions(1, divisions)) };
}

/** Columns that say when the pin is back in the hole it started from, for a plate that stands still; with what the ring shows, where there is one. */
export function startHoleColumns({ ring }: Head): readonly Column[] {
  return [
    { head: "moves", group: startHole, align: "right", aside: "start hole after {} moves" },
    { head: "turns", group: startHole, align: "right", aside: "turns {}" },
    ...(ring === null ? [] : [{ head: "ring", group: startHole, align: "right", aside: "ring {}" } as const]),
  ];
}

const startHole = "CHECK: START HOLE AGAIN";

/**
 * The cells for {@link startHoleColumns}.
 *
 * A move of p/q turns, in lowest terms, brings the pin back to its hole after q moves, p whole
 * turns, with the spindle at p/R of a turn.
 */
export function startHoleCells({ ring }: Head, { turns, spaces, circle, wormRatio }: Crank & OfCrankMove): readonly Cell[] {
  const move = rational(turns * (circle ?? 1) + spaces, circle ?? 1);
  const spindle = withinTurn(rational(move.n).div(fromExact(wormRatio)));
  return [{ text: String(move.d) }, { text: String(move.n) }, ...(ring === null ? [] : [{ text: shortAngle(spindle) }])];
}

/** What the ring shows: whole turns of the spindle dropped, but one full turn read as 360°. */
function withinTurn(turns: Fraction): Revolutions {
  const part = turns.sub(turns.floor());
  return toRevolutions(part.n === 0n ? rational(1) : part);
}

/** Whether a table needs to say how many teeth each move advances. */
export function anyBlock(settings: readonly OfMove[]): boolean {
  return settings.some(({ teethPerMove }) => teethPerMove > 1);
}

/** The column of teeth per move, printed where any row has more than one. */
export const teethColumn: Column = { head: "teeth\na move", align: "right", strong: true };
