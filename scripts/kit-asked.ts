import type { PaperName } from "../booklet/index.ts";
import { type Coverage, type CoverageOptions, coverage, type Head } from "../src/index.ts";
import { coverageWithWhys } from "../src/words/index.ts";
import { fault, optionNames } from "./command-line.ts";
import { headAsked } from "./head-asked.ts";
import { kitHelp } from "./kit-help.ts";
import { kitOptions } from "./kit-options.ts";
import { kitLines } from "./kit-words.ts";
import type { MoreOfJob } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { rangeAsked } from "./range-asked.ts";
import { type Given, readOptions, withOptionNames } from "./read-options.ts";
import type { Said } from "./said.ts";
import { searchAsked } from "./shared-options.ts";
import { version } from "./version.ts";
import { line } from "./words.ts";

type KitGiven = Given<typeof kitOptions>;

/** `kit …`: what a head does over a range, what it lacks, and what would add the most. */
export async function kitAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, kitOptions, "kit --help");
  if (values.help === true) return { data: {}, lines: [kitHelp(columns).trimEnd()], json: false };
  if (values.version === true) return { data: {}, lines: [version()], json: false };
  checkTogether(values);
  const asked = coverageAsked(positionals, values);
  const head = await headAsked(values.head);
  const names = { ...optionNames, from: "", to: "", want: "--want", circleSizes: "--circle-sizes", gearSizes: "--gear-sizes" };
  const answer = withOptionNames(names, () => coverage(head, asked));
  const sheet = values.sheet === undefined ? null : await printed(values.sheet, values, { head, asked });
  return {
    data: { kit: coverageWithWhys(answer), ...(sheet !== null && { sheet: values.sheet }) },
    lines: [...kitLines(answer, head), ...(values.sheet === undefined ? [] : ["", line("Sheet", values.sheet)])],
    bytes: sheet?.bytes,
    json: values.json === true,
    code: isDone(answer) ? 0 : 1,
  };
}

/** Whether all of the list is done, or of the range where no list was given. */
function isDone({ missing, want }: Coverage): boolean {
  return want === null ? missing.length === 0 : want.missing.length === 0 && want.left.length === 0;
}

function coverageAsked(positionals: readonly string[], given: KitGiven): CoverageOptions {
  const { want, "circle-sizes": circles, "gear-sizes": gears } = given;
  return {
    ...(positionals.length === 0 ? { from: 2, to: 400 } : rangeAsked(positionals.join(" "), "kit 2-400")),
    ...searchAsked(given),
    ...(want !== undefined && { want: numbersListed(want, "--want") }),
    ...(circles !== undefined && { circleSizes: numbersListed(circles, "--circle-sizes") }),
    ...(gears !== undefined && { gearSizes: numbersListed(gears, "--gear-sizes") }),
  };
}

function checkTogether(given: KitGiven): void {
  for (const each of ["paper", "force"] as const) {
    if (given[each] !== undefined && given.sheet === undefined)
      throw fault("no-effect", `--${each}`, "goes with --sheet, the file to print to");
  }
  if (given.sheet === "-" && given.json === true)
    throw fault("conflict", "--sheet", "and --json cannot both go to the output; name a file for the sheet");
}

async function printed(
  path: string,
  { paper, force }: KitGiven,
  { head, asked }: { readonly head: Head; readonly asked: CoverageOptions },
): Promise<Said> {
  // Loaded only where something is printed.
  const { printKitSheet } = await import("./booklet.ts");
  return printKitSheet(path, force === true, { head, ...asked, ...(paper !== undefined && { paper: paper as PaperName }) });
}
