import type { Head } from "../head/head.ts";
import type { CheckedChord, PlateCheck } from "../machine/check-plate.ts";
import type { Check } from "../machine/checks.ts";
import type { DrilledPlate } from "../machine/drill-plate.ts";
import type { PlateErrors } from "../machine/hole-errors.ts";
import type { HoleChord } from "../machine/plate-chords.ts";
import type { UnknownPlate } from "../machine/unknown-plate.ts";
import type { Way } from "../machine/way.ts";
import { errorAtRadius } from "../number/error-at-radius.ts";
import type { Ratio } from "../number/ratio.ts";
import { type CheckTelling, checkItem } from "./check-words.ts";
import type { Item } from "./item.ts";
import { goingOn, otherWayItems } from "./job-words.ts";
import type { LengthWords } from "./lengths.ts";
import { arcUpTo, counted, fixed, signedArc, withPlus } from "./numbers.ts";

/** Decimals of an error along a circle, in mm. */
const errorPlaces = 4;
/** Decimals of a chord, as a caliper and a micrometer read. */
const chordPlaces = 3;
/** As a caliper reads, of a diameter that was given. */
const sizePlaces = 2;

/** A circle by its holes and its diameter: `97 holes on 120.00 mm`. */
export function circleWords({ count, diameter }: Pick<DrilledPlate, "count" | "diameter">, length: LengthWords): string {
  return `${counted(count, "hole")} on a circle of ${length(diameter, sizePlaces)}`;
}

/** How far off a drilled circle is, and what that becomes where it serves. */
export function plateErrorItems(plate: DrilledPlate, length: LengthWords): readonly Item[] {
  const { diameter, wallMm, drillWithin, servesRatio, next } = plate;
  const ofDrill = drillWithin === 0 ? "" : `, ${length(drillWithin)} for the drill among it`;
  const isTrue = plate.worstHoleMm === 0;
  return [
    {
      term: "Off by",
      text: isTrue
        ? "nothing: every hole is set exactly"
        : `no hole over ${length.upTo(plate.worstHoleMm, errorPlaces)} along its circle (${arcUpTo(ofPlate(plate, diameter))} of the plate${ofDrill})`,
    },
    ...(isTrue ? [] : [{ term: "At the spindle", text: atSpindle(plate, servesRatio) }]),
    ...(next === null || next.worstHoleMm === 0
      ? []
      : [
          {
            term: "Made again",
            text: `a second plate of as many holes, drilled through this one there: no hole over ${length.upTo(next.worstHoleMm, errorPlaces)}, ${arcUpTo(next.atSpindleArcSeconds)} at its spindle`,
          },
        ]),
    { term: "Not in it", text: notInIt },
    ...(wallMm === null ? [] : [{ term: "Between holes", text: `${length.downTo(wallMm, sizePlaces)} is left` }]),
  ];
}

/** The other ways to make a near plate: those of the head, and the slides of a table where they are better. */
export function otherPlateItems(plate: DrilledPlate, bySlides: DrilledPlate | null, length: LengthWords): readonly Item[] {
  if (plate.by === "coordinates" || plate.plan.exact) return [];
  const others = otherWayItems(plate.plan.others).slice(0, mostOthers);
  if (bySlides === null || bySlides.by !== "coordinates" || bySlides.worstHoleMm >= plate.worstHoleMm) return others;
  const text = `by coordinates to ${length(bySlides.step)}: no hole over ${length.upTo(bySlides.worstHoleMm, errorPlaces)}`;
  return [{ term: "Or", text }, ...others.map(({ text: other }) => ({ term: "", text: other }))];
}

const mostOthers = 3;

const notInIt =
  "the worm wheel that makes it: what that is off comes into the holes and is divided with them; and the worm wheel that it serves on, whose own error no plate lessens";

function atSpindle({ atSpindleArcSeconds, betweenHolesArcSeconds }: PlateErrors, servesRatio: Ratio): string {
  return `${arcUpTo(atSpindleArcSeconds)} on a worm ratio of ${servesRatio}:1, which divides it; from any hole to any other no more than ${arcUpTo(betweenHolesArcSeconds)}`;
}

/** In arc-seconds of the plate. */
function ofPlate({ worstHoleMm }: PlateErrors, diameter: number): number {
  return worstHoleMm / errorAtRadius(1, diameter / 2).mm;
}

/** What is done at each hole, in its order. */
export function eachHoleItem(way: Way, head: Head): Item {
  return { term: "Each hole", text: `Unlock, ${goingOn(way, head)}, lock, drill.` };
}

/** A check on the way as {@link checkItem} tells it, of what is numbered from 0: holes of a plate, lines of a scale. */
export function checkFromZero(check: Check, way: Way, telling: CheckTelling & { readonly noun: string }): Item {
  const { place } = check;
  return checkItem({ ...check, place: { ...place, tooth: place.tooth - 1 } }, way, telling);
}

