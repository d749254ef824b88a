import { fault } from "./command-line.ts";

/** The options of a sheet beside an answer. */
interface SheetGiven {
  readonly sheet?: string;
  readonly paper?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** Refuses options of a sheet that have no effect without it, and two things for one output. */
export function checkSheet({ sheet, paper, force, json }: SheetGiven): void {
  for (const [name, value] of Object.entries({ paper, force }))
    if (value !== undefined && sheet === undefined)
      throw fault("no-effect", `--${name}`, "goes with --sheet, the file to print to");
  if (sheet === "-" && json === true)
    throw fault("conflict", "--sheet", "and --json cannot both go to the output; name a file for the sheet");
}
