import type { BoltCircleSheet } from "../booklet/index.ts";
import { checkChords, coordinates } from "../src/index.ts";
import { type AtRadius, boltCircleColumns, boltCircleWords, chordItem, counted, lengthsIn } from "../src/words/index.ts";
import { boltCircleHelp } from "./bolt-circle-help.ts";
import { boltCircleOptions } from "./bolt-circle-options.ts";
import { angleFromZero, fault, millimetres, millimetresFromZero, optionNames } from "./command-line.ts";
import { unitOf } from "./gear-options.ts";
import type { More, MoreOfJob } from "./more.ts";
import { type Given, readOptions, withOptionNames } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";
import { table } from "./table.ts";
import { toldAs } from "./told-as.ts";
import { itemLines, paragraph } from "./words.ts";

type BoltCircleGiven = Given<typeof boltCircleOptions>;

/** `bolt-circle …`: the holes of a circle by coordinates, in words, as data, and as a sheet to print. */
export async function boltCircleAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, boltCircleOptions, "bolt-circle --help");
  const itself = toldOfItself(values, boltCircleHelp, columns);
  if (itself !== null) return itself;
  const holes = holesAsked(positionals);
  if (values.diameter === undefined)
    throw fault("missing", "--diameter", "is needed: of the circle through the holes, such as 80");
  checkSheet(values);
  const as = toldAs(values);
  const circle = circleAsked(holes, values.diameter, values);
  return withSheet({ ...toldOf(circle), ...as }, values, "bolt-circle", () => circle);
}

function circleAsked(holes: number, diameter: string, given: BoltCircleGiven): BoltCircleSheet {
  return {
    holes,
    diameter: millimetres(diameter, "--diameter"),
    sense: given.clockwise === true ? "clockwise" : "counter-clockwise",
    ...(given["start-angle"] !== undefined && { startAngle: angleFromZero(given["start-angle"], "--start-angle") }),
    ...(given.centre !== undefined && { centre: centreRead(given.centre) }),
    inches: unitOf(given) === "in",
  };
}

function toldOf({ holes, diameter, startAngle, sense, centre, inches }: BoltCircleSheet): More {
  const radius: AtRadius = { mm: diameter / 2, unit: inches ? "in" : "mm" };
  const layout = { radius: radius.mm, startAngle, sense };
  const names = { ...optionNames, divisions: "" };
  const signed = withOptionNames(names, () => coordinates(holes, layout));
  const positive = withOptionNames(names, () => coordinates(holes, { ...layout, origin: centre ?? "tangents" }));
  const chords = checkChords(holes, radius.mm);
  const lengths = lengthsIn(radius.unit);
  return {
    data: { boltCircle: { fromCentre: signed, fromZero: positive, chords } },
    table: boltCircleColumns(signed, positive, radius.unit),
    lines: [
      `BOLT CIRCLE OF ${counted(holes, "hole").toUpperCase()}`,
      paragraph(boltCircleWords(radius, centre ?? null)),
      "",
      ...table([
        { head: "hole", cells: signed.map(({ tooth }) => String(tooth)) },
        { head: "x", cells: signed.map(({ x }) => lengths.bare(x)) },
        { head: "y", cells: signed.map(({ y }) => lengths.bare(y)) },
        { head: "x from zero", cells: positive.map(({ x }) => lengths.bare(x)) },
        { head: "y from zero", cells: positive.map(({ y }) => lengths.bare(y)) },
      ]),
      "",
      ...itemLines(chords.map((each) => chordItem(each, lengths))),
    ],
  };
}

function holesAsked([text, more]: readonly string[]): number {
  if (text === undefined) throw fault("missing", "", "how many holes? Begin with the count, such as bolt-circle 6 --diameter 80");
  if (more !== undefined) throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one count of holes`);
  if (/^\d{1,8}$/.test(text)) return Number(text);
  throw fault(
    "unreadable",
    "",
    `"${text.slice(0, 40)}" is not a count of holes; give a whole number, such as bolt-circle 6 --diameter 80`,
  );
}

/** Reads `75,50`. */
function centreRead(text: string): { readonly x: number; readonly y: number } {
  const [x, y, more] = text.split(",");
  if (x === undefined || y === undefined || more !== undefined)
    throw fault(
      "unreadable",
      "--centre",
      `"${text.slice(0, 40)}" is not where a centre lies; give x and y with a comma, such as 75,50`,
    );
  return { x: millimetresFromZero(x, "--centre"), y: millimetresFromZero(y, "--centre") };
}
