import { type Measure, stubDepth, thinningShown } from "./gear-evidence.ts";
import type { CheckedMeasures } from "./gear-measures.ts";
import type { Trial } from "./gear-trial.ts";

/** What the measures say of one candidate. Lengths in mm, shifts in modules. */
export type Finding =
  /** The tip reads so much larger than drawn (below 0: smaller), if it is this pitch, and this accounts for it. */
  | { readonly code: "tip-worn"; readonly difference: number }
  | {
      readonly code: "tip-reduced" | "tip-enlarged" | "tip-measure-again";
      readonly difference: number;
      readonly profileShift: number;
    }
  /** The measure is off by so much and does not fit. */
  | { readonly code: "misfit"; readonly measure: Measure; readonly difference: number }
  /** Stub teeth, if they measure this depth. */
  | { readonly code: "stub-if-deep"; readonly wholeDepth: number }
  /** The spans show a gear cut with this profile shift, if it is this pitch. */
  | { readonly code: "shifted-by-spans"; readonly profileShift: number }
  /** The spans show teeth so much thinner than drawn along the reference circle. */
  | { readonly code: "thin-teeth"; readonly thinning: number };

/** What is to be said of the measures as a whole. */
export type MeasuresNote =
  /** No tooth is opposite a tooth: flat jaws read up to so many mm small. */
  | { readonly code: "odd-count"; readonly readsSmall: number }
  /** One span hardly tells the pressure angle. */
  | { readonly code: "one-span" }
  /** Nothing was measured over the tips: it may be a stub tooth as well. */
  | { readonly code: "tips-not-measured" }
  | { readonly code: "nothing-fits" };

/** What to tell the person of one candidate. */
export function findingsOf(trial: Trial): readonly Finding[] {
  const { measures, tip, form, supposed, evidence, level } = trial;
  const isByShift = tip === "not measured" && supposed.profileShift !== 0;
  const thinning = level < 2 && !isByShift ? thinningShown(measures, supposed) : null;
  return [
    ...tipFinding(trial),
    ...evidence
      .slice(tip === "as drawn" || tip === "not measured" ? 0 : 1)
      .filter(({ misfit }) => misfit > 1)
      .map(({ measure, difference }) => ({ code: "misfit", measure, difference }) as const),
    ...(form === "stub" && measures.wholeDepth === undefined
      ? [{ code: "stub-if-deep", wholeDepth: stubDepth * supposed.module } as const]
      : []),
    ...(thinning !== null && thinning > 0 ? [{ code: "thin-teeth", thinning } as const] : []),
  ];
}

/** Below this shift a large tip is more likely a careless measure; our own choice. */
const leastLikelyShift = 0.1;

function tipFinding({ tip, measures, supposed, evidence }: Trial): readonly Finding[] {
  const { module, addendum, profileShift } = supposed;
  // A chord of the tips is off by as great a part of itself.
  const part = (evidence[0]?.difference ?? 0) / (evidence[0]?.expected ?? 1);
  const difference = part * module * (measures.teeth + 2 * addendum);
  switch (tip) {
    case "as drawn":
      return [];
    case "not measured":
      return profileShift === 0 ? [] : [{ code: "shifted-by-spans", profileShift }];
    case "worn tip":
      return [{ code: "tip-worn", difference }];
    case "reduced":
      return [{ code: "tip-reduced", difference, profileShift }];
    case "enlarged":
      return [{ code: profileShift < leastLikelyShift ? "tip-measure-again" : "tip-enlarged", difference, profileShift }];
  }
}

/** What to tell the person of the measures as a whole. */
export function measuresNotes(
  { teeth, tipDiameter, fragment, spans = [] }: CheckedMeasures,
  ranked: readonly Trial[],
): readonly MeasuresNote[] {
  const notes: MeasuresNote[] = [];
  if (teeth !== undefined && tipDiameter !== undefined && teeth % 2 === 1)
    notes.push({ code: "odd-count", readsSmall: (tipDiameter / 2) * (1 - Math.cos(Math.PI / teeth)) });
  if (tipDiameter === undefined && fragment === undefined) notes.push({ code: "tips-not-measured" });
  if (spans.length === 1) notes.push({ code: "one-span" });
  if (ranked.every(({ level }) => level === 2)) notes.push({ code: "nothing-fits" });
  return notes;
}
