import { headOptions } from "./head-options.ts";
import { everywhere, type OptionSpec, type TableOf, toldAsData } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

type OfHead = Pick<typeof headOptions, "head" | "method" | "teeth-per-move">;

const { head, method, "teeth-per-move": teethPerMove }: OfHead = headOptions;
const force: OptionSpec & { readonly type: "boolean" } = {
  type: "boolean",
  says: "write over a file that is another program's, or of another kit",
};

/** Every option of the kit command. */
export const kitOptions: OfHead &
  typeof sheetOptions &
  typeof everywhere &
  TableOf<"want" | "circle-sizes" | "gear-sizes", "json"> = {
  want: { type: "string", value: "LIST", says: "counts that you want, in the range or beyond it: 61,67,96,127" },
  "circle-sizes": { type: "string", value: "LIST", says: "circles that you could have drilled (2-200)" },
  "gear-sizes": {
    type: "string",
    value: "LIST",
    says: "gears that you could have, such as 20-80; left out, those of most sets of change gears",
  },
  head,
  method,
  "teeth-per-move": teethPerMove,
  ...sheetOptions,
  force,
  ...toldAsData,
  ...everywhere,
};
