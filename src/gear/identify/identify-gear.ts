import { checkKeys, keysOf } from "../../number/check-options.ts";
import { invariant, quoted, refuse, wholeNumberFault } from "../../number/errors.ts";
import { mmPerInch } from "../../number/length-unit.ts";
import { type LookAlike, lookAlikes, type StandardPitch } from "../standard-pitch.ts";
import type { Residual } from "./gear-evidence.ts";
import { type Finding, findingsOf, type MeasuresNote, measuresNotes } from "./gear-findings.ts";
import { checkMeasures, type GearMeasures } from "./gear-measures.ts";
import { rankedTrials, type TipExplanation, type ToothForm, type Trial } from "./gear-trial.ts";
import { type PitchByMeasure, type PitchMeasured, pitchesMeasured } from "./pitch-measured.ts";

/** A pitch that the measures could mean. Lengths in mm. */
export interface GearCandidate {
  /** As it was given; else one that the fragment could be of. */
  readonly teeth: number;
  /** The pitch by its own name: `"2 module"`, `"12 DP"`, `"3/8 in circular pitch"`. */
  readonly name: string;
  readonly system: StandardPitch["system"];
  /** 1 for the pitches to be preferred, 2 for the second series, 3 for circular pitch. */
  readonly preference: StandardPitch["preference"];
  readonly module: number;
  readonly diametralPitch: number;
  readonly circularPitch: number;
  readonly form: ToothForm;
  /** In degrees; null where no span was given. */
  readonly pressureAngle: number | null;
  /** In modules; 0 but for an enlarged or a reduced gear. */
  readonly profileShift: number;
  readonly tip: TipExplanation;
  /** `"close"`: all measures fit a plain gear; `"explained"`: they fit with wear or shift; `"poor"`: one does not fit. */
  readonly fit: "close" | "explained" | "poor";
  readonly residuals: readonly Residual[];
  readonly lookAlikes: readonly (LookAlike & {
    /** The other's tip diameter less this one's. */ readonly tipDifference: number;
  })[];
  /** Empty where there is nothing to say. */
  readonly findings: readonly Finding[];
}

/** What a gear could be. */
export interface Identification {
  /** The pitch that the first of the measures would mean by itself: tip diameter/(z + 2), if the tips were measured. */
  readonly measured: PitchMeasured;
  /** That of each measure that tells one, with the count of the likeliest candidate where none was given. */
  readonly byMeasure: readonly PitchByMeasure[];
  /** The likeliest first. */
  readonly candidates: readonly GearCandidate[];
  /** Of the measures as a whole; empty where there is nothing to say. */
  readonly warnings: readonly MeasuresNote[];
}

/** How many candidates to return. */
export interface IdentifyOptions {
  /** 1 to 100; left out, 8. */
  readonly limit?: number | undefined;
}

const identifyKeys = keysOf<IdentifyOptions>({ limit: true });
const usualLimit = 8;
const mostCandidates = 100;
/**
 * What gear is it? Compares the measures with every standard pitch, full depth and stub, plain, worn
 * and shifted, and ranks what fits. The tips may be lost: two spans, or the centre distance with the mate's count, tell
 * the pitch without them, and a fragment its count as well.
 *
 * Order: what fits closely before what wear or profile shift explains, before what does not fit;
 * within these the preferred series first, full depth before stub, common pressure angles before
 * rare ones; then a worn tip, up to half a module, before a profile shift; then the smaller misfit,
 * each measure's difference being taken against what wear and calipers do to it.
 *
 * @param measures - Lengths in mm.
 * @returns The likeliest first; lengths in mm, angles in degrees.
 * @throws {@link InputError} when a measure or the limit is not allowed.
 *
 * @example
 * ```ts
 * identifyGear({ teeth: 40, tipDiameter: 66.6 }).candidates[0].name; // "16 DP"
 * ```
 */
export function identifyGear(measures: GearMeasures, options: IdentifyOptions = {}): Identification {
  checkKeys(options, identifyKeys, "options");
  const { limit = usualLimit } = options;
  const given = checkMeasures(measures);
  if (!(Number.isInteger(limit) && limit >= 1 && limit <= mostCandidates)) {
    refuse(
      wholeNumberFault(limit),
      "limit",
      `${quoted(limit)} is not a number of candidates; give a whole number from 1 to ${mostCandidates}`,
    );
  }
  const ranked = rankedTrials(given);
  const [likeliest] = ranked;
  invariant(likeliest !== undefined, () => "a gear that could be of no pitch at all");
  const byMeasure = pitchesMeasured(likeliest.measures);
  const [first] = byMeasure;
  invariant(first !== undefined, () => "measures that tell no pitch");
  const { module, diametralPitch, circularPitch } = first;
  return {
    measured: { module, diametralPitch, circularPitch },
    byMeasure,
    candidates: ranked.slice(0, limit).map(candidateOf),
    warnings: measuresNotes(given, ranked),
  };
}

function candidateOf(trial: Trial): GearCandidate {
  const { measures, pitch, form, tip, supposed, evidence, level } = trial;
  return {
    teeth: measures.teeth,
    name: pitch.name,
    system: pitch.system,
    preference: pitch.preference,
    module: pitch.module,
    diametralPitch: mmPerInch / pitch.module,
    circularPitch: Math.PI * pitch.module,
    form,
    pressureAngle: supposed.pressureAngle,
    profileShift: supposed.profileShift,
    tip,
    fit: (["close", "explained", "poor"] as const)[level],
    residuals: evidence.map(({ misfit: _, ...residual }) => residual),
    lookAlikes: lookAlikes(pitch).map((other) => ({
      ...other,
      tipDifference: (pitch.module * (measures.teeth + 2 * supposed.addendum) * other.percent) / 100,
    })),
    findings: findingsOf(trial),
  };
}
