import { headOptions } from "./head-options.ts";
import { everywhere, type TableOf, toldAsData } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

/** Every option of the flats command. */
export const flatsOptions: typeof headOptions &
  typeof sheetOptions &
  typeof everywhere &
  TableOf<"across" | "blank", "degrees" | "json"> = {
  across: {
    type: "string",
    value: "LENGTH",
    says: "over two opposite flats; of an odd number twice what a flat stands from the axis",
  },
  blank: { type: "string", value: "LENGTH", says: "diameter of the round stock; alone, the largest with sharp corners" },
  ...headOptions,
  degrees: { type: "boolean", says: "no head: each flat by its degrees from the first" },
  ...sheetOptions,
  ...toldAsData,
  ...everywhere,
};
