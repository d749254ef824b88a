import { radians } from "../involute.ts";
import { basePitchOf, spanLength } from "../span.ts";
import { type InvoluteTooth, involuteTooth } from "../tooth-thickness.ts";
import { diameterOver, heightOver } from "./fragment.ts";
import type { Fragment, Measures } from "./gear-measures.ts";

/** What a gear is supposed to be, to be held against the measures. */
export interface Supposition {
  readonly module: number;
  /** Addendum in modules: 1, or 0.8 for a stub tooth. */
  readonly addendum: number;
  /** In degrees; null where no span tells it. */
  readonly pressureAngle: number | null;
  readonly profileShift: number;
}

/** What was measured. */
export type Measure =
  | { readonly code: "tip-diameter" | "whole-depth" | "centre-distance" | "mate-tip-diameter" }
  | { readonly code: "span"; readonly teeth: number }
  /** From tip to tip of a fragment, so many teeth on; and how high it rises over that. */
  | { readonly code: "chord" | "height"; readonly teeth: number }
  /** From two spans. */
  | { readonly code: "base-pitch"; readonly from: number; readonly to: number };

/** One measure against what it should be. Lengths in mm. */
export interface Residual {
  readonly measure: Measure;
  readonly measured: number;
  /** For a tip diameter that without profile shift; for a chord of tips the same, or what the tip diameter measured makes of it. */
  readonly expected: number;
  /** Measured less expected. */
  readonly difference: number;
  /** The difference against what is expected. */
  readonly percent: number;
}

/** A residual with how bad it is: the difference over what is allowed in its direction; 1 is the edge. */
export interface Evidence extends Residual {
  readonly misfit: number;
}

/** How far a measure may be below and above, in modules. All are our own choice, from what wear and calipers do. */
interface Allowed {
  readonly below: number;
  readonly above: number;
}
const tip: Allowed = { below: 0.1, above: 0.08 };
const rise: Allowed = { below: 0.05, above: 0.05 };
const depth: Allowed = { below: 0.15, above: 0.1 };
const centres: Allowed = { below: 0.1, above: 0.1 };
const mateTip: Allowed = { below: 0.25, above: 0.1 };
const span: Allowed = { below: 0.15, above: 0.05 };
const basePitch: Allowed = { below: 0.02, above: 0.02 };
/** What a caliper may be off besides, in mm. */
const caliper = 0.02;

/** Whole depths in modules of full-depth teeth. */
const fullDepths = [2.157, 2.25, 2.4];
/** Whole depth in modules of stub teeth. */
export const stubDepth = 1.8;

function evidence(measure: Measure, measured: number, expected: number, { below, above }: Allowed, module: number): Evidence {
  const difference = measured - expected;
  const allowed = (difference < 0 ? below : above) * module + caliper;
  return {
    measure,
    measured,
    expected,
    difference,
    percent: (100 * difference) / expected,
    misfit: Math.abs(difference) / allowed,
  };
}

/**
 * The tip diameter against that of a gear without shift; where it was not measured, the chord of a fragment, which is as
 * much a part of it. Null where the tips were not measured at all.
 */
export function tipEvidence(measures: Measures, { module, addendum }: Supposition): Evidence | null {
  const { teeth, tipDiameter, fragment } = measures;
  const drawn = module * (teeth + 2 * addendum);
  if (tipDiameter !== undefined) return evidence({ code: "tip-diameter" }, tipDiameter, drawn, tip, module);
  return fragment === undefined ? null : chordEvidence(measures, fragment, drawn, module);
}

/** All is that part smaller which the chord is of the diameter, but for what a caliper may be off. */
function chordEvidence({ teeth }: Measures, fragment: Fragment, tipDiameter: number, module: number): Evidence {
  const part = fragment.chord / diameterOver(fragment, teeth);
  return evidence({ code: "chord", teeth: fragment.pitches }, fragment.chord, tipDiameter * part, tip, module * part);
}

/** What a fragment tells besides: of the count by its height, and where the diameter was measured as well, how it agrees with that. */
function fragmentEvidence(measures: Measures, { module }: Supposition): Evidence[] {
  const { teeth, fragment, tipDiameter } = measures;
  if (fragment === undefined) return [];
  const { pitches, height } = fragment;
  const found: Evidence[] = [];
  if (tipDiameter !== undefined) found.push(chordEvidence(measures, fragment, tipDiameter, module));
  if (height !== undefined)
    found.push(evidence({ code: "height", teeth: pitches }, height, heightOver(fragment, teeth), rise, module));
  return found;
}

