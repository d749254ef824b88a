import { type LengthUnit, mmPerInch } from "../../number/length-unit.ts";
import { fromExact, type Revolutions } from "../../number/ratio.ts";

/** A column of a table in text, the first line of it its head. */
export interface TextColumn {
  readonly head: string;
  readonly cells: readonly string[];
}

/** What a cell holds: nothing where it does not apply. */
type Cell = string | number | null | undefined;

/** The columns of rows, by their heads. */
export type Cells<Row> = Readonly<Record<string, (row: Row) => Cell>>;

/** Columns in which some cell says something. */
export function told<Row>(rows: readonly Row[], cells: Cells<Row>): readonly TextColumn[] {
  return Object.entries(cells)
    .map(([head, cell]) => ({ head, cells: rows.map((row) => String(cell(row) ?? "")) }))
    .filter((column) => rows.length === 0 || column.cells.some((cell) => cell !== ""));
}

/** Writes lengths in mm as figures of a unit. */
export function lengthIn(unit: LengthUnit): (mm: number) => string {
  const size = unit === "in" ? mmPerInch : 1;
  return (mm) => decimal(mm / size, lengthDecimals);
}

const errorDecimals = 4;
const lengthDecimals = 6;
const mostDecimals = 10;

/** Writes arc-seconds. */
export function secondsOf(arcSeconds: number): string {
  return decimal(arcSeconds, errorDecimals);
}

/** Writes a place on the ring in degrees. */
export function degreesOf(angle: Revolutions): string {
  return decimal(fromExact(angle).mul(360).valueOf(), mostDecimals);
}

/** Without needless zeros, and never in powers of ten. */
function decimal(value: number, places: number): string {
  const text = value.toFixed(places).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
