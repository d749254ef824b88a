import { depthRules } from "../src/index.ts";
import { everywhere, type TableOf, toldAsData } from "./option-table.ts";

const ruleNames = depthRules.map(({ name }) => name);

/** The options that say what a gear is. */
export const gearOptions: TableOf<
  "module" | "dp" | "pressure-angle" | "shift" | "depth-rule" | "outside" | "depth" | "span" | "thinning"
> = {
  module: { type: "string", value: "M", says: "its pitch in mm" },
  dp: { type: "string", value: "P", says: "its pitch in teeth to the inch" },
  "pressure-angle": { type: "string", value: "A", says: "in degrees (20)" },
  shift: { type: "string", value: "X", says: "profile shift in modules (0)" },
  "depth-rule": {
    type: "string",
    value: "RULE",
    says: ruleNames.join(", "),
    words: ruleNames,
  },
  outside: { type: "string", value: "LENGTH", says: "over the tips, where it is not by the rule" },
  depth: { type: "string", value: "LENGTH", says: "from tip to root, as measured" },
  span: { type: "string", value: '"L over K"', says: "measured over K sound teeth: how thin they are; several with commas" },
  thinning: { type: "string", value: "LENGTH", says: "how much thinner than full the teeth are" },
};

/** Every option of the gear command. */
export const gearCommandOptions: typeof gearOptions &
  typeof everywhere &
  TableOf<"pins" | "chord" | "height" | "mate" | "centres" | "mate-outside" | "turns" | "mate-turns" | "most" | "limit", "json"> =
  {
    ...gearOptions,
    pins: { type: "string", value: "LENGTH", says: "the measure over pins of this diameter" },
    chord: {
      type: "string",
      value: '"L over K"',
      says: "of a piece of a gear: straight from a tip to the same side of the tip K teeth on",
    },
    height: { type: "string", value: "LENGTH", says: "from the middle of that chord up to the tips: with it no count is needed" },
    mate: { type: "string", value: "N", says: "teeth of the gear it runs with" },
    centres: { type: "string", value: "LENGTH", says: "between the shafts; with --mate" },
    "mate-outside": { type: "string", value: "LENGTH", says: "over the mate's tips; with --mate" },
    turns: { type: "string", value: "N", says: "turns of the gear until the marks meet" },
    "mate-turns": { type: "string", value: "N", says: "turns of the mate until then" },
    most: { type: "string", value: "N", says: "the most teeth it can have (400)" },
    limit: { type: "string", value: "N", says: "at most so many candidates (8)" },
    ...toldAsData,
    ...everywhere,
  };
