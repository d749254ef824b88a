import { waysBy } from "../src/index.ts";
import { budgetOptions } from "./budget-options.ts";
import { headOptions, startOptions } from "./head-options.ts";
import { everywhere, type TableOf, toldAsTable } from "./option-table.ts";
import type { Given } from "./read-options.ts";

/** Every option of a question. */
export const options: typeof headOptions &
  typeof startOptions &
  typeof budgetOptions &
  typeof everywhere &
  TableOf<
    "limit" | "radius" | "teeth" | "every" | "after" | "by" | "ring" | "gears" | "plate" | "propose" | "uneven",
    "all" | "near" | "proof" | "nearer" | "coordinates" | "clockwise" | "tangents" | "unpaired" | "json" | "csv" | "markdown"
  > = {
  ...headOptions,
  all: { type: "boolean", says: "every method that does it, not only the preferred" },
  limit: { type: "string", value: "N", says: "list so many settings, and no more" },
  near: {
    type: "boolean",
    says: "the nearest settings too, with their errors; where nothing is exact they are always there",
  },
  radius: { type: "string", value: "LENGTH", says: "of the work, to show errors as lengths: 50, or 2in" },
  ...budgetOptions,
  proof: { type: "boolean", says: "the proof in full, and how it was shown" },
  teeth: { type: "string", value: "LIST|all", says: "the positions of these teeth (3,4,31-33), in this order" },
  every: {
    type: "string",
    value: "N",
    says: "all teeth, every so many-th first, so that heat and spring spread: 1, 8, 15 … by 7",
  },
  after: { type: "string", value: "TOOTH", says: "what is left to do after this tooth" },
  by: {
    type: "string",
    value: "WAY",
    says: "how they are set: by moves, made over and over; or each by itself, by nearest-hole, both-cranks, nearest-direct, dial or ring. Left out: an exact setting, else whatever is the least off",
    words: waysBy,
  },
  ring: { type: "string", value: "ANGLE", says: "the tooth that the degree ring stands at" },
  ...startOptions,
  nearer: { type: "boolean", says: "go back where that is nearer; else always onward" },
  coordinates: { type: "boolean", says: "x and y of every tooth on --radius, and the chords" },
  clockwise: { type: "boolean", says: "their teeth follow clockwise; else the other way" },
  tangents: { type: "boolean", says: "all of them positive, from the left and bottom tangents" },
  gears: { type: "string", value: "A/B", says: "gears of the move: 56/24, or 64*44/24*40" },
  plate: {
    type: "string",
    value: "WAY",
    says: "which way they turn the plate: with the crank or against it",
    words: ["with", "against"],
  },
  propose: { type: "string", value: "FLUTES", says: "unequal spaces for so many flutes, every place on a hole" },
  uneven: { type: "string", value: "ANGLE", says: "how far off even they may be (a thirtieth of a space)" },
  unpaired: { type: "boolean", says: "no flute opposite another; else an even number has them in pairs" },
  json: { type: "boolean", says: "the answer as data, and a refusal too; lengths in millimetres" },
  ...toldAsTable,
  ...everywhere,
};

/** The name of an option, as it is typed after `--`. */
export type OptionName = keyof typeof options;

/** The options that were given, still in words. */
export type Options = Given<typeof options>;
