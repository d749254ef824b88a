import type { Head } from "../head/head.ts";
import { spindleTurnsPerMove } from "../mechanism/identity.ts";
import { lacksDirect } from "../methods/direct.ts";
import { partOfTurn } from "../methods/layout.ts";
import { lacksCircles } from "../methods/owned-circles.ts";
import { allMethods, lackOf } from "../methods/registry.ts";
import { lacksSmall } from "../methods/wide-range.ts";
import { quoted, refuse } from "../number/errors.ts";
import { checkMove } from "../setting/check-move.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import { type Way, wayOf, waysBy } from "./way.ts";

/**
 * The way of a setting that the caller chose, once it is known to be one for this target, to turn the
 * work as it says, and to be set up with what this head has.
 *
 * @throws {@link InputError} when it is none.
 */
export function wayChosen(setting: Setting | NearSetting, target: Target, head: Head): Way {
  checkIsSetting(setting);
  const way = wayOf(setting);
  if (!serves(setting, target))
    refuse("conflict", "setting", "is for another count or angle than the job's; take one from its own answer");
  if (way.by === "moves") checkMove(way.setting);
  const wrong = way.by === "moves" ? wrongMove(way.setting) : null;
  if (wrong !== null) refuse("conflict", "setting", wrong);
  const lack = way.by === "moves" ? lackOf(way.setting, head) : lackFromZero(way, head);
  if (lack !== null) refuse("not-owned", "setting", lack);
  return way;
}

/** A setting through JSON is still one; other data, typed as one, is not. */
function checkIsSetting(setting: unknown): void {
  const { exact, moves, kind, method } = (typeof setting === "object" && setting !== null ? setting : {}) as Partial<NearSetting>;
  const byMoves = (exact as unknown) === true || (exact === false && moves === "equal");
  const isOne = byMoves
    ? allMethods.some((each) => each === method)
    : exact === false && moves === "from-zero" && waysBy.some((by) => by !== "moves" && by === kind);
  if (!isOne) refuse("unreadable", "setting", `${quoted(setting)} is not a setting; give one of those that an answer holds`);
}

/** That one move is meant to be a tooth or more of the count, or the angle itself. */
function serves({ spindlePerMove, teethPerMove }: Setting | NearSetting, target: Target): boolean {
  if ("angle" in target) return spindlePerMove === target.angle && teethPerMove === 1;
  return Number.isInteger(teethPerMove) && spindlePerMove === partOfTurn(target.divisions, teethPerMove);
}

/** What a move does that it does not say; null where it does as it says. */
function wrongMove(setting: Extract<Way, { by: "moves" }>["setting"]): string | null {
  const turned = spindleTurnsPerMove(setting);
  const said = setting.exact ? setting.spindlePerMove : setting.spindleTurned;
  return turned === said ? null : `turns the work by ${turned} of a turn in one move, and not by ${quoted(said)} as it says`;
}

/** What a head lacks to set each place by itself, as a part of a sentence; null where it has all that it takes. */
function lackFromZero({ by, setting }: Exclude<Way, { by: "moves" }>, head: Head): string | null {
  if (setting.wormRatio !== head.wormRatio)
    return `is for a worm ratio of ${quoted(setting.wormRatio)}; the head has ${head.wormRatio ?? "no crank"}`;
  const { placesPerTurn } = setting;
  if (by === "nearest-direct") {
    const { circle } = setting;
    if (placesPerTurn !== circle) return `has ${quoted(placesPerTurn)} places in a turn on a plate of ${quoted(circle)}`;
    return lacksDirect(setting, head);
  }
  if (by === "both-cranks") {
    const { plate, face, circle, small } = setting;
    const places = small.ratio * small.circle;
    if (placesPerTurn !== places || places % (circle ?? 1) !== 0)
      return `has ${quoted(placesPerTurn)} places in a turn by circles of ${quoted(circle)} and ${quoted(small.circle)}`;
    return lacksCircles(head, plate, face, circle === null ? [] : [circle]) ?? lacksSmall(small, head);
  }
  if (by === "nearest-hole") {
    const { plate, face, circle } = setting;
    if (placesPerTurn !== circle) return `has ${quoted(placesPerTurn)} places in a turn on a circle of ${quoted(circle)}`;
    return lacksCircles(head, plate, face, [circle]);
  }
  const scale = head[by];
  const places = (scale?.marksPerTurn ?? 0) * (scale?.vernierLines ?? 0);
  return places === placesPerTurn ? null : `needs a ${by} with ${quoted(placesPerTurn)} places in a turn`;
}
