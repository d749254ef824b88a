import { everywhere, type TableOf, toldAsData, toldAsTable } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

/** Every option of the bolt circle command. */
export const boltCircleOptions: typeof everywhere &
  typeof sheetOptions &
  typeof toldAsTable &
  TableOf<"diameter" | "start-angle" | "centre", "clockwise" | "json"> = {
  diameter: { type: "string", value: "LENGTH", says: "of the circle through the middles of the holes" },
  "start-angle": { type: "string", value: "A", says: "where hole 1 lies, from the right upwards (0)" },
  clockwise: { type: "boolean", says: "the holes follow clockwise; else the other way" },
  centre: {
    type: "string",
    value: "X,Y",
    says: "where the centre lies from a zero of your own; else the zero is on the left and bottom tangents",
  },
  ...sheetOptions,
  ...toldAsData,
  ...toldAsTable,
  ...everywhere,
};
