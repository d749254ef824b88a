import { checkKeys, keysOf } from "../../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../../number/errors.ts";
import { mmPerInch } from "../../number/length-unit.ts";
import { type LookAlike, lookAlikes, type StandardPitch } from "../standard-pitch.ts";
import type { Residual } from "./gear-evidence.ts";
import { type Finding, findingsOf, type MeasuresNote, measuresNotes } from "./gear-findings.ts";
import { checkMeasures, type GearMeasures } from "./gear-measures.ts";
import { rankedTrials, type TipExplanation, type ToothForm, type Trial } from "./gear-trial.ts";

/** A pitch that the measures could mean. Lengths in mm. */
export interface GearCandidate {
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
  /** The pitch if the tip is that of an unworn, full-depth gear without shift: tip diameter/(z + 2). */
  readonly measured: { readonly module: number; readonly diametralPitch: number; readonly circularPitch: number };
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
 * and shifted, and ranks what fits.
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
  const module = given.tipDiameter / (given.teeth + 2);
  return {
    measured: { module, diametralPitch: mmPerInch / module, circularPitch: Math.PI * module },
    candidates: ranked.slice(0, limit).map((trial) => candidateOf(given, trial)),
    warnings: measuresNotes(given, ranked),
  };
}

function candidateOf(measures: GearMeasures, trial: Trial): GearCandidate {
  const { pitch, form, tip, supposed, evidence, level } = trial;
  return {
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
    findings: findingsOf(measures, trial),
  };
}
