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

/** What the two lists of a bolt circle are measured from. */
export function boltCircleWords({ mm, unit }: AtRadius, centre: { readonly x: number; readonly y: number } | null): string {
  const length = lengthsIn(unit);
  const zero =
    centre === null
      ? "from the left and bottom tangents of the circle, so that nothing is below 0"
      : `from your own zero, the centre lying at x ${length.bare(centre.x)}, y ${length.bare(centre.y)}`;
  return `In ${units[unit]}, on a diameter of ${length.bare(2 * mm)}; x to the right, y up. First signed from the centre, then ${zero}.`;
}

/** The straight distance between places, to check the work across. */
export function chordItem({ apart, length }: { readonly apart: number; readonly length: number }, lengths: LengthWords): Item {
  return {
    term: apart === 1 ? "Chord to next" : "Chord across",
    text: `${lengths(length)}, ${counted(apart, "division")} apart`,
  };
}
