import { indexDivisions } from "../../answer.ts";
import type { Head } from "../../head/head.ts";
import type { Exact } from "../../number/ratio.ts";
import type { SearchOptions } from "../../search/exact-settings.ts";
import type { Setting } from "../../setting/setting.ts";
import type { SpurGear } from "../spur-gear.ts";
import { recutPlan } from "./damaged-teeth.ts";
import { flankDisplacement } from "./flank-displacement.ts";
import { type NearRecut, nearRecuts } from "./near-recut.ts";
import { type RecutMove, type RecutOptions, recutMoves } from "./recut-moves.ts";
import { slittingSaw } from "./slitting-saw.ts";
import { type RepairOptions, type ToothRepair, toothRepair } from "./tooth-repair.ts";

/** A repair with the head that it is done on. */
export interface RepairOnHead {
  readonly head: { readonly id: string; readonly name: string; readonly wormRatio: Exact };
  readonly gear: SpurGear;
  /** Whether this head divides the gear with no error. */
  readonly exact: boolean;
  /** The preferred exact setting; null where there is none. */
  readonly setting: Setting | null;
  /** The moves of the exact setting; empty where there is none. */
  readonly moves: readonly RecutMove[];
  /** Where there is no exact setting, the ways that leave an error, the best first. */
  readonly near: readonly NearRecut[];
  /** What may be off in all: what was given, and the error of the best near way, which is the one taken. */
  readonly settingError: { readonly arcSeconds: number; readonly offCentre: number };
  readonly repair: ToothRepair;
}

/** How the repair is set up on the head. */
export interface RepairOnHeadOptions extends RepairOptions {
  /** Which settings to look among. */
  readonly search?: SearchOptions;
  /** How the places are listed. */
  readonly places?: RecutOptions;
}

/**
 * Plans a repair on a head: the setting, the move to each space, and all that {@link toothRepair}
 * says of it, the error of a near setting taken in.
 *
 * @throws {@link InputError} as {@link toothRepair} and {@link indexDivisions} do.
 */
export function repairOnHead(head: Head, gear: SpurGear, options: RepairOnHeadOptions): RepairOnHead {
  const { search = {}, places = {}, ...given } = options;
  const { damaged, startSpace } = given;
  const plan = recutPlan(gear.teeth, { damaged, ...(startSpace !== undefined && { startSpace }) });
  const { settings, near: nearSettings } = indexDivisions(head, gear.teeth, { ...search, limit: 1 });
  const setting = settings[0] ?? null;
  const near = setting === null ? nearRecuts(head, plan, nearSettings, gear.referenceDiameter / 2, places) : [];
  const settingError = {
    arcSeconds: (given.settingError?.arcSeconds ?? 0) + (near[0]?.worstArcSeconds ?? 0),
    offCentre: given.settingError?.offCentre ?? 0,
  };
  return {
    head: { id: head.id, name: head.name, wormRatio: head.wormRatio },
    gear,
    exact: setting !== null,
    setting,
    moves: setting === null ? [] : recutMoves(setting, plan, { head, ...places }),
    near,
    settingError,
    repair: toothRepair(gear, { ...given, saw: sawFor(gear, given, settingError), settingError }),
  };
}

/** Where the errors are wider than the space, no saw leaves as much: the widest is named, and the repair warns of it. */
function sawFor(
  gear: SpurGear,
  { saw }: RepairOptions,
  settingError: RepairOnHead["settingError"],
): RepairOptions["saw"] & object {
  const { greatestWidth } = slittingSaw(gear, { ...saw, leave: saw?.leave ?? 0 });
  const errors = flankDisplacement(gear, settingError).together;
  return saw?.leave === undefined && 2 * errors >= greatestWidth - (saw?.width ?? 0) ? { ...saw, leave: 0 } : { ...saw };
}
