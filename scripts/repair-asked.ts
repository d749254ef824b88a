import { arcSeconds, type RepairOnHeadOptions, repairOnHead } from "../src/index.ts";
import { lengthsIn, repairWithTexts } from "../src/words/index.ts";
import { angleFromZero, fault, millimetres, wholeNumber } from "./command-line.ts";
import { askedAs, gearFrom, gearOptions, millimetresFromZero, pitchGiven, teethAsked, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { type Given, readOptions } from "./read-options.ts";
import { repairLines } from "./repair-words.ts";
import type { Said } from "./said.ts";
import { searchAsked, startAsked } from "./shared-options.ts";
import { version } from "./version.ts";
import { line } from "./words.ts";

const options = {
  ...gearOptions,
  damaged: { type: "string" },
  "start-space": { type: "string" },
  backlash: { type: "string" },
  "mate-thinning": { type: "string" },
  saw: { type: "string" },
  "saw-depth": { type: "string" },
  leave: { type: "string" },
  "off-centre": { type: "string" },
  "setting-error": { type: "string" },
  head: { type: "string" },
  mounted: { type: "string" },
  method: { type: "string" },
  "teeth-per-move": { type: "string" },
  "start-hole": { type: "string" },
  "start-angle": { type: "string" },
  minus: { type: "boolean" },
  sheet: { type: "string" },
  paper: { type: "string" },
  force: { type: "boolean" },
  json: { type: "boolean" },
  help: { type: "boolean", short: "h" },
  version: { type: "boolean" },
} as const;

type RepairGiven = Given<typeof options>;

/** `repair …`: all that a repair needs, in words, as data, and as a sheet to print. */
export async function repairAsked(words: readonly string[]): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, options, "repair --help");
  if (values.help === true) return { data: {}, lines: [repairHelp.trimEnd()], json: false };
  if (values.version === true) return { data: {}, lines: [version()], json: false };
  const teeth = teethAsked(positionals, "repair 86 --module 2 --damaged 31,32");
  if (!pitchGiven(values))
    throw fault(
      "missing",
      "",
      `the pitch is not given; add --module 2 or --dp 12, or find it with gear ${teeth} --outside LENGTH`,
    );
  checkTogether(values);
  const head = await headAsked(values.head);
  const gear = gearFrom(teeth, values);
  const repaired = askedAs(values, () => repairOnHead(head, gear, repairOptions(teeth, values)));
  const length = lengthsIn(unitOf(values));
  const sheet =
    values.sheet === undefined
      ? null
      : await printed(values.sheet, values, {
          job: repaired,
          head,
          inches: unitOf(values) === "in",
          sawGiven: values.saw !== undefined,
        });
  return {
    data: { ...repairWithTexts(repaired), ...(sheet !== null && { sheet: values.sheet }) },
    lines: [
      ...repairLines(repaired, head, length, values.saw !== undefined),
      ...(values.sheet === undefined ? [] : ["", line("Sheet", values.sheet)]),
    ],
    bytes: sheet?.bytes,
    json: values.json === true,
    code: repaired.exact ? 0 : 1,
  };
}

/** Refuses options that have no effect without another. */
function checkTogether(values: RepairGiven): void {
  if (values.damaged === undefined)
    throw fault("missing", "--damaged", "is needed: the damaged teeth by number, such as 31,32,33");
  for (const each of ["paper", "force"] as const) {
    if (values[each] !== undefined && values.sheet === undefined)
      throw fault("no-effect", `--${each}`, "goes with --sheet, the file to print to");
  }
  if (values.sheet === "-" && values.json === true)
    throw fault("conflict", "--sheet", "and --json cannot both go to the output; name a file for the sheet");
  if (values["mate-thinning"] !== undefined && values.backlash === undefined)
    throw fault("no-effect", "--mate-thinning", "is of no use without --backlash, what the pair may have; give both");
}

async function printed(
  path: string,
  { paper, force }: RepairGiven,
  sheet: import("../booklet/index.ts").RepairSheet,
): Promise<Said> {
  const { job: repaired } = sheet;
  if (!repaired.job.planned)
    throw fault(
      "cannot-be-made",
      "--sheet",
      `${repaired.gear.teeth} teeth cannot be set on this head, not even nearly, so there is nothing to print; try another head`,
    );
  // Kept apart from this file, which is packed: pdfkit is loaded only where something is printed.
  const { printRepairSheet } = await import("./booklet.ts");
  return printRepairSheet(path, force === true, { ...sheet, ...(paper !== undefined && { paper }) });
}

function repairOptions(teeth: number, given: RepairGiven): RepairOnHeadOptions {
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

/** What `repair --help` prints. */
export const repairHelp: string = `Everything for recutting damaged teeth, in the order of the work.

  turns-and-holes repair 86 --module 2 --damaged 31-33 --backlash 0.2
  turns-and-holes repair 97 --dp 12 --damaged 5,6 --head my-head.json \\
                         --sheet repair.pdf --paper letter

The gear, as for the gear command (gear --help)
  --module M, --dp P, --pressure-angle A, --shift X, --depth-rule RULE,
  --outside LENGTH, --depth LENGTH, --thinning LENGTH, --span "L over K"

The damage. Number the teeth in the order in which they come to the cutter;
space n follows tooth n
  --damaged LIST         the built-up teeth: 31,32,33 or 31-33
  --start-space N        a sound space to set the cutter by

What is allowed
  --backlash LENGTH      the most that the pair may have: how thin is too thin
  --mate-thinning LENGTH   the mate's part of it (half)
  --setting-error ANGLE  how far the work may be off besides: 0°2' or 30"
  --off-centre LENGTH    how far the cutter may be off
  --saw LENGTH           the slitting saw at hand; --saw-depth, --leave

Which head, and where it starts
  --head ID|FILE, --mounted PLATE, --method LIST, --teeth-per-move N,
  --start-hole N, --start-angle A, --minus

The sheet for the machine (PDF)
  --sheet FILE           where to write it
  --paper PAPER          a4, letter, a5 or half-letter (a4)
  --force                write over a file that is not of this program

Lengths are millimetres such as 2.5, or inches such as 0.1in. With a pitch in
DP or any length in inches the answer is in inches, but for --json.
  --json                 the answer as data

It ends with 0 when the setting is exact, 1 when it is near or there is none,
and 2 when the question could not be read.
`;
