import { numberFault, refuse } from "../number/errors.ts";
import { lengthSentence, said } from "../number/length-sentence.ts";
import { checkIsTooth } from "./check-is-gear.ts";
import { involute, pressureAngleAt, radians } from "./involute.ts";
import { asGiven } from "./measured.ts";

/** What fixes an involute tooth, whatever its depth. Diameters and thickness in mm, the angle in degrees. */
export interface InvoluteTooth {
  readonly teeth: number;
  readonly pressureAngle: number;
  readonly referenceDiameter: number;
  readonly baseDiameter: number;
  /** Along the arc of the reference circle. */
  readonly toothThickness: number;
}

/**
 * The tooth of a pitch: d = m z, d_b = d cos α, s = π m/2 + 2 x m tan α less what it is thinned by
 * (ISO 21771, from memory).
 */
export function involuteTooth(pitch: {
  readonly teeth: number;
  readonly module: number;
  readonly pressureAngle: number;
  readonly profileShift: number;
  readonly thinning?: number;
}): InvoluteTooth {
  const { teeth, module, pressureAngle, profileShift, thinning = 0 } = pitch;
  const angle = radians(pressureAngle);
  return {
    teeth,
    pressureAngle,
    referenceDiameter: teeth * module,
    baseDiameter: teeth * module * Math.cos(angle),
    toothThickness: (Math.PI * module) / 2 + 2 * profileShift * module * Math.tan(angle) - thinning,
  };
}

/** An involute tooth with its top and bottom, in mm. */
export interface CutTooth extends InvoluteTooth {
  readonly tipDiameter: number;
  readonly rootDiameter: number;
}

/** A tooth across the corners, as a gear tooth caliper reads it; both in mm. */
export interface Chord {
  readonly thickness: number;
  /** From the tip down to the chord: what the caliper's depth blade is set to. */
  readonly addendum: number;
}

/**
 * Half the angle that a tooth takes up at a diameter, in radians: s/d + inv α − inv α_y.
 *
 * Below the base circle, where there is no involute, the flank is taken as a straight radial line,
 * as form cutters leave it (common practice, no source).
 */
export function halfToothAngle(tooth: InvoluteTooth, diameter: number): number {
  return (
    tooth.toothThickness / tooth.referenceDiameter +
    involute(radians(tooth.pressureAngle)) -
    involute(pressureAngleAt(tooth.baseDiameter, diameter))
  );
}

/** Half the angle that the space between two teeth takes up at a diameter, in radians. */
export function halfSpaceAngle(tooth: InvoluteTooth, diameter: number): number {
  return Math.PI / tooth.teeth - halfToothAngle(tooth, diameter);
}

/** Where the involute of a cut tooth begins: the base circle, or the root circle where that is larger. */
export function flankStart({ baseDiameter, rootDiameter }: CutTooth): number {
  return Math.max(baseDiameter, rootDiameter);
}

/**
 * Tooth thickness along the arc at any diameter on the involute.
 *
 * s_y = d_y (s/d + inv α − inv α_y), with cos α_y = d_b/d_y (ISO 21771; also the *thickness at any
 * radius* of printed handbooks, both from memory).
 *
 * @param diameter - In mm, from the base circle (or the root circle where that is larger) to the tip.
 * @returns In mm.
 * @throws {@link InputError} when the diameter is not on the involute.
 *
 * @example
 * ```ts
 * toothThicknessAt(spurGear({ teeth: 86, module: 2 }), 174).toFixed(3); // "2.411"
 * ```
 */
export function toothThicknessAt(gear: CutTooth, diameter: number): number {
  checkIsTooth(gear);
  checkOnFlank(gear, diameter);
  return diameter * halfToothAngle(gear, diameter);
}

/**
 * Space width along the arc at any diameter on the involute: e_y = π d_y/z − s_y.
 *
 * @param diameter - As for {@link toothThicknessAt}.
 * @returns In mm.
 * @throws {@link InputError} when the diameter is not on the involute.
 *
 * @example
 * ```ts
 * spaceWidthAt(spurGear({ teeth: 86, module: 2 }), 172).toFixed(3); // "3.142"
 * ```
 */
export function spaceWidthAt(gear: CutTooth, diameter: number): number {
  checkIsTooth(gear);
  checkOnFlank(gear, diameter);
  return diameter * halfSpaceAngle(gear, diameter);
}

/**
 * Chordal thickness and chordal addendum at any diameter on the involute.
 *
 * With ψ = s_y/d_y: thickness d_y sin ψ, addendum (d_a − d_y cos ψ)/2 (printed handbooks, from
 * memory).
 *
 * @param diameter - As for {@link toothThicknessAt}.
 * @returns Both in mm.
 * @throws {@link InputError} when the diameter is not on the involute.
 *
 * @example
 * ```ts
 * chordAt(spurGear({ teeth: 86, module: 2 }), 172).thickness.toFixed(3); // "3.141"
 * ```
 */
export function chordAt(gear: CutTooth, diameter: number): Chord {
  checkIsTooth(gear);
  checkOnFlank(gear, diameter);
  return chordOf(gear, diameter);
}

/** As {@link chordAt}, for a diameter that is known to be right. */
export function chordOf(gear: CutTooth, diameter: number): Chord {
  const half = halfToothAngle(gear, diameter);
  return { thickness: diameter * Math.sin(half), addendum: (gear.tipDiameter - diameter * Math.cos(half)) / 2 };
}

function checkOnFlank(gear: CutTooth, diameter: unknown): asserts diameter is number {
  const start = flankStart(gear);
  if (typeof diameter === "number" && diameter >= start && diameter <= gear.tipDiameter) return;
  refuse(
    numberFault(diameter),
    "diameter",
    lengthSentence`${asGiven(diameter)} is not on the flanks of this gear; give a diameter from ${said.least(start)} to ${said.most(gear.tipDiameter)}`,
  );
}
