import { keysOf } from "../../number/check-options.ts";
import { faultList } from "../../number/fault-list.ts";
import { checkIsGear } from "../check-is-gear.ts";
import { type FormCutters, formCutters } from "../form-cutter.ts";
import type { SpurGear } from "../spur-gear.ts";
import { type DamageOptions, type RecutPlan, recutPlan } from "./damaged-teeth.ts";
import { type FlankDisplacement, flankDisplacement, type SettingError } from "./flank-displacement.ts";
import { type RebuiltCheck, rebuiltChecks, type SpanToCheck, spansToCheck } from "./rebuilt-checks.ts";
import { type RepairNote, repairNotes } from "./repair-notes.ts";
import { type SawCut, type SawOptions, sawCut } from "./slitting-saw.ts";
import { type ThicknessCheck, thicknessCheck } from "./thickness-check.ts";

/** What is known of a repair. */
export interface RepairOptions {
  /** Damaged teeth by number, 1 to the count; tooth 1 is the user's choice. */
  readonly damaged: readonly number[];
  /** A sound space to start from (space n follows tooth n); left out, the one just before the damage. */
  readonly startSpace?: number | undefined;
  /** The most backlash the pair may have, in mm along the reference circle; left out, no limits are given. */
  readonly backlash?: number | undefined;
  /** How much thinner than full the mate's teeth are, in mm; left out, half of the backlash. */
  readonly mateThinning?: number | undefined;
  /** Left out, or without `leave`: as much is left on each flank as the errors of setting come to. */
  readonly saw?: SawOptions | undefined;
  /** How far off the work and the cutter may be set; left out, in no error. */
  readonly settingError?: SettingError | undefined;
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

/** The keys of {@link RepairOptions}, each named once so that the compiler misses none. */
export const repairKeys = {
  damaged: true,
  startSpace: true,
  backlash: true,
  mateThinning: true,
  saw: true,
  settingError: true,
} as const;

const keys = keysOf<RepairOptions>(repairKeys);

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
  checkIsGear(gear);
  const { damaged, startSpace, ...checked } = checkRepair(options);
  return repairOf(gear, recutPlan(gear.teeth, { damaged, startSpace }), checked);
}

/** Checks the options that belong together; each part checks its own. */
export function checkRepair(options: unknown): RepairOptions {
  const faults = faultList();
  const spec = (faults.object(options, "", keys) ?? {}) as Partial<RepairOptions>;
  if (spec.mateThinning !== undefined && spec.backlash === undefined) {
    faults.add("no-effect", "mateThinning", "is of no use without the backlash of the pair; give backlash too");
  }
  faults.throwIfAny();
  return { ...spec, damaged: spec.damaged ?? [] };
}

/** The repair of spaces that are planned. */
export function repairOf(
  gear: SpurGear,
  plan: RecutPlan,
  { backlash, mateThinning, saw: sawOptions, settingError = {} }: Omit<RepairOptions, keyof DamageOptions>,
): ToothRepair {
  const displacement = flankDisplacement(gear, settingError);
  const saw = sawCut(gear, sawOptions, displacement.together);
  const cutters = formCutters(gear);
  const check = backlash === undefined ? null : thicknessCheck(gear, { backlash, mateThinning });
  const checks = rebuiltChecks(gear, plan, check?.mayLose ?? null);
  return {
    plan,
    blankDiameter: gear.tipDiameter,
    depth: gear.wholeDepth,
    saw,
    cutters,
    displacement,
    check,
    checks,
    spansToCheck: spansToCheck(gear, plan),
    warnings: [...gear.warnings, ...saw.warnings, ...repairNotes(gear, cutters, displacement.together, check, saw)],
  };
}
