import { countsFromMarks, type Fragment, identifyGear, overPins } from "../src/index.ts";
import { gearWithTexts, identificationWithTexts, lengthsIn } from "../src/words/index.ts";
import { fault, millimetres, wholeNumber } from "./command-line.ts";
import { gearHelp } from "./gear-help.ts";
import { gearCommandOptions } from "./gear-option-table.ts";
import { askedAs, gearFrom, number, pitchGiven, readSpans, teethAsked, unitOf } from "./gear-options.ts";
import { candidateLines, gearLines, marksLines } from "./gear-words.ts";
import type { More, MoreOfJob } from "./more.ts";
import { type Given, readOptions } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { line } from "./words.ts";

type GearAsked = Given<typeof gearCommandOptions>;

/** `gear …`: the measures of a gear, what gear one is, or how many teeth it has. */
export function gearAsked(words: readonly string[], columns?: number): MoreOfJob {
  const { values, positionals } = readOptions(words, gearCommandOptions, "gear --help");
  const json = values.json === true;
  const itself = toldOfItself(values, gearHelp, columns);
  if (itself !== null) return itself;
  const byMarks = values.turns !== undefined || values["mate-turns"] !== undefined;
  if (byMarks) return { ...countAsked(values, positionals), json };
  // The chord of a piece with its height tells the count.
  const isByPiece = positionals.length === 0 && values.chord !== undefined && !pitchGiven(values);
  const teeth = isByPiece ? null : teethAsked(positionals, "gear 86 --module 2");
  if (teeth !== null && pitchGiven(values)) return { ...measuresAsked(teeth, values), json };
  if (findsPitch.every((name) => values[name] === undefined)) {
    throw fault(
      "missing",
      "",
      "neither the pitch nor the outside diameter is given; add --module 2 or --dp 12, or --outside 176 to find the pitch, or where the tips are lost --mate 43 --centres 129, two of --span, or --chord",
    );
  }
  return { ...pitchAsked(teeth, values), json };
}

/** What a pitch can be found by. */
const findsPitch = ["outside", "span", "chord", "height", "centres", "mate-outside"] as const;

function measuresAsked(teeth: number, given: GearAsked): More {
  for (const each of ["mate", "centres", "mate-outside", "chord", "height", "limit"] as const) {
    if (given[each] !== undefined)
      throw fault("no-effect", `--${each}`, "helps to find a pitch, which is given; leave it out, or the pitch");
  }
  const gear = gearFrom(teeth, given);
  const length = lengthsIn(unitOf(given));
  const pin = given.pins === undefined ? null : millimetres(given.pins, "--pins");
  const measure = pin === null ? null : askedAs(given, () => overPins(gear, pin), { pinDiameter: "--pins" });
  return {
    data: { gear: gearWithTexts(gear), ...(pin !== null && { overPins: { pinDiameter: pin, length: measure } }) },
    lines: [
      ...gearLines(gear, length),
      ...(pin === null || measure === null
        ? []
        : ["", line("Over your pins", `${length(measure)} over two pins of ${length(pin)}`)]),
    ],
  };
}

function pitchAsked(teeth: number | null, given: GearAsked): More {
  for (const each of ["pins", "pressure-angle", "shift", "depth-rule", "thinning"] as const) {
    if (given[each] !== undefined) throw fault("missing", `--${each}`, "needs the pitch; add --module 2 or --dp 12");
  }
  if (given.mate === undefined) {
    for (const each of ["centres", "mate-outside"] as const) {
      if (given[each] !== undefined)
        throw fault("no-effect", `--${each}`, "tells nothing without the mate's teeth; add --mate 43");
    }
  }
  if (given.chord === undefined && given.height !== undefined)
    throw fault("no-effect", "--height", 'is over a chord, which is not given; add --chord "63.1 over 8"');
  const measures = {
    ...(teeth !== null && { teeth }),
    ...(given.outside !== undefined && { tipDiameter: millimetres(given.outside, "--outside") }),
    ...(given.chord !== undefined && { fragment: fragmentRead(given.chord, given.height) }),
    ...(given.depth !== undefined && { wholeDepth: millimetres(given.depth, "--depth") }),
    ...(given.span !== undefined && { spans: readSpans(given.span) }),
    ...(given.mate !== undefined && { mateTeeth: wholeNumber(given.mate, "--mate") }),
    ...(given.centres !== undefined && { centreDistance: millimetres(given.centres, "--centres") }),
    ...(given["mate-outside"] !== undefined && { mateTipDiameter: millimetres(given["mate-outside"], "--mate-outside") }),
  };
  const most = given.limit === undefined ? {} : { limit: number(given.limit, "--limit") };
  const identification = askedAs(given, () => identifyGear(measures, most));
  return {
    data: { identification: identificationWithTexts(identification) },
    lines: candidateLines(teeth, identification, lengthsIn(unitOf(given))),
  };
}

/** Reads a chord such as `63.1 over 8`, and its height. */
function fragmentRead(text: string, height: string | undefined): Fragment {
  const [, chord, pitches] = /^\s*(.+?)\s+over\s+(\d{1,4})(?:\s+teeth)?\s*$/.exec(text) ?? [];
  if (chord === undefined || pitches === undefined)
    throw fault(
      "unreadable",
      "--chord",
      `"${text.slice(0, 40)}" is not a chord; give its length and the teeth on, such as "63.1 over 8"`,
    );
  return {
    chord: millimetres(chord, "--chord"),
    pitches: Number(pitches),
    ...(height !== undefined && { height: millimetres(height, "--height") }),
  };
}

/** The most teeth that the library looks among where none is given. */
const usualMost = 400;

/** The counts that marks which meet again could mean. */
function countAsked(given: GearAsked, positionals: readonly string[]): More {
  if (positionals.length > 0)
    throw fault("no-effect", "", `"${positionals[0]?.slice(0, 40)}" is a count, which the marks are to tell; leave it out`);
  if (given.mate === undefined) throw fault("missing", "--mate", "is needed: the teeth of the other gear, which are known");
  const { mate, turns, "mate-turns": mateTurns, most } = given;
  const marks = {
    mateTeeth: wholeNumber(mate, "--mate"),
    ...(turns !== undefined && { turns: wholeNumber(turns, "--turns") }),
    ...(mateTurns !== undefined && { mateTurns: wholeNumber(mateTurns, "--mate-turns") }),
    ...(most !== undefined && { most: wholeNumber(most, "--most") }),
  };
  const counts = askedAs(given, () => countsFromMarks(marks));
  return { data: { counts }, lines: marksLines(counts, { most: usualMost, ...marks }) };
}
