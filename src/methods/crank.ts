import type { OwnedCircle } from "../head/head.ts";
import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { type HeadLayout, partOfTurn } from "./layout.ts";

/** How the crank goes in one move: spaces on a circle, or whole turns, which come back to the same hole on any. */
export interface CrankPart {
  readonly turns: number;
  readonly spaces: number;
  readonly on: OwnedCircle | null;
}

/*
 * The settings are written out as one object each, since thousands are made for a table and to put
 * them together from parts takes longer than to find them.
 */

/** A move of the crank over a plate that its stop pin holds. */
export function simpleSetting(
  { wormRatio }: HeadLayout,
  { divisions, teeth }: Move,
  { turns, spaces, on }: CrankPart,
): SettingBy<"simple"> {
  const spindlePerMove = partOfTurn(divisions, teeth);
  return spaces === 0 || on === null
    ? {
        method: "simple",
        teethPerMove: teeth,
        wormRatio,
        spindlePerMove,
        turns,
        spaces: 0,
        circle: null,
        plate: null,
        face: null,
        armsEnclose: null,
        plateStopPin: "in",
      }
    : {
        method: "simple",
        teethPerMove: teeth,
        wormRatio,
        spindlePerMove,
        turns,
        spaces,
        circle: on.holes,
        plate: on.plate,
        face: on.face,
        armsEnclose: spaces + 1,
        plateStopPin: "in",
      };
}
