import { checkKeys, keysOf } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import type { NearMove } from "../setting/near-setting.ts";
import type { SecondMove, Setting, SettingGears } from "../setting/setting.ts";
import type { SetMove } from "./motion.ts";

type KeyOf<Union> = Union extends Union ? keyof Union : never;

/** A setting is a move too, so its other keys are taken; a misspelt one would leave out a part of the move. */
const moveKeys = keysOf<Record<KeyOf<SetMove | Setting | NearMove>, unknown>>({
  wormRatio: true,
  turns: true,
  spaces: true,
  circle: true,
  method: true,
  second: true,
  gears: true,
  teethPerMove: true,
  spindlePerMove: true,
  plate: true,
  face: true,
  armsEnclose: true,
  plateStopPin: true,
  exact: true,
  closingArcSeconds: true,
  worstArcSeconds: true,
  proof: true,
  kind: true,
  moves: true,
  spindleTurned: true,
  pitchArcSeconds: true,
  error: true,
});

const secondKeys = keysOf<SecondMove>({ spaces: true, circle: true, direction: true });

const gearsKeys = keysOf<SettingGears>({
  drivers: true,
  driven: true,
  idlers: true,
  direction: true,
  platePerSpindle: true,
  mayFoul: true,
});

/**
 * Checks that a move has the shape of one, before the mechanism is asked to make it.
 *
 * @throws {@link InputError} when it is no object, a key is none of a move's, or its gears are no lists.
 */
export function checkMove(move: SetMove): void {
  checkKeys(move, moveKeys, "move");
  const { second, gears } = move;
  if (second !== undefined && second !== null) checkKeys(second, secondKeys, "move.second");
  if (gears === undefined || gears === null) return;
  checkKeys(gears, gearsKeys, "move.gears");
  for (const side of ["drivers", "driven"] as const) {
    if (!Array.isArray(gears[side])) refuse("unreadable", `move.gears.${side}`, "is not a list; give the teeth of each gear");
  }
}
