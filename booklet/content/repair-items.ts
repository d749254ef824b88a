import {
  errorAtRadius,
  flankDisplacement,
  type RepairOnHead,
  type SpurGear,
  type ThicknessCheck,
  type ToothRepair,
} from "../../src/index.ts";
import type { Item } from "./gear-items.ts";
import { fixed, type LengthWords, roundedDown, roundedUp } from "./length-words.ts";

/** The blank: what to turn before anything is cut. */
export function blankItems({ blankDiameter, depth }: ToothRepair, length: LengthWords): readonly Item[] {
  return [
    {
      term: "Blank",
      text: `turn the built-up teeth down to the sound tips, reckoned as ${length(blankDiameter)}; cut ${length(depth)} deep`,
    },
  ];
}

/** The slitting saw, and what it leaves. */
export function sawItems({ saw }: ToothRepair, length: LengthWords, given: boolean): readonly Item[] {
  const { width, greatestWidth, depth, leftOnFlank, leftAtRoot } = saw;
  const widest = `${length(roundedDown(greatestWidth, 2), 2)} wide at most`;
  const thinner = leftOnFlank.atBottom < leastToFile && !given ? ", better thinner" : "";
  return [
    { term: "Saw", text: `${widest}${thinner}, ${length(depth)} deep at most, set central` },
    {
      term: "It leaves",
      text: `with ${given ? `a saw of ${length(width, 2)}` : "the widest"}, on each flank ${length(leftOnFlank.atBottom)} at the bottom of the cut, ${length(leftOnFlank.atReference)} at the pitch circle; ${length(leftAtRoot)} under it; form cutter or file take the rest, the sound teeth being the guide`,
    },
  ];
}

/** In mm: less than this on a flank is nothing to file; our own choice. */
const leastToFile = 0.05;

/** One minute of the work and a tenth of a millimetre of the cutter: what they do at the flanks. */
const sample = { arcSeconds: 60, offCentre: 0.1 };

/** How true the work and the cutter must be set. */
export function centringItems({ gear, repair, settingError }: RepairOnHead, length: LengthWords): readonly Item[] {
  const { byAngle, byCentring } = flankDisplacement(gear, sample);
  const { together } = repair.displacement;
  const yours = [
    ...(settingError.arcSeconds > 0 ? [`${arcWords(settingError.arcSeconds)} of the work`] : []),
    ...(settingError.offCentre > 0 ? [`a cutter ${length(settingError.offCentre)} off centre`] : []),
  ];
  return [
    {
      term: "Centring",
      text: `each minute that the work is off moves a flank ${length(byAngle)} at the pitch circle; each ${length(sample.offCentre, 1)} that the cutter is off centre, ${length(byCentring)}`,
    },
    ...(yours.length === 0
      ? []
      : [
          {
            term: "Together",
            text: `${yours.join(" and ")} put a flank up to ${length(roundedUp(together, 4), 4)} off: a tooth beside a sound one as much too thin or thick`,
          },
        ]),
  ];
}

/** An angle that bounds an error, rounded upwards: `0.8″`, `3.5′`. */
export function arcWords(arcSeconds: number): string {
  if (arcSeconds >= 3600) return `${fixed(roundedUp(arcSeconds / 3600, 2), 2)}°`;
  return arcSeconds >= 120 ? `${fixed(roundedUp(arcSeconds / 60, 1), 1)}′` : `${fixed(roundedUp(arcSeconds, 1), 1)}″`;
}

/** An error at the pitch circle: `0.8″ (0.0004 mm at the pitch circle)`. */
export function errorAtPitch(arcSeconds: number, { referenceDiameter }: SpurGear, length: LengthWords): string {
  return `${arcWords(arcSeconds)}, ${length(roundedUp(errorAtRadius(arcSeconds, referenceDiameter / 2).mm, 4), 4)} at the pitch circle`;
}

/** A measure to check a rebuilt tooth by; null where no limit is known. */
export interface Check {
  readonly kind: "across" | "span" | "pins";
  readonly what: string;
  readonly most: string;
  readonly least: string | null;
}

/** What to measure on each rebuilt tooth, with the most and the least it may be. */
export function checksOf(gear: SpurGear, check: ThicknessCheck | null, length: LengthWords): readonly Check[] {
  const limits = (full: number, least: number | undefined) => ({
    most: length(full),
    least: least === undefined ? null : length(least),
  });
  const full = check?.full;
  const least = check?.least;
  const span = full?.span ?? gear.span;
  const pins = full?.overPins ?? null;
  return [
    ...(gear.chordalAddendum < 0
      ? []
      : [
          {
            kind: "across" as const,
            what: `Across the tooth, caliper blade set to ${length(full?.chordalAddendum ?? gear.chordalAddendum)}`,
            ...limits(full?.chordalThickness ?? gear.chordalThickness, least?.chordalThickness),
          },
        ]),
    ...(span === null
      ? []
      : [
          {
            kind: "span" as const,
            what: `Span over ${span.teeth} teeth, from a rebuilt tooth to a sound one`,
            ...limits(span.length, least?.span?.length),
          },
        ]),
    ...(pins === null
      ? []
      : [
          {
            kind: "pins" as const,
            what: `Over pins of ${length(pins.pinDiameter)}, one in a recut space, one in a sound one opposite`,
            ...limits(pins.length, least?.overPins?.length),
          },
        ]),
  ];
}

/** The spans of a repair by their teeth: `22–31`, the rebuilt one first named where it is the first. */
export function spansListed({ spansToCheck }: ToothRepair): readonly string[] {
  return spansToCheck.map(({ fromTooth, toTooth }) => `${fromTooth}–${toTooth}`);
}

/** How thin is too thin, in a sentence. */
export function thinItems({ check }: ToothRepair, length: LengthWords): readonly Item[] {
  if (check === null) return [{ term: "Too thin", text: "not known without the backlash that the pair may have" }];
  return [
    {
      term: "Too thin",
      text: `more than ${length(roundedDown(check.mayLose, 3))} lost along the pitch circle gives more backlash than was allowed`,
    },
  ];
}

/** A count of teeth in words: `tooth 31`, `teeth 31, 32 and 33`. */
export function teethInRuns(teeth: readonly number[]): string {
  const runs = runsOf(teeth).map(([from, to]) =>
    from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}–${to}`,
  );
  return `${teeth.length === 1 ? "tooth" : "teeth"} ${runs.join(", ")}`;
}

/** Runs of numbers that follow each other, as first and last. */
export function runsOf(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const open = runs.at(-1);
    if (open && open[1] === number - 1) open[1] = number;
    else runs.push([number, number]);
  }
  return runs;
}

/** The sense in which teeth and spaces are numbered. */
export const numbering = "Number the teeth in the order in which they come to the cutter; space n follows tooth n. Mark tooth 1.";
