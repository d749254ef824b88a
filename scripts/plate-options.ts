import { drilledBy } from "../src/index.ts";
import { headOptions, startOptions } from "./head-options.ts";
import { everywhere, type TableOf, toldAsData, toldAsTable } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

/** Every option of the plate command. */
export const plateOptions: typeof headOptions &
  typeof startOptions &
  typeof sheetOptions &
  typeof everywhere &
  typeof toldAsTable &
  TableOf<"diameter" | "by" | "serves" | "drill" | "within" | "step" | "chords", "clockwise" | "tangents" | "json"> = {
  diameter: { type: "string", value: "LENGTH", says: "of the circle, through the middles of its holes: 120, or 4.5in" },
  serves: {
    type: "string",
    value: "RATIO",
    says: "worm ratio of the head that the plate is for (that of the head that makes it)",
  },
  drill: { type: "string", value: "LENGTH", says: "the drill's diameter, to see what is left between two holes" },
  within: {
    type: "string",
    value: "LENGTH",
    says: "how far a hole may come to lie from where it was set (0); of an unknown plate, how far a measure may be off (0.05)",
  },
  by: {
    type: "string",
    value: "WAY",
    says: `${drilledBy.join(", ")}: the last by the slides of a table; the best of the head where not given`,
    words: drilledBy,
  },
  step: { type: "string", value: "LENGTH", says: "the finest step that the slides are set to (0.01, or 0.0005in)" },
  clockwise: { type: "boolean", says: "the holes follow clockwise; else the other way" },
  tangents: { type: "boolean", says: "coordinates all positive, from the left and bottom tangents" },
  chords: {
    type: "string",
    value: "LIST",
    says: "chords that were measured, middle to middle: 3.89 over 1, 84.16 over 24, 3.88 from 96 over 1",
  },
  ...headOptions,
  ...startOptions,
  ...sheetOptions,
  ...toldAsData,
  ...toldAsTable,
  ...everywhere,
};

/** What the library calls the things, and what the command does. */
export const plateNames: Readonly<Record<string, string>> = {
  holes: "",
  diameter: "--diameter",
  drill: "--drill",
  drillWithin: "--within",
  within: "--within",
  servesRatio: "--serves",
  step: "--step",
  by: "--by",
  measured: "--chords",
  startHole: "--start-hole",
  startAngle: "--start-angle",
  mounted: "--mounted",
  methods: "--method",
  teethPerMove: "--teeth-per-move",
  side: "--minus",
  sense: "--clockwise",
  origin: "--tangents",
};
