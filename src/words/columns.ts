import type { Coordinate } from "../machine/coordinates.ts";
import type { DrilledPlate, HoleByCoordinates, HoleOnHead } from "../machine/drill-plate.ts";
import type { Graduated, GraduatedStraight, RoundLine } from "../machine/graduate.ts";
import type { Place } from "../machine/place.ts";
import type { ScaleLine } from "../machine/scale-lines.ts";
import type { BothScales } from "../machine/scale-reader.ts";
import type { StraightLine } from "../machine/straight-scale.ts";
import type { SpacedPlace } from "../machine/unequal-spacing.ts";
import { type LengthUnit, mmPerInch } from "../number/length-unit.ts";
import { fromExact, type Revolutions } from "../number/ratio.ts";
import type { Setting } from "../setting/setting.ts";
import type { TableRow } from "../table.ts";

/** A column of a table in text, the first line of it its head. */
export interface TextColumn {
  readonly head: string;
  readonly cells: readonly string[];
}

/** What a cell holds: nothing where it does not apply. */
type Cell = string | number | null | undefined;

type Cells<Row> = Readonly<Record<string, (row: Row) => Cell>>;

/** Columns in which some cell says something. */
function told<Row>(rows: readonly Row[], cells: Cells<Row>): readonly TextColumn[] {
  return Object.entries(cells)
    .map(([head, cell]) => ({ head, cells: rows.map((row) => String(cell(row) ?? "")) }))
    .filter((column) => rows.length === 0 || column.cells.some((cell) => cell !== ""));
}

const gearsOf = (setting: Setting | null) => (setting?.method === "differential" ? setting.gears : null);
const secondOf = (setting: Setting | null) => (setting?.method === "compound" ? setting.second : null);
const smallOf = (setting: Setting | null) => (setting?.method === "wide-range" ? setting.small : null);

const ofSetting: Cells<TableRow> = {
  divisions: ({ divisions }) => divisions,
  method: ({ setting }) => setting?.method,
  plate: ({ setting }) => setting?.plate,
  face: ({ setting }) => setting?.face,
  circle: ({ setting }) => setting?.circle,
  turns: ({ setting }) => setting?.turns,
  spaces: ({ setting }) => setting?.spaces,
  "arms enclose": ({ setting }) => setting?.armsEnclose,
  "second circle": ({ setting }) => secondOf(setting)?.circle,
  "second spaces": ({ setting }) => secondOf(setting)?.spaces,
  "second part": ({ setting }) => secondOf(setting)?.direction,
  "small circle": ({ setting }) => smallOf(setting)?.circle,
  "small turns": ({ setting }) => smallOf(setting)?.turns,
  "small spaces": ({ setting }) => smallOf(setting)?.spaces,
  drivers: ({ setting }) => gearsOf(setting)?.drivers.join(" × "),
  driven: ({ setting }) => gearsOf(setting)?.driven.join(" × "),
  idlers: ({ setting }) => gearsOf(setting)?.idlers,
  "plate turns": ({ setting }) => gearsOf(setting)?.direction,
  "may foul": ({ setting }) => (gearsOf(setting)?.mayFoul ? "yes" : null),
  "teeth per move": ({ setting }) => setting?.teethPerMove,
  "not all tried": ({ complete }) => (complete ? null : "yes"),
};

/**
 * The rows of a table as columns with one value a cell, for a spreadsheet: a count that nothing closes
 * has no method. A column that would be empty is not there.
 */
export function tableColumns(rows: readonly TableRow[]): readonly TextColumn[] {
  return told(rows, ofSetting);
}

const standing = (place: Place) => ("hole" in place ? place : null);
const byMoves = (place: Place) => (place.by === "moves" ? place : null);
const byHoles = (place: Place) => ("from" in place ? place : null);
const minusIf = (isBack: boolean, value: number | undefined) =>
  value === undefined ? null : isBack && value > 0 ? -value : value;
const goOn = (place: Place, key: "turns" | "spaces") => {
  const from = byHoles(place)?.from;
  return from && minusIf(from.direction === "back", from[key]);
};

const ofDial: Cells<BothScales> = {
  "dial turns": ({ dial }) => dial?.turns,
  "dial mark": ({ dial }) => dial?.mark,
  "dial line": ({ dial }) => dial?.line,
};

const ofRing: Cells<BothScales> = {
  "ring mark": ({ ring }) => ring?.mark,
  "ring line": ({ ring }) => ring?.line,
};

const ofAnyPlace: Cells<Place> = {
  "go on turns": (place) => goOn(place, "turns"),
  "go on spaces": (place) => goOn(place, "spaces"),
  "second turns": (place) => byMoves(place)?.from.second?.turns,
  "second spaces": (place) => byMoves(place)?.from.second?.spaces,
  "second part": (place) => byMoves(place)?.from.second?.direction,
  "small turns": (place) => (place.by === "both-cranks" ? place.smallTurns : byMoves(place)?.from.small?.turns),
  "small spaces": (place) => byMoves(place)?.from.small?.spaces,
  turns: (place) => standing(place)?.turns,
  hole: (place) => standing(place)?.hole,
  "row hole": (place) => ("vernierHole" in place ? place.vernierHole : null),
  "rear hole": (place) => byMoves(place)?.rearHole,
  "small hole": (place) => ("smallHole" in place ? place.smallHole : null),
  ...ofDial,
  ...ofRing,
  "off by seconds": ({ errorArcSeconds }) => decimal(errorArcSeconds, errorDecimals),
  degrees: ({ angle }) => degreesOf(angle),
};

