import {
  type BookForm,
  type BookletOptions,
  bookForms,
  bookletPdf,
  jobSheetPdf,
  type PaperName,
  type PartId,
  screenPage,
} from "../booklet/index.ts";
import { type Head, InputError } from "../src/index.ts";
import { bookletHelp } from "./booklet-help.ts";
import { allForms, bookletOptions, bookOptions, jobOptions } from "./booklet-options.ts";
import { budgetNames } from "./budget-asked.ts";
import { budgetOptions } from "./budget-options.ts";
import { fault, optionNames } from "./command-line.ts";
import { created } from "./created.ts";
import { inUnitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import { jobAsked, jobInName } from "./job-asked.ts";
import { numbersListed } from "./number-list.ts";
import { printDrawings } from "./print-drawings.ts";
import { printedTo } from "./printed-to.ts";
import { progress } from "./progress.ts";
import { type Given, readOptions, withOptionName } from "./read-options.ts";
import type { Said } from "./said.ts";
import { version } from "./version.ts";

export { bookletOptions } from "./booklet-options.ts";
export { printSheet } from "./print-sheet.ts";

/** Those that have no effect on drawings, which are files of their own size, nor on a screen, which answers everything. */
const ofPaper = ["paper", "tagged", ...Object.keys(bookOptions).filter((name) => name !== "as")];

type Asked = Given<typeof bookletOptions>;

/**
 * Prints a book as the words ask.
 *
 * @throws {@link InputError} in one sentence when something asked for is wrong; nothing is written then.
 */
export async function printBooklet(words: readonly string[], columns?: number): Promise<Said> {
  const asked = read(words);
  if (asked.help === true) return { code: 0, text: bookletHelp(columns) };
  if (asked.version === true) return { code: 0, text: `${version()}\n` };
  const head = await headAsked(asked.head);
  const force = asked.force === true;
  if (asked.as === "drawings") {
    const job = asked.job === undefined ? undefined : jobAsked(asked.job, asked);
    return printDrawings(head, { job, out: asked.out ?? `turns-and-holes-${head.id}-drawings`, force });
  }
  return printedTo(asked.out ?? usualName(head.id, asked), force, () => bytesOf(head, asked));
}

function usualName(id: string, { as = "pages", job }: Asked): string {
  const what = job === undefined ? (as === "pages" ? "" : `-${as}`) : `-job-${jobInName(job)}`;
  return `turns-and-holes-${id}${what}.${job === undefined && as === "screen" ? "html" : "pdf"}`;
}

async function bytesOf(head: Head, asked: Asked): Promise<Uint8Array> {
  if (asked.job !== undefined) return jobBytes(head, asked.job, asked);
  return asked.as === "screen" ? Buffer.from(screenPage(head)) : bookBytes(head, asked);
}

async function bookBytes(head: Head, asked: Asked): Promise<Uint8Array> {
  const { as = "pages", parts, degrees } = asked;
  const [from, to] = [count(asked.from ?? "2", "--from"), count(asked.to ?? "400", "--to")];
  if (to < from) throw fault("conflict", "--to", `${to} is below ${from}; give the smaller count first`);
  const { tell, end } = progress();
  return bookletPdf(head, {
    as: form(as),
    ...onPaper(asked),
    ...(asked.from === undefined ? {} : { from }),
    ...(asked.to === undefined ? {} : { to }),
    ...(parts === undefined ? {} : { parts: parts.split(",").map((part) => part.trim()) as PartId[] }),
    ...(degrees === undefined ? {} : { degreeTables: countsListed(degrees) }),
    ...(asked.inches === true && { inches: true }),
    onProgress: tell,
  })
    .catch((error: unknown) => {
      throw withOptionName(bookNames, error);
    })
    .finally(end);
}

/** What the library calls the options of a book. */
const bookNames: Readonly<Record<string, string>> = {
  from: "--from",
  to: "--to",
  parts: "--parts",
  degreeTables: "--degrees",
  paper: "--paper",
  as: "--as",
  tagged: "--tagged",
};

function jobBytes(head: Head, job: string, asked: Asked): Promise<Uint8Array> {
  const large = asked.as === "large";
  return jobSheetPdf(head, { ...jobAsked(job, asked), ...onPaper(asked), large }).catch((error: unknown) => {
    throw withOptionName({ ...optionNames, ...budgetNames, job: "--job" }, inUnitOf(asked, error));
  });
}

function onPaper({ paper, tagged = false }: Asked): Pick<BookletOptions, "paper" | "tagged" | "created"> {
  return { ...(paper !== undefined && { paper: paper as PaperName }), tagged, ...created() };
}

/** Reads the words, and refuses every option that would change nothing. */
function read(words: readonly string[]): Asked {
  const { values, positionals } = readOptions(words, bookletOptions, "--help");
  if (positionals.length > 0)
    throw fault(
      "unreadable",
      String(positionals[0]),
      "is not an option; name a head with --head, a file with --out, or ask for --help",
    );
  const idle = withoutEffect(values);
  if (idle.length === 0) return values;
  throw new InputError(
    idle.map(([name, problem]) => ({ code: "no-effect", place: `--${name}`, problem: `${problem}; leave it out` })),
  );
}

/** The options given that would change nothing, and why. */
function withoutEffect(values: Asked): readonly (readonly [name: string, problem: string])[] {
  const given = (names: readonly string[], problem: string) =>
    names.filter((name) => Object.hasOwn(values, name)).map((name) => [name, problem] as const);
  const isDrawings = values.as === "drawings";
  return [
    ...(values.as === "screen" ? given(ofPaper, "has no effect on a page for the screen") : []),
    ...(isDrawings ? given([...ofPaper, "radius", ...Object.keys(budgetOptions)], "has no effect on drawings") : []),
    ...(values.job === undefined ? given(Object.keys(jobOptions), "goes with --job, the sheet of one job") : []),
    ...(values.job !== undefined && !isDrawings
      ? given(
          Object.keys(bookOptions).filter((name) => name !== "as" || values.as !== "large"),
          "goes with a book and has no effect on a job sheet",
        )
      : []),
  ];
}

function form(text: string): BookForm {
  const found = bookForms.find((name) => name === text);
  if (found) return found;
  throw fault("unknown-word", "--as", `there is no form ${JSON.stringify(text)}; the forms are ${allForms.join(", ")}`);
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
