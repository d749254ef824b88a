#!/usr/bin/env node
import { realpathSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import {
  bookletPdf,
  jobSheetPdf,
  loadHead,
  type PaperName,
  type PartId,
  paperNames,
  partIds,
  wallPaperNames,
} from "../booklet/index.ts";
import { type Head, InputError, readyHeads } from "../src/index.ts";
import { fault, usualHead } from "./command-line.ts";
import { created } from "./created.ts";
import { numbersListed } from "./number-list.ts";
import { checkPlace, writeWhole } from "./own-file.ts";

export { printRepairSheet } from "./repair-sheet.ts";

const help = `Print the book for a head: every count with its setting, ready for any printer.

  npm run booklet                                      the first ready head, on A4
  npm run booklet -- --head ratio-40-faces-24-66       another ready head
  npm run booklet -- --head my-head.json --paper a5    your own head, as an A5 booklet
  npm run booklet -- --as booklet --paper a5           the same on A4, to print on both sides, fold and stitch
  npm run booklet -- --as wall --to 100                sheets in large type for the wall
  npm run booklet -- --job 127                         a sheet for one job, every position with a box to tick
  npm run booklet -- --job 62 --teeth 1,17-20          the same for the teeth named, in that order
  npm run booklet -- --to 200 --out ~/mine.pdf         fewer counts, to a file of your choice

  --head FILE-or-ID   a ready head or a JSON file that describes yours
  --as FORM           pages (the default), booklet (half sheets to fold) or wall (large type)
  --paper PAPER       ${paperNames.join(", ")}; for the wall ${wallPaperNames.join(", ")}
  --from N, --to N    the counts, 2 to 400 where not given
  --parts LIST        only these, with commas: ${partIds.slice(0, 7).join(", ")},
                      ${partIds.slice(7).join(", ")}
  --degrees LIST      degree tables, every position by dial and ring: 7,11,127 or 30-36
  --job N             a job sheet instead of a book; --teeth 1,17,40 for some of its teeth
  --out FILE          where to write; turns-and-holes-<head>.pdf or the like where not given
  --tagged            for screens and reading aloud: larger, with the order of reading and drawings in words
  --force             write over a file that is not a book of this program
  --help              this text

Ready heads: ${readyHeads.map(({ id }) => id).join(", ")}
`;

const options = {
  head: { type: "string" },
  as: { type: "string", default: "pages" },
  paper: { type: "string" },
  from: { type: "string", default: "2" },
  to: { type: "string", default: "400" },
  parts: { type: "string" },
  degrees: { type: "string" },
  job: { type: "string" },
  teeth: { type: "string" },
  out: { type: "string" },
  tagged: { type: "boolean", default: false },
  force: { type: "boolean", default: false },
  help: { type: "boolean", short: "h", default: false },
} as const;

/**
 * Prints a book as the words ask.
 *
 * @returns 0 when it is written.
 * @throws {@link InputError} in one sentence when something asked for is wrong; nothing is written then.
 */
export async function printBooklet(words: readonly string[]): Promise<number> {
  const asked = read(words);
  if (asked.help) {
    process.stdout.write(help);
    return 0;
  }
  const head = loadHead(asked.head ?? usualHead);
  const out = asked.out ?? usualName(head.id, asked);
  checkPlace(out, asked.force);
  const bytes = asked.job === undefined ? await bookBytes(head, asked) : await jobSheetPdf(head, jobFrom(asked.job, asked));
  writeWhole(out, bytes);
  process.stdout.write(`${out}\n`);
  return 0;
}

type Asked = ReturnType<typeof read>;

function usualName(id: string, { as, job }: Asked): string {
  const what = job === undefined ? (as === "pages" ? "" : `-${as}`) : `-job-${job}`;
  return `turns-and-holes-${id}${what}.pdf`;
}

function bookBytes(head: Head, asked: Asked): Promise<Uint8Array> {
  if (asked.teeth !== undefined) throw fault("no-effect", "--teeth", "goes with --job, the count whose teeth they are");
  const [from, to] = [count(asked.from, "--from"), count(asked.to, "--to")];
  if (to < from) throw fault("conflict", "--to", `${to} is below ${from}; give the smaller count first`);
  return bookletPdf(head, {
    as: form(asked.as),
    ...paper(asked),
    from,
    to,
    ...(asked.parts === undefined ? {} : { parts: asked.parts.split(",").map((part) => part.trim()) as PartId[] }),
    ...(asked.degrees === undefined ? {} : { degreeTables: countsListed(asked.degrees) }),
    tagged: asked.tagged,
    ...created(),
    onProgress: progress(),
  });
}

function jobFrom(job: string, asked: Asked) {
  if (!/^\d{1,8}$/.test(job) || Number(job) < 2)
    throw fault("out-of-range", "--job", `${JSON.stringify(job)} is not a count; give a whole number of 2 or more`);
  const teeth = asked.teeth === undefined ? undefined : numbersListed(asked.teeth, "--teeth");
  return {
    divisions: Number(job),
    ...(teeth === undefined ? {} : { teeth }),
    ...paper(asked),
    tagged: asked.tagged,
    ...created(),
  };
}

function paper({ paper: name }: Asked): { paper?: PaperName } {
  return name === undefined ? {} : { paper: name as PaperName };
}

function read(words: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true });
    if (positionals.length > 0)
      throw fault(
        "unreadable",
        String(positionals[0]),
        "is not an option; name a head with --head, a file with --out, or ask for --help",
      );
    return values;
  } catch (error) {
    if (error instanceof InputError) throw error;
    const message = error instanceof Error ? error.message.split(/[.\n]/)[0] : "cannot be read";
    throw fault("unreadable", "", `${message}; ask for --help`);
  }
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
