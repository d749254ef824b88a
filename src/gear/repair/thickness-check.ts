import { refuse } from "../../number/errors.ts";
import { faultList } from "../../number/fault-list.ts";
import { lengthSentence, said } from "../../number/length-sentence.ts";
import { readIfGiven, readMeasured } from "../measured.ts";
import { overPinCircles, pinCircle, pinRange } from "../over-pins.ts";
import { spanLength } from "../span.ts";
import type { SpurGear } from "../spur-gear.ts";
import { type CutTooth, chordOf } from "../tooth-thickness.ts";

/** What a rebuilt tooth may lose, in mm along the reference circle. */
export interface BacklashOptions {
  /** The most backlash that the pair may have when the work is done. */
  readonly backlash: number;
  /** How much thinner than full the mate's teeth are; left out, half of the backlash. */
  readonly mateThinning?: number;
}

/** One thickness of tooth, as it is measured in several ways; in mm. */
export interface ToothMeasures {
  /** Along the reference circle. */
  readonly toothThickness: number;
  readonly chordalThickness: number;
  readonly chordalAddendum: number;
  /** Over the teeth that {@link SpurGear} names; null where no span rests on the flanks. */
  readonly span: { readonly teeth: number; readonly length: number } | null;
  /** Over the usual pins, one in a sound space of full width and one in the recut space; null where that pin cannot be used. */
  readonly overPins: { readonly pinDiameter: number; readonly length: number } | null;
}

/** The two ends of what is right. */
export interface ThicknessCheck {
  /** No thicker than this: beyond it the tooth binds in a mate of full thickness. */
  readonly full: ToothMeasures;
  /** No thinner than this: below it the pair has more than the backlash given. */
  readonly least: ToothMeasures;
  /** How much thinner than full a tooth may be, along the reference circle. */
  readonly mayLose: number;
}

/**
 * What to measure on a rebuilt tooth before calling it done, and how thin is too thin.
 *
 * On the drawn centre distance the backlash of a pair, along the reference circle, is what both
 * teeth are thinner than full. If the mate takes its share, this tooth may lose the rest: least
 * thickness = full − (backlash − mate's thinning). Half each is the usual share: *subtract half of
 * the backlash from the theoretical span* (MOT spur gear: measurement over multiple teeth), which
 * there is taken square to the flank, × cos α.
 *
 * @throws {@link InputError} when the mate alone has all the backlash, or nothing of the tooth is left.
 */
export function thicknessCheck(gear: SpurGear, options: BacklashOptions): ThicknessCheck {
  const faults = faultList();
  const spec = faults.object(options, "", ["backlash", "mateThinning"]) ?? {};
  const bounds = { least: 0, most: 1000, unit: "length" } as const;
  const backlash = readMeasured(spec.backlash, "backlash", { what: "a backlash", ...bounds }, faults);
  const given = readIfGiven(spec.mateThinning, "mateThinning", { what: "a thinning of the mate's teeth", ...bounds }, faults);
  faults.throwIfAny();
  const mateThinning = given ?? backlash / 2;
  const mayLose = backlash - mateThinning;
  if (mayLose < 0) {
    refuse(
      "conflict",
      "mateThinning",
      lengthSentence`the mate's teeth alone give ${said.given(mateThinning)} of backlash, over the ${said.given(backlash)} allowed; give a larger backlash`,
    );
  }
  const full = gear.toothThickness + gear.thinning;
  if (mayLose >= full) {
    refuse(
      "out-of-range",
      "backlash",
      lengthSentence`${said.given(backlash)} leaves nothing of a tooth ${said.measure(full)} thick; give a backlash far below that`,
    );
  }
  return { full: measuresOf(gear, full), least: measuresOf(gear, full - mayLose), mayLose };
}

function measuresOf(gear: SpurGear, toothThickness: number): ToothMeasures {
  const tooth = { ...gear, toothThickness };
  const chord = chordOf(tooth, gear.referenceDiameter);
  return {
    toothThickness,
    chordalThickness: chord.thickness,
    chordalAddendum: chord.addendum,
    span: gear.span === null ? null : { teeth: gear.span.teeth, length: spanLength(tooth, gear.span.teeth) },
    overPins: overUsualPins(gear, tooth),
  };
}

/** One pin in a sound space, the other in a space as wide as the tooth's thinning makes it. */
function overUsualPins({ usualPinDiameter: pin, ...sound }: SpurGear, tooth: CutTooth): ToothMeasures["overPins"] {
  const full = { ...sound, toothThickness: sound.toothThickness + sound.thinning };
  const canUse = [full, tooth].map(pinRange).every((range) => range !== null && pin >= range.least && pin <= range.greatest);
  return canUse
    ? { pinDiameter: pin, length: overPinCircles(sound.teeth, pinCircle(full, pin), pinCircle(tooth, pin), pin) }
    : null;
}
