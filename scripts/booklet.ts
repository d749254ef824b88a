#!/usr/bin/env node
import { realpathSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  type BookletOptions,
  bookletPdf,
  jobSheetPdf,
  loadHead,
  type PaperName,
  type PartId,
  paperNames,
  partIds,
  wallPaperNames,
} from "../booklet/index.ts";
import { allMethods, type Head, InputError, readyHeads } from "../src/index.ts";
import { fault, optionNames, usualHead } from "./command-line.ts";
import { created } from "./created.ts";
import { jobAsked, jobInName, jobOptions } from "./job-asked.ts";
import { numbersListed } from "./number-list.ts";
import { checkPlace, writeWhole } from "./own-file.ts";
import { type Given, readOptions, withOptionName } from "./read-options.ts";
import { ways } from "./shared-options.ts";

export { printRepairSheet } from "./repair-sheet.ts";

const help = `Print the book for a head: every count with its setting.

  turns-and-holes booklet                              the first ready head, A4
  turns-and-holes booklet --head ratio-40-faces-24-66  another ready head
  turns-and-holes booklet --head my-head.json --paper a5
                                        your own head, as an A5 booklet
  turns-and-holes booklet --as booklet --paper a5
                                        the same on A4, to print on both
                                        sides, fold and stitch
  turns-and-holes booklet --as wall --to 100
                                        sheets in large type for the wall
  turns-and-holes booklet --job 127     a sheet for one job, every position
                                        with a box to tick
  turns-and-holes booklet --job "2°54'" the same for an angle
  turns-and-holes booklet --job 62 --teeth 1,17-20
                                        for the teeth named, in that order
  turns-and-holes booklet --to 200 --out ~/mine.pdf
                                        fewer counts, to a file of your choice
In a copy of the sources "npm run booklet --" stands for the first two words.

  --head FILE-or-ID   a ready head or a JSON file that describes yours
  --paper PAPER       ${paperNames.join(", ")}; for the wall
                      ${wallPaperNames.join(", ")}
  --out FILE          where to write; turns-and-holes-<head>.pdf or the like
                      where not given
  --tagged            for screens and reading aloud: larger, with the order
                      of reading and drawings in words
  --force             write over a file that is not a book of this program
  --help              this text

The book
  --as FORM           pages (the default), booklet (half sheets to fold) or
                      wall (large type)
  --from N, --to N    the counts, 2 to 400 where not given
  --parts LIST        only these, with commas:
                      ${partIds.slice(0, 6).join(", ")},
                      ${partIds.slice(6, 11).join(", ")},
                      ${partIds.slice(11).join(", ")}
  --degrees LIST      degree tables, every position by dial and ring: 7,11,127
                      or 30-36

A job sheet instead: --job COUNT or ANGLE
  --teeth LIST        some of its teeth, in this order: 1,17,40
  --by WAY            ${ways.join(", ")}; the best where not given
  --method LIST       only these of ${allMethods.join(", ")}
  --teeth-per-move N  the most teeth to advance in one move (12)
  --mounted PLATE     the plate that is on the head now: preferred
  --start-hole N      the hole the pin starts in (0)
  --start-angle A     where ring and dial stand at tooth 1 (0)
  --minus             ring and dial fall from there; else they rise

Ready heads
${readyHeads.map(({ id }) => `  ${id}`).join("\n")}
`;

/** The options that go with a book alone. */
const bookOptions = {
  as: { type: "string" },
  from: { type: "string" },
  to: { type: "string" },
  parts: { type: "string" },
  degrees: { type: "string" },
} as const;

const options = {
  head: { type: "string" },
  paper: { type: "string" },
  job: { type: "string" },
  out: { type: "string" },
  tagged: { type: "boolean" },
  force: { type: "boolean" },
  help: { type: "boolean", short: "h" },
  ...bookOptions,
  ...jobOptions,
} as const;

type Asked = Given<typeof options>;

/**
 * Prints a book as the words ask.
 *
 * @returns 0 when it is written.
 * @throws {@link InputError} in one sentence when something asked for is wrong; nothing is written then.
 */
