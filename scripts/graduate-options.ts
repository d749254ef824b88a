import { waysBy } from "../src/index.ts";
import { headOptions, startOptions } from "./head-options.ts";
import { everywhere, type TableOf, toldAsData, toldAsTable } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

/** Every option of the graduate command. */
export const graduateOptions: typeof headOptions &
  typeof startOptions &
  typeof sheetOptions &
  typeof everywhere &
  typeof toldAsTable &
  TableOf<
    | "spaces"
    | "space"
    | "lead"
    | "marks"
    | "geared"
    | "vernier"
    | "over"
    | "long"
    | "medium"
    | "figure-every"
    | "figure-from"
    | "per-line"
    | "by",
    "two-sided" | "json"
  > = {
  spaces: { type: "string", value: "N", says: "spaces that are cut, one line more (all round; of a straight scale needed)" },
  space: { type: "string", value: "LENGTH", says: "of a straight scale, from line to line: 1, 0.5mm, 0.025in or 1/40in" },
  lead: { type: "string", value: "LENGTH", says: "travel of the table for one turn of its screw: 5, or 1/4in" },
  marks: { type: "string", value: "N", says: "marks of the screw's dial" },
  geared: {
    type: "string",
    value: "RATIO",
    says: "instead of its dial: turns of the screw for one of the head's spindle, 1 or 2/3",
  },
  vernier: { type: "string", value: "N", says: "cut the vernier to the scale instead, of so many spaces" },
  over: { type: "string", value: "M", says: "spaces of the main scale that these are as long as (N - 1)" },
  "two-sided": { type: "boolean", says: "its spaces on both sides of its zero" },
  long: { type: "string", value: "N", says: "every so many-th line is long, 0 for none (10)" },
  medium: { type: "string", value: "N", says: "every so many-th of the others is medium, 0 for none (5)" },
  "figure-every": { type: "string", value: "N", says: "every so many-th line has a figure, 0 for none (as the long ones)" },
  "figure-from": { type: "string", value: "X", says: "the figure at the first line (0); one below 0 as --figure-from=-90" },
  "per-line": { type: "string", value: "X", says: "what figures rise by from line to line: 1, 0.5 or 1/3 (1)" },
  by: { type: "string", value: "WAY", says: `${waysBy.join(", ")}; the best where not given`, words: waysBy },
  ...headOptions,
  ...startOptions,
  ...sheetOptions,
  ...toldAsData,
  ...toldAsTable,
  ...everywhere,
};
