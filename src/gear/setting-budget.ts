import { type Head, wormRatioOf } from "../head/head.ts";
import { leastCountArcSeconds } from "../machine/readings.ts";
import type { Way } from "../machine/way.ts";
import { wayChosen } from "../machine/way-chosen.ts";
import { checkKeys, keysOf } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { headOf, type PreparedHead } from "../search/prepare.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import { checkTarget, type Target } from "../setting/target.ts";
import { type ErrorBudget, type ErrorSource, errorBudget } from "./error-budget.ts";
import type { HoleErrors, SettingErrors } from "./error-sources.ts";

/** What a head and a setting do not tell of an error. Lengths in mm, angles in arc-seconds of the work. */
export interface SettingBudgetOptions {
  /** Of the work, where its errors are looked at. */
  readonly radius: number;
  /** What the setting is off over the places that are cut; left out, over all. */
  readonly worstArcSeconds?: number | undefined;
  /** All that an indicator shows on the work over a turn: twice what it is off centre. */
  readonly runOut?: number | undefined;
  /** The most that two holes of a circle are off against each other. */
  readonly holeError?: number | undefined;
  /** Of the circle that the pin is in; left out, as the head states it. */
  readonly circleDiameter?: number | undefined;
  /** Of worm and wheel; left out, as the head states it. */
  readonly wormErrorArcSeconds?: number | undefined;
  /**
   * How far off a dial or ring may be set, either way. Left out, half of the least that a vernier shows, and of a scale
   * without one a tenth of its marks, as a line is laid on a line: our own choice.
   */
  readonly readingArcSeconds?: number | undefined;
}

const optionKeys = keysOf<SettingBudgetOptions>({
  radius: true,
  worstArcSeconds: true,
  runOut: true,
  holeError: true,
  circleDiameter: true,
  wormErrorArcSeconds: true,
  readingArcSeconds: true,
});

/** What a setting goes by, and so what puts it out: the worm, holes of circles, or a scale. */
interface GoesBy {
  readonly worm: boolean;
  readonly circles: readonly number[];
  readonly scale: "dial" | "ring" | null;
}

/**
 * What the error of a work is made of by one setting of a head: as {@link errorBudget}, with what head and
 * setting tell of themselves.
 *
 * A setting of whole turns comes back to the same hole, and one by a scale to none: their holes add nothing. Worm and
 * wheel add nothing to a plate or a ring on the spindle itself.
 *
 * @param target - What the setting is for, as it was asked.
 * @throws {@link InputError} when the setting is not one for that head and target, an option is not allowed or has no
 * effect on such a setting, or the diameter of its circle is known neither from the head nor from the options.
 *
 * @example
 * ```ts
 * settingBudget(readyHeads[0], { divisions: 97 }, indexDivisions(readyHeads[0], 97).settings[0], { radius: 50, runOut: 0.04 }).items[0].code; // "run-out"
 * ```
 */
export function settingBudget(
  head: Head | PreparedHead,
  target: Target,
  setting: Setting | NearSetting,
  options: SettingBudgetOptions,
): ErrorBudget {
  const owned = headOf(head);
  checkKeys(options, optionKeys, "options");
  const asked = checkTarget(target);
  const by = goesBy(wayChosen(setting, asked, owned));
  const { radius, worstArcSeconds, runOut, wormErrorArcSeconds, readingArcSeconds } = options;
  if (wormErrorArcSeconds !== undefined && !by.worm)
    refuse("no-effect", "wormErrorArcSeconds", "has no effect on a setting that does not go through the worm; leave it out");
  if (readingArcSeconds !== undefined && by.scale === null)
    refuse("no-effect", "readingArcSeconds", "has no effect on a setting that goes by no scale; leave it out");
  const worm = by.worm ? (wormErrorArcSeconds ?? owned.wormErrorArcSeconds) : undefined;
  const reading = readingArcSeconds ?? asNearAsSet(by, owned);
  const holes = holesOf(by, setting, owned, options);
  const budget = errorBudget({
    radius,
    ...("divisions" in asked && asked),
    setting: overPlaces(setting, worstArcSeconds),
    ...(runOut !== undefined && { runOut }),
    ...(holes !== undefined && { holes }),
    ...(worm !== undefined && { wormErrorArcSeconds: worm }),
    ...(reading !== undefined && { readingArcSeconds: reading }),
  });
  return { ...budget, untold: budget.untold.filter((code) => isPartOf(code, by)) };
}

/** In several rounds a move is off by more than in one, from a place to the next as well: what it says of that holds no longer. */
function overPlaces(setting: Setting | NearSetting, worst = setting.worstArcSeconds): SettingErrors {
  const { pitchArcSeconds, moves } = { pitchArcSeconds: undefined, moves: undefined, ...setting };
  return { worstArcSeconds: worst, pitchArcSeconds: worst > setting.worstArcSeconds ? undefined : pitchArcSeconds, moves };
}

/** Whether a setting that goes by these can be off by that. */
function isPartOf(code: ErrorSource, { worm, circles, scale }: GoesBy): boolean {
  switch (code) {
    case "worm":
      return worm;
    case "holes":
      return circles.length > 0;
    case "reading":
      return scale !== null;
    case "setting":
    case "run-out":
      return true;
  }
}

function goesBy({ setting }: Way): GoesBy {
  const circles = setting.circle === null ? [] : [setting.circle];
  switch (setting.method) {
    case "direct":
      return { worm: false, circles, scale: null };
    // What the holes of the small crank are off by, its own worm divides once more: next to nothing.
    case "wide-range":
    case "simple":
    case "differential":
      return { worm: true, circles, scale: null };
    case "compound":
      return { worm: true, circles: [...circles, setting.second.circle], scale: null };
    case "dial":
      return { worm: true, circles: [], scale: "dial" };
    case "ring":
      return { worm: false, circles: [], scale: "ring" };
  }
}

function asNearAsSet({ scale: by }: GoesBy, head: Head): number | undefined {
  const scale = by === null ? null : head[by];
  if (scale === null) return undefined;
  const least = by === "dial" ? leastCountArcSeconds(scale, wormRatioOf(head)) : leastCountArcSeconds(scale);
  return scale.vernierLines > 1 ? least / 2 : least / 10;
}

function holesOf(
  { circles, worm }: GoesBy,
  setting: Setting | NearSetting,
  head: Head,
  { holeError, circleDiameter }: SettingBudgetOptions,
): HoleErrors | undefined {
  if (circleDiameter !== undefined && holeError === undefined)
    refuse("no-effect", "circleDiameter", "says nothing without what the holes are off by; give holeError too");
  if (holeError === undefined) return undefined;
  if (circles.length === 0)
    refuse("no-effect", "holeError", "has no effect on a setting that goes from hole to hole of no circle; leave it out");
  // A plate on the spindle may have the name of another.
  const stated = !worm
    ? undefined
    : head.plates.find(({ name }) => name === setting.plate)?.faces.find(({ name }) => name === setting.face);
  const circleDiameters = circles.map((circle) => {
    const diameter = circleDiameter ?? stated?.diameters?.[stated.circles.indexOf(circle)];
    return (
      diameter ??
      refuse(
        "missing",
        "holeError",
        `needs the diameter of the circle of ${circle}, which the head does not state; give it as well, or state it there`,
      )
    );
  });
  return { error: holeError, circleDiameters, wormRatio: worm ? wormRatioOf(head) : 1 };
}
