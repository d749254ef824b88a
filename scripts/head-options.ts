import { allMethods, readyHeads } from "../src/index.ts";
import type { TableOf } from "./option-table.ts";

/** The head that is taken when none is named. */
export const usualHead: string = readyHeads[0]?.id ?? "";

/** Which head and which settings: options of every command that asks a head. */
export const headOptions: TableOf<"head" | "mounted" | "method" | "teeth-per-move"> = {
  head: {
    type: "string",
    value: "ID|FILE",
    says: `a ready head, your own as a JSON file, or - for one that comes in at the input (${usualHead} where none is named)`,
    words: readyHeads.map(({ id }) => id),
    file: true,
  },
  mounted: { type: "string", value: "PLATE", says: "the plate that is on the head now: preferred" },
  method: { type: "string", value: "LIST", says: `only these of ${allMethods.join(", ")}`, words: allMethods },
  "teeth-per-move": { type: "string", value: "N", says: "the most teeth to advance in one move, 1 to 1000 (12)" },
};

/** Where pin and scales stand at the start. */
export const startOptions: TableOf<"start-hole" | "start-angle", "minus"> = {
  "start-hole": { type: "string", value: "N", says: "the hole the pin starts in (0)" },
  "start-angle": { type: "string", value: "A", says: "where the ring and dial stand at tooth 1 (0)" },
  minus: { type: "boolean", says: "ring and dial fall from there; else they rise" },
};
