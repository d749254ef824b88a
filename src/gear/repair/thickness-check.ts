import { refuse } from "../../number/errors.ts";
import { faultList } from "../../number/fault-list.ts";
import { lengthSentence, said } from "../../number/length-sentence.ts";
import { checkIsGear } from "../check-is-gear.ts";
import { readIfGiven, readMeasured } from "../measured.ts";
import type { SpurGear } from "../spur-gear.ts";
import { chordOf } from "../tooth-thickness.ts";
import { overPinsBetween, spanBetween, toothWithLoss } from "./mixed-teeth.ts";

/** What a rebuilt tooth may lose, in mm along the reference circle. */
export interface BacklashOptions {
  /** The most backlash that the pair may have when the work is done. */
  readonly backlash: number;
  /** How much thinner than full the mate's teeth are; left out, half of the backlash. */
  readonly mateThinning?: number | undefined;
}

/** A rebuilt tooth of one thickness between two sound ones, as it is measured in several ways; in mm. */
export interface ToothMeasures {
  /** Along the reference circle. */
  readonly toothThickness: number;
  readonly chordalThickness: number;
  readonly chordalAddendum: number;
  /**
   * From this tooth to a sound one, over as many teeth as {@link SpurGear} names: each flank has lost
   * half of what its own tooth has. Null where no span rests on the flanks.
   */
  readonly span: { readonly teeth: number; readonly length: number } | null;
  /**
   * Over the usual pins, one in the space between this tooth and a sound one, one in the sound space
   * opposite, which is reached the shorter way over this tooth. Null where that pin cannot be used.
   */
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
 * @param gear - As {@link spurGear} returns it; its thinning is what the sound teeth have lost.
 * @returns Lengths in mm, of a rebuilt tooth between two sound ones.
 * @throws {@link InputError} when the mate alone has all the backlash, or nothing of the tooth is left.
 *
 * @example
 * ```ts
 * thicknessCheck(spurGear({ teeth: 86, module: 2 }), { backlash: 0.2 }).least.span?.length.toFixed(3); // "58.452"
 * ```
 */
export function thicknessCheck(gear: SpurGear, options: BacklashOptions): ThicknessCheck {
  checkIsGear(gear);
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
  return { full: measuresOf(gear, 0), least: measuresOf(gear, mayLose), mayLose };
}

/** A rebuilt tooth with a loss, between two sound ones. */
function measuresOf(gear: SpurGear, loss: number): ToothMeasures {
  const tooth = toothWithLoss(gear, loss);
  const chord = chordOf(tooth, gear.referenceDiameter);
  const span = gear.span && spanBetween(gear, gear.span.teeth, [loss, gear.thinning]);
  const pins = overPinsBetween(gear, gear.usualPinDiameter, { near: loss, far: gear.thinning });
  return {
    toothThickness: tooth.toothThickness,
    chordalThickness: chord.thickness,
    chordalAddendum: chord.addendum,
    span: gear.span && span !== null ? { teeth: gear.span.teeth, length: span } : null,
    overPins: pins === null ? null : { pinDiameter: gear.usualPinDiameter, length: pins },
  };
}
