import type { Coordinate } from "../../machine/coordinates.ts";
import type { LengthUnit } from "../../number/length-unit.ts";
import { lengthIn, type TextColumn, told } from "./columns.ts";

/**
 * Coordinates as columns, in the unit named; a length in millimetres is divided by what the unit has.
 * To six decimals.
 */
export function coordinateColumns(places: readonly Coordinate[], unit: LengthUnit): readonly TextColumn[] {
  const length = lengthIn(unit);
  return told(places, {
    tooth: ({ tooth }) => tooth,
    [`x (${unit})`]: ({ x }) => length(x),
    [`y (${unit})`]: ({ y }) => length(y),
  });
}

/** A bolt circle as columns: each hole signed from the centre, and from a zero beside it. */
export function boltCircleColumns(
  signed: readonly Coordinate[],
  positive: readonly Coordinate[],
  unit: LengthUnit,
): readonly TextColumn[] {
  const [, x, y] = coordinateColumns(signed, unit);
  const [hole, fromX, fromY] = coordinateColumns(positive, unit);
  const named = (column: TextColumn | undefined, head: string) => ({ head: `${head} (${unit})`, cells: column?.cells ?? [] });
  return [
    { head: "hole", cells: hole?.cells ?? [] },
    named(x, "x from centre"),
    named(y, "y from centre"),
    named(fromX, "x from zero"),
    named(fromY, "y from zero"),
  ];
}
