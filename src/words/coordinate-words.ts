import type { Item } from "./item.ts";
import { type LengthWords, lengthsIn } from "./lengths.ts";
import type { AtRadius } from "./near-words.ts";
import { counted } from "./numbers.ts";

const units = { mm: "millimetres", in: "inches" } as const;

/** What a list of coordinates is measured in and from. */
export function coordinatesWords({ mm, unit }: AtRadius, origin: "centre" | "tangents"): string {
  const from = origin === "tangents" ? "the left and bottom tangents" : "the centre";
  return `Coordinates in ${units[unit]} on a radius of ${lengthsIn(unit).bare(mm)}, from ${from}; x to the right, y up:`;
}

/** The straight distance between places, to check the work across. */
export function chordItem({ apart, length }: { readonly apart: number; readonly length: number }, lengths: LengthWords): Item {
  return {
    term: apart === 1 ? "Chord to next" : "Chord across",
    text: `${lengths(length)}, ${counted(apart, "division")} apart`,
  };
}