const ofPlace: Cells<Place> = { tooth: ({ tooth }) => tooth, ...ofAnyPlace };

/**
 * The places of a job as columns with one value a cell, for a spreadsheet or a stepper: what to go on by
 * (below 0 where it goes back), where that stands, what dial and ring show, how far it is off in
 * arc-seconds, and the true angle in degrees to ten decimals, the only figures that are rounded.
 */
export function positionColumns(places: readonly Place[]): readonly TextColumn[] {
  return told(places, ofPlace);
}

const ofSpaced: Cells<SpacedPlace> = {
  place: ({ place }) => place,
  "go on turns": ({ from }) => from?.turns,
  "go on spaces": ({ from }) => from?.spaces,
  turns: ({ turns }) => turns,
  hole: ({ hole }) => hole,
  "off by seconds": ({ errorArcSeconds }) => errorArcSeconds && decimal(errorArcSeconds, errorDecimals),
  ...ofDial,
  "dial off by seconds": ({ dial }) => dial && decimal(dial.errorArcSeconds, errorDecimals),
  ...ofRing,
  degrees: ({ angle }) => degreesOf(angle),
};

/** The places of unequal spaces as columns, as {@link positionColumns} has those of a job. */
export function spacingColumns(places: readonly SpacedPlace[]): readonly TextColumn[] {
  return told(places, ofSpaced);
}

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

/** Cells of a part of each row. */
function within<Row, Part>(part: (row: Row) => Part, cells: Cells<Part>): Cells<Row> {
  return Object.fromEntries(Object.entries(cells).map(([head, cell]) => [head, (row: Row) => cell(part(row))]));
}

/** The holes of an index plate as columns: how each is gone to as {@link positionColumns} has it, or its coordinates, and how far it is off along its circle. */
export function plateColumns(plate: DrilledPlate, unit: LengthUnit): readonly TextColumn[] {
  const length = lengthIn(unit);
  if (plate.by === "coordinates")
    return told<HoleByCoordinates>(plate.holes, {
      drill: ({ hole }) => hole,
      [`x (${unit})`]: ({ x }) => length(x),
      [`y (${unit})`]: ({ y }) => length(y),
      [`off along (${unit})`]: ({ errorMm }) => length(errorMm),
      [`off outwards (${unit})`]: ({ outMm }) => length(outMm),
    });
  return told<HoleOnHead>(plate.holes, {
    drill: ({ hole }) => hole,
    ...within(({ place }: HoleOnHead) => place, ofAnyPlace),
    [`off along (${unit})`]: ({ errorMm }) => length(errorMm),
  });
}

const ofLine: Cells<ScaleLine> = {
  line: ({ line }) => line,
  length: ({ length }) => length,
  // A spreadsheet knows no true minus.
  figure: ({ figure }) => figure?.replace("−", "-"),
};

/** The lines of a scale as columns: length, figure, and how each is gone to. */
export function scaleLineColumns(scale: Graduated, unit: LengthUnit): readonly TextColumn[] {
  if (scale.shape === "round")
    return told<RoundLine>(scale.lines, { ...ofLine, ...within(({ place }: RoundLine) => place, ofAnyPlace) });
  return told<StraightLine>(scale.lines, { ...ofLine, ...straightCells(scale, lengthIn(unit), unit) });
}

function straightCells({ counter }: GraduatedStraight, length: (mm: number) => string, unit: LengthUnit): Cells<StraightLine> {
  const [spaces, mark] = counter.by === "dial" ? ["marks", "mark"] : ["spaces", "hole"];
  return {
    "go on turns": ({ from }) => from.turns,
    [`go on ${spaces}`]: ({ from }) => from.marks,
    turns: ({ at }) => at.turns,
    [mark]: ({ at }) => at.marks,
    [`travel (${unit})`]: ({ travel }) => length(fromExact(travel).valueOf()),
    [`off by (${unit})`]: ({ errorMm }) => length(errorMm),
  };
}

/** Writes lengths in mm as figures of a unit. */
function lengthIn(unit: LengthUnit): (mm: number) => string {
  const size = unit === "in" ? mmPerInch : 1;
  return (mm) => decimal(mm / size, lengthDecimals);
}

const errorDecimals = 4;
const lengthDecimals = 6;
const mostDecimals = 10;

function degreesOf(angle: Revolutions): string {
  return decimal(fromExact(angle).mul(360).valueOf(), mostDecimals);
}

/** Without needless zeros, and never in powers of ten. */
function decimal(value: number, places: number): string {
  const text = value.toFixed(places).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
