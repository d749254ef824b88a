import { fault } from "./command-line.ts";
import type { MoreOfJob } from "./more.ts";
import type { TableOf } from "./option-table.ts";
import type { SheetKind, SheetOf } from "./print-sheet.ts";
import { insteadOfWords } from "./told-as.ts";
import { line } from "./words.ts";

/** The sheet that goes with an answer. */
export const sheetOptions: TableOf<"sheet" | "paper", "force"> = {
  sheet: { type: "string", value: "FILE", says: "where to write it, or - for the output instead of the words", file: true },
  paper: {
    type: "string",
    value: "PAPER",
    says: "a4, letter, a5 or half-letter (a4)",
    words: ["a4", "letter", "a5", "half-letter"],
  },
  force: { type: "boolean", says: "write over a file that is another program's, of another job, or was filled in" },
};

/** The same as given. */
interface SheetGiven {
  readonly sheet?: string;
  readonly paper?: string;
  readonly force?: boolean;
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly markdown?: boolean;
}

/** Refuses options of a sheet that have no effect without it, and two things for one output. */
export function checkSheet({ sheet, paper, force, ...given }: SheetGiven): void {
  for (const [name, value] of Object.entries({ paper, force }))
    if (value !== undefined && sheet === undefined)
      throw fault("no-effect", `--${name}`, "goes with --sheet, the file to print to");
  const told = insteadOfWords.find((name) => given[name] === true);
  if (sheet === "-" && told !== undefined)
    throw fault("conflict", "--sheet", `and --${told} cannot both go to the output; name a file for the sheet`);
}

/**
 * An answer with the sheet that was asked for beside it: printed, and told of.
 *
 * @param of - What the sheet is made from, asked for only where there is to be one.
 */
export async function withSheet<Kind extends SheetKind>(
  answer: MoreOfJob,
  { sheet: path, paper, force }: SheetGiven,
  kind: Kind,
  of: () => SheetOf<Kind>,
): Promise<MoreOfJob> {
  if (path === undefined) return answer;
  const sheet = of();
  // Loaded only where something is printed.
  const { printSheet } = await import("./booklet.ts");
  const { bytes } = await printSheet(kind, sheet, { path, paper, force: force === true });
  return {
    ...answer,
    data: { ...answer.data, sheet: path },
    lines: [...answer.lines, "", line("Sheet", path)],
    bytes,
  };
}
