import { shown } from "../measured.ts";
import { stubDepth, thinningShown } from "./gear-evidence.ts";
import type { GearMeasures } from "./gear-measures.ts";
import type { Trial } from "./gear-trial.ts";

/** What to tell the person of one candidate, in plain sentences. */
export function findingsOf(measures: GearMeasures, trial: Trial): string[] {
  const { tip, form, supposed, evidence, level } = trial;
  const findings = evidence
    .slice(tip === "as drawn" ? 0 : 1)
    .filter(({ misfit }) => misfit > 1)
    .map(
      ({ measure, difference }) =>
        `The ${measure} does not fit: it is ${shown(Math.abs(difference))} mm too ${difference < 0 ? "small" : "large"}.`,
    );
  if (tip !== "as drawn") findings.unshift(tipFinding(trial));
  if (form === "stub" && measures.wholeDepth === undefined) {
    findings.push(`Stub teeth, if they are ${shown(stubDepth * supposed.module)} mm deep: measure the depth.`);
  }
  const thin = thinningShown(measures, supposed);
  if (level < 2 && thin !== null && thin > 0) {
    findings.push(`The spans show teeth ${shown(thin)} mm thinner than drawn, along the reference circle: backlash and wear.`);
  }
  return findings;
}

/** Below this shift a large tip is more likely a careless measure; our own choice. */
const leastLikelyShift = 0.1;

function tipFinding({ tip, supposed, evidence }: Trial): string {
  const difference = evidence[0]?.difference ?? 0;
  const reads = `The tip reads ${shown(Math.abs(difference))} mm ${difference < 0 ? "small" : "large"}`;
  const shift = `a profile shift of about ${shown(supposed.profileShift, 2)}`;
  if (tip === "worn tip") return `${reads}: worn or turned down, if it is this pitch.`;
  if (tip === "reduced") return `${reads}: reduced by ${shift}, as the mate of an enlarged pinion is, if it is this pitch.`;
  return supposed.profileShift < leastLikelyShift
    ? `${reads}: measure it again; if it is this pitch, it has ${shift}.`
    : `${reads}: an enlarged pinion with ${shift}, if it is this pitch.`;
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
