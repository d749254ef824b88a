import {
  checkPlate,
  type DrilledPlate,
  type DrillOptions,
  drilledBy,
  drillPlate,
  type Head,
  type MeasuredChord,
  plateFromChords,
} from "../src/index.ts";
import {
  checkedCells,
  checkedHeads,
  drilledWithWhys,
  type LengthWords,
  lengthsIn,
  plateCheckItems,
  plateFoundItems,
} from "../src/words/index.ts";
import { fault, millimetres, millimetresFromZero, wholeNumber } from "./command-line.ts";
import { askedAs, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { plateHelp } from "./plate-help.ts";
import { plateOptions } from "./plate-options.ts";
import { drilledLines, noPlateLines } from "./plate-words.ts";
import { type Given, readOptions } from "./read-options.ts";
import type { Said } from "./said.ts";
import { searchAsked, startAsked } from "./shared-options.ts";
import { checkSheet } from "./sheet-options.ts";
import { table } from "./table.ts";
import { version } from "./version.ts";
import { itemLines, line } from "./words.ts";

type PlateGiven = Given<typeof plateOptions>;

/** What the library calls the things, and what the command does. */
const names: Readonly<Record<string, string>> = {
  holes: "",
  diameter: "--diameter",
  drill: "--drill",
  drillWithin: "--within",
  within: "--within",
  servesRatio: "--serves",
  step: "--step",
  by: "--by",
  measured: "--chords",
  startHole: "--start-hole",
  startAngle: "--start-angle",
  mounted: "--mounted",
  methods: "--method",
  teethPerMove: "--teeth-per-move",
  side: "--minus",
  sense: "--clockwise",
  origin: "--tangents",
};

/** `plate …`: a circle of holes to drill, to check, or to find out. */
export async function plateAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, plateOptions, "plate --help");
  if (values.help === true) return { data: {}, lines: [plateHelp(columns).trimEnd()], json: false };
  if (values.version === true) return { data: {}, lines: [version()], json: false };
  const holes = holesAsked(positionals);
  const json = values.json === true;
  const length = lengthsIn(unitOf(values));
  if (values.chords !== undefined) return { ...measured(holes, values, length), json };
  if (holes === null)
    throw fault("missing", "", "how many holes? Begin with the count, such as plate 97 --diameter 120, or give --chords");
  return { ...(await drilled(holes, values, length)), json };
}

function holesAsked([text, more]: readonly string[]): number | null {
  if (more !== undefined)
    throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one count of holes, such as plate 97`);
  return text === undefined ? null : wholeNumber(text, "");
}

/** The options that go with chords; others would change nothing. */
const ofChords: ReadonlySet<string> = new Set(["chords", "diameter", "json"]);

function measured(holes: number | null, given: PlateGiven, length: LengthWords): Omit<MoreOfJob, "json"> {
  const also = holes === null ? "within" : "serves";
  const idle = Object.keys(given).find((name) => !ofChords.has(name) && name !== also);
  if (idle !== undefined)
    throw fault(
      "no-effect",
      `--${idle}`,
      `has no effect on ${holes === null ? "an unknown plate" : "a plate that is measured"}; leave it out`,
    );
  const chords = chordsListed(given.chords ?? "");
  const diameter = given.diameter === undefined ? {} : { diameter: millimetres(given.diameter, "--diameter") };
  return holes === null ? found(chords, diameter, given, length) : checked(holes, chords, diameter, given, length);
}

type WithDiameter = Partial<Pick<DrillOptions, "diameter">>;

function checked(
  holes: number,
  chords: readonly MeasuredChord[],
  diameter: WithDiameter,
  given: PlateGiven,
  length: LengthWords,
): Omit<MoreOfJob, "json"> {
  const { serves: servesRatio } = given;
  const plateCheck = askedAs(given, () => checkPlate(holes, chords, { ...diameter, servesRatio }), names);
  const rows = plateCheck.chords.map((chord) => checkedCells(chord, length));
  return {
    data: { plateCheck },
    lines: [
      `PLATE CHECK: ${holes} HOLES, in ${length.unit}`,
      "",
      ...table(checkedHeads.map((head, index) => ({ head, cells: rows.map((row) => row[index] ?? "") }))),
      "",
      ...itemLines(plateCheckItems(plateCheck, length)),
    ],
  };
}

const usualWithin = 0.05;

function found(
  chords: readonly MeasuredChord[],
  diameter: WithDiameter,
  given: PlateGiven,
  length: LengthWords,
): Omit<MoreOfJob, "json"> {
  const within = given.within === undefined ? usualWithin : millimetresFromZero(given.within, "--within");
  const plateFound = askedAs(given, () => plateFromChords(chords, { ...diameter, within }), names);
  return {
    data: { plateFound },
    lines: ["UNKNOWN PLATE", "", ...itemLines(plateFoundItems(plateFound, length))],
    code: plateFound.candidates.length === 1 ? 0 : 1,
  };
}

/** Reads chords such as `3.89 over 1, 84.16 over 24, 3.88 from 96 over 1`. */
function chordsListed(text: string): readonly MeasuredChord[] {
  return text.split(",").map((each) => {
    const [, length, from, spaces] = /^\s*(.+?)\s+(?:from\s+(\d{1,5})\s+)?over\s+(\d{1,5})(?:\s+spaces?)?\s*$/.exec(each) ?? [];
    if (length === undefined || spaces === undefined)
      throw fault(
        "unreadable",
        "--chords",
        `"${each.trim().slice(0, 40)}" is not a chord; write its length and its spaces, such as "84.16 over 24", or "3.88 from 96 over 1"`,
      );
    return {
      length: millimetres(length, "--chords"),
      spaces: Number(spaces),
      ...(from !== undefined && { from: Number(from) }),
    };
  });
}

async function drilled(holes: number, given: PlateGiven, length: LengthWords): Promise<Omit<MoreOfJob, "json">> {
  if (given.diameter === undefined)
    throw fault("missing", "--diameter", "is needed: of the circle, through the middles of its holes, such as 120");
  checkSheet(given);
  const head = await headAsked(given.head);
  const options = drillingAsked(given.diameter, given);
  const plate = askedAs(given, () => drillPlate(head, holes, options), names);
  if (!plate.planned) return { data: { plate: drilledWithWhys(plate) }, lines: noPlateLines(plate, head), code: 1 };
  const sheet = given.sheet === undefined ? null : await printed(given.sheet, plate, head, given);
  return {
    data: { plate: drilledWithWhys(plate), ...(sheet !== null && { sheet: given.sheet }) },
    lines: [
      ...drilledLines(plate, bySlides(holes, head, given), head, length),
      ...(given.sheet === undefined ? [] : ["", line("Sheet", given.sheet)]),
    ],
    bytes: sheet?.bytes,
    code: plate.holes.every(({ errorArcSeconds }) => errorArcSeconds === 0) ? 0 : 1,
  };
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

async function printed(path: string, plate: DrilledPlate, head: Head, given: PlateGiven): Promise<Said> {
  // Loaded only where something is printed.
  const { printPlateSheet } = await import("./booklet.ts");
  return printPlateSheet(path, given.force === true, {
    plate,
    head,
    inches: unitOf(given) === "in",
    ...(given.paper !== undefined && { paper: given.paper }),
  });
}
