import { everywhere, type TableOf, toldAsData } from "./option-table.ts";

/** Every option of the bolt circle command. */
export const boltCircleOptions: typeof everywhere &
  TableOf<"diameter" | "start-angle" | "centre", "clockwise" | "json" | "csv" | "markdown"> = {
  diameter: { type: "string", value: "LENGTH", says: "of the circle through the middles of the holes" },
  "start-angle": { type: "string", value: "A", says: "where hole 1 lies, from the right upwards (0)" },
  clockwise: { type: "boolean", says: "the holes follow clockwise; else the other way" },
  centre: {
    type: "string",
    value: "X,Y",
    says: "where the centre lies from a zero of your own; else the zero is on the left and bottom tangents",
  },
  ...toldAsData,
  csv: { type: "boolean", says: "the table alone, for a spreadsheet: one value a cell" },
  markdown: { type: "boolean", says: "the same table in Markdown" },
  ...everywhere,
};
