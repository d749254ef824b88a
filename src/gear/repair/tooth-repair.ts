import { faultList } from "../../number/fault-list.ts";
import { type FormCutters, fewestFormCutTeeth, formCutters } from "../form-cutter.ts";
import type { GearNote } from "../gear-notes.ts";
import type { SpurGear } from "../spur-gear.ts";
import { type RecutPlan, recutPlan } from "./damaged-teeth.ts";
import { type FlankDisplacement, flankDisplacement, type SettingError } from "./flank-displacement.ts";
import { type RebuiltCheck, rebuiltChecks, type SpanToCheck, spansToCheck } from "./rebuilt-checks.ts";
import { type SawCut, type SawNote, type SawOptions, slittingSaw } from "./slitting-saw.ts";
import { type ThicknessCheck, thicknessCheck } from "./thickness-check.ts";

/** What is known of a repair. */
export interface RepairOptions {
  /** Damaged teeth by number, 1 to the count; tooth 1 is the user's choice. */
  readonly damaged: readonly number[];
  /** A sound space to start from (space n follows tooth n); left out, the one just before the damage. */
  readonly startSpace?: number;
  /** The most backlash the pair may have, in mm along the reference circle; left out, no limits are given. */
  readonly backlash?: number;
  /** How much thinner than full the mate's teeth are, in mm; left out, half of the backlash. */
  readonly mateThinning?: number;
  /** Left out, or without `leave`: as much is left on each flank as the errors of setting come to. */
  readonly saw?: SawOptions;
  /** How far off the work and the cutter may be set; left out, in no error. */
  readonly settingError?: SettingError;
}

/** All that a repair needs to know, from the broken wheel to the finished one. Lengths in mm. */
export interface ToothRepair {
  /** The moves: from one sound space to each space to be recut. */
  readonly plan: RecutPlan;
  /** The diameter to turn the built-up teeth back to: the sound tips'. */
  readonly blankDiameter: number;
  /** From the blank's surface down to the root. */
  readonly depth: number;
  readonly saw: SawCut;
  /** Null where no form cutter of the sets serves the count. */
  readonly cutters: FormCutters | null;
  readonly displacement: FlankDisplacement;
  /** Null where no backlash was given. */
  readonly check: ThicknessCheck | null;
  /** What to measure on the finished gear, and what each measure may be; the surest first. */
  readonly checks: readonly RebuiltCheck[];
  /** Spans that set a rebuilt flank against a sound one; empty where none does. They stand in `checks` too. */
  readonly spansToCheck: readonly SpanToCheck[];
  /** Of the gear, the saw and the repair; empty where there is nothing to say. */
  readonly warnings: readonly RepairNote[];
}

/** What the person should know of a repair, beside the gear and the saw. Lengths in mm. */
export type RepairNote =
  | GearNote
  | SawNote
  /** The sets of form cutters begin at more teeth. */
  | { readonly code: "no-form-cutter"; readonly teeth: number; readonly fewestTeeth: number }
  /** Form cutters are made for teeth without profile shift, and this gear has one. */
  | { readonly code: "form-cutters-unshifted" }
  /** The sound teeth have lost more than a rebuilt one may, so that the pair has too much backlash already. */
  | { readonly code: "sound-teeth-thin"; readonly thinning: number; readonly mayLose: number }
  /** The errors of setting can take more off one side of a tooth than it may lose. */
  | { readonly code: "errors-over-loss"; readonly together: number; readonly mayLose: number }
  /** The errors of setting are more than the saw leaves on a flank. */
  | { readonly code: "errors-over-saw"; readonly together: number; readonly leftOnFlank: number };

/** In mm: what adding and taking off again may leave. */
const roundingError = 1e-9;
const keys = ["damaged", "startSpace", "backlash", "mateThinning", "saw", "settingError"];

/**
 * The repair of damaged teeth that have been built up: what to turn, saw, cut and measure, and the
 * move to each space.
 *
 * @param gear - The whole gear, as {@link spurGear} returns it; its tip diameter and depth are those
 * of the sound teeth.
 * @throws {@link InputError} when the damage, the saw or the backlash is not allowed.
 *
 * @example
 * ```ts
 * toothRepair(spurGear({ teeth: 86, module: 2 }), { damaged: [31, 32] }).plan.startSpace; // 29
 * ```
 */
export function toothRepair(gear: SpurGear, options: RepairOptions): ToothRepair {
  const faults = faultList();
  const spec = (faults.object(options, "", keys) ?? {}) as Partial<RepairOptions>;
  if (spec.mateThinning !== undefined && spec.backlash === undefined) {
    faults.add("no-effect", "mateThinning", "is of no use without the backlash of the pair; give backlash too");
  }
  faults.throwIfAny();
  const { damaged = [], startSpace, backlash, mateThinning, settingError = {} } = spec;
  const plan = recutPlan(gear.teeth, { damaged, ...(startSpace !== undefined && { startSpace }) });
  const displacement = flankDisplacement(gear, settingError);
  const saw = slittingSaw(gear, { leave: displacement.together, ...spec.saw });
  const cutters = formCutters(gear);
  const check =
    backlash === undefined ? null : thicknessCheck(gear, { backlash, ...(mateThinning !== undefined && { mateThinning }) });
  return {
    plan,
    blankDiameter: gear.tipDiameter,
    depth: gear.wholeDepth,
    saw,
    cutters,
    displacement,
    check,
    checks: rebuiltChecks(gear, plan, check?.mayLose ?? null),
    spansToCheck: spansToCheck(gear, plan),
    warnings: [...gear.warnings, ...saw.warnings, ...repairNotes(gear, cutters, displacement, check, saw)],
  };
}

function repairNotes(
  gear: SpurGear,
  cutters: FormCutters | null,
  { together }: FlankDisplacement,
  check: ThicknessCheck | null,
  { leftOnFlank }: SawCut,
): RepairNote[] {
  const notes: RepairNote[] = [];
  if (cutters === null) notes.push({ code: "no-form-cutter", teeth: gear.teeth, fewestTeeth: fewestFormCutTeeth });
  else if (gear.profileShift !== 0) notes.push({ code: "form-cutters-unshifted" });
  if (check !== null && gear.thinning - check.mayLose > roundingError) {
    notes.push({ code: "sound-teeth-thin", thinning: gear.thinning, mayLose: check.mayLose });
  }
  if (check !== null && together > check.mayLose) {
    notes.push({ code: "errors-over-loss", together, mayLose: check.mayLose });
  }
  if (together - leftOnFlank.atBottom > roundingError) {
    notes.push({ code: "errors-over-saw", together, leftOnFlank: leftOnFlank.atBottom });
  }
  return notes;
}
