import { checkPlate, type DrillOptions, type MeasuredChord, plateFromChords } from "../src/index.ts";
import { checkedCells, checkedHeads, type LengthWords, plateCheckItems, plateFoundItems } from "../src/words/index.ts";
import { fault, millimetres, millimetresFromZero } from "./command-line.ts";
import { askedAs } from "./gear-options.ts";
import type { MoreOfJob } from "./more.ts";
import { plateNames, type plateOptions } from "./plate-options.ts";
import type { Given } from "./read-options.ts";
import { table } from "./table.ts";
import { itemLines } from "./words.ts";

type PlateGiven = Given<typeof plateOptions>;

/** The options that go with chords; others would change nothing. */
const ofChords: ReadonlySet<string> = new Set(["chords", "diameter", "json"]);

/**
 * A plate that is there, by its chords: checked where the count of its holes is known, else found out.
 *
 * @param holes - Null where they are not known.
 */
export function plateMeasured(holes: number | null, given: PlateGiven, length: LengthWords): Omit<MoreOfJob, "json"> {
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
  const plateCheck = askedAs(given, () => checkPlate(holes, chords, { ...diameter, servesRatio }), plateNames);
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
  const plateFound = askedAs(given, () => plateFromChords(chords, { ...diameter, within }), plateNames);
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