/** All the measures but the tip diameter against a supposition. */
export function otherEvidence(measures: Measures, supposed: Supposition): readonly Evidence[] {
  const { module } = supposed;
  const found = [
    ...fragmentEvidence(measures, supposed),
    ...mateEvidence(measures, supposed),
    ...spanEvidence(measures, supposed),
  ];
  if (measures.wholeDepth !== undefined) {
    const { wholeDepth } = measures;
    const rules = (supposed.addendum < 1 ? [stubDepth] : fullDepths).map((rule) => rule * module);
    const nearest = rules.reduce((best, rule) => (Math.abs(rule - wholeDepth) < Math.abs(best - wholeDepth) ? rule : best));
    found.unshift(evidence({ code: "whole-depth" }, wholeDepth, nearest, depth, module));
  }
  return found;
}

/**
 * Centre distance and mate. A shifted gear may stand on centres spread by up to its shift, or on the
 * usual centres with a mate shifted the other way.
 */
function mateEvidence(measures: Measures, { module, addendum, profileShift }: Supposition): Evidence[] {
  const { teeth, mateTeeth, centreDistance, mateTipDiameter } = measures;
  if (mateTeeth === undefined) return [];
  const found: Evidence[] = [];
  const shiftBelow = Math.max(0, -profileShift);
  const shiftAbove = Math.max(0, profileShift);
  if (centreDistance !== undefined) {
    const allowed = { below: centres.below + shiftBelow, above: centres.above + shiftAbove };
    found.push(evidence({ code: "centre-distance" }, centreDistance, (module * (teeth + mateTeeth)) / 2, allowed, module));
  }
  if (mateTipDiameter !== undefined) {
    const allowed = { below: mateTip.below + 2 * shiftAbove, above: mateTip.above + 2 * shiftBelow };
    found.push(evidence({ code: "mate-tip-diameter" }, mateTipDiameter, module * (mateTeeth + 2 * addendum), allowed, module));
  }
  return found;
}

/** Spans, and the base pitch from each two neighbouring ones, which neither wear nor shift changes. */
function spanEvidence({ teeth, spans = [] }: Measures, supposed: Supposition): Evidence[] {
  const tooth = toothOf(teeth, supposed);
  if (tooth === null) return [];
  const { module } = supposed;
  return spans.flatMap(({ teeth: count, length }, index) => {
    const before = spans[index - 1];
    const found = [evidence({ code: "span", teeth: count }, length, spanLength(tooth, count), span, module)];
    if (before !== undefined) {
      const measured = (length - before.length) / (count - before.teeth);
      found.push(
        evidence({ code: "base-pitch", from: before.teeth, to: count }, measured, basePitchOf(tooth), basePitch, module),
      );
    }
    return found;
  });
}

/**
 * How much thinner than supposed the spans show the teeth to be, in mm along the reference circle;
 * the mean of all spans, null where there are none.
 */
export function thinningShown({ teeth, spans = [] }: Measures, supposed: Supposition): number | null {
  const tooth = toothOf(teeth, supposed);
  if (tooth === null || spans.length === 0) return null;
  const short = spans.reduce((sum, { teeth: count, length }) => sum + spanLength(tooth, count) - length, 0) / spans.length;
  return short / Math.cos(radians(tooth.pressureAngle));
}

/** The profile shift that two spans or more would mean of teeth of full thickness, in modules: x = (W − W without)/(2m sin α). */
export function shiftShown({ teeth, spans = [] }: Measures, supposed: Supposition): number | null {
  const tooth = toothOf(teeth, { ...supposed, profileShift: 0 });
  if (tooth === null || spans.length < 2) return null;
  const more = spans.reduce((sum, { teeth: count, length }) => sum + length - spanLength(tooth, count), 0) / spans.length;
  return more / (2 * supposed.module * Math.sin(radians(tooth.pressureAngle)));
}

function toothOf(teeth: number, { module, pressureAngle, profileShift }: Supposition): InvoluteTooth | null {
  return pressureAngle === null ? null : involuteTooth({ teeth, module, pressureAngle, profileShift });
}
