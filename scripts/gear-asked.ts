import { countsFromMarks, identifyGear, overPins } from "../src/index.ts";
import { gearWithTexts, identificationWithTexts, lengthsIn } from "../src/words/index.ts";
import { fault, millimetres, wholeNumber } from "./command-line.ts";
import { askedAs, gearFrom, gearOptions, number, pitchGiven, readSpans, teethAsked, unitOf } from "./gear-options.ts";
import { candidateLines, gearLines, marksLines } from "./gear-words.ts";
import type { More, MoreOfJob } from "./more.ts";
import { type Given, readOptions } from "./read-options.ts";
import { version } from "./version.ts";
import { line } from "./words.ts";

const options = {
  ...gearOptions,
  pins: { type: "string" },
  mate: { type: "string" },
  centres: { type: "string" },
  "mate-outside": { type: "string" },
  turns: { type: "string" },
  "mate-turns": { type: "string" },
  most: { type: "string" },
  limit: { type: "string" },
  json: { type: "boolean" },
  help: { type: "boolean", short: "h" },
  version: { type: "boolean" },
} as const;

type GearAsked = Given<typeof options>;

/** `gear …`: the measures of a gear, what gear one is, or how many teeth it has. */
export function gearAsked(words: readonly string[]): MoreOfJob {
  const { values, positionals } = readOptions(words, options, "gear --help");
  const json = values.json === true;
  if (values.help === true) return { data: {}, lines: [gearHelp.trimEnd()], json: false };
  if (values.version === true) return { data: {}, lines: [version()], json: false };
  const byMarks = values.turns !== undefined || values["mate-turns"] !== undefined;
  if (byMarks) return { ...countAsked(values, positionals), json };
  const teeth = teethAsked(positionals, "gear 86 --module 2");
  if (pitchGiven(values)) return { ...measuresAsked(teeth, values), json };
  if (values.outside === undefined) {
    throw fault(
      "missing",
      "",
      "neither the pitch nor the outside diameter is given; add --module 2 or --dp 12, or --outside 176 to find the pitch",
    );
  }
  return { ...pitchAsked(teeth, values), json };
}

function measuresAsked(teeth: number, given: GearAsked): More {
  for (const each of ["mate", "centres", "mate-outside", "limit"] as const) {
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

function pitchAsked(teeth: number, given: GearAsked): More {
  for (const each of ["pins", "pressure-angle", "shift", "depth-rule", "thinning"] as const) {
    if (given[each] !== undefined) throw fault("missing", `--${each}`, "needs the pitch; add --module 2 or --dp 12");
  }
  if (given.mate === undefined) {
    for (const each of ["centres", "mate-outside"] as const) {
      if (given[each] !== undefined)
        throw fault("no-effect", `--${each}`, "tells nothing without the mate's teeth; add --mate 43");
    }
  }
  const measures = {
    teeth,
    tipDiameter: millimetres(given.outside ?? "", "--outside"),
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

/** What `gear --help` prints. */
export const gearHelp: string = `The measures of a spur gear, and what gear one is.

  turns-and-holes gear 86 --module 2              its measures; or --dp 12
  turns-and-holes gear 86 --outside 176           what gear is it?
  turns-and-holes gear --mate 24 --turns 12 --mate-turns 43
                                                  how many teeth, from marks

The gear
  --module M, --dp P     its pitch: in mm, or teeth to the inch
  --pressure-angle A     in degrees (20)
  --shift X              profile shift in modules (0)
  --depth-rule RULE      2.25, 2.157, 2.167, 2.4, 2.2+0.002in or 1.8-stub
  --outside LENGTH       over the tips, where it is not by the rule
  --depth LENGTH         from tip to root, as measured
  --thinning LENGTH      how much thinner than full the teeth are
  --span "L over K"      measured over K sound teeth: how thin they are
  --pins LENGTH          the measure over pins of this diameter

What gear is it? Measure what you can; two spans tell the pressure angle
  --outside LENGTH       over the tips
  --depth LENGTH         from tip to root
  --span "L over K, L over K"
  --mate N               teeth of the gear it runs with, and with them
  --centres LENGTH         between the shafts
  --mate-outside LENGTH    over the mate's tips
  --limit N              at most so many candidates (8)

How many teeth? Mark a tooth of each where they mesh; turn until both marks
meet again for the first time
  --mate N               teeth of the mate
  --turns N              turns of the gear
  --mate-turns N         turns of the mate
  --most N               the most teeth it can have (400)

Lengths are millimetres such as 176, or inches such as 6.93in. With a pitch in
DP or any length in inches the answer is in inches, but for --json.
  --json                 the answer as data
`;
