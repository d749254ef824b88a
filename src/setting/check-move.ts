import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse } from "../number/errors.ts";
import type { NearMove } from "./near-setting.ts";
import type { SecondMove, Setting, SettingGears, SmallMove } from "./setting.ts";

type KeyOf<Union> = Union extends Union ? keyof Union : never;

/** A setting is a move too, so its other keys are taken; a misspelt one would leave out a part of the move. */
const moveKeys = keysOf<Record<KeyOf<Setting | NearMove>, unknown>>({
  wormRatio: true,
  turns: true,
  spaces: true,
  circle: true,
  method: true,
  second: true,
  small: true,
  gears: true,
  teethPerMove: true,
  spindlePerMove: true,
  plate: true,
  face: true,
  vernierHoles: true,
  form: true,
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

const smallKeys = keysOf<SmallMove>({ ratio: true, turns: true, spaces: true, circle: true, armsEnclose: true });

const gearsKeys = keysOf<SettingGears>({
  drivers: true,
  driven: true,
  idlers: true,
  direction: true,
  platePerSpindle: true,
  mayFoul: true,
});

/**
 * Checks that a move, or a setting, has the shape of one before it is looked into: what it says may
 * still be wrong.
 *
 * @throws {@link InputError} when it is no object, a key is none of a move's, or a figure is none.
 */
export function checkMove(move: unknown): void {
  checkKeys(move, moveKeys, "move");
  const { second, small, gears, proof, error, ...figures } = move as Record<string, unknown>;
  checkFigures(figures, "move");
  if (second !== undefined && second !== null) {
    checkKeys(second, secondKeys, "move.second");
    checkFigures(second, "move.second");
  }
  if (small !== undefined && small !== null) {
    checkKeys(small, smallKeys, "move.small");
    checkFigures(small, "move.small");
  }
  if (gears !== undefined && gears !== null) checkGears(gears);
}

function checkGears(gears: unknown): void {
  checkKeys(gears, gearsKeys, "move.gears");
  const { drivers, driven, mayFoul, ...figures } = gears as Record<string, unknown>;
  for (const [side, teeth] of Object.entries({ drivers, driven })) {
    if (Array.isArray(teeth) && Array.from(teeth).every((each) => typeof each === "number")) continue;
    refuse("unreadable", `move.gears.${side}`, `${quoted(teeth)} is not a list of teeth; give the teeth of each gear`);
  }
  checkFigures(figures, "move.gears");
}

/** A number, a word or nothing, wherever a setting has one. */
function checkFigures(parts: object, place: string): void {
  for (const [name, value] of Object.entries(parts)) {
    if (value === null || ["number", "string", "boolean", "undefined"].includes(typeof value)) continue;
    refuse("unreadable", `${place}.${name}`, `${quoted(value)} is neither a number nor a word`);
  }
}
