import type { Flats } from "../machine/flats.ts";
import type { Item } from "./item.ts";
import { type LengthWords, lengthsIn, type Unit } from "./lengths.ts";

const names: Readonly<Record<number, string>> = { 3: "TRIANGLE", 4: "SQUARE", 5: "PENTAGON", 6: "HEXAGON", 8: "OCTAGON" };

/** Flats as a title: `HEXAGON, 17.000 mm across flats`; of an odd number nothing is across from a flat. */
export function flatsTitle({ sides, acrossFlats }: Flats, unit: Unit): string {
  const length = lengthsIn(unit);
  const across = sides % 2 === 0 ? `${length(acrossFlats)} across flats` : `each flat ${length(acrossFlats / 2)} from the axis`;
  return `${names[sides] ?? `${sides} FLATS`}, ${across}`;
}

/** The blank, the cut, and what is measured. */
export function flatsItems(flats: Flats, unit: Unit): readonly Item[] {
  const { blank, depth, flatWidth, flatToRound, flatToCorner, acrossFlats, sides } = flats;
  const length = lengthsIn(unit);
  return [
    { term: "Blank", text: `${length(blank)} in diameter${cornerWords(flats, length)}` },
    { term: "Depth of cut", text: `${length(depth)} on each flat, from the round` },
    { term: "Flat", text: `${length(flatWidth)} wide` },
    { term: "Check", text: `over the first flat and the round opposite ${length(flatToRound)}` },
    {
      term: "",
      text:
        flatToCorner === null
          ? `then over two flats ${length(acrossFlats)}`
          : `in the end over a flat and the corner opposite ${length(flatToCorner)}`,
    },
    ...(sides % 2 === 0 ? [{ term: "Two cutters", text: straddleWords(sides, length(acrossFlats)) }] : []),
  ];
}

/** Two opposite flats at once; the moves stay as they are, since half a turn would come back to the same pair. */
function straddleWords(sides: number, apart: string): string {
  const cuts = sides === 2 ? "one cut" : `${sides / 2} cuts, the same move between them`;
  return `that straddle the work ${apart} apart need only ${cuts}`;
}

function cornerWords({ acrossCorners, cornersSharp, blank }: Flats, length: LengthWords): string {
  if (acrossCorners === null) return "";
  if (!cornersSharp) return `: corners stay round, which would be sharp at ${length(acrossCorners)}`;
  return blank > acrossCorners * 1.000001
    ? `: corners come out sharp, ${length(acrossCorners)} across`
    : ", the least for sharp corners";
}
