import { radians } from "./involute.ts";
import type { CheckedSpec } from "./spur-gear-spec.ts";
import { type CutTooth, halfToothAngle } from "./tooth-thickness.ts";

/** What the person at the machine should know of a gear that can be cut. Lengths in mm, angles in degrees, shifts in modules. */
export type GearNote =
  /** A rack or hob undercuts it: from so many teeth, or from such a shift, it does not. */
  | {
      readonly code: "undercut";
      readonly teeth: number;
      readonly pressureAngle: number;
      readonly profileShift: number;
      readonly fewestTeeth: number;
      readonly leastShift: number;
    }
  /** The tooth is thin at the tip, under the usual least, which is in modules. */
  | { readonly code: "thin-tip"; readonly thickness: number; readonly usualLeast: number }
  /** The tip diameter that was given is far from the one by the rule. */
  | { readonly code: "tip-far-from-rule"; readonly tipDiameter: number; readonly byRule: number }
  /** No span over whole teeth rests on the flanks. */
  | { readonly code: "no-span"; readonly teeth: number }
  /** The tips are below the reference circle, so that there is no chord to measure there. */
  | { readonly code: "no-chord"; readonly referenceDiameter: number };

/** The thinnest tip in modules that is let pass without a word (from memory: 0.2 m is the least usually allowed). */
const thinTip = 0.2;
/** How far in modules a given tip diameter may be from the rule's without a word; our own choice. */
const farFromRule = 0.5;

/**
 * The least profile shift that is not undercut by a rack or hob: x = h_a − z sin²α / 2, in modules,
 * h_a being the rack's straight part below its reference line (ISO 21771, from memory).
 */
function leastShiftWithoutUndercut(teeth: number, pressureAngle: number, addendum: number): number {
  return addendum - (teeth * Math.sin(radians(pressureAngle)) ** 2) / 2;
}

/** What is to be said of a gear that {@link checkTooth} lets pass. */
export function gearNotes(
  spec: CheckedSpec,
  gear: CutTooth,
  has: { readonly span: boolean; readonly chord: boolean },
): GearNote[] {
  const { teeth, module, pressureAngle, profileShift } = spec;
  const { addendum } = spec.rule;
  const { tipDiameter, referenceDiameter } = gear;
  const notes: GearNote[] = [];
  const leastShift = leastShiftWithoutUndercut(teeth, pressureAngle, addendum);
  if (profileShift < leastShift) {
    const fewestTeeth = Math.ceil((2 * (addendum - profileShift)) / Math.sin(radians(pressureAngle)) ** 2);
    notes.push({ code: "undercut", teeth, pressureAngle, profileShift, fewestTeeth, leastShift });
  }
  const thickness = tipDiameter * halfToothAngle(gear, tipDiameter);
  if (thickness < thinTip * module) notes.push({ code: "thin-tip", thickness, usualLeast: thinTip });
  const byRule = referenceDiameter + 2 * (addendum + profileShift) * module;
  if (Math.abs(tipDiameter - byRule) > farFromRule * module) notes.push({ code: "tip-far-from-rule", tipDiameter, byRule });
  if (!has.span) notes.push({ code: "no-span", teeth });
  if (!has.chord) notes.push({ code: "no-chord", referenceDiameter });
  return notes;
}
