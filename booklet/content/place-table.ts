import type { ColumnHead } from "../../src/words/index.ts";
import type { Column } from "./blocks.ts";

/** A column of places or readings as a table of the book has it: what the hand sets is strong. */
export function columnOf({ head, group, sets }: ColumnHead): Column {
  return { head: head.replace(" of ", "\nof "), ...(group === undefined ? {} : { group }), align: "right", strong: sets };
}
