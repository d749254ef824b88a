import { arcSeconds, identifyGear, type RepairOnHead, type RepairOnHeadOptions, repairOnHead } from "../src/index.ts";
import { lengthsIn, repairWithTexts } from "../src/words/index.ts";
import { angleFromZero, fault, millimetres, millimetresFromZero, wholeNumber } from "./command-line.ts";
import { askedAs, gearFrom, pitchGiven, readSpans, teethAsked, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { type Given, readOptions } from "./read-options.ts";
import { repairHelp } from "./repair-help.ts";
import { repairOptions } from "./repair-options.ts";
import { repairLines } from "./repair-words.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked, startAsked } from "./shared-options.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";

type RepairGiven = Given<typeof repairOptions>;

/** `repair …`: all that a repair needs, in words, as data, and as a sheet to print. */
export async function repairAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, repairOptions, "repair --help");
  const itself = toldOfItself(values, repairHelp, columns);
  if (itself !== null) return itself;
  const teeth = teethAsked(positionals, "repair 86 --module 2 --damaged 31,32");
  if (!pitchGiven(values)) throw fault("missing", "", `the pitch is not given; ${howToFind(teeth, values)}`);
  checkTogether(values);
  const head = await headAsked(values.head);
  const gear = gearFrom(teeth, values);
  const repaired = askedAs(values, () => repairOnHead(head, gear, repairOn(teeth, values)));
  const length = lengthsIn(unitOf(values));
  const sawGiven = values.saw !== undefined;
  const answer = {
    data: { ...repairWithTexts(repaired) },
    lines: repairLines(repaired, head, length, sawGiven),
    json: values.json === true,
    code: repaired.exact ? 0 : 1,
  };
  return withSheet(answer, values, "repair", () => {
    checkPlanned(repaired);
    return { job: repaired, head, inches: length.unit === "in", sawGiven };
  });
}

/** How the pitch is found; where enough was measured, what it would be. A repair is never reckoned with a guess. */
function howToFind(teeth: number, values: RepairGiven): string {
  const { outside, span, depth } = values;
  const spans = span === undefined ? [] : readSpans(span);
  if (outside === undefined && spans.length < 2)
    return `add --module 2 or --dp 12, or find it with gear ${teeth} --outside LENGTH, or where the tips are lost with two of --span, or with --mate and --centres`;
  const measures = {
    teeth,
    ...(outside !== undefined && { tipDiameter: millimetres(outside, "--outside") }),
    ...(depth !== undefined && { wholeDepth: millimetres(depth, "--depth") }),
    ...(spans.length > 0 && { spans }),
  };
  const [likeliest] = askedAs(values, () => identifyGear(measures)).candidates;
  const option = likeliest?.system === "diametral pitch" ? `--dp ${likeliest.diametralPitch}` : `--module ${likeliest?.module}`;
  return `by what was measured it is likeliest ${likeliest?.name}: add ${option} once gear ${teeth}, asked with the same measures, leaves no doubt`;
}

/** Refuses options that have no effect without another. */
function checkTogether(values: RepairGiven): void {
  if (values.damaged === undefined)
    throw fault("missing", "--damaged", "is needed: the damaged teeth by number, such as 31,32,33");
  checkSheet(values);
  if (values["mate-thinning"] !== undefined && values.backlash === undefined)
    throw fault("no-effect", "--mate-thinning", "is of no use without --backlash, what the pair may have; give both");
}

function checkPlanned({ job, gear }: RepairOnHead): void {
  if (!job.planned)
    throw fault(
      "cannot-be-made",
      "--sheet",
      `${gear.teeth} teeth cannot be set on this head, not even nearly, so there is nothing to print; try another head`,
    );
}

function repairOn(teeth: number, given: RepairGiven): RepairOnHeadOptions {
  const { "start-space": start, backlash, "mate-thinning": mate } = given;
  return {
    damaged: numbersListed(given.damaged ?? "", "--damaged", teeth),
    ...(start !== undefined && { startSpace: wholeNumber(start, "--start-space") }),
    ...(backlash !== undefined && { backlash: millimetresFromZero(backlash, "--backlash") }),
    ...(mate !== undefined && { mateThinning: millimetresFromZero(mate, "--mate-thinning") }),
    saw: sawFrom(given),
    settingError: {
      arcSeconds: given["setting-error"] === undefined ? 0 : arcSeconds(angleFromZero(given["setting-error"], "--setting-error")),
      offCentre: given["off-centre"] === undefined ? 0 : millimetresFromZero(given["off-centre"], "--off-centre"),
    },
    places: { ...searchAsked(given), ...startAsked(given) },
  };
}

function sawFrom({ saw, "saw-depth": depth, leave }: RepairGiven): RepairOnHeadOptions["saw"] & object {
  return {
    ...(saw !== undefined && { width: millimetres(saw, "--saw") }),
    ...(depth !== undefined && { depth: millimetres(depth, "--saw-depth") }),
    ...(leave !== undefined && { leave: millimetresFromZero(leave, "--leave") }),
  };
}
