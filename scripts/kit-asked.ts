import { type Coverage, type CoverageOptions, coverage } from "../src/index.ts";
import { coverageWithWhys } from "../src/words/index.ts";
import { optionNames } from "./command-line.ts";
import { headAsked } from "./head-asked.ts";
import { kitHelp } from "./kit-help.ts";
import { kitOptions } from "./kit-options.ts";
import { kitLines } from "./kit-words.ts";
import type { MoreOfJob } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { rangeAsked } from "./range-asked.ts";
import { type Given, readOptions, withOptionNames } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked } from "./shared-options.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";

type KitGiven = Given<typeof kitOptions>;

/** `kit …`: what a head does over a range, what it lacks, and what would add the most. */
export async function kitAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, kitOptions, "kit --help");
  const itself = toldOfItself(values, kitHelp, columns);
  if (itself !== null) return itself;
  checkSheet(values);
  const asked = coverageAsked(positionals, values);
  const head = await headAsked(values.head);
  const names = { ...optionNames, from: "", to: "", want: "--want", circleSizes: "--circle-sizes", gearSizes: "--gear-sizes" };
  const kit = withOptionNames(names, () => coverage(head, asked));
  const answer = {
    data: { kit: coverageWithWhys(kit) },
    lines: kitLines(kit, head),
    code: isDone(kit) ? 0 : 1,
    json: values.json === true,
  };
  return withSheet(answer, values, "kit", () => ({ kit, head }));
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
