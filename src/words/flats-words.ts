import type { Flats } from "../machine/flats.ts";
import type { Item } from "./item.ts";
import { type LengthWords, lengthsIn, type Unit } from "./lengths.ts";

const names: Readonly<Record<number, string>> = { 3: "Triangle", 4: "Square", 5: "Pentagon", 6: "Hexagon", 8: "Octagon" };

/** Flats as a title: `HEXAGON, 17.000 mm across flats`; of an odd number nothing is across from a flat. */
export function flatsTitle(flats: Flats, unit: Unit): string {
  return `${shape(flats).toUpperCase()}, ${acrossWords(flats, lengthsIn(unit))}`;
}

/** The same in a heading: `Hexagon, 17.000 mm across flats`. */
export function flatsHeading(flats: Flats, unit: Unit): string {
  return `${shape(flats)}, ${acrossWords(flats, lengthsIn(unit))}`;
}

function shape({ sides }: Flats): string {
  return names[sides] ?? `${sides} flats`;
}

function acrossWords({ sides, acrossFlats }: Flats, length: LengthWords): string {
  return sides % 2 === 0 ? `${length(acrossFlats)} across flats` : `each flat ${length(acrossFlats / 2)} from the axis`;
}

/** The blank, the cut, and what is measured; what a drawing or room to write a measure has besides is said to be in figures. */
export function flatsItems(flats: Flats, unit: Unit): readonly Item[] {
  const { blank, depth, flatWidth, flatToRound, flatToCorner, acrossFlats, sides } = flats;
  const length = lengthsIn(unit);
  return [
    { term: "Blank", text: `a diameter of ${length(blank)}${cornerWords(flats, length)}` },
    { term: "Depth of cut", text: `${length(depth)} on each flat, from the round`, inFigures: true },
    { term: "Flat", text: `${length(flatWidth)} wide`, inFigures: true },
    { term: "Check", text: `over the first flat and the round opposite ${length(flatToRound)}`, inFigures: true },
    {
      term: "",
      inFigures: true,
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

/** The most measures in the end that are told. */
const mostMeasures = 3;

/** How flats are measured, and which is measured first. */
export const flatsHow = "Over each flat to what lies opposite; to the round before flat 2 is cut.";

/** What is measured, with its true length: `1 to round: 18.315`, then flats or corners opposite, spread round the work. */
export function flatMeasures({ sides, acrossFlats, flatToRound, flatToCorner }: Flats, unit: Unit): readonly string[] {
  const { bare } = lengthsIn(unit);
  const pairs = flatToCorner === null ? sides / 2 : sides;
  const told = Math.min(pairs, mostMeasures);
  return [
    `1 to round: ${bare(flatToRound)}`,
    ...Array.from({ length: told }, (_, index) => {
      const flat = 1 + Math.floor((index * pairs) / told);
      return flatToCorner === null
        ? `${flat} to ${flat + pairs}: ${bare(acrossFlats)}`
        : `${flat} to corner: ${bare(flatToCorner)}`;
    }),
  ];
}

/** What is minded when flats are milled, besides how the head is moved: general workshop practice, no source. */
export const flatsCautions: readonly Item[] = [
  {
    term: "Before",
    text: "Hold the work tight and true, and touch the cutter off on the round: the depth counts from there.",
  },
  {
    term: "First flat",
    text: "Cut it in two passes; stop the cutter, deburr, and measure to the round opposite before the second.",
  },
];

/** What is minded where no head turns the work: general workshop practice, no source. */
export const withoutHeadCautions: readonly Item[] = [
  {
    term: "Each flat",
    text: "Set its angle from the one zero, always turning the same way, lock, cut; never add one step to the last.",
  },
  { term: "Cutter", text: "No hand near the cutter until it stands." },
  {
    term: "First of all",
    text: "Before metal is cut make a light mark at every flat and count them. The machine's manual, local codes and qualified practice come first.",
  },
];