export async function printBooklet(words: readonly string[]): Promise<number> {
  const asked = read(words);
  if (asked.help === true) {
    process.stdout.write(help);
    return 0;
  }
  const head = loadHead(asked.head ?? usualHead);
  const out = asked.out ?? usualName(head.id, asked);
  checkPlace(out, asked.force === true);
  const bytes = asked.job === undefined ? await bookBytes(head, asked) : await jobBytes(head, asked.job, asked);
  writeWhole(out, bytes);
  process.stdout.write(`${out}\n`);
  return 0;
}

function usualName(id: string, { as = "pages", job }: Asked): string {
  const what = job === undefined ? (as === "pages" ? "" : `-${as}`) : `-job-${jobInName(job)}`;
  return `turns-and-holes-${id}${what}.pdf`;
}

function bookBytes(head: Head, asked: Asked): Promise<Uint8Array> {
  const { as = "pages", parts, degrees } = asked;
  const [from, to] = [count(asked.from ?? "2", "--from"), count(asked.to ?? "400", "--to")];
  if (to < from) throw fault("conflict", "--to", `${to} is below ${from}; give the smaller count first`);
  return bookletPdf(head, {
    as: form(as),
    ...onPaper(asked),
    from,
    to,
    ...(parts === undefined ? {} : { parts: parts.split(",").map((part) => part.trim()) as PartId[] }),
    ...(degrees === undefined ? {} : { degreeTables: countsListed(degrees) }),
    onProgress: progress(),
  });
}

function jobBytes(head: Head, job: string, asked: Asked): Promise<Uint8Array> {
  return jobSheetPdf(head, { ...jobAsked(job, asked), ...onPaper(asked) }).catch((error: unknown) => {
    throw withOptionName({ ...optionNames, job: "--job" }, error);
  });
}

function onPaper({ paper, tagged = false }: Asked): Pick<BookletOptions, "paper" | "tagged" | "created"> {
  return { ...(paper !== undefined && { paper: paper as PaperName }), tagged, ...created() };
}

/** Reads the words, and refuses every option that would change nothing. */
function read(words: readonly string[]): Asked {
  const { values, positionals } = readOptions(words, options, "--help");
  if (positionals.length > 0)
    throw fault(
      "unreadable",
      String(positionals[0]),
      "is not an option; name a head with --head, a file with --out, or ask for --help",
    );
  const idle = Object.keys(values.job === undefined ? jobOptions : bookOptions).filter((name) => Object.hasOwn(values, name));
  if (idle.length === 0) return values;
  const goesWith =
    values.job === undefined ? "goes with --job, the sheet of one job" : "goes with a book and has no effect on a job sheet";
  throw new InputError(idle.map((name) => ({ code: "no-effect", place: `--${name}`, problem: `${goesWith}; leave it out` })));
}

function form(text: string): "pages" | "booklet" | "wall" {
  if (text === "pages" || text === "booklet" || text === "wall") return text;
  throw fault("unknown-word", "--as", `there is no form ${JSON.stringify(text)}; the forms are pages, booklet and wall`);
}

const mostCounts = 5000;

function count(text: string, place: string): number {
  if (/^\d{1,4}$/.test(text) && Number(text) >= 2 && Number(text) <= mostCounts) return Number(text);
  throw fault(
    "out-of-range",
    place,
    `${JSON.stringify(text)} is not a count for a book; give a whole number from 2 to ${mostCounts}`,
  );
}

const mostTables = 200;

/** Reads `7,11,30-36`. */
function countsListed(text: string): readonly number[] {
  const counts = numbersListed(text, "--degrees", mostTables);
  if (counts.length <= mostTables) return counts;
  throw fault(
    "too-many",
    "--degrees",
    `${JSON.stringify(text)} names too many counts; give up to ${mostTables}, such as 7,11,30-36`,
  );
}

/** Says on the error stream what is being done, once it takes over a second. */
function progress(): (doing: string) => void {
  const start = performance.now();
  return (doing) => {
    if (performance.now() - start > 1000) process.stderr.write(`… ${doing}\n`);
  };
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    process.exitCode = await printBooklet(process.argv.slice(2));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 2;
  }
}
