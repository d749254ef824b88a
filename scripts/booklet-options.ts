import { bookForms, paperNames, partIds, wallPaperNames } from "../booklet/index.ts";
import { waysBy } from "../src/index.ts";
import { budgetOptions } from "./budget-options.ts";
import { headOptions, startOptions } from "./head-options.ts";
import { everywhere, type TableOf } from "./option-table.ts";

/** The forms that something can be printed in. */
export const allForms: readonly string[] = [...bookForms, "drawings", "screen"];

/** The options that go with a book alone. */
export const bookOptions: TableOf<"as" | "from" | "to" | "parts" | "degrees", "inches"> = {
  as: {
    type: "string",
    value: "FORM",
    says: "pages (the default), large (the same in large type), booklet (half sheets to fold), wall (sheets for the wall), poster and card (the counts that shops use most), drawings (SVG files, at true size), or screen (one file for a phone, without a network)",
    words: allForms,
  },
  from: { type: "string", value: "N", says: "the first count (2)" },
  to: { type: "string", value: "N", says: "the last count (400)" },
  parts: { type: "string", value: "LIST", says: `only these, with commas: ${partIds.join(", ")}`, words: partIds },
  degrees: {
    type: "string",
    value: "LIST",
    says: "every position of these counts, by dial and ring or the nearest holes: 7,11,127 or 30-36",
  },
  inches: { type: "boolean", says: "chords of the plate check in inches" },
};

const { head, ...search } = headOptions;

/** The options that go with `--job`. */
export const jobOptions: Omit<typeof headOptions, "head"> &
  typeof startOptions &
  typeof budgetOptions &
  TableOf<"teeth" | "every" | "by" | "radius"> = {
  teeth: { type: "string", value: "LIST", says: "some of its teeth, in this order: 1,17,40" },
  every: { type: "string", value: "N", says: "all its teeth, every so many-th first" },
  by: { type: "string", value: "WAY", says: `${waysBy.join(", ")}; the best where not given`, words: waysBy },
  ...search,
  ...startOptions,
  radius: { type: "string", value: "LENGTH", says: "of the work, for --budget: 50, or 2in" },
  ...budgetOptions,
};

/** Every option of the booklet command. */
export const bookletOptions: Pick<typeof headOptions, "head"> &
  typeof everywhere &
  typeof bookOptions &
  typeof jobOptions &
  TableOf<"paper" | "job" | "out", "tagged" | "force"> = {
  head,
  paper: {
    type: "string",
    value: "PAPER",
    says: `${paperNames.join(", ")}; for the wall ${wallPaperNames.join(", ")}`,
    words: [...new Set([...paperNames, ...wallPaperNames])],
  },
  job: { type: "string", value: "JOB", says: "a job sheet instead of a book: a count or an angle" },
  out: {
    type: "string",
    value: "FILE",
    says: "where to write, or - for the output; turns-and-holes-<head>.pdf or the like where not given; of drawings, a directory",
    file: true,
  },
  tagged: {
    type: "boolean",
    says: "for screens and reading aloud: larger, with the order of reading and drawings in words",
  },
  force: {
    type: "boolean",
    says: "write over a file that is another program's, of another job, or was filled in",
  },
  ...everywhere,
  ...bookOptions,
  ...jobOptions,
};