/** The chords to measure on a plate, each with its holes: `0 to 24`. */
export function chordItems(chords: readonly HoleChord[], length: LengthWords): readonly Item[] {
  return chords.map(({ from, to, ratio, length: mm }, index) => ({
    term: index === 0 ? "Chords" : "",
    text: `${between({ from, to })}: ${mm === null ? `${fixed(ratio, factorPlaces)} diameters` : length(mm, chordPlaces)}`,
  }));
}

const factorPlaces = 5;

/** How the slides of a table are brought to a figure: general workshop practice, no source. */
export const slidesOneWay: Item = {
  term: "One way",
  text: "Come to each figure from the same side, in x and in y, so that the screws' slack is always taken up.",
};

/** What is minded when a bolt circle is drilled: general workshop practice, no source. */
export const boltCircleCautions: readonly Item[] = [
  {
    term: "Zero",
    text: "Find the centre or the corner, set both slides to the figures that it has here, and see that they still show them in the end.",
  },
  slidesOneWay,
  { term: "Clamp", text: "Hold the work so that it can neither lift nor turn, nothing that is not to be drilled under a hole." },
  {
    term: "Spot first",
    text: "Go to every hole with a spot drill and make a mark, count the marks, measure the chords over them. Then drill, and deburr both sides.",
  },
  { term: "Drill", text: "No hand near it until it stands; clear chips with a brush. Lock the slides while it cuts." },
  { term: "First of all", text: "The machine's manual, local codes and qualified practice come before this sheet." },
];

/** The holes of a chord: `0 to 24`. */
export function between({ from, to }: Pick<HoleChord, "from" | "to">): string {
  return `${from} to ${to}`;
}

/** How a chord is measured. */
export const chordsHow =
  "A pin that fits in each of two holes, measured over both, less one pin. The last space is as long as the first where the circle closes.";

/** A chord that was measured, against the true one, in the cells of a row. */
export function checkedCells(chord: CheckedChord, length: LengthWords): readonly string[] {
  const { length: mm, trueLength, offMm, alongMm, atSpindleArcSeconds } = chord;
  const signed = (off: number) => withPlus(length.bare(off, chordPlaces));
  return [
    between(chord),
    length.bare(mm, chordPlaces),
    length.bare(trueLength, chordPlaces),
    signed(offMm),
    alongMm === null ? "–" : signed(alongMm),
    atSpindleArcSeconds === null ? "–" : signedArc(atSpindleArcSeconds),
  ];
}

/** The heads over those cells. */
export const checkedHeads: readonly string[] = ["holes", "measured", "true", "off by", "along", "at the spindle"];

/** What the chords of a plate say of it. */
export function plateCheckItems(check: PlateCheck, length: LengthWords): readonly Item[] {
  const { diameter, diameterGiven, worstAlongMm, atSpindleArcSeconds, servesRatio } = check;
  return [
    {
      term: "Circle",
      text: `${length(diameter, chordPlaces)} through the middles of the holes${diameterGiven ? "" : ", by which the chords fit best"}`,
    },
    {
      term: "Worst",
      text:
        worstAlongMm === null || atSpindleArcSeconds === null
          ? "not told: chords nearly across tell the diameter alone; measure shorter ones"
          : `${length.upTo(worstAlongMm, chordPlaces)} along the circle, ${arcUpTo(atSpindleArcSeconds)} at the spindle of a worm ratio of ${servesRatio}:1`,
    },
  ];
}

/** Which count and diameter an unknown circle has. */
export function plateFoundItems(found: UnknownPlate, length: LengthWords): readonly Item[] {
  const { candidates, unlisted, spacesToTellApart } = found;
  if (candidates.length === 0)
    return [
      { term: "Holes", text: `none that fits all the measures${nearestWords(found, length)}` },
      { term: "", text: "count the spaces again, measure again, or allow more" },
    ];
  return [
    ...candidates.map(({ holes, diameter, offMm }, index) => ({
      term: index === 0 ? "Holes" : "or",
      text: `${holes} on ${length(diameter, sizePlaces)}, no measure over ${length.upTo(offMm, chordPlaces)} off`,
    })),
    ...(unlisted > 0 ? [{ term: "", text: `and ${counted(unlisted, "other count")} that fit; measure over more spaces` }] : []),
    ...(spacesToTellApart === null
      ? []
      : [
          {
            term: "To tell apart",
            text: `measure over ${counted(spacesToTellApart, "space")} as well, as closely, and ask again with all`,
          },
        ]),
  ];
}

function nearestWords({ nearest }: UnknownPlate, length: LengthWords): string {
  if (nearest === null) return "";
  return `; the nearest is ${nearest.holes} on ${length(nearest.diameter, sizePlaces)}, with a measure ${length(nearest.offMm, chordPlaces)} off`;
}

/** How far a hole set by coordinates is off, along its circle and out of it, in mm or inches: `+0.0031`. */
export function coordinateErrors(
  { errorMm, outMm }: { readonly errorMm: number; readonly outMm: number },
  length: LengthWords,
): readonly [along: string, out: string] {
  return [withPlus(length.bare(errorMm, errorPlaces)), withPlus(length.bare(outMm, errorPlaces))];
}
