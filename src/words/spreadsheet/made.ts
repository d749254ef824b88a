import type { DrilledPlate, HoleByCoordinates, HoleOnHead } from "../../machine/drill-plate.ts";
import type { Graduated, GraduatedStraight, RoundLine } from "../../machine/graduate.ts";
import type { ScaleLine } from "../../machine/scale-lines.ts";
import type { StraightLine } from "../../machine/straight-scale.ts";
import type { LengthUnit } from "../../number/length-unit.ts";
import { fromExact } from "../../number/ratio.ts";
import { type Cells, lengthIn, type TextColumn, told } from "./columns.ts";
import { ofAnyPlace } from "./places.ts";

/** Cells of a part of each row. */
function within<Row, Part>(part: (row: Row) => Part, cells: Cells<Part>): Cells<Row> {
  return Object.fromEntries(Object.entries(cells).map(([head, cell]) => [head, (row: Row) => cell(part(row))]));
}

/** The holes of an index plate as columns: how each is gone to as `positionColumns` has it, or its coordinates, and how far it is off along its circle. */
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
