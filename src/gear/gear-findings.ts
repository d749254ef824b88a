import { thinningShown } from "./gear-evidence.ts";
import type { GearMeasures } from "./gear-measures.ts";
import type { Trial } from "./gear-trial.ts";
import { shown } from "./measured.ts";

/** What to tell the person of one candidate, in plain sentences. */
export function findingsOf(measures: GearMeasures, { tip, supposed, evidence }: Trial): string[] {
  const findings: string[] = [];
  const difference = evidence[0]?.difference ?? 0;
  if (tip === "worn tip") {
    findings.push(`The tip reads ${shown(-difference)} mm small: worn or turned down, if it is this pitch.`);
  }
  if (tip === "enlarged") {
    findings.push(
      `The tip reads ${shown(difference)} mm large: an enlarged pinion with a profile shift of about ${shown(supposed.profileShift, 2)}, if it is this pitch.`,
    );
  }
  if (tip === "reduced") {
    findings.push(
      `The tip reads ${shown(-difference)} mm small: reduced by a profile shift of about ${shown(supposed.profileShift, 2)}, as the mate of an enlarged pinion is, if it is this pitch.`,
    );
  }
  for (const { measure, difference: off, misfit } of evidence.slice(1)) {
    if (misfit > 1)
      findings.push(`The ${measure} does not fit: it is ${shown(Math.abs(off))} mm too ${off < 0 ? "small" : "large"}.`);
  }
  const thin = thinningShown(measures, supposed);
  if (thin !== null && thin > 0) {
    findings.push(`The spans show teeth ${shown(thin)} mm thinner than drawn, along the reference circle: backlash and wear.`);
  }
  return findings;
}

/** What to tell the person of the measures as a whole, in plain sentences. */
export function warningsOf({ teeth, tipDiameter, spans = [] }: GearMeasures, ranked: readonly Trial[]): string[] {
  const warnings: string[] = [];
  if (teeth % 2 === 1) {
    const short = (tipDiameter / 2) * (1 - Math.cos(Math.PI / teeth));
    warnings.push(
      `An odd count has no tooth opposite a tooth: flat jaws across this gear read up to ${shown(short)} mm small. Measure from the bore to a tip, and double.`,
    );
  }
  if (spans.length === 1) {
    warnings.push(
      "One span hardly tells the pressure angle, as thin teeth read like another angle: measure over one tooth more as well.",
    );
  }
  if (ranked.every(({ level }) => level === 2)) {
    warnings.push("No standard pitch fits all the measures: count the teeth again, and measure again.");
  }
  return warnings;
}
