import { lengthSentence, said } from "../number/length-sentence.ts";
import { angleOfInvolute, involute, radians } from "./involute.ts";
import { refuseGear } from "./spur-gear-spec.ts";
import { type CutTooth, flankStart, halfSpaceAngle, halfToothAngle } from "./tooth-thickness.ts";

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
      lengthSentence`the tip circle, ${said.measure(tipDiameter)}, is within the base circle, ${said.measure(baseDiameter)}, so there is no involute; give a larger tip diameter or profile shift`,
    );
  }
  if (toothThickness <= 0 || toothThickness >= (Math.PI * referenceDiameter) / teeth) {
    refuseGear(
      lengthSentence`the teeth would be ${said.measure(toothThickness)} thick of a pitch of ${said.measure((Math.PI * referenceDiameter) / teeth)}; give a profile shift or thinning nearer 0`,
    );
  }
  if (halfToothAngle(gear, tipDiameter) <= 0) {
    refuseGear(
      lengthSentence`the teeth come to a point at ${said.measure(pointedDiameter(gear))}, below the tip diameter of ${said.measure(tipDiameter)}; give a smaller profile shift or tip diameter`,
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
