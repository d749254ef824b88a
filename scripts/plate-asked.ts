import { type DrilledPlate, type DrillOptions, drilledBy, drillPlate, type Head } from "../src/index.ts";
import { drilledWithWhys, type LengthWords, lengthsIn, plateColumns } from "../src/words/index.ts";
import { fault, millimetres, millimetresFromZero, wholeNumber } from "./command-line.ts";
import { askedAs, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { plateHelp } from "./plate-help.ts";
import { plateMeasured } from "./plate-measured.ts";
import { plateNames, plateOptions } from "./plate-options.ts";
import { drilledLines, noPlateLines } from "./plate-words.ts";
import { type Given, readOptions } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked, startAsked } from "./shared-options.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";
import { toldAs } from "./told-as.ts";

type PlateGiven = Given<typeof plateOptions>;

/** `plate …`: a circle of holes to drill, to check, or to find out. */
export async function plateAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, plateOptions, "plate --help");
  const itself = toldOfItself(values, plateHelp, columns);
  if (itself !== null) return itself;
  const holes = holesAsked(positionals);
  const json = values.json === true;
  const length = lengthsIn(unitOf(values));
  if (values.chords !== undefined) return { ...plateMeasured(holes, values, length), json };
  if (holes === null)
    throw fault("missing", "", "how many holes? Begin with the count, such as plate 97 --diameter 120, or give --chords");
  return drilled(holes, values, length);
}

function holesAsked([text, more]: readonly string[]): number | null {
  if (more !== undefined)
    throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one count of holes, such as plate 97`);
  return text === undefined ? null : wholeNumber(text, "");
}

async function drilled(holes: number, given: PlateGiven, length: LengthWords): Promise<MoreOfJob> {
  if (given.diameter === undefined)
    throw fault("missing", "--diameter", "is needed: of the circle, through the middles of its holes, such as 120");
  checkSheet(given);
  const as = toldAs(given);
  const head = await headAsked(given.head);
  const options = drillingAsked(given.diameter, given);
  const plate = askedAs(given, () => drillPlate(head, holes, options), plateNames);
  const data = { plate: drilledWithWhys(plate) };
  if (!plate.planned) return { data, lines: noPlateLines(plate, head), code: 1, ...as };
  const answer = {
    data,
    table: plateColumns(plate, length.unit),
    lines: drilledLines(plate, bySlides(holes, head, given), head, length),
    code: plate.holes.every(({ errorArcSeconds }) => errorArcSeconds === 0) ? 0 : 1,
    ...as,
  };
  return withSheet(answer, given, "plate", () => ({ plate, head, inches: length.unit === "in" }));
}

/** The same by the slides of a table, where no way was named: it may be the better one. */
function bySlides(holes: number, head: Head, given: PlateGiven): DrilledPlate | null {
  const { diameter, within, serves, by } = given;
  if (diameter === undefined || by !== undefined) return null;
  const slides = { by: "coordinates", ...(within !== undefined && { within }), ...(serves !== undefined && { serves }) };
  const plate = drillPlate(head, holes, drillingAsked(diameter, { diameter, ...slides }));
  return plate.planned ? plate : null;
}

function drillingAsked(diameter: string, given: PlateGiven): DrillOptions {
  const { serves: servesRatio, drill, within, step, minus } = given;
  const { side, ...start } = startAsked(given);
  return {
    diameter: millimetres(diameter, "--diameter"),
    servesRatio,
    ...searchAsked(given),
    ...start,
    ...(minus === true && { side }),
    ...(given.by !== undefined && { by: byAsked(given.by) }),
    ...(drill !== undefined && { drill: millimetres(drill, "--drill") }),
    ...(within !== undefined && { drillWithin: millimetresFromZero(within, "--within") }),
    ...stepAsked(step, given),
    ...(given.clockwise === true && { sense: "clockwise" }),
    ...(given.tangents === true && { origin: "tangents" }),
  };
}

/** A usual step of slides that are marked in inches, in mm. Common practice, no source. */
const usualInchStep = 0.0005 * 25.4;

function stepAsked(step: string | undefined, given: PlateGiven): Pick<DrillOptions, "step"> {
  if (step !== undefined) return { step: millimetres(step, "--step") };
  return given.by === "coordinates" && unitOf(given) === "in" ? { step: usualInchStep } : {};
}

function byAsked(by: string): DrillOptions["by"] & string {
  const way = drilledBy.find((each) => each === by.trim());
  if (way !== undefined) return way;
  throw fault("unknown-word", "--by", `there is no way "${by.slice(0, 40)}"; the ways are ${drilledBy.join(", ")}`);
}
