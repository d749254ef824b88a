import { leastDiameter, mostDiameter, mostHoles } from "../head/plate.ts";
import { checkKeys, keysOf, oneOf } from "../number/check-options.ts";
import { numberFault, quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { lengthSentence, said } from "../number/length-sentence.ts";
import { parseRational } from "../number/parse-rational.ts";
import { groupDigits, isPositive, type Ratio, type Revolutions, toRatio } from "../number/ratio.ts";
import { type SearchOptions, searchKeys } from "../search/exact-settings.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import { type CircleLayout, chord } from "./coordinates.ts";
import { type Way, waysBy } from "./way.ts";
import type { Side } from "./zero.ts";

/** A circle of holes to be drilled, and how. */
export interface DrillOptions extends SearchOptions {
  /** Of the circle, through the middles of its holes, in mm; 1 to 2,000. */
  readonly diameter: number;
  /** How the holes are gone to; left out, by whatever way of the head is best. `"coordinates"` asks no head. */
  readonly by?: Way["by"] | "coordinates" | undefined;
  /** The setting to follow, as an answer of the same head and count gave it; left out, the best. Not by coordinates. */
  readonly setting?: Setting | NearSetting | undefined;
  /** The worm ratio of the head that the plate is to serve on; left out, that of the head that makes it. */
  readonly servesRatio?: number | string | undefined;
  /** Of the drill, in mm: what is left between two holes is told, and is not to be nothing; left out, not looked at. */
  readonly drill?: number | undefined;
  /** How far a hole may come to lie from where the drill was set, along the circle, in mm; left out, 0. */
  readonly drillWithin?: number | undefined;
  /** As of a plan. Not by coordinates. */
  readonly startHole?: number | undefined;
  /** Where ring and dial stand at the first hole, or by coordinates where it lies from the +x axis; in revolutions. */
  readonly startAngle?: Revolutions | undefined;
  /** As of a plan. Not by coordinates. */
  readonly side?: Side | undefined;
  /** By coordinates: the finest step that the table is set to, in mm; left out, 0.01. */
  readonly step?: number | undefined;
  /** By coordinates: which way the holes follow; left out, counter-clockwise. */
  readonly sense?: CircleLayout["sense"];
  /** By coordinates: from the centre, or all positive from the tangents; left out, the centre. */
  readonly origin?: "centre" | "tangents" | undefined;
}

/** All that a circle can be made by. */
export const drilledBy: readonly (Way["by"] | "coordinates")[] = Object.freeze([...waysBy, "coordinates"] as const);

const drillKeys: readonly string[] = keysOf<DrillOptions>({
  ...searchKeys,
  diameter: true,
  by: true,
  setting: true,
  servesRatio: true,
  drill: true,
  drillWithin: true,
  startHole: true,
  startAngle: true,
  side: true,
  step: true,
  sense: true,
  origin: true,
});

const onlyByCoordinates: readonly (keyof DrillOptions)[] = ["step", "sense", "origin"];
const onlyOnHead: readonly (keyof DrillOptions)[] = [
  ...(Object.keys(searchKeys) as (keyof SearchOptions)[]),
  "setting",
  "startHole",
  "side",
];

/** Checks the circle and its options; an option that would change nothing is refused. */
export function checkDrilling(holes: unknown, options: DrillOptions): void {
  checkHoles(holes);
  checkKeys(options, drillKeys, "options");
  const { diameter, by, drill, drillWithin = 0 } = options;
  checkDiameter(diameter);
  if (by !== undefined) oneOf(by, drilledBy, "by");
  const [idle, why] =
    by === "coordinates"
      ? ([onlyOnHead, "goes with a way of the head and has no effect by coordinates"] as const)
      : ([onlyByCoordinates, "has no effect but by coordinates"] as const);
  const given = idle.find((key) => options[key] !== undefined);
  if (given !== undefined) refuse("no-effect", given, `${why}; leave it out`);
  const apart = chord(holes as number, diameter / 2);
  if (drill !== undefined) checkDrill(drill, apart);
  if (typeof drillWithin !== "number" || !(drillWithin >= 0 && drillWithin < apart / 2))
    refuse(
      numberFault(drillWithin),
      "drillWithin",
      typeof drillWithin === "number" && drillWithin > 0
        ? lengthSentence`${said.given(drillWithin)} is as far as halfway to the next hole; give less than ${said.most(apart / 2)}`
        : `${quoted(drillWithin)} is not how far a hole may be off; give millimetres from 0`,
    );
}

/** Checks the number of holes of a circle. */
export function checkHoles(holes: unknown): number {
  if (typeof holes === "number" && Number.isInteger(holes) && holes >= 2 && holes <= mostHoles) return holes;
  return refuse(
    wholeNumberFault(holes),
    "holes",
    `${quoted(holes)} is not a number of holes for a circle; give 2 to ${groupDigits(mostHoles)}`,
  );
}

/** Checks the diameter of a circle of holes. */
export function checkDiameter(diameter: unknown): number {
  if (typeof diameter === "number" && diameter >= leastDiameter && diameter <= mostDiameter) return diameter;
  return refuse(
    numberFault(diameter),
    "diameter",
    typeof diameter === "number" && diameter > 0 && Number.isFinite(diameter)
      ? lengthSentence`${said.given(diameter)} is not a diameter for a circle of holes; give ${said.least(leastDiameter)} to ${said.most(mostDiameter)}`
      : `${quoted(diameter)} is not a diameter; give the millimetres through the middles of the holes`,
  );
}

function checkDrill(drill: unknown, apart: number): void {
  if (typeof drill !== "number" || !(drill > 0) || !Number.isFinite(drill))
    refuse(numberFault(drill), "drill", `${quoted(drill)} is not the diameter of a drill; give one above 0`);
  if (drill >= apart)
    refuse(
      "cannot-be-made",
      "drill",
      lengthSentence`${said.given(drill)} runs into the next hole, ${said.measure(apart)} on; give a smaller drill, or a larger circle`,
    );
}

/** Reads the worm ratio of the head that a plate serves on. */
export function servesOn(ratio: number | string | undefined, ofTheMaker: Ratio | null): Ratio {
  if (ratio === undefined)
    return (
      ofTheMaker ??
      refuse(
        "missing",
        "servesRatio",
        "is missing; the head that makes the plate has no crank, so give the ratio it is to serve on",
      )
    );
  const read = parseRational(ratio, "servesRatio");
  if (isPositive(read)) return toRatio(read);
  return refuse("out-of-range", "servesRatio", `${quoted(ratio)} is not above 0; give the crank turns for one spindle turn`);
}

/** A usual step of a table's dials or read-out, in mm. Common practice, no source. */
const usualStep = 0.01;
const greatestStep = 1;

/** Checks the finest step that a table is set to. */
export function checkStep(step: unknown = usualStep): number {
  if (typeof step === "number" && step > 0 && step <= greatestStep) return step;
  return refuse(
    numberFault(step),
    "step",
    typeof step === "number" && step > 0 && Number.isFinite(step)
      ? lengthSentence`${said.given(step)} is not the step of a table; give at most ${said.most(greatestStep)}`
      : `${quoted(step)} is not a step; give millimetres above 0`,
  );
}
