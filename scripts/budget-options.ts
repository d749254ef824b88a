import type { TableOf } from "./option-table.ts";

/** What the error of a work is made of, besides the setting: options of a look-up and of a job sheet. */
export const budgetOptions: TableOf<"run-out" | "hole-error" | "circle-diameter" | "worm-error" | "read-within", "budget"> = {
  budget: { type: "boolean", says: "what the error is made of at --radius, and which part of it matters" },
  "run-out": {
    type: "string",
    value: "LENGTH",
    says: "all that an indicator shows on the work over a turn, lowest to highest: twice what it is off centre",
  },
  "hole-error": { type: "string", value: "LENGTH", says: "the most that two holes of the circle are off against each other" },
  "circle-diameter": { type: "string", value: "LENGTH", says: "of that circle, where the head's file does not say" },
  "worm-error": { type: "string", value: "ANGLE", says: "of worm and wheel, where the head's file does not say: 0°0'20\"" },
  "read-within": {
    type: "string",
    value: "ANGLE",
    says: "how near a dial or ring is set (half the least of a vernier, else a tenth of a mark)",
  },
};
