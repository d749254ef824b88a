import { mmPerInch } from "../number/length-unit.ts";
import type { DepthRuleName } from "./depth-rule.ts";
import { type GearNote, gearNotes } from "./gear-notes.ts";
import { basePitchOf, bestSpan, type SpanOnFlanks } from "./span.ts";
import { type CheckedSpec, checkSpec, type SpurGearSpec } from "./spur-gear-spec.ts";
import { checkTooth } from "./tooth-limits.ts";
import { type CutTooth, chordOf, halfToothAngle, involuteTooth } from "./tooth-thickness.ts";

/** The measures of a spur gear. Lengths in mm, angles in degrees; nothing is rounded. */
export interface SpurGear extends CutTooth {
  /** The pitch as it was given. */
  readonly system: "module" | "diametral pitch";
  readonly module: number;
  readonly diametralPitch: number;
  /** In modules. */
  readonly profileShift: number;
  /** Of the blank too: the diameter to turn a built-up part back to. */
  readonly tipDiameter: number;
  /** From tip to tip along the reference circle. */
  readonly circularPitch: number;
  readonly basePitch: number;
  /** From the reference circle out to the tip. */
  readonly addendum: number;
  /** From the reference circle in to the root. */
  readonly dedendum: number;
  readonly wholeDepth: number;
  /** Where the depth is from. */
  readonly wholeDepthRule: WholeDepthRule;
  /** Along the reference circle; what the thinning takes off is off. */
  readonly toothThickness: number;
  readonly spaceWidth: number;
  /** How much thinner than full the teeth are, along the reference circle. */
  readonly thinning: number;
  /** At the tip, along the arc. */
  readonly tipThickness: number;
  /** Across the tooth at the reference circle. */
  readonly chordalThickness: number;
  /** From the tip down to that chord: the setting of a gear tooth caliper's depth blade. */
  readonly chordalAddendum: number;
  /** Over the number of teeth that puts the jaws nearest the middle of the flank; null where none does. */
  readonly span: SpanOnFlanks | null;
  /** The pin usually taken: 1.75 modules, or 1.7 modules at 14½°. */
  readonly usualPinDiameter: number;
  /** Empty where there is nothing to say. */
  readonly warnings: readonly GearNote[];
}

/** Where a whole depth is from: a rule in the system of the pitch, or what was given. */
export type WholeDepthRule =
  | { readonly code: "depth-by-rule"; readonly rule: DepthRuleName; readonly system: SpurGear["system"] }
  | { readonly code: "depth-as-given" };

/**
 * The measures of an external spur gear with involute teeth.
 *
 * Reference diameter d = m z; base d cos α; tip d + 2 (h_a + x) m; root d − 2 (h_f − x) m; tooth
 * thickness π m/2 + 2 x m tan α at the reference circle (ISO 21771 and ISO 53, formulas from memory;
 * without shift they are the shop's OD = (N + 2)/DP, and with 2.157/DP those of the US Navy training
 * manual, tpub document 14345). Diametral pitch is the same gear with m = 25.4/DP.
 *
 * @param spec - Lengths in mm, angles in degrees, shifts in modules.
 * @throws {@link InputError} when the spec is not allowed, or the gear cannot be cut: pointed teeth,
 * closed spaces, no root. What can be cut but needs care is in `warnings`.
 *
 * @example
 * ```ts
 * spurGear({ teeth: 86, module: 2 }).tipDiameter; // 176
 * ```
 */
export function spurGear(spec: SpurGearSpec): SpurGear {
  const checked = checkSpec(spec);
  const tooth = cutTooth(checked);
  checkTooth(tooth);
  const { module, system, profileShift, rule, thinning, pressureAngle } = checked;
  const { referenceDiameter, tipDiameter, rootDiameter, toothThickness } = tooth;
  const circularPitch = Math.PI * module;
  const chord = chordOf(tooth, referenceDiameter);
  const span = bestSpan(tooth, referenceDiameter + 2 * profileShift * module);
  return Object.freeze({
    ...tooth,
    system,
    module,
    diametralPitch: mmPerInch / module,
    profileShift,
    circularPitch,
    basePitch: basePitchOf(tooth),
    addendum: (tipDiameter - referenceDiameter) / 2,
    dedendum: (referenceDiameter - rootDiameter) / 2,
    wholeDepth: (tipDiameter - rootDiameter) / 2,
    wholeDepthRule: Object.freeze(
      checked.wholeDepth === undefined ? { code: "depth-by-rule", rule: rule.name, system } : { code: "depth-as-given" },
    ),
    spaceWidth: circularPitch - toothThickness,
    thinning,
    tipThickness: tipDiameter * halfToothAngle(tooth, tipDiameter),
    chordalThickness: chord.thickness,
    chordalAddendum: chord.addendum,
    span: span === null ? null : Object.freeze(span),
    usualPinDiameter: usualPin(pressureAngle) * module,
    warnings: Object.freeze(
      gearNotes(checked, tooth, { span: span !== null, chord: chord.addendum >= 0 }).map((note) => Object.freeze(note)),
    ),
  });
}

function cutTooth(spec: CheckedSpec): CutTooth {
  const { module, profileShift, rule, wholeDepth } = spec;
  const tooth = involuteTooth(spec);
  const tipDiameter = spec.tipDiameter ?? tooth.referenceDiameter + 2 * (rule.addendum + profileShift) * module;
  const rootByRule = tooth.referenceDiameter - 2 * (rule.dedendum - profileShift) * module - 2 * rule.added;
  return { ...tooth, tipDiameter, rootDiameter: wholeDepth === undefined ? rootByRule : tipDiameter - 2 * wholeDepth };
}

/** Pins in modules: 1.7 for 14½° and 1.75 for 20° (a technical handbook text published by tandwiel.info). */
function usualPin(pressureAngle: number): number {
  return pressureAngle < 17 ? 1.7 : 1.75;
}
