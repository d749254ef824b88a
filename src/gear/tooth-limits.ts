import { angleOfInvolute, involute, radians } from "./involute.ts";
import { shown } from "./measured.ts";
import { type CheckedSpec, refuseGear } from "./spur-gear-spec.ts";
import { type CutTooth, flankStart, halfSpaceAngle, halfToothAngle } from "./tooth-thickness.ts";

/** The thinnest tip in modules that is let pass without a word (from memory: 0.2 m is the least usually allowed). */
const thinTip = 0.2;
/** How far in modules a given tip diameter may be from the rule's without a word; our own choice. */
const farFromRule = 0.5;

/**
 * Refuses a gear that cannot be cut: no root left, tips below the base circle, teeth that come to a
 * point below the tip circle, spaces that close.
 *
 * @throws {@link InputError} saying which, and what to change.
 */
export function checkTooth(gear: CutTooth): void {
  const { tipDiameter, rootDiameter, baseDiameter, toothThickness, referenceDiameter, teeth } = gear;
  if (rootDiameter <= 0) refuseGear("the teeth are deeper than the gear's radius; give more teeth or a smaller depth");
  if (tipDiameter <= rootDiameter) refuseGear("the tip circle is not above the root circle; give a larger tip diameter");
  if (tipDiameter <= flankStart(gear)) {
    refuseGear(
      `the tip circle, ${shown(tipDiameter)} mm, is within the base circle, ${shown(baseDiameter)} mm, so there is no involute; give a larger tip diameter or profile shift`,
    );
  }
  if (toothThickness <= 0 || toothThickness >= (Math.PI * referenceDiameter) / teeth) {
    refuseGear(
      `the teeth would be ${shown(toothThickness)} mm thick of a pitch of ${shown((Math.PI * referenceDiameter) / teeth)} mm; give a profile shift or thinning nearer 0`,
    );
  }
  if (halfToothAngle(gear, tipDiameter) <= 0) {
    refuseGear(
      `the teeth come to a point at ${shown(pointedDiameter(gear))} mm, below the tip diameter of ${shown(tipDiameter)} mm; give a smaller profile shift or tip diameter`,
    );
  }
  if (halfSpaceAngle(gear, flankStart(gear)) <= 0) {
    refuseGear("the flanks of a space meet above its root; give a smaller profile shift or depth");
  }
}

/** The diameter at which the flanks of a tooth meet in a point: inv α = s/d + inv of the pressure angle. */
function pointedDiameter(gear: CutTooth): number {
  const meeting = gear.toothThickness / gear.referenceDiameter + involute(radians(gear.pressureAngle));
  return gear.baseDiameter / Math.cos(angleOfInvolute(meeting));
}

/**
 * The least profile shift that is not undercut by a rack or hob: x = h_a − z sin²α / 2, in modules,
 * h_a being the rack's straight part below its reference line (ISO 21771, from memory).
 */
export function leastShiftWithoutUndercut(teeth: number, pressureAngle: number, addendum: number): number {
  return addendum - (teeth * Math.sin(radians(pressureAngle)) ** 2) / 2;
}

/** What the person at the machine should know of a gear that can be cut. */
export function toothWarnings(spec: CheckedSpec, gear: CutTooth): string[] {
  const warnings: string[] = [];
  const leastShift = leastShiftWithoutUndercut(spec.teeth, spec.pressureAngle, spec.rule.addendum);
  if (spec.profileShift < leastShift) {
    const fewest = Math.ceil((2 * (spec.rule.addendum - spec.profileShift)) / Math.sin(radians(spec.pressureAngle)) ** 2);
    warnings.push(
      `A rack or hob undercuts ${spec.teeth} teeth at ${shown(spec.pressureAngle)}° with a profile shift of ${shown(spec.profileShift)}: from ${fewest} teeth, or from a shift of ${shown(leastShift)}, it does not. A form cutter does not undercut; below the base circle its flanks depart from the original's, so copy a sound space.`,
    );
  }
  const tipThickness = gear.tipDiameter * halfToothAngle(gear, gear.tipDiameter);
  if (tipThickness < thinTip * spec.module) {
    warnings.push(
      `The tooth is only ${shown(tipThickness)} mm thick at the tip, under ${thinTip} of the module; such tips chip easily.`,
    );
  }
  const tipByRule = gear.referenceDiameter + 2 * (spec.rule.addendum + spec.profileShift) * spec.module;
  if (Math.abs(gear.tipDiameter - tipByRule) > farFromRule * spec.module) {
    warnings.push(
      `The tip diameter given, ${shown(gear.tipDiameter)} mm, is far from the rule's ${shown(tipByRule)} mm; check the pitch and the profile shift.`,
    );
  }
  return warnings;
}
