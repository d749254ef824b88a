import { quoted, refuse } from "../number/errors.ts";
import type { SpurGear } from "./spur-gear.ts";
import type { CutTooth, InvoluteTooth } from "./tooth-thickness.ts";

const ofInvolute: readonly (keyof InvoluteTooth)[] = [
  "teeth",
  "pressureAngle",
  "referenceDiameter",
  "baseDiameter",
  "toothThickness",
];
const ofTooth: readonly (keyof CutTooth)[] = [...ofInvolute, "tipDiameter", "rootDiameter"];
const ofGear: readonly (keyof SpurGear)[] = [...ofTooth, "module", "profileShift", "addendum", "wholeDepth", "thinning"];

/**
 * Refuses what has not the measures of a flank, as {@link spurGear} gives them.
 *
 * @throws {@link InputError} that says how to make a gear.
 */
export function checkIsInvolute(gear: unknown): asserts gear is InvoluteTooth {
  checkMeasures(gear, ofInvolute);
}

/** As {@link checkIsInvolute}, from tip to root. */
export function checkIsTooth(gear: unknown): asserts gear is CutTooth {
  checkMeasures(gear, ofTooth);
}

/** As {@link checkIsInvolute}, of a whole gear. */
export function checkIsGear(gear: unknown): asserts gear is SpurGear {
  checkMeasures(gear, ofGear);
  // It passed as an object.
  if (!Array.isArray((gear as SpurGear).warnings))
    refuse("unreadable", "gear", "its warnings are missing or no list; spurGear makes a gear of its teeth and pitch");
}

function checkMeasures(gear: unknown, names: readonly string[]): void {
  const measures = typeof gear === "object" && gear !== null ? (gear as Readonly<Record<string, unknown>>) : {};
  const wrong = names.find((name) => !Number.isFinite(measures[name]));
  if (wrong === undefined) return;
  const what = gear === measures ? `its ${wrong} is missing or no number` : `${quoted(gear)} is not a gear`;
  refuse(gear === undefined ? "missing" : "unreadable", "gear", `${what}; spurGear makes a gear of its teeth and pitch`);
}
