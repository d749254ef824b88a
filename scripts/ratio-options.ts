import { everywhere, type TableOf, toldAsData } from "./option-table.ts";

/** Every option of the ratio command. */
export const ratioOptions: typeof everywhere & TableOf<"turns" | "turned" | "within" | "pairs" | "idlers" | "plate", "json"> = {
  turns: { type: "string", value: "N", says: "turns that the crank was given" },
  turned: { type: "string", value: "ANGLE", says: "how far the spindle came round by that: 90°, or 1 rev" },
  within: { type: "string", value: "ANGLE", says: "how far off that may be read, either way (1°)" },
  pairs: { type: "string", value: "N", says: "pairs of gears in the train that was put up, 1 or 2", words: ["1", "2"] },
  idlers: { type: "string", value: "N", says: "idlers in it, 0 to 3" },
  plate: {
    type: "string",
    value: "WAY",
    says: "which way the plate turned as the crank was turned forward",
    words: ["with", "against"],
  },
  ...toldAsData,
  ...everywhere,
};
