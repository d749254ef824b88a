import { type StandardPitch, standardPitches } from "../standard-pitch.ts";
import { measuresByCount } from "./fragment.ts";
import { type Evidence, otherEvidence, type Supposition, shiftShown, tipEvidence } from "./gear-evidence.ts";
import type { CheckedMeasures, Measures } from "./gear-measures.ts";

/** How a candidate accounts for the tip diameter, where the tips were measured. */
export type TipExplanation = "as drawn" | "worn tip" | "enlarged" | "reduced" | "not measured";

/** The two lengths of tooth that are told apart. */
export type ToothForm = "full depth" | "stub";

/** A pitch held against the measures, under one account of its tip. */
export interface Trial {
  /** With the count that it is tried with. */
  readonly measures: Measures;
  readonly pitch: StandardPitch;
  readonly form: ToothForm;
  readonly tip: TipExplanation;
  readonly supposed: Supposition;
  readonly evidence: readonly Evidence[];
  /** 0 close, 1 explained, 2 poor. */
  readonly level: 0 | 1 | 2;
  readonly preference: number;
  readonly misfit: number;
}

const commonAngles = [20, 14.5];
const otherAngles = [25, 17.5, 15, 22.5];
const forms = [
  { form: "full depth", addendum: 1 },
  { form: "stub", addendum: 0.8 },
] as const;
/** The tips that wear or shift is let explain, as their difference in modules; our own choice. */
const greatestWear = 0.5;
const greatestShift = 1.4;
/** How much later stub teeth and rarer pressure angles are listed, in steps of preference. */
const stubSteps = 2;
const angleSteps = 1;

/**
 * Every pitch with the account that suits it best, the likeliest first: what fits before what is
 * explained before what is poor, then preference, then a worn tip before a shift, then misfit. A pitch is there as a stub tooth as
 * well where that fits the measures better. What is poor is left out where anything fits. Where a fragment is to tell the
 * count, all that for each count it could be.
 */
export function rankedTrials(given: CheckedMeasures): readonly Trial[] {
  const trials = measuresByCount(given).flatMap((measures) =>
    standardPitches.flatMap((pitch) => {
      const [best, other] = formsToTry(measures)
        .flatMap((form) => bestOf(trialsOf(measures, pitch, form)))
        .sort(byRank);
      return best && other && other.misfit < best.misfit ? [best, other] : best ? [best] : [];
    }),
  );
  const fitting = trials.filter(({ level }) => level < 2);
  return (fitting.length > 0 ? fitting : trials).sort(byRank);
}

/** Without tips or depth nothing tells stub teeth from full ones. */
function formsToTry({ tipDiameter, fragment, wholeDepth, mateTipDiameter }: Measures): readonly (typeof forms)[number][] {
  const tells = [tipDiameter, fragment, wholeDepth, mateTipDiameter].some((measure) => measure !== undefined);
  return tells ? forms : forms.slice(0, 1);
}

/** A pitch and form under each pressure angle and each account of its tip. */
function trialsOf(measures: Measures, pitch: StandardPitch, { form, addendum }: (typeof forms)[number]): Trial[] {
  const plain = { module: pitch.module, addendum, pressureAngle: null, profileShift: 0 };
  const tip = tipEvidence(measures, plain);
  return anglesToTry(measures).flatMap((pressureAngle) => {
    const accounts = tip === null ? bySpans(measures, { ...plain, pressureAngle }) : explanations(tip, offBy(tip));
    return accounts.map(({ tip: explanation, profileShift, misfit }) => {
      const supposed = { ...plain, pressureAngle, profileShift };
      const others = otherEvidence(measures, supposed);
      const all = [...(misfit === null ? [] : [misfit]), ...others.map((evidence) => evidence.misfit)];
      return {
        measures,
        pitch,
        form,
        tip: explanation,
        supposed,
        evidence: [...(tip === null ? [] : [tip]), ...others],
        level: levelOf({ explanation, profileShift }, tip, others, form === "stub" && measures.wholeDepth === undefined),
        preference:
          pitch.preference +
          (form === "stub" ? stubSteps : 0) +
          (pressureAngle !== null && otherAngles.includes(pressureAngle) ? angleSteps : 0),
        misfit: Math.hypot(...all) / Math.sqrt(all.length),
      } satisfies Trial;
    });
  });

  /** In modules, along the diameter: a chord is of as many modules less. */
  function offBy({ difference, expected }: Evidence): number {
    return (difference / expected) * (measures.teeth + 2 * addendum);
  }
}

/** A stub tooth is no more than an account of a small tip until its depth has been measured. */
function levelOf(
  { explanation, profileShift }: { readonly explanation: TipExplanation; readonly profileShift: number },
  tip: Evidence | null,
  others: readonly Evidence[],
  depthUnknown: boolean,
): Trial["level"] {
  if (others.some(({ misfit }) => misfit > 1)) return 2;
  if (tip === null) return profileShift === 0 && !depthUnknown ? 0 : 1;
  if (explanation !== "as drawn") return 1;
  if (tip.misfit > 1) return 2;
  return depthUnknown ? 1 : 0;
}

/** Pressure angles that the spans can tell apart: one span only the common ones. */
function anglesToTry({ spans = [] }: Measures): readonly (number | null)[] {
  if (spans.length === 0) return [null];
  return spans.length === 1 ? commonAngles : [...commonAngles, ...otherAngles];
}

/** An account of the tips, or of the spans where there are none. */
interface Account {
  readonly tip: TipExplanation;
  readonly profileShift: number;
  /** Null where no tip was measured. */
  readonly misfit: number | null;
}

/** In modules: less is as well the wear of flanks, more no gear is cut with. Our own choice. */
const shiftBySpans = { least: 0.1, most: greatestShift / 2 };

/** Without tips: a plain gear, or one with the shift that its spans show. */
function bySpans(measures: Measures, plain: Supposition): readonly Account[] {
  const shift = shiftShown(measures, plain) ?? 0;
  const isShift = Math.abs(shift) >= shiftBySpans.least && Math.abs(shift) <= shiftBySpans.most;
  return [
    { tip: "not measured", profileShift: 0, misfit: null },
    ...(isShift ? [{ tip: "not measured", profileShift: shift, misfit: 2 + 2.5 * Math.abs(shift) } as const] : []),
  ];
}

/** The accounts of a tip that is off by so many modules. */
function explanations(tip: Evidence, off: number): readonly Account[] {
  const found: Account[] = [{ tip: "as drawn", profileShift: 0, misfit: tip.misfit }];
  if (tip.misfit <= 1 || Math.abs(off) > greatestShift) return found;
  if (off < 0 && off >= -greatestWear) found.push({ tip: "worn tip", profileShift: 0, misfit: 1 - 4 * off });
  found.push({ tip: off > 0 ? "enlarged" : "reduced", profileShift: off / 2, misfit: 2 + 1.25 * Math.abs(off) });
  return found;
}

/** Tips wear on every gear, and few are shifted: wear is named first where it may be that. */
const orderOfAccounts: Readonly<Record<TipExplanation, number>> = {
  "as drawn": 0,
  "not measured": 0,
  "worn tip": 1,
  enlarged: 2,
  reduced: 2,
};

function byRank(a: Trial, b: Trial): number {
  const likelier = a.level === 2 ? 0 : a.preference - b.preference || orderOfAccounts[a.tip] - orderOfAccounts[b.tip];
  return a.level - b.level || likelier || a.misfit - b.misfit;
}

function bestOf(trials: readonly Trial[]): Trial[] {
  return [...trials].sort(byRank).slice(0, 1);
}
