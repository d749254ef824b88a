import type { Head, HeadInShort } from "../../head/head.ts";
import type { Plan } from "../../machine/plan.ts";
import { checkKeys, keysOf } from "../../number/check-options.ts";
import type { PreparedHead } from "../../search/prepare.ts";
import { checkIsGear } from "../check-is-gear.ts";
import type { SpurGear } from "../spur-gear.ts";
import { recutPlan } from "./damaged-teeth.ts";
import { checkSettingError } from "./flank-displacement.ts";
import { placeKeys, type RepairPlace, type RepairPlaceOptions, repairPlaces, repairPlan } from "./repair-places.ts";
import { checkRepair, type RepairOptions, repairKeys, repairOf, type ToothRepair } from "./tooth-repair.ts";

/** A repair with the head that it is done on. */
export interface RepairOnHead {
  readonly head: HeadInShort;
  readonly gear: SpurGear;
  /** Whether this head divides the gear with no error. */
  readonly exact: boolean;
  /** The job on the head, counted from the sound start space; or that there is none. */
  readonly job: Plan;
  /** Every space gone to, in the order of the work; empty where the head can do none of it. */
  readonly moves: readonly RepairPlace[];
  /** What may be off in all: what was given, and the error of the way taken. */
  readonly settingError: { readonly arcSeconds: number; readonly offCentre: number };
  readonly repair: ToothRepair;
}

/** How the repair is set up on the head. */
export interface RepairOnHeadOptions extends RepairOptions {
  /** Which settings to look among, and how the places are listed. */
  readonly places?: RepairPlaceOptions | undefined;
}

const keys = keysOf<RepairOnHeadOptions>({ ...repairKeys, places: true });

/**
 * Plans a repair on a head: the setting, the move to each space, and all that {@link toothRepair}
 * says of it, the error of a near setting taken in.
 *
 * @param head - The head, or one that was prepared.
 * @param gear - As {@link spurGear} returns it.
 * @throws {@link InputError} as {@link toothRepair} and {@link planJob} do.
 *
 * @example
 * ```ts
 * repairOnHead(readyHeads[0], spurGear({ teeth: 86, module: 2 }), { damaged: [31] }).moves.map(({ toothSpace }) => toothSpace); // [29, 30, 31, 32]
 * ```
 */
export function repairOnHead(head: Head | PreparedHead, gear: SpurGear, options: RepairOnHeadOptions): RepairOnHead {
  checkIsGear(gear);
  checkKeys(options, keys, "options");
  const { places = {}, ...asked } = options;
  checkKeys(places, placeKeys, "options.places");
  const { damaged, startSpace, ...given } = checkRepair(asked);
  const plan = recutPlan(gear.teeth, { damaged, startSpace });
  const job = repairPlan(head, plan, gear.referenceDiameter / 2, places);
  // What is given is refused before anything is added to it.
  const { arcSeconds, offCentre } = checkSettingError(gear, given.settingError ?? {});
  const settingError = { arcSeconds: arcSeconds + (job.planned ? job.worstArcSeconds : 0), offCentre };
  return {
    head: job.head,
    gear,
    exact: job.planned && job.exact,
    job,
    moves: job.planned ? repairPlaces(job) : [],
    settingError,
    repair: repairOf(gear, plan, { ...given, settingError }),
  };
}
