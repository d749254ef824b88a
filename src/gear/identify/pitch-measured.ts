import { mmPerInch } from "../../number/length-unit.ts";
import { radians } from "../involute.ts";
import { diameterOver } from "./fragment.ts";
import type { Measure } from "./gear-evidence.ts";
import type { Measures } from "./gear-measures.ts";

/** A pitch in all three ways it is named. */
export interface PitchMeasured {
  /** In mm. */
  readonly module: number;
  /** Teeth to the inch of reference diameter: 25.4 over the module, never the module in inches. */
  readonly diametralPitch: number;
  /** In mm. */
  readonly circularPitch: number;
}

/** What one measure alone would mean, were the gear plain and unworn. */
export interface PitchByMeasure extends PitchMeasured {
  readonly measure: Measure;
  /** In degrees, that it is reckoned with; null where the measure asks for none. */
  readonly pressureAngle: number | null;
}

/** The angles that a base pitch is reckoned with. */
const commonAngles = [20, 14.5];

/**
 * The pitch that each measure alone would mean of a plain, unworn, full-depth gear.
 *
 * The laws: m = d/(z + 2) by the tips; m = 2a/(z₁ + z₂) by the centre distance; π·m·cos α = W(k + 1) − W(k) by two spans,
 * so that m = that/(π·cos α), and the diametral pitch is 25.4 over it.
 *
 * @returns In that order, the tips of the gear before those of its mate.
 */
export function pitchesMeasured(measures: Measures): readonly PitchByMeasure[] {
  const { teeth, tipDiameter, fragment, centreDistance, mateTeeth = Number.NaN, mateTipDiameter, spans = [] } = measures;
  const found: PitchByMeasure[] = [];
  const add = (measure: Measure, module: number, pressureAngle: number | null = null) =>
    found.push({ measure, pressureAngle, ...pitchOf(module) });
  if (tipDiameter !== undefined) add({ code: "tip-diameter" }, tipDiameter / (teeth + 2));
  if (fragment !== undefined) add({ code: "chord", teeth: fragment.pitches }, diameterOver(fragment, teeth) / (teeth + 2));
  if (centreDistance !== undefined) add({ code: "centre-distance" }, (2 * centreDistance) / (teeth + mateTeeth));
  for (const [index, { teeth: to, length }] of spans.entries()) {
    const before = spans[index - 1];
    if (before === undefined) continue;
    const basePitch = (length - before.length) / (to - before.teeth);
    for (const angle of commonAngles)
      add({ code: "base-pitch", from: before.teeth, to }, basePitch / (Math.PI * Math.cos(radians(angle))), angle);
  }
  if (mateTipDiameter !== undefined) add({ code: "mate-tip-diameter" }, mateTipDiameter / (mateTeeth + 2));
  return found;
}

function pitchOf(module: number): PitchMeasured {
  return { module, diametralPitch: mmPerInch / module, circularPitch: Math.PI * module };
}
