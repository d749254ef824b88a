import { type FormCutter, type FormCutters, formCutters } from "../../gear/form-cutter.ts";
import type { SpurGear } from "../../gear/spur-gear.ts";
import type { Item } from "../item.ts";
import { plain } from "../numbers.ts";
import { pitchName } from "./gear-items.ts";

/** The form cutter by its range and by its number in both numberings. */
export function cutterItems(gear: SpurGear): readonly Item[] {
  const cutters = formCutters(gear);
  if (cutters === null)
    return [{ term: "Form cutter", text: "none is made for so few teeth: grind a fly cutter to a sound space, or file to it" }];
  return [
    { term: "Form cutter", text: `${pitchName(gear)}, ${plain(gear.pressureAngle)}°, ${both(cutters.inch, cutters.reversed)}` },
    ...half(cutters),
    { term: "", text: "numbers run both ways: go by the range of teeth on the cutter, not by its number alone" },
  ];
}

function half({ inch, inchHalf, reversedHalf }: FormCutters): readonly Item[] {
  if (inchHalf === null || reversedHalf === null) return [];
  return inchHalf.number === inch.number && inchHalf.to === inch.to && inchHalf.from === inch.from
    ? []
    : [{ term: "", text: `or with half numbers, ${both(inchHalf, reversedHalf)}` }];
}

function both(inch: FormCutter, reversed: FormCutter): string {
  return `for ${range(inch)}: number ${inch.number} (if 1 is the rack) or ${reversed.number} (if 8 is)`;
}

/** The teeth that a cutter is for: `55 to 134 teeth`, `135 teeth to a rack`. */
function range({ from, to }: FormCutter): string {
  return to === null ? `${from} teeth to a rack` : from === to ? `${from} teeth` : `${from} to ${to} teeth`;
}
